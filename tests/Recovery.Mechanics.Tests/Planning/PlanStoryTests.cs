using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>Whole plans, each a story with its verdict; together they raise every kind of finding.</summary>
public class PlanStoryTests
{
    /// <summary>Finding ids that a part of a room raises and no plan does, with the test that raises each.</summary>
    public static IReadOnlyDictionary<string, string> RaisedElsewhere { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["winch.fleet-angle"] = "WinchTests.Raises_fleet_angle_piling_and_too_few_wraps_and_none",
        ["winch.fleet-angle-small"] = "WinchTests.Raises_fleet_angle_piling_and_too_few_wraps_and_none",
        ["winch.few-wraps"] = "WinchTests.Raises_fleet_angle_piling_and_too_few_wraps_and_none",
        ["tackle.no-advantage"] = "TackleTests.An_effort_of_a_tenth_of_the_load_never_does",
        ["tackle.below-planning-high"] = "PullChoiceTests.Each_reason_stops_the_tackle",
        ["tackle.block-unknown"] = "PullChoiceTests.Each_reason_stops_the_tackle",
        ["tackle.block-weak"] = "PullChoiceTests.Each_reason_stops_the_tackle",
        ["tackle.no-anchor"] = "PullChoiceTests.Each_reason_stops_the_tackle",
        ["winch.not-held"] = "PullChoiceTests.Each_reason_stops_the_tackle",
        ["tackle.machine-hauls"] = "PullChoiceTests.Lists_what_can_and_what_cannot_and_why",
        ["anchor.too-weak"] = "AnchorTests.Check_takes_the_greater_load_and_says_what_is_short",
        ["anchor.within-ten-percent"] = "AnchorTests.Check_takes_the_greater_load_and_says_what_is_short",
        ["anchor.line-stronger"] = "AnchorTests.Check_takes_the_greater_load_and_says_what_is_short",
        ["anchor.pickets"] = "AnchorTests.Pickets_say_what_they_cannot_do",
        ["anchor.picket-soil-unknown"] = "AnchorTests.Pickets_say_what_they_cannot_do",
        ["anchor.deadman-shallow"] = "AnchorTests.Raises_each_objection_to_a_deadman_and_none",
        ["anchor.deadman-slender"] = "AnchorTests.Raises_each_objection_to_a_deadman_and_none",
        ["anchor.deadman-slope"] = "AnchorTests.Raises_each_objection_to_a_deadman_and_none",
        ["anchor.deadman-trench"] = "AnchorTests.Raises_each_objection_to_a_deadman_and_none",
        ["anchor.machine-not-braked"] = "AnchorTests.A_machine_that_can_roll_is_no_anchor",
        ["pull.team-not-together"] = "TeamTests.Raises_each_objection_and_none_beyond_it",
        ["pull.team-angle-wide"] = "TeamTests.Raises_each_objection_and_none_beyond_it",
        ["pull.team-front-point"] = "TeamTests.Raises_each_objection_and_none_beyond_it",
        ["pull.team-front-point-exceeded"] = "TeamTests.Raises_each_objection_and_none_beyond_it",
        ["pull.team-one-loses-grip"] = "TeamTests.Raises_each_objection_and_none_beyond_it",
        ["pull.team-off-direction"] = "TeamTests.Unequal_machines_and_what_an_equaliser_costs",
        ["pull.overturn"] = "SidePullTests.Overturning_and_off_centre_are_said",
        ["pull.off-centre"] = "SidePullTests.Overturning_and_off_centre_are_said",
        ["pull.drawbar-category"] = "ModelPullTests.Drawbar_category_and_vertical_rating",
        ["pull.drawbar-vertical"] = "ModelPullTests.Drawbar_category_and_vertical_rating",
        ["pull.track-no-support"] = "TrackedPullTests.Raises_no_support_light_ends_nose_and_rating",
        ["pull.track-end-light"] = "TrackedPullTests.Raises_no_support_light_ends_nose_and_rating",
        ["line.elastic-tail"] = "ElongationTests.An_elastic_tail_arms_a_low_stretch_part",
        ["line.peak-beyond-curve"] = "TakeUpTests.A_table_that_ends_before_the_energy_is_taken_up_gives_no_number",
        ["line.no-admissible-speed"] = "TakeUpTests.A_limit_below_twice_the_pull_admits_no_speed_and_says_so",
        ["line.second-pull"] = "TakeUpTests.The_line_loads_say_what_follows_from_them",
        ["line.damper-no-credit"] = "DamperAndTetherTests.A_damper_is_present_without_credit",
        ["line.tether-inadequate"] = "DamperAndTetherTests.Each_way_to_fail_is_said",
        ["tyre.inflation-limit-unknown"] = "TyreTests.Inflation_outside_the_makers_limits_is_a_finding",
        ["machine.wheel-lifts"] = "WheelLoadTests.A_wheel_that_lifts_is_a_finding_and_its_moment_goes_on",
        ["machine.tips"] = "WheelLoadTests.A_machine_tips_where_the_slope_outruns_its_track",
    };

