using System;
using System.Linq;
using System.Numerics;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Counts, moments and quantiles that add up to the bit.</summary>
public class SummaryTests
{
    [Theory]
    [CheckRows("uncertainty-scipy", "summary")]
    public void Moments_of_a_stated_sequence(CheckRow row)
    {
        var summary = SampleSummary.Of(Sequence(row), Math.Abs(row.Si("centre")));
        row.Matches(("mean", summary.Mean), ("sd", summary.StandardDeviation));
    }

    [Theory]
    [CheckRows("uncertainty-scipy", "summary-quantile")]
    public void Quantiles_of_a_stated_sequence_within_the_stated_error(CheckRow row)
    {
        var summary = SampleSummary.Of(Sequence(row), Math.Abs(row.Si("centre")));
        row.Matches(("q5", summary.Quantile(0.05)), ("q50", summary.Quantile(0.5)), ("q95", summary.Quantile(0.95)));
    }

    [Theory]
    [CheckRows("uncertainty-scipy", "binomial")]
    public void Binomial_interval(CheckRow row)
    {
        var p = SampledProbability.FromCounts((long)row.Si("hits"), (long)row.Si("count"));
        row.Matches(("low", p.Low), ("high", p.High));
    }

    [Theory]
    [CheckRows("uncertainty", "sample-size")]
    public void Samples_for_a_wanted_error(CheckRow row) => row.Matches(("N", SampledProbability.SamplesFor(row.Si("Pf"), row.Si("cov"))));

    [Fact]
    public void A_million_samples_give_the_same_bytes_for_any_partition_in_any_order()
    {
        var values = new double[1_000_000];
        Philox4x32.Uniforms(7, 0, 0, 0, values);
        NormalKernel.Inverse(values);
        Spread.Lognormal(250e3, 0.6).FromNormals(values);
        var whole = SampleSummary.Of(values, 250e3).ToBytes();
        foreach (var parts in new[] { 2, 3, 16 })
        {
            var cut = Enumerable.Range(0, parts + 1).Select(i => (int)((long)values.Length * i / parts)).ToArray();
            var pieces = Enumerable.Range(0, parts).Select(i => SampleSummary.Of(values.AsSpan(cut[i], cut[i + 1] - cut[i]), 250e3)).ToArray();
            Assert.Equal(whole, pieces.Aggregate((a, b) => a.Merge(b)).ToBytes());
            Assert.Equal(whole, pieces.Reverse().Aggregate((a, b) => a.Merge(b)).ToBytes());
            Assert.Equal(whole, pieces.OrderBy(p => p.Maximum).Aggregate((a, b) => b.Merge(a)).ToBytes());
        }
    }

    [Property]
    public bool Merging_is_exact_over_any_cut(int seed, PositiveInt cutAt)
    {
        var values = new double[400];
        Philox4x32.Uniforms((ulong)(uint)seed, 0, 1, 0, values);
        for (var i = 0; i < values.Length; i++) values[i] = (values[i] - 0.3) * Math.Pow(10, (i % 9) - 4);
        var cut = 1 + (cutAt.Get % 398);
        var merged = SampleSummary.Of(values.AsSpan(cut), 1).Merge(SampleSummary.Of(values.AsSpan(0, cut), 1));
        return merged.ToBytes().SequenceEqual(SampleSummary.Of(values, 1).ToBytes());
    }

    [Fact]
    public void Sums_are_those_of_whole_numbers()
    {
        // Numbers that are multiples of the unit: the sums must be exact, large and small, positive and negative.
        var unit = Math.Pow(2, -32);
        long[] whole = [1, -1, 7, (1L << 43) - 3, -(1L << 44) + 5, 123456789012, -987654321098];
        var summary = SampleSummary.Of(whole.Select(w => w * unit).ToArray(), 1);
        var sum = whole.Aggregate(BigInteger.Zero, (a, w) => a + w);
        var squares = whole.Aggregate(BigInteger.Zero, (a, w) => a + ((BigInteger)w * w));
        Assert.Equal((double)sum * unit / whole.Length, summary.Mean, 1e-12);
        Assert.Equal(Math.Sqrt((double)((squares * whole.Length) - (sum * sum)) / whole.Length / (whole.Length - 1)) * unit, summary.StandardDeviation, 1e-12 * summary.StandardDeviation);
        Assert.Equal(0, summary.Clipped);
    }

