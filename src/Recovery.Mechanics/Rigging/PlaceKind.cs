namespace Recovery.Mechanics.Rigging;

/// <summary>What kind of place of a rig is checked.</summary>
public enum PlaceKind
{
    /// <summary>A strap, a bridle leg or a soft shackle as a whole, its weakest place counted.</summary>
    Strap,

    /// <summary>A bight in an eye without a maker's figure: 0.5 from memory, its own level.</summary>
    Bight,

    /// <summary>A bight in an eye with the maker's figure: checked like any part.</summary>
    BightWithFigure,

    /// <summary>A shackle.</summary>
    Shackle,
}
