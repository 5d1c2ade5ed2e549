using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding that this room raises: what can pull it.</summary>
internal static class TractionFindings
{
    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [];
}
