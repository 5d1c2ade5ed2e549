namespace Recovery.Mechanics.Resistance;

/// <summary>How deep the deepest wheel stands, for the handbook rule.</summary>
public enum DepthClass
{
    /// <summary>No wheel is buried: the rule has nothing to say.</summary>
    NotMired,

    /// <summary>Up to the hub, not over it.</summary>
    Hub,

    /// <summary>Over the hub, not over the fender.</summary>
    Fender,

    /// <summary>Over the fender.</summary>
    Cab,
}
