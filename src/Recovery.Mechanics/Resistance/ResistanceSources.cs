using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Sources of the room: what holds the machine.</summary>
internal static class ResistanceSources
{
    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [];
}
