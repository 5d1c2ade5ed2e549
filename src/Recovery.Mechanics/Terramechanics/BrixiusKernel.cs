using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The Brixius equations, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.Brixius"/>, <see cref="TerramechanicsSources.BrixiusRadial"/>.</remarks>
internal static class BrixiusKernel
{
    /// <summary>Greatest gross traction ratio at unlimited wheel numeric and slip, without the rolling share.</summary>
    public const double GrossLimit = 0.88;

    /// <summary>Factor of the wheel numeric in the exponent of gross traction.</summary>
    public const double NumericDecay = 0.1;

    /// <summary>Factor of slip over the root of the wheel numeric in motion resistance.</summary>
    public const double SlipResistance = 0.5;

    /// <summary>Greatest deflection over section height of the tests behind the fit: end of the validity range, and the most that a machine is credited with.</summary>
    public const double MostDeflection = 0.30;

    /// <summary>Deflection ratio as far as the fit goes: letting tyres down beyond it earns nothing.</summary>
    public static double Held(double deflectionRatio) => Math.Min(deflectionRatio, MostDeflection);

    /// <summary>Wheel numeric B_n = (CI b d/W)(1 + 5 delta/h)/(1 + 3 b/d).</summary>
    public static double Numeric(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons) =>
        coneIndexPascals * widthMetres * diameterMetres / loadNewtons * ((1 + (5 * deflectionRatio)) / (1 + (3 * widthMetres / diameterMetres)));

    /// <summary>Motion resistance ratio c/B_n + r + 0.5 s/sqrt(B_n).</summary>
    public static double MotionResistanceRatio(double numeric, double slip, BrixiusConstants constants) =>
        (constants.Soft / numeric) + constants.Rolling + (SlipResistance * slip / Math.Sqrt(numeric));

    /// <summary>Gross traction ratio 0.88 (1 - e^(-0.1 B_n))(1 - e^(-k s)) + r.</summary>
    public static double GrossTractionRatio(double numeric, double slip, BrixiusConstants constants) =>
        (GrossLimit * (1 - Math.Exp(-NumericDecay * numeric)) * (1 - Math.Exp(-constants.SlipDecay * slip))) + constants.Rolling;

    /// <summary>Net traction ratio: gross less motion resistance.</summary>
    public static double NetTractionRatio(double numeric, double slip, BrixiusConstants constants) =>
        GrossTractionRatio(numeric, slip, constants) - MotionResistanceRatio(numeric, slip, constants);
}
