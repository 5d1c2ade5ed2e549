using System;
using System.Linq;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Arithmetic of scatter, defaults and correlation.</summary>
public class ScatterTests
{
    [Theory]
    [CheckRows("uncertainty", "combined-cov")]
    public void Combined_coefficient(CheckRow row) => row.Matches(("COV_total", ScatterArithmetic.Combine(row.Si("COV_w"), row.Si("COV_e"), row.Si("COV_t"), row.Si("Gamma"))));

    [Theory]
    [CheckRows("uncertainty", "minimum-strength")]
    public void Minimum_over_mean(CheckRow row) => row.Matches(("MBS_over_mean", ScatterArithmetic.MinimumOverMean(row.Si("cov"))));

    [Theory]
    [CheckRows("uncertainty", "retired-strength")]
    public void Loss_of_mean(CheckRow row) => row.Matches(("loss", ScatterArithmetic.LossOfMean(row.Si("mean_new"), row.Si("mean_retired"))));

    [Theory]
    [CheckRows("uncertainty", "log-spread")]
    public void Logarithmic_spread(CheckRow row)
    {
        var sigma = ScatterArithmetic.CombineLogarithmic(row.Si("method"), row.Si("soil"), row.Si("sealing"));
        row.Matches(("sigma", sigma), ("factor", ScatterArithmetic.FactorEachWay(sigma, row.Si("z90"))));
    }

    [Fact]
    public void New_strength_lies_three_deviations_above_its_marking()
    {
        var spread = ScatterArithmetic.NewStrength(588.399, 0.05);
        Assert.Equal(588.399, spread.Mean - (3 * spread.StandardDeviation), 9);
    }

    [Fact]
    public void Defaults_lie_in_their_published_range() => Assert.All(DefaultScatter.All, d =>
    {
        Assert.InRange(d.Taken, d.Low, d.High);
        Assert.Contains(d.Source, Mechanics.Provenance.SourceCatalogue.All);
        Assert.Contains(d.Quantity, d.ToString(), StringComparison.Ordinal);
    });

    [Fact]
    public void A_copula_gives_the_correlation_it_was_asked_for()
    {
        const int Count = 40_000;
        var copula = new GaussianCopula(new[,] { { 1, 0.5, 0 }, { 0.5, 1, -0.3 }, { 0, -0.3, 1 } });
        var block = new double[3 * Count];
        for (var d = 0; d < 3; d++) Philox4x32.Uniforms(5, 0, d, 0, block.AsSpan(d * Count, Count));
        NormalKernel.Inverse(block);
        copula.Apply(block, Count, Count);
        double Correlation(int i, int j) => Enumerable.Range(0, Count).Average(s => block[(i * Count) + s] * block[(j * Count) + s]);
        Assert.Equal(1, Correlation(1, 1), 1.5e-2);
        Assert.Equal(0.5, Correlation(0, 1), 2e-2);
        Assert.Equal(-0.3, Correlation(1, 2), 2e-2);
        Assert.Equal(0, Correlation(0, 2), 2e-2);
    }

    [Fact]
    public void Correlations_that_contradict_each_other_are_refused()
    {
        Assert.Contains("contradicts", Assert.Throws<ArgumentException>(() => new GaussianCopula(new[,] { { 1, 0.9, -0.9 }, { 0.9, 1, 0.9 }, { -0.9, 0.9, 1 } })).Message, StringComparison.Ordinal);
        Assert.Contains("symmetric", Assert.Throws<ArgumentException>(() => new GaussianCopula(new[,] { { 1, 0.5 }, { 0.4, 1 } })).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new GaussianCopula(new double[,] { { 1, 0 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new GaussianCopula(new[,] { { 1, 1.5 }, { 1.5, 1 } }));
    }
}
