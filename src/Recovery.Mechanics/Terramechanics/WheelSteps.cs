using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The closing steps that every wheel model shares.</summary>
internal static class WheelSteps
{
    /// <summary>Asks the kernel of a model for a typed wheel.</summary>
    public static WheelFlat At(this IFlatWheelModel model, WheelOnSoil wheel, double slip) =>
        model.At(wheel.ConeIndex.Pascals, wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, wheel.DeflectionRatio.DecimalFractions, wheel.Load.Newtons, slip);

    /// <summary>Evaluates a model whose range is that of its wheel numeric and of the load, kN, in that order.</summary>
    public static WheelResult OnNumericAndLoad(this IFlatWheelModel model, WheelOnSoil wheel, Ratio slip)
    {
        Guard.NotNull(wheel, nameof(wheel));
        var s = Guard.Fraction(slip, 0, 1, nameof(slip));
        var w = wheel.Load.Newtons;
        var flat = model.At(wheel, s);
        return new WheelResult(model, flat, w, s, model.Validity.Flag(flat.Numeric, w / 1000));
    }

    /// <summary>Adds the motion resistance as a force.</summary>
    public static WorkingBuilder Resistance(this WorkingBuilder working, WheelResult result) =>
        working.Step("MR", "motion resistance", "MRR W", Text.Number(result.MotionResistanceRatio!.Value) + " x " + Text.Number(result.Load.Kilonewtons), Text.Kilonewtons(result.MotionResistance!.Value.Newtons), result.Model.Source);

    /// <summary>Adds the net traction as a force.</summary>
    public static WorkingBuilder Net(this WorkingBuilder working, WheelResult result) =>
        working.Step("NT", "net traction", "NTR W", Text.Number(result.NetTractionRatio!.Value) + " x " + Text.Number(result.Load.Kilonewtons), Text.Kilonewtons(result.NetTraction!.Value.Newtons), result.Model.Source);

    /// <summary>Says that there is no number.</summary>
    public static WorkingBuilder Nothing(this WorkingBuilder working, WheelResult result, string symbol, string why) =>
        working.Step(symbol, why, "none", "none", result.Outcome == WheelOutcome.Immobile ? "immobile" : "no drive", result.Model.Source);
}
