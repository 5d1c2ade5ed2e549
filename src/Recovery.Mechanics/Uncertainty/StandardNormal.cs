using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The standard normal distribution: distribution function, density, inverse.</summary>
/// <remarks>Distribution function after Cody 1969, inverse after Wichura 1988 (AS 241), both from memory and held against SciPy and MathNet to 1e-14 relative, tails included. A safety index beta belongs to the probability <c>Probability(-beta)</c>.</remarks>
public static class StandardNormal
{
    /// <summary>Gives the probability that a standard normal number is at most a value.</summary>
    /// <param name="value">The value, -1,000 to 1,000; below -38.5 the probability is zero in double precision.</param>
    /// <returns>The probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static double Probability(double value) => NormalKernel.Cdf(Guard.Range(value, -1000, 1000, string.Empty, nameof(value)));

    /// <summary>Gives the value below which a standard normal number lies with a probability.</summary>
    /// <param name="probability">Probability, 1e-300 to the last number below 1.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its range.</exception>
    public static double Quantile(double probability) => NormalKernel.Inverse(Guard.Range(probability, 1e-300, 1 - 1.2e-16, string.Empty, nameof(probability)));
}
