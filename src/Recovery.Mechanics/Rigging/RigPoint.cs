using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A place of a rig in space: x along the pull, y to the left, z up from the ground.</summary>
public sealed record RigPoint
{
    /// <summary>Describes a place.</summary>
    /// <param name="x">Along the pull, -1,000 to 1,000 m.</param>
    /// <param name="y">To the left, -1,000 to 1,000 m.</param>
    /// <param name="z">Up from the ground, -100 to 100 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RigPoint(Length x, Length y, Length z)
    {
        Metres = new Vector3(Guard.Metres(x, -1000, 1000, nameof(x)), Guard.Metres(y, -1000, 1000, nameof(y)), Guard.Metres(z, -100, 100, nameof(z)));
    }

    internal RigPoint(Vector3 metres) => Metres = metres;

    /// <summary>Gets the coordinate along the pull.</summary>
    public Length X => Length.FromMeters(Metres.X);

    /// <summary>Gets the coordinate to the left.</summary>
    public Length Y => Length.FromMeters(Metres.Y);

    /// <summary>Gets the height above the ground.</summary>
    public Length Z => Length.FromMeters(Metres.Z);

    internal Vector3 Metres { get; }

    /// <summary>Gives the place, invariant culture.</summary>
    /// <returns>The three coordinates.</returns>
    public override string ToString() => "(" + Text.Number(Metres.X) + ", " + Text.Number(Metres.Y) + ", " + Text.Number(Metres.Z) + ") m";
}
