using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;

namespace Recovery.Mechanics.Planning;

/// <summary>An assessment as plain text for a phone: verdict and reasons first.</summary>
internal static class TextReport
{
    public static string Write(Assessment a, int columns)
    {
        var w = new ReportWriter(columns);
        Verdict(w, a);
        Reasons(w, a);
        Demand(w, a);
        SelfRecovery(w, a);
        Capability(w, a);
        TextReportRig.Write(w, a);
        Measures(w, a);
        Stages(w, a);
        w.Heading("Keep clear");
        foreach (var area in a.HazardAreas) w.Item("- ", area.Text);
        w.Heading("Before this pull, in this order");
        var number = 0;
        foreach (var p in a.Precautions) w.Item((++number).ToString(System.Globalization.CultureInfo.InvariantCulture).PadLeft(2) + ". ", p.Action + " " + p.Why + (p.Source.Standing == Standing.CommonPractice ? string.Empty : " [" + p.Source.Citation + "]"));
        w.Paragraph("Without a source in brackets: common practice, no source.");
        w.Heading("Still to measure");
        foreach (var assumption in a.Assumptions) w.Item("- ", assumption.ToString());
        Footer(w, a);
        return w.ToString();
    }

    private static void Verdict(ReportWriter w, Assessment a)
    {
        w.Heading(a.Verdict switch
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

    private static void Reasons(ReportWriter w, Assessment a)
    {
        w.Heading("Why");
        foreach (var group in a.Findings.GroupBy(f => (f.Severity, f.Id)))
        {
            var mark = group.Key.Severity switch
            {
                Severity.Stop => "STOP   ",
                Severity.Caution => "REVIEW ",
                _ => "note   ",
            };
            foreach (var finding in group) w.Item(mark, finding.Message);
            if (group.Key.Severity != Severity.Note) w.Item("       -> ", group.First().Remedy);
        }
    }

    private static void Demand(ReportWriter w, Assessment a)
    {
        var d = a.Demand;
        w.Heading("What it takes");
        w.Paragraph(d.Stuck.ToString() + ".");
        var rows = d.Terms.Select(t => Row(t.Name, t.Low.Newtons, t.Central.Newtons, t.High.Newtons)).ToList();
        rows.Add(Row("together, kN", d.LowNewtons, d.CentralNewtons, d.HighNewtons));
        w.Table(["pull along the ground", "low", "central", "high"], rows);
        w.Paragraph("Handbook depth rule beside it (from memory): " + Kn(d.DepthRuleNewtons) + (d.MethodRatio is { } ratio ? ", " + Text.Number(ratio, 2) + " times central." : ".") + " Tackle and anchors are sized on " + Kn(d.PlanningHigh.Newtons) + ".");
        w.Paragraph("Estimates of mire are good to a factor of two or three. Central is once the wheels " + (d.Stuck.Wheels == WheelMotion.Locked ? "slide locked" : "turn") + "; with locked wheels it would be " + Kn(d.CentralLocked.Newtons) + ". Once it has broken loose about " + Kn(d.AfterBreakout.Newtons) + " go on holding it.");
        if (d.RigidStep is { } step) w.Paragraph("Were the soil ahead rigid, climbing it would take " + Kn(step.Newtons) + "; shown beside, not added.");
    }

    private static void SelfRecovery(ReportWriter w, Assessment a)
    {
        var d = a.Demand;
        w.Heading("Can it free itself?");
        if (d.CriticalConeIndex is not { } critical)
        {
            w.Paragraph("No: no axle is driven, or no soil would do.");
            return;
        }

        w.Paragraph("As it sank it would just have moved itself on a cone index of " + Text.Kilopascals(critical.Pascals, 2) + "; the soil under its wheels is rated at " + Text.Kilopascals(d.Stuck.Soil.RatingConeIndex.Pascals, 2) + ". Its driven wheels could put down " + Kn(d.OwnGrossTraction.Newtons) + " gross against the " + Kn(d.CentralNewtons) + " that hold it" + (d.Stuck.AnyWheelBuried ? "; on buried wheels that figure is outside the range of every wheel model." : "."));
    }

    private static void Capability(ReportWriter w, Assessment a)
    {
        var c = a.Capability;
        w.Heading("What can pull it");
        w.Paragraph(c.Tower + ".");
        w.Table(["pull along the ground, kN", "low", "central", "high"], [Row("it sustains", c.LowNewtons, c.CentralNewtons, c.HighNewtons), Row("it takes", a.Demand.LowNewtons, a.Demand.CentralNewtons, a.Demand.HighNewtons)]);
        w.Paragraph("Sustained is limited by " + c.LimitedBy switch
        {
            Traction.PullLimit.Traction => "traction",
            Traction.PullLimit.Power => "power",
            Traction.PullLimit.NoseLift => "the nose",
            _ => "the rating of the hitch",
        } + " at " + Text.Number(c.Slip.DecimalFractions * 100, 2) + " % slip" + (c.PowerLimit is { } power ? "; power would allow " + Kn(power.Newtons) : string.Empty) + ", the nose " + Kn(c.NoseLimit.Newtons) + ".");
        w.Paragraph("The most it can put into the gear, on the firmest ground it may stand on: " + Kn(c.ImposableNewtons) + ". The gear is checked with that, not with what the mud is hoped to need.");
    }

    private static void Measures(ReportWriter w, Assessment a)
    {
        w.Heading("What each measure is worth, alone");
        var measures = a.Measures;
        if (measures.Count == 0)
        {
            w.Paragraph("None is left of those known here.");
            return;
        }

        w.Table(["kN off the pull", "low", "central", "high", "rule"], measures.Select(m => (IReadOnlyList<string>)[m.Measure.Title, Num(m.Low.Newtons), Num(m.Central.Newtons), Num(m.High.Newtons), Num(m.DepthRule.Newtons)]).ToList());
        w.Paragraph("Worths do not add: every set is worked whole.");
        foreach (var m in measures)
        {
            if (m.Reason.Length > 0) w.Item("- ", m.Measure.Title + ": " + m.Reason + ".");
            if (m.Measure.Caution.Length > 0) w.Item("- ", m.Measure.Title + ": " + m.Measure.Caution + ".");
        }
    }

    private static void Stages(ReportWriter w, Assessment a)
    {
        w.Heading("The pull in stages");
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

        foreach (var s in a.Stages)
            w.Item(Text.Number(s.Number) + ". ", "Up to " + Kn(s.LineLoad.Newtons) + ": " + s.Action + ". The strap has stretched " + Text.Fixed(s.LeastStretch.Meters, 2) + " to " + Text.Fixed(s.GreatestStretch.Meters, 2) + " m by then. Then " + s.Hold + ".");
        w.Paragraph("A tape tells the load only within that band: go by its lower end until the curve of this strap, or one known load on it, is there.");
        if (a.Stages[a.Stages.Count - 1].LineLoad.Newtons < Math.Min(a.Demand.CentralNewtons, a.Loads!.Output.Steady))
            w.Paragraph("The last stage stays below the central demand: the gear does not allow more. Lighten and dig, or use stronger gear.");
    }

    private static void Footer(ReportWriter w, Assessment a)
    {
        w.Heading("What this is");
        w.Paragraph("A reckoning on published models and stated judgement (" + Assessment.ModelSet + "), not validated against pulls of heavy farm machines: no such record is public. It has not looked at brakes and steering of the stuck machine, sideways pull and overturning, the puller's way in and out, what lies buried, or the state of gear beyond what was declared.");
        w.Paragraph("Policy: " + a.Plan.Policy + ". Input " + a.Fingerprint + ".");
    }

    internal static string Kn(double newtons) => Text.Number(newtons / 1000, 3) + " kN";

    internal static string Num(double newtons)
    {
        var kilonewtons = Math.Round(newtons / 1000);
        return kilonewtons == 0 ? "0" : Text.Fixed(kilonewtons, 0);
    }

    private static IReadOnlyList<string> Row(string name, double low, double central, double high) => [name, Num(low), Num(central), Num(high)];
}
