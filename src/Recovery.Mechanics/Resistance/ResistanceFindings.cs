using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Kinds of finding that this room raises: what holds the machine.</summary>
internal static class ResistanceFindings
{
    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [];
}
