namespace Recovery.Mechanics.Rigging;

/// <summary>Colour of a sling made to EN 1492. The tag decides; a colour is a hint.</summary>
public enum SlingColour
{
    /// <summary>1 t.</summary>
    Violet,

    /// <summary>2 t.</summary>
    Green,

    /// <summary>3 t.</summary>
    Yellow,

    /// <summary>4 t.</summary>
    Grey,

    /// <summary>5 t.</summary>
    Red,

    /// <summary>6 t.</summary>
    Brown,

    /// <summary>8 t.</summary>
    Blue,

    /// <summary>10 t and above: the tag alone tells.</summary>
    Orange,
}
