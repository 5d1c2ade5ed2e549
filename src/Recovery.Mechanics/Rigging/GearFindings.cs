using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Kinds of finding that single pieces of gear raise. None of them is rescued by a factor.</summary>
internal static class GearFindings
{
    public static readonly FindingDefinition LegsTooWide = new("hitch.legs-too-wide", Severity.Stop, "The {subject} opens to {available}, its factors end at {required}: beyond that each leg carries more than the whole load.", "Longer legs.", PartSources.WidestLegs);
    public static readonly FindingDefinition ChokeTooSharp = new("hitch.choke-too-sharp", Severity.Stop, "The {subject} has an angle of choke of {available}, its table begins at {required}.", "Let the choke set itself in the line of the pull.", PartSources.ChainChokeAngles);
    public static readonly FindingDefinition ShackleSizeOnly = new("rig.shackle-size-only", Severity.Stop, "The {subject} has no mark that says its limit. Shackles of its size are made with limits from {available} to {required}: the size does not tell which.", "Use a shackle whose mark says its working load limit.", PartSources.ShackleGradeASeries);
    public static readonly FindingDefinition ShackleLegsTooWide = new("rig.shackle-legs-too-wide", Severity.Stop, "The legs in the bow of the {subject} open to {available}; it may collect two even legs up to {required}, and a dee shackle none.", "Longer legs, or a ring with a shackle for each leg.", PartSources.TwoLegsInBow);
    public static readonly FindingDefinition TooHot = new("gear.too-hot", Severity.Stop, "The {subject} works at {available}, the lowest published limit is {required}.", "Keep it from the heat, or use gear made for it.", PartSources.FibreTemperature);
    public static readonly FindingDefinition TooCold = new("gear.too-cold", Severity.Stop, "The {subject} works at {available}, below the published limit of {required}.", "Gear made for the cold, or wait.", PartSources.FibreTemperature);
    public static readonly FindingDefinition FrozenWet = new("gear.frozen-wet", Severity.Stop, "The {subject} is wet below freezing: its strength is lower, nobody publishes by how much.", "A dry line, or ask the maker.", PartSources.FrozenWet);
    public static readonly FindingDefinition SunlightNoFigure = new("gear.sunlight-no-figure", Severity.Stop, "The {subject} lay in the sun for {available}: no published figure reaches that far for its fibre.", "A line kept from the sun, or a test of what is left.", PartSources.Sunlight);
    public static readonly FindingDefinition Chemical = new("gear.chemical", Severity.Stop, "A chemical reached the {subject} that attacks its fibre, or of which nothing is published for it. No factor rescues it.", "Take it out of service: acid excludes nylon, fertiliser and lime exclude polyester.", PartSources.Chemicals);
    public static readonly FindingDefinition Overloaded = new("gear.overloaded-once", Severity.Stop, "The {subject} has seen {available} of its breaking strength; above {required} a line is damaged for good.", "Retire it.", PartSources.Overload);
    public static readonly FindingDefinition BendTooTight = new("gear.bend-too-tight", Severity.Stop, "The wire rope at the {subject} bends round {available} of its diameter; below {required} there is no figure.", "A thicker pin or a thimble.", PartSources.WireBend);
    public static readonly FindingDefinition EyeBentTight = new("gear.eye-bent-tight", Severity.Caution, "The eye at the {subject} bends round {available} of the rope diameter; an eye asks {required}.", "A thicker pin or a thimble.", PartSources.WireBend);
    public static readonly FindingDefinition PinTooThin = new("gear.pin-too-thin", Severity.Stop, "The pin at the {subject} is {available}, the maker of the sling asks {required}.", "A thicker pin.", PartSources.FibrePin);
    public static readonly FindingDefinition PinNotStated = new("gear.pin-not-stated", Severity.Stop, "The maker states no least diameter for the sling at the {subject}; it lies round {available}. No strength is published below a stated diameter.", "Ask the maker.", PartSources.FibrePin);
    public static readonly FindingDefinition EdgeSharp = new("gear.edge-sharp", Severity.Stop, "The edge at the {subject} has a radius of {available}, less than the {required} thickness of the strap: it cuts. Padding keeps a strap off an edge that it does not slide on; over a sliding edge nothing does.", "Round the edge, or move the strap.", PartSources.EdgeEurope);
    public static readonly FindingDefinition EdgeBetween = new("gear.edge-between", Severity.Caution, "The edge at the {subject} has a radius of {available}: not sharp by European practice, sharp by Australian, which asks {required}.", "Pad it so that the strap stays off it under load.", PartSources.EdgeAustralia);
    public static readonly FindingDefinition EyeOpen = new("gear.eye-open", Severity.Caution, "The eye of the {subject} opens to {available}; at most {required} is allowed.", "A longer eye or a thinner pin.", PartSources.SoftEye);
    public static readonly FindingDefinition EyeOnRound = new("gear.eye-on-round", Severity.Caution, "The {subject} bears on a radius of {available}; where the bearing is not straight {required} is asked, and at most 75 mm of width.", "A straight bearing or a wider bow.", PartSources.SoftEye);
    public static readonly FindingDefinition EyeBunched = new("gear.eye-bunched", Severity.Stop, "The {subject} is {required} wide and the jaw it goes into {available}: it bunches, and nobody publishes what that costs.", "A shackle with a wider jaw.", PartSources.Bunching);
    public static readonly FindingDefinition BearingHigh = new("gear.bearing-pressure", Severity.Caution, "The {subject} bears with {available} on its pin; about {required} is the figure remembered for polyester.", "A thicker pin or a wider strap.", PartSources.BearingPressure);
    public static readonly FindingDefinition SoftEdge = new("gear.soft-shackle-edge", Severity.Stop, "The soft shackle at the {subject} lies on an edge of {available}; it is refused below {required}, three thicknesses of its bundle: HMPE cuts on edges.", "Round the edge, or a shackle of steel where no elastic line ends.", PartSources.SoftShackleStrength);
    public static readonly FindingDefinition ChainUsed = new("rig.chain", Severity.Caution, "The {subject} is a chain: heavy for its rating, and what it throws is heavy.", "A strap of known strength, shielded from edges; wire rope where stubble would wear it.", PartSources.ChainAvoided);
    public static readonly FindingDefinition LowStretch = new("rig.low-stretch", Severity.Caution, "Nothing in the line stretches much (its first part is the {subject}): slack taken up on it, even at a creep, comes as a shock, and a clutch that is dropped winds the tyres up against it.", "Draw it taut before load comes on, then raise the power in steps; never any slack.", GeneralSources.Trade);
    public static readonly FindingDefinition SteelInEye = new("rig.steel-in-eye", Severity.Stop, "The {subject} lies with nothing between in the eye of a strap: links and bare wire cut it, and nothing is published of what that joint holds.", "A shackle or soft shackle of sufficient rating between them, clear of edges; better a strap of known strength in place of the steel.", GeneralSources.Trade);

    /// <summary>All of them.</summary>
    public static IEnumerable<FindingDefinition> All { get; } =
    [
        LegsTooWide, ChokeTooSharp, ShackleSizeOnly, ShackleLegsTooWide,
        TooHot, TooCold, FrozenWet, SunlightNoFigure, Chemical, Overloaded, BendTooTight, EyeBentTight, PinTooThin, PinNotStated, EdgeSharp, EdgeBetween, EyeOpen, EyeOnRound, EyeBunched, BearingHigh, ChainUsed, SoftEdge, LowStretch, SteelInEye,
    ];
}
