using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The vehicle-terrain-interface equations for a wheel, once: fine-grained soil, and gross traction on sand. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.VtiFine"/>, <see cref="TerramechanicsSources.VtiSand"/>, <see cref="TerramechanicsSources.VtiSandGradient"/>.</remarks>
internal static class VtiKernel
{
    /// <summary>Greatest gross traction ratio on sand, X.</summary>
    public const double SandLimit = 0.66;

    /// <summary>Length in CI/3.47, read as inches (from memory), m.</summary>
    public const double SandGradientLength = 3.47 * Provenance.PhysicalConstants.MetresPerInch;

    /// <summary>Numeric N_v = CI b d/(W (1 - delta/h)^1.5 (1 + b/d)^0.75).</summary>
    public static double Numeric(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons) =>
        coneIndexPascals * widthMetres * diameterMetres / (loadNewtons * Math.Pow(1 - deflectionRatio, 1.5) * Math.Pow(1 + (widthMetres / diameterMetres), 0.75));

    /// <summary>Slip at which gross traction is zero, s0 = 21/N_v^2.5.</summary>
    public static double ZeroSlip(double numeric) => 21 / (numeric * numeric * Math.Sqrt(numeric));

    /// <summary>Motion resistance ratio 12/N_v^2 + 0.007.</summary>
    public static double MotionResistanceRatio(double numeric) => (12 / (numeric * numeric)) + 0.007;

    /// <summary>Gross traction ratio 0.5 log10(s/s0); negative below s0.</summary>
    public static double GrossTractionRatio(double numeric, double slip) => 0.5 * Math.Log10(slip / ZeroSlip(numeric));

    /// <summary>Net traction ratio GT/W (1 + b/d)^0.25 - MR/W.</summary>
    public static double NetTractionRatio(double grossRatio, double resistanceRatio, double widthOverDiameter) =>
        (grossRatio * Math.Pow(1 + widthOverDiameter, 0.25)) - resistanceRatio;

    /// <summary>Cone index gradient of sand G = CI/3.47 in, Pa/m.</summary>
    public static double SandGradient(double coneIndexPascals) => coneIndexPascals / SandGradientLength;

    /// <summary>Sand numeric N_s = G (b d)^1.5 (delta/h)/W.</summary>
    public static double SandNumeric(double gradientPascalsPerMetre, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons) =>
        gradientPascalsPerMetre * Math.Pow(widthMetres * diameterMetres, 1.5) * deflectionRatio / loadNewtons;

    /// <summary>Slip term of the sand relation, Y = 4.71 + 1.72/s, s above 0.</summary>
    public static double SandSlipTerm(double slip) => 4.71 + (1.72 / slip);

    /// <summary>Gross traction ratio on sand, X - X Y/(N_s + 10 + Y) = X (N_s + 10) s/((N_s + 14.71) s + 1.72), which also holds at slip 0.</summary>
    public static double SandGrossTractionRatio(double numeric, double slip) => SandLimit * (numeric + 10) * slip / (((numeric + 14.71) * slip) + 1.72);
}
