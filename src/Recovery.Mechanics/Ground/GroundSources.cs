using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>Sources of the room: soil, grade.</summary>
internal static class GroundSources
{
    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [];
}
