using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index and shear strength of peat from its moisture, and from its humification where that is known.</summary>
/// <remarks>
/// <para>Power law: CI = 10504 w^-0.561 kPa. Amarjan: CI = (2500/w)(100 - 3.60 H^1.414) kPa and tau = (140/w)(100 - 2.83 H^1.41) kPa; w gravimetric moisture in per cent, H degree of humification after von Post, 1 to 10.</para>
/// <para>The ranges of the fits are not stated; moisture outside 100 to 1,500 % is flagged (judgement). Both reported; the original papers are not fully cited by the text they come from.</para>
/// </remarks>
public sealed class PeatModel : IModel
{
    private PeatModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static PeatModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Strength of peat";

    /// <inheritdoc/>
    public Source Source => GroundSources.Peat;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("w", "gravimetric moisture of peat", 100, 1500, "%", GeneralSources.Judgement));

    /// <summary>Gives the cone index by the power law.</summary>
    /// <param name="gravimetricMoisture">Water over dry mass, 20 to 3,000 %.</param>
    /// <returns>The cone index.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range.</exception>
    public Pressure ConeIndex(Ratio gravimetricMoisture) => Pressure.FromPascals(PenetrationKernel.Peat(Percent(gravimetricMoisture)));

    /// <summary>Gives the cone index after Amarjan.</summary>
    /// <param name="gravimetricMoisture">Water over dry mass, 20 to 3,000 %.</param>
    /// <param name="humification">Degree of humification after von Post, 1 to 10.</param>
    /// <returns>The cone index.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure ConeIndex(Ratio gravimetricMoisture, int humification) => Pressure.FromPascals(PenetrationKernel.AmarjanConeIndex(Percent(gravimetricMoisture), Guard.Count(humification, 1, 10, nameof(humification))));

    /// <summary>Gives the shear strength after Amarjan.</summary>
    /// <param name="gravimetricMoisture">Water over dry mass, 20 to 3,000 %.</param>
    /// <param name="humification">Degree of humification after von Post, 1 to 10.</param>
    /// <returns>The shear strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure ShearStrength(Ratio gravimetricMoisture, int humification) => Pressure.FromPascals(PenetrationKernel.AmarjanShear(Percent(gravimetricMoisture), Guard.Count(humification, 1, 10, nameof(humification))));

    /// <summary>Gets the limits that a moisture lies outside of.</summary>
    /// <param name="gravimetricMoisture">Water over dry mass, 20 to 3,000 %.</param>
    /// <returns>The flags; empty within.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range.</exception>
    public IReadOnlyList<ValidityFlag> Flags(Ratio gravimetricMoisture) => Validity.Flag(Percent(gravimetricMoisture));

    /// <summary>Works all three out.</summary>
    /// <param name="gravimetricMoisture">Water over dry mass, 20 to 3,000 %.</param>
    /// <param name="humification">Degree of humification after von Post, 1 to 10.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Ratio gravimetricMoisture, int humification)
    {
        string w = Text.Number(gravimetricMoisture.Percent), h = Text.Number(humification);
        return new WorkingBuilder(Name)
            .Step("CI", "cone index, power law", "10504 w^-0.561", "10504 x " + w + "^-0.561", Text.Kilopascals(ConeIndex(gravimetricMoisture).Pascals), Source)
            .Step("CI", "cone index, Amarjan", "(2500/w)(100 - 3.60 H^1.414)", "(2500/" + w + ")(100 - 3.60 x " + h + "^1.414)", Text.Kilopascals(ConeIndex(gravimetricMoisture, humification).Pascals), GroundSources.Amarjan)
            .Step("tau", "shear strength, Amarjan", "(140/w)(100 - 2.83 H^1.41)", "(140/" + w + ")(100 - 2.83 x " + h + "^1.41)", Text.Kilopascals(ShearStrength(gravimetricMoisture, humification).Pascals), GroundSources.Amarjan)
            .Build();
    }

    private static double Percent(Ratio gravimetricMoisture) => Guard.Range(gravimetricMoisture.DecimalFractions * 100, 20, 3000, "%", nameof(gravimetricMoisture));
}
