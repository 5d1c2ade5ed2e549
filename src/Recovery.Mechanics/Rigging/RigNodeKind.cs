namespace Recovery.Mechanics.Rigging;

/// <summary>What a node of a rig is.</summary>
public enum RigNodeKind
{
    /// <summary>A place on the stuck machine, or an anchor in the ground: it does not move.</summary>
    Anchor,

    /// <summary>The hitch of a puller: it draws on one line.</summary>
    Puller,

    /// <summary>A place where parts meet, free to move.</summary>
    Joint,
}
