namespace Recovery.Mechanics.Lines;

/// <summary>Which rule set the procedure peak.</summary>
public enum LineLoadRule
{
    /// <summary>Nothing was declared: the careless load is the procedure.</summary>
    Careless,

    /// <summary>Energy balance on a held anchor.</summary>
    HeldAnchor,

    /// <summary>Take-up in a locked gear.</summary>
    LockedGear,

    /// <summary>Throttle raised on a taut line.</summary>
    RaisedThrottle,
}
