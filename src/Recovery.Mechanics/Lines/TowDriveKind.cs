namespace Recovery.Mechanics.Lines;

/// <summary>How the puller drives.</summary>
internal enum TowDriveKind
{
    /// <summary>The whole pull from the start, and for good.</summary>
    Constant,

    /// <summary>Raised evenly from nothing over a time, then held.</summary>
    Raised,

    /// <summary>A locked gear: pull by the slip of the wheels.</summary>
    LockedGear,

    /// <summary>A locked gear with the tyres as a spring between rim and ground.</summary>
    LockedGearOnTyres,

    /// <summary>Moves at its speed whatever the line does: a winch, or a puller beyond all comparison.</summary>
    Speed,
}
