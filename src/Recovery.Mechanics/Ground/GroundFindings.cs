using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>Kinds of finding that this room raises: soil, grade.</summary>
internal static class GroundFindings
{
    /// <summary>A remoulding test that gave more than one.</summary>
    public static readonly FindingDefinition RemouldingCapped = new(
        "ground.remoulding-capped",
        Severity.Note,
        "The remoulding test of the {subject} gave {available}, more than {required}: blows do not make a wet soil stronger, so the sample lost water or hit a stone. The index is cut to {required}.",
        "Test another sample.",
        GroundSources.RemouldingLimits);

    /// <summary>A remoulding index that fat clay is unlikely to have.</summary>
    public static readonly FindingDefinition RemouldingDoubtful = new(
        "ground.remoulding-doubtful",
        Severity.Note,
        "The remoulding test of the {subject} gave {available}; below {required} is unlikely in fat clay. It is used as it stands, on the cautious side.",
        "Look at the sample and its class, and test another.",
        GroundSources.RemouldingLimits);

    /// <summary>A remoulding test below the least index that is taken.</summary>
    public static readonly FindingDefinition RemouldingRaised = new(
        "ground.remoulding-raised",
        Severity.Caution,
        "The remoulding test of the {subject} gave {available}; an index below {required} is not taken, so {required} counts and the soil is weaker than the numbers say.",
        "Take the sample for liquid once remoulded: nothing drives there, and whatever is drawn over it goes deeper.",
        GeneralSources.Judgement);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [RemouldingCapped, RemouldingDoubtful, RemouldingRaised];
}
