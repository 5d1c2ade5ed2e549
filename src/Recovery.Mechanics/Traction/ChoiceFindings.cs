using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding about the choice of what pulls.</summary>
internal static class ChoiceFindings
{
    /// <summary>Share of the central demand below which a puller will not move it (judgement).</summary>
    public const double WillNot = 0.9;

    /// <summary>Share of the central demand below which it is undecided (judgement).</summary>
    public const double Undecided = 1.1;

    public static readonly FindingDefinition BelowPlanningHigh = new(
        "tackle.below-planning-high",
        Severity.Stop,
        "At the planning high the fall line of {subject} asks for {required}, the effort is {available}: with the blocks there are the tackle is too small.",
        "More blocks, a stronger winch, or less demand first: unload, dig, vent.",
        TackleSources.Steps);

    public static readonly FindingDefinition BlockUnknown = new(
        "tackle.block-unknown",
        Severity.Stop,
        "{subject}: the failing load of the block is not known; with this haul it must not be below {required}.",
        "Find its tag or its maker's sheet; a working load limit becomes a failing load only by the factor its maker states.",
        WinchSources.Stall);

    public static readonly FindingDefinition BlockWeak = new(
        "tackle.block-weak",
        Severity.Stop,
        "{subject}: the block fails at {available}; with this haul that must not be below {required}.",
        "A stronger block, or a winch that stalls earlier. Blocks carry two parts of line and a further factor of two.",
        WinchSources.Stall);

    public static readonly FindingDefinition NotHeld = new(
        "winch.not-held",
        Severity.Stop,
        "What holds the winch {subject} is not declared; it must hold {required}.",
        "Say what it stands on or is made fast to, and on which ground.",
        WinchSources.Stall);

    public static readonly FindingDefinition NoAnchor = new(
        "tackle.no-anchor",
        Severity.Stop,
        "There is no anchor for the fixed end of {subject}; it would have to hold {required}.",
        "A deadman more than two metres deep, or another machine on firm ground.",
        AnchorSources.AnchorOfLine);

    public static readonly FindingDefinition MachineThroughTackle = new(
        "tackle.machine-hauls",
        Severity.Caution,
        "{subject} hauls through a tackle: it travels as many metres for each metre of the casualty, and a jerk of its is multiplied as well.",
        "Only where there is way for it, at a creep, with a lookout at the tackle. A winch stands still and can be stopped.",
        GeneralSources.Trade);

    /// <summary>All kinds of this file.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [BelowPlanningHigh, BlockUnknown, BlockWeak, NotHeld, NoAnchor, MachineThroughTackle];
}
