using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>A second machine and a tackle in a plan: what comes to the line, what the gear then sees.</summary>
public class ArrangementTests
{
    [Theory]
    [InlineData(2, 1.8181818)]
    [InlineData(3, 2.5)]
    [InlineData(4, 3.0769231)]
    public void A_tackle_multiplies_the_sustained_pull_less_a_tenth_for_each_sheave_and_the_gear_load_in_full(int parts, double advantage)
    {
        // n/(1 + 0.1 (n - 1)), TB 9-2350-292-10.
        RecoveryPlan plain = ReferencePlans.AsFound(), plan = plain.WithTackle(new LineTackle(parts));
        Assessment before = plain.Assess(), after = plan.Assess();
        Assert.Equal(advantage, after.Sustained.CentralNewtons / before.Sustained.CentralNewtons, 1e-7);
        Assert.Equal(parts, after.Imposable.Newtons / before.Imposable.Newtons, 1e-9);
        Assert.Equal(parts, after.Loads!.Steady.Newtons / before.Loads!.Steady.Newtons, 1e-9);
        var anchor = after.Findings.Single(f => f.Id == "plan.tackle-anchor-unknown");
        Assert.Equal((parts - 1) * before.Imposable.Kilonewtons, anchor.Required!.Value, 1e-6);
    }

