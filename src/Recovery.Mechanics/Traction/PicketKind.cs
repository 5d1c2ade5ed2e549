namespace Recovery.Mechanics.Traction;

/// <summary>Published picket holdfasts.</summary>
public enum PicketKind
{
    /// <summary>One wooden picket at least 76 mm thick and 1.5 m long, driven 0.9 to 1.2 m at 15 degrees.</summary>
    WoodSingle,

    /// <summary>Wooden pickets one behind one (from memory).</summary>
    Wood11,

    /// <summary>Wooden pickets one behind one behind one.</summary>
    Wood111,

    /// <summary>Two wooden pickets in front, one behind (from memory).</summary>
    Wood21,

    /// <summary>Three wooden pickets in front, two behind, one behind those.</summary>
    Wood321,

    /// <summary>One steel picket of 1.2 m driven 0.9 m.</summary>
    SteelSingle,

    /// <summary>Three such steel pickets in line.</summary>
    SteelThreeInLine,
}
