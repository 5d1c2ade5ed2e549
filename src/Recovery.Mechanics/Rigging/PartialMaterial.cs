namespace Recovery.Mechanics.Rigging;

/// <summary>Material of a line under a computed peak, by the published material factors.</summary>
public enum PartialMaterial
{
    /// <summary>Any other fibre, nylon among them: 2.5.</summary>
    OtherFibre,

    /// <summary>Polyester: 1.65.</summary>
    Polyester,

    /// <summary>HMPE: 2.0.</summary>
    Hmpe,

    /// <summary>Aramid: 2.0.</summary>
    Aramid,

    /// <summary>Steel wire: 1.5.</summary>
    SteelWire,

    /// <summary>Steel wire, new and certified: 1.35.</summary>
    NewCertifiedSteelWire,
}
