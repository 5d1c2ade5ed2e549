using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A solved rig: where its joints come to rest, the force vector of every part, and what the anchors and pullers take.</summary>
public sealed class RigGraphForces
{
    private readonly LoadPathSolver _solver;
    private readonly RigGraph _graph;

    private RigGraphForces(RigGraph graph, LoadPathSolver solver, RigLoadLevel level, StretchState stretch, double pull)
    {
        _graph = graph;
        _solver = solver;
        Level = level;
        Stretch = stretch;
        TotalPull = Force.FromNewtons(pull);
        Parts = graph.Links.Select((link, i) => new PartForce(link, Enumerable.Range(0, link.Nodes.Count - 1).Select(s => new RigForce(solver.Tension(i, s) * solver.Direction(i, s))).ToList().AsReadOnly())).ToList().AsReadOnly();
    }

    /// <summary>Gets which of the loads was put on.</summary>
    public RigLoadLevel Level { get; }

    /// <summary>Gets how much the parts stretched.</summary>
    public StretchState Stretch { get; }

    /// <summary>Gets the sum of the pulls.</summary>
    public Force TotalPull { get; }

    /// <summary>Gets every part with its force, in the order of the links.</summary>
    public IReadOnlyList<PartForce> Parts { get; }

    /// <summary>Gets the largest sum of forces at a joint over the pull; below 1e-10.</summary>
    public double Residual => _solver.Residual;

    /// <summary>Gets the force of a part by name.</summary>
    /// <param name="part">Name of the strap, chain or wire rope.</param>
    /// <returns>Its force.</returns>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public PartForce Of(string part) => Parts.FirstOrDefault(p => p.Link.Part.Name == part) ?? throw new ArgumentException("The rig has no line named '" + part + "'.", nameof(part));

    /// <summary>Gets what the rig puts into a node: into an anchor, a puller, or, as what is left over, a joint.</summary>
    /// <param name="node">Name of the node.</param>
    /// <returns>The force of all parts on it.</returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    public RigForce On(string node) => new(_solver.ForceOn(Index(node)));

    /// <summary>Gets where a node is.</summary>
    /// <param name="node">Name of the node.</param>
    /// <returns>Its place.</returns>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    public RigPoint At(string node) => new(_solver.At[Index(node)]);

    /// <summary>Gives the solved rig in one line, invariant culture.</summary>
    /// <returns>Each part with its tension.</returns>
    public override string ToString() => string.Join("; ", Parts);

    internal bool IsDeterminate => _solver.IsDeterminate();

    internal static RigGraphForces Of(RigGraph graph, RigLoadLevel level, StretchState stretch, string? runningPart, int way)
    {
        var elements = graph.Links.Select(link => Element(graph, link, level, stretch, link.Part.Name == runningPart ? way : 0)).ToArray();
        var solver = new LoadPathSolver(Start(graph), graph.Nodes.Select(n => n.Kind == RigNodeKind.Joint).ToArray(), elements);
        solver.Solve();
        return new RigGraphForces(graph, solver, level, stretch, graph.Nodes.Sum(n => n.Pull?.At(level) ?? 0));
    }

    private static LoadPathElement Element(RigGraph graph, RigLink link, RigLoadLevel level, StretchState stretch, int way)
    {
        var element = new LoadPathElement
        {
            Nodes = link.Nodes.Select(graph.IndexOf).ToArray(),
            Length = link.LineMetres,
            Way = way,
            Friction = new double[link.Nodes.Count - 2],
            Ratio = new double[link.Nodes.Count - 2],
        };
        if (stretch != StretchState.Unstretched && link.Part.Elastic is { } line) element.Stiffness = stretch == StretchState.Soft ? line.SoftNewtons : line.StiffNewtons;
        for (var i = 1; i + 1 < link.Nodes.Count; i++)
        {
            var block = graph.Nodes[element.Nodes[i]].Joiner as SnatchBlock;
            element.Friction[i - 1] = block is null ? BridleKernel.FrictionHigh : 0;
            element.Ratio[i - 1] = block is null ? 1 : 1 / block.Efficiency;
        }

        RigNode first = graph.Nodes[element.Nodes[0]], last = graph.Nodes[element.Nodes[element.Nodes.Length - 1]];
        if (first.Pull is { } here) element.Pull = here.At(level);
        if (last.Pull is { } there)
        {
            element.Pull = there.At(level);
            element.PullAtEnd = true;
        }

        return element;
    }

    /// <summary>Joints between the anchors and the pullers to begin with, each a little aside from the others.</summary>
    private static Vector3[] Start(RigGraph graph)
    {
        var at = new Vector3[graph.Nodes.Count];
        Vector3 anchors = default, pullers = default;
        int a = 0, p = 0;
        for (var i = 0; i < at.Length; i++)
        {
            if (graph.Nodes[i].At is not { } place) continue;
            at[i] = place.Metres;
            if (graph.Nodes[i].Kind == RigNodeKind.Anchor)
            {
                anchors += at[i];
                a++;
            }
            else
            {
                pullers += at[i];
                p++;
            }
        }

        anchors = 1.0 / a * anchors;
        pullers = 1.0 / p * pullers;
        var reach = Reach(graph);
        var way = (pullers - anchors).Length;
        for (var i = 0; i < at.Length; i++)
        {
            if (graph.Nodes[i].Kind != RigNodeKind.Joint) continue;
            // As far out as the straps from the anchors let it, a little stretched; only a pulled line leads to the others.
            var share = double.IsInfinity(reach[i]) ? (i + 1.0) / (at.Length + 1) : Math.Min(0.95, (1.02 * reach[i] / way) + (1e-3 * i / at.Length));
            at[i] = anchors + (share * (pullers - anchors)) + new Vector3(0, 0.01 * Math.Sin(1 + (2.4 * i)), 0.01 * Math.Cos(1 + (2.4 * i)));
        }

        return at;
    }

    /// <summary>Length of strap from the nearest anchor to every node, half of a running one to what it runs through; the lines of pullers lead nowhere.</summary>
    private static double[] Reach(RigGraph graph)
    {
        var reach = graph.Nodes.Select(n => n.Kind == RigNodeKind.Anchor ? 0 : double.PositiveInfinity).ToArray();
        for (var round = 0; round < reach.Length; round++)
        {
            foreach (var link in graph.Links)
            {
                if (graph.Nodes[graph.IndexOf(link.Nodes[0])].Kind == RigNodeKind.Puller || graph.Nodes[graph.IndexOf(link.Nodes[link.Nodes.Count - 1])].Kind == RigNodeKind.Puller) continue;
                var part = link.LineMetres / (link.Nodes.Count - 1);
                for (var i = 1; i < link.Nodes.Count; i++)
                {
                    int a = graph.IndexOf(link.Nodes[i - 1]), b = graph.IndexOf(link.Nodes[i]);
                    reach[b] = Math.Min(reach[b], reach[a] + part);
                    reach[a] = Math.Min(reach[a], reach[b] + part);
                }
            }
        }

        return reach;
    }

    private int Index(string node)
    {
        var i = _graph.IndexOf(node);
        return i >= 0 ? i : throw new ArgumentException("The rig has no node named '" + node + "'.", nameof(node));
    }
}
