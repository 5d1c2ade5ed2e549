using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>Every kind of finding the library can raise.</summary>
public static class FindingCatalogue
{
    /// <summary>Gets all definitions, each id once.</summary>
    public static IReadOnlyList<FindingDefinition> All { get; } = Collect();

    private static IReadOnlyList<FindingDefinition> Collect()
    {
        var all = new List<FindingDefinition>();
        return all.AsReadOnly();
    }
}
