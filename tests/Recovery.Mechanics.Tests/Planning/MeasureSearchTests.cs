using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

public class MeasureSearchTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Finds_what_brute_force_finds(int seed)
    {
        // Plans and offers drawn by a fixed sequence of their own.
        var plan = Random(seed);
        var offered = Offered(seed).Take(6).ToList();
        var search = MeasureSearch.Run(plan, offered);
        Assert.True(search.IsExhaustive);
        Assert.Equal(1 << offered.Count, search.SetsTried);
        var all = Enumerable.Range(0, 1 << offered.Count).Select(mask =>
        {
            var set = offered.Where((_, i) => (mask & (1 << i)) != 0).ToList();
            var a = set.Aggregate(plan, (p, m) => m.ApplyTo(p)).Assess();
            return (a.Verdict, Stops: a.Findings.Count(f => f.Severity == Severity.Stop), Undecided: a.Capability.Sustained.CentralNewtons < 1.1 * a.Demand.Total.CentralNewtons, set.Count, Cautions: a.Findings.Count(f => f.Severity == Severity.Caution), Margin: -a.Capability.Sustained.CentralNewtons / a.Demand.Total.CentralNewtons);
        }).ToList();
        var least = all.Min();
        Assert.Equal((least.Verdict, least.Stops, least.Undecided, least.Count, least.Cautions), (search.Best.Verdict, search.Best.Stops, search.Best.Margin < 1.1, search.Best.Measures.Count, search.Best.Cautions));
        Assert.Equal(-least.Margin, search.Best.Margin, 1e-9);
    }

    [Fact]
    public void No_set_of_the_front_is_beaten_by_another()
    {
        var front = MeasureSearch.Run(ReferencePlans.AsFound(), MeasureList.For(ReferencePlans.AsFound())).Pareto;
        Assert.NotEmpty(front);
        Assert.All(front.Zip(front.Skip(1)), pair => Assert.True(pair.Second.Measures.Count > pair.First.Measures.Count && pair.Second.Margin > pair.First.Margin));
    }

    [Fact]
    public void By_effort_the_cheaper_of_two_ways_wins()
    {
        var plan = ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("shackle", new SoftShackle("soft shackle", Rating.BreakingStrengthTonnes(300)))).With(ReferencePlans.Tractor(12));
        Measure heavy = RecoveryMeasures.OtherTower(ReferencePlans.Tractor(30)).WithEffort(new Effort(Duration.FromMinutes(10), 1));
        Measure ballast = RecoveryMeasures.Ballast(Mass.FromTonnes(16), M(-1.6), M(1)).WithEffort(new Effort(Duration.FromMinutes(90), 2));
        var search = MeasureSearch.Run(plan, [ballast, heavy], byEffort: true, CancellationToken.None);
        Assert.Equal([heavy.Key], search.Best.Measures.Select(m => m.Key));
        Assert.Equal(10, search.Best.PersonMinutes);
        Assert.Contains("has none", Assert.Throws<ArgumentException>(() => MeasureSearch.Run(plan, [RecoveryMeasures.Deflate()], byEffort: true, CancellationToken.None)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_that_overlap_are_explained()
    {
        // Digging takes the suction that venting would take as well.
        var plan = ReferencePlans.AsFound().With(ReferenceMachines.StuckHarvester() with { Belly = null });
        var effect = MeasureEffect.Of(plan, RecoveryMeasures.Vent());
        Assert.Equal(0, MeasureEffect.Of(RecoveryMeasures.Dig(Angle.FromDegrees(9)).ApplyTo(plan), RecoveryMeasures.Vent()).DemandSaved.Kilonewtons, 1e-9);
        Assert.True(effect.DemandSaved.Kilonewtons > 50);
        Assert.True(effect.MarginAfter > effect.MarginBefore);
    }

    [Fact]
    public void A_measure_that_does_not_fit_is_passed_over()
    {
        // The front cannot come off twice, and a strap that the rig does not have cannot be lengthened.
        var plan = ReferencePlans.AsFound();
        var again = RecoveryMeasures.UnloadPart("beet", Frac(0.5));
        var search = MeasureSearch.Run(plan, [RecoveryMeasures.Unload("beet"), again, RecoveryMeasures.LongerLine("no such strap", M(20)), RecoveryMeasures.Dig(Angle.FromDegrees(9))]);
        // Subsets of {unload, dig, part} without {unload before part}: 2 x 3.
        Assert.Equal(6, search.SetsTried);
        Assert.False(RecoveryMeasures.LongerLine("no such strap", M(20)).TryApplyTo(plan, out var same));
        Assert.Same(plan, same);
    }

    [Fact]
    public void Two_that_work_together_are_explained()
    {
        // Alone neither frees the machine of its suction: venting leaves the faces, digging the side walls; worked whole they differ from their sum.
        var plan = ReferencePlans.AsFound();
        var search = MeasureSearch.Run(plan, [RecoveryMeasures.Unload("beet"), RecoveryMeasures.Dig(Angle.FromDegrees(9)), RecoveryMeasures.Vent(), RecoveryMeasures.FreeBelly()]);
        foreach (var x in search.Interactions(0.01))
        {
            var both = x.Second.ApplyTo(x.First.ApplyTo(plan)).Assess().Demand.Total.CentralNewtons;
            Assert.Equal(plan.Assess().Demand.Total.CentralNewtons - both, x.Together.Newtons, 1e-6);
            Assert.Equal(x.Together.Newtons - x.FirstAlone.Newtons - x.SecondAlone.Newtons, x.Extra.Newtons, 1e-6);
            Assert.Contains(x.Extra.Newtons > 0 ? "more than their sum" : "they overlap", x.ToString(), StringComparison.Ordinal);
        }

        Assert.NotEmpty(search.Interactions(0.01));
    }

    [Fact]
    public void Many_measures_are_searched_greedily_and_said_to_be()
    {
        var plan = ReferencePlans.AsFound();
        var offered = Offered(1).ToList();
        foreach (var part in new[] { "recovery strap", "bridle", "shackle" })
        {
            offered.Add(RecoveryMeasures.ReplacePart(part, part switch
            {
                "recovery strap" => new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(90), M(12)),
                "bridle" => Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(90), M(18)), M(1.3)),
                _ => new Shackle("shackle", Rating.WorkingLoadLimitTonnes(25, 5), Mass.FromKilograms(15)),
            }));
        }

        var search = MeasureSearch.Run(plan, offered);
        Assert.False(search.IsExhaustive);
        // 13 measures: 4,096 sets have six or fewer, 7,099 more.
        Assert.Equal((13, 6), (offered.Count, search.AllTriedUpTo));
        var all = Enumerable.Range(0, 1 << offered.Count).Select(mask => offered.Where((_, i) => (mask & (1 << i)) != 0).ToList()).Select(set =>
        {
            var a = set.Aggregate(plan, (p, m) => m.ApplyTo(p)).Assess();
            return (a.Verdict, Stops: a.Findings.Count(f => f.Severity == Severity.Stop), Undecided: a.Capability.Sustained.CentralNewtons < 1.1 * a.Demand.Total.CentralNewtons, set.Count);
        }).ToList();
        var found = (search.Best.Verdict, search.Best.Stops, Undecided: search.Best.Margin < 1.1, search.Best.Measures.Count);
        Assert.DoesNotContain(all, set => set.Count <= 6 && set.CompareTo(found) < 0);
        Assert.Contains(found, all);
        Assert.Contains(search.Best.Measures.Count <= 6 ? "no smaller set does as much" : "has more than 6", search.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Sets_that_do_as_much_at_the_same_number_are_shown_beside_the_best(int seed)
    {
        var plan = Random(seed);
        var offered = Offered(seed).Take(7).ToList();
        var search = MeasureSearch.Run(plan, offered);
        var least = Enumerable.Range(0, 1 << offered.Count).Select(mask => offered.Where((_, i) => (mask & (1 << i)) != 0).ToList()).Select(set =>
        {
            var a = set.Aggregate(plan, (p, m) => m.ApplyTo(p)).Assess();
            return (Key: (a.Verdict, a.Findings.Count(f => f.Severity == Severity.Stop), a.Capability.Sustained.CentralNewtons < 1.1 * a.Demand.Total.CentralNewtons, set.Count), Set: string.Join("+", set.Select(m => m.Key)));
        }).GroupBy(x => x.Key).MinBy(g => g.Key)!;
        Assert.Equal(least.Select(x => x.Set).Order(StringComparer.Ordinal), search.Ties.Append(search.Best).Select(x => string.Join("+", x.Measures.Select(m => m.Key))).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_stronger_strap_does_nothing_alone_and_is_what_a_heavier_puller_cannot_do_without()
    {
        // The light tractor does not move it and does not trouble the strap either; the heavy one moves it and would bring the strap to its stop level.
        var weak = new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(70), M(15)) { MakersBightShare = Frac(0.8) };
        var plan = ReferencePlans.Gentle().With(ReferencePlans.Tractor(9)).With(ReferencePlans.StrongRig().Replace("recovery strap", weak));
        Measure heavier = RecoveryMeasures.OtherTower(ReferencePlans.Tractor(30)), stronger = RecoveryMeasures.ReplacePart("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(300), M(15)) { MakersBightShare = Frac(0.8) });
        var search = MeasureSearch.Run(plan, [stronger, RecoveryMeasures.Deflate(), heavier]);
        Assert.Equal([stronger.Key, heavier.Key], search.Best.Measures.Select(m => m.Key));
        Assert.Equal((Verdict.Stop, Verdict.NeedsCompetentReview), (search.Nothing.Verdict, search.Best.Verdict));
        var why = search.Contributions();
        Assert.True(why[0].DoesNothingAlone && why[0].IsNeeded);
        Assert.Contains("alone it does next to nothing; the set without it leaves 1 stop", why[0].ToString(), StringComparison.Ordinal);
        Assert.EndsWith("it counts once the others are done", why[0].ToString(), StringComparison.Ordinal);
        Assert.True(!why[1].DoesNothingAlone && why[1].IsNeeded);
        Assert.Equal(1, why[1].WithoutIt.Stops);
    }

    [Fact]
    public void Where_the_puller_sustains_nothing_a_measure_that_changes_nothing_is_said_to()
    {
        var nothing = new MeasureSet([], Verdict.Stop, 2, 0, 0, null);
        var why = new MeasureContribution(RecoveryMeasures.Vent(), nothing, nothing, nothing, nothing);
        Assert.True(why.DoesNothingAlone);
        Assert.False(why.IsNeeded);
    }

    [Fact]
    public void A_search_can_be_cancelled()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => MeasureSearch.Run(ReferencePlans.AsFound(), Offered(1), byEffort: false, source.Token));
    }

    [Fact]
    public void Firmer_ground_for_the_puller_raises_pull_and_gear_load_alike()
    {
        var effect = MeasureEffect.Of(ReferencePlans.AsFound(), RecoveryMeasures.MoveTower(Soil.FromConeIndex(KPa(2500), Frac(1))));
        Assert.True(effect.CapabilityGained.Newtons > 0 && effect.GearLoadAdded.Newtons > 0);
        Assert.True(effect.GearAfter < effect.GearBefore);
    }

    private static RecoveryPlan Random(int seed) => ReferencePlans.AsFound().With(ReferencePlans.Tractor(10 + (seed * 7 % 25))).With(ReferenceRigs.Worked(40 + (seed * 13 % 60), 30 + (seed * 17 % 60))).With(ReferenceMachines.StuckHarvester() with { Soil = Soil.FromConeIndex(KPa(150 + (seed * 97 % 400)), Frac(0.5 + (seed * 11 % 50 / 100.0))) });

    private static IEnumerable<Measure> Offered(int seed) =>
    [
        RecoveryMeasures.Unload("beet"), RecoveryMeasures.Dig(Angle.FromDegrees(4 + seed)), RecoveryMeasures.FreeBelly(), RecoveryMeasures.DriveOwnWheels(), RecoveryMeasures.OtherTower(ReferencePlans.Tractor(20 + (5 * seed))),
        RecoveryMeasures.ReplacePart("axle strap", new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(80), M(1.2)) { Choked = true, AngleOfChoke = Angle.FromDegrees(130) }), RecoveryMeasures.Vent(), RecoveryMeasures.Detach("front"), RecoveryMeasures.SlowerGear(Speed.FromKilometersPerHour(1)), RecoveryMeasures.LongerLine("recovery strap", M(18)),
    ];
}
