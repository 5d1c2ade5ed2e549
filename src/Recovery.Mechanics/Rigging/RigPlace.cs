namespace Recovery.Mechanics.Rigging;

/// <summary>One place of a rig as plain numbers, SI; what is not known is not a number.</summary>
internal struct RigPlace
{
    /// <summary>Number of the part in its rig.</summary>
    public int Part;

    /// <summary>Kind of place.</summary>
    public PlaceKind Kind;

    /// <summary>Derated strength, N.</summary>
    public double Strength;

    /// <summary>Share of the line load it carries, upper friction end.</summary>
    public double Share;

    /// <summary>Allowable under the steady load, N.</summary>
    public double Rated;

    /// <summary>Full partial factor on a peak.</summary>
    public double Full;

    /// <summary>Least R/F on the procedure load: the published floor, or the level of a bight from memory.</summary>
    public double Floor;

    /// <summary>Peak limit of a shackle, N.</summary>
    public double PeakLimit;
}
