namespace Recovery.Mechanics.Rigging;

/// <summary>What is choked, and by whose practice: it decides the choker factor on the straight rating.</summary>
public enum ChokerKind
{
    /// <summary>Flat webbing or roundsling: 0.80 (EN 1492-1, AS 1353, US practice; reported).</summary>
    Webbing,

    /// <summary>Wire rope: 0.75 (users' manual as quoted; reported).</summary>
    WireRope,

    /// <summary>Chain, US practice: 0.80 (reported).</summary>
    ChainUnitedStates,

    /// <summary>Reeved chain, Australian practice: 0.75 (AS 3775.1-2014; reported).</summary>
    ChainAustralia,

    /// <summary>Manila and similar natural-fibre rope: 0.50 (29 CFR 1918 Appendix II; primary).</summary>
    NaturalFibreRope,
}
