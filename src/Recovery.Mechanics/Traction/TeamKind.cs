namespace Recovery.Mechanics.Traction;

/// <summary>How several machines pull together.</summary>
public enum TeamKind
{
    /// <summary>One before the other, each drawing the front of the next; the casualty hangs on the last one.</summary>
    InLine,

    /// <summary>Each on a line of its own to the casualty, the lines spread.</summary>
    SideBySide,

    /// <summary>Two machines on the ends of one strap that runs free through a ring at the casualty's line: both ends carry the same.</summary>
    Equalised,
}
