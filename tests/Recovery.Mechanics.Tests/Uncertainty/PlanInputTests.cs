using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Every input of a plan can scatter, and a scattered one is the plan with that number.</summary>
public class PlanInputTests
{
    /// <summary>Inputs with a factor each, and the plan as a person would type it with that number.</summary>
    private static readonly Dictionary<string, (double Factor, Func<RecoveryPlan, double, RecoveryPlan> Typed)> Typings = new(InputTypings.All, StringComparer.Ordinal)
    {
        ["tower.hitch-position"] = (1.1, static (p, f) => p.With(Hitched(p.Tower, p.Tower.HitchPosition * f, p.Tower.HitchHeight))),
        ["tower.hitch-height"] = (1.6, static (p, f) => p.With(Hitched(p.Tower, p.Tower.HitchPosition, p.Tower.HitchHeight * f))),
        ["tower.hitch-rating"] = (0.4, static (p, f) => p.With(p.Tower with { HitchRating = p.Tower.HitchRating * f })),
        ["tower.hitch-vertical-rating"] = (0.2, static (p, f) => p.With(p.Tower with { HitchVerticalRating = p.Tower.HitchVerticalRating * f })),
        ["tower.downhill"] = (1.5, static (p, f) => p.With(p.Tower with { DownhillInReach = p.Tower.DownhillInReach * f })),
        ["tower.efficiency"] = (0.7, static (p, f) => p.With(p.Tower with { Efficiency = p.Tower.Efficiency * f })),
        ["tower.pull-speed"] = (2.5, static (p, f) => p.With(p.Tower with { PullSpeed = p.Tower.PullSpeed * f })),
        ["tower.tyre-width:rear axle"] = (1.15, static (p, f) => p.With(p.Tower with { Machine = Shod(p.Tower.Machine, 1, t => new Tyre(t.SectionWidth * f, t.OverallDiameter, t.SectionHeight, t.Inflation, t.LowestInflation, t.MeasuredDeflectionRatio).WithStaticLoadedRadius(t.StaticLoadedRadius)) })),
        ["tower.tyre-diameter:rear axle"] = (0.9, static (p, f) => p.With(p.Tower with { Machine = Shod(p.Tower.Machine, 1, t => new Tyre(t.SectionWidth, t.OverallDiameter * f, t.SectionHeight, t.Inflation, t.LowestInflation, t.MeasuredDeflectionRatio).WithStaticLoadedRadius(t.StaticLoadedRadius)) })),
        ["tower.tyre-height:front axle"] = (1.2, static (p, f) => p.With(p.Tower with { Machine = Shod(p.Tower.Machine, 0, t => new Tyre(t.SectionWidth, t.OverallDiameter, t.SectionHeight * f, t.Inflation, t.LowestInflation, t.MeasuredDeflectionRatio)) })),
        ["tower.inflation:front axle"] = (1.4, static (p, f) => p.With(p.Tower with { Machine = Shod(p.Tower.Machine, 0, t => t.AtInflation(t.Inflation * f)) })),
        ["tower.load-position:tractor and ballast"] = (0.9, static (p, f) => p.With(p.Tower with { Machine = Loaded(p.Tower.Machine, "tractor and ballast", l => new NamedLoad(l.Name, l.Mass, l.Position * f, l.Height, l.Kind)) })),
        ["tower.load-height:tractor and ballast"] = (1.3, static (p, f) => p.With(p.Tower with { Machine = Loaded(p.Tower.Machine, "tractor and ballast", l => new NamedLoad(l.Name, l.Mass, l.Position, l.Height * f, l.Kind)) })),
        ["stuck.tyre-width:middle axle"] = (1.1, static (p, f) => p.With(Stuck(p, Shod(p.Stuck.Machine, 1, t => new Tyre(t.SectionWidth * f, t.OverallDiameter, t.SectionHeight, t.Inflation, t.LowestInflation, t.MeasuredDeflectionRatio))))),
        ["stuck.tyre-diameter:front axle"] = (1.05, static (p, f) => p.With(Stuck(p, Shod(p.Stuck.Machine, 0, t => new Tyre(t.SectionWidth, t.OverallDiameter * f, t.SectionHeight, t.Inflation, t.LowestInflation, t.MeasuredDeflectionRatio))))),
        ["stuck.tyre-height:rear axle"] = (0.8, static (p, f) => p.With(Stuck(p, Shod(p.Stuck.Machine, 2, t => new Tyre(t.SectionWidth, t.OverallDiameter, t.SectionHeight * f, t.Inflation, t.LowestInflation, t.MeasuredDeflectionRatio))))),
        ["stuck.inflation:rear axle"] = (0.6, static (p, f) => p.With(Stuck(p, Shod(p.Stuck.Machine, 2, t => t.AtInflation(t.Inflation * f))))),
        ["stuck.load-position:beet"] = (0.8, static (p, f) => p.With(Stuck(p, Loaded(p.Stuck.Machine, "beet", l => new NamedLoad(l.Name, l.Mass, l.Position * f, l.Height, l.Kind))))),
        ["stuck.load-height:beet"] = (1.5, static (p, f) => p.With(Stuck(p, Loaded(p.Stuck.Machine, "beet", l => new NamedLoad(l.Name, l.Mass, l.Position, l.Height * f, l.Kind))))),
        ["stuck.belly-length"] = (1.3, static (p, f) => p.With(p.Stuck with { Belly = new Belly(p.Stuck.Belly!.Length * f, p.Stuck.Belly.Width, p.Stuck.Belly.Immersion) { Middle = p.Stuck.Belly.Middle } })),
        ["stuck.belly-width"] = (0.7, static (p, f) => p.With(p.Stuck with { Belly = new Belly(p.Stuck.Belly!.Length, p.Stuck.Belly.Width * f, p.Stuck.Belly.Immersion) { Middle = p.Stuck.Belly.Middle } })),
        ["stuck.belly-middle"] = (1.2, static (p, f) => p.With(p.Stuck with { Belly = p.Stuck.Belly!.WithMiddle(p.Stuck.Belly.Middle * f) })),
        ["stuck.entry-grade"] = (2, static (p, f) => p.With(p.Stuck with { EntryGrade = Grade.FromAngle(Angle.FromRadians(p.Stuck.EntryGrade!.Value.Radians * f)) })),
        ["line.pitch"] = (1.5, static (p, f) => p.With(p.Site with { LinePitch = p.Site.LinePitch * f })),
        ["line.yaw"] = (1.8, static (p, f) => p.With(p.Site with { LineYaw = p.Site.LineYaw * f })),
        ["line.slack"] = (1.7, static (p, f) => p.With(p.Procedure with { Slack = p.Procedure.Slack * f })),
        ["line.approach-speed"] = (0.5, static (p, f) => p.With(p.Procedure with { ApproachSpeed = p.Procedure.ApproachSpeed * f })),
        ["line.careless-slack"] = (1.7, static (p, f) => p.With(p.Procedure with { CarelessSlack = p.Procedure.CarelessSlack * f })),
        ["line.careless-speed"] = (0.5, static (p, f) => p.With(p.Procedure with { CarelessSpeed = p.Procedure.CarelessSpeed * f })),
        ["rig.length:recovery strap"] = (0.6, static (p, f) => p.With(p.Rig.Replace("recovery strap", (Strap)p.Rig.Parts[0] with { Length = ((Strap)p.Rig.Parts[0]).Length * f }))),
        ["rig.length:bridle"] = (0.5, static (p, f) => p.With(p.Rig.Replace("bridle", Bridle.FreeRunning(p.Rig.Bridle!.Strap with { Length = p.Rig.Bridle.Strap.Length * f }, p.Rig.Bridle.AnchorSpacing)))),
        ["rig.length:axle strap"] = (1.4, static (p, f) => p.With(p.Rig.Replace("axle strap", (Strap)p.Rig.Parts.Single(x => x.Name == "axle strap") with { Length = ((Strap)p.Rig.Parts.Single(x => x.Name == "axle strap")).Length * f }))),
        ["rig.bridle-spacing:bridle"] = (2.5, static (p, f) => p.With(p.Rig.Replace("bridle", Bridle.FreeRunning(p.Rig.Bridle!.Strap, p.Rig.Bridle.AnchorSpacing * f)))),
        ["rig.working-load:drawbar"] = (0.3, static (p, f) => p.With(Ends(p.Rig, p.Rig.Drawbar with { WorkingLoad = p.Rig.Drawbar.WorkingLoad * f }, p.Rig.Casualty))),
        ["rig.yield:drawbar"] = (0.2, static (p, f) => p.With(Ends(p.Rig, p.Rig.Drawbar with { Yield = p.Rig.Drawbar.Yield * f }, p.Rig.Casualty))),
        ["rig.working-load:casualty"] = (0.2, static (p, f) => p.With(Ends(p.Rig, p.Rig.Drawbar, p.Rig.Casualty with { WorkingLoad = p.Rig.Casualty.WorkingLoad * f }))),
        ["rig.yield:casualty"] = (0.1, static (p, f) => p.With(Ends(p.Rig, p.Rig.Drawbar, p.Rig.Casualty with { Yield = p.Rig.Casualty.Yield * f }))),
        ["rig.wear-factor"] = (1.2, static (p, f) => p.With(p.Rig.WithWear(p.Rig.WearFactor * f))),
        ["rig.twist-factor"] = (1.5, static (p, f) => p.With(p.Rig.WithTwist(p.Rig.TwistFactor * f))),
    };

