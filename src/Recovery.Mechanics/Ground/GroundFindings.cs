using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>Kinds of finding that this room raises: soil, grade.</summary>
internal static class GroundFindings
{
    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [];
}
