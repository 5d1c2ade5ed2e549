namespace Recovery.Mechanics.Rigging;

/// <summary>Shape of a shackle.</summary>
public enum ShackleShape
{
    /// <summary>Bow: may collect two even legs.</summary>
    Bow,

    /// <summary>Dee: one load in line.</summary>
    Dee,
}
