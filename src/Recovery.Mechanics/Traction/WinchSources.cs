using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Sources about winches and wraps.</summary>
internal static class WinchSources
{
    /// <summary>Pull by layer.</summary>
    public static readonly Source Layers = new("winch-layers", "US Army TM 9-2320-279-10-2 p. 2-660, Table 2-7 (line pulls of layers 1 to 5); the formula is derived from equal torque", Standing.Derived);

    /// <summary>Wraps left.</summary>
    public static readonly Source Wraps = new("winch-wraps", "US Army TM 9-2320-279-10-2 p. 2-660, at least five wraps on the drum", Standing.Primary);

    /// <summary>Fleet angles.</summary>
    public static readonly Source FleetAngle = new("fleet-angle", "US Army FM 5-125 ch. 1-2 and wire-rope users' manuals, fleet angles 0.5 to 1.5 or 2 degrees", Standing.FromMemory);

    /// <summary>Sizing to stall.</summary>
    public static readonly Source Stall = new("winch-stall", "WorkSafe Queensland incident alert, September 2018: 2:1 on the stall pull, a further 2:1 on blocks and their anchors", Standing.Primary);

    /// <summary>Sizing to stall beyond two parts on a place.</summary>
    public static readonly Source StallGeneral = new("winch-stall-general", "The 2:1 rules of the WorkSafe Queensland alert of September 2018 carried over to places with more than two parts of line: engineering judgement", Standing.Judgement);

    /// <summary>Friction of a wrap.</summary>
    public static readonly Source Capstan = new("capstan", "Capstan equation T1 = T2 exp(mu beta), statics of a rope on a rough cylinder", Standing.Derived);

    /// <summary>Friction coefficients for wraps.</summary>
    public static readonly Source WrapFriction = new("wrap-friction", "Friction of ropes and webbing on steel 0.10 where it holds, 0.30 where it multiplies a load: engineering judgement", Standing.Judgement);

    /// <summary>All sources of this file.</summary>
    public static IEnumerable<Source> All { get; } = [Layers, Wraps, FleetAngle, Stall, StallGeneral, Capstan, WrapFriction];
}
