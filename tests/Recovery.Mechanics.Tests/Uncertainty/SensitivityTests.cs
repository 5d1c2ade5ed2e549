using System;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Sobol points against SciPy, sensitivity indices against closed forms.</summary>
public class SensitivityTests
{
    [Theory]
    [CheckRows("uncertainty-scipy", "sobol-points")]
    public void Plain_points_are_those_of_SciPy(CheckRow row)
    {
        var points = SobolPoints.Plain(SobolPoints.MostDimensions);
        var index = (long)row.Si("index");
        row.MatchesList("x", row.SiList("dimension").Select(d => points.Word(index, (int)d) / 4294967296.0).ToArray());
        foreach (var d in row.SiList("dimension"))
        {
            var block = new double[5];
            points.Uniforms(index, (int)d, block);
            for (var i = 0; i < 5; i++) Assert.Equal(Philox4x32.Uniform32(points.Word(index + i, (int)d)), block[i]);
        }
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(17, 3)]
    public void Scrambled_points_keep_the_net(ulong seed, int stream)
    {
        const int Bits = 10, Count = 1 << Bits;
        var points = SobolPoints.Scrambled(SobolPoints.MostDimensions, seed, stream);
        for (var d = 0; d < SobolPoints.MostDimensions; d++)
            Assert.Equal(Count, Enumerable.Range(0, Count).Select(i => points.Word(i, d) >> (32 - Bits)).Distinct().Count());

        // The first two dimensions are a (0, 2)-sequence: every box of area 2^-10 with dyadic sides holds exactly one point.
        for (var first = 0; first <= Bits; first++)
            Assert.Equal(Count, Enumerable.Range(0, Count).Select(i => (Shifted(points.Word(i, 0), first), Shifted(points.Word(i, 1), Bits - first))).Distinct().Count());
    }

    [Fact]
    public void Scrambling_depends_on_seed_and_stream_and_is_even_on_average()
    {
        uint Word(ulong seed, int stream) => SobolPoints.Scrambled(3, seed, stream).Word(5, 2);
        Assert.Equal(4, new[] { Word(1, 0), Word(1, 1), Word(2, 0), Word(3, 0) }.Distinct().Count());
        Assert.Equal(Word(1, 0), Word(1, 0));
        Assert.Equal(0.5, Enumerable.Range(0, 2000).Average(s => Philox4x32.Uniform32(Word((ulong)s, 7))), 4 / Math.Sqrt(12 * 2000.0));
    }

    [Fact]
    public void Scrambled_points_integrate_a_smooth_product_far_better_than_random_ones()
    {
        static double Product(Func<int, int, double> u)
        {
            double sum = 0;
            for (var i = 0; i < 1 << 14; i++)
            {
                double product = 1;
                for (var d = 0; d < 6; d++) product *= 1 + ((u(i, d) - 0.5) / (d + 1));
                sum += product;
            }

            return sum / (1 << 14);
        }

        var sobol = SobolPoints.Scrambled(6, 4);
        Assert.Equal(1, Product((i, d) => Philox4x32.Uniform32(sobol.Word(i, d))), 2e-5);
        Assert.Equal(1, Product(static (i, d) => Philox4x32.Uniform(4, i, d)), 0.015);
    }

    [Theory]
    [CheckRows("uncertainty", "ishigami")]
    public void Ishigami(CheckRow row)
    {
        double a = row.Si("a"), b = row.Si("b");
        var inputs = Enumerable.Repeat(Spread.Uniform(-Math.PI, Math.PI), 3).ToArray();
        var result = SobolIndices.Of(inputs, x => Math.Sin(x[0]) + (a * Math.Sin(x[1]) * Math.Sin(x[1])) + (b * x[2] * x[2] * x[2] * x[2] * Math.Sin(x[0])), 1 << 12, 5);
        double Expected(string name) => double.Parse(row.ExpectedText(name), System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(Expected("mean"), result.Mean, 2e-3 * Expected("mean"));
        Assert.Equal(Expected("V"), result.Variance, 2e-3 * Expected("V"));
        for (var i = 0; i < 3; i++)
        {
            Near(Expected("S" + (i + 1)), result.Inputs[i].First, result.Inputs[i].FirstError, 0.005);
            Near(Expected("T" + (i + 1)), result.Inputs[i].Total, result.Inputs[i].TotalError, 0.005);
        }

        Assert.Equal(Expected("S13"), result.Inputs[2].Total - result.Inputs[2].First, 0.005);
        Assert.Equal(8L * (1 << 12) * 5, result.Evaluations);
    }

    [Theory]
    [CheckRows("uncertainty", "g-function")]
    public void G_function(CheckRow row)
    {
        var a = row.SiList("a");
        double Of(ReadOnlySpan<double> x)
        {
            double product = 1;
            for (var i = 0; i < a.Length; i++) product *= (Math.Abs((4 * x[i]) - 2) + a[i]) / (1 + a[i]);
            return product;
        }

        foreach (var points in new[] { PointSet.ScrambledSobol, PointSet.Random })
        {
            var result = SobolIndices.Of(Enumerable.Repeat(Spread.Uniform(0, 1), a.Length), Of, 1 << 12, 11, points);
            var allowed = points == PointSet.Random ? 0.04 : 0.006;
            double Expected(string name) => double.Parse(row.ExpectedText(name), System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(Expected("V"), result.Variance, 10 * allowed * Expected("V") / 2);
            for (var i = 0; i < 5; i++)
            {
                Near(Expected("S" + (i + 1)), result.Inputs[i].First, result.Inputs[i].FirstError, allowed);
                Near(Expected("T" + (i + 1)), result.Inputs[i].Total, result.Inputs[i].TotalError, allowed);
            }
        }
    }

    [Fact]
    public void A_number_that_does_not_vary_and_misuse_are_refused()
    {
        Assert.Throws<SolverException>(() => SobolIndices.Of([Spread.Uniform(0, 1)], static _ => 3, 64, 1));
        Assert.Throws<ArgumentException>(() => SobolIndices.Of([Spread.Uniform(0, 1)], static x => x[0], 100, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SobolIndices.Of(Enumerable.Repeat(Spread.Uniform(0, 1), 51), static x => x[0], 64, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SobolPoints.Plain(101));
        Assert.Throws<ArgumentOutOfRangeException>(() => SobolPoints.Plain(1).Word(1L << 32, 0));
        Assert.Equal(1u, SobolPoints.Plain(1).Word((1L << 32) - 1, 0));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => SobolIndices.Of([Spread.Uniform(0, 1)], static x => x[0], 64, 1, cancellation: stop.Token));
    }

    private static uint Shifted(uint word, int bits) => bits == 0 ? 0 : word >> (32 - bits);

    /// <summary>Within six of its own errors (seven degrees of freedom) and within a fixed distance that a wrong estimator would miss.</summary>
    private static void Near(double expected, double actual, double error, double allowed)
    {
        Assert.True(Math.Abs(actual - expected) <= Math.Max(6 * error, 2e-4), FormattableString.Invariant($"{actual} for {expected}, error {error}"));
        Assert.Equal(expected, actual, allowed);
    }
}