    public static TheoryData<string> Keys => [.. Typings.Keys];

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_sampled_input_is_the_plan_typed_with_that_number(string key)
    {
        var (factor, typed) = Typings[key];
        foreach (var plan in Plans().Where(p => PlanInputList.For(p).Any(i => i.Key == key && i.TakesFactor)))
        {
            var sampler = PlanSampler.For(plan).With(key, Spread.Uniform(0.05, 3));
            PlanSamplerTests.Same(typed(plan, factor), sampler, [factor]);
            PlanSamplerTests.Same(plan, sampler, [1]);

            // Where the plan is made anew, the whole assessment of it reads as that of the typed plan.
            var input = sampler.Inputs[0].Input;
            if (input.RemakesThePlan) Assert.Equal(Read(typed(plan, factor)), Read(input.Apply(plan, factor)));
        }

        Assert.Contains(Plans(), p => PlanInputList.For(p).Any(i => i.Key == key) && Read(p) != Read(typed(p, factor)));
    }

    [Fact]
    public void No_input_is_left_without_a_typed_plan()
    {
        // Those whose typed plan stands in PlanSamplerTests.
        string[] others =
        [
            "stuck.cone-index", "stuck.remoulding-index", "tower.cone-index", "tower.remoulding-index", "tower.firmest-cone-index", "stuck.load:", "tower.load:", "stuck.sinkage:", "stuck.grade", "tower.grade",
            "stuck.unit-weight", "stuck.belly-immersion", "line.stiffness", "line.gear-speed", "tower.power", "demand.method", "tower.wheel-model", "stuck.seal", "stuck.rolling", "stuck.exit-slope", "stuck.adhesion", "rig.wear:", "rig.strength:",
        ];

        // No plan that a person types holds these numbers: constants of the models, and times that this plan does not declare.
        string[] models = ["stuck.cone-factor", "rig.bridle-share", "tower.hard-friction", "line.throttle-rise"];
        bool Has(string key) => others.Concat(models).Any(o => key.StartsWith(o, StringComparison.Ordinal)) || Typings.Keys.Any(t => key.Split(':')[0] == t.Split(':')[0]);
        Assert.DoesNotContain(Plans().SelectMany(PlanInputList.For), i => !Has(i.Key));
        Assert.All(Plans(), p => Assert.Equal(PlanInputList.For(p).Count, PlanInputList.For(p).Select(i => i.Key).Distinct().Count()));
    }

