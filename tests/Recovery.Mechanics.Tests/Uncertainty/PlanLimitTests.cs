using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Tests.Planning;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Every limit of a sampled plan by first order, beside the plain sample and the one about the design point.</summary>
public class PlanLimitTests
{
    private const double Beyond = 0.15865525393145707;

    /// <summary>One lognormal input whose median lies one deviation inside the limit: index 1 and probability Phi(-1) = 0.158655 for any limit that turns on it one way.</summary>
    [Theory]
    [InlineData("pull", "gentle", "demand.method")]
    [InlineData("will-not-move-it", "gentle", "tower.wheel-model")]
    [InlineData("undecided", "gentle", "tower.wheel-model")]
    [InlineData("may-bog", "gentle", "tower.wheel-model")]
    [InlineData("frees-itself", "rolling", "stuck.cone-index")]
    [InlineData("nose-light", "gentle", "tower.wheel-model")]
    [InlineData("nose-lift", "gentle", "tower.wheel-model")]
    [InlineData("runs-away", "downhill", "stuck.cone-index")]
    [InlineData("may-run-away", "downhill", "tower.cone-index")]
    [InlineData("hitch-rating", "pull.hitch-rating-exceeded", "tower.wheel-model")]
    [InlineData("hitch-vertical", "pitched", "tower.wheel-model")]
    [InlineData("sideways", "plan.line-sideways", "tower.wheel-model")]
    [InlineData("hitch-rating", "rated tackle", "tower.wheel-model")]
    [InlineData("hitch-rating:second tractor", "rated team", "tower.wheel-model")]
    [InlineData("front-rating:tractor", "rated team", "tower.wheel-model")]
    [InlineData("tackle-short", "tackle", "tower.wheel-model")]
    [InlineData("tackle-anchor", "plan.tackle-anchor-gives", "tower.wheel-model")]
    [InlineData("tackle-blocks", "plan.tackle-blocks-exceeded", "tower.wheel-model")]
    [InlineData("may-bog", "team", "tower.cone-index")]
    [InlineData("drawbar-working", "gentle", "tower.wheel-model")]
    [InlineData("drawbar-yield", "gentle", "tower.wheel-model")]
    [InlineData("casualty-working", "gentle", "tower.wheel-model")]
    [InlineData("casualty-yield", "gentle", "tower.wheel-model")]
    [InlineData("rated:axle strap", "demo", "tower.wheel-model")]
    [InlineData("factors:bridle", "demo", "tower.wheel-model")]
    [InlineData("floor:shackle", "demo", "tower.wheel-model")]
    [InlineData("second-pull:bridle", "demo", "tower.wheel-model")]
    [InlineData("careless:bridle", "demo", "tower.wheel-model")]
    [InlineData("breaks:bridle", "demo", "rig.wear:bridle")]
    public void One_deviation_away_is_one_deviation_away(string key, string story, string input)
    {
        var plan = Plan(story);
        var at = Crossing(plan, key, input, out var rises);
        const double Zeta = 0.1;
        var sampler = PlanSampler.For(plan).With(input, Spread.LognormalAround(at * Math.Exp(rises ? Zeta : -Zeta), Zeta));
        var odds = PlanLimitOdds.Of(PlanLimits.Of(sampler, key), 20_000, 17);
        Assert.Equal(1, odds.FirstOrder!.Beta, 1e-5);
        Assert.Equal(Beyond, odds.FirstOrder.Probability, 1e-5);
        Within(odds.Sampled!.Value, Beyond);
        Assert.InRange(odds.AboutDesignPoint!.Value.Estimate, Beyond - (4 * odds.AboutDesignPoint.Value.StandardError), Beyond + (4 * odds.AboutDesignPoint.Value.StandardError));
        Assert.True(odds.Agrees);
        Assert.False(odds.HasOtherWays);
        Assert.Contains("first order 1 in 10 to even (beta 1)", odds.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Method of the demand and wheel model, both lognormal, make a limit that is flat in their logarithms: beta = ln(P/R)/sqrt(0.4^2 + 0.2^2).</summary>
    [Fact]
    public void A_flat_limit_in_two_inputs_is_exact()
    {
        var plan = ReferencePlans.Gentle();
        plan = plan.With(plan.Tower with { EnginePower = null });
        var sampler = PlanSampler.For(plan).With("demand.method", Spread.LognormalAround(1, 0.4)).With("tower.wheel-model", Spread.LognormalAround(0.8, 0.2));
        var odds = PlanLimitOdds.Of(PlanLimits.Of(sampler, "pull"), 50_000, 5);
        var o = PlanSamplerTests.At(sampler, [1, 0.8]);
        Assert.Equal(Math.Log(o.Sustained / o.Demand) / Math.Sqrt(0.2), odds.FirstOrder!.Beta, 1e-6);
        Within(odds.Sampled!.Value, odds.FirstOrder.Probability);
        Assert.Equal(odds.FirstOrder.Probability, odds.AboutDesignPoint!.Value.Estimate, 4 * odds.AboutDesignPoint.Value.StandardError);
    }

    [Theory]
    [InlineData("demo")]
    [InlineData("gentle")]
    [InlineData("rolling")]
    [InlineData("downhill")]
    [InlineData("plan.line-sideways")]
    [InlineData("rig.attachment-yield")]
    [InlineData("pull.nose-light")]
    [InlineData("plan.tackle-anchor-gives")]
    [InlineData("team")]
    [InlineData("rated team")]
    public void Every_limit_of_a_plan_as_it_scatters_stands_beside_its_samples(string story)
    {
        var sampler = PlanSampler.WithDefaults(Plan(story));
        foreach (var limit in PlanLimits.For(sampler))
        {
            var odds = PlanLimitOdds.Of(limit, 5000, 23);
            Assert.StartsWith(limit.Event, odds.ToString(), StringComparison.Ordinal);
            if (limit.State is null)
            {
                Assert.Contains("no odds, ", odds.ToString(), StringComparison.Ordinal);
                Assert.NotEmpty(limit.WhyNot);
                Assert.True(odds.Sampled is null && odds.FirstOrder is null && odds.AboutDesignPoint is null);
                continue;
            }

            Assert.Empty(limit.WhyNot);
            var plain = odds.Sampled!.Value;
            Assert.Equal(5000, plain.Count);
            if (plain.Hits is > 0 and < 5000) Assert.NotNull(odds.AboutDesignPoint);
            if (odds.AboutDesignPoint is not { } about)
            {
                Assert.Contains("nothing that scatters was found to lead", odds.ToString(), StringComparison.Ordinal);
                continue;
            }

            // The sample about the design point and the plain one are of one probability.
            Assert.InRange(about.Estimate, plain.Low - (5 * about.StandardError) - (2 * plain.StandardError), plain.High + (5 * about.StandardError) + (2 * plain.StandardError));
            if (odds.FirstOrder is { } first && about.CoefficientOfVariation < 0.1)
            {
                // First order: within a factor of three on the rarer side where a limit of several inputs is curved.
                double one = Math.Min(first.Probability, 1 - first.Probability), other = Math.Min(about.Estimate, 1 - about.Estimate);
                Assert.True(one <= 3 * other && other <= 3 * one, limit.Key + ": " + odds);
            }
        }
    }

    /// <summary>On the demo plan the pull that is enough begins where wheels and nose limit alike: an edge.</summary>
    [Fact]
    public void The_pull_of_the_demo_plan_settles_on_its_edge()
    {
        var odds = PlanLimitOdds.Of(PlanLimits.Of(PlanSampler.WithDefaults(PolderHarvester.Create()), "pull"), 20_000, 3);
        Assert.NotNull(odds.FirstOrder);
        Assert.InRange(odds.FirstOrder.Beta, -2.5, -2);
        Assert.True(odds.AboutDesignPoint!.Value.CoefficientOfVariation < 0.05);
        Assert.False(odds.HasOtherWays);

        // One digit after the point: a second would tell the probability finer than its inputs are known.
        Assert.Matches(@"\(beta -2(\.\d)?\)", odds.ToString());
    }

    [Fact]
    public void The_plain_sample_is_that_of_the_sampled_plan()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create()).With("rig.wear:axle strap", Spread.LognormalAround(0.5, 0.3));
        var run = sampler.Run(4000, 9);
        long Hits(string key) => PlanLimitOdds.Of(PlanLimits.Of(sampler, key), 4000, 9).Sampled!.Value.Hits;
        Assert.Equal(run.NotEnough.Hits, Hits("pull"));
        var shackle = run.Parts.Single(p => p.Name == "shackle");
        Assert.Equal(shackle.OverRated.Hits, Hits("rated:shackle"));
        var strap = run.Parts.Single(p => p.Name == "axle strap");
        Assert.Equal(strap.BelowFloor.Hits, Hits("floor:axle strap"));
        Assert.Equal(strap.Breaks.Hits, Hits("breaks:axle strap"));
        Assert.True(strap.Breaks.Hits > 0);
        var rolling = PlanSampler.WithDefaults(Plan("rolling"));
        Assert.Equal(rolling.Run(2000, 9).FreesItself!.Value.Hits, PlanLimitOdds.Of(PlanLimits.Of(rolling, "frees-itself"), 2000, 9).Sampled!.Value.Hits);
    }

