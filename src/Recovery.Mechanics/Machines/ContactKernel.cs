using System;
using MathNet.Numerics;

namespace Recovery.Mechanics.Machines;

/// <summary>Contact of a tyre with the ground, once. SI in, SI out; the printed constants are in kPa, kN and m.</summary>
/// <remarks>Sources: <see cref="MachinesSources.Keller"/>, <see cref="MachinesSources.OSullivan"/>, <see cref="MachinesSources.NominalPressure"/>.</remarks>
internal static class ContactKernel
{
    /// <summary>Keller: contact length, L = 0.47 + 0.11 d^2 - 0.16 ln(p/p_rec).</summary>
    public static double KellerLength(double diameter, double inflationOverRecommended) => 0.47 + (0.11 * diameter * diameter) - (0.16 * Math.Log(inflationOverRecommended));

    /// <summary>Keller: exponent of the footprint |2x/L|^n + |2y/w|^n = 1, n = 2.1 (w d)^2 + 2.</summary>
    public static double KellerShape(double width, double diameter) => (2.1 * width * diameter * (width * diameter)) + 2;

    /// <summary>Keller: greatest vertical stress, 34.4 + 1.13 p + 0.72 W - 33.4 ln(p/p_rec) kPa.</summary>
    public static double KellerPeak(double inflationPascals, double loadNewtons, double inflationOverRecommended) =>
        1000 * (34.4 + (1.13 * inflationPascals / 1000) + (0.72 * loadNewtons / 1000) - (33.4 * Math.Log(inflationOverRecommended)));

    /// <summary>Area of a super-ellipse of full axes L and w: L w Gamma(1 + 1/n)^2/Gamma(1 + 2/n).</summary>
    public static double SuperEllipse(double length, double width, double exponent)
    {
        var g = SpecialFunctions.GammaLn(1 + (1 / exponent));
        return length * width * Math.Exp((2 * g) - SpecialFunctions.GammaLn(1 + (2 / exponent)));
    }

    /// <summary>Keller: decay across the width, 9.3 - 7.3 w, 1/m.</summary>
    public static double KellerDecay(double width) => 9.3 - (7.3 * width);

    /// <summary>Keller: f(y) = C (w/2 - |y|) e^(-delta (w/2 - |y|)), C such that the greatest f is 1.</summary>
    public static double KellerAcross(double width, double decay, double y)
    {
        double u = (width / 2) - Math.Abs(y), top = decay > 0 && 1 / decay < width / 2 ? 1 / decay : width / 2;
        return u <= 0 ? 0 : u / top * Math.Exp(-decay * (u - top));
    }

    /// <summary>Half length of the footprint at y: (L/2)(1 - |2y/w|^n)^(1/n).</summary>
    public static double HalfLength(double length, double width, double exponent, double y)
    {
        var t = Math.Abs(2 * y / width);
        return t >= 1 ? 0 : length / 2 * Math.Pow(1 - Math.Pow(t, exponent), 1 / exponent);
    }

    /// <summary>Stress at x, y: sigma_max f(y) (1 - |x/l(y)|^alpha) within the footprint.</summary>
    public static double KellerStress(double peak, double length, double width, double exponent, double decay, double alpha, double x, double y)
    {
        var half = HalfLength(length, width, exponent, y);
        return Math.Abs(x) >= half ? 0 : peak * KellerAcross(width, decay, y) * (1 - Math.Pow(Math.Abs(x) / half, alpha));
    }

    /// <summary>O'Sullivan: A = s_1 b d + s_2 W + s_3 W/p, m2 with W in kN and p in kPa.</summary>
    public static double OSullivanArea(double s1, double s2, double s3, double width, double diameter, double loadNewtons, double inflationPascals) =>
        (s1 * width * diameter) + (s2 * loadNewtons / 1000) + (s3 * loadNewtons / inflationPascals);

    /// <summary>Nominal ground pressure: W/(r b), r = d/2.</summary>
    public static double Nominal(double loadNewtons, double width, double diameter) => loadNewtons / (width * diameter / 2);
}
