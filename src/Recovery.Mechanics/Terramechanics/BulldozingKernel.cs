using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Soil pushed ahead of a wheel (Bekker, Hegedus), once. SI in, SI out, angles in radians.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.Bulldozing"/>.</remarks>
internal static class BulldozingKernel
{
    /// <summary>Sinkage over diameter below which it may be left out.</summary>
    public const double LeastSinkageRatio = 0.06;

    private const double Level = 1e-6;

    /// <summary>Terzaghi's N_q = e^((3 pi/2 - phi) tan phi)/(2 cos^2(45 + phi/2)).</summary>
    public static double Surcharge(double friction)
    {
        var c = Math.Cos((Math.PI / 4) + (friction / 2));
        return Math.Exp(((1.5 * Math.PI) - friction) * Math.Tan(friction)) / (2 * c * c);
    }

    /// <summary>N_c = (N_q - 1)/tan phi; 1.5 pi + 1 without friction.</summary>
    public static double BearingCohesion(double friction) => friction > Level ? (Surcharge(friction) - 1) / Math.Tan(friction) : (1.5 * Math.PI) + 1;

    /// <summary>N_gamma over tan phi = 2 (N_q' + 1)/(1 + 0.4 sin(4 phi)), N_q' = e^(pi tan phi) tan^2(45 + phi/2).</summary>
    public static double BearingWeightOverTangent(double friction)
    {
        var t = Math.Tan((Math.PI / 4) + (friction / 2));
        return 2 * ((Math.Exp(Math.PI * Math.Tan(friction)) * t * t) + 1) / (1 + (0.4 * Math.Sin(4 * friction)));
    }

    /// <summary>K_c = (N_c - tan phi) cos^2 phi.</summary>
    public static double CohesionFactor(double friction, double bearingCohesion) => (bearingCohesion - Math.Tan(friction)) * Math.Cos(friction) * Math.Cos(friction);

    /// <summary>K_gamma = (2 N_gamma/tan phi + 1) cos^2 phi.</summary>
    public static double WeightFactor(double friction, double bearingWeightOverTangent) => ((2 * bearingWeightOverTangent) + 1) * Math.Cos(friction) * Math.Cos(friction);

    /// <summary>
    /// R_b = b sin(a + phi)/(2 sin a cos phi) (2 z c K_c + gamma z^2 K_gamma) + gamma l0^3 (pi/2 - phi)/3 + c l0^2 (1 + tan(45 + phi/2)),
    /// a = arccos(1 - 2 z/D), l0 = z tan^2(45 - phi/2). z above 0 and below D.
    /// </summary>
    public static double Resistance(double sinkageMetres, double diameterMetres, double widthMetres, double cohesionPascals, double friction, double unitWeight, double cohesionFactor, double weightFactor)
    {
        var approach = Math.Acos(1 - (2 * sinkageMetres / diameterMetres));
        var t = Math.Tan((Math.PI / 4) - (friction / 2));
        var rupture = sinkageMetres * t * t;
        return (widthMetres * Math.Sin(approach + friction) / (2 * Math.Sin(approach) * Math.Cos(friction)) * ((2 * sinkageMetres * cohesionPascals * cohesionFactor) + (unitWeight * sinkageMetres * sinkageMetres * weightFactor)))
            + (unitWeight * rupture * rupture * rupture * ((Math.PI / 2) - friction) / 3)
            + (cohesionPascals * rupture * rupture * (1 + (1 / t)));
    }
}
