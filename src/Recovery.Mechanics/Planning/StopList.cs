using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>What ends a pull, and what is done again after it has been ended; for one plan only.</summary>
internal static class StopList
{
    public static IReadOnlyList<Precaution> Criteria(Assessment a, Display display)
    {
        var list = new List<Precaution>();
        var stages = a.Stages;
        Add("stop-word", "Anybody calls the word, or radio contact is lost.", "Only one of those who see it has to be right.", GeneralSources.Trade);
        Add("stop-person", "Anybody walks into the kept area.", "There is no time to warn once a part has let go.", PlanningSources.LineVictims);
        if (stages.Count > 0)
            Add("stop-stretch", "The strap has stretched " + display.Stretch(stages[stages.Count - 1].LeastStretch.Meters) + " " + display.StretchUnit + " and the machine has not moved.", "If this strap is as stiff as it may be, the weakest part is at what it may carry.", PlanningSources.Schedule);
        Add("stop-slip", "The puller's wheels dig in: slip beyond about a third.", "It gains nothing beyond that and bogs itself.", Traction.TractionSources.TwoPulls);
        if (a.Capability.NoseRatio(a.Loads?.Output.Procedure ?? a.Capability.ImposableNewtons) > 0.5) Add("stop-nose", "The front of the puller grows light or the steering goes.", "It rears before the driver can act.", Traction.TractionSources.Nose);
        foreach (var finding in a.Findings)
        {
            if (finding.Id == LinesFindings.FoulsInClimb.Id && finding.Available is { } rise) Add("stop-rise", "The front axle has risen " + display.Length(rise, 2) + ".", "The line then touches " + finding.Subject + ".", GeneralSources.Statics);
        }

        Add("stop-line", "The line touches anything, or a part turns, slips, creeps or frays.", "An edge cuts a loaded strap at a fraction of its strength.", GeneralSources.Trade);
        Add("stop-slew", "The stuck machine slews, tips or sinks instead of coming.", "The line then pulls where nothing was checked.", GeneralSources.Trade);
        return list.AsReadOnly();

        void Add(string key, string action, string why, Source source) => list.Add(new Precaution(key, action, why, source));
    }

    public static IReadOnlyList<Precaution> AfterAStop(Assessment a)
    {
        var list = new List<Precaution>();
        Add("after-slack", "Slack the line off from the puller's seat; both machines parked; only then does anybody walk up.", "A held line has all its energy still in it.", PlanningSources.PeopleBetween);
        Add("after-look", "Look at every part again: straps, pins, attachments, the places where the line may rub.", "What has been loaded is not what was looked at.", GeneralSources.Trade);
        if (a.Loads is not null) Add("after-mark", "Set the zero mark of the tape anew.", "A strap that has been pulled stays longer and is about twice as stiff: read the stages against the stiff end.", LinesSources.NylonWebbing);
        if (a.Demand.Stuck.AnyWheelBuried) Add("after-dig", "Look at what moved: dig, vent and lighten before the next pull, and work the plan again with what has changed.", "The soil has closed round the wheels again.", GeneralSources.Trade);
        if (a.Plan.Rig.Bridle is not null) Add("after-bridle", "See that the bridle still runs free and sits in the middle of its eye.", "One leg may be carrying it all.", GeneralSources.Trade);
        Add("after-record", "Write down the stage, the stretch or the load cell at which it stopped or moved.", "It says more about this hole than any model.", GeneralSources.Trade);
        return list.AsReadOnly();

        void Add(string key, string action, string why, Source source) => list.Add(new Precaution(key, action, why, source));
    }
}
