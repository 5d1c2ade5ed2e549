using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What one step does to a stuck machine that is to move itself: to the soil it needs, to its grip and to what holds it.</summary>
public sealed record SelfRecoveryStep
{
    internal SelfRecoveryStep(Phrase name, double critical, double before, PullDemand was, PullDemand demand, Phrase? remark)
    {
        Called = name;
        CriticalConeIndex = double.IsNaN(critical) ? null : Pressure.FromPascals(critical);
        Change = double.IsNaN(critical) || double.IsNaN(before) ? null : Pressure.FromPascals(critical - before);
        ReadingSuffices = critical <= was.Stuck.Soil.RatingConeIndex.Pascals;
        GrossTraction = demand.OwnGrossTraction;
        Holds = Force.FromNewtons(demand.CentralNewtons);
        HoldsChange = Force.FromNewtons(demand.CentralNewtons - was.CentralNewtons);
        (Outlook, NetTraction, Holding) = SelfRecoverySteps.Balance(demand, OwnWheels.Axles(demand));
        Why = remark;
    }

    /// <summary>Gets what is done.</summary>
    public string Name => Called.ToString();

    /// <summary>Gets the critical cone index after it, wheels rolling; null where no soil would do.</summary>
    public Pressure? CriticalConeIndex { get; }

    /// <summary>Gets what it does to that number; negative where softer ground would do. Null where no soil would do before or after.</summary>
    public Pressure? Change { get; }

    /// <summary>Gets whether the rating cone index beside the machine reaches the critical one after it.</summary>
    public bool ReadingSuffices { get; }

    /// <summary>Gets the gross traction of all driven axles after it: listed, not counted where wheels are buried.</summary>
    public Force GrossTraction { get; }

    /// <summary>Gets the central demand after it, wheels turning.</summary>
    public Force Holds { get; }

    /// <summary>Gets what the step does to that demand; negative where it takes less.</summary>
    public Force HoldsChange { get; }

    /// <summary>Gets what can be said after it.</summary>
    public SelfRecoveryOutlook Outlook { get; }

    /// <summary>Gets the net traction of the driven axles after it; null where a driven wheel is buried or none is driven.</summary>
    public ForceBand? NetTraction { get; }

    /// <summary>Gets what holds it beside the rolling of its driven axles after it; null where a driven wheel is buried or none is driven.</summary>
    public ForceBand? Holding { get; }

    /// <summary>Gets why the critical index did not move, moved so little or the wrong way; empty where it did what one expects.</summary>
    public string Remark => Why?.ToString() ?? string.Empty;

    internal Phrase Called { get; }

    internal Phrase? Why { get; }

    /// <summary>Gives the step in one line, invariant culture.</summary>
    /// <returns>Name, critical index with its change, remark, demand with its change.</returns>
    public override string ToString() => Name + ": " + (CriticalConeIndex is { } index ? "critical cone index " + Text.Kilopascals(index.Pascals, 3) : "no soil would do") + (Change is { } change ? " (" + Signed(change.Kilopascals) + " kPa)" : string.Empty) + (Remark.Length > 0 ? ", " + Remark : string.Empty)
        + "; towed it takes " + Text.Kilonewtons(Holds.Newtons, 3) + " (" + Signed(HoldsChange.Kilonewtons) + " kN)";

    /// <summary>A change with its sign; below a thousandth it is none.</summary>
    private static string Signed(double change) => Math.Abs(change) < 0.001 ? "0" : (change > 0 ? "+" : string.Empty) + Text.Number(change, 3);
}
