using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Machines;

/// <summary>Static deflection of a tyre, and how a pair shares a load, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="MachinesSources.Saarilahti"/>, <see cref="MachinesSources.LinesMurphy"/>.</remarks>
internal static class TyreKernel
{
    /// <summary>Saarilahti: delta at no load, m.</summary>
    public const double SaarilahtiOffset = 0.0008;

    /// <summary>Saarilahti: delta = 0.0008 + 0.001 (0.365 + 170/p) W with p in kPa and W in kN.</summary>
    public static double Saarilahti(double loadNewtons, double inflationPascals) => SaarilahtiOffset + (SaarilahtiCompliance(inflationPascals) * loadNewtons);

    /// <summary>Saarilahti: change of the deflection with the load, 0.001 (0.365 + 170/p) m/kN, in m/N.</summary>
    public static double SaarilahtiCompliance(double inflationPascals) => 1e-6 * (0.365 + (170 / (inflationPascals / 1000)));

    /// <summary>Lines and Murphy: k = 172 - 1.77 D + 5.6 A + 0.34 b D P kN/m with rim diameter D and section width b in inches, age A in years, inflation P in bar; here in N/m.</summary>
    public static double LinesMurphyStiffness(double rimMetres, double widthMetres, double ageYears, double inflationPascals)
    {
        double rim = rimMetres / PhysicalConstants.MetresPerInch, width = widthMetres / PhysicalConstants.MetresPerInch;
        return 1000 * (172 - (1.77 * rim) + (5.6 * ageYears) + (0.34 * width * rim * (inflationPascals / 1e5)));
    }

    /// <summary>Load on the inner of two tyres on one hub, both of deflection a + c F: r_i - a_i - c_i F_i = r_o - a_o - c_o (W - F_i); a tyre too small to reach the ground carries nothing.</summary>
    public static double InnerOfPair(double load, double innerRadius, double innerOffset, double innerCompliance, double outerRadius, double outerOffset, double outerCompliance) =>
        Math.Min(load, Math.Max(0, (innerRadius - outerRadius + outerOffset - innerOffset + (outerCompliance * load)) / (innerCompliance + outerCompliance)));
}
