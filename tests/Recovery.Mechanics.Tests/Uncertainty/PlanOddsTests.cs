using System;
using System.Collections.Concurrent;
using System.Diagnostics;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Measures on common samples, limits of a plan by first order and by sampling, and the next measurement.</summary>
public class PlanOddsTests
{
    private static readonly PlanSampler Demo = PlanSampler.WithDefaults(PolderHarvester.Create());

    [Fact]
    public void A_measure_is_worth_what_both_plans_say_on_the_same_samples()
    {
        Measure[] measures = [RecoveryMeasures.Unload("beet"), RecoveryMeasures.Dig(Angle.FromDegrees(9)), RecoveryMeasures.FreeBelly()];
        var effect = MeasureSamples.Of(Demo, measures, 20_000, 3);
        var edited = measures.Aggregate(Demo.Plan, (p, m) => m.ApplyTo(p));
        var before = Demo.Run(20_000, 3);
        var after = Demo.On(edited).Run(20_000, 3);
        Assert.Equal(before.NotEnough, effect.NotEnoughBefore);
        Assert.Equal(after.NotEnough, effect.NotEnoughAfter);
        Assert.Equal(before.Probability(Verdict.Stop), effect.StopBefore);
        Assert.Equal(after.Probability(Verdict.Stop), effect.StopAfter);
        Assert.Equal(before.NotEnough.Estimate - after.NotEnough.Estimate, effect.Effect, 12);
        Assert.Equal(before.DemandNewtons.Mean - after.DemandNewtons.Mean, effect.DemandSavedNewtons.Mean, 1e-3);
        Assert.True(effect.Effect > 0.1);

        // The pairs are what makes it sharp: without them the errors of both would add.
        var apart = Math.Sqrt(Math.Pow(before.NotEnough.StandardError, 2) + Math.Pow(after.NotEnough.StandardError, 2));
        Assert.True(effect.EffectError < apart);
        Assert.Contains("after", effect.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_measure_that_changes_nothing_has_no_effect_at_all()
    {
        var effect = MeasureSamples.Of(Demo, [RecoveryMeasures.SlowerGear(Speed.FromKilometersPerHour(1))], 1000, 3);
        Assert.Equal(0, effect.Effect);
        Assert.Equal(0, effect.EffectError);
        Assert.Equal(0, effect.DemandSavedNewtons.Maximum);
    }

    [Fact]
    public void First_order_stands_beside_the_sampled_value_for_the_pull()
    {
        var sampler = PlanSampler.WithDefaults(ReferencePlans.Gentle());
        var check = ReliabilityCheck.Of(PlanLimits.Pull(sampler), 20_000, 7);
        var plain = sampler.Run(200_000, 11).NotEnough;
        Assert.InRange(check.Sampled.Estimate, plain.Estimate - (5 * (plain.StandardError + check.Sampled.StandardError)), plain.Estimate + (5 * (plain.StandardError + check.Sampled.StandardError)));
        Assert.True(check.Agrees);
    }

    [Fact]
    public void First_order_stands_beside_the_sampled_value_for_a_part()
    {
        var sampler = Demo.With("rig.wear:axle strap", Spread.LognormalAround(0.75, 0.15));
        var check = ReliabilityCheck.Of(PlanLimits.Part(sampler, "axle strap"), 50_000, 7);
        var plain = sampler.Run(400_000, 11).Parts.Single(p => p.Name == "axle strap").Breaks;
        Assert.InRange(check.Sampled.Estimate, plain.Low - (4 * check.Sampled.StandardError), plain.High + (4 * check.Sampled.StandardError));
        Assert.True(check.Sampled.CoefficientOfVariation < 0.05);
    }

    [Fact]
    public void The_input_with_the_widest_doubt_is_measured_first()
    {
        var sampler = PlanSampler.For(PolderHarvester.Create())
            .With("stuck.cone-index", Spread.LognormalAround(1, 0.05))
            .With("tower.cone-index", Spread.LognormalAround(1, 0.5))
            .With("stuck.seal", Spread.LognormalAround(1, 0.3))
            .With("line.stiffness", Spread.Uniform(0.4, 1));
        var next = NextMeasurement.Rank(sampler, 256, 1);
        Assert.Equal("tower.cone-index", next.Ranked[0].Input.Input.Key);
        Assert.DoesNotContain(next.Ranked, r => r.Input.Input.Key == "stuck.seal");
        Assert.NotNull(next.NotMeasurableOfGear);

        // The stiffness of the line loads the gear and has nothing to do with whether the pull is enough.
        Assert.True(next.Ranked.Single(r => r.Input.Input.Key == "line.stiffness").Gear!.Total > 0.01);
        Assert.Equal(0, next.Ranked.Single(r => r.Input.Input.Key == "line.stiffness").Pull.Total, 1e-12);
        Assert.Equal(1, next.Ranked.Sum(r => r.Pull.First) + next.NotMeasurableOfPull, 0.1);
    }

    [Fact]
    public void Shares_of_two_lognormal_factors_are_those_of_their_logarithms()
    {
        var sampler = PlanSampler.For(PolderHarvester.Create()).With("demand.method", Spread.LognormalAround(1, 0.4)).With("tower.wheel-model", Spread.LognormalAround(1, 0.2));
        var pull = NextMeasurement.Rank(sampler, 1024, 1).Ranked;
        Assert.Equal(0.8, pull.Single(r => r.Input.Input.Key == "demand.method").Pull.First, 0.01);
        Assert.Equal(0.2, pull.Single(r => r.Input.Input.Key == "tower.wheel-model").Pull.Total, 0.01);
    }

    [Fact]
    public void Gear_of_which_nothing_is_known_is_not_left_out_of_the_report()
    {
        var plan = Demo.Plan.With(Demo.Plan.Rig.Replace("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.Unknown(Force.Zero), ReferenceMachines.M(12))));
        Assert.Contains("\nthe gear                  no number: strength or stretch of the line is not known\n", PlanSampler.For(plan).Run(100, 1).ToReport(), StringComparison.Ordinal);
    }

    /// <summary>Wear and new strength alone reach no pull: the doubt about the gear is still ranked, by the variances of their logarithms, 0.04 to 0.01.</summary>
    [Fact]
    public void Doubt_about_the_gear_alone_is_ranked()
    {
        var weakest = Demo.Plan.Assess().Rig!.Weakest!.Part.Name;
        var next = NextMeasurement.Rank(PlanSampler.For(Demo.Plan).With("rig.strength:" + weakest, Spread.LognormalAround(1, 0.1)).With("rig.wear:" + weakest, Spread.LognormalAround(1, 0.2)), 256, 1);
        Assert.Equal("rig.wear:" + weakest, next.Ranked[0].Input.Input.Key);
        Assert.Equal(0.8, next.Ranked[0].Gear!.First, 0.01);
        Assert.Equal(0.2, next.Ranked[1].Gear!.Total, 0.01);
        Assert.Equal(0, next.Ranked[0].Pull.Total + next.NotMeasurableOfPull);
        Assert.Contains("next to nothing of the doubt about the pull, about 8 tenths about the gear", next.ToString(), StringComparison.Ordinal);

        // The careless load of a plan that declares its procedure moves neither.
        Assert.Contains("Neither the pull nor the gear varies", Assert.Throws<SolverException>(() => NextMeasurement.Rank(PlanSampler.For(Demo.Plan).With("line.careless-speed", Spread.LognormalAround(1, 0.2)), 64, 1)).Message, StringComparison.Ordinal);
    }

    /// <summary>Threads of a long run leave and come back; what they count into is taken up again, so memory turns on the threads and not on the samples.</summary>
    [Fact]
    public void A_long_run_makes_no_more_samplers_than_threads_that_work_at_once()
    {
        var slow = new Slow();
        var samples = Demo.Run(60 * PlanSampler.Chunk, 1, PointSet.Random, slow, CancellationToken.None, out var samplers);
        Assert.Equal(60 * PlanSampler.Chunk, samples.Count);
        Assert.InRange(samplers, 1, slow.Threads.Count);
    }

    [Fact]
    public void Misuse_is_refused()
    {
        Assert.Throws<ArgumentException>(() => MeasureSamples.Of(Demo, [], 1000, 1));
        Assert.Throws<ArgumentException>(() => PlanLimits.Part(Demo, "rope"));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlanLimits.Pull(PlanSampler.For(Demo.Plan)));
        Assert.Throws<ArgumentException>(() => NextMeasurement.Rank(Demo, 100, 1));
        Assert.Throws<ArgumentOutOfRangeException>("sampler", () => NextMeasurement.Rank(PlanSampler.For(Demo.Plan), 64, 1));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => MeasureSamples.Of(Demo, [RecoveryMeasures.Vent()], 1000, 1, stop.Token));
    }

    private sealed class Slow : IProgress<long>
    {
        public ConcurrentDictionary<int, bool> Threads { get; } = new();

        public void Report(long value)
        {
            Threads[Environment.CurrentManagedThreadId] = true;
            var watch = Stopwatch.StartNew();
            while (watch.ElapsedMilliseconds < 30) Thread.SpinWait(100);
        }
    }
}
