using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Shear strength mobilised by displacement (Janosi and Hanamoto), once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.ShearDisplacement"/>, <see cref="TerramechanicsSources.ShearModulus"/>.</remarks>
internal static class ShearKernel
{
    /// <summary>Strength c + p tan phi; times an area and a load it is the greatest thrust A c + W tan phi.</summary>
    public static double Strength(double cohesion, double normal, double friction) => cohesion + (normal * Math.Tan(friction));

    /// <summary>Share of the strength at a displacement, 1 - e^(-j/K).</summary>
    public static double Mobilised(double displacementMetres, double shearModulusMetres) => 1 - Math.Exp(-displacementMetres / shearModulusMetres);

    /// <summary>Mean share along a contact that slides j = s x from its front: 1 - (K/(s l))(1 - e^(-s l/K)); by series where s l is small.</summary>
    public static double MeanMobilised(double slip, double lengthMetres, double shearModulusMetres)
    {
        var x = slip * lengthMetres / shearModulusMetres;
        return x < 1e-2 ? x * (0.5 - (x * ((1.0 / 6) - (x * ((1.0 / 24) - (x * ((1.0 / 120) - (x / 720)))))))) : 1 - ((1 - Math.Exp(-x)) / x);
    }

    /// <summary>Thrust (A c + W tan phi) times the mean share.</summary>
    public static double Thrust(double areaSquareMetres, double cohesionPascals, double loadNewtons, double friction, double slip, double lengthMetres, double shearModulusMetres) =>
        Strength(areaSquareMetres * cohesionPascals, loadNewtons, friction) * MeanMobilised(slip, lengthMetres, shearModulusMetres);
}
