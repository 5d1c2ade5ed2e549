using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Sources of the room: what holds the machine.</summary>
internal static class ResistanceSources
{
    /// <summary>Passive pressure on a vertical face.</summary>
    public static readonly Source Rankine = new("rankine-passive", "Rankine passive pressure of undrained clay on a vertical face, phi = 0 (textbook plasticity)", Standing.Derived);

    /// <summary>Suction behind a buried face.</summary>
    public static readonly Source Suction = new("api-rp-2geo-sliding", "API RP 2GEO 2011, sliding resistance: K_ru 4 in full contact, 2 where the rear side cannot be relied on; their difference is the suction", Standing.Secondary);

    /// <summary>Bearing factor of a shallow strip.</summary>
    public static readonly Source BearingFactor = new("api-rp-2geo-bearing", "Bearing factor 2 + pi = 5.14, API RP 2GEO 2011", Standing.Secondary);

    /// <summary>How the terms add up for a whole machine.</summary>
    public static readonly Source Composition = new("mire-composition", "Whole-machine composition of the terms, its shares and its bounds: engineering judgement of this library", Standing.Judgement);

    /// <summary>Depth rule.</summary>
    public static readonly Source DepthRule = new("army-depth-rule", "Mire resistance 1, 2 or 3 times the weight by depth of the wheels, US Army FM 20-22 (1970) and FM 9-43-2 (1995)", Standing.FromMemory);

    /// <summary>Slopes of an entry rut.</summary>
    public static readonly Source ExitSlopes = new("exit-slopes", "Entry rut 1:10, 1:6, 1:4 where it was not measured: engineering judgement", Standing.Judgement);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [Rankine, Suction, BearingFactor, Composition, DepthRule, ExitSlopes];
}
