namespace Recovery.Mechanics.Rigging;

/// <summary>Core of a wire rope.</summary>
public enum WireCore
{
    /// <summary>Fibre core.</summary>
    Fibre,

    /// <summary>Independent wire rope core (IWRC).</summary>
    Wire,
}
