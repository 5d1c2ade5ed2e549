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
        "The line does not run free: {subject}.",
        "Dig the belly free along the line, or use a bridle long enough for its apex to lie behind the tail with legs that pass beside the belly. Of a hump on the ground take the top off, or stand the puller where the line clears it.",
        GeneralSources.Statics);

    public static readonly FindingDefinition FoulsInClimb = new(
        "line.fouls-in-climb",
        Severity.Caution,
        "The line is clear as found but fouls {subject} once the front axle has risen {available}; the climb is {required}. Stop there and rig anew.",
        "Stop the pull at that rise and rig anew; a longer line is flatter.",
        GeneralSources.Judgement);

    public static readonly FindingDefinition MeetsGround = new(
        "line.meets-ground",
        Severity.Caution,
        "The line is clear as found but bears on {subject} once the machine has come {available} on; it is to be drawn {required}. Stop there and rig anew.",
        "Take the top off, stand the puller where the line clears it, or stop at that way and rig anew: a line that bears on an edge is cut and bent there, and throws what it bears on.",
        GeneralSources.Judgement);

    public static readonly FindingDefinition GeometryUnknown = new(
        "line.path-not-checked",
        Severity.Caution,
        "Where the line runs under and past {subject} was not given, so its clearance was not checked.",
        "Give tail, belly and underside heights, and place and height of the attachment; look at the line with a little tension on before the pull.",
        GeneralSources.Trade);

    public static readonly FindingDefinition ElasticTail = new(
        "line.elastic-tail",
        Severity.Note,
        "The {subject} stretches little, but the rest of the line holds {available} of the {required} stored: if it parts, that energy goes into its end. Low stretch of one part is no protection in an assembly.",
        "Take the energy of the whole line for every part of it, or leave the elastic part out.",
        LinesSources.ElasticTail);

    public static readonly FindingDefinition WetAsDry = new(
        "line.wet-as-dry",
        Severity.Note,
        "The {subject} is wet and is taken as stiff wet as dry: no curve of wet webbing is published. Instructions say that a wet strap stretches less, so a peak may be higher.",
        "Use a curve measured on the wet line.",
        GeneralSources.Judgement);

    public static readonly FindingDefinition PeakBeyondCurve = new(
        "line.peak-beyond-curve",
        Severity.Stop,
        "The take-up drives the {subject} past the end of its load-elongation curve at {available}: it breaks there, or nothing is known beyond.",
        "Draw the line taut first in a lower gear, lower the pull, or use a line whose curve reaches further.",
        LinesSources.HeldAnchor);

    public static readonly FindingDefinition NoAdmissibleSpeed = new(
        "line.no-admissible-speed",
        Severity.Stop,
        "No speed at all keeps the {subject} under its limit of {available}: by the rule that applies the limit must be at least {required}.",
        "Lower the pull with a weaker puller or softer ground under it, use stronger gear, or declare a locked gear with the line drawn taut.",
        LinesSources.HeldAnchor);

    public static readonly FindingDefinition LockedGearNotMet = new(
        "line.locked-gear-not-met",
        Severity.Caution,
        "The locked-gear rule is not claimed: {subject}. The held-anchor rule stands.",
        "Engage one low gear before the line is taut and keep it, pull on the level or uphill, draw the line taut first.",
        LinesSources.LockedGear);

    public static readonly FindingDefinition SecondPull = new(
        "line.second-pull",
        Severity.Note,
        "A second pull on the same, bedded-in {subject} peaks at {required} where the first peaks at {available}: it is about twice as stiff then.",
        "Declare whether it was pulled before; rest the line or change it between hard pulls.",
        LinesSources.SecondPull);

    public static readonly FindingDefinition DamperNoCredit = new(
        "line.damper-no-credit",
        Severity.Note,
        "A {subject} is present. No credit is taken for it: no measured reduction is published, it can fly itself, and it does nothing for hardware on its other side.",
        "Nothing in the numbers; keep it as a habit where instructions ask for it, one near each end.",
        LinesSources.PlasticCapture);

    public static readonly FindingDefinition TetherInadequate = new(
        "line.tether-inadequate",
        Severity.Caution,
        "The {subject} is inadequate: it needs {required} and has {available}. It would part and fly with what it was meant to hold.",
        "Use a longer tether that stretches, on an anchor that bears the arrest force, with slack just above the working stretch; or do not count on one.",
        LinesSources.TetherArrest);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [RunUp, ProcedureUndeclared, FoulsMachine, FoulsInClimb, MeetsGround, GeometryUnknown, ElasticTail, WetAsDry, PeakBeyondCurve, NoAdmissibleSpeed, LockedGearNotMet, SecondPull, DamperNoCredit, TetherInadequate];
}
