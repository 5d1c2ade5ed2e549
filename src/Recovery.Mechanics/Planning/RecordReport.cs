using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>A record of a pull as a document: estimate and measurement side by side.</summary>
internal static class RecordReport
{
    public static ReportDocument Of(RecoveryRecord record, string methodKey, Wording wording)
    {
        var w = new ReportBuilder(wording);
        var planned = record.Planned;
        var stuck = planned.Plan.Stuck;
        w.Section("planned", "record.planned");
        w.Paragraph("record.machines", stuck.Machine.Name, w.Display.Mass(stuck.Machine.MassKilograms), string.Join(" / ", stuck.Sinkage.Select(z => w.Display.Length(z.Meters, 2))), planned.Plan.Tower.Machine.Name, w.Display.Mass(planned.Plan.Tower.Machine.MassKilograms), w.Say(stuck.Belly is null ? "demand.belly-clear" : "demand.belly-down"));
        if (planned.Plan.Ahead.Count > 0) w.Paragraph("record.ahead", string.Join(", ", planned.Plan.Ahead.Select(m => m.Tower.Machine.Name)));
        if (planned.Plan.Tackle is { } tackle) w.Paragraph("record.tackle", Text.Number(tackle.Parts));
        w.Paragraph("record.soil", w.Display.Pressure(stuck.Soil.ConeIndex.Pascals), Text.Number(stuck.Soil.RemouldingIndex.DecimalFractions, 2), w.Display.Pressure(planned.Plan.Tower.Soil.ConeIndex.Pascals), Text.Number(planned.Plan.Tower.Soil.RemouldingIndex.DecimalFractions, 2));
        w.Paragraph("gear.path", planned.Plan.Rig.ToString());
        var taken = Taken.Steps(planned.Plan, wording);
        if (taken.Count > 0) w.Paragraph("taken.heading");
        foreach (var step in taken) w.Item("- ", w.Say("taken.item", step));
        w.Section("measured", "record.measured");
        w.Paragraph(record.Measured.StageThatMovedIt is null ? "record.still" : "record.moved", Text.Number(record.Measured.StageThatMovedIt ?? 0));
        if (record.Measured.LoadCell is { } cell) w.Item("- ", w.Say("record.cell", w.Display.Force(cell.Newtons)));
        if (record.Measured.Stretch is { } stretch) w.Item("- ", w.Say("record.stretch", w.Display.Stretch(stretch.Meters), w.Display.StretchUnit));
        w.Section("resistance", "record.resistance");
        w.Table(
            [w.Say("capability.header", w.Display.ForceUnit), w.Say("low"), w.Say("central"), w.Say("high")],
            [Row(w, "record.estimated", planned.Demand.Total), Row(w, record.IsLowerBound ? "record.at-least" : "record.held", record.Resistance)]);
        w.Paragraph("record.by", w.Say("record.method." + methodKey));
        w.Paragraph("record." + Against(record), Text.Number(record.OverEstimate, 2));
        w.Section("about", "heading.about");
        w.Paragraph("about.reckoning", Assessment.ModelSet);
        w.Paragraph("about.policy", planned.Plan.Policy.ToString(), planned.Fingerprint);
        return w.Build();
    }

    /// <summary>How measurement and estimate lie to each other. What did not move says nothing where the pull stayed below the estimate.</summary>
    private static string Against(RecoveryRecord record)
    {
        if (!record.IsLowerBound) return record.WithinEstimate ? "within" : "outside";
        if (record.WithinEstimate) return "reached";
        return record.Resistance.HighNewtons < record.Planned.Demand.LowNewtons ? "open" : "outside";
    }

    private static IReadOnlyList<string> Row(ReportBuilder w, string key, ForceBand band) => [w.Say(key), w.Display.Cell(band.LowNewtons), w.Display.Cell(band.CentralNewtons), w.Display.Cell(band.HighNewtons)];
}
