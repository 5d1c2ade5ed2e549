namespace Recovery.Mechanics.Traction;

/// <summary>Whether an arrangement can move the casualty and is held while it does.</summary>
public enum PullOutcome
{
    /// <summary>Nothing found against it: it sustains more than 1.1 of the central demand, tackle, blocks and anchors hold.</summary>
    CanDo,

    /// <summary>Between 0.9 and 1.1 of the central demand, and nothing else stops it.</summary>
    Undecided,

    /// <summary>Something stops it; the findings say what.</summary>
    Cannot,
}
