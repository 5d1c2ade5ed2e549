using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Towed resistance of a wheel on clay after the WES clay numeric, with its pole: practical immobilisation.</summary>
/// <remarks>
/// <para>N_c = (CI b d/W) sqrt(delta/h)/(1 + b/(2 d)); MRR = 0.04 + 0.20/(N_c - 2.50).</para>
/// <para>CI cone index in kPa; b, d unloaded width and diameter in m; W wheel load in kN. At and below N_c 2.5 the wheel is immobile and there is no number. Traction is not given: the remembered pull relation is of low confidence.</para>
/// <para>Near the pole the value grows without bound; below N_c of about 3 it comes back flagged. The cautious side among the models.</para>
/// <para>Source: Turnage 1972, WES TR 3-666 Report 8 (from memory).</para>
/// </remarks>
public sealed class WesClayModel : IFlatWheelModel
{
    private WesClayModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static WesClayModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "WES clay";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.WesClay;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("N_c", "clay numeric", 3, double.PositiveInfinity, string.Empty, TerramechanicsSources.LeastNumeric),
        WheelLimits.Load);

    /// <inheritdoc/>
    public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip) => this.OnNumericAndLoad(wheel, slip);

    WheelFlat IFlatWheelModel.At(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip)
    {
        var numeric = ClayNumericKernel.Numeric(coneIndexPascals, widthMetres, diameterMetres, deflectionRatio, loadNewtons);
        return numeric > ClayNumericKernel.Pole ? WheelFlat.Towed(numeric, ClayNumericKernel.TowedRatio(numeric)) : WheelFlat.Immobile(numeric);
    }

    /// <inheritdoc/>
    public Working Explain(WheelOnSoil wheel, Ratio slip)
    {
        var result = Evaluate(wheel, slip);
        var nc = Text.Number(result.Numeric);
        var working = NumericStep(new WorkingBuilder(Name), wheel, "N_c", nc, Source);
        return (result.Outcome == WheelOutcome.Immobile
                ? working.Nothing(result, "MRR", "at and below N_c 2.5 the towed form has no value: the wheel does not roll")
                : working.Step("MRR", "motion resistance ratio", "0.04 + 0.20/(N_c - 2.50)", $"0.04 + 0.20/({nc} - 2.50)", Text.Number(result.MotionResistanceRatio!.Value), Source).Resistance(result))
            .Build();
    }

    internal static double NumericOf(WheelOnSoil wheel) =>
        ClayNumericKernel.Numeric(wheel.ConeIndex.Pascals, wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, wheel.DeflectionRatio.DecimalFractions, wheel.Load.Newtons);

    internal static WorkingBuilder NumericStep(WorkingBuilder working, WheelOnSoil wheel, string symbol, string value, Source source)
    {
        string b = Text.Number(wheel.SectionWidth.Meters), d = Text.Number(wheel.OverallDiameter.Meters);
        return working.Step(
            symbol,
            "clay numeric",
            "(CI b d/W) sqrt(delta/h)/(1 + b/(2 d))",
            $"({Text.Number(wheel.ConeIndex.Kilopascals)} x {b} x {d}/{Text.Number(wheel.Load.Kilonewtons)}) sqrt({Text.Number(wheel.DeflectionRatio.DecimalFractions)})/(1 + {b}/(2 x {d}))",
            value,
            source);
    }
}
