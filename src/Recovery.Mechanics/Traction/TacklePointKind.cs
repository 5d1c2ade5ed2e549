namespace Recovery.Mechanics.Traction;

/// <summary>What a block or an end of a rope is made fast to.</summary>
public enum TacklePointKind
{
    /// <summary>The casualty: it comes nearer as the rope is hauled.</summary>
    Load,

    /// <summary>Something that stays: a tree, a ground anchor, a parked machine, the winch itself.</summary>
    Anchor,

    /// <summary>A block or ring that travels on another rope: what one tackle hauls on another.</summary>
    Traveller,

    /// <summary>The winch or the machine that hauls.</summary>
    Haul,
}
