namespace Recovery.Mechanics.Resistance;

/// <summary>What a declared seal does to suction, once.</summary>
internal static class SuctionKernel
{
    /// <summary>Share of the uplift of a closed belly at central (judgement), and where part of it is vented: the low end of the band in use.</summary>
    public const double UpliftSealed = 0.5, UpliftPartVented = 0.3;

    /// <summary>Share of the suction behind a wheel that part venting takes away at central (judgement).</summary>
    public const double PartVentedShare = 0.5;

    /// <summary>Uplift A min(f N_c s_u, 100 kPa + q).</summary>
    public static double Uplift(double share, double strengthPascals, double area, double overburdenPascals) =>
        BreakoutKernel.ReverseBearing(share * UnderbodyKernel.BearingFactor, strengthPascals, area, overburdenPascals);
}
