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
