using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>One rope of a tackle, from the end that is hauled over its sheaves to its dead end.</summary>
public sealed class TackleRope
{
    /// <summary>Describes a rope.</summary>
    /// <param name="name">Name, unique in its tackle.</param>
    /// <param name="hauledAt">The haul, or the traveller by which another rope hauls it.</param>
    /// <param name="blocks">The sheaves it runs over, in order from the hauled end, at most 12; none for a plain line.</param>
    /// <param name="deadEnd">Where it ends; not the haul.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, or the rope cannot be laid so.</exception>
    public TackleRope(string name, TacklePoint hauledAt, IEnumerable<TackleBlock> blocks, TacklePoint deadEnd)
    {
        Name = Guard.Name(name, nameof(name));
        HauledAt = Guard.NotNull(hauledAt, nameof(hauledAt));
        DeadEnd = Guard.NotNull(deadEnd, nameof(deadEnd));
        Blocks = Array.AsReadOnly(Guard.NotNull(blocks, nameof(blocks)).ToArray());
        Guard.Count(Blocks.Count, 0, 12, nameof(blocks));
        if (HauledAt.Kind is not (TacklePointKind.Haul or TacklePointKind.Traveller)) throw new ArgumentException("A rope is hauled at the haul or at a traveller; '" + HauledAt.Name + "' is neither.", nameof(hauledAt));
        if (DeadEnd.Kind == TacklePointKind.Haul) throw new ArgumentException("A dead end cannot be at the haul: make the winch or machine an anchor of its own.", nameof(deadEnd));
        foreach (var block in Blocks) Guard.NotNull(block, nameof(blocks));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets where it is hauled.</summary>
    public TacklePoint HauledAt { get; }

    /// <summary>Gets the sheaves in order from the hauled end.</summary>
    public IReadOnlyList<TackleBlock> Blocks { get; }

    /// <summary>Gets its dead end.</summary>
    public TacklePoint DeadEnd { get; }

    /// <summary>Gives the rope in words.</summary>
    /// <returns>Its way.</returns>
    public override string ToString() => Name + ": " + HauledAt.Name + " - " + string.Concat(Blocks.Select(b => b.At.Name + " - ")) + DeadEnd.Name;
}
