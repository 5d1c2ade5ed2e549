using System;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index and rating cone index from class and gravimetric moisture, once. The fits are in psi and per cent; SI out.</summary>
/// <remarks>Sources: <see cref="GroundSources.MoistureCone"/>, <see cref="GroundSources.MoistureFatClay"/>, <see cref="GroundSources.MoistureRating"/>, <see cref="GroundSources.MoistureRatingFromMemory"/>, <see cref="GroundSources.ConeFullScale"/>.</remarks>
internal static class MoistureKernel
{
    /// <summary>Pascals in a pound-force a square inch.</summary>
    public const double PascalsPerPsi = Provenance.PhysicalConstants.PascalsPerPsi;

    /// <summary>Wide end of the scatter of the fits, a factor either way (judgement).</summary>
    public const double WideScatter = 2;

    /// <summary>Narrow end of the scatter of the fits, a factor either way (judgement).</summary>
    public const double NarrowScatter = 1.5;

    /// <summary>Full scale of the army cone, 150 lbf on 0.5 in2 (300 psi), Pa: what reads more is at least that.</summary>
    public const double FullScalePascals = 300 * PascalsPerPsi;

    /// <summary>CI = exp(a + b ln w), psi, w in per cent of dry mass.</summary>
    public static double ConeIndex(in MoistureCoefficients c, double moisturePercent) => PascalsPerPsi * Math.Exp(c.A + (c.B * Math.Log(moisturePercent)));

    /// <summary>RCI = exp(a' + b' ln w), psi, before the cap at CI.</summary>
    public static double UncappedRatingConeIndex(in MoistureCoefficients c, double moisturePercent) => PascalsPerPsi * Math.Exp(c.RatingA + (c.RatingB * Math.Log(moisturePercent)));

    /// <summary>RCI, at most CI: a remoulding index above 1 is outside its definition.</summary>
    public static double RatingConeIndex(in MoistureCoefficients c, double moisturePercent) => Math.Min(UncappedRatingConeIndex(c, moisturePercent), ConeIndex(c, moisturePercent));
}
