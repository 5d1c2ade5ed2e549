namespace Recovery.Mechanics.Rigging;

/// <summary>Kind of gear, for inspection and choosing.</summary>
public enum GearKind
{
    /// <summary>Webbing: recovery strap, axle strap, bridle strap, flat sling.</summary>
    Webbing,

    /// <summary>Roundsling.</summary>
    Roundsling,

    /// <summary>Fibre rope.</summary>
    FibreRope,

    /// <summary>Soft shackle.</summary>
    SoftShackle,

    /// <summary>Wire rope.</summary>
    WireRope,

    /// <summary>Chain.</summary>
    Chain,

    /// <summary>Bow or dee shackle.</summary>
    Shackle,

    /// <summary>Snatch block.</summary>
    Block,

    /// <summary>Drawbar and its pin.</summary>
    Drawbar,

    /// <summary>Recovery point, tow eye or axle the rig is made fast to.</summary>
    AttachmentPoint,
}