    /// <summary>What the typed plan objects to of a team or a tackle is a limit of the sampled one: passed where the finding stands, a little to either side of what the number is.</summary>
    [Fact]
    public void A_team_and_a_tackle_pass_their_limits_where_the_typed_plan_objects()
    {
        var gentle = ReferencePlans.Gentle();
        RecoveryPlan Team(double hitch, double front) => gentle.WithAhead([new TeamMember(ArrangementTests.Second() with { HitchRating = KN(hitch) })], new TeamMember(gentle.Tower) { FrontRating = KN(front) });
        double Weight(RecoveryPlan plan) => plan.Compiled.Stuck.Flat.Weight;
        var ahead = gentle.WithAhead([new TeamMember(ArrangementTests.Second())]).Assess().Team!.LineForcesImposable[0].Newtons / 1000;
        foreach (var (beyond, past) in new[] { (0.999, true), (1.001, false) })
        {
            Same(Team(beyond * ahead, 500), "hitch-rating:second tractor", "pull.hitch-rating-exceeded", past);
            Same(Team(500, beyond * ahead), "front-rating:" + gentle.Tower.Machine.Name, "pull.team-front-point-exceeded", past);
        }

        var seen = new HashSet<bool>();
        foreach (var share in new[] { 0.2, 0.4, 0.6, 0.8, 1 })
        {
            var plan = gentle.With(gentle.Tower with { Soil = Soil.FromConeIndex(gentle.Tower.Soil.ConeIndex * share, gentle.Tower.Soil.RemouldingIndex) });
            var through = plan.WithTackle(new LineTackle(2));
            var shortOf = through.Assess().Findings.Any(f => f.Id == "plan.tackle-short");
            seen.Add(shortOf);
            Same(through, "tackle-short", "plan.tackle-short", shortOf);
            var o = PlanSamplerTests.At(PlanSampler.For(plan), []);
            Assert.Equal((o.Sustained - (1.1 * o.Demand)) / Weight(plan), At(plan, "undecided"), 1e-12);
        }

        Assert.Equal(2, seen.Count);

        static double At(RecoveryPlan plan, string key) => PlanLimits.Of(PlanSampler.For(plan).With("tower.wheel-model", Spread.LognormalAround(1, 0.1)), key).State!.Of([1]);
        static void Same(RecoveryPlan plan, string key, string id, bool past)
        {
            Assert.Equal(past, plan.Assess().Findings.Any(f => f.Id == id));
            Assert.Equal(past, At(plan, key) < 0);
        }
    }

