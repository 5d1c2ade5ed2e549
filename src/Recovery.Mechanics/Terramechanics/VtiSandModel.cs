using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Gross traction of a wheel on sand after the vehicle-terrain-interface equations; no resistance, so no net traction.</summary>
/// <remarks>
/// <para>G = CI/3.47 in; N_s = G (b d)^1.5 (delta/h)/W; Y = 4.71 + 1.72/s; GTR = X - X Y/(N_s + 10 + Y), X 0.66.</para>
/// <para>CI cone index in kPa, G its gradient with depth in kPa/m; b, d unloaded width and diameter in m; W dynamic wheel load in kN; s slip.</para>
/// <para>The unit of 3.47 is not stated: read as inches (from memory), so that measured gradients are the better input. The relation of resistance that belongs to the set is reported with misprints and is left out. Wheel loads beyond 60 kN and slips beyond 0.30 are flagged.</para>
/// <para>Source: Mason et al. 2016 and 2018, J. Terramechanics, as reported (secondary).</para>
/// </remarks>
public sealed class VtiSandModel : IModel
{
    private VtiSandModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static VtiSandModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "VTI sand";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.VtiSand;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(WheelLimits.Load, WheelLimits.Slip);

    /// <summary>Gives the gross traction with the gradient taken from the cone index.</summary>
    /// <param name="wheel">The wheel, its load and its soil.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slip"/> is outside its range.</exception>
    public SandTractionResult Evaluate(WheelOnSoil wheel, Ratio slip) => At(Guard.NotNull(wheel, nameof(wheel)), VtiKernel.SandGradient(wheel.ConeIndex.Pascals), slip);

    /// <summary>Gives the gross traction with a measured gradient of the cone index.</summary>
    /// <param name="wheel">The wheel and its load; its cone index does not enter.</param>
    /// <param name="gradientKilopascalsPerMetre">Rise of the cone index with depth, 1 to 200,000 kPa/m.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SandTractionResult Evaluate(WheelOnSoil wheel, double gradientKilopascalsPerMetre, Ratio slip) =>
        At(Guard.NotNull(wheel, nameof(wheel)), Guard.Range(gradientKilopascalsPerMetre, 1, 200000, "kPa/m", nameof(gradientKilopascalsPerMetre)) * 1000, slip);

    /// <summary>Works the gross traction out step by step, the gradient taken from the cone index.</summary>
    /// <param name="wheel">The wheel, its load and its soil.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slip"/> is outside its range.</exception>
    public Working Explain(WheelOnSoil wheel, Ratio slip)
    {
        var result = Evaluate(wheel, slip);
        string g = Text.Number(result.GradientKilopascalsPerMetre), ns = Text.Number(result.Numeric), s = Text.Number(slip.DecimalFractions), gtr = Text.Number(result.GrossTractionRatio);
        return new WorkingBuilder(Name)
            .Step("G", "cone index gradient, kPa/m", "CI/(3.47 x 0.0254)", Text.Number(wheel.ConeIndex.Kilopascals) + "/(3.47 x 0.0254)", g, TerramechanicsSources.VtiSandGradient)
            .Step("N_s", "sand numeric", "G (b d)^1.5 (delta/h)/W", $"{g} ({Text.Number(wheel.SectionWidth.Meters)} x {Text.Number(wheel.OverallDiameter.Meters)})^1.5 x {Text.Number(wheel.DeflectionRatio.DecimalFractions)}/{Text.Number(wheel.Load.Kilonewtons)}", ns, Source)
            .Step("GTR", "gross traction ratio", "0.66 (N_s + 10) s/((N_s + 14.71) s + 1.72)", $"0.66 ({ns} + 10) {s}/(({ns} + 14.71) {s} + 1.72)", gtr, Source)
            .Step("GT", "gross traction", "GTR W", $"{gtr} x {Text.Number(wheel.Load.Kilonewtons)}", Text.Kilonewtons(result.GrossTraction.Newtons), Source)
            .Build();
    }

    /// <summary>Gives the gross traction ratio at many slips of one wheel: the same kernel over spans.</summary>
    /// <param name="numeric">Sand numeric N_s, 0 to 10,000.</param>
    /// <param name="slip">Slip, 0 to 1, one per case.</param>
    /// <param name="grossTractionRatio">Receives gross traction over load, one per case.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void GrossTraction(double numeric, ReadOnlySpan<double> slip, Span<double> grossTractionRatio)
    {
        Guard.Range(numeric, 0, 10000, string.Empty, nameof(numeric));
        Guard.SameLength(slip.Length, grossTractionRatio.Length, nameof(grossTractionRatio));
        Guard.All(slip, 0, 1, string.Empty, nameof(slip));
        for (var i = 0; i < slip.Length; i++) grossTractionRatio[i] = VtiKernel.SandGrossTractionRatio(numeric, slip[i]);
    }

    private SandTractionResult At(WheelOnSoil wheel, double gradientPascalsPerMetre, Ratio slip)
    {
        double s = Guard.Fraction(slip, 0, 1, nameof(slip)), w = wheel.Load.Newtons;
        var numeric = VtiKernel.SandNumeric(gradientPascalsPerMetre, wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, wheel.DeflectionRatio.DecimalFractions, w);
        return new SandTractionResult(gradientPascalsPerMetre, numeric, VtiKernel.SandGrossTractionRatio(numeric, s), w, Validity.Flag(w / 1000, s));
    }
}
