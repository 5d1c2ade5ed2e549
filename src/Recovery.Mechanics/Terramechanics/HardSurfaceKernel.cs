using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The hard-surface branch beside the Brixius equations, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.HardSurface"/>, <see cref="TerramechanicsSources.HardSurfaceNumeric"/>.</remarks>
internal static class HardSurfaceKernel
{
    /// <summary>Net traction over load at unlimited slip.</summary>
    public const double Limit = 1.02;

    /// <summary>Numeric C_n = K b d/W.</summary>
    public static double Numeric(double surfaceConstantPascals, double widthMetres, double diameterMetres, double loadNewtons) =>
        surfaceConstantPascals * widthMetres * diameterMetres / loadNewtons;

    /// <summary>Net traction ratio 1.02 (1 - e^(-C_n s)), at most a friction coefficient.</summary>
    public static double NetTractionRatio(double numeric, double slip, double friction) => Math.Min(friction, Limit * (1 - Math.Exp(-numeric * slip)));
}
