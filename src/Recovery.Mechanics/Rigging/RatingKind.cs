namespace Recovery.Mechanics.Rigging;

/// <summary>What a marked rating says.</summary>
public enum RatingKind
{
    /// <summary>Not known which it is, or no tag: always a stop.</summary>
    Unknown,

    /// <summary>Force at which a new item may part.</summary>
    BreakingStrength,

    /// <summary>Greatest load allowed in use; already holds a design factor.</summary>
    WorkingLoadLimit,

    /// <summary>Load of a test that must leave no damage. It is no capacity: always a stop.</summary>
    ProofLoad,

    /// <summary>Lashing capacity of cargo gear: the assembly parts at twice that (from memory).</summary>
    LashingCapacity,
}
