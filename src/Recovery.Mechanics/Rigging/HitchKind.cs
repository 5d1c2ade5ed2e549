namespace Recovery.Mechanics.Rigging;

/// <summary>How a sling or strap is laid.</summary>
public enum HitchKind
{
    /// <summary>Straight, in line with its load.</summary>
    Straight,

    /// <summary>Choked round something.</summary>
    Choker,

    /// <summary>A basket: two legs of one strap.</summary>
    Basket,

    /// <summary>Several legs joined at one point.</summary>
    Legs,
}
