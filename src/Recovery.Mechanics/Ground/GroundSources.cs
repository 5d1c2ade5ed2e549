using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>Sources of the room: soil, grade.</summary>
internal static class GroundSources
{
    /// <summary>Rating cone index.</summary>
    public static readonly Source RatingConeIndex = new("rci", "RCI = CI x RI: ERDC/CRREL SR-04-1 (FASST) sec. 5.2; US Army engineer course EN5341 pp. 3-34 to 3-36", Standing.Primary);

    /// <summary>Remoulding index limits.</summary>
    public static readonly Source RemouldingLimits = new("ri-limits", "Remoulding index capped at 1.0; below 0.5 unlikely in fat clay: ERDC/GSL SR-13-2, 2013", Standing.Secondary);

    /// <summary>Cone factor.</summary>
    public static readonly Source ConeFactor = new("cone-factor", "Cone factor N_k 12.5 for the WES field cone, band 10 to 20 (Lunne, Robertson and Powell 1997)", Standing.FromMemory);

    /// <summary>Two strengths of a stuck machine.</summary>
    public static readonly Source WallAndFloor = new("wall-and-floor", "Two soil strengths of a stuck machine, wall and floor: engineering judgement of this library", Standing.Judgement);

    /// <summary>Unit weight of wet mineral soil.</summary>
    public static readonly Source UnitWeight = new("unit-weight", "Unit weight of wet mineral soil 17 kN/m3: engineering judgement", Standing.Judgement);

    /// <summary>Adhesion factor.</summary>
    public static readonly Source Adhesion = new("adhesion-factor", "Adhesion factor 0.5 (0.3 to 0.6) on undrained strength, capped at 12 kPa for wet farm clay: engineering judgement between API RP 2GEO 2011 and NAVFAC DM-7.2", Standing.Judgement);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [RatingConeIndex, RemouldingLimits, ConeFactor, WallAndFloor, UnitWeight, Adhesion];
}
