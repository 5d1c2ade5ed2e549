using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A static loaded radius from the tyre's data book or a tape measure, with the load and the inflation it belongs to.</summary>
/// <remarks>delta = d/2 - SLR at that load and inflation; at others the law of the tyre is scaled through this point. Immutable, equality by value, canonical units.</remarks>
public sealed record LoadedRadius
{
    /// <summary>Describes a loaded radius.</summary>
    /// <param name="radius">Middle of the wheel to the ground, 0.1 to 1.5 m.</param>
    /// <param name="load">Wheel load it belongs to, 1 to 500 kN.</param>
    /// <param name="inflation">Inflation it belongs to, 30 to 1,000 kPa.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LoadedRadius(Length radius, Force load, Pressure inflation)
    {
        Radius = Length.FromMeters(Guard.Metres(radius, 0.1, 1.5, nameof(radius)));
        Load = Force.FromNewtons(Guard.Newtons(load, 1, 500, nameof(load)));
        Inflation = Pressure.FromPascals(Guard.Pascals(inflation, 30, 1000, nameof(inflation)));
    }

    /// <summary>Gets the distance from the middle of the wheel to the ground.</summary>
    public Length Radius { get; }

    /// <summary>Gets the wheel load it belongs to.</summary>
    public Force Load { get; }

    /// <summary>Gets the inflation it belongs to.</summary>
    public Pressure Inflation { get; }

    /// <summary>Gives the radius in words, invariant culture.</summary>
    /// <returns>Radius, load and inflation.</returns>
    public override string ToString() => Text.With(Radius.Meters, "m") + " under " + Text.Kilonewtons(Load.Newtons, 3) + " at " + Text.Kilopascals(Inflation.Pascals, 3);
}
