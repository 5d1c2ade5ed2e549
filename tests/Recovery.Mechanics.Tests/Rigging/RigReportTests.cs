using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>What the gear section and the findings of a plan say of its rig. Worked rig: see <see cref="PullLimitTests"/>.</summary>
public class RigReportTests
{
    [Fact]
    public void Steel_that_flies_where_another_part_lets_go_is_a_caution_of_the_plan_and_its_bound_stands_in_the_list()
    {
        // Worked rig: the 8 kg shackle flies at up to 142.2 m/s where an axle strap lets go, soft end of the worked plan; printed to one figure, rounded up.
        var check = Check(ReferenceRigs.Worked(), Gear(2));
        var findings = new List<Finding>();
        FailureAnalysis.AddSteel(check, findings);
        var finding = Assert.Single(findings);
        Assert.Equal("rig.steel-on-free-end", finding.Id);
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains("the shackle is steel on a free end and flies", finding.Message, StringComparison.Ordinal);
        Assert.Contains(check.Failures, f => f.Part != "shackle" && f.Hardware.Contains("shackle") && f.SpeedText == "up to 200 m/s");
        Assert.Contains(ReferencePlans.AsFound().Assess().Findings, f => f.Id == "rig.steel-on-free-end" && f.Subject == "shackle");
        Assert.DoesNotContain(ReferencePlans.AsFound().With(ReferenceRigs.Worked().Replace("shackle", new SoftShackle("soft shackle", Rating.BreakingStrengthTonnes(60)))).Assess().Findings, f => f.Id == "rig.steel-on-free-end");
    }

    [Fact]
    public void The_last_stage_is_the_steady_pull_whose_peak_the_rig_admits()
    {
        // Demo plan: strap 500.139/(1.2 x 4.225) = 98.647 kN at the peak; k 5 x 588.399/12 = 245.166 kN/m, tractor 18 t: sqrt(k m) = 66.4304 kN s/m; 98.647 - 1.5/3.6 x 66.4304 = 70.967 kN.
        var assessment = PolderHarvester.Create().Assess();
        Assert.Equal(70.967, assessment.Stages[3].LineLoad.Kilonewtons, 0.001);
        Assert.Equal(98.647, assessment.Rig!.AdmissiblePeak!.Value.Kilonewtons, 0.001);
    }

    [Fact]
    public void A_chain_in_the_line_flies_as_the_shackle_does()
    {
        var rig = ReferenceRigs.Worked();
        var chain = new Chain("chain", ChainGrade.Grade80, Length.FromMillimeters(13), M(2));
        var findings = new List<Finding>();
        FailureAnalysis.AddSteel(Check(new Rig(rig.Drawbar, [rig.Parts[0], chain, .. rig.Parts.Skip(1)], rig.Casualty), Gear(2)), findings);
        Assert.Equal(["chain", "shackle"], findings.Select(f => f.Subject));
    }

    [Fact]
    public void Steel_that_is_found_by_where_it_lies_is_said_once_in_a_plan()
    {
        var rig = ReferenceRigs.Worked();
        var chain = new Chain("chain", ChainGrade.Grade80, Length.FromMillimeters(26), M(2));
        var findings = ReferencePlans.AsFound().With(new Rig(rig.Drawbar, [chain, .. rig.Parts], rig.Casualty)).Assess().Findings;
        Assert.Single(findings, f => f.Id == "rig.steel-on-free-end" && f.Subject == "chain");
    }

    [Fact]
    public void The_careless_take_up_is_not_said_twice_where_it_is_the_procedure()
    {
        Assert.DoesNotContain(Findings(PullProcedure.Undeclared), f => f.Id.StartsWith("rig.careless", StringComparison.Ordinal) || f.Subject.EndsWith("careless take-up", StringComparison.Ordinal));
        Assert.Contains(Findings(PullProcedure.Undeclared), f => f.Id == "rig.below-floor");
        Assert.Contains(Findings(Gear(2)), f => f.Id == "rig.careless-parts");
    }

