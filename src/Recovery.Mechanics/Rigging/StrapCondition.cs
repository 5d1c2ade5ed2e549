using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>What was seen on a strap. Wet is a derating; everything else takes the strap out of service and no factor rescues it.</summary>
[Flags]
public enum StrapCondition
{
    /// <summary>Inspected, dry, nothing found.</summary>
    Sound = 0,

    /// <summary>Wet.</summary>
    Wet = 1,

    /// <summary>A cut, tear, snag or hole.</summary>
    Cut = 2,

    /// <summary>Broken load-bearing stitching.</summary>
    BrokenStitching = 4,

    /// <summary>Melting, heat or chemical burn.</summary>
    Burnt = 8,

    /// <summary>A knot.</summary>
    Knotted = 16,

    /// <summary>No tag, or a tag that cannot be read.</summary>
    TagMissing = 32,

    /// <summary>Wet and below freezing.</summary>
    FrozenWet = 64,
}