    [Fact]
    public void No_factor_breaks_a_run()
    {
        foreach (var plan in Plans())
        {
            foreach (var input in PlanInputList.For(plan).Where(i => i.TakesFactor))
            {
                var sampler = PlanSampler.For(plan).With(input.Key, Spread.Uniform(1e-4, 1e4));
                foreach (var f in new[] { 1e-4, 0.01, 0.3, 3, 100, 1e4 })
                {
                    var fault = Record.Exception(() =>
                    {
                        var o = PlanSamplerTests.At(sampler, [f]);
                        Assert.False(double.IsNaN(o.Demand) || double.IsNaN(o.Sustained) || double.IsNaN(o.Imposable));
                    });
                    Assert.True(fault is null, FormattableString.Invariant($"{input.Key} x {f}: {fault}"));
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
            foreach (var input in PlanInputList.For(plan).Where(i => i.TakesFactor)) sampler = sampler.With(input.Key, Spread.LognormalAround(1, 0.4));
            var samples = sampler.RunPart(0, 300, 7);
            Assert.Equal(300, samples.Count);
        }
    }

    [Fact]
    public void What_a_plan_cannot_take_is_held_and_said()
    {
        var plan = PolderHarvester.Create();
        var input = PlanInputList.For(plan).Single(i => i.Key == "tower.hitch-height");
        Assert.Equal(0.2, input.LeastFactor, 1e-9);
        Assert.Equal(6, input.MostFactor, 1e-9);
        var wide = PlanSampler.For(plan).With("tower.hitch-height", Spread.Uniform(0.05, 9));
        Assert.True(wide.Inputs[0].IsHeld);
        Assert.Contains("held between 0.2 and 6", wide.Inputs[0].ToString(), StringComparison.Ordinal);
        Assert.False(PlanSampler.For(plan).With("tower.hitch-height", Spread.Uniform(0.5, 2)).Inputs[0].IsHeld);
        Assert.Equal(PlanSamplerTests.At(wide, [6]).Nose, PlanSamplerTests.At(wide, [9]).Nose, 1e-9);

        // A place behind the foremost axle has a negative x; factors stay factors.
        var back = PlanInputList.For(plan).Single(i => i.Key == "tower.hitch-position");
        Assert.Equal(3.05 / 4.05, back.LeastFactor, 1e-9);
        Assert.Equal(40 / 4.05, back.MostFactor, 1e-9);
        Assert.Equal(double.PositiveInfinity, PlanInputList.For(plan).Single(i => i.Key == "stuck.cone-index").MostFactor);
    }

    [Fact]
    public void What_a_factor_would_not_move_is_no_input_and_is_refused_with_words()
    {
        var demo = PolderHarvester.Create();
        var level = demo.With(demo.Stuck with { Grade = Grade.Level }).With(PullProcedure.Undeclared).With(demo.Tower with { FirmestConeIndex = null, EnginePower = null });
        string[] none = ["tower.power", "tower.firmest-cone-index", "tower.hard-friction", "line.gear-speed", "line.slack", "line.approach-speed", "line.throttle-rise"];
        foreach (var key in none)
        {
            Assert.DoesNotContain(PlanInputList.For(level), i => i.Key == key);
            Assert.Contains("PlanInputList.For", Assert.Throws<ArgumentException>(() => PlanSampler.For(level).With(key, Spread.Uniform(0.5, 2))).Message, StringComparison.Ordinal);
        }

        // What is 0 is an input that a factor leaves at 0; the words name the way.
        var taut = level.With(PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(1)));
        foreach (var (key, unit) in new[] { ("stuck.grade", "rad"), ("line.pitch", "rad"), ("line.yaw", "rad"), ("line.slack", "m"), ("tower.downhill", "rad") })
        {
            var input = PlanInputList.For(taut).Single(i => i.Key == key);
            Assert.False(input.TakesFactor);
            Assert.True(input.TakesShift);
            Assert.Equal(unit, input.Unit);
            Assert.Contains("a difference in " + unit + " with WithShift", Assert.Throws<ArgumentException>(() => PlanSampler.For(taut).With(key, Spread.Uniform(0.5, 2))).Message, StringComparison.Ordinal);
        }

        Assert.Contains("takes factors alone", Assert.Throws<ArgumentException>(() => PlanSampler.For(taut).WithShift("stuck.cone-index", Spread.Normal(0, 1))).Message, StringComparison.Ordinal);
        var sloping = level.With(level.Stuck with { Grade = Grade.FromPercent(2) }).With(new PullProcedure { LockedGear = Speed.FromKilometersPerHour(1), Slack = Length.FromMeters(0.1), ApproachSpeed = Speed.FromKilometersPerHour(1), ThrottleRise = Duration.FromSeconds(5) })
            .With(level.Tower with { FirmestConeIndex = Pressure.FromKilopascals(1200), EnginePower = Power.FromKilowatts(200), HardSurfaceInReach = true });
        Assert.All(none.Append("stuck.grade"), key => Assert.Contains(PlanInputList.For(sloping), i => i.Key == key && i.TakesFactor));

        // The defaults ask for no input that is not there, whatever is declared.
        Assert.DoesNotContain(PlanSampler.WithDefaults(demo.With(new PullProcedure { ApproachSpeed = Speed.Zero, CarelessSpeed = Speed.Zero })).Inputs, i => i.Input.Key.EndsWith("speed", StringComparison.Ordinal));
        Assert.Contains(PlanSampler.WithDefaults(level).Inputs, i => i.Input.Key == "line.careless-speed");
    }

    [Fact]
    public void A_plan_that_cannot_be_made_names_its_input()
    {
        var input = new PlanInput(PolderHarvester.Create(), "some.input", "some input", string.Empty, new InputEdit(static _ => new(1, 0, 10), static (_, v) => throw new ArgumentOutOfRangeException("value", "no such plan")));
        Assert.Contains("'some.input' at 2 times", Assert.Throws<ArgumentException>(() => input.Apply(PolderHarvester.Create(), 2)).Message, StringComparison.Ordinal);
    }

    /// <summary>Findings that turn on sampled numbers: the verdict of a sample follows them, as the assessment of the typed plan does.</summary>
    [Fact]
    public void Findings_that_turn_on_sampled_numbers_turn_with_them()
    {
        // A freed machine that runs away on firm soil but not on soft.
        var gentle = ReferencePlans.Gentle();
        var down = gentle.With(gentle.Stuck with { Grade = Grade.FromPercent(-12) });
        foreach (var f in new[] { 0.4, 1, 4 })
        {
            var soil = Soil.FromConeIndex(down.Stuck.Soil.ConeIndex * f, down.Stuck.Soil.RemouldingIndex);
            PlanSamplerTests.Same(down.With(down.Stuck with { Soil = soil }), PlanSampler.For(down).With("stuck.cone-index", Spread.Uniform(0.1, 5)), [f]);
        }

        // One that holds itself on its own soft ground and rolls on the firmer ground of the puller.
        var plain = gentle.With(ReferencePlans.StrongRig().Replace("shackle", new SoftShackle("soft shackle", Rating.BreakingStrengthTonnes(300))));
        var between = false;
        foreach (var percent in new[] { -3.0, -4, -4.5, -5, -5.5, -6, -7, -8, -10 })
        {
            var leaning = plain.With(plain.Stuck with { Grade = Grade.FromPercent(percent) });
            PlanSamplerTests.Same(leaning, PlanSampler.For(leaning), []);
            between |= leaning.Assess().Findings.Any(f => f.Id == "plan.may-run-away") && RollingAway.Holds(leaning, leaning.Stuck.Soil.ConeIndex.Pascals) > -leaning.Compiled.Stuck.Flat.Weight * leaning.Compiled.Stuck.Flat.GradeSine;
        }

        Assert.True(between);

        // A line off to the side: an objection by itself, and a stop where the pull lifts a side.
        var aside = gentle.With(gentle.Site with { LineYaw = Angle.FromDegrees(40) }).With(gentle.Tower with { Soil = Soil.FromConeIndex(Pressure.FromKilopascals(600), Ratio.FromDecimalFractions(0.9)) });
        foreach (var f in new[] { 0.3, 1, 3 })
        {
            var soil = Soil.FromConeIndex(aside.Tower.Soil.ConeIndex * f, aside.Tower.Soil.RemouldingIndex);
            PlanSamplerTests.Same(aside.With(aside.Tower with { Soil = soil }), PlanSampler.For(aside).With("tower.cone-index", Spread.Uniform(0.1, 5)), [f]);
        }

        // A line so far off and so high that turning over limits what the puller sustains.
        var tall = aside.With(ReferencePlans.Tractor(30, 3.0)).With(aside.Site with { LineYaw = Angle.FromDegrees(45) });
        Assert.Equal(PullLimit.Overturn, tall.Assess().Capability.LimitedBy);
        foreach (var f in new[] { 0.2, 1, 3 })
        {
            var soil = Soil.FromConeIndex(tall.Tower.Soil.ConeIndex * f, tall.Tower.Soil.RemouldingIndex);
            PlanSamplerTests.Same(tall.With(tall.Tower with { Soil = soil }), PlanSampler.For(tall).With("tower.cone-index", Spread.Uniform(0.1, 5)), [f]);
        }

        // What one careless take-up would part, with a careless load that is less so.
        var careless = gentle.With(gentle.Procedure with { CarelessSpeed = Speed.FromKilometersPerHour(35), CarelessSlack = Length.FromMeters(9) });
        Assert.Contains(careless.Assess().Findings, f => f.Id == "rig.careless-parts");
        PlanSamplerTests.Same(careless.With(gentle.Procedure with { CarelessSpeed = Speed.FromKilometersPerHour(5), CarelessSlack = Length.FromMeters(0.45) }), PlanSampler.For(careless).With("line.careless-speed", Spread.Uniform(0.05, 2)).With("line.careless-slack", Spread.Uniform(0.01, 2)), [5.0 / 35, 0.05]);
    }

    private static IReadOnlyList<RecoveryPlan> Plans()
    {
        var demo = PolderHarvester.Create();
        var gentle = ReferencePlans.Gentle();
        var full = demo
            .With(demo.Stuck with { EntryGrade = Grade.FromPercent(3), Belly = demo.Stuck.Belly!.WithMiddle(Length.FromMeters(-3.2)) })
            .With(demo.Tower with { EnginePower = Power.FromKilowatts(60), HitchRating = Force.FromKilonewtons(250), HitchVerticalRating = Force.FromKilonewtons(30), DownhillInReach = Angle.FromDegrees(4) })
            .With(demo.Site with { LinePitch = Angle.FromDegrees(6), LineYaw = Angle.FromDegrees(5) })
            .With(demo.Procedure with { Slack = Length.FromMeters(0.3), ApproachSpeed = Speed.FromKilometersPerHour(1) });
        return [demo, gentle, InputTypings.Arranged(), InputTypings.Everything(), full, full.With(new PullProcedure { Slack = Length.FromMeters(0.4), ApproachSpeed = Speed.FromKilometersPerHour(3) })];
    }

    /// <summary>Report and worked steps, without the fingerprint, which sees the last bit.</summary>
    private static string Read(RecoveryPlan plan)
    {
        var a = plan.Assess();
        return a.ToReport().Replace(a.Fingerprint, string.Empty, StringComparison.Ordinal) + string.Join("\n", a.Explain()) + string.Join(" ", plan.Compiled.Stuck.Flat.Load.Select(l => l.ToString("F3", CultureInfo.InvariantCulture)));
    }

    private static TowingMachine Hitched(TowingMachine t, Length position, Length height) => new(t.Machine, t.Soil, position, height, t.Direction)
    {
        Grade = t.Grade,
        FirmestConeIndex = t.FirmestConeIndex,
        HardSurfaceInReach = t.HardSurfaceInReach,
        HardSurfaceFriction = t.HardSurfaceFriction,
        DownhillInReach = t.DownhillInReach,
        EnginePower = t.EnginePower,
        Efficiency = t.Efficiency,
        PullSpeed = t.PullSpeed,
        HitchRating = t.HitchRating,
        HitchVerticalRating = t.HitchVerticalRating,
    };

    private static Machine Shod(Machine m, int axle, Func<Tyre, Tyre> change) => m.WithAxles(m.Axles.Select((a, i) => i == axle ? a with { Tyre = change(a.Tyre) } : a));

    private static Machine Loaded(Machine m, string load, Func<NamedLoad, NamedLoad> change) => new(m.Name, m.Axles, m.Loads.Select(l => l.Name == load ? change(l) : l), m.Suspension);

    /// <summary>The demo's stuck machine typed anew; another one is as it was, with these masses and tyres.</summary>
    private static StuckMachine Stuck(RecoveryPlan p, Machine machine) => p.Stuck.DugSlope is null
        ? new StuckMachine(machine, p.Stuck.Soil, p.Stuck.Sinkage, p.Stuck.Direction) { Grade = p.Stuck.Grade, Belly = p.Stuck.Belly, EntryGrade = p.Stuck.EntryGrade }
        : p.Stuck.WithMachines(machine, machine.Loads.Count == p.Stuck.AsFound.Loads.Count ? machine : new Machine(machine.Name, machine.Axles, p.Stuck.AsFound.Loads.Select(l => machine.Loads.FirstOrDefault(k => k.Name == l.Name) ?? l), machine.Suspension));

    private static Rig Ends(Rig rig, AttachmentPoint drawbar, AttachmentPoint casualty)
    {
        var typed = new Rig(drawbar, rig.Parts, casualty).WithTwist(rig.TwistFactor);
        return rig.DeclaredWear is { } wear ? typed.WithWear(wear) : typed;
    }
}
