using System;

namespace Recovery.Mechanics.Ground;

/// <summary>Adhesion of clay on steel and rubber by the named rules, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="GroundSources.AdhesionApi"/>, <see cref="GroundSources.AdhesionNavfac"/>, <see cref="GroundSources.AdhesionTomlinson"/>, <see cref="GroundSources.Adhesion"/>.</remarks>
internal static class AdhesionKernel
{
    /// <summary>Cap on adhesion for wet farm clay, Pa (judgement).</summary>
    public const double CapPascals = 12000;

    /// <summary>Adhesion factor for wet farm clay (judgement, between 0.3 and 0.6).</summary>
    public const double FarmClayFactor = 0.5;

    /// <summary>Pascals in a pound-force a square foot.</summary>
    public const double PascalsPerPsf = Provenance.PhysicalConstants.PascalsPerPsf;

    /// <summary>Strength up to which the Tomlinson rule takes the whole of it, Pa (from memory).</summary>
    public const double TomlinsonWholePascals = 25000;

    /// <summary>Strength from which the Tomlinson rule takes its least share, Pa (from memory).</summary>
    public const double TomlinsonLeastPascals = 100000;

    /// <summary>Least share of the Tomlinson rule (from memory).</summary>
    public const double TomlinsonLeastShare = 0.3;

    /// <summary>Capped adhesion min(alpha s_u, cap).</summary>
    public static double Capped(double strengthPascals, double factor) => Math.Min(factor * strengthPascals, CapPascals);

    /// <summary>API RP 2GEO: alpha = 0.5 psi^-0.5 up to psi 1, 0.5 psi^-0.25 above, at most 1; psi = s_u/p'0.</summary>
    public static double ApiFactor(double strengthPascals, double overburdenPascals)
    {
        var psi = strengthPascals / overburdenPascals;
        return Math.Min(1, 0.5 * Math.Pow(psi, psi <= 1 ? -0.5 : -0.25));
    }

    /// <summary>NAVFAC DM-7.2, steel piles: a broken line through (0, 0), (250, 250), (500, 460), (1000, 700) psf, held at its end.</summary>
    public static double NavfacSteelPile(double strengthPascals)
    {
        var c = strengthPascals / PascalsPerPsf;
        var psf = c <= 250 ? c
            : c <= 500 ? 250 + ((c - 250) * (460 - 250) / 250)
            : c <= 1000 ? 460 + ((c - 500) * (700 - 460) / 500)
            : 700;
        return psf * PascalsPerPsf;
    }

    /// <summary>Tomlinson: share 1 up to 25 kPa, 0.3 from 100 kPa, a straight line between (judgement).</summary>
    public static double TomlinsonFactor(double strengthPascals) =>
        strengthPascals <= TomlinsonWholePascals ? 1
        : strengthPascals >= TomlinsonLeastPascals ? TomlinsonLeastShare
        : 1 - ((1 - TomlinsonLeastShare) * (strengthPascals - TomlinsonWholePascals) / (TomlinsonLeastPascals - TomlinsonWholePascals));
}
