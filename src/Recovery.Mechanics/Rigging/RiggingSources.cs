using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Sources of the room: the rig.</summary>
internal static class RiggingSources
{
    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [];
}
