using System;

namespace Recovery.Mechanics.Machines;

/// <summary>Pressure under a stiff track, linear along it. SI in, SI out.</summary>
/// <remarks>Source: <see cref="Provenance.GeneralSources.Statics"/> (derived); no constant of its own.</remarks>
internal static class TrackKernel
{
    /// <summary>W/(l b).</summary>
    public static double MeanPressure(double load, double length, double width) => load / (length * width);

    /// <summary>Length that carries under a load e off the middle: l within the middle third, else 3 (l/2 - |e|).</summary>
    public static double CarryingLength(double length, double offset) => Math.Abs(offset) <= length / 6 ? length : 3 * ((length / 2) - Math.Abs(offset));

    /// <summary>Pressure at the end towards which the load lies: p (1 + 6 |e|/l) within the middle third, else twice the mean over the carrying length.</summary>
    public static double Greatest(double load, double length, double width, double offset)
    {
        var e = Math.Abs(offset);
        return e <= length / 6 ? MeanPressure(load, length, width) * (1 + (6 * e / length)) : 2 * MeanPressure(load, CarryingLength(length, e), width);
    }

    /// <summary>Pressure at the other end: p (1 - 6 |e|/l) within the middle third, else none.</summary>
    public static double Least(double load, double length, double width, double offset) =>
        Math.Max(0, MeanPressure(load, length, width) * (1 - (6 * Math.Abs(offset) / length)));
}
