using System;
using System.Linq;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

public class ReportTests
{
    [Fact]
    public void The_structured_report_has_its_sections_in_order_of_reading()
    {
        var document = ReferencePlans.AsFound().Assess().ToDocument(DisplayUnits.Metric);
        Assert.Equal(["verdict", "why", "words", "demand", "self-recovery", "capability", "gear", "failures", "needs", "measures", "clearance", "stages", "keep-clear", "before", "to-measure", "about"], document.Sections.Select(s => s.Key));
        Assert.All(document.Sections, s => Assert.NotEmpty(s.Blocks));
        Assert.All(document.Sections.SelectMany(s => s.Blocks).Where(b => b.Kind == ReportBlockKind.Table), t => Assert.All(t.Rows, r => Assert.Equal(t.Header.Count, r.Count)));
    }

    [Fact]
    public void The_clearance_table_shows_gap_and_rise_of_every_low_part()
    {
        // Leg 10 + 1 m on 1.9 m: eye sqrt(11^2 - 0.95^2 - 0.1^2) = 10.95844 m behind the axle. Leg height at 6.8 m: 0.4 - 0.1 x 6.8/10.95844 = 0.337947 m; gap to 0.60 m less half of 0.02 m: 0.252053 m.
        // Rise with the drawbar 15 m behind the eye: 0.252053/(6.8 (1/4.9 - 1/25.95844)) = 0.223888 m.
        var plan = PlanStoryTests.Stories["line.fouls-in-climb"]();
        plan = plan.With(plan.Site with { UnderMachine = new Recovery.Mechanics.Lines.UnderMachineLine(M(8.5), M(4.9), M(0.4), M(0.3), [new Recovery.Mechanics.Lines.UndersidePart("rear axle", M(6.8), M(0.60))]) });
        var clearance = Assert.Single(plan.Assess().Clearances);
        Assert.Equal(0.252053, clearance.Gap.Meters, 2e-6);
        Assert.Equal(0.223888, clearance.RiseAtContact!.Value.Meters, 2e-6);
        var table = plan.Assess().ToDocument(DisplayUnits.Metric).Sections.Single(x => x.Key == "clearance").Blocks[0];
        Assert.Equal(["rear axle", "0.25 m", "0.22 m"], table.Rows.Single());
    }

