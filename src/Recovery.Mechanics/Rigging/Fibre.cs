namespace Recovery.Mechanics.Rigging;

/// <summary>What a strap is made of.</summary>
public enum Fibre
{
    /// <summary>Nylon (polyamide).</summary>
    Nylon,

    /// <summary>Polyester.</summary>
    Polyester,

    /// <summary>High-modulus polyethylene.</summary>
    Hmpe,
}
