using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>Every source the library rests on, for bibliographies and for the tests that hold them complete.</summary>
public static class SourceCatalogue
{
    /// <summary>Gets all sources, grouped by room, each key once.</summary>
    public static IReadOnlyList<Source> All { get; } = Collect();

    private static IReadOnlyList<Source> Collect()
    {
        var all = new List<Source>();
        all.AddRange(GeneralSources.All);
        all.AddRange(Terramechanics.TerramechanicsSources.All);
        return all.AsReadOnly();
    }
}
