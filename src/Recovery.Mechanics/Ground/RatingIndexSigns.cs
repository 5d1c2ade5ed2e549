using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Rules of thumb on the rating cone index: a sanity check beside the models, never in their place.</summary>
/// <remarks>
/// <para>At or below 40 psi (276 kPa) a vehicle is likely to be immobilised; a fine soil counts as slippery where its top centimetre rates at most 50 psi (345 kPa) (Mason and Baylot, as summarised in a secondary text; reported, psi by context).</para>
/// <para>The California bearing ratio in per cent is about the rating cone index in psi over 56 on fine soils (209 usable records, same source).</para>
/// </remarks>
public static class RatingIndexSigns
{
    /// <summary>Gets the rating cone index at and below which a vehicle is likely to be immobilised, 40 psi.</summary>
    public static Pressure LikelyImmobilised { get; } = Pressure.FromPascals(SoilKernel.LikelyImmobilisedPascals);

    /// <summary>Gets the rating cone index of the top centimetre at and below which a fine soil counts as slippery, 50 psi.</summary>
    public static Pressure Slippery { get; } = Pressure.FromPascals(SoilKernel.SlipperyPascals);

    /// <summary>Gets where the rules come from.</summary>
    public static Source Source => GroundSources.RatingSigns;

    /// <summary>Tells whether a soil is so weak that a vehicle is likely to be immobilised on it.</summary>
    /// <param name="soil">The soil.</param>
    /// <returns>True at and below 40 psi of the weakest rating cone index.</returns>
    public static bool IsLikelyToImmobilise(Soil soil) => Guard.NotNull(soil, nameof(soil)).WeakestRatingConeIndex.Pascals <= SoilKernel.LikelyImmobilisedPascals;

    /// <summary>Tells whether the surface of a fine soil counts as slippery.</summary>
    /// <param name="topCentimetre">Rating cone index of the top centimetre, 0 to 20,000 kPa.</param>
    /// <returns>True at and below 50 psi.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    public static bool IsSlippery(Pressure topCentimetre) => Guard.Pascals(topCentimetre, 0, 20000, nameof(topCentimetre)) <= SoilKernel.SlipperyPascals;

    /// <summary>Gives the California bearing ratio of a fine soil, for a check against road data.</summary>
    /// <param name="ratingConeIndex">Rating cone index, 0 to 20,000 kPa.</param>
    /// <returns>The bearing ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    public static Ratio BearingRatio(Pressure ratingConeIndex) => Ratio.FromDecimalFractions(SoilKernel.BearingRatio(Guard.Pascals(ratingConeIndex, 0, 20000, nameof(ratingConeIndex))));
}
