using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Trafficability;

/// <summary>Sources of the room: prevention.</summary>
internal static class TrafficabilitySources
{
    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [];
}
