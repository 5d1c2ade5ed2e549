using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Resistance;

/// <summary>Published rolling resistance over weight on named surfaces, each with its table and standing.</summary>
/// <remarks>For wheels that run on a surface, not for mired ones. What the tables call mud is a rut of centimetres.</remarks>
public static class RollingSurfaces
{
    /// <summary>Gets all surfaces, table by table.</summary>
    public static IReadOnlyList<RollingSurface> All { get; } = Array.AsReadOnly<RollingSurface>(
    [
        new("hard road", 0.008, 0.008, ResistanceSources.Moyer),
        new("dry firm packed gravel", 0.012, 0.012, ResistanceSources.Moyer),
        new("wet loose gravel", 0.06, 0.06, ResistanceSources.Moyer),
        new("concrete or asphalt, car tyre", 0.013, 0.013, ResistanceSources.WongRolling),
        new("gravel, car tyre", 0.02, 0.02, ResistanceSources.WongRolling),
        new("unpaved road, car tyre", 0.05, 0.05, ResistanceSources.WongRolling),
        new("field, car tyre", 0.1, 0.35, ResistanceSources.WongRolling),
        new("concrete, farm tyre", 0.02, 0.04, ResistanceSources.McKibben),
        new("grass sod, farm tyre", 0.05, 0.07, ResistanceSources.McKibben),
        new("tilled loam, farm tyre", 0.19, 0.40, ResistanceSources.McKibben),
        new("loose sand, farm tyre", 0.18, 0.46, ResistanceSources.McKibben),
        new("hard smooth haul road", 0.02, 0.02, ResistanceSources.EarthmovingTable),
        new("rutted dirt road", 0.05, 0.075, ResistanceSources.EarthmovingTable),
        new("soft muddy, rutted or sandy road", 0.10, 0.20, ResistanceSources.EarthmovingTable),
    ]);
}
