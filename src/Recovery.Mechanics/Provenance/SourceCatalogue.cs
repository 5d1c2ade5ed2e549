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
        all.AddRange(Ground.GroundSources.All);
        all.AddRange(Machines.MachinesSources.All);
        all.AddRange(Terramechanics.TerramechanicsSources.All);
        all.AddRange(Resistance.ResistanceSources.All);
        all.AddRange(Traction.TractionSources.All);
        all.AddRange(Lines.LinesSources.All);
        all.AddRange(Rigging.RiggingSources.All);
        all.AddRange(Rigging.PartSources.All);
        all.AddRange(Planning.PlanningSources.All);
        all.AddRange(Uncertainty.UncertaintySources.All);
        all.AddRange(Trafficability.TrafficabilitySources.All);
        return all.AsReadOnly();
    }
}
