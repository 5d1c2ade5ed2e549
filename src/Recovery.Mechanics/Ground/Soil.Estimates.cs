using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <content>Soils that no cone has read: from class and moisture, from the hand, from the liquidity index, from a shear test.</content>
public sealed partial record Soil
{
    /// <summary>Gets the undrained strength of the uncut soil over the band of the cone factor: CI/20, CI/12.5, CI/10 (band from memory). For sensitivity and sampling, beside the bounds and never on top of them.</summary>
    public StrengthBand UndrainedShearStrengthBand => Band(ConeIndex.Pascals);

    /// <summary>Gets the strength that remoulding leaves, RCI over the band of the cone factor: RCI/20, RCI/12.5, RCI/10 (band from memory).</summary>
    public StrengthBand RemouldedShearStrengthBand => Band(RatingConeIndex.Pascals);

    /// <summary>Makes a soil from its class and its moisture (<see cref="MoistureConeIndexModel"/>); listed as still to measure, with the low end of the scatter as the weakest reading.</summary>
    /// <param name="uscs">Soil class.</param>
    /// <param name="gravimetricMoisture">Water over dry mass, 1 to 200 %, such that the fit gives 2 to 20,000 kPa.</param>
    /// <returns>The soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range, or the fit gives no possible soil there.</exception>
    public static Soil FromMoisture(UscsClass uscs, Ratio gravimetricMoisture)
    {
        var fit = MoistureConeIndexModel.Instance.Evaluate(uscs, gravimetricMoisture);
        var kilopascals = fit.ConeIndex.Kilopascals;
        if (kilopascals is < 2 or > 20000)
            throw new ArgumentOutOfRangeException(nameof(gravimetricMoisture), "gravimetricMoisture " + Text.With(fit.Moisture.Percent, "%") + " gives " + MoistureConeIndexModel.Label(uscs) + " a cone index of " + Text.With(kilopascals, "kPa", 2) + "; the fit holds for none outside 2 to 20000 kPa.");
        var assumption = new Assumption(
            "assume.strength-from-moisture",
            "cone index and remoulding index of the soil (cone readings beside the machine)",
            "about " + Rough.Kilopascals(fit.ConeIndex.Pascals) + " and " + Text.Number(fit.RemouldingIndex.DecimalFractions, 2) + " from class " + MoistureConeIndexModel.Label(uscs) + " at " + Text.With(fit.Moisture.Percent, "%", 3) + " moisture",
            "The fit scatters by a factor of 1.5 to 2 either way; resistance, traction and the strength under the wheels all follow it.",
            GroundSources.MoistureScatter);
        return new Soil(fit.ConeIndex, fit.ConeIndexLow, null, MoistureCoefficients.Of(uscs).Kind, new SoilEstimate(assumption, fit.RemouldingIndex.DecimalFractions));
    }

    /// <summary>Makes a soil from what thumb or fist found (<see cref="ConsistencyModel"/>), with CI = 12.5 s_u; the lower bound of the class becomes the weakest reading. Listed as still to measure.</summary>
    /// <param name="consistency">What thumb or fist found on uncut soil in the layer that carries the wheels.</param>
    /// <returns>The soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not defined.</exception>
    public static Soil FromConsistency(Consistency consistency)
    {
        var band = ConsistencyModel.Instance.Evaluate(consistency);
        return Estimated(SoilKernel.ConeIndex(band.CentralPascals, SoilKernel.ConeFactor), SoilKernel.ConeIndex(band.LowPascals, SoilKernel.ConeFactor), ConsistencyModel.Instance.HandTest(consistency), "A class spans a factor of two.");
    }

    /// <summary>Makes a soil from its undrained shear strength, uncut, with CI = 12.5 s_u (cone factor from memory); the remoulding index is assumed and both are listed as still to measure.</summary>
    /// <param name="undrainedShearStrength">Undrained shear strength of the uncut soil, 0.1 to 1,600 kPa.</param>
    /// <returns>The soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public static Soil FromUndrainedShearStrength(Pressure undrainedShearStrength)
    {
        var ci = SoilKernel.ConeIndex(Guard.Pascals(undrainedShearStrength, 0.1, 1600, nameof(undrainedShearStrength)), SoilKernel.ConeFactor);
        return Estimated(ci, ci, "an undrained shear strength of " + Text.Kilopascals(undrainedShearStrength.Pascals, 3), "The cone factor lies anywhere from 10 to 20.");
    }

