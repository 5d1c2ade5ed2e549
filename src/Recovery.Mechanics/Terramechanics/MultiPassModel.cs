using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Cone index that a following wheel meets in the rut of a wheel before it, on compactible soil.</summary>
/// <remarks>
/// <para>CI_after/CI_before = 1 + 1.8 e^(-0.11 B_n), B_n the Brixius numeric of the wheel before.</para>
/// <para>Only on compactible soil. On saturated clay the second pass meets remoulded, weaker soil and the sign reverses: never use it on wet fine-grained soil, never for a bogged machine. Below B_n 5 the value comes back flagged.</para>
/// <para>Source: Brixius 1987 (from memory).</para>
/// </remarks>
public sealed class MultiPassModel : IModel
{
    private MultiPassModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static MultiPassModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Brixius multi-pass";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.MultiPass;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("B_n", "Brixius numeric of the wheel before", 5, double.PositiveInfinity, string.Empty, TerramechanicsSources.LeastNumeric));

    /// <summary>Gives the cone index in the rut of a wheel.</summary>
    /// <param name="first">The wheel that goes first, with the soil before it.</param>
    /// <returns>Cone index after the pass, with its ratio and flags.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="first"/> is null.</exception>
    public MultiPassResult After(WheelOnSoil first)
    {
        Guard.NotNull(first, nameof(first));
        var numeric = BrixiusKernel.Numeric(first.ConeIndex.Pascals, first.SectionWidth.Meters, first.OverallDiameter.Meters, first.DeflectionRatio.DecimalFractions, first.Load.Newtons);
        var ratio = MultiPassKernel.ConeIndexRatio(numeric);
        return new MultiPassResult(ratio, Pressure.FromPascals(first.ConeIndex.Pascals * ratio), numeric, Validity.Flag(numeric));
    }

    /// <summary>Gives the cone index in the rut of many wheels of one size: the same kernel over spans.</summary>
    /// <param name="coneIndexKilopascals">Cone index before the pass, above 0 to 20,000 kPa, one per wheel.</param>
    /// <param name="loadKilonewtons">Load of the wheel that goes first, above 0 to 500 kN, one per wheel.</param>
    /// <param name="sectionWidthMetres">Section width of all wheels, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter of all wheels, 0.2 to 4 m.</param>
    /// <param name="deflectionRatio">Deflection ratio of all wheels, 0.0005 to 0.6.</param>
    /// <param name="coneIndexAfterKilopascals">Receives the cone index after the pass, kPa, one per wheel.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void After(ReadOnlySpan<double> coneIndexKilopascals, ReadOnlySpan<double> loadKilonewtons, double sectionWidthMetres, double overallDiameterMetres, double deflectionRatio, Span<double> coneIndexAfterKilopascals)
    {
        Guard.SameLength(coneIndexKilopascals.Length, loadKilonewtons.Length, nameof(loadKilonewtons));
        Guard.SameLength(coneIndexKilopascals.Length, coneIndexAfterKilopascals.Length, nameof(coneIndexAfterKilopascals));
        Guard.All(coneIndexKilopascals, 1e-3, 20000, "kPa", nameof(coneIndexKilopascals));
        Guard.All(loadKilonewtons, 1e-3, 500, "kN", nameof(loadKilonewtons));
        WheelBatch.GuardWheel(sectionWidthMetres, overallDiameterMetres, deflectionRatio);
        for (var i = 0; i < coneIndexAfterKilopascals.Length; i++)
        {
            var numeric = BrixiusKernel.Numeric(coneIndexKilopascals[i], sectionWidthMetres, overallDiameterMetres, deflectionRatio, loadKilonewtons[i]);
            coneIndexAfterKilopascals[i] = coneIndexKilopascals[i] * MultiPassKernel.ConeIndexRatio(numeric);
        }
    }

    /// <summary>Works the cone index out step by step.</summary>
    /// <param name="first">The wheel that goes first, with the soil before it.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="first"/> is null.</exception>
    public Working Explain(WheelOnSoil first)
    {
        var result = After(first);
        string bn = Text.Number(result.Numeric), ratio = Text.Number(result.Ratio);
        return new WorkingBuilder(Name)
            .Step("B_n", "Brixius numeric of the wheel before", "(CI b d/W)(1 + 5 delta/h)/(1 + 3 b/d)", first.ToString(), bn, TerramechanicsSources.Brixius)
            .Step("q", "cone index after over before", "1 + 1.8 e^(-0.11 B_n)", $"1 + 1.8 e^(-0.11 x {bn})", ratio, Source)
            .Step("CI_after", "cone index that the next wheel meets", "q CI", $"{ratio} x {Text.Number(first.ConeIndex.Kilopascals)}", Text.Kilopascals(result.ConeIndexAfter.Pascals), Source)
            .Build();
    }
}
