using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The closing steps that every wheel model shares.</summary>
internal static class WheelSteps
{
    /// <summary>Asks the kernel of a model for a typed wheel.</summary>
    public static WheelFlat At(this IFlatWheelModel model, WheelOnSoil wheel, double slip) =>
        model.At(wheel.ConeIndex.Pascals, wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, wheel.DeflectionRatio.DecimalFractions, wheel.Load.Newtons, slip);

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
