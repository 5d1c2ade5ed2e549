using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>First-order reliability and sampling about the design point against published cases, quadrature and SciPy.</summary>
public class ReliabilityTests
{
    [Theory]
    [CheckRows("uncertainty", "first-order-normal", "first-order-lognormal")]
    public void Strength_and_load(CheckRow row)
    {
        var lognormal = row.Model == "first-order-lognormal";
        Spread Of(string name) => lognormal ? Spread.Lognormal(row.Si(name + "_mean"), row.Si(name + "_sd") / row.Si(name + "_mean")) : Spread.Normal(row.Si(name + "_mean"), row.Si(name + "_sd"));
        var result = FirstOrderReliability.Of(new LimitState("strength less load", [Of("R"), Of("S")], static x => x[0] - x[1]));
        if (lognormal) row.Matches(("beta", result.Beta), ("Pf", result.Probability));
        else row.Matches(("beta", result.Beta), ("Pf", result.Probability), ("x_star", result.DesignPoint[0]), ("alpha_R_abs", -result.Directions[0]), ("alpha_S_abs", result.Directions[1]));
    }

    [Theory]
    [CheckRows("uncertainty", "first-order-cubic")]
    public void Cubic_limit_on_which_the_plain_step_may_cycle(CheckRow row)
    {
        var result = FirstOrderReliability.Of(Cubic(row));
        row.Matches(("beta", result.Beta), ("x1_star", result.DesignPoint[0]), ("x2_star", result.DesignPoint[1]), ("Pf_FORM", result.Probability));
    }

    [Theory]
    [CheckRows("uncertainty", "first-order-product")]
    public void Product_limit_whichever_way_it_is_written(CheckRow row)
    {
        Spread[] inputs = [Spread.Normal(row.Si("Y_mean"), row.Si("Y_sd")), Spread.Normal(row.Si("Z_mean"), row.Si("Z_sd")), Spread.Normal(row.Si("M_mean"), row.Si("M_sd"))];
        foreach (var form in new LimitFunction[] { static x => (x[0] * x[1]) - x[2], static x => x[0] - (x[2] / x[1]), static x => Math.Log(x[0] * x[1] / x[2]) })
        {
            var result = FirstOrderReliability.Of(new LimitState("product", inputs, form));
            row.Matches(("beta", result.Beta), ("Y_star", result.DesignPoint[0]), ("Z_star", result.DesignPoint[1]), ("M_star", result.DesignPoint[2]));
        }
    }

    [Theory]
    [CheckRows("uncertainty", "first-order-line")]
    public void Line_taken_up_at_speed(CheckRow row)
    {
        var result = FirstOrderReliability.Of(Line(row));
        row.Matches(("beta", result.Beta), ("R_star", result.DesignPoint[0]), ("W_star", result.DesignPoint[1]), ("P_star", result.DesignPoint[2]), ("v_star", result.DesignPoint[3]), ("Pf_FORM", result.Probability));
    }

