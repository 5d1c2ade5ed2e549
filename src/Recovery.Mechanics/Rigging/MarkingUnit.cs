namespace Recovery.Mechanics.Rigging;

/// <summary>Unit in which a capacity is marked.</summary>
public enum MarkingUnit
{
    /// <summary>Kilonewtons.</summary>
    Kilonewton,

    /// <summary>Decanewtons, usual on cargo gear.</summary>
    Decanewton,

    /// <summary>Tonnes-force, 1000 kg x 9.80665 m/s2 = 9.80665 kN.</summary>
    Tonne,

    /// <summary>Short tons-force, 2000 lbf = 8.896 kN.</summary>
    ShortTon,

    /// <summary>Long tons-force, 2240 lbf = 9.964 kN.</summary>
    LongTon,

    /// <summary>Pounds-force.</summary>
    Pound,

    /// <summary>"ton" without saying which: no force until somebody knows.</summary>
    UnknownTon,
}
