namespace Recovery.Mechanics.Rigging;

/// <summary>What a marked rating says.</summary>
public enum RatingKind
{
    /// <summary>Not known which of the two it is, or no tag: always a stop.</summary>
    Unknown,

    /// <summary>Force at which a new item may part.</summary>
    BreakingStrength,

    /// <summary>Greatest load allowed in use; already holds a design factor.</summary>
    WorkingLoadLimit,
}
