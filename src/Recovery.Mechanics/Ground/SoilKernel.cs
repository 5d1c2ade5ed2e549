using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>Soil strength from the cone, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="GroundSources.ConeFactor"/>, <see cref="GroundSources.WallAndFloor"/>, <see cref="GroundSources.RatingSigns"/>, <see cref="GroundSources.UnitWeight"/>, <see cref="GroundSources.Consistency"/>.</remarks>
internal static class SoilKernel
{
    /// <summary>Cone factor N_k in every bound (from memory).</summary>
    public const double ConeFactor = 12.5;

    /// <summary>Low end of the band of the cone factor, for sensitivity and sampling.</summary>
    public const double ConeFactorLow = 10;

    /// <summary>High end of the band of the cone factor, for sensitivity and sampling.</summary>
    public const double ConeFactorHigh = 20;

    /// <summary>Least floor strength taken, Pa (judgement).</summary>
    public const double LeastFloorPascals = 1000;

    /// <summary>Greatest ratio of high to low floor (judgement).</summary>
    public const double FloorSpan = 4;

    /// <summary>Greatest ratio of low wall to low floor (judgement).</summary>
    public const double WallOverFloor = 3;

    /// <summary>Least remoulding index that is taken (judgement): below it there is no soil left to rate.</summary>
    public const double LeastRemouldingIndex = 0.05;

    /// <summary>Rating cone index at and below which a vehicle is likely to be immobilised, 40 psi, Pa.</summary>
    public const double LikelyImmobilisedPascals = 40 * PhysicalConstants.PascalsPerPsi;

    /// <summary>Rating cone index of the top centimetre at and below which a fine soil counts as slippery, 50 psi, Pa.</summary>
    public const double SlipperyPascals = 50 * PhysicalConstants.PascalsPerPsi;

    /// <summary>Remoulding index as tested, cone after 100 blows over cone before.</summary>
    public static double RemouldingIndex(double beforePascals, double afterPascals) => afterPascals / beforePascals;

    /// <summary>California bearing ratio, RCI[psi]/56 per cent, as a fraction.</summary>
    public static double BearingRatio(double ratingConeIndexPascals) => ratingConeIndexPascals / PhysicalConstants.PascalsPerPsi / 56 / 100;

    /// <summary>Rating cone index RCI = CI RI.</summary>
    public static double RatingConeIndex(double coneIndexPascals, double remouldingIndex) => coneIndexPascals * remouldingIndex;

    /// <summary>Undrained strength s_u = CI/N_k.</summary>
    public static double UndrainedStrength(double coneIndexPascals, double coneFactor) => coneIndexPascals / coneFactor;

    /// <summary>Cone index of a strength, CI = N_k s_u.</summary>
    public static double ConeIndex(double strengthPascals, double coneFactor) => strengthPascals * coneFactor;

    /// <summary>Wall and floor strengths of a stuck machine from its readings and the static equilibrium bound.</summary>
    public static StuckSoilStrength Stuck(double coneIndexPascals, double ratingConeIndexPascals, double equilibriumBoundPascals, double coneFactor)
    {
        var fromReading = UndrainedStrength(ratingConeIndexPascals, coneFactor);
        var low = Math.Max(equilibriumBoundPascals, LeastFloorPascals);
        double central, high;
        var readingBelowBound = low > fromReading;
        if (readingBelowBound)
        {
            central = high = low;
        }
        else
        {
            high = Math.Min(fromReading, FloorSpan * low);
            central = Math.Min(Math.Sqrt(low * fromReading), high);
        }

        return new StuckSoilStrength(low, central, high, Math.Min(fromReading, WallOverFloor * low), fromReading, UndrainedStrength(coneIndexPascals, coneFactor), readingBelowBound);
    }
}
