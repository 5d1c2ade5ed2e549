namespace Recovery.Mechanics.Rigging;

/// <summary>Family of standards that a figure belongs to.</summary>
public enum StandardRegion
{
    /// <summary>United States lifting practice.</summary>
    UnitedStates,

    /// <summary>European lifting practice.</summary>
    Europe,

    /// <summary>Australian lifting practice.</summary>
    Australia,

    /// <summary>Mooring practice.</summary>
    Mooring,

    /// <summary>Naval open-sea towing.</summary>
    NavalTow,
}
