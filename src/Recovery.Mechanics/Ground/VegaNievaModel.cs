using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index of mineral soil from sand content, porosity and saturation after Vega-Nieva et al. 2009.</summary>
/// <remarks>
/// <para>CI = 10^(1.99 - 0.38 sand - 2.23 porosity - 0.72 S) MPa; sand fraction of the dry mass, porosity, S degree of saturation, all as fractions.</para>
/// <para>The range of the fit is not stated; porosities outside 0.3 to 0.7 are flagged (judgement). Source: Vega-Nieva et al. 2009 (reported).</para>
/// </remarks>
public sealed class VegaNievaModel : IModel
{
    private VegaNievaModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static VegaNievaModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Cone index of mineral soil, Vega-Nieva";

    /// <inheritdoc/>
    public Source Source => GroundSources.VegaNieva;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("n", "porosity of mineral soil", 0.3, 0.7, string.Empty, GeneralSources.Judgement));

    /// <summary>Gives the cone index.</summary>
    /// <param name="sand">Sand fraction, 0 to 1.</param>
    /// <param name="porosity">Porosity, 0.05 to 0.95.</param>
    /// <param name="saturation">Degree of saturation, 0 to 1.</param>
    /// <returns>The cone index.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure Evaluate(Ratio sand, Ratio porosity, Ratio saturation) =>
        Pressure.FromPascals(PenetrationKernel.VegaNieva(Guard.Fraction(sand, 0, 1, nameof(sand)), Porosity(porosity), Guard.Fraction(saturation, 0, 1, nameof(saturation))));

    /// <summary>Gets the limits that a porosity lies outside of.</summary>
    /// <param name="porosity">Porosity, 0.05 to 0.95.</param>
    /// <returns>The flags; empty within.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The porosity is outside its range.</exception>
    public IReadOnlyList<ValidityFlag> Flags(Ratio porosity) => Validity.Flag(Porosity(porosity));

    /// <summary>Works the cone index out.</summary>
    /// <param name="sand">Sand fraction, 0 to 1.</param>
    /// <param name="porosity">Porosity, 0.05 to 0.95.</param>
    /// <param name="saturation">Degree of saturation, 0 to 1.</param>
    /// <returns>The worked step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Ratio sand, Ratio porosity, Ratio saturation) => new WorkingBuilder(Name)
        .Step("CI", "cone index", "10^(1.99 - 0.38 sand - 2.23 n - 0.72 S) MPa", "10^(1.99 - 0.38 x " + Text.Number(sand.DecimalFractions) + " - 2.23 x " + Text.Number(porosity.DecimalFractions) + " - 0.72 x " + Text.Number(saturation.DecimalFractions) + ")", Text.Kilopascals(Evaluate(sand, porosity, saturation).Pascals), Source)
        .Build();

    private static double Porosity(Ratio porosity) => Guard.Fraction(porosity, 0.05, 0.95, nameof(porosity));
}
