using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Kinds of finding that this room raises: the line under load.</summary>
internal static class LinesFindings
{
    public static readonly FindingDefinition RunUp = new(
        "line.run-up",
        Severity.Stop,
        "The procedure takes up slack or approaches at speed without a locked gear: that is a run-up, and no line is used with a run-up here, one with stretch included.",
        "Draw the line taut by creeping in the lowest gear, then raise the pull in steps.",
        GeneralSources.Trade);

    public static readonly FindingDefinition ProcedureUndeclared = new(
        "line.procedure-undeclared",
        Severity.Caution,
        "Nothing is declared of gear, slack and throttle: every part is checked against the careless load of {required}, where the puller can hold {available}.",
        "Declare the gear that stays engaged, and draw the line taut first.",
        LinesSources.Careless);

    public static readonly FindingDefinition FoulsMachine = new(
        "line.fouls",
        Severity.Stop,
        "The line fouls the machine: {subject}.",
        "Dig the belly free along the line, or use a bridle long enough for its apex to lie behind the tail with legs that pass beside the belly.",
        GeneralSources.Statics);

    public static readonly FindingDefinition FoulsInClimb = new(
        "line.fouls-in-climb",
        Severity.Caution,
        "The line is clear as found but fouls {subject} once the front axle has risen {available}; the climb is {required}. Stop there and rig anew.",
        "Stop the pull at that rise and rig anew; a longer line is flatter.",
        GeneralSources.Judgement);

    public static readonly FindingDefinition GeometryUnknown = new(
        "line.path-not-checked",
        Severity.Caution,
        "Where the line runs under and past {subject} was not given, so its clearance was not checked.",
        "Give tail, belly and underside heights; look at the line with a little tension on before the pull.",
        GeneralSources.Trade);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [RunUp, ProcedureUndeclared, FoulsMachine, FoulsInClimb, GeometryUnknown];
}
