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
    public static readonly FindingDefinition Contradiction = new("plan.contradiction", Severity.Stop, "The plan contradicts itself: {subject}.", "Correct the plan.", PlanningSources.PlanRules);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [PeopleInLine, PeopleUnknown, CabOnLine, FromMemory, CheckLeftOut, Contradiction];
}
