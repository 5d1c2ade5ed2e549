using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Sources about tackle.</summary>
internal static class TackleSources
{
    /// <summary>Friction a sheave.</summary>
    public static readonly Source TenPercent = new("tackle-ten-percent", "US Navy Steelworker Vol. 2, allowance for friction: ten per cent of the load a sheave, worked twofold purchase", Standing.Primary);

    /// <summary>The steps.</summary>
    public static readonly Source Steps = new("tackle-steps", "US Army TB 9-2350-292-10, recovery sequence steps 3 to 5: estimated advantage, tackle resistance, fall-line force", Standing.Primary);

    /// <summary>Dead lines.</summary>
    public static readonly Source DeadLine = new("tackle-dead-line", "US Army FM 4-30.31 and FM 9-43-2 family: dead-line force is the fall-line force times the parts it holds", Standing.FromMemory);

    /// <summary>Block efficiency.</summary>
    public static readonly Source BlockEfficiency = new("block-efficiency", "Tension passed on by a sheave: 0.98 rolling bearing, 0.96 bronze bush, 0.90 to 0.91 rubbing snatch block", Standing.FromMemory);

    /// <summary>Chain by the wire-rope manual.</summary>
    public static readonly Source OpenLinkChain = new("open-link-chain", "US Army FM 5-125 p. 3-2: open-link chain, working capacity in short tons 8 D^2 with D in inches, factor of about 6", Standing.Primary);

    /// <summary>All sources of this file.</summary>
    public static IEnumerable<Source> All { get; } = [TenPercent, Steps, DeadLine, BlockEfficiency, OpenLinkChain];
}
