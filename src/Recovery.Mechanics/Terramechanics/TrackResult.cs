using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Sinkage, resistance and traction of one track at one slip.</summary>
/// <remarks>Forces are null where the ground gives no support, never a stand-in number.</remarks>
public sealed record TrackResult
{
    internal TrackResult(IModel model, double loadNewtons, double slip, double pressurePascals, double? sinkageMetres, double? resistanceNewtons, double? grossNewtons, double? limitNewtons, IReadOnlyList<ValidityFlag> flags)
    {
        Model = model;
        Load = Force.FromNewtons(loadNewtons);
        Slip = Ratio.FromDecimalFractions(slip);
        GroundPressure = Pressure.FromPascals(pressurePascals);
        Outcome = sinkageMetres is null ? WheelOutcome.Immobile : grossNewtons > 0 ? WheelOutcome.Rolls : WheelOutcome.NoDrive;
        Sinkage = sinkageMetres is { } z ? Length.FromMeters(z) : null;
        MotionResistance = Of(resistanceNewtons);
        GrossTraction = Of(grossNewtons);
        GreatestGrossTraction = Of(limitNewtons);
        NetTraction = Of(grossNewtons - resistanceNewtons);
        Flags = flags;
    }

    /// <summary>Gets the model.</summary>
    public IModel Model { get; }

    /// <summary>Gets what the model says of the track: without slip there is no drive.</summary>
    public WheelOutcome Outcome { get; }

    /// <summary>Gets the load on the track.</summary>
    public Force Load { get; }

    /// <summary>Gets the slip the result belongs to.</summary>
    public Ratio Slip { get; }

    /// <summary>Gets the mean ground pressure.</summary>
    public Pressure GroundPressure { get; }

    /// <summary>Gets the sinkage.</summary>
    public Length? Sinkage { get; }

    /// <summary>Gets the resistance from compacting the rut.</summary>
    public Force? MotionResistance { get; }

    /// <summary>Gets the gross traction (thrust) at the slip.</summary>
    public Force? GrossTraction { get; }

    /// <summary>Gets the ceiling of the gross traction, A c + W tan(phi).</summary>
    public Force? GreatestGrossTraction { get; }

    /// <summary>Gets the net traction: gross traction less resistance.</summary>
    public Force? NetTraction { get; }

    /// <summary>Gets net traction over load.</summary>
    public double? NetTractionRatio => NetTraction?.Newtons / Load.Newtons;

    /// <summary>Gets motion resistance over load.</summary>
    public double? MotionResistanceRatio => MotionResistance?.Newtons / Load.Newtons;

    /// <summary>Gets the tractive efficiency (NT/GT)(1 - s); null where there is no net traction.</summary>
    public double? TractiveEfficiency => NetTraction is { } net && GrossTraction is { } gross && net.Newtons > 0 ? net.Newtons / gross.Newtons * (1 - Slip.DecimalFractions) : null;

    /// <summary>Gets the limits that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Sinkage, resistance and net traction.</returns>
    public override string ToString() => Sinkage is { } z
        ? "sinkage " + Text.With(z.Meters, "m", 3) + ", resistance " + Text.Kilonewtons(MotionResistance!.Value.Newtons, 3) + ", net traction " + Text.Kilonewtons(NetTraction!.Value.Newtons, 3) + (Flags.Count == 0 ? string.Empty : ", outside its range")
        : "immobile: the ground gives no support";

    private static Force? Of(double? newtons) => newtons is { } n ? Force.FromNewtons(n) : null;
}
