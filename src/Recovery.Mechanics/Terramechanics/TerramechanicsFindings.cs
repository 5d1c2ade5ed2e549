using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Kinds of finding that this room raises: wheel and track models.</summary>
internal static class TerramechanicsFindings
{
    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [];
}