    [Theory]
    [CheckRows("uncertainty", "failure-probability")]
    [CheckRows("uncertainty-scipy", "failure-probability")]
    public void Sampling_about_the_design_point_meets_the_quadrature(CheckRow row)
    {
        var limit = row.Has("k") ? Line(row) : Cubic(row);
        var check = ReliabilityCheck.Of(limit, 200_000, 20261128);
        var expected = double.Parse(row.ExpectedText("Pf"), System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(check.Sampled.Estimate, expected - (4 * check.Sampled.StandardError), expected + (4 * check.Sampled.StandardError));
        Assert.True(check.Sampled.CoefficientOfVariation < 0.01);
        Assert.Equal(-NormalKernel.Inverse(expected), check.Sampled.GeneralisedBeta!.Value, 0.02);
        Assert.Equal(row.Has("k"), check.Agrees);
    }

    [Theory]
    [CheckRows("uncertainty-scipy", "first-order")]
    public void Design_points_as_SciPy_finds_them(CheckRow row)
    {
        Spread[] inputs = [Spread.Lognormal(row.Si("R_mean"), row.Si("R_cov")), Spread.Gumbel(row.Si("S_mean"), row.Si("S_sd")), Spread.Uniform(row.Si("w_min"), row.Si("w_max"))];
        var rho = row.Si("rho");
        var copula = rho == 0 ? null : new GaussianCopula(new[,] { { 1, rho, 0 }, { rho, 1, 0 }, { 0, 0, 1.0 } });
        var result = FirstOrderReliability.Of(new LimitState("strength, wear and the largest load", inputs, static x => (x[0] * x[2]) - x[1], copula));
        row.Matches(("beta", result.Beta), ("R_star", result.DesignPoint[0]), ("S_star", result.DesignPoint[1]), ("w_star", result.DesignPoint[2]));
    }

    [Theory]
    [InlineData(4.2)]
    [InlineData(6.5)]
    public void A_flat_limit_is_exact_however_rare(double beta)
    {
        var check = ReliabilityCheck.Of(new LimitState("plane", [Spread.Normal(0, 1), Spread.Normal(0, 1)], x => beta - ((0.6 * x[0]) + (0.8 * x[1]))), 50_000, 3);
        Assert.Equal(beta, check.FirstOrder.Beta, 9);
        Assert.Equal(1, check.Sampled.Estimate / StandardNormal.Probability(-beta), 0.04);
        Assert.True(check.Agrees);
    }

    [Fact]
    public void Where_it_fails_at_the_medians_beta_is_negative_and_the_other_side_is_sampled()
    {
        var check = ReliabilityCheck.Of(new LimitState("plane", [Spread.Normal(0, 1), Spread.Normal(0, 1)], static x => x[0] - 3), 50_000, 3);
        Assert.Equal(-3, check.FirstOrder.Beta, 9);
        Assert.Equal(StandardNormal.Probability(3), check.FirstOrder.Probability, 12);
        Assert.Equal(StandardNormal.Probability(-3), 1 - check.Sampled.Estimate, 4e-5);
        Assert.Contains("all but", check.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(9, "all but less than 1 in 1e12")]
    [InlineData(-9, "less than 1 in 1e12")]
    [InlineData(40, "all but less than 1 in 1e12")]
    [InlineData(-40, "less than 1 in 1e12")]
    public void Where_doubles_end_the_words_do_not(double at, string words)
    {
        // x is at least "at" deviations below where it fails, or above: Phi(-beta) is 0 or 1 in doubles, or so small that it says nothing.
        var check = ReliabilityCheck.Of(new LimitState("plane", [Spread.Normal(0, 1)], x => x[0] - at), 1000, 3);
        Assert.EndsWith("first order " + words, check.FirstOrder.ToString(), StringComparison.Ordinal);
        Assert.Equal(words, check.Sampled.ToString());
        Assert.Equal(at < 0, check.FirstOrder.Probability < 0.5);
    }

    [Fact]
    public void A_sample_that_never_crossed_the_limit_says_on_which_side_it_was()
    {
        Assert.Equal("not once in 500", new WeightedProbability(0, 0, 0, 500).ToString());
        Assert.Equal("every time in 500", new WeightedProbability(1, 0, 0, 500).ToString());
    }

    [Fact]
    public void A_second_branch_that_the_sample_reaches_is_not_cut()
    {
        // Two branches of the same distance at right angles; the one about which is not sampled is rare there and heavy.
        var limit = new LimitState("two branches", [Spread.Normal(0, 1), Spread.Normal(0, 1)], static x => Math.Min(2.5 - x[0], 2.5 - x[1] + 1e-6));
        var sampled = ImportanceSampling.About(FirstOrderReliability.Of(limit), 400_000, 5);
        var one = StandardNormal.Probability(-2.5);
        var expected = one + one - (one * one);
        Assert.InRange(sampled.Estimate, expected - (5 * sampled.StandardError), expected + (5 * sampled.StandardError));
    }

    /// <summary>Two planes at right angles, both to be passed: the nearest point is their edge (2, 1.5), distance 2.5; the probability is that of both, Phi(-2) Phi(-1.5).</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void The_nearest_point_on_an_edge_is_found(int side)
    {
        var limit = new LimitState("edge", [Spread.Normal(0, 1), Spread.Normal(0, 1), Spread.Normal(0, 1)], x => side * Math.Max(2 - x[0], 1.5 - x[1]));
        var check = ReliabilityCheck.Of(limit, 100_000, 7);
        Assert.Equal(side * 2.5, check.FirstOrder.Beta, 1e-5);
        Assert.Equal(2, check.FirstOrder.StandardPoint[0], 1e-5);
        Assert.Equal(1.5, check.FirstOrder.StandardPoint[1], 1e-5);
        Assert.Equal(0, check.FirstOrder.StandardPoint[2], 1e-5);
        Assert.Equal(side * 0.8, check.FirstOrder.Directions[0], 1e-5);
        var both = StandardNormal.Probability(-2) * StandardNormal.Probability(-1.5);
        Assert.Equal(both, side > 0 ? check.Sampled.Estimate : 1 - check.Sampled.Estimate, 4 * check.Sampled.StandardError);
    }

    /// <summary>A paraboloid and a plane meet at (1.2, 1.6), where neither alone is nearest.</summary>
    [Fact]
    public void The_edge_of_a_curved_branch_is_found()
    {
        var limit = new LimitState("curved edge", [Spread.Normal(0, 1), Spread.Normal(0, 1)], static x => Math.Max(1.6 - x[1], 1.84 - x[0] - (0.25 * x[1] * x[1])));
        var result = FirstOrderReliability.Of(limit);
        Assert.Equal(2, result.Beta, 1e-4);
        Assert.Equal(1.2, result.StandardPoint[0], 1e-4);
        Assert.Equal(1.6, result.StandardPoint[1], 1e-4);
    }

    [Fact]
    public void A_limit_that_no_input_moves_is_refused_by_the_solver()
    {
        Assert.Contains("does not depend on its inputs", Assert.Throws<SolverException>(() => FirstOrderReliability.Of(new LimitState("flat", [Spread.Normal(0, 1)], static _ => 1))).Message, StringComparison.Ordinal);
        Assert.Throws<SolverException>(() => FirstOrderReliability.Of(new LimitState("never", [Spread.Normal(0, 1)], static x => 2 + Math.Tanh(x[0]))));
        Assert.Equal("root gives no number for inputs that its spreads reach.", Assert.Throws<SolverException>(() => FirstOrderReliability.Of(new LimitState("root", [Spread.Normal(0, 1)], static x => Math.Sqrt(x[0] - 3)))).Message);
    }

    [Fact]
    public void Misuse_is_refused()
    {
        Assert.Throws<ArgumentNullException>(() => FirstOrderReliability.Of(null!));
        Assert.Throws<ArgumentException>(() => new LimitState("x", [null!], static _ => 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LimitState("x", [], static _ => 1));
        Assert.Throws<ArgumentException>(() => new LimitState("x", [Spread.Fixed(1)], static _ => 1, new GaussianCopula(new[,] { { 1, 0.5 }, { 0.5, 1 } })));
    }

    [Property(MaxTest = 50)]
    public bool Two_lognormals_are_exact(byte strength, byte load, byte scatter)
    {
        double r = 200 + strength, s = 40 + (load / 2.0), v = 0.05 + (scatter / 1000.0);
        var result = FirstOrderReliability.Of(new LimitState("lognormals", [Spread.Lognormal(r, v), Spread.Lognormal(s, 0.2)], static x => x[0] - x[1]));
        double a = Math.Log(1 + (v * v)), b = Math.Log(1.04), beta = (Math.Log(r) - (a / 2) - Math.Log(s) + (b / 2)) / Math.Sqrt(a + b);
        return Math.Abs(result.Beta - beta) <= 1e-7 * Math.Max(1, Math.Abs(beta)) && Math.Abs(result.Directions.Sum(c => c * c) - 1) < 1e-12;
    }

    private static LimitState Cubic(CheckRow row) => new("cubic", [Spread.Normal(row.Si("x1_mean"), row.Si("x1_sd")), Spread.Normal(row.Si("x2_mean"), row.Si("x2_sd"))], static x => (x[0] * x[0] * x[0]) + (x[1] * x[1] * x[1]) - 18);

    private static LimitState Line(CheckRow row)
    {
        double k = row.Si("k"), m = row.Si("m");
        return new LimitState(
            "line",
            [Spread.Lognormal(row.Si("R_mean"), row.Si("R_cov")), Spread.Normal(row.Si("W_mean"), row.Si("W_sd")), Spread.Lognormal(row.Si("P_mean"), row.Si("P_sd") / row.Si("P_mean")), Spread.Lognormal(row.Si("v_mean"), row.Si("v_sd") / row.Si("v_mean"))],
            x => (x[0] * x[1]) - (x[2] + Math.Sqrt((x[2] * x[2]) + (k * m * x[3] * x[3]))));
    }
}
