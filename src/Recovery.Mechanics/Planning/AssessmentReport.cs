using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;

namespace Recovery.Mechanics.Planning;

/// <summary>An assessment as a report: verdict and reasons first.</summary>
internal static class AssessmentReport
{
    public static ReportDocument Of(Assessment a, DisplayUnits units)
    {
        var w = new ReportBuilder(new Display(units));
        Verdict(w, a);
        Reasons(w, a);
        Demand(w, a);
        SelfRecovery(w, a);
        Capability(w, a);
        AssessmentReportRig.Write(w, a);
        Measures(w, a);
        Stages(w, a);
        if (a.Verdict != Planning.Verdict.Stop)
        {
            Listed(w, "stop-when", "Stop the pull at once when", StopList.Criteria(a, w.Display));
            Listed(w, "after-a-stop", "After every stop, before tension comes on again", a.AfterAStop);
        }

        w.Section("keep-clear", "Keep clear");
        foreach (var area in a.HazardAreas) w.Item("- ", HazardAreaList.Words(area, w.Display));
        w.Section("before", "Before this pull, in this order");
        var number = 0;
        foreach (var p in PrecautionList.Of(a, w.Display)) w.Item((++number).ToString(System.Globalization.CultureInfo.InvariantCulture).PadLeft(2) + ". ", p.Action + " " + p.Why + (p.Source.Standing == Standing.CommonPractice ? string.Empty : " [" + p.Source.Citation + "]"));
        w.Paragraph("Without a source in brackets: common practice, no source.");
        w.Section("to-measure", "Still to measure");
        foreach (var assumption in a.Assumptions) w.Item("- ", assumption.ToString());
        Footer(w, a);
        return w.Build();
    }

    private static void Verdict(ReportBuilder w, Assessment a)
    {
        w.Section("verdict", a.Verdict switch
        {
            Planning.Verdict.Stop => "Stop",
            Planning.Verdict.NeedsCompetentReview => "Needs review by a competent person",
            _ => "No objection found",
        });
        w.Paragraph(a.Verdict switch
        {
            Planning.Verdict.Stop => "The plan stops at the points marked STOP until they are changed.",
            Planning.Verdict.NeedsCompetentReview => "Nothing stops the plan outright; the points marked REVIEW need a competent person before anybody hooks on.",
            _ => "No rule that was checked is broken. That does not say that nothing can go wrong.",
        });
        w.Paragraph("People die at this work. The machine's manual, local codes and licensed practice come before this report.");
    }

    private static void Reasons(ReportBuilder w, Assessment a)
    {
        w.Section("why", "Why");
        foreach (var group in a.Findings.GroupBy(f => (f.Severity, f.Id)))
        {
            var mark = group.Key.Severity switch
            {
                Severity.Stop => "STOP   ",
                Severity.Caution => "REVIEW ",
                _ => "note   ",
            };
            foreach (var finding in group) w.Item(mark, w.Display.Fill(finding, finding.Definition.Message));
            if (group.Key.Severity != Severity.Note) w.Item("       -> ", w.Display.Fill(group.First(), group.First().Definition.Remedy));
        }
    }

    private static void Demand(ReportBuilder w, Assessment a)
    {
        var d = a.Demand;
        w.Section("demand", "What it takes");
        w.Paragraph(d.Stuck.Machine.Name + ", " + w.Display.Mass(d.Stuck.Machine.MassKilograms) + " on " + Text.Number(d.Stuck.Machine.Axles.Count) + " axles, wheels sunk " + string.Join(" / ", d.Stuck.Sinkage.Select(z => w.Display.Length(z.Meters, 2))) + (d.Stuck.Belly is null ? ", belly clear" : ", belly on the ground") + "; " + Ground(w, d.Stuck.Soil) + ".");
        var rows = d.Terms.Select(t => Row(w, t.Name, t.Low.Newtons, t.Central.Newtons, t.High.Newtons)).ToList();
        rows.Add(Row(w, "together, " + w.Display.ForceUnit, d.LowNewtons, d.CentralNewtons, d.HighNewtons));
        w.Table(["pull along the ground", "low", "central", "high"], rows);
        AssessmentReportMire.Basis(w, d);
        w.Paragraph("Handbook depth rule beside it (from memory): " + w.Display.Force(d.DepthRuleNewtons) + (d.MethodRatio is { } ratio ? ", " + Text.Number(ratio, 2) + " times central." : ".") + " Tackle and anchors are sized on " + w.Display.Force(d.PlanningHigh.Newtons) + ".");
        w.Paragraph("Estimates of mire are good to a factor of two or three. Central is once the wheels " + (d.Stuck.Wheels == WheelMotion.Locked ? "slide locked" : "turn") + "; with locked wheels it would be " + w.Display.Force(d.CentralLocked.Newtons) + ".");
        if (d.RigidStep is { } step) w.Paragraph("Were the soil ahead rigid, climbing it would take " + w.Display.Force(step.Newtons) + "; shown beside, not added.");
    }

    private static void SelfRecovery(ReportBuilder w, Assessment a)
    {
        var d = a.Demand;
        w.Section("self-recovery", "Can it free itself?");
        if (d.CriticalConeIndex is not { } critical)
        {
            w.Paragraph("No: no axle is driven, or no soil would do.");
            return;
        }

        w.Paragraph("As it sank it would just have moved itself on a cone index of " + w.Display.Pressure(critical.Pascals) + "; the soil under its wheels is rated at " + w.Display.Pressure(d.Stuck.Soil.RatingConeIndex.Pascals) + ". Its driven wheels could put down " + w.Display.Force(d.OwnGrossTraction.Newtons) + " gross against the " + w.Display.Force(d.CentralNewtons) + " that hold it" + (d.Stuck.AnyWheelBuried ? "; on buried wheels that figure is outside the range of every wheel model." : "."));
        AssessmentReportMire.Grip(w, d);
    }

