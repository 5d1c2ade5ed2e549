using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>What ends a pull, and what is done again after it has been ended; for one plan only.</summary>
internal static class StopList
{
    public static IReadOnlyList<Precaution> Criteria(Assessment a, Wording wording)
    {
        var list = new PrecautionBuilder(wording);
        var display = wording.Display;
        var stages = a.Stages;
        list.Add("stop-word", GeneralSources.Trade);
        list.Add("stop-person", PlanningSources.LineVictims);
        if (stages.Count > 0) list.AddAs("stop-stretch", "stop-stretch", PlanningSources.Schedule, [display.StretchAtMost(stages[stages.Count - 1].LeastTravel.Meters), display.StretchUnit], StageList.PullerLimits(a) ? "stop-stretch-puller" : "stop-stretch", []);
        list.Add("stop-slip", Traction.TractionSources.TwoPulls);
        if (a.Capability.NoseRatio(StandardChecks.AtHitch(a.Loads, a.Available)) > 0.5) list.Add("stop-nose", Traction.TractionSources.Nose);
        foreach (var finding in a.Findings)
        {
            if (finding.Id == LinesFindings.FoulsInClimb.Id && finding.Available is { } rise) list.AddAs("stop-rise", "stop-rise", GeneralSources.Statics, [display.LengthAtMost(rise)], "stop-rise", [finding.Subject]);
            if (finding.Id == LinesFindings.MeetsGround.Id && finding.Available is { } way) list.AddAs("stop-way", "stop-way", GeneralSources.Statics, [display.LengthAtMost(way)], "stop-way", [finding.Subject]);
        }

        list.Add("stop-line", GeneralSources.Trade);
        list.Add("stop-slew", GeneralSources.Trade);
        return list.Build();
    }

    public static IReadOnlyList<Precaution> AfterAStop(Assessment a, Wording wording)
    {
        var list = new PrecautionBuilder(wording);
        list.Add("after-slack", PlanningSources.PeopleBetween);
        list.Add("after-look", GeneralSources.Trade);
        if (a.Stages is { Count: > 0 } stages) list.Add("after-mark", LinesSources.NylonWebbing, wording.Display.StretchAtMost(stages[stages.Count - 1].SecondPullTravel.Meters), wording.Display.StretchUnit);
        if (a.Demand.Stuck.AnyWheelBuried) list.Add("after-dig", GeneralSources.Trade);
        if (a.Plan.Rig.Bridle is not null) list.Add("after-bridle", GeneralSources.Trade);
        list.Add("after-record", GeneralSources.Trade);
        return list.Build();
    }
}
