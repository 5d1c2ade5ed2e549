using System;
using MathNet.Numerics;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>The normal distribution against SciPy and MathNet.</summary>
public class NormalTests
{
    [Theory]
    [CheckRows("uncertainty-scipy", "normal-cdf")]
    public void Distribution_function(CheckRow row) => row.Matches(("P", StandardNormal.Probability(row.Si("x"))));

    [Theory]
    [CheckRows("uncertainty-scipy", "normal-inverse")]
    public void Inverse(CheckRow row) => row.Matches(("x", StandardNormal.Quantile(row.Si("P"))));

    [Fact]
    public void Agrees_with_MathNet()
    {
        for (var x = -7.95; x < 8; x += 0.1)
            Assert.Equal(1, NormalKernel.Cdf(x) / (0.5 * SpecialFunctions.Erfc(-x / Math.Sqrt(2))), 13);
    }

    [Fact]
    public void Inverse_undoes_the_distribution_function_and_both_rise()
    {
        double before = 0, inverseBefore = double.NegativeInfinity;
        for (var x = -8.0; x <= 5.0; x += 0.013)
        {
            var p = NormalKernel.Cdf(x);
            Assert.True(p > before, "not rising at " + x);
            var back = NormalKernel.Inverse(p);
            Assert.True(back > inverseBefore, "inverse not rising at " + x);
            Assert.True(Math.Abs(back - x) <= 2e-15 * (1 + Math.Abs(x)) / Math.Min(1, NormalKernel.Density(x) / Math.Max(p, 1e-300)) + (1.2e-16 / NormalKernel.Density(x) * (x > 0 ? 1 : 0)) + 1e-14, "at " + x + ": " + back);
            (before, inverseBefore) = (p, back);
        }
    }

    [Fact]
    public void Ends_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardNormal.Quantile(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardNormal.Quantile(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardNormal.Probability(double.NaN));
    }
}
