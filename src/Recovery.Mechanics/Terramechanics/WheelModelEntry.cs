using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>What one model says in a comparison: each number present, or refused with its reason.</summary>
public sealed record WheelModelEntry
{
    internal WheelModelEntry(IModel model, double loadNewtons)
    {
        Model = model;
        LoadNewtons = loadNewtons;
    }

    /// <summary>Gets the model.</summary>
    public IModel Model { get; }

    /// <summary>Gets the resistance of all wheels rolling without drive (slip 0): the low end of the band where the model gives one. Null where refused.</summary>
    public Force? MotionResistanceLow { get; internal init; }

    /// <summary>Gets the high end of that resistance; the same number where the model gives no band.</summary>
    public Force? MotionResistanceHigh { get; internal init; }

    /// <summary>Gets why there is no resistance; empty where there is one.</summary>
    public string ResistanceRefusal { get; internal init; } = string.Empty;

    /// <summary>Gets the soil that all wheels push ahead by Bekker's model, each taken on uncut ground: apart, never inside the resistance. Null where the model is another, no unit weight was given, or no wheel sinks 0.06 of its diameter.</summary>
    public Force? Bulldozing { get; internal init; }

    /// <summary>Gets the greatest net traction of the driven wheels less the resistance of the others, within the slip of the comparison. Negative: the machine does not move itself. Null where refused.</summary>
    public Force? NetTraction { get; internal init; }

    /// <summary>Gets why there is no net traction; empty where there is one.</summary>
    public string TractionRefusal { get; internal init; } = string.Empty;

    /// <summary>Gets the cone index at which the wheels just move themselves on the level. Null where refused.</summary>
    public Pressure? CriticalConeIndex { get; internal init; }

    /// <summary>Gets what the critical cone index means in this model, or why there is none.</summary>
    public string CriticalMeaning { get; internal init; } = string.Empty;

    /// <summary>Gets what a reader has to know of this entry; empty where nothing.</summary>
    public string Remark { get; internal init; } = string.Empty;

    /// <summary>Gets the limits of the model that were left, over all wheels, each limit once with its worst value.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; internal init; } = [];

    /// <summary>Gets whether there is a resistance and no limit was left.</summary>
    public bool InRange => MotionResistanceHigh is not null && Flags.Count == 0;

    /// <summary>Gets the low end of the resistance over the load of all wheels.</summary>
    public double? MotionResistanceRatioLow => MotionResistanceLow?.Newtons / LoadNewtons;

    /// <summary>Gets the high end of the resistance over the load of all wheels.</summary>
    public double? MotionResistanceRatioHigh => MotionResistanceHigh?.Newtons / LoadNewtons;

    private double LoadNewtons { get; }

    /// <summary>Gives the entry in one line, invariant culture.</summary>
    /// <returns>Model and resistance, or the reason.</returns>
    public override string ToString() => Model.Name + ": " + (MotionResistanceHigh is { } high
        ? Band(MotionResistanceLow!.Value, high) + " kN" + (Flags.Count == 0 ? string.Empty : ", outside its range")
        : ResistanceRefusal);

    internal static string Band(Force low, Force high) =>
        high.Newtons - low.Newtons < 1e-6 * high.Newtons ? Text.Number(high.Kilonewtons, 3) : Text.Number(low.Kilonewtons, 3) + " to " + Text.Number(high.Kilonewtons, 3);
}
