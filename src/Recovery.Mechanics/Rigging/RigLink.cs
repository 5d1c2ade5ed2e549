using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>A strap of a rig between two of its nodes, straight or running free through others.</summary>
public sealed record RigLink
{
    private RigLink(Strap part, IReadOnlyList<string> nodes)
    {
        Part = part;
        Nodes = nodes;
    }

    /// <summary>Gets the strap.</summary>
    public Strap Part { get; }

    /// <summary>Gets the names of its nodes from one end to the other: two, or more where it runs through eyes or blocks.</summary>
    public IReadOnlyList<string> Nodes { get; }

    /// <summary>Gets whether it runs through a node.</summary>
    public bool Runs => Nodes.Count > 2;

    /// <summary>A strap from one node to another.</summary>
    /// <param name="part">The strap.</param>
    /// <param name="from">Name of the node at one end.</param>
    /// <param name="to">Name of the node at the other.</param>
    /// <returns>The link.</returns>
    /// <exception cref="ArgumentNullException">The strap is null.</exception>
    /// <exception cref="ArgumentException">A name is empty or both are one.</exception>
    public static RigLink Between(Strap part, string from, string to) => Running(part, from, [], to);

    /// <summary>A strap whose middle runs free through one or more nodes: a bridle in an eye, a line in a block.</summary>
    /// <param name="part">The strap.</param>
    /// <param name="from">Name of the node at one end.</param>
    /// <param name="through">Names of the nodes it runs through, in order.</param>
    /// <param name="to">Name of the node at the other end.</param>
    /// <returns>The link.</returns>
    /// <exception cref="ArgumentNullException">The strap or the list is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or a strap stands twice in a row at one node.</exception>
    public static RigLink Running(Strap part, string from, IEnumerable<string> through, string to)
    {
        Guard.NotNull(part, nameof(part));
        List<string> nodes = [Guard.Name(from, nameof(from)), .. Guard.NotNull(through, nameof(through)).Select(n => Guard.Name(n, nameof(through))), Guard.Name(to, nameof(to))];
        for (var i = 1; i < nodes.Count; i++)
        {
            if (nodes[i] == nodes[i - 1]) throw new ArgumentException("The strap " + part.Name + " cannot run from " + nodes[i] + " to " + nodes[i] + ".", nameof(through));
        }

        return new RigLink(part, nodes.AsReadOnly());
    }

    /// <summary>Whether it ends at a node or runs through it.</summary>
    internal bool Touches(string node)
    {
        for (var i = 0; i < Nodes.Count; i++)
        {
            if (Nodes[i] == node) return true;
        }

        return false;
    }

    /// <summary>Whether it ends at a node.</summary>
    internal bool EndsAt(string node) => Nodes[0] == node || Nodes[Nodes.Count - 1] == node;

    /// <summary>Whether it runs through a node.</summary>
    internal bool RunsThrough(string node)
    {
        for (var i = 1; i + 1 < Nodes.Count; i++)
        {
            if (Nodes[i] == node) return true;
        }

        return false;
    }

    /// <summary>Gives the link in words, invariant culture.</summary>
    /// <returns>Strap and nodes.</returns>
    public override string ToString() => Part.Name + ": " + string.Join(" - ", Nodes);
}
