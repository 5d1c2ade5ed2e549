using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Pressure along a track.</summary>
/// <remarks>Immutable.</remarks>
public sealed record TrackPressure
{
    internal TrackPressure(double mean, double front, double rear, double carrying, IReadOnlyList<ValidityFlag> flags)
    {
        Mean = Pressure.FromPascals(mean);
        Front = Pressure.FromPascals(front);
        Rear = Pressure.FromPascals(rear);
        CarryingLength = Length.FromMeters(carrying);
        Flags = flags;
    }

    /// <summary>Gets load over the whole area of contact.</summary>
    public Pressure Mean { get; }

    /// <summary>Gets the pressure at the front end.</summary>
    public Pressure Front { get; }

    /// <summary>Gets the pressure at the rear end.</summary>
    public Pressure Rear { get; }

    /// <summary>Gets the length that carries; less than the length of contact where the load lies outside the middle third.</summary>
    public Length CarryingLength { get; }

    /// <summary>Gets the limits that the case lies outside of.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gets the greater of the pressures at the ends.</summary>
    public Pressure Greatest => Front.Pascals >= Rear.Pascals ? Front : Rear;

    /// <summary>Gives the pressures in words, invariant culture.</summary>
    /// <returns>Mean, front and rear.</returns>
    public override string ToString() => "mean " + Text.Kilopascals(Mean.Pascals, 3) + ", front " + Text.Kilopascals(Front.Pascals, 3) + ", rear " + Text.Kilopascals(Rear.Pascals, 3);
}
