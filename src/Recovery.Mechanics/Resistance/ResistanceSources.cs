using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Sources of the room: what holds the machine.</summary>
internal static class ResistanceSources
{
    /// <summary>Passive pressure on a vertical face.</summary>
    public static readonly Source Rankine = new("rankine-passive", "Rankine passive pressure of undrained clay on a vertical face, phi = 0 (textbook plasticity)", Standing.Derived);

    /// <summary>Suction behind a buried face.</summary>
    public static readonly Source Suction = new("api-rp-2geo-sliding", "API RP 2GEO 2011, sliding resistance: K_ru 4 in full contact, 2 where the rear side cannot be relied on; their difference is the suction", Standing.Secondary);

    /// <summary>Bearing factor of a shallow strip.</summary>
    public static readonly Source BearingFactor = new("api-rp-2geo-bearing", "Bearing factor 2 + pi = 5.14, API RP 2GEO 2011", Standing.Secondary);

    /// <summary>How the terms add up for a whole machine.</summary>
    public static readonly Source Composition = new("mire-composition", "Whole-machine composition of the terms, its shares and its bounds: engineering judgement of this library", Standing.Judgement);

    /// <summary>Depth rule.</summary>
    public static readonly Source DepthRule = new("army-depth-rule", "Mire resistance 1, 2 or 3 times the weight by depth of the wheels, US Army FM 20-22 (1970) and FM 9-43-2 (1995)", Standing.FromMemory);

    /// <summary>Reductions of the depth rule.</summary>
    public static readonly Source DepthRuleReductions = new("army-depth-rule-reductions", "Mire resistance less 10 % against the direction of entry, 40 % with powered tracks, 50 % with both; overturned machine half its weight: US Army FM 20-22 (1970) and FM 9-43-2 (1995)", Standing.FromMemory);

    /// <summary>Slopes of an entry rut.</summary>
    public static readonly Source ExitSlopes = new("exit-slopes", "Entry rut 1:10, 1:6, 1:4 where it was not measured: engineering judgement", Standing.Judgement);

    /// <summary>Passive pressure with cohesion and friction.</summary>
    public static readonly Source RankineFriction = new("rankine-friction", "Rankine passive pressure of a soil with cohesion and friction on a vertical face (textbook plasticity)", Standing.Derived);

    /// <summary>Soft-clay p-y law.</summary>
    public static readonly Source Matlock = new("matlock-1970", "Matlock 1970, OTC 1204, soft-clay p-y law with its cap and critical depth; texts disagree which of J 0.5 and 0.25 belongs to soft clay", Standing.Secondary);

    /// <summary>Passive resistance of a pipe.</summary>
    public static readonly Source VerleyLund = new("verley-lund-1995", "Verley and Lund 1995; DNV-RP-F109: passive resistance of a pipe in clay, constants", Standing.FromMemory);

    /// <summary>Lateral breakout, bearing and geometry of a pipe.</summary>
    public static readonly Source DnvLateral = new("dnv-rp-f114", "DNV-RP-F114, undrained lateral breakout, residual, movement and bearing of a pipe, as coded in an engineering implementation that cites it", Standing.Secondary);

    /// <summary>Earth-moving equation.</summary>
    public static readonly Source Reece = new("reece-1965", "Reece 1965; Hettiaratchi and Reece 1974; McKyes 1985: earth-moving equation, phi = 0", Standing.FromMemory);

    /// <summary>Bulldozing law.</summary>
    public static readonly Source Bulldozing = new("bekker-wong-bulldozing", "Bulldozing resistance with local shear factor 0.667, Bekker and Wong, Theory of Ground Vehicles", Standing.Secondary);

    /// <summary>Factors of the bulldozing law.</summary>
    public static readonly Source BulldozingFactors = new("bulldozing-factors", "K_pc and K_pg of the bulldozing law from the bearing factors of local shear, Bekker and Wong", Standing.FromMemory);

