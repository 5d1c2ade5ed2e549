using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The soil terms of one buried wheel.</summary>
public sealed record BuriedWheelTerms
{
    internal BuriedWheelTerms(double face, double step, double suction, double sideTurning, double sideLocked, double baseShear, IReadOnlyList<ValidityFlag> flags)
    {
        Face = Force.FromNewtons(face);
        RigidStep = double.IsInfinity(step) ? null : Force.FromNewtons(step);
        FaceThatCounts = Force.FromNewtons(Math.Min(face, step));
        Suction = Force.FromNewtons(suction);
        SideTurning = Force.FromNewtons(sideTurning);
        SideLocked = Force.FromNewtons(sideLocked);
        Base = Force.FromNewtons(baseShear);
        Flags = flags;
    }

    /// <summary>Gets the resistance of the soil ahead.</summary>
    public Force Face { get; }

    /// <summary>Gets the pull to climb the same depth as a rigid step; null from the hub upwards.</summary>
    public Force? RigidStep { get; }

    /// <summary>Gets the smaller of face and step: the soil fails or the wheel climbs.</summary>
    public Force FaceThatCounts { get; }

    /// <summary>Gets the suction behind the wheel while it is sealed; nothing once it is vented.</summary>
    public Force Suction { get; }

    /// <summary>Gets the adhesion on both walls of a wheel that turns.</summary>
    public Force SideTurning { get; }

    /// <summary>Gets the adhesion on both walls of a wheel that slides.</summary>
    public Force SideLocked { get; }

    /// <summary>Gets the base shear of a wheel that slides.</summary>
    public Force Base { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the terms in one line, invariant culture.</summary>
    /// <returns>Face, suction, side, base.</returns>
    public override string ToString() => "face " + Text.Kilonewtons(FaceThatCounts.Newtons, 3) + ", suction " + Text.Kilonewtons(Suction.Newtons, 3) + ", side " + Text.Kilonewtons(SideTurning.Newtons, 3) + ", base " + Text.Kilonewtons(Base.Newtons, 3);
}
