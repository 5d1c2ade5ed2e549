using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Sources of the room: what can pull it.</summary>
internal static class TractionSources
{
    /// <summary>Sustained and imposable pull are two numbers.</summary>
    public static readonly Source TwoPulls = new("two-pulls", "Sustained and imposable pull as two numbers, slip at most 0.30 for planning: engineering judgement of this library", Standing.Judgement);

    /// <summary>Hard surface.</summary>
    public static readonly Source HardSurface = new("brixius-hard-surface", "Hard-surface branch NT/W = 1.02 (1 - e^(-C_n s)) beside the radial Brixius set, as coded in an off-road tyre force model of 1991", Standing.Secondary);

    /// <summary>Front axle load.</summary>
    public static readonly Source Nose = new("nose-lift", "Moments about the trailing contact with the accelerating force at the centre of mass; stop at lift, caution above 0.8: statics (derived), levels judgement", Standing.Judgement);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [TwoPulls, HardSurface, Nose, .. WinchSources.All, .. TackleSources.All, .. AnchorSources.All, .. TeamFindings.Sources, .. TowingFindings.Sources];
}
