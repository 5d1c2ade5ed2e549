using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A force in space: x along the pull, y to the left, z up.</summary>
public sealed record RigForce
{
    internal RigForce(Vector3 newtons) => Newtons = newtons;

    /// <summary>Gets the part along the pull.</summary>
    public Force X => Force.FromNewtons(Newtons.X);

    /// <summary>Gets the part to the left.</summary>
    public Force Y => Force.FromNewtons(Newtons.Y);

    /// <summary>Gets the part upwards.</summary>
    public Force Z => Force.FromNewtons(Newtons.Z);

    /// <summary>Gets the size of the force.</summary>
    public Force Magnitude => Force.FromNewtons(Newtons.Length);

    internal Vector3 Newtons { get; }

    /// <summary>Gives the force, invariant culture.</summary>
    /// <returns>The three parts and the size.</returns>
    public override string ToString() => "(" + Text.Number(Newtons.X / 1000) + ", " + Text.Number(Newtons.Y / 1000) + ", " + Text.Number(Newtons.Z / 1000) + ") kN, " + Text.Kilonewtons(Newtons.Length);
}
