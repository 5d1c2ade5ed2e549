namespace Recovery.Mechanics.Rigging;

/// <summary>Mode of lifting of EN 1492: one factor on the limit of the tag, the angle already inside.</summary>
public enum SlingMode
{
    /// <summary>Straight: 1.0.</summary>
    Straight,

    /// <summary>Choked: 0.8, times the share by angle of choke where that is not above 120 degrees.</summary>
    Choked,

    /// <summary>Basket with parallel legs, to 7 degrees from the line of pull: 2.0; wider it counts as <see cref="Basket"/>.</summary>
    BasketParallel,

    /// <summary>Basket: 1.4 to 45 degrees from the line of pull, 1.0 to 60.</summary>
    Basket,

    /// <summary>Two slings: 1.4 to 45 degrees from the line of pull, 1.0 to 60.</summary>
    TwoLeg,

    /// <summary>Three or four slings: 2.1 to 45 degrees from the line of pull, 1.5 to 60.</summary>
    ThreeOrFourLeg,
}
