using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Kinds of finding that this room raises: what holds the machine.</summary>
internal static class ResistanceFindings
{
    public static readonly FindingDefinition BellyDrags = new(
        "mire.belly-drags",
        Severity.Caution,
        "The sealed belly will drag: the floor under the {subject} cannot bear more than its own load, so the wheels cannot lift the belly off the ground; they would go deeper first.",
        "Dig the belly free or let air and water under it before the pull.",
        ResistanceSources.Composition);

    public static readonly FindingDefinition BellyUplift = new(
        "mire.belly-uplift",
        Severity.Note,
        "The sealed belly could hold {required} against a rise; {available} of it can develop before the wheels go deeper ({subject} limits). Published accuracy of such suction is half to one and a half times.",
        "Dig the belly free or let air and water under it before the pull.",
        ResistanceSources.Composition);

    public static readonly FindingDefinition FloorAboveReading = new(
        "mire.floor-above-reading",
        Severity.Note,
        "The machine needs a floor of {required} merely to stand, the reading gives {available}: the cone did not reach what carries the machine. The needed floor is used for all three bounds.",
        "Push the cone deeper, to 0.45 m and beyond, beside the wheels.",
        GroundSources.WallAndFloor);

    public static readonly FindingDefinition FloorNotPositive = new(
        "mire.floor-not-known",
        Severity.Note,
        "Displaced soil alone would carry the machine, so its standing there says nothing about the floor; the least floor of 1 kPa is taken as the low and no floor value can be trusted here.",
        "Check depths and weight; take a cone reading in the floor of the rut.",
        GroundSources.WallAndFloor);

    public static readonly FindingDefinition MethodsDiffer = new(
        "mire.methods-differ",
        Severity.Note,
        "The handbook depth rule gives {required}, the soil model {available} at central: they differ by more than two. {subject}",
        "Trust neither alone; keep the pull low and look again after each measure.",
        ResistanceSources.DepthRule);

    public static readonly FindingDefinition ModelOutOfRange = new(
        "mire.model-out-of-range",
        Severity.Note,
        "A wheel of the {subject} counts a wheel model outside its range, as the least it must overcome to roll on that soil.",
        "Nothing to do; read the demand of that wheel as a lower limit.",
        ResistanceSources.Composition);

    public static readonly FindingDefinition IndexCapped = new(
        "mire.index-capped",
        Severity.Note,
        "The reading of {required} would let the wheel model drive this machine, yet it is stuck: {subject} lies above its own critical value of {available} and is taken down to it.",
        "Take the reading in the layer that carried the wheels, and measure the remoulding index.",
        GroundSources.WallAndFloor);

    public static readonly FindingDefinition SuspensionUndeclared = new(
        "mire.suspension-undeclared",
        Severity.Note,
        "How the axles of the {subject} share the load is not declared; both linked axles and a straight frame were worked and the less favourable counts at each bound.",
        "Declare the suspension of the machine.",
        GeneralSources.Statics);

    public static readonly FindingDefinition NearBreak = new(
        "mire.rolling-or-buried",
        Severity.Note,
        "The wheels of the {subject} stand near the break between rolling and buried, a tenth of their diameter, where a few centimetres of reading decide which terms count: taken as buried the central demand is {required}, taken as rolling {available}.",
        "Measure the depth again at each of these wheels, both sides, and plan on the larger figure.",
        ResistanceSources.Composition);

    public static readonly FindingDefinition OverHub = new(
        "mire.over-the-hub",
        Severity.Caution,
        "The wheels of the {subject} stand over their hub: no pull along the ground lifts a wheel over that as a step, so either the soil ahead fails or a way is dug; the soil terms are outside their range there.",
        "Dig a ramp ahead of these wheels first, then work the pull out again.",
        GeneralSources.Statics);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [BellyDrags, BellyUplift, FloorAboveReading, FloorNotPositive, MethodsDiffer, ModelOutOfRange, IndexCapped, SuspensionUndeclared, NearBreak, OverHub];
}