    [Fact]
    public void Beyond_its_reach_a_number_is_counted_as_clipped()
    {
        var summary = SampleSummary.Of([1, 2, 1e9], 1);
        Assert.Equal(1, summary.Clipped);
        Assert.Equal(1e9, summary.Maximum);
        Assert.Equal(0, SampleSummary.Of([1, 4096], 1).Clipped);
        Assert.Equal(1, SampleSummary.Of([1, 4096.001], 1).Clipped);
    }

    [Fact]
    public void Quantiles_run_from_the_least_to_the_greatest_through_zero()
    {
        var summary = SampleSummary.Of([-8, -3, 0, 1e-9, 5], 1);
        Assert.Equal(-8, summary.Quantile(0));
        Assert.Equal(-3, summary.Quantile(0.4), 0.012);
        Assert.Equal(0, summary.Quantile(0.6));
        Assert.Equal(0, summary.Quantile(0.8));
        Assert.Equal(5, summary.Quantile(1));
    }

    [Fact]
    public void Parts_of_different_scale_are_refused() => Assert.Throws<ArgumentException>(() => SampleSummary.Of([1.0], 1).Merge(SampleSummary.Of([1.0], 10)));

    [Theory]
    [InlineData(0, 100, "not once in 100")]
    [InlineData(100, 100, "every time in 100")]
    [InlineData(50, 100, "about even")]
    [InlineData(30, 100, "1 in 10 to even")]
    [InlineData(73, 100, "even to 9 in 10")]
    [InlineData(399, 1000, "1 in 10 to even")]
    [InlineData(400, 1000, "about even")]
    [InlineData(600, 1000, "about even")]
    [InlineData(601, 1000, "even to 9 in 10")]
    [InlineData(126, 1000, "1 in 10 to even")]
    [InlineData(125, 1000, "about 1 in 10")]
    [InlineData(80, 1000, "about 1 in 10")]
    [InlineData(79, 1000, "1 in 100 to 1 in 10")]
    [InlineData(126, 10_000, "1 in 100 to 1 in 10")]
    [InlineData(125, 10_000, "about 1 in 100")]
    [InlineData(32, 10_000, "about 1 in 100")]
    [InlineData(31, 10_000, "about 1 in 1,000")]
    [InlineData(900, 1000, "all but about 1 in 10")]
    [InlineData(970, 1000, "9 in 10 to 99 in 100")]
    [InlineData(9997, 10_000, "all but about 1 in 10,000")]
    [InlineData(1, 10_000_000, "about 1 in 1e7")]
    public void In_words_it_is_an_order_of_magnitude(long hits, long count, string words) => Assert.Equal(words, SampledProbability.FromCounts(hits, count).ToString());

    [Property]
    public bool Words_never_name_a_rung_further_off_than_a_factor_of_three_and_a_bit(int seed)
    {
        // The words are read back: a single rung holds the rarer side within root ten below one per cent and within 1.25 above; two rungs enclose it.
        var hits = 1 + (((long)seed & 0xffffff) % 999_998);
        double share = hits / 1e6, rarer = Math.Min(share, 1 - share);
        var words = SampledProbability.FromCounts(hits, 1_000_000).ToString();
        if (words == "about even") return rarer >= 0.4;
        if (words.Contains("even", StringComparison.Ordinal)) return rarer > 0.1 && (share > 0.5) == words.StartsWith("even", StringComparison.Ordinal);
        if (!words.Contains("about", StringComparison.Ordinal)) return rarer > 0.01 && rarer < 0.1 && (share > 0.5) == words.StartsWith("9 in 10", StringComparison.Ordinal);
        var rung = 1 / double.Parse(words[(words.LastIndexOf("1 in ", StringComparison.Ordinal) + 5)..].Replace(",", string.Empty, StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
        return Math.Abs(Math.Log10(rarer / rung)) <= (rarer > 0.0125 ? Math.Log10(1.2501) : 0.5001);
    }

    [Fact]
    public void Misuse_is_refused()
    {
        Assert.Throws<ArgumentException>(() => SampleSummary.Of([], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SampleSummary.Of([double.NaN], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SampleSummary.Of([1], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SampledProbability.FromCounts(3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => SampledProbability.FromCounts(0, 0));
    }

    private static double[] Sequence(CheckRow row)
    {
        double centre = row.Si("centre"), width = row.Si("width");
        return Enumerable.Range(0, (int)row.Si("count")).Select(i => (centre * Math.Exp(width * Math.Sin(i))) + (0.1 * centre * width * Math.Cos(2 * i))).ToArray();
    }
}
