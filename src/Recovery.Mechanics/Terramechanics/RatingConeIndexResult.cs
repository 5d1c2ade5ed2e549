using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Go or no-go, motion resistance band and drawbar pull of a running gear on fine-grained soil.</summary>
/// <remarks>Forces are null on a no-go, never a stand-in number.</remarks>
public sealed record RatingConeIndexResult
{
    internal RatingConeIndexResult(IModel model, MobilityResult mobility, double excessPascals, double loadNewtons, double? lowRatio, double? highRatio, double? drawbar, IReadOnlyList<ValidityFlag> flags)
    {
        Model = model;
        Mobility = mobility;
        ExcessPascals = excessPascals;
        Load = Force.FromNewtons(loadNewtons);
        MotionResistanceRatioLow = lowRatio;
        MotionResistanceRatioHigh = highRatio;
        DrawbarCoefficient = drawbar;
        Flags = flags;
    }

    /// <summary>Gets the model.</summary>
    public IModel Model { get; }

    /// <summary>Gets mobility index and vehicle cone index of the running gear.</summary>
    public MobilityResult Mobility { get; }

    /// <summary>Gets whether the soil carries the vehicle once: rating cone index at least VCI1.</summary>
    public bool Go => ExcessPascals >= 0;

    /// <summary>Gets the rating cone index less VCI1; negative on a no-go.</summary>
    public Pressure Excess => Pressure.FromPascals(ExcessPascals);

    /// <summary>Gets the weight on the running gear.</summary>
    public Force Load { get; }

    /// <summary>Gets motion resistance over weight by the lower of two readings that conflict; on tracks the one reading.</summary>
    public double? MotionResistanceRatioLow { get; }

    /// <summary>Gets motion resistance over weight by the upper reading.</summary>
    public double? MotionResistanceRatioHigh { get; }

    /// <summary>Gets the motion resistance by the lower reading.</summary>
    public Force? MotionResistanceLow => Times(MotionResistanceRatioLow);

    /// <summary>Gets the motion resistance by the upper reading.</summary>
    public Force? MotionResistanceHigh => Times(MotionResistanceRatioHigh);

    /// <summary>Gets the drawbar pull over weight on the level at about 20 % slip, net of motion resistance.</summary>
    public double? DrawbarCoefficient { get; }

    /// <summary>Gets the drawbar pull on the level.</summary>
    public Force? DrawbarPull => Times(DrawbarCoefficient);

    /// <summary>Gets the limits that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    internal double ExcessPascals { get; }

    /// <summary>Gives the pull that is left for towing on a grade, W (D/W cos - sin); null on a no-go, negative where the vehicle does not climb it.</summary>
    /// <param name="grade">Grade, positive where the ground rises ahead.</param>
    /// <returns>The pull along the ground.</returns>
    public Force? PullOn(Grade grade) => DrawbarCoefficient is { } d ? Force.FromNewtons(Load.Newtons * ((d * Math.Cos(grade.Radians)) - Math.Sin(grade.Radians))) : null;

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Go or no-go with the band.</returns>
    public override string ToString() => Go
        ? "go, motion resistance " + Text.Number(MotionResistanceRatioLow!.Value, 3) + " to " + Text.Number(MotionResistanceRatioHigh!.Value, 3) + " of the weight, drawbar " + Text.Number(DrawbarCoefficient!.Value, 3)
        : "no-go, " + Text.Kilopascals(-ExcessPascals, 3) + " short";

    private Force? Times(double? ratio) => ratio is { } value ? Force.FromNewtons(value * Load.Newtons) : null;
}
