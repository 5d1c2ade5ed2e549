using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Sources of the room: what can pull it.</summary>
internal static class TractionSources
{
    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [];
}
