using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Kinds of finding that this room raises: the plan.</summary>
internal static class PlanningFindings
{
    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [];
}
