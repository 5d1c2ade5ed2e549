using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Planning;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>The sampled plan against the assessed one, and what sampling promises.</summary>
public class PlanSamplerTests
{
    public static TheoryData<string> StoryNames => [.. PlanStoryTests.Stories.Select(s => s.Key)];

    [Theory]
    [MemberData(nameof(StoryNames))]
    public void With_nothing_scattering_it_is_the_assessment(string story)
    {
        var plan = PlanStoryTests.Stories[story]();
        Same(plan, PlanSampler.For(plan), []);
    }

    [Theory]
    [InlineData(0.7, 0.8)]
    [InlineData(1.0, 1.3)]
    [InlineData(1.9, 0.5)]
    public void A_sampled_soil_is_a_plan_on_that_soil(double f, double g)
    {
        foreach (var plan in new[] { PolderHarvester.Create(), ReferencePlans.Gentle(), ReferencePlans.AsFound() })
        {
            var sampler = PlanSampler.For(plan).With("stuck.cone-index", Spread.Uniform(0.1, 3)).With("stuck.remoulding-index", Spread.Uniform(0.1, 3)).With("tower.cone-index", Spread.Uniform(0.1, 3));
            if (plan.Tower.FirmestConeIndex is not null) sampler = sampler.With("tower.firmest-cone-index", Spread.Uniform(0.1, 3));
            var soil = Soil.FromConeIndex(plan.Stuck.Soil.ConeIndex * f, Ratio.FromDecimalFractions(Math.Min(1, plan.Stuck.Soil.RemouldingIndex.DecimalFractions * g)));
            var under = Soil.FromConeIndex(plan.Tower.Soil.ConeIndex * g, plan.Tower.Soil.RemouldingIndex);
            var tower = plan.Tower with { Soil = under, FirmestConeIndex = plan.Tower.FirmestConeIndex is { } firm ? firm * f : null };
            Same(plan.With(plan.Stuck with { Soil = soil }).With(tower), sampler, plan.Tower.FirmestConeIndex is null ? [f, g, g] : [f, g, g, f]);
        }
    }

    [Theory]
    [InlineData("stuck.load:beet", 0.8)]
    [InlineData("stuck.load:beet", 1.1)]
    [InlineData("stuck.load:body", 1.05)]
    [InlineData("tower.load:tractor and ballast", 1.2)]
    public void A_sampled_mass_is_a_plan_with_that_mass(string key, double f)
    {
        var plan = PolderHarvester.Create();
        var name = key[(key.IndexOf(':', StringComparison.Ordinal) + 1)..];
        Machine Heavier(Machine m) => new(m.Name, m.Axles, m.Loads.Select(l => l.Name == name ? new NamedLoad(l.Name, l.Mass * f, l.Position, l.Height, l.Kind) : l), m.Suspension);
        var stuck = new StuckMachine(Heavier(plan.Stuck.Machine), plan.Stuck.Soil, plan.Stuck.Sinkage, plan.Stuck.Direction) { Grade = plan.Stuck.Grade, Belly = plan.Stuck.Belly };
        var typed = plan.With(stuck).With(plan.Tower with { Machine = Heavier(plan.Tower.Machine) });
        Same(typed, PlanSampler.For(plan).With(key, Spread.Uniform(0.5, 1.5)), [f], verdict: false);
    }

    [Fact]
    public void A_sampled_depth_is_a_plan_in_that_hole()
    {
        var plan = PolderHarvester.Create();
        var typed = plan.With(new StuckMachine(plan.Stuck.Machine, plan.Stuck.Soil, [plan.Stuck.Sinkage[0], plan.Stuck.Sinkage[1] * 1.2, plan.Stuck.Sinkage[2]], plan.Stuck.Direction) { Grade = plan.Stuck.Grade, Belly = plan.Stuck.Belly });
        Same(typed, PlanSampler.For(plan).With("stuck.sinkage:middle axle", Spread.Uniform(0.5, 1.5)), [1.2], verdict: false);
    }

