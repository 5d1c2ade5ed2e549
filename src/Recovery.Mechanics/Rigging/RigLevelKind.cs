namespace Recovery.Mechanics.Rigging;

/// <summary>The levels to which the line load of a rig is held.</summary>
public enum RigLevelKind
{
    /// <summary>The rated check: the steady load against the named policy and the tags.</summary>
    Rated,

    /// <summary>The full partial factors on the peak, for a shackle its peak limit: what is aimed at.</summary>
    FullFactors,

    /// <summary>The floor on the peak, below which the plan stops: what is refused, never aimed at.</summary>
    Floor,
}
