using System;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A probability from weighted samples, with its sampling error.</summary>
/// <remarks>Immutable value. In words an order of magnitude and no finer.</remarks>
public readonly record struct WeightedProbability
{
    /// <summary>Standard normal number with 2.5 per cent above it.</summary>
    private const double Normal95 = 1.959963984540054;

    internal WeightedProbability(double estimate, double standardError, long hits, long count) => (Estimate, StandardError, Hits, Count) = (estimate, standardError, hits, count);

    /// <summary>Gets the probability, for computing with.</summary>
    public double Estimate { get; }

    /// <summary>Gets its standard error: that of sampling alone.</summary>
    public double StandardError { get; }

    /// <summary>Gets the samples that counted: those that failed or, where failure is the likelier side, those that held.</summary>
    public long Hits { get; }

    /// <summary>Gets the number of samples.</summary>
    public long Count { get; }

    /// <summary>Gets the standard error over the rarer side; zero where nothing counted.</summary>
    public double CoefficientOfVariation => Hits == 0 ? 0 : StandardError / Math.Min(Estimate, 1 - Estimate);

    /// <summary>Gets the index that belongs to the probability, -Phi^-1(P); null where nothing counted.</summary>
    public double? GeneralisedBeta => Hits == 0 || !(Estimate > 0 && Estimate < 1) ? null : -NormalKernel.Inverse(Estimate);

    /// <summary>Gets the lower end of the 95 per cent interval, 1.96 standard errors below; 0 at the least.</summary>
    public double Low => Math.Max(0, Estimate - (Normal95 * StandardError));

    /// <summary>Gets the upper end of the 95 per cent interval, 1.96 standard errors above; 1 at the most.</summary>
    public double High => Math.Min(1, Estimate + (Normal95 * StandardError));

    /// <summary>Gives the order of magnitude and, where sampling leaves more than it open, how far the interval of sampling reaches; invariant culture.</summary>
    /// <returns>Words.</returns>
    public string WithInterval() => Hits == 0 || IntervalWords.Says(ToString(), Low, High) ? ToString() : this + " (sampling error: " + IntervalWords.Of(Low, High) + ")";

    /// <summary>Gives the order of magnitude in words, invariant culture.</summary>
    /// <returns>Words.</returns>
    public override string ToString() => Hits > 0 ? SampledProbability.Magnitude(Estimate) : (Estimate > 0.5 ? "every time in " : "not once in ") + SampledProbability.Whole(Count);
}
