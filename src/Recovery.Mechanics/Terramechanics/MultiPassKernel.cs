using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>What one wheel leaves to the next in its rut, once.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.MultiPass"/>.</remarks>
internal static class MultiPassKernel
{
    /// <summary>Cone index after over before, 1 + 1.8 e^(-0.11 B_n) (from memory).</summary>
    public static double ConeIndexRatio(double brixiusNumeric) => 1 + (1.8 * Math.Exp(-0.11 * brixiusNumeric));
}
