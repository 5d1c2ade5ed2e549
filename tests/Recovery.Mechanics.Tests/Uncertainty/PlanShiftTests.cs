using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Spreads by difference: what a plan holds as 0 can scatter, and a shifted input is the plan typed with that number.</summary>
public class PlanShiftTests
{
    /// <summary>Inputs with a difference each, and the plan as a person would type it.</summary>
    private static readonly Dictionary<string, (double Difference, Func<RecoveryPlan, double, RecoveryPlan> Typed)> Typings = new(StringComparer.Ordinal)
    {
        ["stuck.grade"] = (0.03, static (p, d) => p.With(p.Stuck with { Grade = Grade.FromAngle(Angle.FromRadians(p.Stuck.Grade.Radians + d)) })),
        ["tower.grade"] = (-0.02, static (p, d) => p.With(p.Tower with { Grade = Grade.FromAngle(Angle.FromRadians(p.Tower.Grade.Radians + d)) })),
        ["tower.downhill"] = (0.05, static (p, d) => p.With(p.Tower with { DownhillInReach = Angle.FromRadians(p.Tower.DownhillInReach.Radians + d) })),
        ["tower.pull-speed"] = (0.3, static (p, d) => p.With(p.Tower with { PullSpeed = Speed.FromMetersPerSecond(p.Tower.PullSpeed.MetersPerSecond + d) })),
        ["tower.hitch-height"] = (0.2, static (p, d) => p.With(p.Tower.WithHitch(p.Tower.HitchPosition.Meters, p.Tower.HitchHeight.Meters + d))),
        ["tower.hitch-position"] = (-0.4, static (p, d) => p.With(p.Tower.WithHitch(p.Tower.HitchPosition.Meters + d, p.Tower.HitchHeight.Meters))),
        ["line.pitch"] = (-0.06, static (p, d) => p.With(p.Site with { LinePitch = Angle.FromRadians(p.Site.LinePitch.Radians + d) })),
        ["line.yaw"] = (0.07, static (p, d) => p.With(p.Site with { LineYaw = Angle.FromRadians(p.Site.LineYaw.Radians + d) })),
        ["line.slack"] = (0.25, static (p, d) => p.With(p.Procedure with { Slack = Length.FromMeters(p.Procedure.Slack!.Value.Meters + d) })),
        ["line.gear-speed"] = (0.2, static (p, d) => p.With(p.Procedure with { LockedGear = Speed.FromMetersPerSecond(p.Procedure.LockedGear!.Value.MetersPerSecond + d) })),
        ["line.approach-speed"] = (1.1, static (p, d) => p.With(p.Procedure with { ApproachSpeed = Speed.FromMetersPerSecond(p.Procedure.ApproachSpeed!.Value.MetersPerSecond + d) })),
        ["line.careless-slack"] = (0.4, static (p, d) => p.With(p.Procedure with { CarelessSlack = Length.FromMeters(p.Procedure.CarelessSlack.Meters + d) })),
        ["line.careless-speed"] = (0.6, static (p, d) => p.With(p.Procedure with { CarelessSpeed = Speed.FromMetersPerSecond(p.Procedure.CarelessSpeed.MetersPerSecond + d) })),
        ["line.throttle-rise"] = (-4, static (p, d) => p.With(p.Procedure with { ThrottleRise = Duration.FromSeconds(p.Procedure.ThrottleRise!.Value.Seconds + d) })),
        ["stuck.exit-slope"] = (0.05, static (p, d) => p.With(p.Stuck with { ExitSlope = Angle.FromRadians(p.Stuck.ExitSlope!.Value.Radians + d) })),
        ["stuck.belly-immersion"] = (0.05, static (p, d) => p.With(p.Stuck with { Belly = new Belly(p.Stuck.Belly!.Length, p.Stuck.Belly.Width, p.Stuck.Belly.Immersion + Length.FromMeters(d)) { Middle = p.Stuck.Belly.Middle } })),
        ["stuck.belly-middle"] = (-0.5, static (p, d) => p.With(p.Stuck with { Belly = p.Stuck.Belly!.WithMiddle(p.Stuck.Belly.Middle + Length.FromMeters(d)) })),
        ["stuck.load:body"] = (900, static (p, d) => p.With(p.Stuck.WithMachines(Loaded(p.Stuck.Machine, "body", l => new NamedLoad(l.Name, l.Mass + Mass.FromKilograms(d), l.Position, l.Height, l.Kind)), Loaded(p.Stuck.AsFound, "body", l => new NamedLoad(l.Name, l.Mass + Mass.FromKilograms(d), l.Position, l.Height, l.Kind))))),
        ["tower.load-position:tractor and ballast"] = (0.15, static (p, d) => p.With(p.Tower with { Machine = Loaded(p.Tower.Machine, "tractor and ballast", l => new NamedLoad(l.Name, l.Mass, l.Position + Length.FromMeters(d), l.Height, l.Kind)) })),
        ["tower.inflation:front axle"] = (-25e3, static (p, d) => p.With(p.Tower with { Machine = p.Tower.Machine.WithAxles(p.Tower.Machine.Axles.Select((a, i) => i == 0 ? a with { Tyre = a.Tyre.AtInflation(a.Tyre.Inflation + Pressure.FromPascals(d)) } : a)) })),
        ["rig.bridle-lean:bridle"] = (0.015, static (p, d) => p.With(p.Rig.Replace("bridle", p.Rig.Bridle!.WithLean(Angle.FromRadians(p.Rig.Bridle.Lean.Radians + d))))),
        ["rig.choke-angle:axle strap"] = (-0.4, static (p, d) => p.With(p.Rig.Replace("axle strap", InputTypings.Part<Strap>(p, "axle strap") with { AngleOfChoke = Angle.FromRadians(InputTypings.Part<Strap>(p, "axle strap").AngleOfChoke!.Value.Radians + d) }))),
        ["stuck.dug-slope"] = (-0.03, static (p, d) => p.With(p.Stuck.Dug(Angle.FromRadians(p.Stuck.DugSlope!.Value.Radians + d)))),
        ["tackle.anchor-holds"] = (-150e3, static (p, d) => p.WithTackle(p.Tackle!.WithAnchorHolds(p.Tackle.AnchorHolds + Force.FromNewtons(d)))),
        ["ahead.grade:third tractor"] = (0.04, static (p, d) => InputTypings.Ahead(p, 0, t => t with { Grade = Grade.FromAngle(Angle.FromRadians(t.Grade.Radians + d)) })),
        ["way.part-height:rear axle"] = (-0.2, static (p, d) => p.With(p.Site with { UnderMachine = new UnderMachineLine(p.Site.UnderMachine!.TailBehindAxle, p.Site.UnderMachine.Wheelbase, p.Site.UnderMachine.AnchorHeight, p.Site.UnderMachine.ApexHeight, p.Site.UnderMachine.Parts.Select(x => x.Name == "rear axle" ? new UndersidePart(x.Name, x.BehindAxle, x.Height + Length.FromMeters(d)) : x)) { BellyEndBehindAxle = p.Site.UnderMachine.BellyEndBehindAxle } })),
        ["rig.bridle-spacing:bridle"] = (0.3, static (p, d) => p.With(p.Rig.Replace("bridle", Bridle.FreeRunning(p.Rig.Bridle!.Strap, p.Rig.Bridle.AnchorSpacing + Length.FromMeters(d))))),
    };