    [Fact]
    public void In_a_locked_gear_a_tackle_adds_no_more_to_the_steady_load_than_the_plain_line_does()
    {
        // v/n on a mass of n^2 m: v/n sqrt(k n^2 m) = v sqrt(k m).
        RecoveryPlan plain = ReferencePlans.AsFound();
        LineLoads before = plain.Assess().Loads!, after = plain.WithTackle(new LineTackle(3)).Assess().Loads!;
        Assert.Equal(LineLoadRule.LockedGear, before.Rule);
        Assert.Equal(LineLoadRule.LockedGear, after.Rule);
        Assert.Equal(before.Output.Procedure - before.Output.Steady, after.Output.Procedure - after.Output.Steady, 1e-3);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.59)]
    [InlineData(0.6)]
    public void A_crawling_gear_may_pull_through_any_tackle(double kilometresPerHour)
    {
        // Six parts make 0.5 km/h less than the slowest gear of a machine that is accepted: the line's speed is not the gear's.
        RecoveryPlan plain = ReferencePlans.AsFound().With(PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(kilometresPerHour)));
        LineLoads before = plain.Assess().Loads!, after = plain.WithTackle(new LineTackle(6)).Assess().Loads!;
        Assert.Equal(LineLoadRule.LockedGear, after.Rule);
        Assert.Equal(before.Output.Procedure - before.Output.Steady, after.Output.Procedure - after.Output.Steady, 1e-3);
        Assert.Throws<ArgumentOutOfRangeException>(() => PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(0.09)));
    }

    [Fact]
    public void Slack_is_the_lines_own_and_a_tackle_does_not_shorten_it()
    {
        // Held anchor, nothing declared: P n + sqrt((P n)^2 + 2 k P n s + k (n^2 m) (v/n)^2), s 0.5 m whole, v 5 km/h of the puller.
        var plan = ReferencePlans.AsFound().With(PullProcedure.Undeclared).WithTackle(new LineTackle(3));
        var loads = plan.Assess().Loads!;
        double p = loads.Output.Steady, k = loads.Input.Stiff, m = plan.Tower.Machine.Mass.Kilograms, v = 5 / 3.6;
        Assert.Equal(p + Math.Sqrt((p * p) + (2 * k * p * 0.5) + (k * m * v * v)), loads.Output.Careless, 1e-3);
    }

    [Fact]
    public void Through_a_tackle_the_puller_comes_its_parts_times_the_stretch_from_its_peg()
    {
        var plan = ReferencePlans.Gentle().WithTackle(new LineTackle(3) { AnchorHolds = KN(5000), BlockRating = KN(5000) });
        var a = plan.Assess();
        Assert.NotEmpty(a.Stages);
        Assert.All(a.Stages, s => Assert.Equal(3 * s.LeastStretch.Meters, s.LeastTravel.Meters, 1e-12));
        Assert.Contains(a.StopCriteria, c => c.Key == "stop-stretch" && c.Action.Contains((Math.Floor(100 * a.Stages[3].LeastTravel.Meters) / 100).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) + " m", StringComparison.Ordinal));
    }

    [Fact]
    public void An_edited_plan_is_the_same_as_one_made_anew()
    {
        var plan = ReferencePlans.AsFound();
        RecoveryPlan[] edited = [plan.With(plan.Stuck.Without("beet")), plan.With(ReferencePlans.Tractor(25)), plan.With(ReferencePlans.StrongRig()), plan.With(plan.Site with { LinePitch = Angle.FromDegrees(4), LineYaw = Angle.FromDegrees(3) }), plan.With(PullProcedure.Undeclared)];
        foreach (var e in edited)
        {
            var anew = new RecoveryPlan(e.Stuck, e.Tower, e.Rig, e.Policy, e.Procedure, e.Site);
            Assert.Equal(anew.Assess().Fingerprint, e.Assess().Fingerprint);
            Assert.Equal(anew.Assess().ToReport(), e.Assess().ToReport());
        }
    }

    [Fact]
    public void An_edit_keeps_what_was_assumed_and_a_straightened_line_straightens_the_bridle()
    {
        var demo = Recovery.Mechanics.Scenarios.PolderHarvester.Create();
        Assert.Equal(demo.Assess().Assumptions.Select(x => x.Id), demo.With(demo.Stuck).With(demo.Tower).Assess().Assumptions.Select(x => x.Id));
        var plan = ReferencePlans.AsFound();
        var bent = plan.With(plan.Site with { LineYaw = Angle.FromDegrees(10) });
        Assert.DoesNotContain(bent.With(plan.Site).Assess().Findings, f => f.Id == "plan.contradiction");
        Assert.Equal(plan.Assess().Rig!.CasualtyLoad.InwardProcedure.Newtons, bent.With(plan.Site).Assess().Rig!.CasualtyLoad.InwardProcedure.Newtons, 1e-6);
        // A puller without a remoulding index of its own follows the stuck machine's soil also after an edit.
        var drier = demo.With(demo.Stuck.WithSoil(Soil.FromConeIndex(KPa(350), Frac(0.5))));
        Assert.Equal(new RecoveryPlan(drier.Stuck, TractorOfDemo(), demo.Rig, demo.Policy, demo.Procedure, demo.Site).Assess().Sustained.CentralNewtons, drier.Assess().Sustained.CentralNewtons, 1e-6);

        TowingMachine TractorOfDemo() => demo.Tower with { Soil = Soil.FromConeIndexOnly(KPa(1000)).WithWeakestReading(KPa(850)) };
    }

    [Fact]
    public void The_nose_of_a_team_is_looked_at_up_to_the_peak_of_the_line()
    {
        var team = TeamPull.Estimate(TowingTeam.InLine([new TeamMember(Second()), new TeamMember(ReferencePlans.Tractor(18, 1.3))]));
        double Worst(double peak) => team.FindingsAt(peak).Where(f => f.Id is "pull.nose-lift" or "pull.nose-light").Select(f => f.Required ?? 0).DefaultIfEmpty(0).Max();
        Assert.True(Worst(2) > Worst(1));
    }

    [Fact]
    public void A_second_machine_adds_its_pull_and_loads_the_gear_with_both()
    {
        var plain = ReferencePlans.AsFound();
        var plan = RecoveryMeasures.SecondMachine(new TeamMember(Second())).ApplyTo(plain);
        Assessment before = plain.Assess(), after = plan.Assess();
        var own = PullCapability.Estimate(Second());
        // In line the hitch of the last carries the sum; being drawn loads its front, so it pulls a little more than alone (its own statics).
        Assert.InRange(after.Sustained.CentralNewtons, before.Sustained.CentralNewtons + own.Sustained.CentralNewtons - 1, 1.1 * (before.Sustained.CentralNewtons + own.Sustained.CentralNewtons));
        Assert.Equal(TeamPull.Estimate(TowingTeam.InLine([new TeamMember(Second()), new TeamMember(plan.Tower)])).Imposable.Newtons, after.Imposable.Newtons, 1e-6);
        Assert.True(after.Loads!.Output.Procedure > before.Loads!.Output.Procedure);
        Assert.True(after.Rig!.Weakest!.Reserve < before.Rig!.Weakest!.Reserve);
        Assert.Contains(after.Findings, f => f.Id == "pull.team-one-loses-grip" && f.Subject == "second tractor");
        Assert.Contains(after.Precautions, p => p.Key == "team");
        Assert.NotEqual(before.Fingerprint, after.Fingerprint);
        Assert.Contains("second tractor", after.ToReport(), StringComparison.Ordinal);
    }

    [Fact]
    public void At_the_hitch_of_the_puller_a_tackle_divides_the_peak_of_the_line()
    {
        var through = ReferencePlans.Gentle().WithTackle(new LineTackle(3) { AnchorHolds = KN(5000), BlockRating = KN(5000) }).Assess();
        Assert.Equal(through.Loads!.Output.Procedure / 3, StandardChecks.AtHitch(through.Loads, through.Available), 1e-6);
        Assert.DoesNotContain(through.Findings, f => f.Id is "plan.tackle-anchor-unknown" or "plan.tackle-blocks-unknown" or "plan.tackle-anchor-gives" or "plan.tackle-blocks-exceeded");
    }

    [Theory]
    [InlineData(199.9, true)]
    [InlineData(200.1, false)]
    public void The_anchor_is_held_against_all_parts_but_one(double shareOfPull, bool gives)
    {
        var plan = ReferencePlans.Gentle();
        var anchor = Force.FromNewtons(plan.Assess().Imposable.Newtons * shareOfPull / 100);
        Assert.Equal(gives, plan.WithTackle(new LineTackle(3) { AnchorHolds = anchor }).Assess().Findings.Any(f => f.Id == "plan.tackle-anchor-gives"));
    }

    [Fact]
    public void A_search_over_machine_tackle_and_digging_is_worked_whole()
    {
        var plan = ReferencePlans.AsFound();
        var search = MeasureSearch.Run(plan, [RecoveryMeasures.SecondMachine(new TeamMember(Second())), RecoveryMeasures.Dig(Angle.FromDegrees(9)), RecoveryMeasures.WithTackle(new LineTackle(2), new AttachmentPoint("moving block", AttachmentKind.RecoveryPoint, true)), RecoveryMeasures.Unload("beet")]);
        Assert.Equal(16, search.SetsTried);
        Assert.True(search.Best.Margin > search.Nothing.Margin);
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("parts must be from 2 to 6", Assert.Throws<ArgumentOutOfRangeException>(() => new LineTackle(1)).Message, StringComparison.Ordinal);
        Assert.Contains("AnchorHolds must be from 1 to 10000 kN", Assert.Throws<ArgumentOutOfRangeException>(() => new LineTackle(2) { AnchorHolds = KN(0) }).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => ReferencePlans.Gentle().WithAhead([new TeamMember(ReferencePlans.Gentle().Tower)]));
    }

    internal static TowingMachine Second()
    {
        var tractor = ReferencePlans.Tractor(14);
        return tractor with { Machine = new Machine("second tractor", tractor.Machine.Axles, tractor.Machine.Loads) };
    }
}
