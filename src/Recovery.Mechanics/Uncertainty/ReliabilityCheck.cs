using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A first-order probability and, beside it, the sampled one: never the first without the second.</summary>
/// <remarks>Immutable. First order may be low or high by a factor of about two; where the two differ by more, <see cref="Agrees"/> is false and the sampled one counts.</remarks>
public sealed class ReliabilityCheck
{
    private ReliabilityCheck(FirstOrderResult firstOrder, WeightedProbability sampled)
    {
        FirstOrder = firstOrder;
        Sampled = sampled;
    }

    /// <summary>Gets the first-order result.</summary>
    public FirstOrderResult FirstOrder { get; }

    /// <summary>Gets the probability sampled about the design point.</summary>
    public WeightedProbability Sampled { get; }

    /// <summary>Gets whether both lie within a factor of two of each other, on the rarer side.</summary>
    public bool Agrees => Within(FirstOrder.Probability, Sampled.Estimate);

    /// <summary>Works both out.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="samples">Number of samples about the design point, 100 to 1e9.</param>
    /// <param name="seed">Seed.</param>
    /// <returns>Both results.</returns>
    /// <exception cref="ArgumentNullException">The limit is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples is outside its range.</exception>
    /// <exception cref="SolverException">No design point was found.</exception>
    public static ReliabilityCheck Of(LimitState limit, int samples, ulong seed)
    {
        var first = FirstOrderReliability.Of(limit);
        return new ReliabilityCheck(first, ImportanceSampling.About(first, samples, seed));
    }

    /// <summary>Whether two probabilities lie within a factor of two of each other, on the rarer side.</summary>
    internal static bool Within(double one, double other)
    {
        double a = Math.Min(one, 1 - one), b = Math.Min(other, 1 - other);
        return b <= 2 * a && a <= 2 * b;
    }

    /// <summary>Gives both in words, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => FirstOrder + "; sampled " + Sampled.WithInterval() + (Agrees ? string.Empty : " (they differ by more than a factor of two: the limit is curved, the sampled one counts)");
}