    /// <summary>Makes a soil from its liquidity index (<see cref="LiquidityIndexModel"/>). That strength is of remoulded soil, so RCI = 12.5 s_u and CI = RCI/RI with the remoulding index assumed (judgement); listed as still to measure.</summary>
    /// <param name="liquidityIndex">Liquidity index, -0.5 to 1.8; outside 0.2 to 1.1 the fit has little support.</param>
    /// <returns>The soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    public static Soil FromLiquidityIndex(Ratio liquidityIndex)
    {
        Guard.Fraction(liquidityIndex, -0.5, 1.8, nameof(liquidityIndex));
        var remoulded = LiquidityIndexModel.Instance.Evaluate(liquidityIndex).Pascals;
        var ci = SoilKernel.ConeIndex(remoulded, SoilKernel.ConeFactor) / AssumedRemouldingIndex;
        return Estimated(ci, ci, "a liquidity index of " + Text.Number(liquidityIndex.DecimalFractions, 3), "The remoulded strength follows the index steeply: 0.1 of it is worth a factor of 1.4.");
    }

    /// <summary>Makes a soil from a cone sounding and the load of the wheel that stands on it: the mean over the critical layer, or over a weaker one that touches it from below.</summary>
    /// <param name="profile">Cone readings against depth, to 0.46 m under the wheels of a harvester.</param>
    /// <param name="layer">The critical layer, see <see cref="CriticalLayer.UnderWheel"/>.</param>
    /// <param name="remouldingIndex">Remoulding index, 0.05 to 1; null where it was not measured.</param>
    /// <param name="kind">Kind of soil.</param>
    /// <returns>The soil. A sounding that ends before <see cref="CriticalLayer.MeasureTo"/> is listed as still to measure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The readings do not cover the layer, or a value is outside its range.</exception>
    public static Soil FromProfile(ConeProfile profile, CriticalLayer layer, Ratio? remouldingIndex = null, SoilKind kind = SoilKind.FineGrained)
    {
        var governing = Guard.NotNull(profile, nameof(profile)).Governing(layer);
        var shallow = governing.MeasuredDeepEnough ? null : new SoilEstimate(
            new Assumption("assume.layer-below", "cone readings down to " + Text.With(layer.MeasureTo.Meters, "m", 2), "no softer than the layer above " + Text.With(profile.To.Meters, "m", 2), "A softer layer below the critical one counts in its place; it makes everything worse.", GroundSources.CriticalLayer),
            null,
            WithoutCone: false);
        return new Soil(governing.ConeIndex, governing.ConeIndex, remouldingIndex, kind, shallow);
    }

    /// <summary>Makes a soil from Bekker parameters: the cone index that they imply at a depth (<see cref="BekkerConeIndexModel"/>). Listed as still to measure.</summary>
    /// <param name="terrain">The terrain.</param>
    /// <param name="depth">Depth of the cone base, 0 to 1 m; 6 in is the depth of comparison.</param>
    /// <param name="kind">Kind of soil.</param>
    /// <returns>The soil, with its terrain.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside its range.</exception>
    public static Soil FromTerrain(BekkerTerrain terrain, Length depth, SoilKind kind = SoilKind.FineGrained)
    {
        var ci = BekkerConeIndexModel.Instance.Evaluate(terrain, depth).Pascals;
        return Estimated(ci, ci, "Bekker parameters of " + terrain.Name, "The conversion holds for ground alike in depth.", kind) with { Terrain = terrain };
    }

    private static Soil Estimated(double coneIndexPascals, double weakestPascals, string from, string spread, SoilKind kind = SoilKind.FineGrained) => new(
        Pressure.FromPascals(coneIndexPascals),
        Pressure.FromPascals(weakestPascals),
        null,
        kind,
        new SoilEstimate(
            new Assumption(
                "assume.strength-without-cone",
                "cone index of the soil (cone readings beside the machine)",
                "about " + Rough.Kilopascals(coneIndexPascals) + " from " + from,
                spread + " Resistance, traction and the strength under the wheels all follow it.",
                GroundSources.ConeFactor),
            null));

    private static StrengthBand Band(double indexPascals) => new(
        SoilKernel.UndrainedStrength(indexPascals, SoilKernel.ConeFactorHigh),
        SoilKernel.UndrainedStrength(indexPascals, SoilKernel.ConeFactor),
        SoilKernel.UndrainedStrength(indexPascals, SoilKernel.ConeFactorLow));
}