    public static TheoryData<string> Keys => [.. Typings.Keys];

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_shifted_input_is_the_plan_typed_with_that_number(string key)
    {
        var (difference, typed) = Typings[key];
        var met = 0;
        foreach (var plan in Plans().Where(p => PlanInputList.For(p).Any(i => i.Key == key && i.TakesShift)))
        {
            met++;
            var sampler = PlanSampler.For(plan).WithShift(key, Spread.Normal(0, 5));
            PlanSamplerTests.Same(typed(plan, difference), sampler, [difference]);
            PlanSamplerTests.Same(plan, sampler, [0]);
        }

        Assert.True(met > 0);
        Assert.Contains(Plans(), p => PlanInputList.For(p).Any(i => i.Key == key && i.TakesShift) && typed(p, difference).Assess().Fingerprint != p.Assess().Fingerprint);
    }

    [Fact]
    public void A_level_slope_a_straight_line_and_a_taut_one_scatter()
    {
        var plan = ReferencePlans.Gentle();
        Assert.Equal(0, plan.Stuck.Grade.Radians);
        var still = PlanSampler.For(plan).With("demand.method", Spread.Fixed(1)).RunPart(0, 400, 5);
        Assert.Equal(0, still.DemandNewtons.StandardDeviation);
        foreach (var (key, spread) in new[] { ("stuck.grade", Spread.Normal(0, 0.02)), ("line.yaw", Spread.Normal(0, 0.06)), ("line.slack", Spread.Truncated(Spread.Normal(0, 0.2), 0, 1)) })
        {
            var samples = PlanSampler.For(plan).WithShift(key, spread).RunPart(0, 400, 5);
            Assert.True(samples.DemandNewtons.StandardDeviation + samples.ProcedurePeakNewtons!.StandardDeviation > 100, key);
        }

        // On a level within 0.02 rad the demand scatters by W sin(0.02), to first order.
        var weight = plan.Stuck.Machine.WeightNewtons;
        var slopes = PlanSampler.For(plan).WithShift("stuck.grade", Spread.Normal(0, 0.02)).RunPart(0, 4000, 5);
        Assert.InRange(slopes.DemandNewtons.StandardDeviation, 0.9 * 0.02 * weight, 1.1 * 0.02 * weight);
    }

