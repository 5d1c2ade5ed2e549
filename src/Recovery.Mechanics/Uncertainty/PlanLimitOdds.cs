using System;
using System.Threading;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How likely a limit of a plan is passed: sampled plainly, by first order, and sampled about the design point; never the first order alone.</summary>
/// <remarks>
/// <para>The search for the design point begins at the medians. Where the limit is flat about them (another limit governs there), it begins again where the plain sample crossed the limit nearest to them; where it does not settle there either, no first-order number is given and the sample about that crossing stands for it.</para>
/// <para>A limit that the plan does not have, and one to which nothing that scatters leads, say so in words. Immutable.</para>
/// </remarks>
public sealed class PlanLimitOdds
{
    private const int Between = 60;

    private PlanLimitOdds(PlanLimit limit) => Limit = limit;

    /// <summary>Gets the limit.</summary>
    public PlanLimit Limit { get; }

    /// <summary>Gets the plain sample; null where the plan has no such limit.</summary>
    public SampledProbability? Sampled { get; private init; }

    /// <summary>Gets the first-order result; null where there is no such limit, or no design point was found.</summary>
    public FirstOrderResult? FirstOrder { get; private init; }

    /// <summary>Gets the probability sampled about the design point or, without one, about the nearest crossing; null where nothing leads to the limit.</summary>
    public WeightedProbability? AboutDesignPoint { get; private init; }

    /// <summary>Gets whether first order and the sample about its design point lie within a factor of two, on the rarer side; false where there is no first order.</summary>
    public bool Agrees => FirstOrder is { } first && AboutDesignPoint is { } sampled && ReliabilityCheck.Within(first.Probability, sampled.Estimate);

    /// <summary>Gets whether the plain sample found what the sample about the design point did not: other ways to the limit. Both lie more than four standard errors apart then, and the plain one counts.</summary>
    public bool HasOtherWays
    {
        get
        {
            if (Sampled is not { } plain || AboutDesignPoint is not { } about) return false;

            // The error of a plain sample that never or always met the limit is that of the other's probability.
            var p = Math.Abs(plain.Estimate - 0.5) < Math.Abs(about.Estimate - 0.5) ? plain.Estimate : about.Estimate;
            return Math.Abs(plain.Estimate - about.Estimate) > 4 * Math.Sqrt((p * (1 - p) / plain.Count) + (about.StandardError * about.StandardError));
        }
    }

    /// <summary>Works all three out.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="samples">Number of samples of each kind, 100 to 1e9.</param>
    /// <param name="seed">Seed. The plain sample is that of a sampled plan with this seed.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The odds.</returns>
    /// <exception cref="ArgumentNullException">The limit is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples is outside its range.</exception>
    /// <exception cref="ArgumentException">Sampled inputs together make no plan.</exception>
    /// <exception cref="SolverException">A pull could not be solved.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static PlanLimitOdds Of(PlanLimit limit, int samples, ulong seed, CancellationToken cancellation = default)
    {
        Guard.NotNull(limit, nameof(limit));
        Guard.Count(samples, 100, 1_000_000_000, nameof(samples));
        if (limit.State is not { } state) return new PlanLimitOdds(limit);
        var plain = Plain(state, samples, seed, out var crossing, cancellation);
        var found = FirstOrderReliability.Find(state, out var u, out var gradient, out var atMedians, out var residual, out var steps);
        if (!found && crossing is not null) found = FirstOrderReliability.Find(state, out u, out gradient, out atMedians, out residual, out steps, crossing);
        cancellation.ThrowIfCancellationRequested();
        if (!found)
        {
            return new PlanLimitOdds(limit) { Sampled = plain, AboutDesignPoint = crossing is null ? null : ImportanceSampling.About(state, crossing, atMedians < 0, samples, seed, cancellation) };
        }

        var first = new FirstOrderResult(state, u, gradient, atMedians, residual, steps);
        return new PlanLimitOdds(limit) { Sampled = plain, FirstOrder = first, AboutDesignPoint = ImportanceSampling.About(state, u, first.Beta < 0, samples, seed, cancellation) };
    }

    /// <summary>Gives all three in words, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() =>
        Sampled is not { } plain ? Limit.ToString() :
        AboutDesignPoint is not { } about ? Limit.Event + ": " + plain.WithInterval() + "; nothing that scatters was found to lead " + (plain.Hits == 0 ? "to it" : "away from it") :
        Limit.Event + ": sampled " + plain.WithInterval() + "; " + (FirstOrder is { } first ? "first order " + SampledProbability.Magnitude(first.Probability) + " (beta " + Text.Number(first.Beta, 2) + ")" : "first order does not settle") + ", sampled there " + about.WithInterval()
        + (HasOtherWays ? "; there are other ways to it, the plain sample counts" : FirstOrder is null || Agrees ? string.Empty : "; the limit is curved, the sampled ones count");

    /// <summary>Samples plainly; <paramref name="crossing"/> is where the way from the medians to the nearest sample on the other side meets the limit, null where all were on one side.</summary>
    private static SampledProbability Plain(LimitState state, int samples, ulong seed, out double[]? crossing, CancellationToken cancellation)
    {
        var n = state.Dimensions;
        double[] u = new double[n], values = new double[n], nearest = new double[n];
        var fails = state.At(u, values) < 0;
        var least = double.PositiveInfinity;
        long hits = 0;
        for (var s = 0; s < samples; s++)
        {
            if (s % 1024 == 0) cancellation.ThrowIfCancellationRequested();
            for (var i = 0; i < n; i++) u[i] = NormalKernel.Inverse(Philox4x32.At(seed, (ulong)s, (uint)i, 0));
            var below = state.At(u, values) < 0;
            if (below) hits++;
            var size = FirstOrderReliability.Dot(u, u);
            if (below == fails || size >= least) continue;
            least = size;
            u.CopyTo(nearest, 0);
        }

        crossing = double.IsInfinity(least) ? null : Crossing(state, nearest, fails);
        return SampledProbability.FromCounts(hits, samples);
    }

    /// <summary>Bisects along the ray from the medians; the point given lies just on the far side.</summary>
    private static double[] Crossing(LimitState state, double[] far, bool failsAtMedians)
    {
        double[] u = new double[far.Length], values = new double[far.Length];
        double near = 0, beyond = 1;
        for (var i = 0; i < Between; i++)
        {
            var half = 0.5 * (near + beyond);
            for (var k = 0; k < u.Length; k++) u[k] = half * far[k];
            if (state.At(u, values) < 0 == failsAtMedians) near = half;
            else beyond = half;
        }

        for (var k = 0; k < u.Length; k++) u[k] = beyond * far[k];
        return u;
    }
}
