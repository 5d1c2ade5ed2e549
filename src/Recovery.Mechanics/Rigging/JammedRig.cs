using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>A rig of any arrangement in which a strap that runs through one eye lost an end and jammed in that eye: solved again without its lost part.</summary>
/// <remarks>What is left of the strap reaches from the eye to the end that holds, as long as that part was; its bight still lies in the eye. What then holds nothing falls away. No acceptance level. Source: statics (derived), rule of the trade.</remarks>
internal sealed class JammedRig
{
    private readonly RigGraph _graph;
    private readonly DesignFactorPolicy _policy;
    private readonly double _wear;
    private readonly RigGraphForces _forces;
    private readonly Dictionary<(RigLink Link, string Lost), EyeJam?> _known = [];

    /// <param name="graph">The whole rig.</param>
    /// <param name="policy">The design factor policy.</param>
    /// <param name="wear">Wear and twist factor.</param>
    /// <param name="forces">The whole rig solved at the stiff end: where the eye lay on the strap.</param>
    public JammedRig(RigGraph graph, DesignFactorPolicy policy, double wear, RigGraphForces forces)
    {
        _graph = graph;
        _policy = policy;
        _wear = wear;
        _forces = forces;
    }

    /// <summary>What the leg that holds then carries; null where the strap runs through no single eye, or no pull is left on it.</summary>
    public EyeJam? Of(RigLink link, string lost)
    {
        if (!_known.TryGetValue((link, lost), out var jam)) _known.Add((link, lost), jam = Solve(link, lost));
        return jam;
    }

    private EyeJam? Solve(RigLink link, string lost)
    {
        if (link.Nodes.Count != 3 || Node(_graph, link.Nodes[1]).Joiner is SnatchBlock || Node(_graph, link.Nodes[0]).Pull is not null || Node(_graph, link.Nodes[2]).Pull is not null) return null;
        string eye = link.Nodes[1], held = link.Nodes[0] == lost ? link.Nodes[2] : link.Nodes[0];
        double there = Between(eye, held), gone = Between(eye, lost);
        var left = link.JammedIn(eye, held, there / (there + gone));
        if (Rest(_graph.Links.Select(l => ReferenceEquals(l, link) ? left : l).ToList(), left) is not { } rig) return null;
        try
        {
            var envelope = RigGraphEnvelope.OfProcedure(rig);
            var leg = Leg(rig, left, held);
            var places = RigGraphCheck.PartsOf(rig, _policy, _wear, envelope).Where(p => leg.Contains(p.Part.Name)).ToList();
            var weakest = places.FirstOrDefault(p => p.Reserve is null) ?? places.OrderBy(p => p.Reserve).FirstOrDefault();
            return weakest is null ? null : new EyeJam(places.First(p => ReferenceEquals(p.Part, left.Part)).Procedure.Newtons, Phrase.Name(weakest.Part.Name), weakest.Reserve);
        }
        catch (SolverException)
        {
            // The eye is drawn past its puller: what is left of the rig comes to no rest, and nothing is said of it.
            return null;
        }
    }

    private double Between(string a, string b) => (_forces.At(a).Metres - _forces.At(b).Metres).Length;

    /// <summary>The rig of what still lies between an anchor and a puller; null where the jammed leg does not.</summary>
    private RigGraph? Rest(List<RigLink> links, RigLink left)
    {
        for (var changed = true; changed;)
        {
            var idle = _graph.Nodes.Where(n => n.Kind == RigNodeKind.Joint && links.Any(l => l.Touches(n.Name)) && (links.Count(l => l.Touches(n.Name)) < 2 || !Reaches(links, n.Name, RigNodeKind.Anchor) || !Reaches(links, n.Name, RigNodeKind.Puller))).Select(n => n.Name).ToList();
            changed = links.RemoveAll(l => idle.Exists(l.Touches)) > 0;
        }

        if (!links.Contains(left)) return null;
        var nodes = _graph.Nodes.Where(n => links.Exists(l => l.Touches(n.Name))).ToList();
        return nodes.Exists(n => n.Kind == RigNodeKind.Anchor) && nodes.Exists(n => n.Kind == RigNodeKind.Puller) ? new RigGraph(nodes, links) : null;
    }

    private bool Reaches(List<RigLink> links, string from, RigNodeKind kind)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { from };
        var open = new Stack<string>(seen);
        while (open.Count > 0)
        {
            var at = open.Pop();
            if (Node(_graph, at).Kind == kind) return true;
            if (Node(_graph, at).Kind != RigNodeKind.Joint) continue;
            foreach (var next in links.Where(l => l.Touches(at)).SelectMany(l => l.Nodes).Where(seen.Add)) open.Push(next);
        }

        return false;
    }

    /// <summary>Names of the jammed strap and of what lies behind it, up to the anchors.</summary>
    private static HashSet<string> Leg(RigGraph rig, RigLink left, string held)
    {
        var names = new HashSet<string>(StringComparer.Ordinal) { left.Part.Name };
        var seen = new HashSet<string>(StringComparer.Ordinal) { held };
        var open = new Stack<string>(seen);
        while (open.Count > 0)
        {
            var node = Node(rig, open.Pop());
            if (node.Joiner is { } joiner) names.Add(joiner.Name);
            if (node.Kind != RigNodeKind.Joint) continue;
            foreach (var link in rig.Links.Where(l => !ReferenceEquals(l, left) && l.Touches(node.Name)))
            {
                names.Add(link.Part.Name);
                foreach (var next in link.Nodes.Where(n => !left.Touches(n) && seen.Add(n))) open.Push(next);
            }
        }

        return names;
    }

    private static RigNode Node(RigGraph graph, string name) => graph.Nodes[graph.IndexOf(name)];
}
