namespace Recovery.Mechanics.Rigging;

/// <summary>What a standard's requirement on a point is for. Only <see cref="Recovery"/> is.</summary>
public enum AttachmentPurpose
{
    /// <summary>Recovery of a bogged machine.</summary>
    Recovery,

    /// <summary>Towing on roads.</summary>
    RoadTowing,

    /// <summary>Tying down for transport.</summary>
    Transport,

    /// <summary>Mooring of ships.</summary>
    Mooring,

    /// <summary>Towing of ships.</summary>
    ShipTowing,

    /// <summary>Keeping a towed machine when its hitch fails.</summary>
    Retention,

    /// <summary>Coupling dimensions, no strength.</summary>
    Dimensions,
}
