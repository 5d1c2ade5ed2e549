using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;

namespace Recovery.Mechanics.Planning;

/// <summary>An assessment as a report: verdict and reasons first.</summary>
internal static class AssessmentReport
{
    public static ReportDocument Of(Assessment a, Wording wording)
    {
        var w = new ReportBuilder(wording);
        Verdict(w, a);
        Reasons(w, a);
        Words(w);
        Demand(w, a);
        SelfRecovery(w, a);
        Capability(w, a);
        AssessmentReportRig.Write(w, a);
        Measures(w, a);
        AssessmentReportPull.Write(w, a);
        w.Section("to-measure", "heading.to-measure");
        foreach (var assumption in a.Assumptions) w.Item("- ", wording.Assumed(assumption));
        Footer(w, a);
        return w.Build();
    }

    private static void Verdict(ReportBuilder w, Assessment a)
    {
        var key = a.Verdict switch
        {
            Planning.Verdict.Stop => "stop",
            Planning.Verdict.NeedsCompetentReview => "review",
            _ => "none",
        };
        w.Section("verdict", "heading." + key);
        w.Paragraph("verdict." + key);
        w.Paragraph("verdict.caution");
        var taken = Taken.Steps(a.Plan, w.Wording);
        if (taken.Count == 0) return;
        w.Paragraph("taken.heading");
        foreach (var step in taken) w.Item("- ", w.Say("taken.item", step));
    }

    private static void Reasons(ReportBuilder w, Assessment a)
    {
        w.Section("why", "heading.why");
        string stop = w.Say("mark.stop"), review = w.Say("mark.review"), note = w.Say("mark.note");
        var width = Math.Max(stop.Length, Math.Max(review.Length, note.Length)) + 1;
        foreach (var group in a.Findings.GroupBy(f => (f.Severity, f.Id)))
        {
            var mark = (group.Key.Severity switch
            {
                Severity.Stop => stop,
                Severity.Caution => review,
                _ => note,
            }).PadRight(width);
            foreach (var finding in group) w.Item(mark, w.Wording.Message(finding));
            if (group.Key.Id == Traction.TractionFindings.WillNotMove.Id || group.Key.Id == Traction.TractionFindings.Undecided.Id) w.Item("-> ".PadLeft(width + 3), Lift(w, a));
            if (group.Key.Severity != Severity.Note || group.Key.Id.StartsWith("people.", StringComparison.Ordinal) || group.Key.Id.StartsWith("rig.", StringComparison.Ordinal)) w.Item("-> ".PadLeft(width + 3), w.Wording.Remedy(group.First()));
        }
    }

    /// <summary>What would lift the objection that it will not move: pull, mass of a like puller on that ground, parts of tackle.</summary>
    private static string Lift(ReportBuilder w, Assessment a)
    {
        double undecided = Traction.ChoiceFindings.WillNot * a.Demand.CentralNewtons, clear = Traction.ChoiceFindings.Undecided * a.Demand.CentralNewtons, now = a.Available.Central;
        // A puller that sustains next to nothing says nothing of the mass that would (judgement).
        const double Next = 0.02;
        if (now < Next * a.Capability.Flat.Weight || a.Plan.Tackle is not null || a.Team is not null) return w.Say("lift.pull", w.Display.Force(undecided), w.Display.Force(clear));
        var mass = w.Display.Mass(a.Capability.Tower.Machine.MassKilograms * clear / now);
        var parts = Enumerable.Range(2, LineTackle.Most - 1).FirstOrDefault(n => now * new LineTackle(n).SustainedAdvantage >= a.Demand.PlanningHigh.Newtons);
        return parts == 0
            ? w.Say("lift.mass", w.Display.Force(undecided), w.Display.Force(clear), mass)
            : w.Say("lift.mass-or-tackle", w.Display.Force(undecided), w.Display.Force(clear), mass, Text.Number(parts));
    }

