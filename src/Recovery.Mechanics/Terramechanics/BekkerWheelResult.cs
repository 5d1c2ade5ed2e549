using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Sinkage and resistance of a wheel on a terrain of Bekker parameters.</summary>
/// <remarks>Values are null where the wheel sinks to its hub: the relations have no meaning there.</remarks>
public sealed record BekkerWheelResult
{
    internal BekkerWheelResult(IModel model, BekkerTerrain terrain, double loadNewtons, TyreMode mode, double? criticalPressure, double? sinkageMetres, double diameterMetres, double? resistanceNewtons, double? bulldozingNewtons, Pressure impliedConeIndex, IReadOnlyList<ValidityFlag> flags)
    {
        Model = model;
        Terrain = terrain;
        Load = Force.FromNewtons(loadNewtons);
        Mode = mode;
        Outcome = sinkageMetres is null ? WheelOutcome.Immobile : WheelOutcome.Rolls;
        CriticalPressure = criticalPressure is { } p ? Pressure.FromPascals(p) : null;
        Sinkage = sinkageMetres is { } z ? Length.FromMeters(z) : null;
        SinkageRatio = sinkageMetres / diameterMetres;
        MotionResistance = resistanceNewtons is { } r ? Force.FromNewtons(r) : null;
        MotionResistanceRatio = resistanceNewtons / loadNewtons;
        Bulldozing = bulldozingNewtons is { } b ? Force.FromNewtons(b) : null;
        ImpliedConeIndex = impliedConeIndex;
        Flags = flags;
    }

    /// <summary>Gets the model.</summary>
    public IModel Model { get; }

    /// <summary>Gets the terrain.</summary>
    public BekkerTerrain Terrain { get; }

    /// <summary>Gets the load on the wheel.</summary>
    public Force Load { get; }

    /// <summary>Gets what the model says of the wheel; it says nothing of traction.</summary>
    public WheelOutcome Outcome { get; }

    /// <summary>Gets how the tyre stands on the ground.</summary>
    public TyreMode Mode { get; }

    /// <summary>Gets the pressure of inflation and carcass up to which the tyre flattens; null where the ground gives no support.</summary>
    public Pressure? CriticalPressure { get; }

    /// <summary>Gets the sinkage of one pass.</summary>
    public Length? Sinkage { get; }

    /// <summary>Gets sinkage over diameter.</summary>
    public double? SinkageRatio { get; }

    /// <summary>Gets the resistance from compacting the rut.</summary>
    public Force? MotionResistance { get; }

    /// <summary>Gets the same over the load.</summary>
    public double? MotionResistanceRatio { get; }

    /// <summary>Gets the resistance of soil pushed ahead, apart and never inside <see cref="MotionResistance"/>; null below a sinkage of 0.06 of the diameter and where no unit weight was given.</summary>
    public Force? Bulldozing { get; }

    /// <summary>Gets the cone index that the terrain implies at 6 in, to set the result beside cone-index models.</summary>
    public Pressure ImpliedConeIndex { get; }

    /// <summary>Gets the limits that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Mode, sinkage and resistance.</returns>
    public override string ToString() => Sinkage is { } z && MotionResistance is { } r
        ? (Mode == TyreMode.Rigid ? "rigid" : "elastic") + ", sinkage " + Text.With(z.Meters, "m", 3) + ", resistance " + Text.Kilonewtons(r.Newtons, 3) + (Bulldozing is { } b ? ", bulldozing apart " + Text.Kilonewtons(b.Newtons, 3) : string.Empty) + (Flags.Count == 0 ? string.Empty : ", outside its range")
        : "immobile: sinks to the hub";
}