    [Theory]
    [InlineData("stuck.grade", 1.5)]
    [InlineData("tower.grade", 0.5)]
    [InlineData("stuck.unit-weight", 1.1)]
    [InlineData("stuck.belly-immersion", 0.6)]
    public void A_sampled_slope_weight_or_belly_is_a_plan_with_it(string key, double f)
    {
        var plan = PolderHarvester.Create();
        plan = plan.With(plan.Tower with { Grade = Grade.FromPercent(4) });
        var s = plan.Stuck;
        var typed = key switch
        {
            "stuck.grade" => plan.With(s with { Grade = Grade.FromAngle(Angle.FromRadians(s.Grade.Radians * f)) }),
            "tower.grade" => plan.With(plan.Tower with { Grade = Grade.FromAngle(Angle.FromRadians(plan.Tower.Grade.Radians * f)) }),
            "stuck.unit-weight" => plan.With(s with { Soil = s.Soil with { DeclaredUnitWeight = s.Soil.UnitWeight * f } }),
            _ => plan.With(s with { Belly = new Belly(s.Belly!.Length, s.Belly.Width, s.Belly.Immersion * f) }),
        };
        Same(typed, PlanSampler.For(plan).With(key, Spread.Uniform(0.5, 1.6)), [f], verdict: false);
        Assert.NotEqual(At(PlanSampler.For(plan), []).Demand + At(PlanSampler.For(plan), []).Sustained, At(PlanSampler.For(plan).With(key, Spread.Uniform(0.5, 1.6)), [f]).Demand + At(PlanSampler.For(plan).With(key, Spread.Uniform(0.5, 1.6)), [f]).Sustained);
    }

    [Fact]
    public void Sampled_gear_and_procedure_are_a_plan_with_that_gear()
    {
        var plan = PolderHarvester.Create();
        var line = plan.Rig.Line!;
        var softer = new ElasticLine(line.Length, line.SoftStiffness, line.StiffStiffness * 0.7, line.MassPerMetre, line.Source);
        var typed = plan.With(plan.Rig.Replace("recovery strap", ((Strap)plan.Rig.Parts[0]) with { Measured = softer })).With(PullProcedure.DrawnTautInGear(plan.Procedure.LockedGear!.Value * 1.4));
        Same(typed, PlanSampler.For(plan).With("line.stiffness", Spread.Uniform(0.1, 1.5)).With("line.gear-speed", Spread.Uniform(0.1, 1.5)), [0.7, 1.4]);
        var power = plan.With(plan.Tower with { EnginePower = Power.FromKilowatts(60) });
        Same(power.With(power.Tower with { EnginePower = Power.FromKilowatts(48) }), PlanSampler.For(power).With("tower.power", Spread.Uniform(0.1, 1.5)), [0.8]);
    }

    [Fact]
    public void Factors_of_method_and_model_multiply_what_they_belong_to()
    {
        var plan = PolderHarvester.Create();
        var sampler = PlanSampler.For(plan).With("demand.method", Spread.Uniform(0.1, 3)).With("tower.wheel-model", Spread.Uniform(0.1, 3));
        var o = At(sampler, [1.5, 0.9]);
        var a = plan.Assess();
        Assert.Equal(1.5 * a.Demand.Total.Central.Newtons, o.Demand, 1e-6);
        Assert.Equal(0.9 * a.Capability.TractionLimit.Newtons, o.Sustained, 1e-6);
        Assert.Equal(0.9 * a.Capability.Imposable.Newtons, o.Imposable, 1e-6);
    }

    [Fact]
    public void More_seal_roll_slope_or_adhesion_is_never_less_demand()
    {
        foreach (var key in new[] { "stuck.seal", "stuck.rolling", "stuck.exit-slope", "stuck.adhesion" })
        {
            var sampler = PlanSampler.For(PolderHarvester.Create()).With(key, Spread.Uniform(0.1, 3));
            double before = 0;
            foreach (var f in new[] { 0.2, 0.5, 1, 1.5, 1.9 })
            {
                var now = At(sampler, [f]).Demand;
                Assert.True(now >= before, key);
                before = now;
            }

            Assert.True(before > At(sampler, [0.2]).Demand, key);
        }
    }

