using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Machines;

/// <summary>Sources of the room: tyres, axles, loads.</summary>
internal static class MachinesSources
{
    /// <summary>Deflection of a tyre by load and inflation.</summary>
    public static readonly Source Saarilahti = new("saarilahti-2002", "Saarilahti 2002, ECOWOOD Deliverable D2, University of Helsinki, eq. 2.22 (forest tyres)", Standing.Secondary);

    /// <summary>Deflection from data.</summary>
    public static readonly Source StaticLoadedRadius = new("static-loaded-radius", "Deflection = half the overall diameter less the static loaded radius of the tyre data book", Standing.UserSupplied);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [Saarilahti, StaticLoadedRadius];
}
