using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>The areas of a plan: the excluded line of pull, the sweep about each surviving anchor, and the largest published rule as the floor of what is drawn.</summary>
internal static class HazardAreaList
{
    /// <summary>Largest published multiple of the line.</summary>
    private const double LargestRule = 2.5;

    public static IReadOnlyList<HazardArea> Of(Assessment assessment)
    {
        var rig = assessment.Plan.Rig;
        var length = rig.LengthMetres;
        var stretch = assessment.Loads is { } loads ? loads.Output.ProcedureSoft / loads.Input.Soft : 0;
        string tower = assessment.Plan.Tower.Machine.Name, stuck = assessment.Plan.Stuck.Machine.Name;
        return new List<HazardArea>
        {
            new("line-of-pull", "the line", 0, "The line of pull and both its ends, through and past the " + tower + " and the " + stuck + ", are excluded altogether; hardware flies there and far beyond any circle. Operators in cabs on it are exposed.", PlanningSources.LineVictims),
            new("sweep", tower, length + stretch, "Within " + Text.With(length + stretch, "m", 3) + " of the hitch of the " + tower + " a parted line can sweep, on both sides.", GeneralSources.Statics),
            new("sweep", stuck, length + stretch, "Within " + Text.With(length + stretch, "m", 3) + " of the attachment on the " + stuck + " a parted line can sweep, on both sides.", GeneralSources.Statics),
            new("published-rule", "the line", LargestRule * length, "The largest published rule asks for 2.5 times the line, here " + Text.With(LargestRule * length, "m", 3) + " to the side (other authors: 1.5 times; twice the paid-out line; one cable length). They disagree and none is derived: take it as the least to draw.", LinesSources.Distance),
        }.AsReadOnly();
    }
}
