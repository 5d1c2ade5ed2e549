using System;
using System.Globalization;
using MathNet.Numerics.Distributions;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How often something happened among independent samples, with the error that belongs to it.</summary>
/// <remarks>
/// <para>Low and high are the exact binomial interval of Clopper and Pearson at 95 per cent: it holds the sampling error alone, never that of the inputs.</para>
/// <para>In words it is an order of magnitude and no finer: where inputs are from memory or by judgement, a digit would be invented. A share that lies well between two rungs of even, 1 in 10 and 1 in 100 is named by both, never by the nearer one: 30 per cent is no "1 in 10". Below about 1 in 100 the nearest power of ten is named, down to 1 in 1e12, below which no model of this library says anything. Counts and estimate are there for computing with. Immutable, equality by value. Source: interval from memory, held against SciPy.</para>
/// </remarks>
public readonly record struct SampledProbability
{
    private const double Tail = 0.025;

    /// <summary>Factor within which a share is called by one rung alone (judgement).</summary>
    internal const double Near = 1.25;

    /// <summary>Share below which no power of ten is named (judgement); a first-order probability may well come out as 0 or 1 in doubles.</summary>
    internal const double Rarest = 1e-12;

    internal SampledProbability(long hits, long count)
    {
        Hits = hits;
        Count = count;
    }

    /// <summary>Gets how often it happened.</summary>
    public long Hits { get; }

    /// <summary>Gets the number of samples.</summary>
    public long Count { get; }

    /// <summary>Gets the share, for computing with; in words say <see cref="ToString"/>.</summary>
    public double Estimate => Count == 0 ? 0 : (double)Hits / Count;

    /// <summary>Gets the standard error of the share, root of p (1 - p)/n.</summary>
    public double StandardError => Count == 0 ? 0 : Math.Sqrt(Estimate * (1 - Estimate) / Count);

    /// <summary>Gets the lower end of the 95 per cent interval.</summary>
    public double Low => Hits == 0 ? 0 : Beta.InvCDF(Hits, Count - Hits + 1, Tail);

    /// <summary>Gets the upper end of the 95 per cent interval.</summary>
    public double High => Hits == Count ? 1 : Beta.InvCDF(Hits + 1, Count - Hits, 1 - Tail);

    /// <summary>Makes a probability from counts.</summary>
    /// <param name="hits">How often it happened, 0 to <paramref name="count"/>.</param>
    /// <param name="count">Number of independent samples, 1 to 1e15.</param>
    /// <returns>The probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public static SampledProbability FromCounts(long hits, long count)
    {
        Guard.Range(count, 1, 1e15, string.Empty, nameof(count));
        Guard.Range(hits, 0, count, string.Empty, nameof(hits));
        return new SampledProbability(hits, count);
    }

    /// <summary>Gives both parts together.</summary>
    /// <param name="other">The other part.</param>
    /// <returns>The merged counts.</returns>
    public SampledProbability Merge(SampledProbability other) => new(Hits + other.Hits, Count + other.Count);

    /// <summary>Gives the number of samples that a probability needs for a wanted coefficient of variation of its estimate, (1 - p)/(p V^2).</summary>
    /// <param name="probability">The probability, 1e-12 to 1.</param>
    /// <param name="coefficientOfVariation">Wanted standard error over estimate, 0.001 to 10.</param>
    /// <returns>The number of samples, not rounded.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SamplesFor(double probability, double coefficientOfVariation)
    {
        var v = Guard.Range(coefficientOfVariation, 1e-3, 10, string.Empty, nameof(coefficientOfVariation));
        return (1 - Guard.Range(probability, 1e-12, 1, string.Empty, nameof(probability))) / (probability * v * v);
    }

    /// <summary>Gives the order of magnitude in words, invariant culture: <c>about 1 in 1,000</c>, <c>1 in 10 to even</c>, <c>about even</c>, <c>even to 9 in 10</c>, <c>all but about 1 in 100</c>.</summary>
    /// <returns>Words, never finer than an order of magnitude.</returns>
    public override string ToString() =>
        Count == 0 ? "no samples" :
        Hits == 0 ? "not once in " + Whole(Count) :
        Hits == Count ? "every time in " + Whole(Count) :
        Magnitude(Estimate);

    /// <summary>Gives the 95 per cent interval of sampling in words, invariant culture: the rungs (even, 1 in 10, 1 in 100 ...) between which it lies. What the inputs do not know comes on top.</summary>
    /// <returns>Words, never finer than an order of magnitude: <c>1 in 10 to even</c>, <c>below 1 in 100,000</c>.</returns>
    public string IntervalInWords() => Count == 0 ? "no samples" : IntervalWords.Of(Low, High);

    /// <summary>Gives the order of magnitude and, where sampling leaves more than it open, how far the interval of sampling reaches; invariant culture.</summary>
    /// <returns>Words: <c>1 in 10 to even</c>, <c>about 1 in 1,000 (sampling error: 1 in 1,000 to 1 in 100)</c>.</returns>
    public string WithInterval() => Count == 0 || IntervalWords.Says(ToString(), Low, High) ? ToString() : this + " (sampling error: " + IntervalInWords() + ")";

    /// <summary>An order of magnitude in words. The rarer side is named, so that 0.97 and 0.9997 can be told apart; between rungs both are named, because the nearer one alone would mislead by up to three times.</summary>
    internal static string Magnitude(double probability)
    {
        var rarer = Math.Min(probability, 1 - probability);
        if (rarer >= 0.5 / Near) return "about even";
        var often = probability > 0.5;
        if (rarer > 0.1 * Near) return often ? "even to 9 in 10" : "1 in 10 to even";
        if (rarer > 0.01 * Near && rarer < 0.1 / Near) return often ? "9 in 10 to 99 in 100" : "1 in 100 to 1 in 10";
        if (!(rarer >= Rarest)) return (often ? "all but less than 1 in " : "less than 1 in ") + Grouped(12);
        return (often ? "all but about 1 in " : "about 1 in ") + Grouped((int)Math.Round(-Math.Log10(rarer)));
    }

    internal static string Whole(long number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    internal static string Grouped(int decades) => decades switch
    {
        1 => "10",
        2 => "100",
        3 => "1,000",
        4 => "10,000",
        5 => "100,000",
        6 => "1,000,000",
        _ => "1e" + Text.Number(decades),
    };
}