    private static void Capability(ReportBuilder w, Assessment a)
    {
        var c = a.Capability;
        w.Section("capability", "What can pull it");
        w.Paragraph(c.Tower.Machine.Name + ", " + w.Display.Mass(c.Tower.Machine.MassKilograms) + "; " + Ground(w, c.Tower.Soil) + ".");
        w.Table(["pull along the ground, " + w.Display.ForceUnit, "low", "central", "high"], [Row(w, "it sustains", c.LowNewtons, c.CentralNewtons, c.HighNewtons), Row(w, "it takes", a.Demand.LowNewtons, a.Demand.CentralNewtons, a.Demand.HighNewtons)]);
        w.Paragraph("Sustained is limited by " + c.LimitedBy switch
        {
            Traction.PullLimit.Traction => "traction",
            Traction.PullLimit.Power => "power",
            Traction.PullLimit.NoseLift => "the nose",
            _ => "the rating of the hitch",
        } + " at " + Text.Number(c.Slip.DecimalFractions * 100, 2) + " % slip" + (c.PowerLimit is { } power ? "; power would allow " + w.Display.Force(power.Newtons) : string.Empty) + ", the nose " + w.Display.Force(c.NoseLimit.Newtons) + ".");
        w.Paragraph("The most it can put into the gear, on the firmest ground it may stand on: " + w.Display.Force(c.ImposableNewtons) + ". The gear is checked with that, not with what the mud is hoped to need.");
    }

    private static void Measures(ReportBuilder w, Assessment a)
    {
        w.Section("measures", "What each measure is worth, alone");
        var measures = a.Measures;
        if (measures.Count == 0)
        {
            w.Paragraph("None is left of those known here.");
            return;
        }

        w.Table([w.Display.ForceUnit + " off the pull", "low", "central", "high", "rule"], measures.Select(m => (IReadOnlyList<string>)[m.Measure.Title, w.Display.Cell(m.Low.Newtons), w.Display.Cell(m.Central.Newtons), w.Display.Cell(m.High.Newtons), w.Display.Cell(m.DepthRule.Newtons)]).ToList());
        w.Paragraph("Worths do not add: every set is worked whole.");
        foreach (var m in measures)
        {
            if (m.Reason.Length > 0) w.Item("- ", m.Measure.Title + ": " + m.Reason + ".");
            if (m.Measure.Caution.Length > 0) w.Item("- ", m.Measure.Title + ": " + m.Measure.Caution + ".");
        }
    }

    private static void Stages(ReportBuilder w, Assessment a)
    {
        w.Section("stages", "The pull in stages");
        if (a.Verdict == Planning.Verdict.Stop)
        {
            w.Paragraph("None while the plan stands at stop.");
            return;
        }

        if (a.Stages.Count == 0)
        {
            w.Paragraph("None: the strength of the gear is not known.");
            return;
        }

        foreach (var s in StageList.Of(a, w.Display))
            w.Item(Text.Number(s.Number) + ". ", "Up to " + w.Display.Force(s.LineLoad.Newtons) + ": " + s.Action + ". The strap has stretched " + w.Display.Stretch(s.LeastStretch.Meters) + " to " + w.Display.Stretch(s.GreatestStretch.Meters) + " " + w.Display.StretchUnit + " by then. Then " + s.Hold + ".");
        w.Paragraph("A tape tells the load only within that band: go by its lower end until the curve of this strap, or one known load on it, is there.");
        if (a.Stages[a.Stages.Count - 1].LineLoad.Newtons < Math.Min(a.Demand.CentralNewtons, a.Loads!.Output.Steady))
            w.Paragraph("The last stage stays below the central demand: the gear does not allow more. Lighten and dig, or use stronger gear.");
    }

    private static void Listed(ReportBuilder w, string key, string heading, IReadOnlyList<Precaution> list)
    {
        w.Section(key, heading);
        foreach (var item in list) w.Item("- ", item.ToString());
    }

    private static void Footer(ReportBuilder w, Assessment a)
    {
        w.Section("about", "What this is");
        w.Paragraph("A reckoning on published models and stated judgement (" + Assessment.ModelSet + "), not validated against pulls of heavy farm machines: no such record is public. It has not looked at brakes and steering of the stuck machine, sideways pull and overturning, the puller's way in and out, what lies buried, or the state of gear beyond what was declared.");
        w.Paragraph("Weakest standing of what went in: " + Standings.Describe(a.Standing) + "; " + Text.Number(a.Sources.Count) + " sources, listed with the structured assessment and in the bibliography.");
        w.Paragraph("Policy: " + a.Plan.Policy + ". Input " + a.Fingerprint + ".");
    }

    private static string Ground(ReportBuilder w, Ground.Soil soil) => "cone index " + w.Display.Pressure(soil.ConeIndex.Pascals) + ", remoulding index " + Text.Number(soil.RemouldingIndex.DecimalFractions, 2) + (soil.RemouldingIndexIsAssumed ? " (assumed)" : string.Empty);

    private static IReadOnlyList<string> Row(ReportBuilder w, string name, double low, double central, double high) => [name, w.Display.Cell(low), w.Display.Cell(central), w.Display.Cell(high)];
}
