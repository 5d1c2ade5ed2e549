using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Sources of the room: sampling and reliability.</summary>
internal static class UncertaintySources
{
    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [];
}