    [Fact]
    public void The_table_names_both_levels_of_every_place()
    {
        // Nylon 1.3 x 1.3 x 2.5 = 4.225, polyester 1.3 x 1.3 x 1.65 = 2.7885, floor 2.3, bights 1.25 alone; shackle 588.4 kN over the lesser of a third and its proof load of 24 t, 196.13 kN: 3.
        var table = Gear(Assess(Gear(2))).First(b => b.Kind == ReportBlockKind.Table);
        Assert.Equal(["stop below", "full asked"], table.Header.Skip(4));
        Assert.Equal(["2.30 4.23", "1.25 -", "2.30 2.79", "1.25 -", "2.30 3.00", "2.30 2.79"], table.Rows.Select(r => r[4] + " " + r[5]));
        Assert.Equal(2.7885, Check(ReferenceRigs.Worked(), Gear(2)).Parts[5].FullFactors!.Value, 1e-9);
        Assert.Null(Check(ReferenceRigs.Worked(), Gear(2)).Parts[1].FullFactors);
    }

    [Theory]
    // Axle straps of the worked rig: printed R/F 2.42 at 2 km/h, under 2.3 x 1.1 = 2.53. At 0.77 km/h the peak is 116 + 0.213889 x 76.7072 = 132.407 kN: 273.0/(132.407 x 112.8/158.6) = 2.90, between 2.7885 and its tenth 3.067.
    [InlineData(2.0, "axle strap, stop level")]
    [InlineData(0.77, "axle strap, full factors")]
    public void A_note_of_little_to_spare_names_its_level_and_claims_no_pass(double gear, string subject)
    {
        var findings = Findings(Gear(gear));
        var note = findings.Single(f => f.Id == "rig.within-ten-percent" && f.Subject.StartsWith("axle strap", StringComparison.Ordinal) && !f.Subject.EndsWith("take-up", StringComparison.Ordinal));
        Assert.Equal(subject, note.Subject);
        Assert.DoesNotContain("pass", note.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_is_declared_a_crawling_gear_is_worked_beside_the_stronger_part()
    {
        // 116 kN + 1.5/3.6 x 76.7072 kN s/m = 147.961 kN in place of the careless 366.5 kN; one side of the axle 147.961 x 112.8/158.6 = 105.23 kN. It stays under the 1.687 km/h that a second pull admits.
        var slower = RigAlternatives.SlowerGear(Check(ReferenceRigs.Worked(), PullProcedure.Undeclared))!;
        Assert.Equal(147.961, slower.Loads.ProcedurePeak.Kilonewtons, 0.001);
        Assert.Equal(105.23, slower.CasualtyLoad.Procedure.Kilonewtons, 0.08);
        Assert.All(slower.Parts, p => Assert.True(p.SecondPullReserve >= p.Floor));
    }

    [Fact]
    public void A_gear_is_offered_only_where_it_lifts_the_stop()
    {
        // A declared gear of 2 km/h: the full factors leave 0.079 km/h, slower than any gear.
        Assert.Null(RigAlternatives.SlowerGear(Check(ReferenceRigs.Worked(), Gear(2))));

        // A 40 t strap (k 217.9 kN/m, bedded 88.57 kN s/m, bight 166.7/1.25 = 133.4 kN): (133.4 - 116)/88.57 = 0.196 m/s is slower than the crawl of 0.417 m/s.
        Assert.Null(RigAlternatives.SlowerGear(Check(ReferenceRigs.Worked(40), PullProcedure.Undeclared)));

        // The stop level of an axle strap whose choke nobody looked at, 153.8/(2.3 x 0.711266) = 94.0 kN, lies under the steady 116 kN: no take-up lifts it.
        var texts = Gear(ReferencePlans.AsFound().With(ReferenceRigs.Worked(chokeKnown: false)).Assess()).Select(b => b.Text).ToList();
        Assert.Contains(texts, t => t.StartsWith("No take-up lifts it", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, t => t.StartsWith("In a locked gear", StringComparison.Ordinal));
    }

    [Fact]
    public void A_slower_gear_on_a_stiff_line_is_worked_on_the_line_drawn_taut_that_it_is_offered_with()
    {
        // 130 t of nylon, 9 m: k 5 x 1274.8645/9 = 708.258 kN/m, above 654, where an undeclared clutch would lose the rule; sqrt(708.258 x 18) = 112.9096 kN s/m, 116 + 1.5/3.6 x 112.9096 = 163.0457 kN. Held anchor from 1.5 km/h: 241.2 kN.
        var slower = RigAlternatives.SlowerGear(Check(ReferenceRigs.Worked(130, 80), PullProcedure.Undeclared))!;
        Assert.Equal(163.0457, slower.Loads.ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Equal(LineLoadRule.LockedGear, slower.Loads.Rule);
        Assert.All(slower.Parts, p => Assert.True(p.SecondPullReserve >= p.Floor));
        Assert.Equal(slower.Loads.ProcedurePeak.Newtons, LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), slower.Loads.Line, slower.Loads.Procedure).ProcedurePeak.Newtons, 1e-6);
    }

    [Fact]
    public void A_slower_gear_than_the_declared_one_keeps_the_full_factors()
    {
        // 120 t strap (1000.278 kN; k 653.777, bedded sqrt(2 x 653.777 x 18) = 153.4143 kN s/m) and 80 t axle straps (546.035/(2.7885 x 0.711266) = 275.3 kN): full factors at 1000.278/4.225 = 236.752 kN of the strap.
        // (236.752 - 116)/153.4143 = 0.78710 m/s. In a gear of 12 km/h, 116 + 3.3333 x 108.480 = 477.6 kN, the strap keeps 2.09.
        var check = Check(ReferenceRigs.Worked(120, 80), Gear(12));
        Assert.Equal(0.78710, RigAlternatives.SlowerGear(check)!.Loads.Procedure.LockedGear!.Value.MetersPerSecond, 0.00005);
    }

    [Fact]
    public void A_known_angle_of_choke_is_offered_only_for_a_choke_that_nobody_looked_at()
    {
        // 392.266 kN x 0.8 = 313.81 kN beyond 120 deg, over the printed 112.8 kN of one side: 2.78; with the lowest bin 1.36.
        var unseen = Check(ReferenceRigs.Worked(chokeKnown: false), Gear(2));
        Assert.Equal(2.78, RigAlternatives.ChokeSeen(unseen, "axle strap")!.Reserve!.Value, 0.00501);
        Assert.Null(RigAlternatives.ChokeSeen(unseen, "recovery strap"));
        Assert.Null(RigAlternatives.ChokeSeen(Check(ReferenceRigs.Worked(), Gear(2)), "axle strap"));
        Assert.DoesNotContain("choke", RiggingFindings.BelowFloor.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain("gear", RiggingFindings.BelowFloor.Remedy, StringComparison.Ordinal);
    }

    private static PullProcedure Gear(double kilometresPerHour) => PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(kilometresPerHour));

    private static Assessment Assess(PullProcedure procedure) => ReferencePlans.AsFound().With(procedure).Assess();

    private static IReadOnlyList<ReportBlock> Gear(Assessment a) => a.ToDocument(DisplayUnits.Metric).Sections.Single(s => s.Key == "gear").Blocks;

    private static List<Finding> Findings(PullProcedure procedure)
    {
        var findings = new List<Finding>();
        Check(ReferenceRigs.Worked(), procedure).AddFindings(findings);
        return findings;
    }

    private static RigCheck Check(Rig rig, PullProcedure procedure) => RigCheck.Of(rig, DesignFactorPolicy.SlowPull, LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), rig.Line!, procedure));
}