    /// <summary>Uplift equals bearing while suction holds.</summary>
    public static readonly Source ReverseBearing = new("reverse-bearing", "Li, Tian, Gaudin and Cassidy 2015, Comput. Geotech. 69, 38-45; Gourvenec, Acosta-Martinez and Randolph 2009, Geotechnique 59, 525-537: uplift equals bearing while suction holds, side friction alone once vented", Standing.Primary);

    /// <summary>Bearing factor with depth and shape.</summary>
    public static readonly Source Skempton = new("skempton-1951", "Skempton 1951, bearing factor of clay with depth and shape", Standing.FromMemory);

    /// <summary>Bearing factor with depth and shape of a code.</summary>
    public static readonly Source ApiBearing = new("api-rp-2geo-uplift", "API RP 2GEO 2011, undrained bearing with shape and depth factors", Standing.Secondary);

    /// <summary>Greatest suction.</summary>
    public static readonly Source Cavitation = new("cavitation", "Pore suction on land is at most about the atmospheric pressure, 100 kPa, before water cavitates", Standing.Derived);

    /// <summary>Immediate breakout.</summary>
    public static readonly Source Lee = new("lee-1972", "Lee 1972, NCEL TR R-755, unaided breakout of partly embedded objects (constants)", Standing.FromMemory);

    /// <summary>Breakout with time from the carried load.</summary>
    public static readonly Source Muga = new("muga-1968", "Muga 1968, NCEL TR R-591, ocean bottom breakout forces (coefficient)", Standing.FromMemory);

    /// <summary>Breakout with the time of the pull.</summary>
    public static readonly Source Liu = new("liu-1969", "Liu 1969, NCEL TR R-635, holding strength of ocean sediment against breakout", Standing.Primary);

    /// <summary>Breakout of a deep plate.</summary>
    public static readonly Source Das = new("das-1978", "Das 1978 and 1980, breakout factor of deep plates in clay, at most 9", Standing.FromMemory);

    /// <summary>Dissipation.</summary>
    public static readonly Source Consolidation = new("consolidation-1d", "One-dimensional consolidation, time factor 0.848 at 90 % (textbook)", Standing.Derived);

    /// <summary>Coefficient of consolidation.</summary>
    public static readonly Source ConsolidationChart = new("navfac-dm-7.1", "NAVFAC DM-7.1, coefficient of consolidation against liquid limit", Standing.Secondary);

    /// <summary>Haul-road rule.</summary>
    public static readonly Source HaulRoad = new("haul-road-rule", "Haul-road rule of civil-engineering handbooks, 2 % of the weight and 1.5 % for an inch of penetration", Standing.Secondary);

    /// <summary>Rolling on roads.</summary>
    public static readonly Source Moyer = new("moyer-rolling", "Moyer, rolling resistance of pneumatic tyres, as given in Marks Standard Handbook for Mechanical Engineers", Standing.Secondary);

    /// <summary>Rolling of car tyres.</summary>
    public static readonly Source WongRolling = new("wong-rolling", "Wong, Theory of Ground Vehicles, rolling resistance of car tyres on surfaces", Standing.FromMemory);

    /// <summary>Rolling of farm tyres.</summary>
    public static readonly Source McKibben = new("mckibben-davidson-1939", "McKibben and Davidson 1939, rolling resistance of pneumatic farm tyres, in Marks Standard Handbook for Mechanical Engineers (values)", Standing.FromMemory);

    /// <summary>Rolling of earthmoving machines.</summary>
    public static readonly Source EarthmovingTable = new("fm-5-434-rolling", "US Army FM 5-434, rolling resistance of earthmoving machines in pounds for a short ton", Standing.FromMemory);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } =
    [
        Rankine, Suction, BearingFactor, Composition, DepthRule, DepthRuleReductions, ExitSlopes, RankineFriction, Matlock, VerleyLund, DnvLateral, Reece, Bulldozing, BulldozingFactors,
        ReverseBearing, Skempton, ApiBearing, Cavitation, Lee, Muga, Liu, Das, Consolidation, ConsolidationChart,
        HaulRoad, Moyer, WongRolling, McKibben, EarthmovingTable,
    ];
}
