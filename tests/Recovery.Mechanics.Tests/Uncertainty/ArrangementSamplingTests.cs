using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Tests.Planning;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Machines ahead and a tackle, sampled: the compiled plan against the assessed one, and what a sample costs.</summary>
public class ArrangementSamplingTests
{
    /// <summary>Arrangements by name, put on a plan.</summary>
    private static readonly Dictionary<string, Func<RecoveryPlan, RecoveryPlan>> Arrangements = new(StringComparer.Ordinal)
    {
        ["tackle"] = static p => p.WithTackle(new LineTackle(2)),
        ["tackle with what holds it"] = static p => p.WithTackle(new LineTackle(4) { AnchorHolds = KN(600), BlockRating = KN(900) }),
        ["tackle that all hold"] = static p => p.WithTackle(new LineTackle(3) { AnchorHolds = KN(5000), BlockRating = KN(5000) }),
        ["second machine"] = static p => p.WithAhead([new TeamMember(ArrangementTests.Second())]),
        ["second machine by a rated front"] = static p => p.WithAhead([new TeamMember(ArrangementTests.Second())], new TeamMember(p.Tower) { FrontRating = KN(2000), FrontHeight = M(0.9) }),
        ["second machine by a weak front"] = static p => p.WithAhead([new TeamMember(ArrangementTests.Second())], new TeamMember(p.Tower) { FrontRating = KN(6) }),
        ["two more, a tackle, one on soft tyres uphill"] = static p => p.WithAhead([new TeamMember(OnSoftTyres()) { FrontRating = KN(300) }, new TeamMember(ArrangementTests.Second() with { Grade = Grade.FromPercent(5), EnginePower = Power.FromKilowatts(60), HitchRating = KN(90), HardSurfaceInReach = true }) { FrontHeight = M(0.5) }]).WithTackle(new LineTackle(2) { AnchorHolds = KN(300) }),
    };

