using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding about winches.</summary>
internal static class WinchFindings
{
    public static readonly FindingDefinition FleetAngle = new(
        "winch.fleet-angle",
        Severity.Caution,
        "The rope of {subject} runs off the drum too far from square: it needs {required} to the first sheave, there are {available}.",
        "Move the winch or the first sheave further away, in line with the middle of the drum.",
        WinchSources.FleetAngle);

    public static readonly FindingDefinition FleetAngleSmall = new(
        "winch.fleet-angle-small",
        Severity.Note,
        "The rope of {subject} runs off nearly square over the whole drum: beyond {required} it tends to pile up at the flange; there are {available}.",
        "Watch how it winds; guide it by moving the machine, never by hand.",
        WinchSources.FleetAngle);

    public static readonly FindingDefinition FewWraps = new(
        "winch.few-wraps",
        Severity.Stop,
        "Fewer than five wraps would be left on the drum of {subject}: {required} are to be paid out, {available} can be. The wraps hold the rope, not its end fitting.",
        "Bring the winch nearer or lengthen the line on its far side.",
        WinchSources.Wraps);

    /// <summary>All kinds of this file.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [FleetAngle, FleetAngleSmall, FewWraps];
}
