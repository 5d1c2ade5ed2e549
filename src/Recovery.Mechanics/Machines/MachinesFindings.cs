using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Machines;

/// <summary>Kinds of finding that this room raises: tyres, axles, loads.</summary>
internal static class MachinesFindings
{
    /// <summary>A planned inflation below what the maker lists.</summary>
    public static readonly FindingDefinition InflationBelowLimit = new(
        "tyre.inflation-below-limit",
        Severity.Caution,
        "The {subject} are to run at {available}, below the lowest inflation that their maker lists for the load, {required}: the carcass is overloaded, and the tyre may turn on its rim or leave it under drive.",
        "Keep to the lowest inflation listed for the load, or take load off until the tables allow less.",
        GeneralSources.Trade);

    /// <summary>A planned inflation above what the maker allows.</summary>
    public static readonly FindingDefinition InflationAboveLimit = new(
        "tyre.inflation-above-limit",
        Severity.Caution,
        "The {subject} are to run at {available}, above the highest inflation that their maker allows, {required}: a tyre that bursts beside people kills, and a hard tyre sinks deeper.",
        "Let the tyres down to what their maker allows.",
        GeneralSources.Trade);

    /// <summary>Tyres to be let down without a known limit.</summary>
    public static readonly FindingDefinition InflationLimitUnknown = new(
        "tyre.inflation-limit-unknown",
        Severity.Note,
        "The {subject} are to be let down to {available}, and the lowest inflation that their maker lists for the load is not known.",
        "Read it in the load table of the tyre; speed and drive under load count there.",
        GeneralSources.Trade);

    /// <summary>Lugs that run backwards.</summary>
    public static readonly FindingDefinition LugsBackwards = new(
        "tyre.lugs-backwards",
        Severity.Note,
        "The wheels of the {subject} are to drive against the run of their lugs, and none of them is mounted turned round: the traction models were made on lugs that run forwards, and no published figure says what is lost.",
        "On duals, one tyre of each pair mounted turned round gives a lug that bites when backing.",
        GeneralSources.Trade);

    /// <summary>A wheel that has left the ground.</summary>
    public static readonly FindingDefinition WheelLifts = new(
        "machine.wheel-lifts",
        Severity.Caution,
        "On this side slope the upper wheels of the {subject} leave the ground; what is left of the side moment goes to the other axles.",
        "Bring the machine to flatter ground, lower its load, or hold it from above while it moves.",
        GeneralSources.Statics);

    /// <summary>A machine that tips.</summary>
    public static readonly FindingDefinition Tips = new(
        "machine.tips",
        Severity.Stop,
        "The {subject} tips on this side slope: the side moment is {required} of what its wheels can hold, at rest and without a line.",
        "Do not stand it there; lower the load, flatten the ground, and let nobody near the lower side.",
        GeneralSources.Statics);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [InflationBelowLimit, InflationAboveLimit, InflationLimitUnknown, LugsBackwards, WheelLifts, Tips];
}
