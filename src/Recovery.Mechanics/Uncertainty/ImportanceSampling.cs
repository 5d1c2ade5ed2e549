using System;
using System.Threading;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Probability of failure by sampling about the design point, with weights that undo the shift: small probabilities with few samples.</summary>
/// <remarks>
/// <para>u = u* + w with w standard normal; P = mean of 1[g below 0] exp(-u* . w - |u*|^2/2). Where failure is the likelier side, the other side is sampled and subtracted. Sums are exact, numbers come from the counter-based generator: the same bits in any run.</para>
/// <para>It sees failure around that one point. A second branch far away is undersampled; compare with a plain sample where the probability allows.</para>
/// <para>Source: shift and weights derived; held against quadrature by SciPy.</para>
/// </remarks>
public static class ImportanceSampling
{
    /// <summary>Samples about a design point.</summary>
    /// <param name="about">The design point.</param>
    /// <param name="samples">Number of samples, 100 to 1e9.</param>
    /// <param name="seed">Seed.</param>
    /// <returns>The probability with its sampling error.</returns>
    /// <exception cref="ArgumentNullException">The design point is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples is outside its range.</exception>
    public static WeightedProbability About(FirstOrderResult about, int samples, ulong seed)
    {
        Guard.NotNull(about, nameof(about));
        Guard.Count(samples, 100, 1_000_000_000, nameof(samples));
        return About(about.Limit, [.. about.StandardPoint], about.Beta < 0, samples, seed);
    }

    /// <summary>Samples about any point; the rest is sampled and subtracted where failure is the likelier side.</summary>
    internal static WeightedProbability About(LimitState limit, double[] centre, bool rest, int samples, ulong seed, CancellationToken cancellation = default)
    {
        var n = limit.Dimensions;
        double[] u = new double[n], values = new double[n];

        // Weights are about 1 at the limit; one of another branch is kept up to 1.6e7, so that it is not cut and the probability not too low.
        var tally = new Tally(4096);
        long hits = 0;
        for (var s = 0; s < samples; s++)
        {
            if (s % 1024 == 0) cancellation.ThrowIfCancellationRequested();
            double dot = 0;
            for (var i = 0; i < n; i++)
            {
                var w = NormalKernel.Inverse(Philox4x32.At(seed, (ulong)s, (uint)i, 0));
                dot += centre[i] * w;
                u[i] = centre[i] + w;
            }

            var counts = limit.At(u, values) < 0 != rest;
            if (counts) hits++;
            tally.Add(counts ? Math.Exp(-dot) : 0);
        }

        var factor = Math.Exp(-0.5 * FirstOrderReliability.Dot(centre, centre));
        double mean = tally.Mean() * factor, error = tally.Deviation() * factor / Math.Sqrt(samples);
        return new WeightedProbability(rest ? 1 - mean : mean, error, hits, samples);
    }
}
