namespace Recovery.Mechanics.Rigging;

/// <summary>Kind of gear for which a design factor is published.</summary>
public enum GearItem
{
    /// <summary>Flat web sling.</summary>
    WebSling,

    /// <summary>Roundsling.</summary>
    Roundsling,

    /// <summary>Sling of natural-fibre rope.</summary>
    NaturalFibreRopeSling,

    /// <summary>Sling of synthetic fibre rope.</summary>
    FibreRopeSling,

    /// <summary>Sling of wire rope.</summary>
    WireRopeSling,

    /// <summary>Sling of alloy chain, grades 80 and 100.</summary>
    ChainSling,

    /// <summary>Metal fitting of an EN 1492 sling.</summary>
    SlingFitting,

    /// <summary>Web tie-down for cargo, complete assembly.</summary>
    WebTieDown,

    /// <summary>Web lashing to EN 12195-2: breaking strength of the assembly over lashing capacity.</summary>
    WebLashing,

    /// <summary>Shackle.</summary>
    Shackle,

    /// <summary>Fibre rope in general use.</summary>
    FibreRope,

    /// <summary>Mooring chain, quasi-static, straight.</summary>
    MooringChainStraight,

    /// <summary>Mooring chain, quasi-static, round bends.</summary>
    MooringChainBent,

    /// <summary>Mooring wire, quasi-static.</summary>
    MooringWire,

    /// <summary>Synthetic mooring line, quasi-static; wet nylon is taken at 0.85 first.</summary>
    MooringSynthetic,

    /// <summary>Synthetic tow hawser on automatic tension control.</summary>
    TowHawserTensionControl,

    /// <summary>Synthetic tow hawser on brake, pawl or hook.</summary>
    TowHawserHeld,

    /// <summary>Synthetic grommet used as a spring in a tow.</summary>
    TowSpring,

    /// <summary>Wire tow hawser.</summary>
    TowWireHawser,

    /// <summary>Wire tow pendant.</summary>
    TowWirePendant,

    /// <summary>Shackle or link in a tow, on proof load.</summary>
    TowShackle,

    /// <summary>Bitt or padeye in a tow, on yield.</summary>
    TowPadeye,
}
