using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Ideal capture by a weight and arrest by a tether, once. SI.</summary>
/// <remarks>Sources: <see cref="LinesSources.PlasticCapture"/>, <see cref="LinesSources.TetherArrest"/>.</remarks>
internal static class DamperKernel
{
    /// <summary>Fraction of kinetic energy, and of speed, kept after a plastic capture: m/(m + M_d).</summary>
    public static double EnergyKept(double movingKilograms, double damperKilograms) => movingKilograms / (movingKilograms + damperKilograms);

    /// <summary>Sag of a weight at mid-span, W L/(4 H).</summary>
    public static double AddedSag(double damperKilograms, double span, double tension) => damperKilograms * PhysicalConstants.StandardGravity * span / (4 * tension);

    /// <summary>Energy that a linear tether takes to its break, F_t eb L/2.</summary>
    public static double TetherCapacity(double breakForce, double strainAtBreak, double length) => breakForce * strainAtBreak * length / 2;

    /// <summary>Force of an arrest, sqrt(2 E k_t), k_t = F_t/(eb L).</summary>
    public static double ArrestForce(double energy, double breakForce, double strainAtBreak, double length) => Math.Sqrt(2 * energy * breakForce / (strainAtBreak * length));
}
