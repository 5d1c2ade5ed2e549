using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Machines;

/// <summary>Kinds of finding that this room raises: tyres, axles, loads.</summary>
internal static class MachinesFindings
{
    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [];
}
