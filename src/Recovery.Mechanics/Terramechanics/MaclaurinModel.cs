using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Mean maximum pressure, limiting cone index and rut depth of a wheel after Maclaurin 1990 and 1997.</summary>
/// <remarks>
/// <para>MMP = W/(b^0.8 d^0.8 delta^0.4); N = CI/MMP; limiting CI = 1.85 MMP; rut z = 0.224 d N^-1.25, after m passes z m^(1/a); MRR = 0.017 + 0.453/N; VCI1 = 2.53 + 1.35 MMP in psi.</para>
/// <para>W wheel load in kN; b, d unloaded width and diameter and delta static deflection in m; CI cone index in kPa; a 2 to 3 on loose, 3 to 4 on medium, 4 to 5 on firm soil.</para>
/// <para>Below N 1.85 the model says no-go and the rut is an extrapolation; a rut deeper than a tenth of the diameter is past what any rolling model covers. Both are flagged, and so are wheel loads beyond 60 kN.</para>
/// <para>Source: Saarilahti 2002 eq. 2.20 (secondary); resistance from memory.</para>
/// </remarks>
public sealed class MaclaurinModel : IModel
{
    private MaclaurinModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static MaclaurinModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Maclaurin";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.Maclaurin;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("N", "cone index over mean maximum pressure", MaclaurinKernel.LimitFactor, double.PositiveInfinity, string.Empty, TerramechanicsSources.Maclaurin),
        new ValidityLimit("z/d", "rut depth over diameter", 0, 0.1, string.Empty, TerramechanicsSources.RollingSinkage),
        WheelLimits.Load);

    /// <summary>Gives limiting cone index, rut and resistance of one wheel.</summary>
    /// <param name="wheel">The wheel, its load and its soil; its deflection ratio does not enter.</param>
    /// <param name="deflection">Static deflection delta, 0.001 to 0.6 m.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="deflection"/> is outside its range.</exception>
    public MaclaurinResult Evaluate(WheelOnSoil wheel, Length deflection)
    {
        Guard.NotNull(wheel, nameof(wheel));
        var delta = Guard.Metres(deflection, 0.001, 0.6, nameof(deflection));
        double d = wheel.OverallDiameter.Meters, w = wheel.Load.Newtons;
        var pressure = MaclaurinKernel.MeanMaximumPressure(w, wheel.SectionWidth.Meters, d, delta);
        var numeric = wheel.ConeIndex.Pascals / pressure;
        var rut = MaclaurinKernel.RutDepth(d, numeric);
        return new MaclaurinResult(pressure, numeric, rut, MaclaurinKernel.MotionResistanceRatio(numeric), w, Validity.Flag(numeric, rut / d, w / 1000));
    }

    /// <summary>Gives the rut depth after several passes of the same wheel.</summary>
    /// <param name="firstRut">Rut of one pass, 0 to 2 m.</param>
    /// <param name="passes">Passes, 1 to 1,000.</param>
    /// <param name="multipassExponent">Exponent a, 2 to 5: 2 to 3 loose, 3 to 4 medium, 4 to 5 firm soil.</param>
    /// <returns>The rut.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length RutDepthAfter(Length firstRut, int passes, double multipassExponent) => Length.FromMeters(MaclaurinKernel.RutDepthAfter(
        Guard.Metres(firstRut, 0, 2, nameof(firstRut)), Guard.Count(passes, 1, 1000, nameof(passes)), Guard.Range(multipassExponent, 2, 5, string.Empty, nameof(multipassExponent))));

    /// <summary>Gives the rut of one pass and the go or no-go of many wheels of one size: the same kernel over spans.</summary>
    /// <param name="coneIndexKilopascals">Cone index, above 0 to 20,000 kPa, one per wheel.</param>
    /// <param name="loadKilonewtons">Wheel load, above 0 to 500 kN, one per wheel.</param>
    /// <param name="sectionWidthMetres">Section width of all wheels, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter of all wheels, 0.2 to 4 m.</param>
    /// <param name="deflectionMetres">Static deflection of all wheels, 0.001 to 0.6 m.</param>
    /// <param name="rutMetres">Receives the rut depth, m, one per wheel; below the limiting cone index an extrapolation.</param>
    /// <param name="go">Receives whether the cone index reaches the limiting one.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void RutDepth(ReadOnlySpan<double> coneIndexKilopascals, ReadOnlySpan<double> loadKilonewtons, double sectionWidthMetres, double overallDiameterMetres, double deflectionMetres, Span<double> rutMetres, Span<bool> go)
    {
        Guard.SameLength(coneIndexKilopascals.Length, loadKilonewtons.Length, nameof(loadKilonewtons));
        Guard.SameLength(coneIndexKilopascals.Length, rutMetres.Length, nameof(rutMetres));
        Guard.SameLength(coneIndexKilopascals.Length, go.Length, nameof(go));
        Guard.All(coneIndexKilopascals, 1e-3, 20000, "kPa", nameof(coneIndexKilopascals));
        Guard.All(loadKilonewtons, 1e-3, 500, "kN", nameof(loadKilonewtons));
        WheelBatch.GuardWheel(sectionWidthMetres, overallDiameterMetres, WheelOnSoil.LeastDeflectionRatio);
        Guard.Range(deflectionMetres, 0.001, 0.6, "m", nameof(deflectionMetres));
        for (var i = 0; i < go.Length; i++)
        {
            var numeric = coneIndexKilopascals[i] / MaclaurinKernel.MeanMaximumPressure(loadKilonewtons[i], sectionWidthMetres, overallDiameterMetres, deflectionMetres);
            rutMetres[i] = MaclaurinKernel.RutDepth(overallDiameterMetres, numeric);
            go[i] = numeric >= MaclaurinKernel.LimitFactor;
        }
    }

    /// <summary>Works the rut out step by step.</summary>
    /// <param name="wheel">The wheel, its load and its soil.</param>
    /// <param name="deflection">Static deflection delta, 0.001 to 0.6 m.</param>
    /// <returns>The worked steps; the last is the rut of one pass.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="deflection"/> is outside its range.</exception>
    public Working Explain(WheelOnSoil wheel, Length deflection)
    {
        var result = Evaluate(wheel, deflection);
        string d = Text.Number(wheel.OverallDiameter.Meters), mmp = Text.Number(result.MeanMaximumPressure.Kilopascals), n = Text.Number(result.Numeric);
        return new WorkingBuilder(Name)
            .Step("MMP", "mean maximum pressure", "W/(b^0.8 d^0.8 delta^0.4)", $"{Text.Number(wheel.Load.Kilonewtons)}/({Text.Number(wheel.SectionWidth.Meters)}^0.8 x {d}^0.8 x {Text.Number(deflection.Meters)}^0.4)", mmp + " kPa", Source)
            .Step("CI_limit", "limiting cone index", "1.85 MMP", $"1.85 x {mmp}", Text.Kilopascals(result.LimitingConeIndex.Pascals), Source)
            .Step("VCI1", "rating cone index for one pass by the mean maximum pressure", "2.53 + 1.35 MMP psi", $"2.53 psi + 1.35 x {mmp}", Text.Kilopascals(result.OnePass.Pascals), TerramechanicsSources.OnePassPressure)
            .Step("N", "cone index over mean maximum pressure", "CI/MMP", $"{Text.Number(wheel.ConeIndex.Kilopascals)}/{mmp}", n, Source)
            .Step("MRR", "motion resistance ratio", "0.017 + 0.453/N", $"0.017 + 0.453/{n}", Text.Number(result.MotionResistanceRatio), TerramechanicsSources.MaclaurinResistance)
            .Step("z", "rut depth of one pass", "0.224 d N^-1.25", $"0.224 x {d} x {n}^-1.25", Text.With(result.RutDepth.Meters, "m"), Source)
            .Build();
    }
}
