using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>Sideways breakout of a pipe in undrained clay, per unit length, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="ResistanceSources.DnvLateral"/>.</remarks>
internal static class LateralKernel
{
    /// <summary>Factors of depth, of vertical load and of soil weight.</summary>
    public const double Depth = 1.7, Load = 0.23, Weight = 0.6;

    /// <summary>The same of the laboratory variant.</summary>
    public const double DepthLaboratory = 0.78, LoadLaboratory = 0.12, WeightLaboratory = 0.71;

    /// <summary>Greatest vertical load over strength times diameter for which the residual holds.</summary>
    public const double ResidualLimit = 2;

    /// <summary>D s_u [c1 (z/D)^0.61 + c2 (V/(D s_u))^0.83 + c3 (gamma D/s_u)(z/D)^2].</summary>
    public static double Breakout(double diameterMetres, double sinkageMetres, double strengthPascals, double unitWeight, double loadPerMetre, double depthFactor, double loadFactor, double weightFactor)
    {
        double unit = diameterMetres * strengthPascals, x = sinkageMetres / diameterMetres;
        var load = loadPerMetre > 0 ? loadFactor * Math.Pow(loadPerMetre / unit, 0.83) : 0;
        return unit * ((depthFactor * Math.Pow(x, 0.61)) + load + (weightFactor * unitWeight * diameterMetres / strengthPascals * x * x));
    }

    /// <summary>Residual over vertical load once broken out, 0.32 + 0.8 (z/D)^0.8.</summary>
    public static double ResidualRatio(double diameterMetres, double sinkageMetres) => 0.32 + (0.8 * Math.Pow(sinkageMetres / diameterMetres, 0.8));
}
