using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>The sections of the report on how the pull is done: stages, what ends it, areas, precautions.</summary>
internal static class AssessmentReportPull
{
    public static void Write(ReportBuilder w, Assessment a)
    {
        Clearance(w, a);
        OverGround(w, a);
        Stages(w, a);
        w.Section("keep-clear", "heading.keep-clear");
        foreach (var area in HazardAreaList.Of(a, w.Wording)) w.Item("- ", area.Text);
        w.Section("before", "heading.before");
        var number = 0;
        foreach (var p in PrecautionList.Of(a, w.Wording)) w.Item(Text.Number(++number).PadLeft(2) + ". ", p.Source.Standing == Standing.CommonPractice ? w.Say("before.item", p.Action, p.Why) : w.Say("before.item-source", p.Action, p.Why, p.Source.Citation));
        w.Paragraph("before.key");
    }

    private static void Clearance(ReportBuilder w, Assessment a)
    {
        if (a.Plan.Rig.Casualty.Kind != Rigging.AttachmentKind.FrontAxle) return;
        w.Section("clearance", "heading.clearance");
        var clearances = a.Clearances;
        if (clearances.Count == 0)
        {
            w.Paragraph("clearance.none");
            return;
        }

        var climb = LineUnderMachine.Climb(a.Plan);
        w.Table([w.Say("clearance.header"), w.Say("clearance.gap"), w.Say("clearance.rise")], clearances.Select(c => (IReadOnlyList<string>)[c.Part.Name, w.Display.Length(c.Gap.Meters, 2), c.Gap.Meters < 0 ? w.Say("clearance.touches") : c.RiseAtContact is { } rise && rise.Meters < climb ? w.Display.LengthAtMost(rise.Meters) : w.Say("clearance.never")]).ToList());
        w.Paragraph("clearance.climb", w.Display.Length(climb, 2));
    }

    private static void OverGround(ReportBuilder w, Assessment a)
    {
        if (a.Plan.Site.GroundBetween is not { } ground) return;
        w.Section("over-ground", "heading.over-ground");
        if (a.GroundClearance is not { } sweep) w.Paragraph("over-ground.unknown");
        else if (sweep.Obstacles.Count == 0) w.Paragraph("over-ground.none");
        else w.Table([w.Say("over-ground.header"), w.Say("over-ground.gap"), w.Say("over-ground.after"), w.Say("over-ground.touched")], sweep.Obstacles.Select(o => (IReadOnlyList<string>)[o.Name, w.Display.Length(o.Least.Meters, 2), Way(o.LeastAt), o.ContactAt is { } contact ? w.Display.LengthAtMost(ground.Travel.Meters * contact.DecimalFractions) : w.Say("over-ground.clear")]).ToList());
        w.Paragraph("over-ground.way", w.Display.Length(ground.Travel.Meters, 2));

        string Way(UnitsNet.Ratio done) => w.Display.Length(ground.Travel.Meters * done.DecimalFractions, 2);
    }

    private static void Stages(ReportBuilder w, Assessment a)
    {
        w.Section("stages", "heading.stages");
        if (a.Verdict == Verdict.Stop)
        {
            w.Paragraph("stages.stop");
            return;
        }

        var stages = StageList.Of(a, w.Wording);
        if (stages.Count == 0)
        {
            w.Paragraph("stages.unknown");
            return;
        }

        foreach (var s in stages) w.Item(Text.Number(s.Number) + ". ", w.Say("stage.item", w.Display.Force(s.LineLoad.Newtons), s.Action, w.Display.StretchAtMost(s.LeastTravel.Meters), w.Display.Stretch(s.GreatestTravel.Meters), w.Display.StretchUnit, s.Hold));
        w.Paragraph("stages.tape", w.Display.StretchAtMost(stages[stages.Count - 1].SecondPullTravel.Meters), w.Display.StretchUnit);
        if (stages[stages.Count - 1].LineLoad.Newtons < Math.Min(a.Demand.CentralNewtons, a.Loads!.Output.Steady)) w.Paragraph("stages.short");
        Listed(w, "stop-when", "heading.stop-when", StopList.Criteria(a, w.Wording));
        Listed(w, "after-a-stop", "heading.after-a-stop", StopList.AfterAStop(a, w.Wording));
    }

    private static void Listed(ReportBuilder w, string key, string heading, IReadOnlyList<Precaution> list)
    {
        w.Section(key, heading);
        foreach (var item in list) w.Item("- ", w.Say("before.item", item.Action, item.Why));
    }
}
