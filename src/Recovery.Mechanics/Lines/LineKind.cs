namespace Recovery.Mechanics.Lines;

/// <summary>Kind of line in the table of relative stiffness.</summary>
public enum LineKind
{
    /// <summary>Nylon strap made to stretch.</summary>
    NylonStrap,

    /// <summary>Nylon rope.</summary>
    NylonRope,

    /// <summary>Polyester webbing.</summary>
    PolyesterWebbing,

    /// <summary>Polyester rope.</summary>
    PolyesterRope,

    /// <summary>HMPE webbing or roundsling.</summary>
    HmpeWebbing,

    /// <summary>HMPE rope.</summary>
    HmpeRope,

    /// <summary>Aramid rope.</summary>
    AramidRope,

    /// <summary>Liquid-crystal polymer rope.</summary>
    LcpRope,

    /// <summary>Ordinary six-strand wire rope.</summary>
    WireRopeSixStrand,

    /// <summary>Sheathed offshore wire rope or strand.</summary>
    WireRopeSheathed,

    /// <summary>Grade 80 chain.</summary>
    ChainGrade80,

    /// <summary>Studless chain, grade R4.</summary>
    ChainR4,
}
