using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding about ground anchors.</summary>
internal static class AnchorFindings
{
    public static readonly FindingDefinition TooWeak = new(
        "anchor.too-weak",
        Severity.Stop,
        "The anchor {subject} holds {available}; it must hold {required}, the greater of the planning high of the demand and what the puller can impose, without friction in the tackle.",
        "Go deeper or longer, take a heavier machine on firmer ground, use fewer parts at the anchor, or a winch that stalls earlier.",
        AnchorSources.AnchorOfLine);

    public static readonly FindingDefinition WithinTenPercent = new(
        "anchor.within-ten-percent",
        Severity.Note,
        "The anchor {subject} passes with less than a tenth in hand: {required} of {available}.",
        "Take an anchor with more in hand; watch it from the side while the load rises.",
        AnchorSources.AnchorOfLine);

    public static readonly FindingDefinition LineStronger = new(
        "anchor.line-stronger",
        Severity.Caution,
        "The line made fast to {subject} breaks at {required}, the anchor holds {available}: the anchor gives way first and flies along the line.",
        "Let the anchor carry the breaking strength of its line, or keep everybody out of the line of pull on both sides of the anchor.",
        AnchorSources.AnchorOfLine);

    public static readonly FindingDefinition Pickets = new(
        "anchor.pickets",
        Severity.Stop,
        "Pickets do not hold a harvester: {subject} holds {available}, asked are {required}. A sunk machine of 15 t alone takes 45 to 300 kN.",
        "Use a deadman more than two metres deep, or another machine on firm ground. Pickets are for guys and light hauling.",
        AnchorSources.PicketsAndMachines);

    public static readonly FindingDefinition PicketSoilUnknown = new(
        "anchor.picket-soil-unknown",
        Severity.Stop,
        "The soil of the pickets {subject} is not declared: in sand they hold 6 to 15 per cent of what they hold in cohesive soil.",
        "Say what soil they are driven into, down to their points.",
        AnchorSources.SteelPicketsBySoil);

    public static readonly FindingDefinition DeadmanShallow = new(
        "anchor.deadman-shallow",
        Severity.Stop,
        "The deadman {subject} lies at a mean depth of {available}; the table begins at {required} and says nothing above it.",
        "Go deeper: holding power rises more than in proportion to depth.",
        AnchorSources.Deadman);

    public static readonly FindingDefinition DeadmanSlender = new(
        "anchor.deadman-slender",
        Severity.Stop,
        "The log of {subject} is {available} times as long as thick, at most {required}: it breaks before the ground gives.",
        "Go deeper, so that a shorter log does, or take a thicker one.",
        AnchorSources.Deadman);

    public static readonly FindingDefinition DeadmanSlope = new(
        "anchor.deadman-slope",
        Severity.Caution,
        "The line to {subject} runs 1:{available}; it should run between 1:1 and 1:4.",
        "Set the deadman nearer or further away: its distance is the height of the line and its depth together, times the run.",
        AnchorSources.Deadman);

    public static readonly FindingDefinition DeadmanTrench = new(
        "anchor.deadman-trench",
        Severity.Caution,
        "The trench of {subject} is to be dug about {required} deep: its sides fall in, and drains, cables and pipes lie at that depth.",
        "Have drains and cables located first, dig by machine from outside, nobody in an unsupported trench or in front of the log under load.",
        GeneralSources.Trade);

    public static readonly FindingDefinition MachineNotBraked = new(
        "anchor.machine-not-braked",
        Severity.Stop,
        "No driven axle of {subject} is braked: a machine that can roll is no anchor.",
        "Set its brakes and chock it, or take another anchor.",
        AnchorSources.MachineAnchor);

    /// <summary>All kinds of this file.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [TooWeak, WithinTenPercent, LineStronger, Pickets, PicketSoilUnknown, DeadmanShallow, DeadmanSlender, DeadmanSlope, DeadmanTrench, MachineNotBraked];
}
