using System.Collections.Generic;
using System.Linq;

namespace Recovery.Mechanics.Rigging;

/// <summary>Takes each part out of the graph and looks at what then hangs on which anchor, with which steel.</summary>
/// <remarks>What is no longer on a way between two surviving supports flies with what it is tied to. A running strap that lost an end runs out of its eye; jammed there it loads the other end at once, which is worked beside it and has no acceptance level. All the energy of the rig counts for every piece, nothing lost.</remarks>
internal static class GraphFailures
{
    public static IReadOnlyList<FailureCase> Of(RigGraph graph, RigGraphEnvelope envelope, JammedRig jammed)
    {
        var cases = new List<FailureCase>();
        // Without the stretch of every strap nobody knows what is stored.
        if (graph.Links.Any(l => l.Part.Elastic is null)) return cases.AsReadOnly();
        var springs = new GraphSprings(graph, envelope, jammed);
        foreach (var link in graph.Links)
        {
            var after = new BrokenRig(graph);
            after.Part(link);
            cases.AddRange(after.Cases(link.Part.Name, springs));
        }

        foreach (var node in graph.Nodes)
        {
            if (node.Joiner is null && node.Point is null) continue;
            var after = new BrokenRig(graph);
            after.Release(node);
            cases.AddRange(after.Cases(node.Joiner?.Name ?? node.Name, springs));
        }

        return cases.AsReadOnly();
    }
}
