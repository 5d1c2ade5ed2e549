namespace Recovery.Mechanics.Rigging;

/// <summary>How a strap is made.</summary>
public enum StrapConstruction
{
    /// <summary>Flat webbing.</summary>
    Webbing,

    /// <summary>Roundsling: yarn in a cover.</summary>
    Roundsling,

    /// <summary>Fibre rope.</summary>
    Rope,
}
