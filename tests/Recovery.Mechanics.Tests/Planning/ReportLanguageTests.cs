using System;
using System.Collections.Generic;
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

public class ReportLanguageTests
{
    /// <summary>No plan is known whose low comes out above its central; the words stand for the case that the kernel guards against.</summary>
    private const string NotSeen = "bound.takes-central";

    /// <summary>Words of machines that no story has, which <c>SelfPhraseTests</c> says of others, of a sweep over parts, which no plan makes, and of gear that passes by a hair, which the tests of the rig have.</summary>
    private static readonly string[] SaidOfOtherMachines = ["own.not-driven", "own.overlap", "own.axle-empty", "own.no-soil-holds", "own.no-axle", "own.load-on", "own.best-grip", "own.little-change", "own.end-of-fit", "own.none-locks", "own.sliding-less", "own.none-driven", "own.no-more-than-rolling", "line.the-after", "rig.at-peak", "rig.at-working-load", "rig.bight-near-gate"];

    /// <summary>A language in which every text is its own key, with its values.</summary>
    private static ReportLanguage Keys { get; } = new("keys", ReportLanguage.EnglishTexts.Select(t => new KeyValuePair<string, string>(t.Key, "[" + t.Key + "]" + string.Concat(Enumerable.Range(0, 9).Select(i => "{" + i + "}").Where(f => t.Value.Contains(f, StringComparison.Ordinal)))))
        .Concat(FindingCatalogue.All.Select(d => new KeyValuePair<string, string>("finding." + d.Id + ".message", "[" + d.Id + "]{subject}")))
        .Concat(FindingCatalogue.All.Select(d => new KeyValuePair<string, string>("finding." + d.Id + ".remedy", "[" + d.Id + "]"))));

    [Fact]
    public void Every_text_of_a_report_comes_from_the_language()
    {
        foreach (var plan in PlanStoryTests.Stories.Values.Select(s => s()))
        {
            var document = plan.Assess().ToDocument(DisplayUnits.Metric, Keys);
            Assert.All(document.Sections, s => Assert.StartsWith("[heading.", s.Heading, StringComparison.Ordinal));
            foreach (var section in document.Sections)
            {
                foreach (var block in section.Blocks)
                {
                    if (block.Kind != ReportBlockKind.Table) Assert.StartsWith("[", block.Text, StringComparison.Ordinal);
                    Assert.All(block.Header, h => Assert.StartsWith("[", h, StringComparison.Ordinal));
                }
            }
        }
    }

