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

    /// <summary>Rules of thumb on the rating cone index.</summary>
    public static readonly Source RatingSigns = new("rci-signs", "Mason and Baylot, US Army ERDC, as summarised in a secondary text: RCI at most 40 psi likely immobilised, top centimetre at most 50 psi slippery, CBR per cent to RCI psi about 1 to 56", Standing.Secondary);

    /// <summary>Cone factor.</summary>
    public static readonly Source ConeFactor = new("cone-factor", "Cone factor N_k 12.5 for the WES field cone, band 10 to 20 (Lunne, Robertson and Powell 1997)", Standing.FromMemory);

    /// <summary>Two strengths of a stuck machine.</summary>
    public static readonly Source WallAndFloor = new("wall-and-floor", "Two soil strengths of a stuck machine, wall and floor: engineering judgement of this library", Standing.Judgement);

    /// <summary>Unit weight of wet mineral soil.</summary>
    public static readonly Source UnitWeight = new("unit-weight", "Unit weight of wet mineral soil 17 kN/m3: engineering judgement", Standing.Judgement);

    /// <summary>Adhesion factor.</summary>
    public static readonly Source Adhesion = new("adhesion-factor", "Adhesion factor 0.5 (0.3 to 0.6) on undrained strength, capped at 12 kPa for wet farm clay: engineering judgement between API RP 2GEO 2011 and NAVFAC DM-7.2", Standing.Judgement);

    /// <summary>Cone index from class and moisture.</summary>
    public static readonly Source MoistureCone = new("smsp-moisture", "CI = exp(a + b ln w) by USCS class: SMSP II, Sullivan et al. 1997 pp. 32-33 and 75-76; Frankenstein and Koenig 2004, ERDC/CRREL SR-04-1 Table 5.2.1", Standing.Secondary);

    /// <summary>Slope of fat clay.</summary>
    public static readonly Source MoistureFatClay = new("smsp-moisture-ch", "Slope -2.583 of CI of fat clay (CH) against moisture, taken for the printed -5.583 of SMSP II", Standing.FromMemory);

    /// <summary>Rating cone index from class and moisture.</summary>
    public static readonly Source MoistureRating = new("moisture-rating", "RCI = exp(a' + b' ln w) by class: Sullivan and Anderson 2000, as coded in an academic implementation that cites it", Standing.Secondary);

    /// <summary>Rating pairs from memory.</summary>
    public static readonly Source MoistureRatingFromMemory = new("moisture-rating-memory", "RCI pairs of CL-ML, MH and OL against moisture, after SMSP II", Standing.FromMemory);

    /// <summary>Scatter of the moisture fits.</summary>
    public static readonly Source MoistureScatter = new("moisture-scatter", "Moisture fits scatter by a factor of 1.5 to 2 either way: engineering judgement of this library", Standing.Judgement);

    /// <summary>Full scale of the army cone.</summary>
    public static readonly Source ConeFullScale = new("cone-full-scale", "Full scale of the army cone, 150 lbf on 0.5 in2 (300 psi): ERDC/GSL SR-13-2, 2013", Standing.Secondary);

    /// <summary>Consistency by hand.</summary>
    public static readonly Source Consistency = new("consistency", "Unconfined strength by hand test: TM 5-818-1 / AFM 88-3 ch. 7, Table 2-2", Standing.Primary);

    /// <summary>Strength from the liquidity index.</summary>
    public static readonly Source LiquidityIndex = new("vardanega-haigh-2014", "s_u = s_LL R^(1 - LI) with R 35: Vardanega and Haigh 2014, Canadian Geotechnical Journal, 641 fall-cone tests on 101 soils", Standing.Primary);

    /// <summary>Strength at the liquid limit.</summary>
    public static readonly Source LiquidLimitStrength = new("liquid-limit-strength", "Undrained strength at the liquid limit 1.7 kPa", Standing.FromMemory);

    /// <summary>Range of the liquidity index.</summary>
    public static readonly Source LiquidityIndexRange = new("liquidity-index-range", "Liquidity index 0.2 to 1.1 as the range of the fall-cone fit", Standing.FromMemory);

    /// <summary>Adhesion of piles.</summary>
    public static readonly Source AdhesionApi = new("api-rp-2geo", "API RP 2GEO 2011 (as RP 2A): alpha = 0.5 psi^-0.5 or 0.5 psi^-0.25, at most 1", Standing.Secondary);

    /// <summary>Range of the pile rule.</summary>
    public static readonly Source AdhesionApiRange = new("api-rp-2geo-range", "Strength over effective overburden up to 3 for the alpha of API RP 2GEO", Standing.FromMemory);

    /// <summary>Adhesion of steel piles.</summary>
    public static readonly Source AdhesionNavfac = new("navfac-dm72-piles", "NAVFAC DM-7.2, steel piles: adhesion 250, 460, 700 psf at cohesion 250, 500, 1000 psf", Standing.FromMemory);

    /// <summary>Adhesion after Tomlinson.</summary>
    public static readonly Source AdhesionTomlinson = new("tomlinson-adhesion", "Tomlinson: adhesion factor about 1 below 25 kPa, falling to 0.3 above 100 kPa", Standing.FromMemory);

    /// <summary>Critical layer.</summary>
    public static readonly Source CriticalLayer = new("critical-layer", "Critical layer by running gear and the drop-layer rule: ERDC/GSL SR-13-2 Table 3, 2013", Standing.Secondary);

    /// <summary>Critical layer and passes.</summary>
    public static readonly Source CriticalLayerPasses = new("critical-layer-passes", "The critical layer depends on vehicle, weight, soil and number of passes: US Army engineer course EN5341 p. 3-27", Standing.Primary);

    /// <summary>Penetration resistance of mineral soil.</summary>
    public static readonly Source VegaNieva = new("vega-nieva-2009", "Vega-Nieva et al. 2009, penetration resistance from sand, porosity and saturation", Standing.Secondary);

    /// <summary>Peat, power law.</summary>
    public static readonly Source Peat = new("peat-power-law", "Cone index of peat, 10504 w^-0.561 kPa, as given in a secondary text without its origin", Standing.Secondary);

    /// <summary>Peat after Amarjan.</summary>
    public static readonly Source Amarjan = new("amarjan-peat", "Amarjan: cone index and shear strength of peat from moisture and humification, as given in a secondary text", Standing.Secondary);

    /// <summary>Cohesion of compacted soil.</summary>
    public static readonly Source CompactedCohesion = new("usbr-cohesion", "Saturated effective cohesion of compacted soil by class: USBR 1977 in Huang 1983", Standing.Secondary);

    /// <summary>Terrain parameters.</summary>
    public static readonly Source BekkerTable = new("wong-2008-terrain", "Terrain parameters: Wong 2008, Theory of Ground Vehicles, 4th ed.", Standing.Secondary);

    /// <summary>Terrain parameters to cone index.</summary>
    public static readonly Source BekkerCone = new("bekker-cone", "Cone index from Bekker parameters, Janosi-type conversion for the army cone", Standing.Secondary);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [RatingConeIndex, RemouldingLimits, RatingSigns, ConeFactor, WallAndFloor, UnitWeight, Adhesion, MoistureCone, MoistureFatClay, MoistureRating, MoistureRatingFromMemory, MoistureScatter, ConeFullScale, Consistency, LiquidityIndex, LiquidLimitStrength, LiquidityIndexRange, AdhesionApi, AdhesionApiRange, AdhesionNavfac, AdhesionTomlinson, CriticalLayer, CriticalLayerPasses, VegaNieva, Peat, Amarjan, CompactedCohesion, BekkerTable, BekkerCone];
}
