using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Sources about ground anchors.</summary>
internal static class AnchorSources
{
    /// <summary>Deadman table and form.</summary>
    public static readonly Source Deadman = new("deadman", "US Army TM 5-5420-278-10 p. 22 Table 9 (the table of FM 5-125): holding power by mean depth and slope, soil factors, length and slenderness", Standing.Primary);

    /// <summary>Deadman, pull straight up.</summary>
    public static readonly Source DeadmanStraightUp = new("deadman-straight-up", "US Army FM 5-125 ch. 4, column for a pull straight up", Standing.FromMemory);

    /// <summary>Width of the trench.</summary>
    public static readonly Source DeadmanTrench = new("deadman-trench", "Trench of the line as dug, not less than 1 ft: the 1 ft of TM 5-5420-278-10 and the trench width of FM 5-125, put together by engineering judgement", Standing.Judgement);

    /// <summary>Strength of the line.</summary>
    public static readonly Source AnchorOfLine = new("anchor-of-line", "US Army FM 5-125 ch. 4: the anchorage of a line carries the breaking strength of that line", Standing.Primary);

    /// <summary>Wooden pickets.</summary>
    public static readonly Source WoodPickets = new("wood-pickets", "US Navy NAVEDTRA 14251 pp. 6-172 to 6-174, single picket and holdfasts 1-1-1 and 3-2-1 in undisturbed loam", Standing.Primary);

    /// <summary>Wooden pickets not confirmed.</summary>
    public static readonly Source WoodPicketsFromMemory = new("wood-pickets-memory", "US Army FM 5-125 ch. 4, holdfasts 1-1 and 2-1, soil factors 0.9 wet clay-gravel and 0.5 river clay or sand", Standing.FromMemory);

    /// <summary>Steel pickets, inclined.</summary>
    public static readonly Source SteelPickets = new("steel-pickets", "Australian Emergency Manual, Disaster Rescue, para 8.3: 350 kg working load a steel picket, to 2 t in total", Standing.Primary);

    /// <summary>Steel pickets by soil.</summary>
    public static readonly Source SteelPicketsBySoil = new("steel-pickets-by-soil", "FHWA-IP-84-11 (1984) as given in a rescue field guide: steel pickets 48 in, driven 36 in, loads about half of capacity", Standing.Secondary);

    /// <summary>What pickets cannot do.</summary>
    public static readonly Source PicketsAndMachines = new("pickets-and-machines", "Published picket loads (3 to 18 kN in loam, below 1 kN in sand) set against the pull that a sunk machine of 15 t takes (45 to 300 kN): arithmetic on published numbers", Standing.Derived);

    /// <summary>A machine as an anchor.</summary>
    public static readonly Source MachineAnchor = new("machine-anchor", "A standing machine holds the net traction of its driven and braked wheels at slip up to 0.30 on the weakest reading, less its weight component along the line: engineering judgement of this library", Standing.Judgement);

    /// <summary>All sources of this file.</summary>
    public static IEnumerable<Source> All { get; } = [Deadman, DeadmanStraightUp, DeadmanTrench, AnchorOfLine, WoodPickets, WoodPicketsFromMemory, SteelPickets, SteelPicketsBySoil, PicketsAndMachines, MachineAnchor];
}
