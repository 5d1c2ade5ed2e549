namespace Recovery.Mechanics.Machines;

/// <summary>How the carcass of a tyre is laid.</summary>
public enum TyreConstruction
{
    /// <summary>Radial, marked R.</summary>
    Radial,

    /// <summary>Bias ply, marked with a dash (or an x on old markings).</summary>
    Bias,
}
