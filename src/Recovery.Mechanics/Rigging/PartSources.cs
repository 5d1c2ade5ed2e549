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
    public static readonly Source Order = new("order-of-application", "Order of deratings: whole length, places, hitch; single rules by their own sources", Standing.Judgement);
    public static readonly Source Chemicals = new("fibre-chemicals", "Acids attack nylon, alkalis polyester, HMPE resists both and keeps 0.88 in bleach or nitric acid: trade publications", Standing.Secondary);
    public static readonly Source Sunlight = new("fibre-sunlight", "Continuous sunlight: polyester 30 % in 12 months, nylon 40 to 60 % in 12 to 36 months: trade publications", Standing.Secondary);
    public static readonly Source SunlightHmpe = new("hmpe-sunlight", "HMPE stands sunlight well, polypropylene and aramid badly", Standing.FromMemory);
    public static readonly Source OldNylon = new("old-nylon-lines", "Seven nylon dock lines of 10 to 12 years kept 25 to 51 % of new strength: magazine tests to destruction; climbing ropes to 18 years lost by abrasion, not age: DTIC AD0631428", Standing.Primary);
    public static readonly Source FibreTemperature = new("fibre-temperature", "Nylon and polyester -29 to 82 C, the narrowest of WAC 296-24-29429 and the upper limits 82, 90 and 100 C in print", Standing.Primary);
    public static readonly Source PolypropyleneTemperature = new("polypropylene-temperature", "Polypropylene -40 to 80 C: EN 1492-1 scope", Standing.Primary);
    public static readonly Source OtherTemperature = new("hmpe-aramid-temperature", "HMPE to 60 C, aramid to 177 C", Standing.FromMemory);
    public static readonly Source WireTemperature = new("wire-rope-temperature", "Fibre-core wire rope is removed above 93 C, wire core -51 to 204 C: 29 CFR 1910.184(f)", Standing.Primary);
    public static readonly Source FrozenWet = new("frozen-wet", "A line that is wet below freezing is not used: recommendation", Standing.FromMemory);
    public static readonly Source Overload = new("overload-retire", "A line loaded once above 75 % of break is retired: NAVEDTRA 14160", Standing.Primary);
    public static readonly Source WireBend = new("0027-nd-bend", "Bend of wire rope 1 - 0.5/sqrt(D/d), body at least 1 d, eye at least 2 d: 0027/ND rev 11.2 s. 7.8 after IMCA M 179", Standing.Primary);
    public static readonly Source OffshoreTerminations = new("0027-nd-terminations", "Termination factors on breaking strength, greater of termination and bend: 0027/ND rev 11.2 s. 7.6.1, 7.7.1, 7.7.2", Standing.Primary);
    public static readonly Source ManualTerminations = new("tm-5-3810-terminations", "Efficiencies of wire rope terminations: TM 5-3810-305-10 Table 4", Standing.Primary);
    public static readonly Source LargeSleeves = new("sleeves-above-one-inch", "Mechanical sleeves above 1 in 92.5 %, above 2 in 90 %: trade publication", Standing.Secondary);
    public static readonly Source NoTerminationLoss = new("0027-nd-documented", "A quoted breaking strength holds no termination loss unless documented: 0027/ND rev 11.2 s. 7.2.2", Standing.Primary);
    public static readonly Source Clips = new("29-cfr-1918-clips", "Clips of wire rope ends, number and spacing: 29 CFR 1918 Appendix II Table 1", Standing.Primary);
    public static readonly Source EyeSplice = new("eye-splice", "Neat eye splice with thimble 0.90: Cordage Institute figures as printed in a magazine", Standing.Secondary);
    public static readonly Source SpliceByMake = new("eye-splice-by-make", "Eye splices: three-strand 0.90, double braid 0.85 to 0.90, 12-strand HMPE 0.90 to 1.0", Standing.FromMemory);
    public static readonly Source Knots = new("knots", "Knot strength: CI 1401-06 s. 4, Cordage Institute figures as printed in a magazine, trade publications", Standing.Secondary);
    public static readonly Source FibrePin = new("0027-nd-fibre-bend", "Fibre slings lose nothing at or above the least diameter the maker states: 0027/ND rev 11.2 s. 7.8.4; refusal below it is judgement", Standing.Judgement);
    public static readonly Source EdgeEurope = new("sharp-edge-europe", "An edge is sharp where its radius is below the thickness of the sling: EN and DGUV practice", Standing.Secondary);
    public static readonly Source EdgeAustralia = new("sharp-edge-australia", "An edge is sharp where its radius is below three compressed thicknesses: AS 1353.2-1997, AS 4497.2-1997", Standing.Secondary);
    public static readonly Source SoftEye = new("en-1492-eye", "Soft eye: at most 20 deg included, bearing straight or of radius at least 0.75 width to 75 mm: EN 1492-1 annex; 3.5 diameters long: German practice", Standing.Secondary);
    public static readonly Source BearingPressure = new("bearing-pressure", "Bearing pressure of polyester on hardware about 7,000 psi: WSTDA-RS-1", Standing.FromMemory);
    public static readonly Source Bunching = new("bunched-eye", "The jaw is at least as wide as the eye lies flat: recommendation, no curve is published", Standing.FromMemory);
    public static readonly Source ShackleFitLogging = new("wac-shackle-fit", "Jaw at most one inch wider than what it joins, shackle one size above the line: WAC 296-54-54730", Standing.Primary);
    public static readonly Source PinStatics = new("drawbar-pin-statics", "Drawbar pin as a beam on two supports with load spread at mid-span; mean double shear", Standing.Derived);
    public static readonly Source DrawbarCategories = new("iso-6489-3-categories", "Drawbar categories, power and pins: ISO 6489-3; D-value: EU 2015/208 Annex XXXIV", Standing.FromMemory);
    public static readonly Source RecoveryAttachments = new("mil-t-62299b", "Two front tow attachments, each with ultimate strength of the gross weight: MIL-T-62299B s. 3", Standing.Primary);
    public static readonly Source RoadTowing = new("eu-1005-2010", "Towing devices of road vehicles, half the laden weight: Regulation (EU) 1005/2010", Standing.Primary);
    public static readonly Source TieDowns = new("mil-std-209k", "Tie-down provisions for transport: MIL-STD-209K (2005) Table I", Standing.Primary);
    public static readonly Source ShipFittings = new("imo-msc-1175", "Towing and mooring fittings of ships: IMO MSC/Circ.1175", Standing.Primary);
    public static readonly Source OceanTowing = new("imo-msc-884", "Ocean towing, weak drum end: IMO MSC/Circ.884 12.5 and 12.6", Standing.Primary);
    public static readonly Source SafetyChain = new("asabe-s338", "Safety chain as strong as the gross weight of all towed machines: ASABE S338 rule as given in machine manuals", Standing.Secondary);
    public static readonly Source Stanag = new("stanag-4101", "Dimensions of towing attachments: STANAG 4101 as applied in a requirement list", Standing.Secondary);
    public static readonly Source StrapStandard = new("f2017l01560", "Breaking strength 2 to 3 times the gross mass of the lighter vehicle: Consumer Goods (Motor Vehicle Recovery Straps) Safety Standard 2017, F2017L01560", Standing.Primary);
    public static readonly Source MichiganGuide = new("michigan-orv-guide", "Strap of at least five times the gross weight: Michigan state-approved off-road-vehicle study guide", Standing.Primary);
    public static readonly Source InternalWear = new("internal-wear", "Grit, ice crystals and wet wear nylon from inside; reject on a fused or fuzzed core: TB 55-1900-232-10 C-9", Standing.Primary);
    public static readonly Source PermanentStretch = new("permanent-stretch", "4 to 6 % of bedding-in is normal, more is fatigue or overload: trade publication", Standing.Secondary);
    public static readonly Source SoftShackleTests = new("soft-shackle-tests", "Soft shackles, 106 to 280 % of the strength of their line: test reports by riggers, 2012 to 2014; no standard", Standing.Primary);
    public static readonly Source SoftShackleStrength = new("soft-shackle-strength", "Strength of a soft shackle as that of its line, none on edges below three bundle thicknesses: recommendation", Standing.FromMemory);
    public static readonly Source SteelInspection = new("steel-inspection", "Usual reject criteria of wire rope and chain", Standing.FromMemory);
    public static readonly Source ColdSteel = new("cold-steel", "Shackles and chain to -40 C: trade publication", Standing.Secondary);
    public static readonly Source ShackleWear = new("shackle-wear", "Reject at a tenth of wear of bow or pin; no bolt in place of a pin: trade publication", Standing.Secondary);
    public static readonly Source ShackleDeformation = new("shackle-deformation", "Reject at more than 15 % deformation: DOE-STD-1090-96 15.4.8", Standing.Primary);
    public static readonly Source ShacklePins = new("shackle-pins-home", "Screw pins fully home: ASME B30.26 as reproduced", Standing.Secondary);
    public static readonly Source RunningOnPin = new("wac-running-line", "No running line on the pin; pin in the choking eye: WAC 296-155-33905", Standing.Primary);
    public static readonly Source ShackleWeld = new("shackle-weld", "Welding a forged shackle costs up to 30 %: TB 55-1900-232-10 s. 5-5.4.1", Standing.Primary);
    public static readonly Source ShackleTemperature = new("shackle-temperature", "Shackles -40 to 204 C: ASME B30.26-2010 26-1.6.1 as reproduced", Standing.Secondary);
    public static readonly Source HitchHeight = new("hitch-height", "Never hitch above the drawbar, never to the top link: University of Wisconsin", Standing.Primary);
    public static readonly Source ChainAvoided = new("chain-avoided", "Chain is heavy for its rating and what it throws is heavy: common practice in machine recovery, no source", Standing.CommonPractice);

    /// <summary>All of them.</summary>
    public static IEnumerable<Source> All { get; } =
    [
        StraightPull, En1492Modes, As1353Basket, ChokerWireRope, ChokerChainUs, ChokerChainAu, NaturalRopeTable, ChainChokeAngles, LegsThatCount, WidestLegs, UndeclaredChoke, CargoTables, CargoRules, ChainBreaking, ChainHot, WireSlingTable,
        ShackleGradeAUltimate, ShackleGradeASeries, ShackleGradeALarge, ShackleGradeB, ShackleGradeS, NavyShackleRule, OshaShackles, TwoLegsInBow,
        Order, Chemicals, Sunlight, SunlightHmpe, OldNylon, FibreTemperature, PolypropyleneTemperature, OtherTemperature, WireTemperature, FrozenWet, Overload, WireBend, OffshoreTerminations, ManualTerminations, LargeSleeves, NoTerminationLoss, Clips, EyeSplice, SpliceByMake, Knots, FibrePin, EdgeEurope, EdgeAustralia, SoftEye, BearingPressure, Bunching, ShackleFitLogging,
        PinStatics, DrawbarCategories, RecoveryAttachments, RoadTowing, TieDowns, ShipFittings, OceanTowing, SafetyChain, Stanag, StrapStandard, MichiganGuide, InternalWear, PermanentStretch, SoftShackleTests, SoftShackleStrength, SteelInspection, ColdSteel, ShackleWear, ShackleDeformation, ShacklePins, RunningOnPin, ShackleWeld, ShackleTemperature, HitchHeight, ChainAvoided,
    ];

    /// <summary>Source of the temperature limits of a fibre.</summary>
    public static Source OfTemperature(Fibre fibre) => fibre switch
    {
        Fibre.Nylon or Fibre.Polyester => FibreTemperature,
        Fibre.Polypropylene => PolypropyleneTemperature,
        _ => OtherTemperature,
    };

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