    [Fact]
    public void Every_key_is_used_by_some_report()
    {
        var plans = PlanStoryTests.Stories.Values.Select(s => s()).Concat(Others()).Concat(Composed()).ToList();
        var said = string.Concat(plans.SelectMany(p => new[] { DisplayUnits.Metric, DisplayUnits.Imperial }.Select(u => p.Assess().ToDocument(u, Keys).ToMarkdown())));
        var wording = new Wording(Display.Metric, Keys);
        said += string.Concat(HazardAreaList.Of(plans[0].Assess(), wording).Select(area => area.Centre));
        said += string.Concat(Measures().Select(m => wording.Title(m) + wording.Caution(m)));
        said += string.Concat(Records().Select(r => r.ToDocument(DisplayUnits.Metric, Keys).ToMarkdown()));
        Assert.Equal(string.Empty, string.Join(" ", ReportLanguage.EnglishTexts.Keys.Where(k => k != NotSeen && !SaidOfOtherMachines.Contains(k) && !said.Replace("\\_", "_", StringComparison.Ordinal).Contains("[" + k + "]", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_partial_translation_falls_back_to_english_and_lists_what_is_missing()
    {
        var own = new ReportLanguage("Nederlands", [new("heading.why", "Waarom"), new("gear.path", "Weg van de kracht: {0}.")]);
        var document = ReferencePlans.AsFound().Assess().ToDocument(DisplayUnits.Metric, own);
        Assert.Contains(document.Sections, s => s.Heading == "Waarom");
        Assert.Contains(document.Sections, s => s.Heading == "What it takes");
        Assert.Contains(document.Sections.SelectMany(s => s.Blocks), b => b.Text.StartsWith("Weg van de kracht: drawbar - ", StringComparison.Ordinal));
        Assert.Equal(ReportLanguage.EnglishTexts.Count - 2, own.Missing.Count);
        Assert.DoesNotContain("heading.why", own.Missing);
        Assert.Equal("Nederlands", own.ToString());
    }

    [Fact]
    public void A_translation_that_cannot_work_is_refused_with_words()
    {
        Assert.Contains("no text with the key 'heading.nothing'", Assert.Throws<ArgumentException>(() => new ReportLanguage("x", [new("heading.nothing", "y")])).Message, StringComparison.Ordinal);
        Assert.Contains("asks for {4}", Assert.Throws<ArgumentException>(() => new ReportLanguage("x", [new("gear.path", "{0} {4}")])).Message, StringComparison.Ordinal);
        Assert.Contains("given twice", Assert.Throws<ArgumentException>(() => new ReportLanguage("x", [new("gear.path", "a"), new("gear.path", "b")])).Message, StringComparison.Ordinal);
        Assert.Contains("no text with the key 'nothing'", Assert.Throws<ArgumentException>(() => ReportLanguage.English.Say("nothing")).Message, StringComparison.Ordinal);
    }

    /// <summary>A pull recorded by stage, by tape and by load cell, that met, passed and stayed below the estimate.</summary>
    private static IEnumerable<RecoveryRecord> Records()
    {
        var a = ReferencePlans.Gentle().Assess();
        var central = a.Demand.Total.Central;
        MeasuredPull[] pulls = [new(2), new MeasuredPull(3) { Stretch = M(0.2) }, new MeasuredPull(3) { LoadCell = central }, new MeasuredPull(3) { LoadCell = KN(900) }, new MeasuredPull(null) { LoadCell = central }, new MeasuredPull(null) { LoadCell = KN(2) }];
        RecoveryPlan[] arranged = [ReferencePlans.Gentle().WithAhead([new TeamMember(ArrangementTests.Second())]), ReferencePlans.Gentle().WithTackle(new LineTackle(2))];
        return pulls.Select(p => RecoveryRecord.From(a, p)).Concat(arranged.Select(p => RecoveryRecord.From(p.Assess(), new MeasuredPull(3) { LoadCell = central })));
    }

    /// <summary>Plans that say what no story says.</summary>
    private static IEnumerable<RecoveryPlan> Others()
    {
        var gentle = ReferencePlans.Gentle();
        var bare = ReferencePlans.Tractor(30) with { EnginePower = null };
        yield return gentle.With(gentle.Stuck.WithWheels(WheelMotion.Locked)).With(gentle.Site.WithMassOnLine(true)).With(bare);
        yield return gentle.With(gentle.Stuck.WithSoil(Soil.FromConeIndexOnly(KPa(400)))).With(ReferencePlans.Tractor(30) with { HitchRating = KN(60) });
        yield return gentle.With(Shallow(gentle.Stuck, driven: true)).With(ReferencePlans.Tractor(60));
        yield return gentle.With(Shallow(gentle.Stuck, driven: false).WithBelly(new Belly(M(3), M(1.6), M(0.05)))).With(ReferencePlans.Tractor(6) with { Soil = Soil.FromConeIndex(KPa(200), Frac(0.6)) });
        yield return ReferencePlans.AsFound().With(ReferencePlans.Tractor(2));
        yield return ReferencePlans.AsFound().With(PullProcedure.Undeclared);
        yield return gentle.With(gentle.Procedure.WithSecondPull(true));
        yield return gentle.With(gentle.Rig.Replace("shackle", new SoftShackle("soft shackle", Rating.BreakingStrengthTonnes(300))));
        yield return ReferencePlans.AsFound().With(ReferenceRigs.Worked(60, 60)).With(PullProcedure.Undeclared);
        yield return gentle.With(ReferenceMachines.StuckHarvester().Without("beet").Without("front").Deflated().Dug(Angle.FromDegrees(6)).WithBellyFreed().Vented().WithWheels(WheelMotion.Turning)).With(gentle.Site with { UnderMachine = new UnderMachineLine(M(8.5), M(4.9), M(0.4), M(0.3), [new UndersidePart("rear axle", M(6.8), M(0.2))]) });
        yield return gentle.With(Sprayer(0, 600));
        yield return gentle.With(Sprayer(-45, 300).Without("cargo"));
        yield return gentle.With(ReferencePlans.Tractor(30, 3.0)).With(gentle.Site.WithLineYaw(Angle.FromDegrees(45)));
        yield return gentle.With(gentle.Site.WithGroundBetween(new GroundBetween([new GroundObstacle("far kerb", M(200), M(0.3))], M(0.5), M(8))));
        yield return gentle.With(gentle.Site.WithGroundBetween(new GroundBetween([new GroundObstacle("bank", M(18), M(0.3))], M(0.5), M(8)))).WithTackle(new LineTackle(2));
        yield return GearBelowDemand(gentle);
        yield return DriveOnTheLimit();
        yield return gentle.With(new Rig(gentle.Rig.Drawbar, [new Strap("recovery strap", Fibre.Nylon, Rating.Unknown(KN(600)), M(12))], gentle.Rig.Casualty));
        yield return ReferencePlans.AsFound().With(ReferenceMachines.StuckHarvester().Dug(Angle.FromDegrees(1)).Vented().DrivingItsWheels() with { Grade = Grade.FromPercent(-60), Belly = null });
        yield return gentle.WithAhead([new TeamMember(ArrangementTests.Second())]);
        yield return gentle.With(PullProcedure.Undeclared.WithThrottleRise(Duration.FromSeconds(5)).WithSlack(Length.Zero));
        yield return gentle.With(new Rig(gentle.Rig.Drawbar, [gentle.Rig.Parts[0]], new AttachmentPoint("rear eye", AttachmentKind.RecoveryPoint, true)));
        yield return GearNeedsTests.EveryKind();
        yield return GearNeedsTests.ChainAlone();
    }

    /// <summary>Plans that raise what is composed of words: how a bound arises, why the methods differ, why a gear's rule is not claimed, what contradicts itself.</summary>
    private static IEnumerable<RecoveryPlan> Composed()
    {
        RecoveryPlan gentle = ReferencePlans.Gentle(), found = ReferencePlans.AsFound();
        var stuck = ReferenceMachines.StuckHarvester();
        yield return found.With(stuck.WithSoil(Soil.FromConeIndex(KPa(40), Frac(0.4))).WithBelly(null).WithWheels(WheelMotion.Locked));
        yield return found.With(stuck.Dug(Angle.FromDegrees(9)) with { ExitSlope = Angle.Zero });
        yield return found.With(stuck.WithSeal(Seal.PartVented) with { ExitSlope = Angle.Zero });
        yield return found.With(stuck.WithSoil(Soil.FromConeIndex(KPa(400), Frac(0.9)).WithWeakestReading(KPa(150))));
        foreach (var depth in new[] { 1.1, 1.9 })
            yield return found.With(new StuckMachine(stuck.Machine, Soil.FromConeIndex(KPa(90), Frac(0.5)), stuck.Machine.Axles.Select(_ => M(depth)), PullDirection.Rearwards).Without("beet").Vented().Dug(Angle.FromDegrees(2), sides: true).DrivingItsWheels() with { FenderHeight = M(1.5) });
        var gear = gentle.Procedure;
        yield return gentle.With(gear.WithGearConditions(new LockedGearConditions()));
        yield return gentle.With(gear.WithGearConditions(new LockedGearConditions { EngagedBeforeTaut = true, RimsCannotOverrun = true, LevelOrUphill = true, ClutchEasedOrLineDrawnTaut = true }));
        yield return gentle.With(ReferencePlans.Tractor(30) with { Grade = Grade.FromPercent(-4) });
        yield return gentle.With(gentle.Rig.Replace("recovery strap", new Strap("recovery strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(300), M(10)))).With(new PullProcedure { LockedGear = Speed.FromKilometersPerHour(1) });
        var light = Tyre(0.4, 1.2, 0.4, 0.2);
        yield return found.With(new StuckMachine(new Machine("light", [new Axle("front", M(0), 2, light, false, M(2)), new Axle("rear", M(-4), 2, light, false, M(2))], [new NamedLoad("body", Mass.FromTonnes(10), M(-2), M(1))]), Soil.FromConeIndex(KPa(950), Frac(0.6)), [M(0.4), M(0.3)], PullDirection.Rearwards) { Belly = new Belly(M(3.5), M(1.5), M(0.4)) });
        yield return Near(PlanningPhrases.Nose, h => gentle.With(ReferencePlans.Tractor(30, h)), 0.3, 0.01);
        yield return Near(PlanningPhrases.Hitch, r => gentle.With(ReferencePlans.Tractor(30) with { HitchRating = KN(r) }), 100, 2);
        yield return found.With(found.Site.WithUnderMachine(null));
        foreach (var unswept in GroundBetweenTests.Unswept()) yield return unswept;
        yield return found.With(found.Site.WithUnderMachine(new UnderMachineLine(M(8.5), M(4.9), M(0.4), M(0.3), [new UndersidePart("rear axle", M(6.8), M(1.2))])).WithLinePitch(Angle.FromDegrees(-4)));
        yield return found.With(new StuckMachine(stuck.Machine, stuck.Soil, stuck.Sinkage, PullDirection.Forwards)).With(found.Site.WithLineYaw(Angle.FromDegrees(8))).With(found.Rig.Replace("bridle", found.Rig.Bridle!.WithLean(Angle.FromDegrees(2))));
    }

    /// <summary>The first plan along one number that says these words.</summary>
    private static RecoveryPlan Near(PhraseTemplate words, Func<double, RecoveryPlan> plan, double from, double step)
    {
        for (var i = 0; i < 400; i++)
        {
            var tried = plan(from + (i * step));
            if (tried.Assess().Findings.Any(f => f.Id == PlanningFindings.NearLimit.Id && f.Subject == words.With("tractor").ToString())) return tried;
        }

        throw new InvalidOperationException("never near");
    }

    /// <summary>A tractor and a strap with which the plan does not stop, yet the gear admits less than the central demand.</summary>
    private static RecoveryPlan GearBelowDemand(RecoveryPlan plan)
    {
        for (var tonnes = 5; tonnes < 40; tonnes++)
        {
            for (var strength = 20; strength < 120; strength += 2)
            {
                var candidate = plan.With(ReferencePlans.Tractor(tonnes)).With(plan.Rig.Replace("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(strength), M(15)) { MakersBightShare = Frac(0.8) }));
                var a = candidate.Assess();
                if (a.Verdict != Verdict.Stop && a.Stages.Count > 0 && a.Stages[^1].LineLoad.Newtons < Math.Min(a.Demand.Total.CentralNewtons, a.Loads!.Steady.Newtons)) return candidate;
            }
        }

        throw new InvalidOperationException("no such gear");
    }

    /// <summary>Driven on some axles, on the grade on which it just needs the weight of what could be taken off there.</summary>
    private static RecoveryPlan DriveOnTheLimit()
    {
        for (var driven = 1; driven < 7; driven++)
        {
            for (var percent = 1.0; percent < 45; percent += 0.25)
            {
                var s = ReferenceMachines.StuckHarvester();
                var stuck = new StuckMachine(s.Machine.WithAxles(s.Machine.Axles.Select((a, i) => a.WithDriven((driven & (1 << i)) != 0))), s.Soil, s.Sinkage, PullDirection.Rearwards) { Grade = Grade.FromPercent(percent) };
                var self = SelfRecovery.Estimate(stuck);
                if (self.CriticalConeIndex is not null && self.Steps().Any(x => x.CriticalConeIndex is null)) return ReferencePlans.AsFound().With(stuck);
            }
        }

        throw new InvalidOperationException("no such grade");
    }

    /// <summary>Its wheels roll: full it stays and unloaded it moves itself on the level; unloaded it moves itself down a slope and stays up it.</summary>
    private static StuckMachine Sprayer(double percent, double coneIndex)
    {
        var tyre = ReferenceMachines.Tyre(0.8, 2.0, 0.5, 0.2);
        return new StuckMachine(
            new Machine("sprayer", [new Axle("front", M(0), 2, tyre, true, M(2)), new Axle("rear", M(-4), 2, tyre, true, M(2))], [new NamedLoad("body", Mass.FromTonnes(16.3), M(-2), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(16.3), M(-2), M(1.5), LoadKind.Payload)]),
            Soil.FromConeIndex(KPa(coneIndex), Frac(1)),
            [M(0.1), M(0.1)],
            PullDirection.Rearwards)
        { Grade = Grade.FromPercent(percent), EntryGrade = Grade.FromPercent(5) };
    }

    private static StuckMachine Shallow(StuckMachine stuck, bool driven) => new(stuck.Machine.WithAxles(stuck.Machine.Axles.Select(a => a.WithDriven(driven))), stuck.Soil, stuck.Machine.Axles.Select(_ => M(0.05)), PullDirection.Rearwards);

    private static IEnumerable<Measure> Measures() =>
    [
        RecoveryMeasures.Unload("beet"), RecoveryMeasures.UnloadPart("beet", Frac(0.5)), RecoveryMeasures.Detach("front"), RecoveryMeasures.Deflate(), RecoveryMeasures.DeflateTo(KPa(120)), RecoveryMeasures.Dig(Angle.FromDegrees(9)), RecoveryMeasures.Dig(Angle.FromDegrees(9), sides: true), RecoveryMeasures.Vent(),
        RecoveryMeasures.FreeBelly(), RecoveryMeasures.DriveOwnWheels(), RecoveryMeasures.MoveTower(Soil.FromConeIndex(KPa(2000), Frac(1))), RecoveryMeasures.Ballast(Mass.FromTonnes(2), M(-1), M(1)), RecoveryMeasures.OtherTower(ReferencePlans.Tractor(20)),
        RecoveryMeasures.ReplacePart("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(90), M(12))), RecoveryMeasures.LongerLine("recovery strap", M(18)), RecoveryMeasures.SlowerGear(Speed.FromKilometersPerHour(1)),
        RecoveryMeasures.WaitForDrierSoil(Soil.FromConeIndex(KPa(700), Frac(0.8))), RecoveryMeasures.OtherDirection(new AttachmentPoint("rear frame point", AttachmentKind.RecoveryPoint, true), ReferencePlans.Tractor(20)),
        RecoveryMeasures.SecondMachine(new TeamMember(ArrangementTests.Second())), RecoveryMeasures.WithTackle(new LineTackle(2), new AttachmentPoint("moving block", AttachmentKind.RecoveryPoint, true)),
    ];
}
