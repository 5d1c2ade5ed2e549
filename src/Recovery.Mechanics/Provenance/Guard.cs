using System;
#if NET
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
#endif
using UnitsNet;

namespace Recovery.Mechanics.Provenance;

/// <summary>The one door for input: checks a range, names the parameter, the value with its unit and the accepted range, and hands back the SI number.</summary>
/// <remarks>NaN and the infinities fail every range. Ranges are inclusive and given in the unit that the message prints.</remarks>
internal static class Guard
{
    /// <summary>Checks a plain number in the unit that the message prints.</summary>
    public static double Range(double value, double minimum, double maximum, string unit, string name)
    {
        if (value >= minimum && value <= maximum) return value;
        throw new ArgumentOutOfRangeException(name, Message(name, value, minimum, maximum, unit));
    }

    /// <summary>Force in newtons; the range in kilonewtons.</summary>
    public static double Newtons(Force value, double minimumKilonewtons, double maximumKilonewtons, string name) =>
        Range(value.Newtons / 1000, minimumKilonewtons, maximumKilonewtons, "kN", name) * 1000;

    /// <summary>Length in metres; the range in metres.</summary>
    public static double Metres(Length value, double minimumMetres, double maximumMetres, string name) =>
        Range(value.Meters, minimumMetres, maximumMetres, "m", name);

    /// <summary>An element of a list, in the unit that the message prints. The exception names the parameter, the message the element and what it belongs to.</summary>
    public static double Element(double value, double minimum, double maximum, string unit, string name, int index, string belongsTo)
    {
        if (value >= minimum && value <= maximum) return value;
        throw new ArgumentOutOfRangeException(name, Message(name + "[" + Text.Number(index, 9) + "] (" + belongsTo + ")", value, minimum, maximum, unit));
    }

    /// <summary>Pressure in pascals; the range in kilopascals.</summary>
    public static double Pascals(Pressure value, double minimumKilopascals, double maximumKilopascals, string name) =>
        Range(value.Pascals / 1000, minimumKilopascals, maximumKilopascals, "kPa", name) * 1000;

    /// <summary>Ratio as a decimal fraction; the range as decimal fractions.</summary>
    public static double Fraction(Ratio value, double minimum, double maximum, string name) =>
        Range(value.DecimalFractions, minimum, maximum, string.Empty, name);

    /// <summary>Mass in kilograms; the range in tonnes.</summary>
    public static double Kilograms(Mass value, double minimumTonnes, double maximumTonnes, string name) =>
        Range(value.Kilograms / 1000, minimumTonnes, maximumTonnes, "t", name) * 1000;

    /// <summary>Angle in radians; the range in degrees.</summary>
    public static double Radians(Angle value, double minimumDegrees, double maximumDegrees, string name) =>
        Range(value.Degrees, minimumDegrees, maximumDegrees, "deg", name) * (Math.PI / 180);

    /// <summary>Speed in metres a second; the range in kilometres an hour.</summary>
    public static double MetresPerSecond(Speed value, double minimumKilometresPerHour, double maximumKilometresPerHour, string name) =>
        Range(value.MetersPerSecond * 3.6, minimumKilometresPerHour, maximumKilometresPerHour, "km/h", name) / 3.6;

    /// <summary>Power in watts; the range in kilowatts.</summary>
    public static double Watts(Power value, double minimumKilowatts, double maximumKilowatts, string name) =>
        Range((double)value.Watts / 1000, minimumKilowatts, maximumKilowatts, "kW", name) * 1000;

    /// <summary>Time in seconds; the range in seconds.</summary>
    public static double Seconds(Duration value, double minimumSeconds, double maximumSeconds, string name) =>
        Range(value.Seconds, minimumSeconds, maximumSeconds, "s", name);

    /// <summary>Energy in joules; the range in kilojoules.</summary>
    public static double Joules(Energy value, double minimumKilojoules, double maximumKilojoules, string name) =>
        Range(value.Joules / 1000, minimumKilojoules, maximumKilojoules, "kJ", name) * 1000;

