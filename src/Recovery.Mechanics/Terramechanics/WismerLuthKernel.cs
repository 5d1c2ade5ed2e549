using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The Wismer and Luth equations, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.WismerLuth"/>.</remarks>
internal static class WismerLuthKernel
{
    /// <summary>Numerator of the soft-soil term.</summary>
    public const double Soft = 1.2;

    /// <summary>Constant share of motion resistance.</summary>
    public const double Rolling = 0.04;

    /// <summary>Greatest gross traction ratio.</summary>
    public const double GrossLimit = 0.75;

    /// <summary>Factor of numeric times slip in the exponent.</summary>
    public const double Decay = 0.3;

    /// <summary>Wheel numeric C_n = CI b d/W.</summary>
    public static double Numeric(double coneIndexPascals, double widthMetres, double diameterMetres, double loadNewtons) =>
        coneIndexPascals * widthMetres * diameterMetres / loadNewtons;

    /// <summary>Motion resistance ratio 1.2/C_n + 0.04.</summary>
    public static double MotionResistanceRatio(double numeric) => (Soft / numeric) + Rolling;

    /// <summary>Gross traction ratio 0.75 (1 - e^(-0.3 C_n s)).</summary>
    public static double GrossTractionRatio(double numeric, double slip) => GrossLimit * (1 - Math.Exp(-Decay * numeric * slip));
}
