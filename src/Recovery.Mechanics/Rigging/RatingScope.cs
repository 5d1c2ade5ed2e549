namespace Recovery.Mechanics.Rigging;

/// <summary>What a marked rating is for.</summary>
public enum RatingScope
{
    /// <summary>One part in a straight pull: what the tag of a strap usually says.</summary>
    Straight,

    /// <summary>Each leg of a sling of several legs.</summary>
    PerLeg,

    /// <summary>A basket with parallel legs: twice the straight rating.</summary>
    ParallelBasket,

    /// <summary>A sling of several legs as a whole: so many times the straight rating of one leg.</summary>
    WholeSling,
}
