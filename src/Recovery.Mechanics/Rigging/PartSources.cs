using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Sources of hitches, tables of gear and deratings.</summary>
internal static class PartSources
{
    public static readonly Source StraightPull = new("29-cfr-1910-184-straight", "A pull within 5 deg of the axis counts as straight, basket legs within 5 deg of parallel count double: 29 CFR 1910.184(b), text of 2010", Standing.Primary);
    public static readonly Source En1492Modes = new("en-1492-modes", "Mode factors and colours of EN 1492-1:2000+A1:2008 as quoted in user instructions; no leg beyond 60 deg", Standing.Secondary);
    public static readonly Source As1353Basket = new("as-1353-basket", "Basket factors by included angle: AS 1353 as quoted in an industry bulletin", Standing.Secondary);
    public static readonly Source ChokerWireRope = new("choker-wire-rope", "Choker 0.75 for wire rope: users' manual of the Wire Rope Technical Board as quoted in a trade publication", Standing.Secondary);
    public static readonly Source ChokerChainUs = new("choker-chain-us", "Choker 0.80 for chain, US practice: trade publication", Standing.Secondary);
    public static readonly Source ChokerChainAu = new("choker-chain-au", "Reeved chain 0.75: AS 3775.1-2014", Standing.Secondary);
    public static readonly Source NaturalRopeTable = new("29-cfr-1918-table-2", "Natural-fibre rope slings, choker 0.50 and baskets as printed: 29 CFR 1918 Appendix II Table 2", Standing.Primary);
    public static readonly Source ChainChokeAngles = new("fibre-chain-choke", "Choked fibre chain in percent of the single-leg rating by angle of choke: trade publication, European practice", Standing.Secondary);
    public static readonly Source LegsThatCount = new("legs-that-count", "Of an uneven set 1 of 2 and 2 of 3 or 4 legs count, of an even four three: DGUV rule 100-500 as quoted in an operating manual", Standing.Secondary);
    public static readonly Source WidestLegs = new("widest-legs", "No leg beyond 60 deg from the line of pull, 120 deg included: EN 1492, AS 1353, ASME B30.9 as reproduced", Standing.Secondary);
    public static readonly Source UndeclaredChoke = new("undeclared-choke", "An angle of choke that nobody declares takes the lowest share: engineering judgement of this library", Standing.Judgement);
    public static readonly Source CargoTables = new("49-cfr-393-108-tables", "Working load limits of cargo chain, webbing and wire rope: tables of 49 CFR 393.108 in a reproduction", Standing.Secondary);
    public static readonly Source CargoRules = new("49-cfr-393-108-rules", "Unmarked chain counts as grade 30, unmarked wire rope as a quarter of its nominal strength: 49 CFR 393.108(d), (e)", Standing.Primary);
    public static readonly Source ChainBreaking = new("chain-breaking", "Breaking strength of chain: ten times its grade in N/mm2 on both limbs of a link", Standing.Derived);
    public static readonly Source ChainHot = new("chain-hot", "Loss of limit of hot chain: trade publications; two tables circulate, the newer is taken", Standing.Secondary);
    public static readonly Source WireSlingTable = new("mil-dtl-3903-table-ii", "Wire rope slings, rating, proof, breaking strength and splice efficiency: MIL-DTL-3903 Table II; its cells are to be confirmed before one alone is relied on", Standing.Primary);
    public static readonly Source ShackleGradeAUltimate = new("rr-c-271d-ultimate", "Ultimate load of grade A shackles 1/2 to 3/4 in: RR-C-271D as applied in Seattle City Light material standard 6966.15", Standing.Primary);
    public static readonly Source ShackleGradeASeries = new("shackle-grade-a", "Limits and dimensions of grade A shackles 7/8 to 1-1/2 in: trade publication consistent with RR-C-271D", Standing.Secondary);
    public static readonly Source ShackleGradeALarge = new("shackle-grade-a-large", "Limits and dimensions of grade A shackles 1-3/4 to 2-1/2 in", Standing.FromMemory);
    public static readonly Source ShackleGradeB = new("shackle-grade-b", "Limits of grade B alloy shackles: trade publication", Standing.Secondary);
    public static readonly Source ShackleGradeS = new("as-2741-dimensions", "Dimensions of grade S shackles: AS 2741-2002", Standing.Secondary);
    public static readonly Source NavyShackleRule = new("navedtra-14251-shackle", "Field rule for shackles, 3 D2 short tons with D in inches: NAVEDTRA 14251, Steelworker", Standing.Primary);
    public static readonly Source OshaShackles = new("29-cfr-1926-251-shackles", "Shackle table of 29 CFR 1926.251", Standing.FromMemory);
    public static readonly Source TwoLegsInBow = new("asme-b30-26-bow", "Two even legs in a bow up to 120 deg at the full limit: ASME B30.26 as reproduced", Standing.Secondary);

    /// <summary>All of them.</summary>
    public static IEnumerable<Source> All { get; } =
    [
        StraightPull, En1492Modes, As1353Basket, ChokerWireRope, ChokerChainUs, ChokerChainAu, NaturalRopeTable, ChainChokeAngles, LegsThatCount, WidestLegs, UndeclaredChoke, CargoTables, CargoRules, ChainBreaking, ChainHot, WireSlingTable,
        ShackleGradeAUltimate, ShackleGradeASeries, ShackleGradeALarge, ShackleGradeB, ShackleGradeS, NavyShackleRule, OshaShackles, TwoLegsInBow,
    ];

    /// <summary>Source of a choker factor.</summary>
    public static Source OfChoker(ChokerKind kind) => kind switch
    {
        ChokerKind.WireRope => ChokerWireRope,
        ChokerKind.ChainUnitedStates => ChokerChainUs,
        ChokerKind.ChainAustralia => ChokerChainAu,
        ChokerKind.NaturalFibreRope => NaturalRopeTable,
        _ => RiggingSources.Choker,
    };
}
