using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The clay numeric and what two schools make of it: Gee-Clough (NIAE) and Turnage (WES). SI in, SI out.</summary>
internal static class ClayNumericKernel
{
    /// <summary>Numeric at which the WES towed form has its pole: practical immobilisation (from memory).</summary>
    public const double Pole = 2.5;

    /// <summary>Numeric M = N_c = (CI b d/W) sqrt(delta/h)/(1 + b/(2 d)).</summary>
    public static double Numeric(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons) =>
        coneIndexPascals * widthMetres * diameterMetres / loadNewtons * (Math.Sqrt(deflectionRatio) / (1 + (widthMetres / (2 * diameterMetres))));

    /// <summary>Gee-Clough: greatest coefficient of traction 0.796 - 0.92/M, a net value; negative below M 1.156.</summary>
    public static double GreatestTraction(double numeric) => 0.796 - (0.92 / numeric);

    /// <summary>Gee-Clough: rate product k (C_T)max = 4.838 + 0.061 M.</summary>
    public static double RateProduct(double numeric) => 4.838 + (0.061 * numeric);

    /// <summary>Gee-Clough: coefficient of rolling resistance 0.049 + 0.287/M.</summary>
    public static double RollingResistance(double numeric) => 0.049 + (0.287 / numeric);

    /// <summary>Gee-Clough: coefficient of traction (C_T)max (1 - e^(-k s)), net. Where (C_T)max is not positive the rate has no meaning and the ceiling itself stands: the wheel must be pushed.</summary>
    public static double CoefficientOfTraction(double numeric, double slip)
    {
        var greatest = GreatestTraction(numeric);
        return greatest > 0 ? greatest * (1 - Math.Exp(-RateProduct(numeric) / greatest * slip)) : greatest;
    }

    /// <summary>Gee-Clough: efficiency C_T (1 - s)/(C_T + C_RR).</summary>
    public static double Efficiency(double numeric, double slip)
    {
        var traction = CoefficientOfTraction(numeric, slip);
        return traction * (1 - slip) / (traction + RollingResistance(numeric));
    }

    /// <summary>WES clay: towed resistance ratio 0.04 + 0.20/(N_c - 2.50). Has no meaning at and below the pole.</summary>
    public static double TowedRatio(double numeric) => 0.04 + (0.20 / (numeric - Pole));
}
