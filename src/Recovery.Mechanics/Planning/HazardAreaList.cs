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
        var metric = Display.Metric;
        return new List<HazardArea>
        {
            Area("line-of-pull", "the line", 0, tower, stuck, PlanningSources.LineVictims, metric),
            Area("sweep", tower, length + stretch, tower, stuck, GeneralSources.Statics, metric),
            Area("sweep", stuck, length + stretch, tower, stuck, GeneralSources.Statics, metric),
            Area("published-rule", "the line", LargestRule * length, tower, stuck, LinesSources.Distance, metric),
        }.AsReadOnly();
    }

    /// <summary>The words of an area in the units asked for.</summary>
    public static string Words(HazardArea area, Display display) => area.Key switch
    {
        "sweep" => "Within " + display.Length(area.Radius.Meters) + " of where the line is made fast on the " + area.Centre + " a parted line can sweep, on both sides.",
        "published-rule" => "The largest published rule asks for 2.5 times the line, here " + display.Length(area.Radius.Meters) + " to the side (other authors: 1.5 times; twice the paid-out line; one cable length). They disagree and none is derived: take it as the least to draw.",
        _ => area.Text,
    };

    private static HazardArea Area(string key, string centre, double radius, string tower, string stuck, Source source, Display display)
    {
        var area = new HazardArea(key, centre, radius, "The line of pull and both its ends, through and past the " + tower + " and the " + stuck + ", are excluded altogether; hardware flies there and far beyond any circle. Operators in cabs on it are exposed.", source);
        return key == "line-of-pull" ? area : new HazardArea(key, centre, radius, Words(area, display), source);
    }
}
