using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>A wheel in the ground as a short cylinder, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="ResistanceSources.DnvLateral"/>.</remarks>
internal static class ImmersionKernel
{
    /// <summary>Area of the cylinder's section below the surface: the segment up to the hub, then straight walls, pi D^2/8 + D (z - D/2).</summary>
    public static double PenetratedArea(double diameterMetres, double sinkageMetres) =>
        sinkageMetres < diameterMetres / 2
            ? BuriedWheelKernel.SegmentArea(diameterMetres, sinkageMetres)
            : (Math.PI * diameterMetres * diameterMetres / 8) + (diameterMetres * (sinkageMetres - (diameterMetres / 2)));

    /// <summary>Bearing factor of the cylinder, min(6 (z/D)^0.25, 3.4 (10 z/D)^0.5).</summary>
    public static double BearingFactor(double diameterMetres, double sinkageMetres)
    {
        var x = sinkageMetres / diameterMetres;
        return Math.Min(6 * Math.Sqrt(Math.Sqrt(x)), 3.4 * Math.Sqrt(10 * x));
    }

    /// <summary>Vertical bearing per unit length, factor times D s_u + 1.5 gamma' A.</summary>
    public static double Bearing(double diameterMetres, double sinkageMetres, double strengthPascals, double unitWeight) =>
        (BearingFactor(diameterMetres, sinkageMetres) * diameterMetres * strengthPascals) + (1.5 * unitWeight * PenetratedArea(diameterMetres, sinkageMetres));

    /// <summary>Strength at which the same bearing equals a load per unit length; may be negative where displaced soil alone carries it.</summary>
    public static double StrengthThatBears(double diameterMetres, double sinkageMetres, double loadPerMetre, double unitWeight) =>
        (loadPerMetre - (1.5 * unitWeight * PenetratedArea(diameterMetres, sinkageMetres))) / (BearingFactor(diameterMetres, sinkageMetres) * diameterMetres);
}
