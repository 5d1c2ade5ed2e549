namespace Recovery.Mechanics.Rigging;

/// <summary>How the end of a wire rope is made.</summary>
public enum WireTerminationKind
{
    /// <summary>Not known: the least published figure of any kind.</summary>
    Unknown,

    /// <summary>Spelter or resin socket.</summary>
    ResinSocket,

    /// <summary>Swaged socket.</summary>
    SwagedSocket,

    /// <summary>Flemish eye, swaged.</summary>
    FlemishEye,

    /// <summary>Turned back and held by a steel ferrule.</summary>
    SteelFerrule,

    /// <summary>Turned back and held by an aluminium ferrule.</summary>
    AluminiumFerrule,

    /// <summary>Turned back and held by a ferrule of which nobody knows the metal.</summary>
    UnknownFerrule,

    /// <summary>Hand-tucked splice.</summary>
    HandSplice,

    /// <summary>Hand-tucked splice of cable-laid rope.</summary>
    HandSpliceCableLaid,

    /// <summary>Wedge socket: 0.75 to 0.95, the low end counts.</summary>
    WedgeSocket,

    /// <summary>Clips, as many and as far apart as the table asks.</summary>
    Clips,
}
