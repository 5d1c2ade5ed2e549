namespace Recovery.Mechanics.Rigging;

/// <summary>How the pin of a shackle is held.</summary>
public enum ShacklePin
{
    /// <summary>Bolt with nut and its locking: the safety type.</summary>
    BoltAndNut,

    /// <summary>Screw pin: banned in naval towing rigs because vibration backs it out, usual in vehicle recovery.</summary>
    Screw,

    /// <summary>Round pin held by a cotter alone: takes no side load.</summary>
    RoundPin,
}
