using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>What one model gives for one wheel at one slip.</summary>
/// <remarks>Forces are null where the formula has no meaning (<see cref="WheelOutcome.Immobile"/>), never a stand-in number.</remarks>
public sealed record WheelResult
{
    internal WheelResult(IModel model, in WheelFlat flat, double loadNewtons, double slip, IReadOnlyList<ValidityFlag> flags)
        : this(model, flat.Outcome, loadNewtons, slip, flat.Numeric, flat.Outcome == WheelOutcome.Immobile ? null : flat.Resistance, flat.HasTraction ? flat.Gross : null, flat.HasTraction ? flat.Net : null, flags)
    {
    }

    private WheelResult(IModel model, WheelOutcome outcome, double loadNewtons, double slip, double numeric, double? motionResistanceRatio, double? grossTractionRatio, double? netTractionRatio, IReadOnlyList<ValidityFlag> flags)
    {
        Model = model;
        Outcome = outcome;
        Slip = Ratio.FromDecimalFractions(slip);
        Numeric = numeric;
        MotionResistanceRatio = motionResistanceRatio;
        GrossTractionRatio = grossTractionRatio;
        NetTractionRatio = netTractionRatio;
        Load = Force.FromNewtons(loadNewtons);
        Flags = flags;
    }

    /// <summary>Gets the model.</summary>
    public IModel Model { get; }

    /// <summary>Gets what the model says of the wheel.</summary>
    public WheelOutcome Outcome { get; }

    /// <summary>Gets the load on the wheel.</summary>
    public Force Load { get; }

    /// <summary>Gets the slip (travel reduction ratio) the result belongs to.</summary>
    public Ratio Slip { get; }

    /// <summary>Gets the wheel numeric of the model.</summary>
    public double Numeric { get; }

    /// <summary>Gets motion resistance over load.</summary>
    public double? MotionResistanceRatio { get; }

    /// <summary>Gets gross traction over load.</summary>
    public double? GrossTractionRatio { get; }

    /// <summary>Gets net traction over load.</summary>
    public double? NetTractionRatio { get; }

    /// <summary>Gets the motion resistance.</summary>
    public Force? MotionResistance => Times(MotionResistanceRatio);

    /// <summary>Gets the gross traction.</summary>
    public Force? GrossTraction => Times(GrossTractionRatio);

    /// <summary>Gets the net traction.</summary>
    public Force? NetTraction => Times(NetTractionRatio);

    /// <summary>Gets the tractive efficiency (NT/GT)(1 - s); null where there is no net traction.</summary>
    public double? TractiveEfficiency => NetTractionRatio is > 0 && GrossTractionRatio is > 0 ? NetTractionRatio / GrossTractionRatio * (1 - Slip.DecimalFractions) : null;

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Model, outcome and ratios.</returns>
    public override string ToString() => Model.Name + ": " + (MotionResistanceRatio is { } ratio ? "MRR " + Text.Number(ratio, 3) : "immobile") + (Flags.Count == 0 ? string.Empty : ", outside its range");

    private Force? Times(double? ratio) => ratio is { } value ? Force.FromNewtons(value * Load.Newtons) : null;
}
