namespace Recovery.Mechanics.Rigging;

/// <summary>Mode of lifting of EN 1492: one factor on the limit of the tag, the angle already inside.</summary>
public enum SlingMode
{
    /// <summary>Straight: 1.0.</summary>
    Straight,

    /// <summary>Choked, angle of choke at least 120 degrees: 0.8.</summary>
    Choked,

    /// <summary>Basket with parallel legs: 2.0.</summary>
    BasketParallel,

    /// <summary>Basket: 1.4 to 45 degrees from the line of pull, 1.0 to 60.</summary>
    Basket,

    /// <summary>Two slings: 1.4 to 45 degrees from the line of pull, 1.0 to 60.</summary>
    TwoLeg,

    /// <summary>Three or four slings: 2.1 to 45 degrees from the line of pull, 1.5 to 60.</summary>
    ThreeOrFourLeg,
}
