using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>A rig as a graph from the pullers to the anchors, for any arrangement: joined straps, two recovery points, two pullers, bridles, blocks.</summary>
/// <remarks>
/// <para>Nodes are the anchors on the stuck machine, the hitches of the pullers, and the joints; links are the straps, chains and wire ropes. One part hangs on each puller and carries its pull; where the joints come to rest, and what every other part carries, is worked out in space by <see cref="Solve(RigLoadLevel, StretchState)"/>.</para>
/// <para>Immutable; many threads may use it at once. Source: statics of parts that bear tension alone (derived).</para>
/// </remarks>
public sealed class RigGraph
{
    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);

    /// <summary>Describes a rig.</summary>
    /// <param name="nodes">Anchors, pullers and joints.</param>
    /// <param name="links">Straps, chains and wire ropes between them.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A null in a list, a name given twice, a link to a node that is not there, a puller on which not exactly one end of a part hangs, a part that runs through an anchor or a puller, a wire rope that runs through anything but a block, no anchor, no puller, a joint with fewer than two parts, or a joint from which no way leads to both an anchor and a puller.</exception>
    public RigGraph(IEnumerable<RigNode> nodes, IEnumerable<RigLink> links)
    {
        Nodes = Guard.NotNull(nodes, nameof(nodes)).ToList().AsReadOnly();
        Links = Guard.NotNull(links, nameof(links)).ToList().AsReadOnly();
        if (Links.Any(l => l is null)) throw new ArgumentException("links must not hold a null.", nameof(links));
        for (var i = 0; i < Nodes.Count; i++)
        {
            if (Nodes[i] is null) throw new ArgumentException("nodes must not hold a null.", nameof(nodes));
            if (_index.ContainsKey(Nodes[i].Name)) throw new ArgumentException("Two nodes are named " + Nodes[i].Name + ".", nameof(nodes));
            _index.Add(Nodes[i].Name, i);
        }

        if (Links.Select(l => l.Part.Name).Concat(Nodes.Where(n => n.Joiner is not null).Select(n => n.Joiner!.Name)).GroupBy(n => n, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new ArgumentException("Two parts are named " + twice.Key + ".", nameof(links));
        RigGraphShape.Check(this);
    }

    /// <summary>Gets the nodes.</summary>
    public IReadOnlyList<RigNode> Nodes { get; }

    /// <summary>Gets the links.</summary>
    public IReadOnlyList<RigLink> Links { get; }

    /// <summary>Finds where the joints come to rest and what every part carries, without friction.</summary>
    /// <param name="level">Which of the loads of the pullers.</param>
    /// <param name="stretch">How much the parts stretch.</param>
    /// <returns>The forces.</returns>
    /// <exception cref="SolverException">The forces at the joints do not add up to less than 1e-10 of the pull, as where the parts of a puller reach past it.</exception>
    public RigGraphForces Solve(RigLoadLevel level, StretchState stretch) => Solve(level, stretch, null, 0);

    /// <summary>Finds the same with friction at its upper end where one part runs through eyes or blocks.</summary>
    /// <param name="level">Which of the loads of the pullers.</param>
    /// <param name="stretch">How much the parts stretch.</param>
    /// <param name="runningPart">Name of the part that runs.</param>
    /// <param name="firstIsHarder">Whether the tension falls from its first node to its last, or the other way.</param>
    /// <returns>The forces.</returns>
    /// <exception cref="ArgumentException">No such part runs through anything.</exception>
    /// <exception cref="SolverException">The forces at the joints do not add up to less than 1e-10 of the pull.</exception>
    public RigGraphForces SolveWithFriction(RigLoadLevel level, StretchState stretch, string runningPart, bool firstIsHarder)
    {
        if (!Links.Any(l => l.Part.Name == runningPart && l.Runs)) throw new ArgumentException("No part named '" + runningPart + "' runs through a node of this rig.", nameof(runningPart));
        return Solve(level, stretch, runningPart, firstIsHarder ? 1 : -1);
    }

    /// <summary>Checks every part on the worst end of each band: stretch soft and stiff, friction either way.</summary>
    /// <param name="policy">The design factor policy, named.</param>
    /// <param name="wear">Wear factor: 1.0 thoroughly inspected, 1.10 used often without, 1.2 yard slings; 1 to 1.5. Without one 1.2 is taken and listed as an assumption.</param>
    /// <param name="twist">Twist factor: 1 unless a fibre line can twist, then from a test of that line; 1 to 2.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentNullException">The policy is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wear or twist factor is outside its range.</exception>
    public RigGraphCheck Check(DesignFactorPolicy policy, double? wear = null, double twist = 1) =>
        RigGraphCheck.Of(this, DesignFactorPolicy.Chosen(policy, nameof(policy)), wear is { } factor ? Guard.Range(factor, 1, 1.5, string.Empty, nameof(wear)) : null, Guard.Range(twist, 1, 2, string.Empty, nameof(twist)));

    /// <summary>Gives the rig with one of its parts replaced by another of the same name or not.</summary>
    /// <param name="name">Name of a strap, chain, wire rope or joiner.</param>
    /// <param name="replacement">The part that takes its place; null takes a joiner out, so that one part is laid through the eye of the other.</param>
    /// <returns>The rig.</returns>
    /// <exception cref="ArgumentException">There is no such part, or a line is to be replaced by something else.</exception>
    public RigGraph Replace(string name, RigPart? replacement)
    {
        if (Links.Any(l => l.Part.Name == name))
        {
            if (replacement is not { IsLine: true } line) throw new ArgumentException("The line " + name + " can only be replaced by a strap, a chain or a wire rope.", nameof(replacement));
            return new RigGraph(Nodes, Links.Select(l => l.Part.Name == name ? l.WithPart(line) : l));
        }

        if (!Nodes.Any(n => n.Joiner?.Name == name)) throw new ArgumentException("The rig has no part named '" + name + "'.", nameof(name));
        return new RigGraph(Nodes.Select(n => n.Joiner?.Name == name ? n.WithJoiner(replacement) : n), Links);
    }

    /// <summary>Gives the links in words, invariant culture.</summary>
    /// <returns>Each line with its nodes.</returns>
    public override string ToString() => string.Join("; ", Links);

    internal int IndexOf(string name) => _index.TryGetValue(name, out var i) ? i : -1;

    internal RigGraphForces Solve(RigLoadLevel level, StretchState stretch, string? runningPart, int way) => RigGraphForces.Of(this, level, stretch, runningPart, way);
}
