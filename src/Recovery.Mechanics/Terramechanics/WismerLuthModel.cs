using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Motion resistance and traction of an agricultural wheel after Wismer and Luth 1973.</summary>
/// <remarks>
/// <para>C_n = CI b d/W; MRR = 1.2/C_n + 0.04; GTR = 0.75 (1 - e^(-0.3 C_n s)); NTR = GTR - MRR.</para>
/// <para>CI cone index in kPa; b, d unloaded width and diameter in m; W dynamic wheel load in kN; s slip as a decimal. Deflection does not enter.</para>
/// <para>Stated for b/d about 0.30 and delta/h about 0.20 on cohesive-frictional soils that are not highly compactible. Outside a third to either side, and below C_n 5, the value comes back flagged.</para>
/// <para>Gross traction saturates slowly: at slips beyond 0.30 the form is optimistic and flags. It describes a wheel in a shallow rut.</para>
/// <para>Source: Wismer and Luth 1973 and 1974 (secondary); range from memory.</para>
/// </remarks>
public sealed class WismerLuthModel : IFlatWheelModel
{
    private WismerLuthModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static WismerLuthModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Wismer-Luth";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.WismerLuth;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("b/d", "width over diameter", 0.2, 0.4, string.Empty, TerramechanicsSources.WismerLuthRange),
        new ValidityLimit("delta/h", "static deflection over section height", 0.13, 0.27, string.Empty, TerramechanicsSources.WismerLuthRange),
        new ValidityLimit("C_n", "wheel numeric", 5, double.PositiveInfinity, string.Empty, TerramechanicsSources.LeastNumeric),
        WheelLimits.Load,
        WheelLimits.Slip);

    /// <inheritdoc/>
    public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip)
    {
        Guard.NotNull(wheel, nameof(wheel));
        var s = Guard.Fraction(slip, 0, 1, nameof(slip));
        double b = wheel.SectionWidth.Meters, d = wheel.OverallDiameter.Meters, w = wheel.Load.Newtons;
        var flat = this.At(wheel, s);
        return new WheelResult(this, flat, w, s, Validity.Flag(b / d, wheel.DeflectionRatio.DecimalFractions, flat.Numeric, w / 1000, s));
    }

    WheelFlat IFlatWheelModel.At(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip)
    {
        var numeric = WismerLuthKernel.Numeric(coneIndexPascals, widthMetres, diameterMetres, loadNewtons);
        double resistance = WismerLuthKernel.MotionResistanceRatio(numeric), gross = WismerLuthKernel.GrossTractionRatio(numeric, slip);
        return WheelFlat.Rolls(numeric, resistance, gross, gross - resistance);
    }

    /// <inheritdoc/>
    public Working Explain(WheelOnSoil wheel, Ratio slip)
    {
        var result = Evaluate(wheel, slip);
        string cn = Text.Number(result.Numeric), s = Text.Number(slip.DecimalFractions);
        string mrr = Text.Number(result.MotionResistanceRatio!.Value), gtr = Text.Number(result.GrossTractionRatio!.Value), ntr = Text.Number(result.NetTractionRatio!.Value);
        return new WorkingBuilder(Name)
            .Step("C_n", "wheel numeric", "CI b d/W", $"{Text.Number(wheel.ConeIndex.Kilopascals)} x {Text.Number(wheel.SectionWidth.Meters)} x {Text.Number(wheel.OverallDiameter.Meters)}/{Text.Number(wheel.Load.Kilonewtons)}", cn, Source)
            .Step("MRR", "motion resistance ratio", "1.2/C_n + 0.04", $"1.2/{cn} + 0.04", mrr, Source)
            .Resistance(result)
            .Step("GTR", "gross traction ratio", "0.75 (1 - e^(-0.3 C_n s))", $"0.75 (1 - e^(-0.3 x {cn} x {s}))", gtr, Source)
            .Step("NTR", "net traction ratio", "GTR - MRR", $"{gtr} - {mrr}", ntr, Source)
            .Net(result)
            .Build();
    }
}