    /// <summary>Specific weight in newtons a cubic metre; the range in kilonewtons a cubic metre.</summary>
    public static double NewtonsPerCubicMetre(SpecificWeight value, double minimumKilonewtonsPerCubicMetre, double maximumKilonewtonsPerCubicMetre, string name) =>
        Range(value.NewtonsPerCubicMeter / 1000, minimumKilonewtonsPerCubicMetre, maximumKilonewtonsPerCubicMetre, "kN/m3", name) * 1000;

    /// <summary>A whole number.</summary>
    public static int Count(int value, int minimum, int maximum, string name)
    {
        if (value >= minimum && value <= maximum) return value;
        throw new ArgumentOutOfRangeException(name, Message(name, value, minimum, maximum, string.Empty));
    }

    /// <summary>Every element of a span, in the unit that the message prints. The message names the element.</summary>
    public static void All(ReadOnlySpan<double> values, double minimum, double maximum, string unit, string name)
    {
#if NET
        if (AllInside(values, minimum, maximum)) return;
#endif
        for (var i = 0; i < values.Length; i++)
        {
            if (!(values[i] >= minimum && values[i] <= maximum))
                throw new ArgumentOutOfRangeException(name, Message(name + "[" + Text.Number(i, 9) + "]", values[i], minimum, maximum, unit));
        }
    }

    /// <summary>Spans that belong together must have one length.</summary>
    public static void SameLength(int expected, int actual, string name)
    {
        if (actual != expected)
            throw new ArgumentException(name + " must have " + Text.Number(expected, 9) + " elements like the other spans; it has " + Text.Number(actual, 9) + ".", name);
    }

    /// <summary>A reference that may not be null.</summary>
    public static T NotNull<T>(T? value, string name)
        where T : class => value ?? throw new ArgumentNullException(name);

    /// <summary>A name that may not be empty.</summary>
    public static string Name(string? value, string name) =>
        string.IsNullOrWhiteSpace(value) ? throw new ArgumentException(name + " must be a name that is not empty.", name) : value!;

    /// <summary>A value of an enumeration that is defined.</summary>
    public static T Defined<T>(T value, bool isDefined, string name)
        where T : struct => isDefined ? value : throw new ArgumentOutOfRangeException(name, name + " is not one of the defined values.");

#if NET
    /// <summary>Looks at whole vectors; says no where it is not sure, so that the loop finds and names the element.</summary>
    private static bool AllInside(ReadOnlySpan<double> values, double minimum, double maximum)
    {
        var width = Vector512<double>.Count;
        if (!Vector512.IsHardwareAccelerated || values.Length < width) return false;
        Vector512<double> low = Vector512.Create(minimum), high = Vector512.Create(maximum), inside = Vector512<double>.AllBitsSet;
        ref var first = ref MemoryMarshal.GetReference(values);
        var last = values.Length - width;
        for (var i = 0; i <= last; i += width)
        {
            var v = Vector512.LoadUnsafe(ref first, (nuint)i);
            inside &= Vector512.GreaterThanOrEqual(v, low) & Vector512.LessThanOrEqual(v, high);
        }

        var end = Vector512.LoadUnsafe(ref first, (nuint)last);
        inside &= Vector512.GreaterThanOrEqual(end, low) & Vector512.LessThanOrEqual(end, high);
        return Vector512.EqualsAll(inside.AsInt64(), Vector512<long>.AllBitsSet);
    }
#endif

    private static string Message(string name, double value, double minimum, double maximum, string unit)
    {
        var suffix = unit.Length == 0 ? string.Empty : " " + unit;
        var shown = double.IsNaN(value) ? "not a number" : double.IsInfinity(value) ? "infinite" : Text.Number(value, 6) + suffix;
        return name + " must be from " + Text.Number(minimum, 6) + " to " + Text.Number(maximum, 6) + suffix + "; it was " + shown + ".";
    }
}
