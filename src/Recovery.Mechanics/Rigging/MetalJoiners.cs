using System;
using System.Collections.Generic;
using System.Linq;

namespace Recovery.Mechanics.Rigging;

/// <summary>Which steel joins straps in the middle of an elastic line, the same of a rig that is a list and of one that is a graph.</summary>
/// <remarks>
/// <para>Rule of the trade: shackle, block, chain or wire rope with a strap of the line on both its sides. The line leads from the puller to the casualty, and where a strap runs free as a bridle, to that and with it: the shackles behind a bridle are where they belong. Straps are told on through steel, so a shackle beside a chain between straps is one too. A line hauled over the sheave of a block is a tackle and joins nothing.</para>
/// <para>Such a piece is a stop in every arrangement; steel that is thrown but joins no straps is the caution of what hangs on a free end. Common practice, no source.</para>
/// </remarks>
internal static class MetalJoiners
{
    /// <summary>Whether the part at a place of a list joins straps.</summary>
    public static bool Joins(Rig rig, int i)
    {
        var end = rig.BridleIndex < 0 ? rig.Parts.Count : rig.BridleIndex + 1;
        if (i >= end) return false;
        bool before = false, after = false;
        for (var k = 0; k < end; k++)
        {
            if (rig.Parts[k] is not (Strap or Bridle)) continue;
            before |= k < i;
            after |= k > i;
        }

        return before && after;
    }

    /// <summary>Names of the joiners, chains and wire ropes of a graph that join straps, nodes first.</summary>
    public static IReadOnlyList<string> Of(RigGraph graph)
    {
        var line = Line(graph);
        var names = new List<string>();
        foreach (var node in graph.Nodes)
        {
            if (node.Joiner is not (Shackle or SnatchBlock)) continue;
            var sides = graph.Links.Count(l => line.Contains(l) && l.Touches(node.Name) && !HauledThrough(graph, node, l) && LeadsToStrap(graph, line, l, node.Name));
            if (sides > 1) names.Add(node.Joiner.Name);
        }

        foreach (var link in graph.Links)
        {
            // Both ends of it: on to a strap without going back through itself.
            if (link.IsSteel && line.Contains(link) && LeadsOn(graph, line, link, link.Nodes[0]) && LeadsOn(graph, line, link, link.Nodes[link.Nodes.Count - 1])) names.Add(link.Part.Name);
        }

        return names.AsReadOnly();
    }

    /// <summary>The links of the line: from the pullers on, and not past a strap that runs free where the line meets it.</summary>
    private static HashSet<RigLink> Line(RigGraph graph)
    {
        var line = new HashSet<RigLink>();
        var seen = new HashSet<string>(graph.Nodes.Where(n => n.Kind == RigNodeKind.Puller).Select(n => n.Name), StringComparer.Ordinal);
        var open = new Stack<string>(seen);
        while (open.Count > 0)
        {
            var at = open.Pop();
            foreach (var link in graph.Links.Where(l => l.Touches(at)))
            {
                line.Add(link);
                if (link.RunsThrough(at)) continue;
                foreach (var next in link.Nodes.Where(seen.Add)) open.Push(next);
            }
        }

        return line;
    }

    /// <summary>Whether a line that a puller draws runs over the sheave of a block: that is a tackle and joins nothing.</summary>
    private static bool HauledThrough(RigGraph graph, RigNode node, RigLink link) =>
        node.Joiner is SnatchBlock && link.RunsThrough(node.Name) && link.Nodes.Any(n => graph.Nodes[graph.IndexOf(n)].Kind == RigNodeKind.Puller);

    private static bool LeadsToStrap(RigGraph graph, HashSet<RigLink> line, RigLink link, string from) =>
        link.Part is Strap || link.Nodes.Any(n => n != from && LeadsOn(graph, line, link, n));

    private static bool LeadsOn(RigGraph graph, HashSet<RigLink> line, RigLink behind, string at)
    {
        var seen = new HashSet<RigLink> { behind };
        var open = new Stack<string>([at]);
        while (open.Count > 0)
        {
            var here = open.Pop();
            foreach (var link in graph.Links.Where(l => line.Contains(l) && l.Touches(here)))
            {
                if (!seen.Add(link)) continue;
                if (link.Part is Strap) return true;
                foreach (var next in link.Nodes) open.Push(next);
            }
        }

        return false;
    }
}