    public static TheoryData<string> Names => [.. Arrangements.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void With_nothing_scattering_it_is_the_assessment(string name)
    {
        foreach (var story in PlanStoryTests.Stories.Values)
        {
            var told = story();
            if (told.Tackle is not null || told.Ahead.Count > 0) continue;
            var plan = Arrangements[name](told);
            PlanSamplerTests.Same(plan, PlanSampler.For(plan), []);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void On_drawn_soils_and_powers_it_is_the_plan_typed_so(string name)
    {
        foreach (var plain in new[] { PolderHarvester.Create(), ReferencePlans.Gentle(), ReferencePlans.AsFound() })
        {
            var plan = Arrangements[name](plain.With(plain.Tower with { EnginePower = Power.FromKilowatts(90), FirmestConeIndex = KPa(2500) }));
            var sampler = PlanSampler.For(plan).With("stuck.cone-index", Spread.Uniform(0.1, 3)).With("tower.cone-index", Spread.Uniform(0.1, 3)).With("tower.firmest-cone-index", Spread.Uniform(0.1, 3)).With("tower.power", Spread.Uniform(0.1, 3));
            for (var i = 0; i < 20; i++)
            {
                var f = Enumerable.Range(0, 4).Select(k => 0.3 + (2 * Philox4x32.Uniform(7, i, k))).ToArray();
                var typed = plan.With(plan.Stuck with { Soil = Soil.FromConeIndex(plan.Stuck.Soil.ConeIndex * f[0], plan.Stuck.Soil.RemouldingIndex) })
                    .With(plan.Tower with { Soil = Soil.FromConeIndex(plan.Tower.Soil.ConeIndex * f[1], plan.Tower.Soil.RemouldingIndex), FirmestConeIndex = plan.Tower.FirmestConeIndex * f[2], EnginePower = Power.FromWatts((double)plan.Tower.EnginePower!.Value.Watts * f[3]) });

                // The bounds that a tackle is sized on are those of the plan as it stands.
                PlanSamplerTests.Same(typed, sampler, f, verdict: plan.Tackle is null);
            }
        }
    }

    [Fact]
    public void The_verdict_follows_the_anchor_the_blocks_the_front_point_and_the_nose()
    {
        var plain = ReferencePlans.Gentle();
        var half = plain.With(plain.Tower with { Soil = Soil.FromConeIndex(plain.Tower.Soil.ConeIndex * 0.45, plain.Tower.Soil.RemouldingIndex) }).Assess().Imposable;
        var through = plain.WithTackle(new LineTackle(3) { AnchorHolds = half * 2, BlockRating = KN(5000) });
        var blocks = plain.WithTackle(new LineTackle(3) { AnchorHolds = KN(5000), BlockRating = half * 3 });
        var front = Arrangements["second machine by a rated front"](plain);
        front = front.WithAhead(front.Ahead, new TeamMember(front.Tower) { FrontRating = KN(110) });
        foreach (var (plan, id) in new[] { (through, "plan.tackle-anchor-gives"), (blocks, "plan.tackle-blocks-exceeded"), (front, "pull.team-front-point-exceeded") })
        {
            var seen = new HashSet<bool>();
            foreach (var f in new[] { 0.15, 0.3, 0.6, 1, 1.5, 3 })
            {
                var soil = Soil.FromConeIndex(plan.Tower.Soil.ConeIndex * f, plan.Tower.Soil.RemouldingIndex);
                var typed = plan.With(plan.Tower with { Soil = soil });
                PlanSamplerTests.Same(typed, PlanSampler.For(plan).With("tower.cone-index", Spread.Uniform(0.1, 5)), [f]);
                seen.Add(typed.Assess().Findings.Any(x => x.Id == id));
            }

            // The point on the front of the tower carries what pulls ahead of it, whatever the tower stands on.
            if (plan.Ahead.Count == 0) Assert.Equal(2, seen.Count);
        }

        Assert.Contains(front.Assess().Findings, f => f.Id == "pull.team-front-point-exceeded");
        Assert.Equal(Verdict.Stop, PlanSamplerTests.At(PlanSampler.For(front), []).Verdict);
    }

    [Fact]
    public void The_wheel_model_is_a_factor_on_what_each_machine_adds()
    {
        var plan = Arrangements["second machine"](ReferencePlans.AsFound());
        var sampler = PlanSampler.For(plan).With("tower.wheel-model", Spread.Uniform(0.1, 3));
        var team = plan.Assess().Team!;
        double ahead = team.LineForces[0].Newtons, both = team.LineForces[1].Newtons, none = PlanSamplerTests.At(sampler, [1]).Sustained;
        Assert.Equal(both, none, 1e-6);

        // A little less lead takes a little off the wheels of the last: its own share moves with it.
        var less = PlanSamplerTests.At(sampler, [0.9]).Sustained;
        Assert.InRange(less, 0.895 * both, 0.9 * both + 1);
        Assert.True(ahead > 0 && less < none);
    }

    /// <summary>Ground on which the towing machine is only dragged, and a wheel model that pulls more than its best estimate: a line carries nothing then, never a push, and no nose is without a number.</summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.03)]
    [InlineData(0.035)]
    public void A_machine_that_is_dragged_pushes_nothing_into_the_line(double f)
    {
        var plan = Arrangements["second machine"](ReferencePlans.Gentle());
        plan = plan.With(plan.Tower with { FirmestConeIndex = null, HardSurfaceInReach = false });
        var sampler = PlanSampler.For(plan).With("tower.cone-index", Spread.Uniform(0.01, 3)).With("tower.wheel-model", Spread.Uniform(0.1, 9));
        foreach (var model in new[] { 1.0, 2, 3, 6 })
        {
            var o = PlanSamplerTests.At(sampler, [f, model]);
            Assert.True(o.AtHitch >= 0 && o.Sustained >= 0 && o.Procedure >= 0, FormattableString.Invariant($"{model}: {o.AtHitch}"));
            Assert.InRange(o.Nose, 0, 10);
        }

        var typed = plan.With(plan.Tower with { Soil = Soil.FromConeIndex(plan.Tower.Soil.ConeIndex * f, plan.Tower.Soil.RemouldingIndex) });
        PlanSamplerTests.Same(typed, sampler, [f, 1]);
        Assert.All(typed.Assess().Findings, x => Assert.False(x.Required is { } required && double.IsInfinity(required), x.Id));
    }

    /// <summary>Three axles of one name: each is an input of its own, by its number from the front.</summary>
    [Fact]
    public void Axles_of_one_name_scatter_each_by_itself()
    {
        var plan = PolderHarvester.Create();
        Machine Same(Machine m) => m.WithAxles(m.Axles.Select(a => new Axle("axle", a.Position, a.Tyres, a.Tyre, a.Driven, a.TrackWidth)));
        plan = plan.With(plan.Stuck.WithMachines(Same(plan.Stuck.Machine), Same(plan.Stuck.AsFound)));
        var way = plan.Site.UnderMachine!;
        plan = plan.With(plan.Site with { UnderMachine = new UnderMachineLine(way.TailBehindAxle, way.Wheelbase, way.AnchorHeight, way.ApexHeight, way.Parts.Select(x => new UndersidePart("part", x.BehindAxle, x.Height))) { BellyEndBehindAxle = way.BellyEndBehindAxle } });
        var keys = PlanInputList.For(plan).Select(i => i.Key).ToList();
        Assert.Equal(keys.Count, keys.Distinct().Count());
        var demands = Enumerable.Range(1, 3).Select(i => PlanSamplerTests.At(PlanSampler.For(plan).With("stuck.sinkage:axle " + i, Spread.Uniform(0.5, 1.5)), [1.2]).Demand).ToList();
        Assert.Equal(3, demands.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Samples_cost_no_memory(string name)
    {
        var block = new BlockSampler(PlanSampler.WithDefaults(Arrangements[name](ReferencePlans.AsFound())), 1, PointSet.Random);
        block.Run(0, 2048, CancellationToken.None);
        var before = GC.GetAllocatedBytesForCurrentThread();
        block.Run(2048, 4096, CancellationToken.None);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    [Fact]
    public void The_defaults_scatter_the_ground_under_every_machine_in_line()
    {
        var plan = Arrangements["two more, a tackle, one on soft tyres uphill"](ReferencePlans.AsFound());
        var inputs = PlanSampler.WithDefaults(plan).Inputs;
        Assert.Equal(["ahead.cone-index:third tractor", "ahead.remoulding-index:third tractor", "ahead.cone-index:second tractor", "ahead.remoulding-index:second tractor"], inputs.Select(i => i.Input.Key).Where(k => k.StartsWith("ahead.", StringComparison.Ordinal)));

        // Behind what a plan of one machine has, so that its dimensions stay where they were.
        Assert.Equal(PlanSampler.WithDefaults(ReferencePlans.AsFound()).Inputs.Select(i => i.Input.Key), inputs.Select(i => i.Input.Key).Take(inputs.Count - 4));
    }

    [Fact]
    public void Any_partition_gives_the_same_bytes()
    {
        var sampler = PlanSampler.WithDefaults(Arrangements["two more, a tackle, one on soft tyres uphill"](PolderHarvester.Create()));
        var whole = sampler.RunPart(0, 3000, 42).ToBytes();
        Assert.Equal(whole, sampler.Run(3000, 42).ToBytes());
        Assert.Equal(whole, sampler.RunPart(1001, 1999, 42).Merge(sampler.RunPart(0, 1001, 42)).ToBytes());
    }

    [Fact]
    public void What_a_second_machine_and_a_tackle_do_to_the_odds_is_sampled_on_common_numbers()
    {
        var sampler = PlanSampler.WithDefaults(ReferencePlans.AsFound());
        var second = MeasureSamples.Of(sampler, [RecoveryMeasures.SecondMachine(new TeamMember(ArrangementTests.Second()))], 4000, 3);
        Assert.True(second.Effect > 0 && second.Harmed.Hits == 0, second.ToString());
        var tackle = MeasureSamples.Of(sampler, [RecoveryMeasures.WithTackle(new LineTackle(3), new AttachmentPoint("moving block", AttachmentKind.RecoveryPoint, true))], 4000, 3);
        Assert.True(tackle.Effect > second.Effect && tackle.Harmed.Hits == 0, tackle.ToString());
    }

    [Fact]
    public void A_mass_scatters_under_a_team_and_a_tackle_too()
    {
        var plan = Arrangements["two more, a tackle, one on soft tyres uphill"](PolderHarvester.Create());
        var typed = plan.With(plan.Tower with { Machine = new Machine(plan.Tower.Machine.Name, plan.Tower.Machine.Axles, plan.Tower.Machine.Loads.Select(l => new NamedLoad(l.Name, l.Mass * 1.2, l.Position, l.Height, l.Kind)), plan.Tower.Machine.Suspension) });
        PlanSamplerTests.Same(typed, PlanSampler.For(plan).With("tower.load:tractor and ballast", Spread.Uniform(0.5, 1.5)), [1.2]);
    }

    /// <summary>Tyres that deflect beyond the fit of the wheel model: what they sustain is held back, what they can impose is not.</summary>
    private static TowingMachine OnSoftTyres()
    {
        var second = ArrangementTests.Second();
        var soft = second with { Machine = new Machine("third tractor", second.Machine.Axles.Select(a => a with { Tyre = a.Tyre.AtInflation(KPa(40)) }), second.Machine.Loads) };
        Assert.True(CapabilityFlat.From(soft, 0).GreatestDeflection > 0.3, "the tyres are meant to be beyond the fit");
        return soft;
    }
}
