using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>How one wheel leaves its hole where nothing is dug: it cuts through the soil ahead or climbs over it, whichever takes less.</summary>
public sealed record RutExit
{
    internal RutExit(FaceMethod method, double face, double step, double wallOverFloor, IReadOnlyList<ValidityFlag> flags)
    {
        Method = method;
        SoilFailure = Force.FromNewtons(face);
        Step = double.IsInfinity(step) ? null : Force.FromNewtons(step);
        Counts = Force.FromNewtons(Math.Min(face, step));
        ClimbsOver = step < face;
        ClimbsAboveWallOverFloor = double.IsInfinity(wallOverFloor) ? null : wallOverFloor;
        Flags = flags;
    }

    /// <summary>Gets the method that gave the soil failure.</summary>
    public FaceMethod Method { get; }

    /// <summary>Gets the pull at which the soil ahead fails.</summary>
    public Force SoilFailure { get; }

    /// <summary>Gets the pull at which the wheel climbs the depth as a rigid step; null from the hub upwards, where no pull along the ground would do.</summary>
    public Force? Step { get; }

    /// <summary>Gets the smaller of both: what counts.</summary>
    public Force Counts { get; }

    /// <summary>Gets whether the wheel climbs over rather than cutting through.</summary>
    public bool ClimbsOver { get; }

    /// <summary>Gets wall over floor strength above which a wheel that rests at its equilibrium bound climbs (Rankine face, weight of soil left out), N_c (1 + r/(r - z)); null from the hub upwards, where it never does.</summary>
    public double? ClimbsAboveWallOverFloor { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the exit in one line, invariant culture.</summary>
    /// <returns>What counts and what the other would take.</returns>
    public override string ToString() => (ClimbsOver ? "climbs over, " : "cuts through, ") + Text.Kilonewtons(Counts.Newtons, 3) + " (soil fails at " + Text.Kilonewtons(SoilFailure.Newtons, 3) + ", step " + (Step is { } step ? Text.Kilonewtons(step.Newtons, 3) : "without answer from the hub upwards") + ")";
}
