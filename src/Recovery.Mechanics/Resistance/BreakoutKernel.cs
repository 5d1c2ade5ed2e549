using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>Vertical breakout of a contact on undrained clay, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="ResistanceSources.Skempton"/>, <see cref="ResistanceSources.ApiBearing"/>, <see cref="ResistanceSources.ReverseBearing"/>, <see cref="ResistanceSources.Cavitation"/>, <see cref="ResistanceSources.Lee"/>, <see cref="ResistanceSources.Muga"/>, <see cref="ResistanceSources.Liu"/>, <see cref="ResistanceSources.Consolidation"/>, <see cref="ResistanceSources.Das"/>.</remarks>
internal static class BreakoutKernel
{
    /// <summary>Greatest suction that pore water can carry on land before it cavitates, Pa.</summary>
    public const double SuctionLimitPascals = 100e3;

    /// <summary>Depth over width from which the bearing factor no longer grows.</summary>
    public const double DeepestRatio = 2.5;

    /// <summary>Ratio of immediate breakout to bearing: at the surface, per depth over width, and its ceiling.</summary>
    public const double LeeSurface = 0.21, LeeSlope = 0.86, LeeCeiling = 0.97;

    /// <summary>Breakout over carried load at the reference time, decay a minute, and that time.</summary>
    public const double MugaShare = 0.20, MugaDecayPerMinute = 0.00540, MugaReferenceMinutes = 260;

    /// <summary>Breakout over static resistance at equal times, and exponent of time.</summary>
    public const double LiuRatio = 1.5, LiuExponent = -0.07;

    /// <summary>Time factor of 90 % dissipation.</summary>
    public const double TimeFactor90 = 0.848;

    /// <summary>Greatest breakout factor of a deep plate.</summary>
    public const double DeepPlate = 9;

    /// <summary>5 (1 + 0.2 D/B)(1 + 0.2 B/L), D/B at most 2.5.</summary>
    public static double Skempton(double widthMetres, double lengthMetres, double depthMetres) =>
        5 * (1 + (0.2 * Math.Min(depthMetres / widthMetres, DeepestRatio))) * (1 + (0.2 * widthMetres / lengthMetres));

    /// <summary>5.14 (1 + 0.18 B/L + 0.3 atan(D/B)).</summary>
    public static double Api(double widthMetres, double lengthMetres, double depthMetres) =>
        UnderbodyKernel.BearingFactor * (1 + (0.18 * widthMetres / lengthMetres) + (0.3 * Math.Atan(depthMetres / widthMetres)));

    /// <summary>Uplift N_c s_u A of a contact that holds by suction, at most (100 kPa + q) A.</summary>
    public static double ReverseBearing(double bearingFactor, double strengthPascals, double area, double overburdenPascals) =>
        area * Math.Min(bearingFactor * strengthPascals, SuctionLimitPascals + overburdenPascals);

    /// <summary>0.21 + 0.86 D/B, at most 0.97: without a jump the ceiling begins at D/B 0.884.</summary>
    public static double Lee(double depthOverWidth) => Math.Min(LeeSurface + (LeeSlope * depthOverWidth), LeeCeiling);

    /// <summary>0.20 exp(-0.00540 (t - 260)), t in minutes.</summary>
    public static double Muga(double minutes) => MugaShare * Math.Exp(-MugaDecayPerMinute * (minutes - MugaReferenceMinutes));

    /// <summary>1.5 (T/T_in)^-0.07.</summary>
    public static double Liu(double timeRatio) => LiuRatio * Math.Pow(timeRatio, LiuExponent);

    /// <summary>0.848 H^2/c_v.</summary>
    public static double Dissipation90(double drainagePathMetres, double consolidation) => TimeFactor90 * drainagePathMetres * drainagePathMetres / consolidation;
}