    [Fact]
    public void An_input_that_makes_the_plan_anew_moves_its_limits_alike()
    {
        var sampler = PlanSampler.WithDefaults(ReferencePlans.Gentle()).With("stuck.load:body", Spread.LognormalAround(1, 0.2)).With("rig.working-load:drawbar", Spread.LognormalAround(0.5, 0.2));
        var odds = PlanLimitOdds.Of(PlanLimits.Of(sampler, "pull"), 500, 9);
        Assert.Equal(sampler.RunPart(0, 500, 9).NotEnough.Hits, odds.Sampled!.Value.Hits);
        Assert.True(odds.FirstOrder!.Directions[sampler.Inputs.ToList().FindIndex(i => i.Input.Key == "stuck.load:body")] > 0.1);

        // A stronger drawbar leads away from its limit.
        var drawbar = PlanLimitOdds.Of(PlanLimits.Of(sampler, "drawbar-working"), 500, 9);
        Assert.True(drawbar.FirstOrder!.Directions[sampler.Inputs.ToList().FindIndex(i => i.Input.Key == "rig.working-load:drawbar")] < -0.1);
    }

    [Fact]
    public void A_limit_that_the_plan_does_not_have_says_why()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create());
        var limits = PlanLimits.For(sampler);
        Assert.Equal(limits.Count, limits.Select(l => l.Key).Distinct().Count());
        string Say(string key) => PlanLimitOdds.Of(limits.Single(l => l.Key == key), 100, 1).ToString();
        Assert.Equal("the machine drives itself out: no odds, no wheel model covers its drive: none of its wheels is driven, or a driven one is buried", Say("frees-itself"));
        Assert.Equal("the puller can impose more than its hitch is rated for: no odds, no rating of the hitch is declared", Say("hitch-rating"));
        Assert.Equal("the freed machine rolls away: no odds, the ground does not fall along the pull, so it cannot", Say("runs-away"));
        Assert.Equal("the peak is over the yield of the drawbar: no odds, its number is not known, or the line is not", Say("drawbar-yield"));
        Assert.Contains("no odds", Say("sideways"), StringComparison.Ordinal);
    }

    /// <summary>Level ground within a tenth: half the samples fall along the pull. The index is the slope at which the typed plan begins to roll away, in deviations.</summary>
    [Fact]
    public void A_limit_that_only_some_samples_have_has_odds_and_is_not_said_to_be_impossible()
    {
        var plan = ReferencePlans.Gentle();
        Assert.Equal(0, plan.Stuck.Grade.Radians);
        bool Rolls(double slope) => plan.With(plan.Stuck with { Grade = Grade.FromAngle(Angle.FromRadians(slope)) }).Assess().Findings.Any(f => f.Id == "plan.runs-away");
        double holds = 0, rolls = -0.3;
        Assert.True(Rolls(rolls) && !Rolls(holds));
        for (var i = 0; i < 50; i++)
        {
            var half = 0.5 * (holds + rolls);
            if (Rolls(half)) rolls = half;
            else holds = half;
        }

        const double Deviation = 0.1;
        var odds = PlanLimitOdds.Of(PlanLimits.Of(PlanSampler.For(plan).WithShift("stuck.grade", Spread.Normal(0, Deviation)), "runs-away"), 4000, 3);
        Assert.Equal(-rolls / Deviation, odds.FirstOrder!.Beta, 1e-5);
        Within(odds.Sampled!.Value, odds.FirstOrder.Probability);
        Assert.True(odds.Agrees && !odds.HasOtherWays);

        // A straight line within a hand: only what runs off to the side can pull the puller over.
        Assert.NotNull(PlanLimits.Of(PlanSampler.For(plan).WithShift("line.yaw", Spread.Normal(0, 0.02)), "sideways").State);
        Assert.Null(PlanLimits.Of(PlanSampler.For(plan).WithShift("stuck.grade", Spread.Normal(0, 0.02)), "sideways").State);
    }

    /// <summary>A line that rises so steeply that it lifts the puller leaves nothing to hold it upright: its share is infinite, and the event certain and not impossible.</summary>
    [Fact]
    public void A_puller_that_the_line_lifts_is_pulled_over()
    {
        var plan = ReferencePlans.Gentle();
        plan = plan.With(plan.Site with { LineYaw = Angle.FromDegrees(45), LinePitch = Angle.FromDegrees(-30) }).With(plan.Tower.WithDownhillInReach(Angle.FromDegrees(30)));
        var sampler = PlanSampler.For(plan).With("tower.wheel-model", Spread.LognormalAround(2, 0.01));
        Assert.True(double.IsPositiveInfinity(PlanSamplerTests.At(sampler, [2]).Sideways));
        Assert.Contains(plan.Assess().Findings, f => f.Id == "plan.line-sideways" && f.Severity == Severity.Stop);
        var odds = PlanLimitOdds.Of(PlanLimits.Of(sampler, "sideways"), 1000, 3);
        Assert.Equal(1000, odds.Sampled!.Value.Hits);
        Assert.Equal("the line pulls the puller over sideways: every time in 1,000 (sampling error: above 99 in 100); nothing that scatters was found to lead away from it", odds.ToString());
    }

    /// <summary>On 3 per cent a wheel holds back at least 4 per cent of its load on any ground.</summary>
    [Fact]
    public void A_limit_to_which_nothing_leads_says_so()
    {
        var plan = ReferencePlans.Gentle();
        var sampler = PlanSampler.WithDefaults(plan.With(plan.Stuck with { Grade = Grade.FromPercent(-3) }));
        var odds = PlanLimitOdds.Of(PlanLimits.Of(sampler, "runs-away"), 1000, 1);
        Assert.Equal(0, odds.Sampled!.Value.Hits);
        Assert.Null(odds.FirstOrder);
        Assert.Null(odds.AboutDesignPoint);
        Assert.False(odds.Agrees || odds.HasOtherWays);
        Assert.Equal("the freed machine rolls away: not once in 1,000 (sampling error: below 1 in 100); nothing that scatters was found to lead to it", odds.ToString());
    }

    /// <summary>The power limits at the median, the wheels only where they grip a good deal less: the limit is flat about the median and the sample shows the way.</summary>
    [Fact]
    public void A_limit_that_is_flat_about_the_medians_is_found_from_the_sample()
    {
        var plan = ReferencePlans.Gentle();
        var at = Crossing(plan.With(plan.Tower with { EnginePower = null }), "pull", "tower.wheel-model", out _);
        var sampler = PlanSampler.For(plan.With(plan.Tower with { EnginePower = Power.FromKilowatts(10) }));
        var o = PlanSamplerTests.At(sampler, []);
        Assert.True(o.Sustained < o.Demand);
        var enough = plan.With(plan.Tower with { EnginePower = Power.FromKilowatts(13 * o.Demand / o.Sustained) });
        var limited = PlanSampler.For(enough).With("tower.wheel-model", Spread.LognormalAround(2 * at, 0.3));
        Assert.Equal(PlanSamplerTests.At(limited, [2 * at]).Sustained, PlanSamplerTests.At(limited, [2.2 * at]).Sustained, 1e-6);
        var odds = PlanLimitOdds.Of(PlanLimits.Of(limited, "pull"), 20_000, 3);
        Assert.Equal(Math.Log(2) / 0.3, odds.FirstOrder!.Beta, 1e-4);
        Assert.True(odds.Agrees);
    }

    [Fact]
    public void Misuse_is_refused()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create());
        Assert.Throws<ArgumentNullException>(() => PlanLimits.For(null!));
        Assert.Throws<ArgumentNullException>(() => PlanLimitOdds.Of(null!, 100, 1));
        Assert.Throws<ArgumentException>(() => PlanLimits.Of(sampler, "colour"));
        Assert.Contains("begin with WithDefaults", Assert.Throws<ArgumentOutOfRangeException>("sampler", () => PlanLimits.For(PlanSampler.For(PolderHarvester.Create()))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("sampler", () => PlanLimits.Of(PlanSampler.For(PolderHarvester.Create()), "hitch-rating"));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlanLimitOdds.Of(PlanLimits.Of(sampler, "pull"), 99, 1));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => PlanLimitOdds.Of(PlanLimits.Of(sampler, "pull"), 100, 1, stop.Token));
    }

    /// <summary>Factor of an input at which a limit is just met, by bisection of its logarithm between a fiftieth and fifty.</summary>
    private static double Crossing(RecoveryPlan plan, string key, string input, out bool rises)
    {
        var state = PlanLimits.Of(PlanSampler.For(plan).With(input, Spread.Uniform(0.01, 100)), key).State!;
        double Margin(double log) => state.Of([Math.Exp(log)]);
        double a = -Math.Log(50), b = Math.Log(50);
        rises = Margin(b) > 0;
        Assert.NotEqual(rises, Margin(a) > 0);
        for (var i = 0; i < 80; i++)
        {
            var half = 0.5 * (a + b);
            if (Margin(half) > 0 == rises) b = half;
            else a = half;
        }

        return Math.Exp(0.5 * (a + b));
    }

    private static void Within(SampledProbability plain, double expected) => Assert.InRange(expected, plain.Estimate - (4 * plain.StandardError), plain.Estimate + (4 * plain.StandardError));

    private static RecoveryPlan Plan(string story)
    {
        var gentle = ReferencePlans.Gentle();
        return story switch
        {
            "demo" => PolderHarvester.Create(),
            "gentle" => gentle,
            "rolling" => gentle.With(new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(600), Frac(0.9)), [M(0.1), M(0.1), M(0.1)], PullDirection.Rearwards).Without("beet")),
            "downhill" => gentle.With(gentle.Stuck with { Grade = Grade.FromPercent(-7) }),
            "pitched" => gentle.With(ReferencePlans.Site() with { LinePitch = Angle.FromDegrees(5) }).With(gentle.Tower with { HitchVerticalRating = KN(20) }),
            "rated tackle" => gentle.With(gentle.Tower with { HitchRating = KN(100) }).WithTackle(new LineTackle(3)),
            "tackle" => gentle.WithTackle(new LineTackle(2)),
            "rated team" => gentle.WithAhead([new TeamMember(ArrangementTests.Second() with { HitchRating = KN(70) })], new TeamMember(gentle.Tower) { FrontRating = KN(60) }),
            "team" => gentle.WithAhead([new TeamMember(ArrangementTests.Second())]),
            _ => PlanStoryTests.Stories[story](),
        };
    }
}
