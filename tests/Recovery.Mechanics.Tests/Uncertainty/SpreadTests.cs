using System;
using System.Linq;
using FsCheck.Xunit;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Every spread against SciPy, and what holds of all of them.</summary>
public class SpreadTests
{
    private static readonly Spread[] All =
    [
        Spread.Lognormal(350, 0.45), Spread.LognormalAround(1, 0.35), Spread.Normal(-2, 3), Spread.Uniform(2, 5), Spread.Triangular(10, 12.5, 20), Spread.BetaPert(0.1, 0.2, 0.8),
        Spread.Gumbel(20, 4), Spread.Truncated(Spread.Normal(0.9, 0.1), 1.0 / 3, 1), Spread.Empirical([310, 350, 360, 420, 280]),
    ];

    [Theory]
    [CheckRows("uncertainty-scipy", "spread")]
    public void Quantiles_mean_and_deviation(CheckRow row)
    {
        double a = row.Si("a"), b = row.Si("b"), c = row.Si("c", 0), d = row.Si("d", 0);
        var spread = row.Word("kind") switch
        {
            "lognormal" => Spread.Lognormal(a, b),
            "normal" => Spread.Normal(a, b),
            "uniform" => Spread.Uniform(a, b),
            "triangular" => Spread.Triangular(a, b, c),
            "pert" => Spread.BetaPert(a, b, c),
            "gumbel" => Spread.Gumbel(a, b),
            _ => Spread.Truncated(Spread.Normal(a, b), c, d),
        };
        var p = row.SiList("p");
        row.MatchesList("q", p.Select(spread.Quantile).ToArray());
        row.MatchesOne("mean", spread.Mean);
        row.MatchesOne("sd", spread.StandardDeviation);
    }

    [Fact]
    public void Distribution_function_undoes_the_quantile()
    {
        foreach (var spread in All)
        {
            for (var p = 0.01; p < 0.995; p += 0.007)
            {
                if (spread is EmpiricalSpread && p is < 0.1 or > 0.9) continue;
                Assert.Equal(p, spread.Probability(spread.Quantile(p)), 10);
            }
        }
    }

    [Property(MaxTest = 200)]
    public bool Rises_with_the_normal_number(int index, double from, double step)
    {
        var spread = All[(int)(Math.Abs((long)index) % All.Length)];
        double z = Fold(from) * 7, further = z + (Math.Abs(Fold(step)) * 0.5);
        return spread.FromNormal(further) >= spread.FromNormal(z) && !double.IsNaN(spread.FromNormal(z)) && !double.IsInfinity(spread.FromNormal(z));
    }

    [Fact]
    public void A_block_is_the_same_numbers_to_the_bit()
    {
        foreach (var spread in All.Append(Spread.Fixed(3)))
        {
            var z = Enumerable.Range(0, 101).Select(i => (i - 50) * 0.16).ToArray();
            var block = (double[])z.Clone();
            spread.FromNormals(block);
            for (var i = 0; i < z.Length; i++) Assert.Equal(BitConverter.DoubleToInt64Bits(spread.FromNormal(z[i])), BitConverter.DoubleToInt64Bits(block[i]));
        }
    }

    [Fact]
    public void Lognormal_by_mean_and_by_median_agree()
    {
        var spread = (LognormalSpread)Spread.Lognormal(100, 0.25);
        var same = (LognormalSpread)Spread.LognormalAround(spread.Median, spread.LogarithmicDeviation);
        Assert.Equal(100, same.Mean, 10);
        Assert.Equal(0.25, same.CoefficientOfVariation, 12);
    }

    [Fact]
    public void Readings_are_held_at_their_ends_and_never_extrapolated()
    {
        var readings = (EmpiricalSpread)Spread.Empirical([4, 1, 2]);
        Assert.Equal([1.0, 2.0, 4.0], readings.Readings);
        Assert.Equal(1, readings.Quantile(1e-9));
        Assert.Equal(4, readings.Quantile(1 - 1e-9));
        Assert.Equal(2, readings.Quantile(0.5), 12);
        Assert.Equal(1.5, readings.Quantile(1.0 / 3), 12);
        Assert.Equal(0, readings.Probability(0.999));
        Assert.Equal(1, readings.Probability(4));
    }

    [Fact]
    public void Bad_shapes_are_refused_with_words()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Spread.Lognormal(0, 0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spread.Lognormal(1, -0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spread.Normal(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spread.Triangular(1, 4, 3));
        Assert.Throws<ArgumentException>(() => Spread.Uniform(2, 2));
        Assert.Throws<ArgumentException>(() => Spread.Empirical([1]));
        Assert.Throws<ArgumentException>(() => Spread.Empirical([2, 2, 2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spread.Empirical([1, double.NaN]));
        Assert.Contains("millionth", Assert.Throws<ArgumentException>(() => Spread.Truncated(Spread.Normal(0, 1), 8, 9)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Spread.Fixed(double.PositiveInfinity));
        Assert.Throws<ArgumentNullException>(() => Spread.Truncated(null!, 0, 1));
    }

    [Fact]
    public void Every_spread_says_itself() => Assert.All(All.Append(Spread.Fixed(3)), s => Assert.DoesNotContain("Spread", s.ToString(), StringComparison.Ordinal));

    private static double Fold(double x) => double.IsNaN(x) || double.IsInfinity(x) ? 0 : x - Math.Floor(x) - 0.5;
}
