namespace Recovery.Mechanics.Rigging;

/// <summary>Strength that a design factor divides.</summary>
public enum FactorBasis
{
    /// <summary>Minimum breaking strength.</summary>
    BreakingStrength,

    /// <summary>Proof load.</summary>
    ProofLoad,

    /// <summary>Yield of the material.</summary>
    Yield,
}
