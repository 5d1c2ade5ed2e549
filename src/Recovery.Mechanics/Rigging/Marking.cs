using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A number and a unit as they stand on a tag, before anybody says what they mean.</summary>
/// <remarks>A bare marking is no capacity: <see cref="Readings"/> lists what it can mean. g = 9.80665 m/s2, 1 lb = 0.45359237 kg; short ton 2000 lb, long ton 2240 lb. Immutable, equality by value.</remarks>
public sealed record Marking
{
    private Marking(double value, MarkingUnit unit)
    {
        Value = value;
        Unit = unit;
    }

    /// <summary>Gets the number as marked.</summary>
    public double Value { get; }

    /// <summary>Gets the unit as marked.</summary>
    public MarkingUnit Unit { get; }

    /// <summary>Gets the force; null where it is not known which ton.</summary>
    public Force? Force => Unit == MarkingUnit.UnknownTon ? null : UnitsNet.Force.FromNewtons(Newtons);

    /// <summary>Gets everything the bare marking can mean, least capacity first. To be shown, never taken silently.</summary>
    public IReadOnlyList<MarkingReading> Readings => MarkingReading.All(this);

    internal double Newtons => Value * MarkingKernel.Newtons(Unit);

    /// <summary>Tonnes.</summary>
    /// <param name="value">Marked number, 0.1 to 2,000 t.</param>
    /// <returns>The marking.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Marking Tonnes(double value) => Of(value, MarkingUnit.Tonne, 0.1, 2000);

    /// <summary>Short tons of 2000 lb.</summary>
    /// <param name="value">Marked number, 0.1 to 2,200 short tons.</param>
    /// <returns>The marking.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Marking ShortTons(double value) => Of(value, MarkingUnit.ShortTon, 0.1, 2200);

    /// <summary>Long tons of 2240 lb.</summary>
    /// <param name="value">Marked number, 0.1 to 2,000 long tons.</param>
    /// <returns>The marking.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Marking LongTons(double value) => Of(value, MarkingUnit.LongTon, 0.1, 2000);

    /// <summary>Kilonewtons.</summary>
    /// <param name="value">Marked number, 1 to 20,000 kN.</param>
    /// <returns>The marking.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Marking Kilonewtons(double value) => Of(value, MarkingUnit.Kilonewton, 1, 20000);

    /// <summary>Decanewtons.</summary>
    /// <param name="value">Marked number, 100 to 2,000,000 daN.</param>
    /// <returns>The marking.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Marking Decanewtons(double value) => Of(value, MarkingUnit.Decanewton, 100, 2e6);

    /// <summary>Pounds.</summary>
    /// <param name="value">Marked number, 225 to 4,400,000 lb.</param>
    /// <returns>The marking.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Marking Pounds(double value) => Of(value, MarkingUnit.Pound, 225, 4.4e6);

    /// <summary>"ton" without saying which. It has no force; its readings show each.</summary>
    /// <param name="value">Marked number, 0.1 to 2,000.</param>
    /// <returns>The marking.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Marking UnknownTons(double value) => Of(value, MarkingUnit.UnknownTon, 0.1, 2000);

    /// <summary>Gives a force in a unit of marking.</summary>
    /// <param name="force">The force, 0 to 1,000,000 kN.</param>
    /// <param name="unit">A known unit.</param>
    /// <returns>The number that would stand on a tag.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range or the unit is not a known one.</exception>
    public static double In(Force force, MarkingUnit unit) =>
        Guard.Newtons(force, 0, 1e6, nameof(force)) / MarkingKernel.Newtons(Guard.Defined(unit, unit is >= MarkingUnit.Kilonewton and < MarkingUnit.UnknownTon, nameof(unit)));

    /// <summary>Gives the marking in words, invariant culture.</summary>
    /// <returns>Number and unit.</returns>
    public override string ToString() => Text.With(Value, MarkingKernel.Symbol(Unit), 6);

    /// <summary>Newtons of a marking whose unit is known; refused otherwise.</summary>
    internal static double Known(Marking? marking, string name)
    {
        var given = Guard.NotNull(marking, name);
        if (given.Unit == MarkingUnit.UnknownTon) throw new ArgumentException(name + " is " + given + ": find out which ton, or use Rating.Unknown.", name);
        return given.Newtons;
    }

    private static Marking Of(double value, MarkingUnit unit, double least, double most) => new(Guard.Range(value, least, most, MarkingKernel.Symbol(unit), nameof(value)), unit);
}
