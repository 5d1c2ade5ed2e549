using System;

namespace Recovery.Mechanics.Ground;

/// <summary>Undrained strength from consistency and from the liquidity index, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="GroundSources.Consistency"/>, <see cref="GroundSources.LiquidityIndex"/>, <see cref="GroundSources.LiquidLimitStrength"/>; units by definition.</remarks>
internal static class HandTestKernel
{
    /// <summary>Pascals in a short ton-force a square foot.</summary>
    public const double PascalsPerTsf = 2000 * Provenance.PhysicalConstants.PascalsPerPsf;

    /// <summary>Ratio R of the strengths at plastic and at liquid limit (Vardanega and Haigh 2014).</summary>
    public const double StrengthRatio = 35;

    /// <summary>Undrained strength at the liquid limit, Pa (from memory).</summary>
    public const double LiquidLimitPascals = 1700;

    /// <summary>Undrained strength from unconfined compression, s_u = q_u/2.</summary>
    public static double FromUnconfined(double unconfinedPascals) => unconfinedPascals / 2;

    /// <summary>Upper bound of q_u of a class of consistency, tsf; the hardest has none.</summary>
    public static double UpperUnconfinedTsf(Consistency consistency) => consistency == Consistency.Hard ? double.PositiveInfinity : 0.25 * Math.Pow(2, (int)consistency);

    /// <summary>Upper bound of s_u of a class of consistency, Pa.</summary>
    public static double Upper(Consistency consistency) => FromUnconfined(UpperUnconfinedTsf(consistency) * PascalsPerTsf);

    /// <summary>Lower bound of s_u of a class of consistency, Pa; the softest has none.</summary>
    public static double Lower(Consistency consistency) => consistency == Consistency.VerySoft ? 0 : Upper(consistency - 1);

    /// <summary>Class of consistency of a strength; a bound belongs to the harder class.</summary>
    public static Consistency Classify(double strengthPascals)
    {
        var consistency = Consistency.VerySoft;
        while (consistency < Consistency.Hard && strengthPascals >= Upper(consistency)) consistency++;
        return consistency;
    }

    /// <summary>s_u = s_LL R^(1 - LI): strength of remoulded soil.</summary>
    public static double FromLiquidityIndex(double liquidityIndex) => LiquidLimitPascals * Math.Pow(StrengthRatio, 1 - liquidityIndex);
}