    /// <summary>Every finding id with the plan that raises it.</summary>
    public static IReadOnlyDictionary<string, Func<RecoveryPlan>> Stories { get; } = new Dictionary<string, Func<RecoveryPlan>>(StringComparer.Ordinal)
    {
        ["ground.remoulding-capped"] = () => Stuck(s => s.WithSoil(s.Soil.WithRemouldingTest(new RemouldingTest(KPa(300), KPa(330))))),
        ["ground.remoulding-doubtful"] = () => Tower(ReferencePlans.Tractor(30) with { Soil = Soil.FromConeIndexOnly(KPa(1500)).WithRemouldingTest(new RemouldingTest(KPa(300), KPa(140), UscsClass.CH)) }),
        ["ground.remoulding-raised"] = () => Stuck(s => s.WithSoil(s.Soil.WithRemouldingTest(new RemouldingTest(KPa(300), KPa(10))))),
        ["mire.belly-drags"] = ReferencePlans.AsFound,
        ["mire.belly-uplift"] = () => Stuck(s => s.Without("beet") with { Soil = Soil.FromConeIndex(KPa(900), Frac(1)), Belly = new Belly(M(1), M(0.5), M(0.05)) }, z: 0.9),
        ["mire.floor-above-reading"] = () => Stuck(s => s with { Soil = Soil.FromConeIndex(KPa(60), Frac(0.5)) }),
        ["mire.floor-not-known"] = () => Stuck(s => s with { Belly = new Belly(M(15), M(5), M(1.5)) }),
        ["mire.methods-differ"] = () => ReferencePlans.AsFound().With(ReferenceMachines.StuckHarvester().Dug(Angle.FromDegrees(3)).Vented().DrivingItsWheels()),
        ["mire.model-out-of-range"] = ReferencePlans.AsFound,
        ["mire.index-capped"] = ReferencePlans.AsFound,
        ["wheel.deflection-held"] = () => Tyres(new Tyre(M(0.8), M(2.15), M(0.6), KPa(120), null, Frac(0.35))),
        ["mire.over-the-hub"] = () => Stuck(s => s, z: 1.1),
        ["mire.rolling-or-buried"] = () => Stuck(s => s, z: 0.2),
        ["mire.suspension-undeclared"] = () => ReferencePlans.AsFound().With(ReferenceMachines.StuckHarvester(Suspension.Undeclared)),
        ["tyre.inflation-below-limit"] = () => Tyres(new Tyre(M(0.6), M(1.6), M(0.42), KPa(90), KPa(120))),
        ["tyre.inflation-above-limit"] = () => Tyres(new Tyre(M(0.6), M(1.6), M(0.42), KPa(260)).WithHighestInflation(KPa(240))),
        ["tyre.lugs-backwards"] = () => Stuck(s => s.DrivingItsWheels()),
        ["pull.nose-lift"] = () => Tower(ReferencePlans.Tractor(30, 3.0)),
        ["pull.nose-light"] = () => Tower(ReferencePlans.Tractor(18) with { HardSurfaceInReach = true, Machine = new Machine("light-nosed tractor", ReferencePlans.Tractor(18).Machine.Axles, [new NamedLoad("tractor", Mass.FromTonnes(18), M(-2.1), M(1.0))]) }),
        ["pull.puller-may-bog"] = () => Tower(ReferencePlans.Tractor(18) with { Soil = Soil.FromConeIndex(KPa(90), Frac(0.6)) }),
        ["pull.will-not-move-it"] = ReferencePlans.AsFound,
        ["pull.undecided"] = () => Between(ReferencePlans.Gentle(), 0.92, 1.08),
        ["pull.power-limited"] = () => Tower(ReferencePlans.Tractor(30) with { PullSpeed = Speed.FromKilometersPerHour(15) }),
        ["pull.bands-overlap"] = () => Between(ReferencePlans.Gentle().With(ReferenceMachines.StuckHarvester().Without("beet").Dug(Angle.FromDegrees(9)).WithBellyFreed()), 1.15, 1.3),
        ["pull.hitch-rating-exceeded"] = () => Tower(ReferencePlans.Tractor(30) with { HitchRating = KN(100) }),
        ["line.run-up"] = () => ReferencePlans.Gentle().With(new PullProcedure { Slack = M(1), ApproachSpeed = Speed.FromKilometersPerHour(5) }),
        ["line.locked-gear-not-met"] = () => ReferencePlans.Gentle().With(ReferencePlans.Gentle().Procedure.WithGearConditions(LockedGearConditions.AllMet with { RimsCannotOverrun = false })),
        ["line.wet-as-dry"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("recovery strap", Strap("recovery strap").WithCondition(StrapCondition.Wet))),
        ["line.procedure-undeclared"] = () => ReferencePlans.Gentle().With(PullProcedure.Undeclared),
        ["line.fouls"] = () => ReferencePlans.AsFound(),
        ["line.fouls-in-climb"] = () => ReferencePlans.Gentle().With(ReferencePlans.Site() with { UnderMachine = new UnderMachineLine(M(8.5), M(4.9), M(0.5), M(0.45), [new UndersidePart("rear axle", M(6.8), M(0.60))]) }),
        ["line.meets-ground"] = () => ReferencePlans.Gentle().With(ReferencePlans.Site().WithGroundBetween(new GroundBetween([new GroundObstacle("bank", M(18), M(0.44)), new GroundObstacle("ditch edge", M(15), M(-0.3))], M(0.5), M(8)))),
        ["line.path-not-checked"] = () => ReferencePlans.Gentle().With(ReferencePlans.Site() with { UnderMachine = null }),
        ["plan.runs-away"] = () => Downhill(-40),
        ["plan.may-run-away"] = () => Downhill(-17),
        ["plan.line-inclined"] = () => ReferencePlans.Gentle().With(ReferencePlans.Site() with { LinePitch = Angle.FromDegrees(5) }),
        ["plan.line-sideways"] = () => ReferencePlans.Gentle().With(ReferencePlans.Site() with { LineYaw = Angle.FromDegrees(10) }),
        ["plan.within-ten-percent"] = () => Between(ReferencePlans.Gentle(), 1.12, 1.2),
        ["plan.tackle-short"] = () => ReferencePlans.AsFound().WithTackle(new LineTackle(2)),
        ["plan.tackle-anchor-unknown"] = () => ReferencePlans.Gentle().WithTackle(new LineTackle(2)),
        ["plan.tackle-anchor-gives"] = () => ReferencePlans.Gentle().WithTackle(new LineTackle(3) { AnchorHolds = KN(100) }),
        ["plan.tackle-blocks-unknown"] = () => ReferencePlans.Gentle().WithTackle(new LineTackle(2)),
        ["plan.tackle-blocks-exceeded"] = () => ReferencePlans.Gentle().WithTackle(new LineTackle(3) { BlockRating = KN(150) }),
        ["line.metal-joiner"] = () => Parts(p => [p[0], new Shackle("joiner", Rating.WorkingLoadLimitTonnes(55, 5), Mass.FromKilograms(30)), .. p.Skip(1)]),
        ["rig.rating-basis-unknown"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.Unknown(KN(600)), M(12)))),
        ["rig.breaking-strength-unknown"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("axle strap", new Strap("axle strap", Fibre.Polyester, Rating.WorkingLoadLimitTonnes(40), M(2)) { Choked = true })),
        ["rig.proof-load-only"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("axle strap", Strap("axle strap") with { Rating = Rating.ProofLoad(Marking.Tonnes(100)) })),
        ["rig.lashing-gear"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("axle strap", Strap("axle strap") with { Rating = Rating.LashingCapacity(Marking.Tonnes(150)) })),
        ["rig.damage"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("axle strap", Strap("axle strap") with { Condition = StrapCondition.Cut })),
        ["rig.strap-on-strap"] = () => Parts(p => [new Strap("extension", Fibre.Nylon, Rating.BreakingStrengthTonnes(300), M(5)), .. p]),
        ["rig.attachment-unidentified"] = () => Casualty(new AttachmentPoint("something under there", AttachmentKind.Unidentified, false)),
        ["rig.attachment-forbidden"] = () => Casualty(new AttachmentPoint("tow ball", AttachmentKind.TowBall, true)),
        ["rig.attachment-unapproved"] = () => Casualty(new AttachmentPoint("front axle", AttachmentKind.FrontAxle, false)),
        ["rig.attachment-no-number"] = () => Casualty(new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true)),
        ["rig.attachment-working-load"] = () => Casualty(new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true) { WorkingLoad = KN(50) }),
        ["rig.attachment-yield"] = () => Casualty(new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true) { Yield = KN(50) }),
        ["rig.below-floor"] = () => ReferencePlans.AsFound().With(ReferenceRigs.Worked(chokeKnown: false)),
        ["rig.rated-exceeded"] = ReferencePlans.AsFound,
        ["rig.partial-factors"] = ReferencePlans.AsFound,
        ["rig.shackle-rated"] = () => Shackle(new Shackle("shackle", Rating.WorkingLoadLimitTonnes(8), Mass.FromKilograms(5), KN(3000), KN(1100))),
        ["rig.shackle-peak"] = () => Shackle(new Shackle("shackle", Rating.WorkingLoadLimitTonnes(55), Mass.FromKilograms(5), KN(3000), KN(60))),
        ["rig.shackle-off-axis"] = () => Shackle(new Shackle("shackle", Rating.WorkingLoadLimitTonnes(55), Mass.FromKilograms(30), KN(3000), KN(1100)) { OffAxis = Angle.FromDegrees(100) }),
        ["rig.screw-pin"] = () => Shackle(new Shackle("shackle", Rating.WorkingLoadLimitTonnes(55), Mass.FromKilograms(30), KN(3000), KN(1100)) { Pin = ShacklePin.Screw }),
        ["rig.bight-no-evidence"] = ReferencePlans.AsFound,
        ["rig.bight-below"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("bridle", Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(35), M(20)), M(1.9)))),
        ["rig.careless-low"] = ReferencePlans.AsFound,
        ["rig.careless-holds"] = ReferencePlans.Gentle,
        ["rig.second-pull-low"] = ReferencePlans.AsFound,
        ["rig.within-ten-percent"] = NearFullFactors,
        ["rig.careless-parts"] = ReferencePlans.AsFound,
        ["rig.working-load-unknown"] = () => Shackle(new Shackle("shackle", Rating.BreakingStrengthTonnes(300), Mass.FromKilograms(30), KN(3000), KN(1100))),
        ["rig.steel-on-free-end"] = ReferencePlans.Gentle,
        ["rig.bridle-wide"] = () => Wide(2.8),
        ["rig.eye-opens-wide"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("bridle", ReferencePlans.StrongRig().Bridle!.WithEye(M(0.2), M(0.1)))),
        ["rig.bridle-wears"] = ReferencePlans.Gentle,
        ["rig.bridle-near-gate"] = () => Wide(2.8),
        ["rig.bridle-not-accepted"] = () => Wide(2.2),
        ["rig.bridle-accepted"] = () => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("bridle", Bridle.FreeRunning(ReferencePlans.StrongRig().Bridle!.Strap.WithLength(M(2.2)), M(1.9)).WithWideAngleAccepted(true))),
        ["rig.bridle-too-wide"] = () => Wide(1.95),
        ["rig.bridle-no-redundancy"] = ReferencePlans.Gentle,
        ["people.in-line"] = () => ReferencePlans.Gentle().With(ReferencePlans.Site() with { PeopleInLine = true }),
        ["people.not-declared"] = () => ReferencePlans.Gentle().With(ReferencePlans.Site() with { PeopleInLine = null }),
        ["people.cab-on-line"] = ReferencePlans.Gentle,
        ["plan.from-memory"] = ReferencePlans.Gentle,
        ["plan.check-left-out"] = () => ReferencePlans.Gentle().WithoutCheck("people"),
        ["plan.contradiction"] = () => ReferencePlans.Gentle().With(PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(1)) with { ApproachSpeed = Speed.FromKilometersPerHour(4) }),
    };

    public static TheoryData<string> Ids => [.. FindingCatalogue.All.Where(d => Stories.ContainsKey(d.Id)).Select(d => d.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_story_raises_its_finding_and_the_verdict_follows(string id)
    {
        var assessment = Stories[id]().Assess();
        var finding = assessment.Findings.FirstOrDefault(f => f.Id == id);
        Assert.True(finding is not null, id + " was not raised; raised: " + string.Join(", ", assessment.Findings.Select(f => f.Id).Distinct()));
        Assert.Equal(FindingCatalogue.All.Single(d => d.Id == id).Severity, finding.Severity);
        Assert.DoesNotContain("{", finding.Message + finding.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain("unknown", finding.Message.Replace("rating-basis-unknown", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(assessment.Findings.Max(f => f.Severity) switch { Severity.Stop => Verdict.Stop, Severity.Caution => Verdict.NeedsCompetentReview, _ => Verdict.NoObjectionFound }, assessment.Verdict);
        Assert.Equal(assessment.Findings.OrderByDescending(f => f.Severity).Select(f => f.Severity), assessment.Findings.Select(f => f.Severity));
    }

    [Fact]
    public void Every_kind_of_finding_that_a_plan_can_raise_has_a_story() => Assert.Empty(FindingCatalogue.All.Select(d => d.Id).Except(Stories.Keys, StringComparer.Ordinal).Except(RaisedElsewhere.Keys, StringComparer.Ordinal).Except(Rigging.GearStoryTests.Stories.Keys, StringComparer.Ordinal));

    [Fact]
    public void What_is_raised_elsewhere_names_a_test_that_is_there() => Assert.All(RaisedElsewhere.Values, name => Assert.Contains(typeof(PlanStoryTests).Assembly.GetTypes().SelectMany(t => t.GetMethods()), m => m.DeclaringType!.Name + "." + m.Name == name));

    [Fact]
    public void A_lightened_machine_a_strong_tractor_and_strong_gear_without_steel_meet_no_objection()
    {
        var assessment = ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("shackle", new SoftShackle("soft shackle", Rating.BreakingStrengthTonnes(300)))).Assess();
        Assert.True(assessment.Verdict == Verdict.NoObjectionFound, string.Join("\n", assessment.Findings.Where(f => f.Severity > Severity.Note)));
        Assert.Contains("That does not say that nothing can go wrong", assessment.ToReport().ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(4, assessment.Stages.Count);
        Assert.True(assessment.Stages.Zip(assessment.Stages.Skip(1), (a, b) => a.LineLoad < b.LineLoad && a.LeastStretch < a.GreatestStretch).All(x => x));
    }

    [Fact]
    public void The_typical_farm_rig_comes_out_as_review_once_the_demand_is_down()
    {
        // The worked rig with its attachments named, on a demand that its tractor moves: cautions with reasons, no unexplained stop.
        var plan = ReferencePlans.Gentle().With(ReferenceRigs.Worked()).With(ReferencePlans.Tractor(16)).With(PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(1)));
        var stops = plan.Assess().Findings.Where(f => f.Severity == Severity.Stop && f.Id.StartsWith("rig.", StringComparison.Ordinal)).ToList();
        Assert.Empty(stops);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(72)]
    [InlineData(100)]
    public void The_report_keeps_its_width_and_promises_nothing(int columns)
    {
        foreach (var plan in new[] { ReferencePlans.AsFound(), ReferencePlans.Gentle(), Stories["rig.rating-basis-unknown"]() })
        {
            var report = plan.Assess().ToReport(columns);
            Assert.All(report.Split('\n'), line => Assert.True(line.Length <= Math.Max(columns, 62), line));
            Assert.DoesNotMatch(@"(?i)\bsafe\b", report);
            Assert.DoesNotContain("NaN", report, StringComparison.Ordinal);
            Assert.DoesNotContain("Infinity", report, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("tr-TR")]
    public void Culture_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        var expected = All();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(expected, All());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static string All()
        {
            var a = ReferencePlans.AsFound().Assess();
            return a.ToReport() + a.Demand.Explain() + a.Capability.Explain() + a.Loads!.Explain() + a + a.Demand + a.Capability + a.Loads + a.Rig + a.Plan + string.Join(",", a.Demand.Terms) + string.Join(",", a.Measures) + string.Join(",", a.Findings) + string.Join(",", a.Rig!.Failures) + a.Fingerprint;
        }
    }

    [Fact]
    public void Equal_plans_have_equal_fingerprints_and_a_small_change_shows()
    {
        var print = ReferencePlans.AsFound().Assess().Fingerprint;
        Assert.Equal(print, ReferencePlans.AsFound().Assess().Fingerprint);
        Assert.NotEqual(print, ReferencePlans.AsFound().With(ReferenceMachines.StuckHarvester() with { Soil = Soil.FromConeIndex(KPa(350.0001), Frac(0.7)) }).Assess().Fingerprint);
        Assert.NotEqual(print, ReferencePlans.AsFound().With(ReferenceRigs.Worked(60.0001)).Assess().Fingerprint);
    }

    [Fact]
    public void Measures_are_ranked_and_the_best_set_is_the_best_of_all_sets()
    {
        var plan = ReferencePlans.AsFound();
        var worths = plan.Assess().Measures;
        Assert.Equal(worths.OrderByDescending(w => w.Central.Newtons).Select(w => w.Measure.Key), worths.Select(w => w.Measure.Key));
        Assert.Contains(worths, w => w.Measure.Key == "unload:beet" && Math.Abs(w.Central.Kilonewtons - 61.4) < 0.0501 && Math.Abs(w.Low.Kilonewtons - 54.8) < 0.0501 && Math.Abs(w.High.Kilonewtons - 21.0) < 0.0501);
        Assert.Contains(worths, w => w.Measure.Key == "drive" && Math.Abs(w.Central.Kilonewtons - 85.8) < 0.0501);
        var best = MeasureList.BestSet(plan, 3);
        double Of(IEnumerable<Measure> set) => PullDemand.Estimate(set.Aggregate(plan, (p, m) => m.ApplyTo(p)).Stuck).Total.CentralNewtons;
        var measures = MeasureList.For(plan);
        var least = double.PositiveInfinity;
        for (var mask = 0; mask < 1 << measures.Count; mask++)
        {
            if (System.Numerics.BitOperations.PopCount((uint)mask) <= 3) least = Math.Min(least, Of(measures.Where((_, i) => (mask & (1 << i)) != 0)));
        }

        Assert.Equal(least, Of(best), 1.0);
    }

    [Fact]
    public void A_host_adds_its_own_check()
    {
        var plan = ReferencePlans.Gentle().WithCheck(new NightCheck());
        Assert.Equal("host.night", plan.Assess().Findings[0].Id);
        Assert.Equal(Verdict.Stop, plan.Assess().Verdict);
    }

    [Fact]
    public void Bad_plans_are_refused_with_words()
    {
        var plan = ReferencePlans.AsFound();
        var unnamed = Assert.Throws<ArgumentNullException>(() => new RecoveryPlan(plan.Stuck, plan.Tower, plan.Rig, null!, plan.Procedure, plan.Site));
        Assert.Equal("policy", unnamed.ParamName);
        Assert.Contains("DesignFactorPolicy.SlowPull (5), European (7), Australian (8)", unnamed.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new RecoveryPlan(plan.Stuck, plan.Tower, plan.Rig, null!, plan.Procedure, plan.Site));
        Assert.Contains("has 3 axles and 1 values", Assert.Throws<ArgumentException>(() => new StuckMachine(plan.Stuck.Machine, plan.Stuck.Soil, [M(0.5)], PullDirection.Rearwards)).Message, StringComparison.Ordinal);
        Assert.Contains("path from drawbar to front axle", Assert.Throws<ArgumentException>(() => new Rig(plan.Rig.Drawbar, [plan.Rig.Parts[2]], plan.Rig.Casualty)).Message, StringComparison.Ordinal);
        Assert.Contains("no check named 'nothing'", Assert.Throws<ArgumentException>(() => plan.WithoutCheck("nothing")).Message, StringComparison.Ordinal);
        Assert.Contains("from 40 to 200", Assert.Throws<ArgumentOutOfRangeException>(() => plan.Assess().ToReport(20)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_machine_that_would_run_away_stops_the_plan_until_something_holds_it()
    {
        var plan = Downhill(-40);
        Assert.Contains(plan.Assess().Findings, f => f.Id == "plan.runs-away" && f.Severity == Severity.Stop);
        Assert.Contains(plan.With(plan.Site.WithFreedMachineHeld(true)).Assess().Findings, f => f.Id == "plan.runs-away" && f.Severity == Severity.Caution);
        Assert.DoesNotContain(Downhill(2).Assess().Findings, f => f.Id.EndsWith("run-away", StringComparison.Ordinal) || f.Id.EndsWith("runs-away", StringComparison.Ordinal));
        // W sin(theta) of 30 t on 40 %: 294.2 kN x 0.3714.
        var finding = plan.Assess().Findings.Single(f => f.Id == "plan.runs-away");
        Assert.Equal(plan.Stuck.Machine.Mass.Kilograms * 9.80665 * Math.Sin(Math.Atan(0.4)) / 1000, finding.Required!.Value, 1e-6);
    }

    [Fact]
    public void A_machine_that_its_own_mire_would_hold_may_still_roll_on_the_pullers_ground()
    {
        // On the slope between what holds on the mire and what holds on the puller's ground: a caution, not silence.
        var plan = Downhill(-8);
        var finding = plan.With(plan.Tower with { FirmestConeIndex = KPa(3000) }).Assess().Findings.SingleOrDefault(f => f.Id == "plan.may-run-away");
        Assert.NotNull(finding);
        Assert.True(finding.Required > finding.Available);
        Assert.DoesNotContain(Downhill(-1).Assess().Findings, f => f.Id == "plan.may-run-away");
    }

    [Fact]
    public void A_strap_from_the_front_axle_without_a_bridle_is_checked_under_the_machine_too()
    {
        var gentle = ReferencePlans.Gentle();
        var bare = gentle.With(new Rig(gentle.Rig.Drawbar, [gentle.Rig.Parts[0]], gentle.Rig.Casualty));
        Assert.Contains(bare.With(bare.Stuck with { Belly = new Belly(M(2), M(1), M(0.1)) }).With(bare.Site with { UnderMachine = null }).Assess().Findings, f => f.Id == "line.fouls" && f.Severity == Severity.Stop);
        var low = new UnderMachineLine(M(8.5), M(4.9), M(0.5), M(0.5), [new UndersidePart("rear axle", M(6.8), M(0.30))]);
        Assert.Equal(-0.21, Assert.Single(bare.With(bare.Site with { UnderMachine = low }).Assess().Clearances).Gap.Meters, 1e-9);
        Assert.Contains(bare.With(bare.Site with { UnderMachine = low }).Assess().Findings, f => f.Id == "line.fouls" && f.Subject.Contains("rear axle", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sideways_pull_shows_its_force_and_what_would_lift_one_side()
    {
        var a = ReferencePlans.Gentle().With(ReferencePlans.Site() with { LineYaw = Angle.FromDegrees(10) }).Assess();
        var finding = a.Findings.Single(f => f.Id == "plan.line-sideways");
        // Tension P/cos(10 deg), of it sin(10 deg) across: P tan(10 deg) = 0.17633 P. One side lifts at W B/(2 h): 294.2 x 2/(2 x 0.5).
        Assert.Equal(0.1763270 * a.Capability.Imposable.Kilonewtons, finding.Required!.Value, 1e-3);
        Assert.Equal(30 * 9.80665 * 2 / (2 * 0.5), finding.Available!.Value, 1e-6);
        Assert.DoesNotContain(ReferencePlans.Gentle().With(ReferencePlans.Site() with { LineYaw = Angle.FromDegrees(1.9) }).Assess().Findings, f => f.Id == "plan.line-sideways");
    }

    [Fact]
    public void Wet_nylon_that_nobody_measured_is_said_to_be_taken_as_stiff_as_dry()
    {
        var plan = Stories["line.wet-as-dry"]();
        Assert.Equal(1, plan.Assess().Findings.Count(f => f.Id == "line.wet-as-dry"));
        Assert.Equal(ReferencePlans.Gentle().Assess().Loads!.ProcedurePeak.Newtons, plan.Assess().Loads!.ProcedurePeak.Newtons, 1e-6);
        Strap[] silent = [Strap("recovery strap"), Strap("recovery strap").WithCondition(StrapCondition.Wet).WithMeasured(plan.Rig.Line), new Strap("recovery strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(300), M(15)) { Condition = StrapCondition.Wet }];
        Assert.All(silent, s => Assert.DoesNotContain(plan.With(plan.Rig.Replace("recovery strap", s)).Assess().Findings, f => f.Id == "line.wet-as-dry"));
    }

    [Fact]
    public void A_second_pull_on_polyester_is_harder_and_on_rope_of_hmpe_the_same()
    {
        // 120 t of polyester, 9 m: k 1046.043 kN/m; P + 0.55556 sqrt(2 x 1046.043 x 18) for 18 t. At 122.7 kN 198.932, then 230.509.
        var plan = ReferencePlans.AsFound();
        LineLoads On(Fibre fibre) => plan.With(plan.Rig.Replace("recovery strap", new Strap("recovery strap", fibre, Rating.BreakingStrengthTonnes(120), M(9)))).Assess().Loads!;
        var polyester = On(Fibre.Polyester);
        Assert.Equal(76.232199, (polyester.ProcedurePeak - polyester.Steady).Kilonewtons, 1e-5);
        Assert.Equal(107.808609, (polyester.SecondPull - polyester.Steady).Kilonewtons, 1e-5);
        Assert.Equal(On(Fibre.Hmpe).ProcedurePeak.Newtons, On(Fibre.Hmpe).SecondPull.Newtons, 1e-6);
        Assert.Equal("HMPE rope, EA/MBS 50 to 85, taken as bedded in", LineMaterial.HmpeRope.ToString());
        Assert.Equal("polyester webbing, EA/MBS 6 to 8", LineMaterial.PolyesterWebbing.ToString());
    }

    [Fact]
    public void A_gear_left_in_neutral_until_the_line_is_taut_is_a_run_up()
    {
        // 200 t of nylon, 9 m: k 1089.63 kN/m; 122.7 + sqrt(122.7^2 + 2 x 1089.63 x 122.7 x 1 + 1089.63 x 18 x 0.27778^2) = 655.58 at 122.7 kN and 18 t.
        var procedure = new PullProcedure { LockedGear = Speed.FromKilometersPerHour(1), Slack = M(1), GearConditions = LockedGearConditions.AllMet with { EngagedBeforeTaut = false } };
        var plan = ReferencePlans.AsFound().With(ReferenceRigs.Worked(200)).With(procedure);
        var a = plan.Assess();
        Assert.Contains(a.Findings, f => f.Id == "line.run-up" && f.Severity == Severity.Stop);
        Assert.Contains(a.Findings, f => f.Id == "line.locked-gear-not-met" && f.Message.Contains("not engaged", StringComparison.Ordinal));
        Assert.Equal(655.582, LineLoads.Evaluate(KN(122.7), Mass.FromTonnes(18), plan.Rig.Line!, procedure).ProcedurePeak.Kilonewtons, 0.0005);
    }

    [Fact]
    public void A_puller_that_may_stand_facing_downhill_gets_the_held_anchor()
    {
        var plan = ReferencePlans.Gentle();
        foreach (var tower in new[] { plan.Tower with { Grade = Grade.FromPercent(-10) }, plan.Tower with { DownhillInReach = Angle.FromDegrees(3) } })
        {
            var a = plan.With(tower).Assess();
            Assert.Contains(a.Findings, f => f.Id == "line.locked-gear-not-met");
            Assert.Null(a.Rig!.GearSpeedAtFloor());
            // 30 t, 300 t of nylon over 15 m: k 980.665 kN/m; 1 km/h.
            var p = a.Loads!.Steady.Kilonewtons;
            Assert.Equal(p + Math.Sqrt((p * p) + (980.665 * 30 / (3.6 * 3.6))), a.Loads.ProcedurePeak.Kilonewtons, 1e-6);
        }

        Assert.NotNull(plan.Assess().Rig!.GearSpeedAtFloor());
        Assert.DoesNotContain(plan.With(plan.Tower with { Grade = Grade.FromPercent(2) }).Assess().Findings, f => f.Id == "line.locked-gear-not-met");
    }

    [Fact]
    public void Everything_that_was_filled_in_is_listed_once()
    {
        var ids = ReferencePlans.AsFound().Assess().Assumptions.Select(x => x.Id).ToList();
        Assert.Equal(ids.Distinct(), ids);
        Assert.Contains("assume.puller-firmest-ground", ids);
        Assert.Contains("assume.puller-hitch-rating", ids);
        Assert.Contains("assume.line-straight", ids);
        Assert.Contains("assume.second-pull", ids);
        Assert.DoesNotContain("assume.puller-engine-power", ids);
    }

    [Fact]
    public void Precautions_come_in_the_order_of_the_work_and_only_where_the_plan_calls_for_them()
    {
        var keys = ReferencePlans.AsFound().Assess().Precautions.Select(p => p.Key).ToList();
        Assert.Equal(keys.Distinct(), keys);
        string[] order = ["manual", "command", "unload:beet", "dig-dangers", "dig", "belly", "stuck-machine", "between", "hitch", "axle-straps", "people", "line-taut", "creep", "runs-on", "afterwards"];
        Assert.Equal(order, keys.Where(order.Contains));
        // What the numbers count on keeps its precautions, with the dangers of digging before it.
        var counted = ReferencePlans.Gentle().Assess().Precautions;
        string[] taken = ["unload:beet", "dig-dangers", "dig", "dig-sides", "belly", "vent"];
        Assert.Equal(taken, counted.Select(p => p.Key).Where(taken.Contains));
        Assert.Equal("The numbers count on it.", counted.Single(p => p.Key == "unload:beet").Why);
        Assert.Contains("a ramp of 1:9.5", counted.Single(p => p.Key == "dig").Action, StringComparison.Ordinal);
        var shallow = new StuckMachine(ReferenceMachines.StuckHarvester().Machine, Soil.FromConeIndex(KPa(500), Frac(0.8)), [M(0.05), M(0.05), M(0.05)], PullDirection.Rearwards);
        var light = ReferencePlans.AsFound().With(shallow).Assess().Precautions.Select(p => p.Key).ToList();
        Assert.Empty(light.Intersect(["dig-dangers", "leaks", "dig", "belly", "vent", "stuck-downhill"]));
        Assert.Contains("stuck-downhill", Downhill(-5).Assess().Precautions.Select(p => p.Key));
    }

    [Fact]
    public void Stages_say_what_the_puller_does_when_to_stop_and_what_comes_after()
    {
        var a = ReferencePlans.Gentle().Assess();
        Assert.Contains("in the gear of 1 km/h", a.Stages[0].Action, StringComparison.Ordinal);
        Assert.All(a.Stages, s => Assert.Equal(s.LineLoad.Newtons / a.Sustained.HighNewtons, s.ShareOfPuller, 1e-9));
        Assert.Contains(a.StopCriteria, c => c.Key == "stop-stretch" && c.Action.Contains(a.Stages[3].LeastStretch.Meters.ToString("0.00", CultureInfo.InvariantCulture) + " m", StringComparison.Ordinal));
        // Nylon beds in to twice its stiffness: the same load at half the travel.
        Assert.All(a.Stages, s => Assert.Equal(s.LeastStretch.Meters / 2, s.SecondPullStretch.Meters, 1e-12));
        Assert.All(a.Stages, s => Assert.True(s.LineLoad.Newtons <= a.Sustained.HighNewtons * (1 + 1e-12)));
        Assert.Contains(a.AfterAStop, c => c.Key == "after-slack");
        Assert.Equal("after-slack", a.AfterAStop[0].Key);
        var rises = Stories["line.fouls-in-climb"]().Assess();
        Assert.Contains(rises.StopCriteria, c => c.Key == "stop-rise" && c.Why.Contains("rear axle", StringComparison.Ordinal));
        Assert.DoesNotContain(a.StopCriteria, c => c.Key == "stop-rise");
    }

    private static RecoveryPlan Stuck(Func<StuckMachine, StuckMachine> edit, double z = 0.5)
    {
        var s = ReferenceMachines.StuckHarvester();
        var deep = new StuckMachine(s.Machine, s.Soil, [M(z), M(z), M(z)], PullDirection.Rearwards) { Grade = s.Grade, Belly = s.Belly };
        return ReferencePlans.AsFound().With(edit(deep));
    }

    private static RecoveryPlan Downhill(double percent) => ReferencePlans.Gentle().With(ReferencePlans.Gentle().Stuck with { Grade = Grade.FromPercent(percent) });

    private static RecoveryPlan Tyres(Tyre tyre) => Tower(ReferencePlans.Tractor(18) with { Machine = ReferencePlans.Tractor(18).Machine.WithAxles(ReferencePlans.Tractor(18).Machine.Axles.Select(a => a.WithTyre(tyre))) });

    private static RecoveryPlan Tower(TowingMachine tower, RecoveryPlan? plan = null) => (plan ?? ReferencePlans.Gentle()).With(tower);

    private static RecoveryPlan Between(RecoveryPlan plan, double from, double to)
    {
        // The lightest tractor whose sustained pull over the central demand lies between two ratios.
        for (var tonnes = 3.0; tonnes < 90; tonnes += 0.5)
        {
            var candidate = plan.With(ReferencePlans.Tractor(tonnes));
            var assessment = candidate.Assess();
            var ratio = assessment.Capability.Sustained.CentralNewtons / assessment.Demand.Total.CentralNewtons;
            if (ratio > from && ratio < to) return candidate;
        }

        throw new InvalidOperationException("no tractor lies in between");
    }

    private static RecoveryPlan NearFullFactors()
    {
        // An axle strap that passes the full factors by a twentieth.
        var plan = ReferencePlans.Gentle();
        var needed = plan.Assess().Rig!.BreakingStrengthForFullFactors("axle strap")!.Value;
        return plan.With(plan.Rig.Replace("axle strap", new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrength(needed * 1.05), M(2)) { Choked = true, AngleOfChoke = Angle.FromDegrees(130) }));
    }

    private static Strap Strap(string name) => (Strap)ReferencePlans.StrongRig().Parts.Single(p => p.Name == name);

    private static RecoveryPlan Parts(Func<IReadOnlyList<RigPart>, IEnumerable<RigPart>> edit)
    {
        var rig = ReferencePlans.StrongRig();
        List<RigPart> parts = [.. edit(rig.Parts)];
        return ReferencePlans.Gentle().With(new Rig(rig.Drawbar, parts, rig.Casualty));
    }

    private static RecoveryPlan Casualty(AttachmentPoint point) => ReferencePlans.Gentle().With(new Rig(ReferencePlans.StrongRig().Drawbar, ReferencePlans.StrongRig().Parts, point));

    private static RecoveryPlan Shackle(Shackle shackle) => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("shackle", shackle));

    private static RecoveryPlan Wide(double length) => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace("bridle", Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(300), M(length)), M(1.9))));

    private sealed class NightCheck : IPlanCheck
    {
        private static readonly FindingDefinition Night = new("host.night", Severity.Stop, "It is dark at the {subject}.", "Wait for daylight.", new Source("host", "The host's own rule", Standing.UserSupplied));

        public string Name => "night";

        public void Inspect(PlanContext context, IList<Finding> findings) => findings.Add(Finding.Raise(Night, context.Plan.Stuck.Machine.Name));
    }
}
