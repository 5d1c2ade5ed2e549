namespace Recovery.Mechanics.Resistance;

/// <summary>What can be said of a stuck machine that tries to move itself.</summary>
public enum SelfRecoveryOutlook
{
    /// <summary>No axle is driven.</summary>
    NotDriven,

    /// <summary>Driven wheels are buried: no wheel model covers them, so no number answers.</summary>
    NoModel,

    /// <summary>Its wheels roll, and at the best of its soil they grip less than holds it at the least.</summary>
    Held,

    /// <summary>Its wheels roll, and the bands of grip and hold overlap, or the wheel model is left.</summary>
    Undecided,

    /// <summary>Its wheels roll within the wheel model, and at the worst of its soil they grip more than holds it at the most.</summary>
    MovesItself,
}
