using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What a tackle puts on one of its places.</summary>
public sealed record TacklePointForce
{
    internal TacklePointForce(TacklePoint point, double newtons, int parts)
    {
        Point = point;
        Force = Force.FromNewtons(newtons);
        Parts = parts;
    }

    /// <summary>Gets the place.</summary>
    public TacklePoint Point { get; }

    /// <summary>Gets the force: along the pull for casualty and traveller, the sum by amount for an anchor.</summary>
    public Force Force { get; }

    /// <summary>Gets the parts of rope on it: two for a sheave, one for an end.</summary>
    public int Parts { get; }

    /// <summary>Gives the place and its force, invariant culture.</summary>
    /// <returns>Place and force.</returns>
    public override string ToString() => Point.Name + " " + Text.Kilonewtons(Force.Newtons);
}