    [Fact]
    public void What_a_plan_cannot_take_is_held_and_said()
    {
        var plan = ReferencePlans.Gentle();
        var input = PlanInputList.For(plan).Single(i => i.Key == "line.slack");
        Assert.Equal(0, input.LeastShift);
        Assert.Equal(10, input.MostShift, 1e-9);
        var sampler = PlanSampler.For(plan).WithShift("line.slack", Spread.Normal(0, 0.2));
        Assert.True(sampler.Inputs[0].IsShift);
        Assert.True(sampler.Inputs[0].IsHeld);
        Assert.Contains("difference in m, normal", sampler.Inputs[0].ToString().ToLowerInvariant(), StringComparison.Ordinal);
        Assert.Contains("held between 0 and 10", sampler.Inputs[0].ToString(), StringComparison.Ordinal);
        Assert.False(PlanSampler.For(plan).WithShift("line.slack", Spread.Uniform(0, 3)).Inputs[0].IsHeld);
        PlanSamplerTests.Same(plan, sampler, [-3]);
        Assert.Equal(PlanSamplerTests.At(sampler, [10]).Procedure, PlanSamplerTests.At(sampler, [12]).Procedure, 1e-6);
    }

    [Fact]
    public void No_difference_breaks_a_run()
    {
        foreach (var plan in Plans())
        {
            foreach (var input in PlanInputList.For(plan).Where(i => i.TakesShift))
            {
                var sampler = PlanSampler.For(plan).WithShift(input.Key, Spread.Normal(0, 1));
                foreach (var d in new[] { -1e6, -1, -1e-3, 1e-3, 1, 1e6 })
                {
                    var fault = Record.Exception(() =>
                    {
                        var o = PlanSamplerTests.At(sampler, [d]);
                        Assert.False(double.IsNaN(o.Demand) || double.IsNaN(o.Sustained) || double.IsNaN(o.Imposable));
                    });
                    Assert.True(fault is null, FormattableString.Invariant($"{input.Key} by {d}: {fault}"));
                }
            }
        }
    }

    [Fact]
    public void Together_they_do_not_break_a_run_either()
    {
        foreach (var plan in Plans())
        {
            var sampler = PlanSampler.For(plan);
            foreach (var input in PlanInputList.For(plan)) sampler = input.TakesShift ? sampler.WithShift(input.Key, Spread.Normal(0, 0.05 * Math.Min(1, input.MostShift))) : sampler.With(input.Key, Spread.LognormalAround(1, 0.2));
            Assert.Equal(200, sampler.RunPart(0, 200, 7).Count);
        }
    }

    [Fact]
    public void A_limit_over_a_shift_has_the_index_of_its_slope()
    {
        // Sustained less demand falls by about W for each radian of slope under the stuck machine: beta is the reserve in slopes over their deviation.
        var plan = ReferencePlans.Gentle();
        var a = plan.Assess();
        var reserve = (a.Sustained.CentralNewtons - a.Demand.CentralNewtons) / plan.Stuck.Machine.WeightNewtons;
        var result = FirstOrderReliability.Of(PlanLimits.Pull(PlanSampler.For(plan).WithShift("stuck.grade", Spread.Normal(0, reserve / 2))));
        Assert.InRange(result.Beta, 1.8, 2.3);
    }

    [Fact]
    public void A_shift_takes_the_place_of_a_factor_and_the_other_way_round()
    {
        var plan = PolderHarvester.Create();
        var sampler = PlanSampler.For(plan).With("tower.hitch-height", Spread.Uniform(0.5, 2)).WithShift("tower.hitch-height", Spread.Normal(0, 0.1));
        Assert.True(Assert.Single(sampler.Inputs).IsShift);
        Assert.False(Assert.Single(sampler.With("tower.hitch-height", Spread.Uniform(0.5, 2)).Inputs).IsShift);
        var without = sampler.Without("tower.hitch-height");
        PlanSamplerTests.Same(plan, without, [0]);
        Assert.Equal(PlanSampler.For(plan).RunPart(0, 300, 1).ToBytes(), without.RunPart(0, 300, 1).ToBytes());
        Assert.Throws<ArgumentNullException>(() => sampler.WithShift("tower.hitch-height", null!));
    }

