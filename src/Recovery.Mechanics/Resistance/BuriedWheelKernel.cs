using System;
using Recovery.Mechanics.Ground;

namespace Recovery.Mechanics.Resistance;

/// <summary>The terms of one buried wheel, once. SI in, SI out.</summary>
internal static class BuriedWheelKernel
{
    /// <summary>Sinkage over diameter above which a wheel counts as buried (judgement).</summary>
    public const double BuriedRatio = 0.1;

    /// <summary>Sinkage over diameter between which a wheel stands near that break: a reading of a few centimetres decides (judgement).</summary>
    public const double NearBuriedLow = 0.08, NearBuriedHigh = 0.12;

    /// <summary>Greatest adhesion of wet farm clay, Pa (judgement).</summary>
    public const double AdhesionCapPascals = AdhesionKernel.CapPascals;

    /// <summary>Chord of the tyre at the surface of the ground, 2 sqrt(d z - z^2); the diameter from the hub upwards.</summary>
    public static double ContactLength(double diameterMetres, double sinkageMetres) =>
        sinkageMetres >= diameterMetres / 2 ? diameterMetres : 2 * Math.Sqrt((diameterMetres * sinkageMetres) - (sinkageMetres * sinkageMetres));

    /// <summary>Whether a wheel counts as buried: sunk more than a tenth of its diameter.</summary>
    public static bool IsBuried(double diameterMetres, double sinkageMetres) => sinkageMetres > BuriedRatio * diameterMetres;

    /// <summary>Length on which a wheel stands: the chord at its sinkage; a wheel that is not buried stands on at least the chord of its own deflection.</summary>
    public static double StandingLength(double diameterMetres, double sinkageMetres, double deflectionMetres, bool buried) =>
        ContactLength(diameterMetres, buried ? sinkageMetres : Math.Max(sinkageMetres, deflectionMetres));

    /// <summary>Wall over floor strength above which a wheel resting at its equilibrium bound climbs rather than cuts (Rankine face, weight of soil left out), N_c (1 + r/(r - z)); infinite from the hub upwards.</summary>
    public static double ClimbsAbove(double diameterMetres, double sinkageMetres, double bearingFactor)
    {
        var left = 1 - (2 * sinkageMetres / diameterMetres);
        return left <= 0 ? double.PositiveInfinity : bearingFactor * (1 + (1 / left));
    }

    /// <summary>Area of one side of the tyre below the surface, r^2 acos((r - z)/r) - (r - z) sqrt(2 r z - z^2).</summary>
    public static double SegmentArea(double diameterMetres, double sinkageMetres)
    {
        var r = diameterMetres / 2;
        var z = Math.Min(sinkageMetres, diameterMetres);
        return (r * r * Math.Acos((r - z) / r)) - ((r - z) * Math.Sqrt((2 * r * z) - (z * z)));
    }

    /// <summary>Soil pushed ahead of the face, b (gamma z^2/2 + 2 s_u z).</summary>
    public static double Face(double widthMetres, double sinkageMetres, double strengthPascals, double unitWeight) =>
        widthMetres * ((0.5 * unitWeight * sinkageMetres * sinkageMetres) + (2 * strengthPascals * sinkageMetres));

    /// <summary>Suction behind the wheel while sealed, 2 s_u b z.</summary>
    public static double Suction(double widthMetres, double sinkageMetres, double strengthPascals) => 2 * strengthPascals * widthMetres * sinkageMetres;

    /// <summary>Adhesion on both side walls, lambda 2 A_seg min(alpha s_u, 12 kPa).</summary>
    public static double Side(double segmentArea, double strengthPascals, double adhesionFactor, double mobilised) =>
        mobilised * 2 * segmentArea * Adhesion(strengthPascals, adhesionFactor);

    /// <summary>Adhesion min(alpha s_u, 12 kPa).</summary>
    public static double Adhesion(double strengthPascals, double adhesionFactor) => AdhesionKernel.Capped(strengthPascals, adhesionFactor);

    /// <summary>Base shear of a wheel that does not turn, s_u b c.</summary>
    public static double Base(double widthMetres, double contactLengthMetres, double strengthPascals) => strengthPascals * widthMetres * contactLengthMetres;

    /// <summary>Pull over load to climb a step that does not fail, sqrt(1 - (1 - z/r)^2)/(1 - z/r); infinite from the hub upwards.</summary>
    public static double RigidStepRatio(double diameterMetres, double sinkageMetres)
    {
        var k = 1 - (2 * sinkageMetres / diameterMetres);
        return k <= 0 ? double.PositiveInfinity : Math.Sqrt(1 - (k * k)) / k;
    }

    /// <summary>Soil to dig for the ramp of one wheel, z^2 b/(2 tan beta).</summary>
    public static double Spoil(double widthMetres, double depthMetres, double slopeRadians) => 0.5 * depthMetres * depthMetres * widthMetres / Math.Tan(slopeRadians);

    /// <summary>What the floor bears under one wheel, b c (N_c s_u + gamma z).</summary>
    public static double Bearing(double widthMetres, double contactLengthMetres, double sinkageMetres, double strengthPascals, double unitWeight, double bearingFactor) =>
        widthMetres * contactLengthMetres * ((bearingFactor * strengthPascals) + (unitWeight * sinkageMetres));
}
