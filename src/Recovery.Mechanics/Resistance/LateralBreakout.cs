using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>One wheel drawn sideways out of clay as a short pipe.</summary>
public sealed record LateralBreakout
{
    internal LateralBreakout(double breakout, double rolling, double? residual, double diameter, double sinkage, IReadOnlyList<ValidityFlag> flags)
    {
        Breakout = Force.FromNewtons(breakout);
        RollingBreakout = Force.FromNewtons(rolling);
        Residual = residual is { } r ? Force.FromNewtons(r) : null;
        BreakoutMovement = Length.FromMeters((0.02 * diameter) + (0.25 * sinkage));
        BreakoutMovementLow = Length.FromMeters((0.004 * diameter) + (0.02 * sinkage));
        BreakoutMovementHigh = Length.FromMeters((0.1 * diameter) + (0.7 * sinkage));
        ResidualMovement = Length.FromMeters(1.5 * diameter);
        ResidualMovementLow = Length.FromMeters(0.6 * diameter);
        ResidualMovementHigh = Length.FromMeters(2.8 * diameter);
        Flags = flags;
    }

    /// <summary>Gets the breakout with the vertical-load term.</summary>
    public Force Breakout { get; }

    /// <summary>Gets the breakout without the vertical-load term, for a wheel that rolls.</summary>
    public Force RollingBreakout { get; }

    /// <summary>Gets what is left once it has broken out; null where the vertical load lies outside the range of that line.</summary>
    public Force? Residual { get; }

    /// <summary>Gets the movement to breakout, best estimate.</summary>
    public Length BreakoutMovement { get; }

    /// <summary>Gets the movement to breakout, low estimate.</summary>
    public Length BreakoutMovementLow { get; }

    /// <summary>Gets the movement to breakout, high estimate.</summary>
    public Length BreakoutMovementHigh { get; }

    /// <summary>Gets the movement to the residual, best estimate.</summary>
    public Length ResidualMovement { get; }

    /// <summary>Gets the movement to the residual, low estimate.</summary>
    public Length ResidualMovementLow { get; }

    /// <summary>Gets the movement to the residual, high estimate.</summary>
    public Length ResidualMovementHigh { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Breakout, residual and movement.</returns>
    public override string ToString() => "breakout " + Text.Kilonewtons(RollingBreakout.Newtons, 3) + " rolling, " + Text.Kilonewtons(Breakout.Newtons, 3) + " under its load, after about " + Text.With(BreakoutMovement.Meters, "m", 2)
        + (Residual is { } r ? ", then " + Text.Kilonewtons(r.Newtons, 3) : string.Empty);
}