    [Fact]
    public void Imperial_numbers_are_the_same_in_other_units()
    {
        var a = ReferencePlans.AsFound().Assess();
        var text = a.ToDocument(DisplayUnits.Imperial).ToText(72);
        // 364.7 kN central is 82.0 kip, 52 t is 110,000 lb to two digits.
        Assert.Contains("82.0", text, StringComparison.Ordinal);
        Assert.Contains("114640 lb", text, StringComparison.Ordinal);
        // A tag of gear says kN in any country.
        Assert.DoesNotContain(" kN", text.Replace("17 kN/m3", string.Empty, StringComparison.Ordinal).Replace("in t, kg or kN;", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain(" km/h", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" m/s", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Markdown_has_headings_tables_and_escapes()
    {
        var markdown = ReferencePlans.AsFound().Assess().ToDocument(DisplayUnits.Metric).ToMarkdown();
        Assert.StartsWith("# Stop\n\n", markdown, StringComparison.Ordinal);
        Assert.Contains("\n## What it takes\n\n", markdown, StringComparison.Ordinal);
        Assert.Contains("| kN along the ground; read down | low | central | high |\n|---|---:|---:|---:|\n", markdown, StringComparison.Ordinal);
        Assert.Contains("- **STOP** ", markdown, StringComparison.Ordinal);
        Assert.Contains("  - what would change it: ", markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void The_whole_takes_the_weakest_standing_of_what_went_in()
    {
        var a = ReferencePlans.AsFound().Assess();
        Assert.Equal(Standing.FromMemory, a.Standing);
        Assert.Contains(a.Sources, s => s.Key == "brixius-1987");
        Assert.Contains(a.Sources, s => s.Key == "0027-nd-partial-factors");
        Assert.All(a.Sources, s => Assert.Contains(s, SourceCatalogue.All));
        Assert.Equal(a.Sources.Count, a.Sources.Distinct().Count());
    }

    [Fact]
    public void A_measured_pull_gives_a_resistance_with_its_band()
    {
        var a = ReferencePlans.Gentle().Assess();
        var cell = RecoveryRecord.From(a, new MeasuredPull(3) { LoadCell = KN(50) });
        Assert.Equal([47.5, 50, 52.5], new[] { cell.Resistance.Low, cell.Resistance.Central, cell.Resistance.High }.Select(f => Math.Round(f.Kilonewtons, 6)));
        Assert.Equal(50 / a.Demand.Total.Central.Kilonewtons, cell.OverEstimate, 1e-9);
        var tape = RecoveryRecord.From(a, new MeasuredPull(null) { Stretch = M(0.2) });
        Assert.True(tape.IsLowerBound);
        // EA/MBS 2 to 5: the stiff end is two and a half times the soft one.
        Assert.Equal(2.5, tape.Resistance.HighNewtons / tape.Resistance.LowNewtons, 1e-9);
        var stage = RecoveryRecord.From(a, new MeasuredPull(2));
        Assert.Equal(a.Stages[0].LineLoad.Newtons, stage.Resistance.LowNewtons, 1e-6);
        Assert.Equal(a.Stages[1].LineLoad.Newtons, stage.Resistance.HighNewtons, 1e-6);
        Assert.Contains("input " + a.Fingerprint, stage.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    // Stage that moved it (0: none), load cell kN, and what is said of the estimate of the gentle plan.
    [InlineData(3, 83, "The bands meet")]
    [InlineData(3, 900, "The bands do not meet")]
    [InlineData(0, 83, "did not move it: it holds more")]
    [InlineData(0, 2, "it says only that more is needed")]
    [InlineData(0, 900, "The bands do not meet")]
    public void A_record_can_be_filed(int stage, double cell, string says)
    {
        var a = ReferencePlans.Gentle().Assess();
        Assert.True(a.Demand.Total.Low.Kilonewtons is > 3 && a.Demand.Total.High.Kilonewtons < 800);
        var document = RecoveryRecord.From(a, new MeasuredPull(stage == 0 ? null : stage) { LoadCell = KN(cell), Stretch = M(0.4) }).ToDocument(DisplayUnits.Metric);
        Assert.Equal(["planned", "measured", "resistance", "about"], document.Sections.Select(s => s.Key));
        var text = document.ToText(60);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 60, line));
        var plain = string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(says, plain, StringComparison.Ordinal);
        Assert.Contains(stage == 0 ? "It did not move." : "It began to move in stage 3.", plain, StringComparison.Ordinal);
        Assert.Contains(stage == 0 ? "it held at least" : "worked back", plain, StringComparison.Ordinal);
        Assert.Contains("stretch of the line: 0.40 m", plain, StringComparison.Ordinal);
        Assert.Contains(a.Fingerprint, plain, StringComparison.Ordinal);
    }

    /// <summary>What a pull was made with is what a later reader of the record cannot ask for.</summary>
    [Fact]
    public void A_record_names_all_that_pulled_and_the_gear()
    {
        static string Filed(RecoveryPlan plan) => string.Join(' ', RecoveryRecord.From(plan.Assess(), new MeasuredPull(3) { LoadCell = KN(83) }).ToDocument(DisplayUnits.Metric).ToText(60).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        var alone = Filed(ReferencePlans.Gentle());
        Assert.Contains("wheels sunk 0.5 m / 0.5 m / 0.5 m, belly clear; pulled by tractor", alone, StringComparison.Ordinal);
        Assert.Contains("drawbar - recovery strap - bridle - shackle - axle strap - front axle.", alone, StringComparison.Ordinal);
        Assert.DoesNotContain("in line", alone, StringComparison.Ordinal);
        Assert.Contains("Ahead of it in line: " + ArrangementTests.Second().Machine.Name + ".", Filed(ReferencePlans.Gentle().WithAhead([new TeamMember(ArrangementTests.Second())])), StringComparison.Ordinal);
        Assert.Contains("Through a tackle of 2 parts.", Filed(ReferencePlans.Gentle().WithTackle(new LineTackle(2))), StringComparison.Ordinal);
        Assert.Contains("belly on the ground", Filed(ReferencePlans.AsFound()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_is_translated_by_key()
    {
        var record = RecoveryRecord.From(ReferencePlans.Gentle().Assess(), new MeasuredPull(2) { LoadCell = KN(50) });
        var german = new ReportLanguage("Deutsch", [new("record.moved", "In Stufe {0} kam er."), new("record.method.cell", "Kraftmessdose")]);
        var text = record.ToDocument(DisplayUnits.Imperial, german).ToMarkdown();
        Assert.Contains("In Stufe 2 kam er.", text, StringComparison.Ordinal);
        Assert.Contains("Worked back from: Kraftmessdose.", text, StringComparison.Ordinal);
        // 50 kN = 11.24 kip.
        Assert.Contains("11.2 kip", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_without_a_measurement_is_refused_with_words()
    {
        var a = ReferencePlans.Gentle().Assess();
        Assert.Contains("none was given", Assert.Throws<ArgumentException>(() => RecoveryRecord.From(a, new MeasuredPull(null))).Message, StringComparison.Ordinal);
        Assert.Contains("has 4 stages; stage 7", Assert.Throws<ArgumentException>(() => RecoveryRecord.From(a, new MeasuredPull(7))).Message, StringComparison.Ordinal);
        Assert.Contains("LoadCell must be from 1 to 5000 kN", Assert.Throws<ArgumentOutOfRangeException>(() => new MeasuredPull(1) { LoadCell = KN(0) }).Message, StringComparison.Ordinal);
    }
}
