using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Motion resistance and traction of an agricultural wheel after Brixius 1987 (ASABE D497).</summary>
/// <remarks>
/// <para>B_n = (CI b d/W)(1 + 5 delta/h)/(1 + 3 b/d); MRR = c/B_n + r + 0.5 s/sqrt(B_n); GTR = 0.88 (1 - e^(-0.1 B_n))(1 - e^(-k s)) + r; NTR = GTR - MRR.
/// Bias-ply tyres: c 1, r 0.04, k 7.5. Radial tyres: c 0.9, r 0.0325, k 9.5.</para>
/// <para>CI cone index in kPa of the soil before the wheel; b, d unloaded width and diameter in m; W dynamic wheel load in kN; delta/h static deflection over section height; s slip as a decimal.</para>
/// <para>Fitted for b/d 0.1 to 0.7, deflection 10 to 30 % of section height, W/(b d) 15 to 55 kN/m2 on soils that are not highly compactible; no support below B_n of about 5; the tests went to wheel loads of about 60 kN. Outside, the value comes back flagged.
/// It describes a wheel rolling in a shallow rut: on a wheel sunk more than a tenth of its diameter it is a lower limit only.</para>
/// <para>Bias constants give about a tenth less net traction and more resistance than radial ones: bias is the cautious set for what a machine sustains, radial for what it can impose on a rig.</para>
/// <para>Source: Brixius 1987, ASAE Paper 87-1622, equations reported in ASABE D497 clause 3 (secondary); radial values reported (secondary).</para>
/// </remarks>
public sealed class BrixiusModel : IFlatWheelModel
{
    private readonly BrixiusConstants _constants;

    private BrixiusModel(string name, Source source, BrixiusConstants constants)
    {
        Name = name;
        Source = source;
        _constants = constants;
    }

    /// <summary>Gets the model with the constants of bias-ply tyres.</summary>
    public static BrixiusModel Bias { get; } = new("Brixius (bias-ply)", TerramechanicsSources.Brixius, BrixiusConstants.Bias);

    /// <summary>Gets the model with the constants of radial tyres.</summary>
    public static BrixiusModel Radial { get; } = new("Brixius (radial)", TerramechanicsSources.BrixiusRadial, BrixiusConstants.Radial);

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Source Source { get; }

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("b/d", "width over diameter", 0.1, 0.7, string.Empty, TerramechanicsSources.D497Range),
        new ValidityLimit("delta/h", "static deflection over section height", 0.1, BrixiusKernel.MostDeflection, string.Empty, TerramechanicsSources.D497Range),
        new ValidityLimit("W/(b d)", "wheel load over width times diameter", 15, 55, "kN/m2", TerramechanicsSources.D497RangeFromMemory),
        new ValidityLimit("B_n", "wheel numeric", 5, double.PositiveInfinity, string.Empty, TerramechanicsSources.D497RangeFromMemory),
        WheelLimits.Load);

    /// <inheritdoc/>
    public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip)
    {
        Guard.NotNull(wheel, nameof(wheel));
        var s = Guard.Fraction(slip, 0, 1, nameof(slip));
        double b = wheel.SectionWidth.Meters, d = wheel.OverallDiameter.Meters, dh = wheel.DeflectionRatio.DecimalFractions, w = wheel.Load.Newtons;
        var flat = this.At(wheel, s);
        return new WheelResult(this, flat, w, s, Validity.Flag(b / d, dh, w / (b * d) / 1000, flat.Numeric, w / 1000));
    }

    WheelFlat IFlatWheelModel.At(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip)
    {
        var numeric = BrixiusKernel.Numeric(coneIndexPascals, widthMetres, diameterMetres, deflectionRatio, loadNewtons);
        double resistance = BrixiusKernel.MotionResistanceRatio(numeric, slip, _constants), gross = BrixiusKernel.GrossTractionRatio(numeric, slip, _constants);
        return WheelFlat.Rolls(numeric, resistance, gross, gross - resistance);
    }

    /// <inheritdoc/>
    public Working Explain(WheelOnSoil wheel, Ratio slip)
    {
        var result = Evaluate(wheel, slip);
        string b = Text.Number(wheel.SectionWidth.Meters), d = Text.Number(wheel.OverallDiameter.Meters), dh = Text.Number(wheel.DeflectionRatio.DecimalFractions);
        string ci = Text.Number(wheel.ConeIndex.Kilopascals), w = Text.Number(wheel.Load.Kilonewtons), s = Text.Number(slip.DecimalFractions), bn = Text.Number(result.Numeric);
        string c = Text.Number(_constants.Soft), r = Text.Number(_constants.Rolling), k = Text.Number(_constants.SlipDecay);
        string mrr = Text.Number(result.MotionResistanceRatio!.Value), gtr = Text.Number(result.GrossTractionRatio!.Value), ntr = Text.Number(result.NetTractionRatio!.Value);
        return new WorkingBuilder(Name)
            .Step("B_n", "wheel numeric", "(CI b d/W)(1 + 5 delta/h)/(1 + 3 b/d)", $"({ci} x {b} x {d}/{w})(1 + 5 x {dh})/(1 + 3 x {b}/{d})", bn, Source)
            .Step("MRR", "motion resistance ratio", "c/B_n + r + 0.5 s/sqrt(B_n)", $"{c}/{bn} + {r} + 0.5 x {s}/sqrt({bn})", mrr, Source)
            .Step("GTR", "gross traction ratio", "0.88 (1 - e^(-0.1 B_n))(1 - e^(-k s)) + r", $"0.88 (1 - e^(-0.1 x {bn}))(1 - e^(-{k} x {s})) + {r}", gtr, Source)
            .Step("NTR", "net traction ratio", "GTR - MRR", $"{gtr} - {mrr}", ntr, Source)
            .Step("MR", "motion resistance", "MRR W", $"{mrr} x {w}", Text.Kilonewtons(result.MotionResistance!.Value.Newtons), Source)
            .Step("NT", "net traction", "NTR W", $"{ntr} x {w}", Text.Kilonewtons(result.NetTraction!.Value.Newtons), Source)
            .Build();
    }

    /// <summary>Gives the net traction of many wheels at once: the same kernel over spans.</summary>
    /// <param name="coneIndexKilopascals">Cone index fed to the model, above 0, kPa, one per wheel.</param>
    /// <param name="loadKilonewtons">Dynamic wheel load, above 0, kN, one per wheel.</param>
    /// <param name="sectionWidthMetres">Section width b of all wheels, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter d of all wheels, 0.2 to 4 m.</param>
    /// <param name="deflectionRatio">Deflection ratio of all wheels, 0.0005 to 0.6.</param>
    /// <param name="slip">Slip of all wheels, 0 to 1.</param>
    /// <param name="netTractionKilonewtons">Receives the net traction, kN, one per wheel.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void NetTraction(ReadOnlySpan<double> coneIndexKilopascals, ReadOnlySpan<double> loadKilonewtons, double sectionWidthMetres, double overallDiameterMetres, double deflectionRatio, double slip, Span<double> netTractionKilonewtons)
    {
        Guard.SameLength(coneIndexKilopascals.Length, loadKilonewtons.Length, nameof(loadKilonewtons));
        (ReferenceEquals(this, Radial) ? BrixiusBatch.Radial : BrixiusBatch.Bias).NetTraction(coneIndexKilopascals, loadKilonewtons, sectionWidthMetres, overallDiameterMetres, deflectionRatio, slip, netTractionKilonewtons);
    }
}
