using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;

namespace Recovery.Mechanics.Rigging;

/// <summary>The greatest of everything that is solved of a rig: stretch soft and stiff, and none where equilibrium settles the tensions; no friction, and friction either way of each part that runs.</summary>
internal sealed class RigGraphEnvelope
{
    private static readonly RigLoadLevel[] Levels = [RigLoadLevel.Steady, RigLoadLevel.Procedure, RigLoadLevel.Careless];

    /// <summary>Place of the procedure peak in <see cref="Levels"/>.</summary>
    private const int Procedure = 1;

    private readonly RigGraph _graph;
    private readonly double[] _links;
    private readonly double[] _joiners;
    private readonly double[,] _attachments;
    private readonly double[,] _inward;
    private readonly double[] _included;
    private readonly IReadOnlyList<(int From, int To)> _tied;

    private RigGraphEnvelope(RigGraph graph)
    {
        _graph = graph;
        _links = new double[graph.Links.Count];
        _joiners = new double[graph.Nodes.Count];
        _attachments = new double[graph.Nodes.Count, Levels.Length];
        _inward = new double[graph.Nodes.Count, Levels.Length];
        _included = new double[graph.Links.Count];
        _tied = RigGraphShape.TiedAnchors(graph);
        Stiff = graph.Solve(RigLoadLevel.Procedure, StretchState.Stiff);
        Soft = graph.Solve(RigLoadLevel.ProcedureSoft, StretchState.Soft);
        var pulls = Levels.Select(level => graph.Nodes.Sum(n => n.Pull?.At(level) ?? 0)).ToArray();
        Loads = new LineLoadOutput { Steady = pulls[0], Procedure = pulls[1], Careless = pulls[2], SecondProcedure = double.NaN };
    }

    /// <summary>Without friction at the stiff end, procedure peak.</summary>
    public RigGraphForces Stiff { get; }

    /// <summary>Without friction at the soft end with its own procedure peak.</summary>
    public RigGraphForces Soft { get; }

    /// <summary>Sums of the pulls.</summary>
    public LineLoadOutput Loads { get; }

    public double Residual { get; private set; }

    public IReadOnlyList<AttachmentLoad> Attachments
    {
        get
        {
            var all = new List<AttachmentLoad>();
            for (var i = 0; i < _graph.Nodes.Count; i++)
            {
                if (_graph.Nodes[i].Point is { } point) all.Add(new AttachmentLoad(point, Three(_attachments, i), Three(_inward, i)));
            }

            return all.AsReadOnly();
        }
    }

    public static RigGraphEnvelope Of(RigGraph graph) => Of(graph, Levels.Length);

    /// <summary>The same of the procedure peak alone at both ends of the stretch: shares of parts and joiners, nothing of the attachments.</summary>
    public static RigGraphEnvelope OfProcedure(RigGraph graph) => Of(graph, 1);

    private static RigGraphEnvelope Of(RigGraph graph, int levels)
    {
        var envelope = new RigGraphEnvelope(graph);
        List<StretchState> stretches = [StretchState.Stiff, StretchState.Soft];
        if (levels > 1 && envelope.Stiff.IsDeterminate) stretches.Add(StretchState.Unstretched);
        for (var i = 0; i < levels; i++)
        {
            var level = levels == 1 ? Procedure : i;
            foreach (var stretch in stretches)
            {
                envelope.Take(graph.Solve(Levels[level], stretch), level);
                foreach (var link in graph.Links.Where(l => l.Runs))
                {
                    envelope.Take(graph.Solve(Levels[level], stretch, link.Part.Name, 1), level);
                    envelope.Take(graph.Solve(Levels[level], stretch, link.Part.Name, -1), level);
                }
            }
        }

        return envelope;
    }

    /// <summary>Greatest tension of a link over the pull.</summary>
    public double OfLink(int i) => _links[i];

    /// <summary>Widest angle between the two parts of a link at an eye that it runs through, rad; 0 where it runs through none or a puller draws on it.</summary>
    public double Included(int i) => _included[i];

    /// <summary>Greatest load of the joiner of a node over the pull.</summary>
    public double OfJoiner(int i) => _joiners[i];

    /// <summary>Whether a strap has another in its eye or runs through one with nothing between.</summary>
    public bool Bight(int i)
    {
        var link = _graph.Links[i];
        foreach (var name in link.Nodes)
        {
            var node = _graph.Nodes[_graph.IndexOf(name)];
            if (node.Kind != RigNodeKind.Joint || node.Joiner is SnatchBlock || !_graph.Links.Any(l => l.RunsThrough(name) || l.Jammed == name)) continue;
            if (node.Joiner is null || link.RunsThrough(name) || link.Jammed == name) return true;
        }

        return false;
    }

    private void Take(RigGraphForces forces, int level)
    {
        Residual = Math.Max(Residual, forces.Residual);
        var pull = forces.TotalPull.Newtons;
        for (var i = 0; i < _links.Length; i++) _links[i] = Math.Max(_links[i], forces.Parts[i].Greatest.Newtons / pull);
        for (var n = 0; n < _graph.Nodes.Count; n++)
        {
            var node = _graph.Nodes[n];
            if (node.Point is not null) _attachments[n, level] = Math.Max(_attachments[n, level], forces.On(node.Name).Newtons.Length);
            if (node.Joiner is not null) _joiners[n] = Math.Max(_joiners[n], Joiner(forces, node.Name) / pull);
        }

        foreach (var (from, to) in _tied)
        {
            RigNode here = _graph.Nodes[from], there = _graph.Nodes[to];
            var apart = there.At!.Metres - here.At!.Metres;
            if (apart.Length > 0) _inward[from, level] = Math.Max(_inward[from, level], forces.On(here.Name).Newtons.Dot(apart) / apart.Length);
        }

        for (var i = 0; i < _included.Length; i++) _included[i] = Math.Max(_included[i], Widest(forces.Parts[i]));
    }

    private double Widest(PartForce part)
    {
        var link = part.Link;
        double widest = 0;
        if (link.Nodes.Any(n => _graph.Nodes[_graph.IndexOf(n)].Kind == RigNodeKind.Puller)) return widest;
        for (var i = 1; i + 1 < link.Nodes.Count; i++)
        {
            Vector3 before = -1 * part.Segments[i - 1].Newtons, after = part.Segments[i].Newtons;
            // A slack strap has no angle, and a block is made for any.
            if (!(before.Length > 0) || !(after.Length > 0) || _graph.Nodes[_graph.IndexOf(link.Nodes[i])].Joiner is SnatchBlock) continue;
            widest = Math.Max(widest, Math.Acos(Math.Max(-1, Math.Min(1, before.Dot(after) / (before.Length * after.Length)))));
        }

        return widest;
    }

    private static (double Steady, double Procedure, double Careless) Three(double[,] of, int node) => (of[node, 0], of[node, 1], of[node, 2]);

    /// <summary>What a joiner carries: the greatest end that hangs on it, or both parts together of what runs through it.</summary>
    private double Joiner(RigGraphForces forces, string node)
    {
        double most = 0;
        foreach (var part in forces.Parts)
        {
            var nodes = part.Link.Nodes;
            for (var i = 0; i < nodes.Count; i++)
            {
                if (nodes[i] != node) continue;
                var force = default(Vector3);
                if (i < nodes.Count - 1) force += part.Segments[i].Newtons;
                if (i > 0) force -= part.Segments[i - 1].Newtons;
                most = Math.Max(most, force.Length);
            }
        }

        return most;
    }
}
