using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Kinds of finding that this room raises: the plan.</summary>
internal static class PlanningFindings
{
    public static readonly FindingDefinition PeopleInLine = new("people.in-line", Severity.Stop, "There are people on foot in or near the line of pull.", "Everybody who is not needed goes well away before tension comes on; nobody stands at either end.", PlanningSources.LineVictims);
    public static readonly FindingDefinition PeopleUnknown = new("people.not-declared", Severity.Caution, "Nobody has said that the line of pull and its ends are clear of people.", "One person in command sees to it and says so.", PlanningSources.LineVictims);
    public static readonly FindingDefinition CabOnLine = new("people.cab-on-line", Severity.Note, "The operator in the {subject} sits on the line of pull, where hardware flies: glass is no protection.", "Shield the rear window, keep the head low, use no steel in the line; the fewer people in cabs the better.", PlanningSources.LineVictims);
    public static readonly FindingDefinition FromMemory = new("plan.from-memory", Severity.Note, "Part of these numbers rests on values from memory: {subject}.", "Confirm them in the publications of the bibliography before leaning on a narrow margin.", PlanningSources.PlanRules);
    public static readonly FindingDefinition CheckLeftOut = new("plan.check-left-out", Severity.Caution, "The standard check '{subject}' was left out of this plan.", "Put it back.", PlanningSources.PlanRules);
    public static readonly FindingDefinition RunsAway = new("plan.runs-away", Severity.Stop, "Once out of its hole the machine rolls downhill by itself: the slope pulls with {required}, its wheels hold back {available}.", "Have its brakes manned or a holding line behind it, declare that in the plan, or pull across or up the slope.", PlanningSources.RunsOn);
    public static readonly FindingDefinition MayRunAway = new("plan.may-run-away", Severity.Caution, "Once out of its hole the machine may roll downhill by itself: the slope pulls with {required}, its wheels hold back {available} on the firmest ground on its way.", "Agree who or what stops it before the pull: brakes, a holding line, an uphill way out.", PlanningSources.RunsOn);
    public static readonly FindingDefinition LineInclined = new("plan.line-inclined", Severity.Note, "The line is not level: at its steady load it {subject} the stuck machine with {required}, which the demand does not hold.", "A longer line is flatter.", PlanningSources.LineInclined);
    public static readonly FindingDefinition Sideways = new("plan.line-sideways", Severity.Caution, "The line runs off the direction of the pull: {required} of it pull sideways, on the {subject} against {available} that would lift its wheels on one side.", "Bring the puller into line; a sideways pull can turn either machine over and loads one leg of the bridle harder.", PlanningSources.Sideways);
    public static readonly FindingDefinition NearLimit = new("plan.within-ten-percent", Severity.Note, "Less than a tenth to spare: {subject}, {available} where the limit is {required}.", "Look at what went into both numbers before leaning on it.", PlanningSources.PlanRules);
    public static readonly FindingDefinition TackleShort = new("plan.tackle-short", Severity.Caution, "The {subject} sustains {available}, less than the {required} on which a tackle is sized: the larger of the high demand and the depth rule.", "Another part of line, a stronger puller, or lighten and dig first.", PlanningSources.Tackle);
    public static readonly FindingDefinition TackleAnchorUnknown = new("plan.tackle-anchor-unknown", Severity.Caution, "Nobody has said what the anchor of the {subject} holds; it will see {required}.", "Reckon the anchor (deadman, another machine) and declare what it holds; pickets hold no harvester.", PlanningSources.Tackle);
    public static readonly FindingDefinition TackleAnchorGives = new("plan.tackle-anchor-gives", Severity.Stop, "The anchor of the {subject} holds {available}; it will see {required}.", "A stronger anchor or fewer parts.", PlanningSources.Tackle);
    public static readonly FindingDefinition TackleBlocksUnknown = new("plan.tackle-blocks-unknown", Severity.Caution, "Nobody has said what the blocks of the {subject} may carry; the moving block will see {required}.", "Read the working load limit on the blocks and declare it.", PlanningSources.Tackle);
    public static readonly FindingDefinition TackleBlocksExceeded = new("plan.tackle-blocks-exceeded", Severity.Stop, "The blocks of the {subject} may carry {available}; the moving block will see {required}.", "Stronger blocks or fewer parts.", PlanningSources.Tackle);
    public static readonly FindingDefinition Contradiction = new("plan.contradiction", Severity.Stop, "The plan contradicts itself: {subject}.", "Correct the plan.", PlanningSources.PlanRules);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [PeopleInLine, PeopleUnknown, CabOnLine, FromMemory, CheckLeftOut, RunsAway, MayRunAway, LineInclined, Sideways, NearLimit, TackleShort, TackleAnchorUnknown, TackleAnchorGives, TackleBlocksUnknown, TackleBlocksExceeded, Contradiction];
}
