using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Bekker's pressure-sinkage law under plate, track and wheel, once. SI in, SI out: k in N/m^(n+2).</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.BekkerWheel"/>, <see cref="TerramechanicsSources.BekkerTrack"/>, <see cref="TerramechanicsSources.SlipSinkage"/>.</remarks>
internal static class BekkerKernel
{
    /// <summary>k = k_c/b + k_phi, b the smaller side of the contact patch.</summary>
    public static double Modulus(double cohesiveModulus, double frictionalModulus, double smallerSideMetres) => (cohesiveModulus / smallerSideMetres) + frictionalModulus;

    /// <summary>Sinkage of a plate or track under a pressure, (p/k)^(1/n).</summary>
    public static double PlateSinkage(double pressurePascals, double modulus, double exponent) => Math.Pow(pressurePascals / modulus, 1 / exponent);

    /// <summary>Work to press a rut of width b to depth z, per length: b k z^(n+1)/(n+1).</summary>
    public static double CompactionResistance(double widthMetres, double modulus, double sinkageMetres, double exponent) =>
        widthMetres * modulus * Math.Pow(sinkageMetres, exponent + 1) / (exponent + 1);

    /// <summary>Sinkage of a rigid wheel, [3 W/(b (3-n) k sqrt(D))]^(2/(2n+1)).</summary>
    public static double RigidSinkage(double loadNewtons, double widthMetres, double diameterMetres, double modulus, double exponent) =>
        Math.Pow(Term(loadNewtons, widthMetres, diameterMetres, exponent) / modulus, 2 / ((2 * exponent) + 1));

    /// <summary>Ground pressure up to which a tyre yields: above it in its inflation and carcass, it runs as a rigid wheel. k^(1/(2n+1)) [3W/((3-n) b sqrt(D))]^(2n/(2n+1)).</summary>
    public static double CriticalPressure(double loadNewtons, double widthMetres, double diameterMetres, double modulus, double exponent) =>
        Math.Pow(modulus, 1 / ((2 * exponent) + 1)) * Math.Pow(Term(loadNewtons, widthMetres, diameterMetres, exponent), 2 * exponent / ((2 * exponent) + 1));

    /// <summary>Sinkage at a slip over sinkage at none, (1 + s)/(1 - 0.5 s) (Lyasko).</summary>
    public static double SlipSinkage(double slip) => (1 + slip) / (1 - (0.5 * slip));

    /// <summary>Sinkage of a rigid wheel in the rut of the one before, n = 1 only: (3W/(2 (k_c + b k_phi) sqrt(D)) + z^1.5)^(2/3).</summary>
    public static double RepeatedSinkage(double loadNewtons, double widthMetres, double diameterMetres, double modulus, double sinkageBeforeMetres) =>
        Math.Pow((Term(loadNewtons, widthMetres, diameterMetres, 1) / modulus) + Math.Pow(sinkageBeforeMetres, 1.5), 2.0 / 3);

    private static double Term(double loadNewtons, double widthMetres, double diameterMetres, double exponent) =>
        3 * loadNewtons / ((3 - exponent) * widthMetres * Math.Sqrt(diameterMetres));
}
