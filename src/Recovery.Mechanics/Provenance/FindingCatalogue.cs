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
        all.AddRange(Ground.GroundFindings.All);
        all.AddRange(Machines.MachinesFindings.All);
        all.AddRange(Terramechanics.TerramechanicsFindings.All);
        all.AddRange(Resistance.ResistanceFindings.All);
        all.AddRange(Traction.TractionFindings.All);
        all.AddRange(Lines.LinesFindings.All);
        all.AddRange(Rigging.RiggingFindings.All);
        all.AddRange(Rigging.GearFindings.All);
        all.AddRange(Planning.PlanningFindings.All);
        return all.AsReadOnly();
    }
}
