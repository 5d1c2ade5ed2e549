using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Kinds of finding that this room raises: the line under load.</summary>
internal static class LinesFindings
{
    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [];
}