    private static void Words(ReportBuilder w)
    {
        w.Section("words", "heading.words");
        w.Item("- ", w.Say(w.Display.ForceUnit == "kN" ? "words.force" : "words.force-imperial"));
        w.Item("- ", w.Say("words.band"));
        w.Item("- ", w.Say("words.loads"));
        w.Item("- ", w.Say("words.keeps"));
    }

    private static void Demand(ReportBuilder w, Assessment a)
    {
        var d = a.Demand;
        w.Section("demand", "heading.demand");
        w.Paragraph("demand.machine", d.Stuck.Machine.Name, w.Display.Mass(d.Stuck.Machine.MassKilograms), Text.Number(d.Stuck.Machine.Axles.Count), string.Join(" / ", d.Stuck.Sinkage.Select(z => w.Display.Length(z.Meters, 2))), w.Say(d.Stuck.Belly is null ? "demand.belly-clear" : "demand.belly-down"), Ground(w, d.Stuck.Soil));
        var rows = d.Terms.Select(t => Row(w, w.Wording.Say(t.Called), t.Low.Newtons, t.Central.Newtons, t.High.Newtons)).ToList();
        rows.Add(Row(w, w.Say("demand.together"), d.LowNewtons, d.CentralNewtons, d.HighNewtons));
        w.Table([w.Say("demand.header", w.Display.ForceUnit), w.Say("low"), w.Say("central"), w.Say("high")], rows);
        AssessmentReportMire.Basis(w, d);
        if (a.StuckLoads is { } loads) AssessmentReportMire.Loads(w, loads);
        if (d.MethodRatio is { } ratio) w.Paragraph("demand.rule-ratio", w.Display.Force(d.DepthRuleNewtons), w.Display.Force(d.PlanningHigh.Newtons), Text.Number(ratio, 2));
        else w.Paragraph("demand.rule", w.Display.Force(d.DepthRuleNewtons), w.Display.Force(d.PlanningHigh.Newtons));
        w.Paragraph(d.Stuck.Wheels == WheelMotion.Locked ? "demand.locked" : "demand.turning", w.Display.Force(d.CentralLocked.Newtons));
        if (d.RigidStep is { } step) w.Paragraph("demand.step", w.Display.Force(step.Newtons));
    }

    private static void SelfRecovery(ReportBuilder w, Assessment a)
    {
        var d = a.Demand;
        w.Section("self-recovery", "heading.self-recovery");
        if (d.CriticalConeIndex is not { } critical)
        {
            w.Paragraph("self.none");
            return;
        }

        w.Paragraph("self.critical", w.Display.Pressure(critical.Pascals), w.Display.Pressure(d.Stuck.Soil.RatingConeIndex.Pascals));
        w.Paragraph(d.Stuck.AnyWheelBuried ? "self.gross-buried" : "self.gross", w.Display.Force(d.OwnGrossTraction.Newtons), w.Display.Force(d.CentralNewtons));
        AssessmentReportMire.Grip(w, d);
    }

