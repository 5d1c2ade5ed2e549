namespace Recovery.Mechanics.Rigging;

/// <summary>Eye splice of a fibre rope.</summary>
public enum FibreSpliceKind
{
    /// <summary>Neat, with a proper thimble: 0.90 (reported).</summary>
    WithThimble,

    /// <summary>Three-strand: 0.90 (from memory).</summary>
    ThreeStrand,

    /// <summary>Double braid: 0.85, the low end of 0.85 to 0.90 (from memory).</summary>
    DoubleBraid,

    /// <summary>Twelve-strand HMPE: 0.90, the low end of 0.90 to 1.0 (from memory).</summary>
    TwelveStrandHmpe,

    /// <summary>HMPE sling tested with that splice: 1.0 (0027/ND s. 7.7.1, primary).</summary>
    TestedHmpe,
}
