using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Maclaurin's mean maximum pressure, limiting cone index and rut depth, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.Maclaurin"/>, <see cref="TerramechanicsSources.MaclaurinResistance"/>.</remarks>
internal static class MaclaurinKernel
{
    /// <summary>Limiting cone index over mean maximum pressure.</summary>
    public const double LimitFactor = 1.85;

    /// <summary>Mean maximum pressure W/(b^0.8 d^0.8 delta^0.4).</summary>
    public static double MeanMaximumPressure(double loadNewtons, double widthMetres, double diameterMetres, double deflectionMetres) =>
        loadNewtons / (Math.Pow(widthMetres * diameterMetres, 0.8) * Math.Pow(deflectionMetres, 0.4));

    /// <summary>Rut depth of one pass, 0.224 d N^-1.25, N = CI/MMP.</summary>
    public static double RutDepth(double diameterMetres, double numeric) => 0.224 * diameterMetres * Math.Pow(numeric, -1.25);

    /// <summary>Rut depth after m passes, z m^(1/a).</summary>
    public static double RutDepthAfter(double firstRutMetres, double passes, double multipassExponent) => firstRutMetres * Math.Pow(passes, 1 / multipassExponent);

    /// <summary>Vehicle cone index for one pass, VCI1[psi] = 2.53 + 1.35 MMP[psi].</summary>
    public static double OnePass(double meanMaximumPressurePascals) => (2.53 * PhysicalConstants.PascalsPerPsi) + (1.35 * meanMaximumPressurePascals);

    /// <summary>Motion resistance ratio 0.017 + 0.453/N (from memory).</summary>
    public static double MotionResistanceRatio(double numeric) => 0.017 + (0.453 / numeric);
}
