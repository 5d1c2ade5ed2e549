using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Kinds of finding that single pieces of gear raise. None of them is rescued by a factor.</summary>
internal static class GearFindings
{
    public static readonly FindingDefinition LegsTooWide = new("hitch.legs-too-wide", Severity.Stop, "The {subject} opens to {available}, its factors end at {required}: beyond that each leg carries more than the whole load.", "Longer legs.", PartSources.WidestLegs);
    public static readonly FindingDefinition ChokeTooSharp = new("hitch.choke-too-sharp", Severity.Stop, "The {subject} has an angle of choke of {available}, its table begins at {required}.", "Let the choke set itself in the line of the pull.", PartSources.ChainChokeAngles);
    public static readonly FindingDefinition ShackleSizeOnly = new("rig.shackle-size-only", Severity.Stop, "The {subject} has no mark that says its limit. Shackles of its size are made with limits from {available} to {required}: the size does not tell which.", "Use a shackle whose mark says its working load limit.", PartSources.ShackleGradeASeries);
    public static readonly FindingDefinition ShackleLegsTooWide = new("rig.shackle-legs-too-wide", Severity.Stop, "The legs in the bow of the {subject} open to {available}; it may collect two even legs up to {required}, and a dee shackle none.", "Longer legs, or a ring with a shackle for each leg.", PartSources.TwoLegsInBow);

    /// <summary>All of them.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [LegsTooWide, ChokeTooSharp, ShackleSizeOnly, ShackleLegsTooWide];
}
