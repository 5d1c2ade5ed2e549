using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>A belly on the ground, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="ResistanceSources.Rankine"/>, <see cref="ResistanceSources.BearingFactor"/>, <see cref="ResistanceSources.Composition"/>, <see cref="ResistanceSources.Cavitation"/>.</remarks>
internal static class UnderbodyKernel
{
    /// <summary>Bearing factor of a shallow strip, 2 + pi.</summary>
    public const double BearingFactor = 5.14;

    /// <summary>Floor strength at which the belly goes over from the bearing of the floor to its share by area, W/(N_c (A + sum(b c))).</summary>
    public static double ChangeOverFloor(double weight, double bellyArea, double wheelArea) => weight / (BearingFactor * (bellyArea + wheelArea));

    /// <summary>Drag min(alpha s_u, 12 kPa) A + w (gamma z^2/2 + 2 s_u z).</summary>
    public static double Drag(double lengthMetres, double widthMetres, double immersionMetres, double strengthPascals, double unitWeight, double adhesionFactor) =>
        (BuriedWheelKernel.Adhesion(strengthPascals, adhesionFactor) * lengthMetres * widthMetres) + BuriedWheelKernel.Face(widthMetres, immersionMetres, strengthPascals, unitWeight);

    /// <summary>Share of the belly by area.</summary>
    public static double ByArea(double weight, double bellyArea, double wheelArea) => weight * bellyArea / (bellyArea + wheelArea);

    /// <summary>Weight that the belly carries: its share by area, at most what the floor bears.</summary>
    public static double Carried(double weight, double bellyArea, double wheelArea, double strengthPascals) =>
        bellyArea > 0 ? Math.Min(ByArea(weight, bellyArea, wheelArea), BearingFactor * strengthPascals * bellyArea) : 0;

    /// <summary>Static equilibrium bound on the floor: (W - gamma sum z b c - gamma z_b A)/(N_c (sum b c + A)).</summary>
    public static double EquilibriumBound(double weight, double displacedVolume, double area, double unitWeight, double bearingFactor = BearingFactor) =>
        (weight - (unitWeight * displacedVolume)) / (bearingFactor * area);
}
