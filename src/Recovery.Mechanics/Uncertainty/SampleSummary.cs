using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What many samples of one number come to: count, mean, deviation, extremes, quantiles. Parts merge exactly.</summary>
/// <remarks>
/// <para>Every number is rounded once, to 2^-32 of a fixed scale, and counted in whole numbers from there on: the merged result of any partition in any order is the same to the bit.</para>
/// <para>Quantiles come from bins of equal relative width and are good to <see cref="QuantileError"/> of themselves; extremes are exact; numbers nearer zero than 1e-6 count as zero in quantiles. Immutable.</para>
/// </remarks>
public sealed class SampleSummary
{
    /// <summary>Greatest relative error of a quantile: 1/256, half a bin.</summary>
    public const double QuantileError = 1.0 / 256;

    private readonly Tally _tally;

    internal SampleSummary(Tally tally) => _tally = tally;

    /// <summary>Gets the number of samples.</summary>
    public long Count => _tally.Count;

    /// <summary>Gets the mean.</summary>
    public double Mean => _tally.Mean();

    /// <summary>Gets the standard deviation, with n - 1.</summary>
    public double StandardDeviation => _tally.Deviation();

    /// <summary>Gets the standard error of the mean: deviation over root of n. It holds for independent samples; for Sobol points it is an upper estimate.</summary>
    public double StandardError => StandardDeviation / Math.Sqrt(Count);

    /// <summary>Gets the least sample.</summary>
    public double Minimum => _tally.Minimum;

    /// <summary>Gets the greatest sample.</summary>
    public double Maximum => _tally.Maximum;

    /// <summary>Gets how many samples lay beyond 4,096 times the scale and count as that in mean and deviation.</summary>
    public long Clipped => _tally.Clipped;

    /// <summary>Gets the most that rounding can have moved a sample.</summary>
    public double Rounding => _tally.Rounding;

    /// <summary>Summarises numbers.</summary>
    /// <param name="values">The numbers, -1e300 to 1e300, at least one.</param>
    /// <param name="scale">Size of a typical number, 1e-100 to 1e100; the same in all parts that are to be merged.</param>
    /// <returns>The summary.</returns>
    /// <exception cref="ArgumentException">There are no numbers.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number or the scale is outside its range.</exception>
    public static SampleSummary Of(ReadOnlySpan<double> values, double scale)
    {
        if (values.Length == 0) throw new ArgumentException("values must hold at least one number.", nameof(values));
        Guard.All(values, -1e300, 1e300, string.Empty, nameof(values));
        var tally = new Tally(Guard.Range(scale, 1e-100, 1e100, string.Empty, nameof(scale)));
        foreach (var value in values) tally.Add(value);
        return new SampleSummary(tally);
    }

    /// <summary>Gives the number below which a share of the samples lies, to <see cref="QuantileError"/> of itself.</summary>
    /// <param name="probability">The share, 0 to 1; 0 and 1 give the extremes.</param>
    /// <returns>The quantile: the sample of rank ceil(p n).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public double Quantile(double probability)
    {
        Guard.Range(probability, 0, 1, string.Empty, nameof(probability));
        var rank = (long)Math.Ceiling(probability * Count);
        return rank <= 1 ? Minimum : rank >= Count ? Maximum : _tally.Ranked(rank);
    }

    /// <summary>Gives the summary of both parts together.</summary>
    /// <param name="other">The other part, summarised with the same scale.</param>
    /// <returns>The merged summary.</returns>
    /// <exception cref="ArgumentNullException">The other part is null.</exception>
    /// <exception cref="ArgumentException">It has another scale.</exception>
    public SampleSummary Merge(SampleSummary other)
    {
        Guard.NotNull(other, nameof(other));
        var merged = _tally.Copy();
        merged.Add(other._tally);
        return new SampleSummary(merged);
    }

    /// <summary>Gives everything that is counted as bytes: equal samples give equal bytes, whatever the partition.</summary>
    /// <returns>The bytes.</returns>
    public byte[] ToBytes()
    {
        var bytes = new List<byte>(4096);
        _tally.Write(bytes);
        return [.. bytes];
    }

    /// <summary>Gives mean, deviation and the range of nine tenths, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => "mean " + Text.Number(Mean, 3) + ", sd " + Text.Number(StandardDeviation, 2) + ", " + Text.Number(Quantile(0.05), 3) + " to " + Text.Number(Quantile(0.95), 3) + " (nine tenths)";
}