    [Fact]
    public void A_million_samples_give_the_same_bytes_for_any_partition_in_any_order()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create());
        const int Samples = 1_000_000;
        var whole = sampler.RunPart(0, Samples, 42).ToBytes();
        Assert.Equal(whole, sampler.Run(Samples, 42).ToBytes());
        foreach (var parts in new[] { 2, 3, 16 })
        {
            var cut = Enumerable.Range(0, parts + 1).Select(i => (long)Samples * i / parts).ToArray();
            var order = Enumerable.Range(0, parts).OrderBy(i => Philox4x32.Uniform(1, i, parts)).ToArray();
            var pieces = order.AsParallel().Select(i => sampler.RunPart(cut[i], (int)(cut[i + 1] - cut[i]), 42)).ToArray();
            Assert.Equal(whole, pieces.Aggregate((a, b) => a.Merge(b)).ToBytes());
        }

        Assert.NotEqual(whole, sampler.Run(1000, 43).ToBytes());
    }

    [Fact]
    public void Samples_cost_no_memory()
    {
        var block = new BlockSampler(PlanSampler.WithDefaults(PolderHarvester.Create()), 1, PointSet.Random);
        block.Run(0, 4096, CancellationToken.None);
        var before = GC.GetAllocatedBytesForCurrentThread();
        block.Run(4096, 50_000, CancellationToken.None);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    /// <summary>Samples as they are drawn go through the vectors; the same numbers one by one go through the kernels of the assessment.</summary>
    [Fact]
    public void Drawn_samples_are_the_plan_at_their_numbers()
    {
        foreach (var plan in new[] { PolderHarvester.Create(), ReferencePlans.Gentle(), ReferencePlans.AsFound() })
        {
            var sampler = PlanSampler.WithDefaults(plan);
            BlockSampler drawn = new(sampler, 5, PointSet.Random), one = new(sampler, 5, PointSet.Random);
            var values = new double[sampler.Inputs.Count];
            for (var first = 0; first < 2048; first += BlockSampler.Block)
            {
                drawn.Draw(first, BlockSampler.Block);
                for (var s = 0; s < BlockSampler.Block; s++)
                {
                    for (var i = 0; i < values.Length; i++) values[i] = sampler.Inputs[i].Factor.FromNormal(NormalKernel.Inverse(Philox4x32.At(5, (ulong)(first + s), (uint)i, 0)));
                    drawn.Evaluate(s, out var o);
                    one.At(values, out var expected);
                    Close(expected.Demand, o.Demand);
                    Close(expected.Sustained, o.Sustained);
                    Close(expected.Imposable, o.Imposable);
                    Close(expected.Procedure, o.Procedure);
                    Close(expected.Nose, o.Nose);
                    Assert.Equal(expected.Verdict, o.Verdict);
                    Assert.Equal(expected.Parted, o.Parted);
                }
            }
        }
    }

    [Fact]
    public void Vectors_of_every_width_give_the_pulls_of_the_kernel()
    {
        foreach (var tower in new[] { PolderHarvester.Create().Tower, ReferencePlans.Tractor(18), ReferencePlans.Tractor(30, 2.9), ReferencePlans.Tractor(18) with { Grade = Grade.FromPercent(6) } })
        {
            var flat = CapabilityFlat.From(tower, 0);
            var index = Enumerable.Range(0, 64).Select(i => 20e3 * Math.Pow(1.12, i)).ToArray();
            foreach (var radial in new[] { false, true })
            {
                var constants = radial ? BrixiusConstants.Radial : BrixiusConstants.Bias;
                double[] loads = radial ? flat.LevelLoad : flat.Load;
                double grade = radial ? 0 : flat.GradeForce, limit = radial ? 1 : 0.3, residual = 0;
                var expected = index.Select(ci => CapabilityKernel.Greatest(flat, loads, grade, ci, limit, constants, out _, out _)).ToArray();
                var pull = new double[64];
                void Compare()
                {
                    Assert.True(residual < 1e-6);

                    // A small pull is a difference of forces as large as the weight, which carry its last digits.
                    for (var i = 0; i < pull.Length; i++) Assert.True(Math.Abs(pull[i] - expected[i]) <= Math.Max(1e-12 * expected[i], 1e-15 * flat.Weight), FormattableString.Invariant($"{index[i]}: {pull[i]} for {expected[i]}"));
                }

                CapabilityBatch.Greatest(flat, loads, grade, limit, constants, index, pull, ref residual);
                Compare();
#if NET
                CapabilityBatch.Run<Lanes512>(flat, loads, grade, limit, constants, index, pull, ref residual);
                Compare();
                CapabilityBatch.Run<Lanes256>(flat, loads, grade, limit, constants, index, pull, ref residual);
                Compare();
                CapabilityBatch.Run<Lanes128>(flat, loads, grade, limit, constants, index, pull, ref residual);
                Compare();
#endif
            }
        }
    }

    [Fact]
    public void Sobol_points_agree_with_random_ones()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create());
        var random = sampler.Run(1 << 17, 5);
        var sobol = sampler.Run(1 << 15, 5, PointSet.ScrambledSobol);
        Assert.Equal(random.NotEnough.Estimate, sobol.NotEnough.Estimate, 5 * sobol.NotEnough.StandardError);
        Assert.Equal(1, sobol.DemandNewtons.Mean / random.DemandNewtons.Mean, 0.01);
        Assert.Equal(sobol.ToBytes(), sampler.RunPart(0, 1 << 14, 5, PointSet.ScrambledSobol).Merge(sampler.RunPart(1 << 14, 1 << 14, 5, PointSet.ScrambledSobol)).ToBytes());
    }

    [Fact]
    public void Probabilities_follow_the_spreads()
    {
        var plan = PolderHarvester.Create();
        var a = plan.Assess();
        var ratio = a.Demand.Total.Central.Newtons / a.Capability.Sustained.Central.Newtons;

        // Only the method scatters: the sustained pull is not enough where the factor is above sustained over demand.
        var zeta = 0.5;
        var samples = PlanSampler.For(plan).With("demand.method", Spread.LognormalAround(1, zeta)).Run(200_000, 9);
        var expected = StandardNormal.Probability(Math.Log(ratio) / zeta);
        Assert.InRange(samples.NotEnough.Estimate, expected - (5 * samples.NotEnough.StandardError) - 1e-9, expected + (5 * samples.NotEnough.StandardError) + 1e-9);
        Assert.Equal(a.Demand.Total.Central.Newtons * Math.Exp(-1.645 * zeta), samples.DemandNewtons.Quantile(0.05), 0.02 * samples.DemandNewtons.Quantile(0.05));
        Assert.Equal(samples.Count, samples.Probability(Verdict.Stop).Hits + samples.Probability(Verdict.NeedsCompetentReview).Hits + samples.Probability(Verdict.NoObjectionFound).Hits);

        // Only the strength of the bridle scatters, about a peak that it cannot carry half of the time.
        var part = a.Rig!.Parts.Where(p => p.Part.Name == "bridle").Min(p => p.Reserve!.Value);
        var worn = PlanSampler.For(plan).With("rig.wear:bridle", Spread.LognormalAround(1 / part, 0.2)).Run(100_000, 9).Parts.Where(p => p.Name == "bridle").OrderByDescending(p => p.Breaks.Hits).First();
        Assert.Equal(0.5, worn.Breaks.Estimate, 5 * worn.Breaks.StandardError);
    }

    [Fact]
    public void It_says_itself_in_orders_of_magnitude_on_eighty_columns()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create());
        Assert.Equal(Standing.FromMemory, sampler.Standing);
        var report = sampler.Run(10_000, 1).ToReport();
        Assert.All(report.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("from memory", report, StringComparison.Ordinal);
        Assert.Contains("recovery strap, bight", report, StringComparison.Ordinal);
        Assert.DoesNotContain("0.", report, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_stopped_and_tells_how_far_it_is()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create());
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => sampler.Run(100_000, 1, cancellation: stop.Token));
        Assert.Throws<OperationCanceledException>(() => sampler.RunPart(0, 100_000, 1, cancellation: stop.Token));
        var told = new Told();
        sampler.Run(30_000, 1, progress: told);
        Assert.Equal(30_000, told.Most);
    }

    [Fact]
    public void A_part_of_unknown_strength_is_never_said_to_hold()
    {
        var plan = PolderHarvester.Create();
        var unknown = PlanSampler.WithDefaults(plan.With(plan.Rig.Replace("shackle", new Shackle("shackle", Rating.Unknown(Force.Zero), Mass.FromKilograms(8))))).Run(1000, 1);
        var part = unknown.Parts.First(p => p.Name == "shackle");
        Assert.Null(part.PeakUtilisation);
        Assert.Contains("below its floor strength not known", part.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("strength not known", unknown.ToReport().Split('\n').Single(l => l.Contains("shackle", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.All(unknown.ToReport().Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Equal(1000, unknown.Probability(Verdict.Stop).Hits);
    }

    [Fact]
    public void A_rig_of_more_places_than_can_be_told_apart_is_refused()
    {
        var plan = PolderHarvester.Create();
        var parts = plan.Rig.Parts.Concat(Enumerable.Range(0, 70).Select(i => new Shackle("shackle " + i, Rating.WorkingLoadLimitTonnes(12, 5), Mass.FromKilograms(8))));
        Assert.Contains("at most 64", Assert.Throws<ArgumentException>(() => PlanSampler.For(plan.With(new Rig(plan.Rig.Drawbar, parts, plan.Rig.Casualty)))).Message, StringComparison.Ordinal);
    }

    /// <summary>The spread of a cone index is made of a primary one and a reported one, so it is reported.</summary>
    [Fact]
    public void A_spread_made_of_two_is_as_weak_as_the_weaker()
    {
        var readings = PlanSampler.WithDefaults(PolderHarvester.Create()).Inputs.Where(i => i.Input.Key is "stuck.cone-index" or "tower.cone-index").ToList();
        Assert.Equal(2, readings.Count);
        Assert.All(readings, i => Assert.Equal(DefaultScatter.MechanicalCone.Source.Standing, i.Source.Standing));
        Assert.True(DefaultScatter.MechanicalCone.Source.Standing > DefaultScatter.ConeIndex.Source.Standing);
    }

    /// <summary>A correlation given before the last input is not lost: the samples are those of the matrix with a row of its own for it.</summary>
    [Fact]
    public void A_correlation_stays_when_an_input_is_added()
    {
        var two = PlanSampler.For(PolderHarvester.Create()).With("stuck.cone-index", Spread.LognormalAround(1, 0.3)).With("tower.cone-index", Spread.LognormalAround(1, 0.3));
        var spread = Spread.LognormalAround(1, 0.2);
        var kept = two.WithCorrelation(new GaussianCopula(new[,] { { 1, 0.6 }, { 0.6, 1 } })).With("tower.wheel-model", spread);
        var whole = two.With("tower.wheel-model", spread).WithCorrelation(new GaussianCopula(new[,] { { 1, 0.6, 0 }, { 0.6, 1, 0 }, { 0, 0, 1 } }));
        Assert.Equal(3, kept.Correlation!.Dimensions);
        Assert.Equal(whole.RunPart(0, 2000, 5).ToBytes(), kept.RunPart(0, 2000, 5).ToBytes());
        Assert.NotEqual(two.With("tower.wheel-model", spread).RunPart(0, 2000, 5).ToBytes(), kept.RunPart(0, 2000, 5).ToBytes());
    }

    [Fact]
    public void A_fault_on_one_of_many_threads_is_said_as_on_one() =>
        Assert.Equal("the host's own", Assert.Throws<InvalidOperationException>(() => PlanSampler.WithDefaults(PolderHarvester.Create()).Run(100_000, 1, progress: new Faulty())).Message);

    [Fact]
    public void Misuse_is_refused()
    {
        var sampler = PlanSampler.For(PolderHarvester.Create());
        Assert.Throws<ArgumentException>(() => sampler.With("stuck.colour", Spread.Fixed(1)));
        Assert.Throws<ArgumentException>(() => sampler.With("stuck.cone-index", Spread.Normal(1, 0.3)));
        Assert.Throws<ArgumentException>(() => sampler.Without("stuck.cone-index"));
        Assert.Throws<ArgumentOutOfRangeException>(() => sampler.Run(10, 1));
        Assert.Throws<ArgumentException>(() => sampler.Run(1000, 1, PointSet.ScrambledSobol));
        Assert.Throws<ArgumentOutOfRangeException>(() => sampler.Run(1000, 1, (PointSet)9));
        Assert.Throws<ArgumentOutOfRangeException>(() => sampler.RunPart(0, 1000, 1, (PointSet)9));
        Assert.Throws<ArgumentException>(() => sampler.WithCorrelation(new GaussianCopula(new double[,] { { 1 } })));
        Assert.Throws<ArgumentException>(() => sampler.RunPart(0, 10, 1).Merge(PlanSampler.For(PolderHarvester.Create()).RunPart(10, 10, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => sampler.RunPart(0, 10, 1).Probability((Verdict)7));
    }

    internal static PlanOutcome At(PlanSampler sampler, double[] values)
    {
        new BlockSampler(sampler, 0, PointSet.Random).At(values, out var o);
        return o;
    }

    [Fact]
    public void A_gear_that_is_not_claimed_is_sampled_as_it_is_assessed()
    {
        var plan = ReferencePlans.Gentle();
        var gear = new PullProcedure { LockedGear = Speed.FromKilometersPerHour(1), SecondPull = false };
        Same(plan.With(gear), PlanSampler.For(plan.With(gear)), []);
        var down = plan.With(plan.Tower with { Grade = Grade.FromPercent(-10) });
        Same(down, PlanSampler.For(down), []);
        var soft = plan.With(gear).With(plan.Rig.Replace("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(300), ReferenceMachines.M(25)) { MakersBightShare = ReferenceMachines.Frac(0.8) }));
        Assert.Equal(LineLoadRule.LockedGear, soft.Assess().Loads!.Rule);
        Same(soft, PlanSampler.For(soft), []);
    }

    internal static void Same(RecoveryPlan typed, PlanSampler sampler, double[] values, bool verdict = true)
    {
        var a = typed.Assess();
        var o = At(sampler, values);
        Close(a.Demand.Total.Central.Newtons, o.Demand);
        Close(a.Sustained.CentralNewtons, o.Sustained);
        Close(a.Imposable.Newtons, o.Imposable);
        Drives(typed.Stuck, o);
        if (!double.IsNaN(o.Procedure)) Close(a.Loads!.ProcedurePeak.Newtons, o.Procedure);
        Assert.Equal(a.Loads is null, double.IsNaN(o.Procedure));
        if (verdict) Assert.Equal(a.Verdict, o.Verdict);
        if (a.Rig is null) return;
        var block = new BlockSampler(sampler, 0, PointSet.Random);
        block.At(values, out _);
        for (var i = 0; i < typed.Rig.Parts.Count; i++)
        {
            var least = a.Rig.Parts.Where(p => p.Part == typed.Rig.Parts[i] && p.Reserve is not null).Select(p => p.Reserve!.Value).DefaultIfEmpty(double.NaN).Min();
            if (!double.IsNaN(least)) Close(least, block.LeastReserve(i));
        }
    }

    /// <summary>Own wheels as the typed self-recovery sets them against what holds the machine.</summary>
    internal static void Drives(StuckMachine stuck, in PlanOutcome o)
    {
        var self = SelfRecovery.Estimate(stuck);
        Assert.Equal(self.NetTraction is null, double.IsNaN(o.OwnNet));
        Assert.Equal(self.Holding is null, double.IsNaN(o.OwnHolding));
        if (self.NetTraction is not { } net || self.Holding is not { } hold) return;
        Close(net.CentralNewtons, o.OwnNet);
        Close(hold.CentralNewtons, o.OwnHolding);
    }

    internal static void Close(double expected, double actual) => Assert.True(Math.Abs(actual - expected) <= 1e-12 * Math.Abs(expected), FormattableString.Invariant($"{actual} for {expected}"));

    private sealed class Faulty : IProgress<long>
    {
        public void Report(long value) => throw new InvalidOperationException("the host's own");
    }

    private sealed class Told : IProgress<long>
    {
        private long _most;

        public long Most => _most;

        public void Report(long value)
        {
            lock (this) _most = Math.Max(_most, value);
        }
    }
}