    [Fact]
    public void A_fixed_number_that_is_not_the_plans_own_is_taken()
    {
        var plan = PolderHarvester.Create();
        var once = PlanSampler.For(plan).With("tower.hitch-height", Spread.Fixed(1.5)).RunPart(0, 200, 1);
        var typed = PlanSampler.For(plan.With(plan.Tower.WithHitch(plan.Tower.HitchPosition.Meters, plan.Tower.HitchHeight.Meters * 1.5))).RunPart(0, 200, 1);
        Assert.Equal(typed.SustainedNewtons.Mean, once.SustainedNewtons.Mean, 1e-6);
        Assert.Equal(typed.ImposableNewtons.Mean, once.ImposableNewtons.Mean, 1e-6);
        Assert.NotEqual(PlanSampler.For(plan).RunPart(0, 200, 1).SustainedNewtons.Mean, once.SustainedNewtons.Mean);
    }

    [Fact]
    public void Shifts_keep_their_dimensions_and_their_partitions()
    {
        var plan = ReferencePlans.Gentle();
        var sampler = PlanSampler.WithDefaults(plan).WithShift("stuck.grade", Spread.Normal(0, 0.02)).WithShift("line.slack", Spread.Uniform(0, 0.2));
        var whole = sampler.RunPart(0, 600, 42).ToBytes();
        Assert.Equal(whole, sampler.Run(600, 42).ToBytes());
        Assert.Equal(whole, sampler.RunPart(251, 349, 42).Merge(sampler.RunPart(0, 251, 42)).ToBytes());

        // On another plan a shift that it does not take is a dimension that changes nothing.
        var undeclared = sampler.On(plan.With(PullProcedure.Undeclared));
        Assert.Equal(sampler.Inputs.Count, undeclared.Inputs.Count);
        Assert.Equal(200, undeclared.RunPart(0, 200, 42).Count);
    }

    [Fact]
    public void An_approach_sampled_faster_than_its_gear_is_a_plan_that_contradicts_itself()
    {
        var plan = ReferencePlans.Gentle().With(new PullProcedure { LockedGear = Speed.FromKilometersPerHour(2), ApproachSpeed = Speed.FromKilometersPerHour(1), Slack = Length.Zero, SecondPull = false });
        foreach (var f in new[] { 0.5, 1.9, 2.1, 4 }) PlanSamplerTests.Same(plan.With(plan.Procedure with { ApproachSpeed = plan.Procedure.ApproachSpeed * f }), PlanSampler.For(plan).With("line.approach-speed", Spread.Uniform(0.1, 5)), [f]);
        Assert.Equal(Verdict.Stop, PlanSamplerTests.At(PlanSampler.For(plan).With("line.approach-speed", Spread.Uniform(0.1, 5)), [2.1]).Verdict);
    }

    private static IReadOnlyList<RecoveryPlan> Plans()
    {
        RecoveryPlan demo = PolderHarvester.Create(), gentle = ReferencePlans.Gentle();
        return
        [
            demo,
            gentle,
            demo.With(demo.Site with { LinePitch = Angle.FromDegrees(6), LineYaw = Angle.FromDegrees(5) }),
            InputTypings.Arranged(),
            Straight(InputTypings.Everything()),
            gentle.With(new PullProcedure { Slack = Length.Zero, ApproachSpeed = Speed.Zero, ThrottleRise = Duration.FromSeconds(8), CarelessSlack = Length.Zero, CarelessSpeed = Speed.Zero }),
            demo.With(demo.Stuck with { Belly = demo.Stuck.Belly!.WithMiddle(Length.Zero) }).With(demo.Tower with { EnginePower = Power.FromKilowatts(60) }).With(demo.Procedure with { ThrottleRise = Duration.FromSeconds(6) }),
        ];
    }

    /// <summary>The line in the direction of the pull, the lean declared as none.</summary>
    private static RecoveryPlan Straight(RecoveryPlan plan) => plan.With(plan.Rig.Replace("bridle", plan.Rig.Bridle!.WithLean(Angle.Zero))).With(plan.Site with { LineYaw = Angle.Zero });

    private static Machine Loaded(Machine m, string load, Func<NamedLoad, NamedLoad> change) => new(m.Name, m.Axles, m.Loads.Select(l => l.Name == load ? change(l) : l), m.Suspension);
}
