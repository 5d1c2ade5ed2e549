namespace Recovery.Mechanics.Rigging;

/// <summary>What a strap or rope is made of. A strap in a rig is nylon, polyester or HMPE: only of those a band of stiffness is known here.</summary>
public enum Fibre
{
    /// <summary>Nylon (polyamide).</summary>
    Nylon,

    /// <summary>Polyester.</summary>
    Polyester,

    /// <summary>High-modulus polyethylene.</summary>
    Hmpe,

    /// <summary>Polypropylene.</summary>
    Polypropylene,

    /// <summary>Aramid.</summary>
    Aramid,
}
