using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding about tackle.</summary>
internal static class TackleFindings
{
    public static readonly FindingDefinition NoAdvantage = new(
        "tackle.no-advantage",
        Severity.Stop,
        "No tackle of reasonable size brings the load within reach of {subject}: at the last advantage tried the fall line asks for {required}, the effort is {available}.",
        "Lower the demand first (unload, dig, vent), or use a stronger winch: every sheave adds a tenth of the load in friction.",
        TackleSources.Steps);

    /// <summary>All kinds of this file.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [NoAdvantage];
}
