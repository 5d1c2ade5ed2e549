using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>The soil ahead of a buried wheel by every published law, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="ResistanceSources.Rankine"/>, <see cref="ResistanceSources.RankineFriction"/>, <see cref="ResistanceSources.Suction"/>, <see cref="ResistanceSources.Matlock"/>, <see cref="ResistanceSources.VerleyLund"/>, <see cref="ResistanceSources.DnvLateral"/>, <see cref="ResistanceSources.Reece"/>, <see cref="ResistanceSources.Bulldozing"/>, <see cref="ResistanceSources.BulldozingFactors"/>.</remarks>
internal static class FaceKernel
{
    /// <summary>Greatest pressure of the soft-clay law over strength.</summary>
    public const double SoftClayCap = 9;

    /// <summary>Pressure of the soft-clay law at the surface over strength.</summary>
    public const double SoftClaySurface = 3;

    /// <summary>Share of cohesion in the bulldozing law: local shear.</summary>
    public const double LocalShear = 0.667;

    /// <summary>Resistance of the face by one law.</summary>
    public static double Resistance(in FaceLaw law, double widthMetres, double diameterMetres, double sinkageMetres, double strengthPascals, double unitWeight) => law.Kind switch
    {
        FaceKind.Rankine => BuriedWheelKernel.Face(widthMetres, sinkageMetres, strengthPascals, unitWeight),
        FaceKind.RankineFriction => widthMetres * sinkageMetres * ((0.5 * unitWeight * sinkageMetres * law.First) + (2 * strengthPascals * law.Second)),
        FaceKind.Sliding => law.First * strengthPascals * widthMetres * sinkageMetres,
        FaceKind.SoftClay => SoftClay(widthMetres, sinkageMetres, strengthPascals, unitWeight, law.First),
        FaceKind.VerleyLund => widthMetres * VerleyLund(diameterMetres, sinkageMetres, strengthPascals, unitWeight),
        FaceKind.Lateral => widthMetres * LateralKernel.Breakout(diameterMetres, sinkageMetres, strengthPascals, unitWeight, 0, law.First, 0, law.Second),
        FaceKind.Reece => widthMetres * ((0.5 * unitWeight * sinkageMetres * sinkageMetres) + (law.First * strengthPascals * sinkageMetres)),
        _ => widthMetres * ((LocalShear * strengthPascals * sinkageMetres * law.First) + (0.5 * sinkageMetres * sinkageMetres * unitWeight * law.Second)),
    };

    /// <summary>Passive coefficient tan^2(45 + phi/2).</summary>
    public static double PassiveCoefficient(double frictionAngle)
    {
        var t = Math.Tan((Math.PI / 4) + (frictionAngle / 2));
        return t * t;
    }

    /// <summary>Depth below which the soft-clay law stays at nine times the strength, 6 b/(gamma b/s_u + J).</summary>
    public static double SoftClayDepth(double widthMetres, double strengthPascals, double unitWeight, double j) =>
        6 * widthMetres / ((unitWeight * widthMetres / strengthPascals) + j);

    /// <summary>p = 3 s_u + gamma x + J s_u x/b, at most 9 s_u, summed over the depth and times the width.</summary>
    private static double SoftClay(double b, double z, double strength, double gamma, double j)
    {
        var top = Math.Min(z, SoftClayDepth(b, strength, gamma, j));
        return (b * top * ((SoftClaySurface * strength) + (0.5 * gamma * top))) + (0.5 * j * strength * top * top) + (SoftClayCap * strength * b * (z - top));
    }

    /// <summary>4.1 s_u D (z/D)^1.31/G^0.39 per unit length, G = s_u/(D gamma).</summary>
    private static double VerleyLund(double d, double z, double strength, double gamma) =>
        4.1 * strength * d * Math.Pow(z / d, 1.31) / Math.Pow(strength / (d * gamma), 0.39);

    /// <summary>Factor 2 sqrt(1 + c_a/c) of a face that is not smooth.</summary>
    public static double RoughFactor(double adhesionShare) => 2 * Math.Sqrt(1 + adhesionShare);

    /// <summary>Cohesion factor of the bulldozing law, (N'_c - tan phi') cos^2 phi'.</summary>
    public static double BulldozingCohesion(double localFriction, double bearingCohesion)
    {
        var c = Math.Cos(localFriction);
        return (bearingCohesion - Math.Tan(localFriction)) * c * c;
    }

    /// <summary>Weight factor of the bulldozing law, (2 N'_g/tan phi' + 1) cos^2 phi'.</summary>
    public static double BulldozingWeight(double localFriction, double bearingWeight)
    {
        var c = Math.Cos(localFriction);
        return ((2 * bearingWeight / Math.Tan(localFriction)) + 1) * c * c;
    }
}
