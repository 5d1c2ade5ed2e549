using System;
using System.Collections.Generic;
using System.Linq;

namespace Recovery.Mechanics.Rigging;

/// <summary>Whether a graph is a rig: what contradicts what is said with names.</summary>
internal static class RigGraphShape
{
    public static void Check(RigGraph graph)
    {
        if (!graph.Nodes.Any(n => n.Kind == RigNodeKind.Anchor)) throw new ArgumentException("A rig needs an anchor.", "nodes");
        if (!graph.Nodes.Any(n => n.Kind == RigNodeKind.Puller)) throw new ArgumentException("A rig needs a puller.", "nodes");
        foreach (var link in graph.Links)
        {
            for (var i = 0; i < link.Nodes.Count; i++)
            {
                var index = graph.IndexOf(link.Nodes[i]);
                if (index < 0) throw new ArgumentException("The line " + link.Part.Name + " goes to " + link.Nodes[i] + ", which is no node of the rig.", "links");
                if (i > 0 && i + 1 < link.Nodes.Count && graph.Nodes[index].Kind != RigNodeKind.Joint) throw new ArgumentException("The line " + link.Part.Name + " cannot run through " + link.Nodes[i] + ": only joints let a part run.", "links");
                if (i > 0 && i + 1 < link.Nodes.Count && link.IsSteel && graph.Nodes[index].Joiner is not SnatchBlock) throw new ArgumentException("The wire rope " + link.Part.Name + " cannot run through " + link.Nodes[i] + ": there is no block, and it cuts what it rubs on.", "links");
            }

            if (Kind(graph, link.Nodes[0]) == RigNodeKind.Puller && Kind(graph, link.Nodes[link.Nodes.Count - 1]) == RigNodeKind.Puller) throw new ArgumentException("The line " + link.Part.Name + " lies between two pullers.", "links");
        }

        foreach (var node in graph.Nodes)
        {
            var parts = graph.Links.Count(l => l.Touches(node.Name));
            if (node.Kind == RigNodeKind.Puller && parts != 1) throw new ArgumentException("One part hangs on the puller " + node.Name + "; " + parts.ToString(System.Globalization.CultureInfo.InvariantCulture) + " were given.", "links");
            if (node.Kind == RigNodeKind.Joint && parts < 2) throw new ArgumentException("At the joint " + node.Name + " nothing is joined.", "links");
            if (node.Kind == RigNodeKind.Joint && !(Reaches(graph, node.Name, RigNodeKind.Anchor) && Reaches(graph, node.Name, RigNodeKind.Puller))) throw new ArgumentException("From the joint " + node.Name + " no way leads to both an anchor and a puller.", "links");
        }
    }

    /// <summary>Anchors that are tied to each other by lines, every pair both ways: a way from one to the other that passes no puller, no block and no third anchor.</summary>
    public static IReadOnlyList<(int From, int To)> TiedAnchors(RigGraph graph)
    {
        var tied = new List<(int From, int To)>();
        for (var i = 0; i < graph.Nodes.Count; i++)
        {
            if (graph.Nodes[i].Kind != RigNodeKind.Anchor) continue;
            var seen = new HashSet<string>(StringComparer.Ordinal) { graph.Nodes[i].Name };
            var open = new Stack<string>();
            open.Push(graph.Nodes[i].Name);
            while (open.Count > 0)
            {
                var at = open.Pop();
                var k = graph.IndexOf(at);
                if (k != i && graph.Nodes[k].Kind == RigNodeKind.Anchor) tied.Add((i, k));
                if ((k != i && graph.Nodes[k].Kind != RigNodeKind.Joint) || graph.Nodes[k].Joiner is SnatchBlock) continue;
                foreach (var link in graph.Links.Where(l => l.Touches(at)))
                {
                    var own = 0;
                    while (link.Nodes[own] != at) own++;
                    if (own > 0 && seen.Add(link.Nodes[own - 1])) open.Push(link.Nodes[own - 1]);
                    if (own + 1 < link.Nodes.Count && seen.Add(link.Nodes[own + 1])) open.Push(link.Nodes[own + 1]);
                }
            }
        }

        return tied.AsReadOnly();
    }

    private static RigNodeKind Kind(RigGraph graph, string name) => graph.Nodes[graph.IndexOf(name)].Kind;

    private static bool Reaches(RigGraph graph, string from, RigNodeKind kind)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { from };
        var open = new Stack<string>();
        open.Push(from);
        while (open.Count > 0)
        {
            var at = open.Pop();
            if (Kind(graph, at) == kind) return true;
            foreach (var next in graph.Links.Where(l => l.Touches(at)).SelectMany(l => l.Nodes))
            {
                if (seen.Add(next)) open.Push(next);
            }
        }

        return false;
    }
}
