namespace Recovery.Mechanics.Traction;

/// <summary>What limits the pull that a towing machine sustains.</summary>
public enum PullLimit
{
    /// <summary>Grip on its ground at slip up to 0.30.</summary>
    Traction,

    /// <summary>Engine power at the stated speed.</summary>
    Power,

    /// <summary>The front axle would lift.</summary>
    NoseLift,

    /// <summary>The rating of its hitch.</summary>
    Rating,

    /// <summary>A line off the centre line would turn it over sideways.</summary>
    Overturn,
}