    private static void Capability(ReportBuilder w, Assessment a)
    {
        var c = a.Capability;
        w.Section("capability", "heading.capability");
        w.Paragraph("capability.machine", c.Tower.Machine.Name, w.Display.Mass(c.Tower.Machine.MassKilograms), Ground(w, c.Tower.Soil));
        w.Table([w.Say("capability.header", w.Display.ForceUnit), w.Say("low"), w.Say("central"), w.Say("high")], [Row(w, w.Say("capability.sustains"), a.Available.Low, a.Available.Central, a.Available.High), Row(w, w.Say("capability.takes"), a.Demand.LowNewtons, a.Demand.CentralNewtons, a.Demand.HighNewtons)]);
        w.Paragraph("overlap." + Overlap(a));
        var limit = w.Say(c.LimitedBy switch
        {
            Traction.PullLimit.Traction => "limit.traction",
            Traction.PullLimit.Power => "limit.power",
            Traction.PullLimit.NoseLift => "limit.nose",
            Traction.PullLimit.Overturn => "limit.side",
            _ => "limit.rating",
        });
        var slip = Text.Number(c.Slip.DecimalFractions * 100, 2);
        if (c.PowerLimit is { } power) w.Paragraph("capability.limit-power", limit, slip, w.Display.Force(c.NoseLimit.Newtons), w.Display.Force(power.Newtons));
        else w.Paragraph("capability.limit", limit, slip, w.Display.Force(c.NoseLimit.Newtons));
        if (c.OverturnLimit is { } side) w.Paragraph("capability.side", w.Display.Force(side.Newtons));
        if (a.Team is { } team)
        {
            for (var i = 0; i < team.Team.Members.Count; i++) w.Item("- ", w.Say("capability.team", string.Join(" + ", team.Team.Members.Select(m => m.Tower.Machine.Name)), team.Team.Members[i].Tower.Machine.Name, w.Display.Force(team.Losing(i).Remaining.CentralNewtons)));
        }

        if (a.Plan.Tackle is { } tackle) w.Paragraph("capability.tackle", Text.Number(tackle.Parts), Text.Number(tackle.SustainedAdvantage, 3), w.Display.Force(a.Available.AtHitch * (tackle.Parts - 1)));
        w.Paragraph("capability.imposable", w.Display.Force(a.Available.Imposable));
    }

    /// <summary>How the two bands lie to each other, without a probability.</summary>
    private static string Overlap(Assessment a)
    {
        if (a.Available.Low > a.Demand.HighNewtons) return "over";
        if (a.Available.High < a.Demand.LowNewtons) return "under";
        return a.Available.Central >= a.Demand.CentralNewtons ? "central" : "below";
    }

    private static void Measures(ReportBuilder w, Assessment a)
    {
        w.Section("measures", "heading.measures");
        var measures = a.Measures;
        if (measures.Count == 0)
        {
            w.Paragraph("measures.none");
            return;
        }

        w.Table([w.Say("measures.header", w.Display.ForceUnit), w.Say("low"), w.Say("central"), w.Say("high"), w.Say("measures.rule")], measures.Select(m => (IReadOnlyList<string>)[w.Wording.Title(m.Measure), w.Display.Cell(m.Low.Newtons), w.Display.Cell(m.Central.Newtons), w.Display.Cell(m.High.Newtons), w.Display.Cell(m.DepthRule.Newtons)]).ToList());
        w.Paragraph("measures.do-not-add");
        foreach (var m in measures)
        {
            if (m.ReasonKey.Length > 0) w.Item("- ", w.Say("measures.item", w.Wording.Title(m.Measure), w.Say(m.ReasonKey, m.ReasonWords is { } words ? w.Wording.Say(words) : string.Empty)));
            if (w.Wording.Caution(m.Measure) is { Length: > 0 } caution) w.Item("- ", w.Say("measures.item", w.Wording.Title(m.Measure), caution));
        }
    }

    private static void Footer(ReportBuilder w, Assessment a)
    {
        w.Section("about", "heading.about");
        w.Paragraph("about.reckoning", Assessment.ModelSet);
        w.Paragraph("about.standing", Standings.Describe(a.Standing), Text.Number(a.Sources.Count));
        w.Paragraph("about.policy", a.Plan.Policy.ToString(), a.Fingerprint);
    }

    private static string Ground(ReportBuilder w, Ground.Soil soil) => w.Say(soil.RemouldingIndexIsAssumed ? "soil.assumed" : "soil", w.Display.Pressure(soil.ConeIndex.Pascals), Text.Number(soil.RemouldingIndex.DecimalFractions, 2));

    private static IReadOnlyList<string> Row(ReportBuilder w, string name, double low, double central, double high) => [name, w.Display.Cell(low), w.Display.Cell(central), w.Display.Cell(high)];
}
