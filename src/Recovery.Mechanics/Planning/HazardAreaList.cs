using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>The areas of a plan: the excluded line of pull, the sweep about each surviving anchor, and the largest published rule as the floor of what is drawn.</summary>
internal static class HazardAreaList
{
    public static IReadOnlyList<HazardArea> Of(Assessment assessment, Wording wording)
    {
        var rig = assessment.Plan.Rig;
        var length = rig.LengthMetres;
        var stretch = assessment.Loads is { } loads ? loads.Output.ProcedureSoft / loads.Input.Soft : LargestStretch(rig);
        string tower = assessment.Plan.Tower.Machine.Name, stuck = assessment.Plan.Stuck.Machine.Name;
        var rule = DistanceRules.FloorOfDrawnArea(rig.LengthOverall).Meters;
        return new List<HazardArea>
        {
            new("line-of-pull", wording.Say("area.centre"), 0, wording.Say("area.line-of-pull", tower, stuck), PlanningSources.LineVictims),
            Sweep(tower, length + stretch, wording),
            Sweep(stuck, length + stretch, wording),
            new("published-rule", wording.Say("area.centre"), rule, wording.Say("area.published-rule", Text.Number(DistanceRules.Largest.Multiple!.Value), wording.Display.Length(rule)), DistanceRules.Largest.Source),
        }.AsReadOnly();
    }

    /// <summary>Stretch of straps of unknown strength at their breaking load, soft end: the largest there can be.</summary>
    private static double LargestStretch(Rigging.Rig rig)
    {
        double sum = 0;
        foreach (var part in rig.LineParts)
        {
            if (part is Rigging.Strap strap) sum += strap.Length.Meters / Rigging.Strap.MaterialOf(strap.Fibre).Soft;
        }

        return sum;
    }

    private static HazardArea Sweep(string centre, double radius, Wording wording) => new("sweep", centre, radius, wording.Say("area.sweep", wording.Display.Length(radius), centre), GeneralSources.Statics);
}
