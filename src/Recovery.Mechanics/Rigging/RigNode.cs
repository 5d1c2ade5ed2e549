using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>A node of a rig: an anchor, the hitch of a puller, or a joint where parts meet.</summary>
/// <remarks>Immutable. An anchor and a puller stand where they are; where a joint comes to rest is worked out.</remarks>
public sealed record RigNode
{
    private RigNode(string name, RigNodeKind kind)
    {
        Name = Guard.Name(name, nameof(name));
        Kind = kind;
    }

    /// <summary>Gets the name, unique in its rig.</summary>
    public string Name { get; }

    /// <summary>Gets what it is.</summary>
    public RigNodeKind Kind { get; }

    /// <summary>Gets what is made fast to here; null for a joint.</summary>
    public AttachmentPoint? Point { get; private init; }

    /// <summary>Gets where an anchor or a puller stands; null for a joint.</summary>
    public RigPoint? At { get; private init; }

    /// <summary>Gets what a puller puts into its line; null for others.</summary>
    public RigPull? Pull { get; private init; }

    /// <summary>Gets what joins the parts of a joint: a shackle, a soft shackle or a block; null where one is laid through the eye of the other.</summary>
    public RigPart? Joiner { get; private init; }

    /// <summary>A place on the stuck machine or an anchor in the ground.</summary>
    /// <param name="point">What it is.</param>
    /// <param name="at">Where it is.</param>
    /// <returns>The node, named for the point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static RigNode Anchor(AttachmentPoint point, RigPoint at) => new(Guard.NotNull(point, nameof(point)).Name, RigNodeKind.Anchor) { Point = point, At = Guard.NotNull(at, nameof(at)) };

    /// <summary>The hitch of a puller. One part hangs on it and carries its pull.</summary>
    /// <param name="hitch">What it is.</param>
    /// <param name="at">Where it is once the line is taut; the line runs towards it.</param>
    /// <param name="pull">What it puts into that line.</param>
    /// <returns>The node, named for the hitch.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static RigNode Puller(AttachmentPoint hitch, RigPoint at, RigPull pull) => new(Guard.NotNull(hitch, nameof(hitch)).Name, RigNodeKind.Puller) { Point = hitch, At = Guard.NotNull(at, nameof(at)), Pull = Guard.NotNull(pull, nameof(pull)) };

    /// <summary>A place where parts meet.</summary>
    /// <param name="name">Name.</param>
    /// <param name="joiner">The shackle, soft shackle or block that joins them; null where one is laid through the eye of the other.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the joiner is none.</exception>
    public static RigNode Joint(string name, RigPart? joiner = null)
    {
        if (joiner is not (null or Shackle or SoftShackle or SnatchBlock)) throw new ArgumentException(joiner.Name + " joins nothing: straps are links of a rig. A joiner is a shackle, a soft shackle or a block.", nameof(joiner));
        return new RigNode(name, RigNodeKind.Joint) { Joiner = joiner };
    }

    /// <summary>Gives the same joint with another joiner.</summary>
    /// <param name="joiner">The shackle, soft shackle or block; null where one part is laid through the eye of the other.</param>
    /// <returns>The changed node.</returns>
    /// <exception cref="InvalidOperationException">The node is no joint.</exception>
    public RigNode WithJoiner(RigPart? joiner) => Kind == RigNodeKind.Joint ? Joint(Name, joiner) : throw new InvalidOperationException(Name + " is no joint.");

    /// <summary>Gives the node in words, invariant culture.</summary>
    /// <returns>Name, and what joins there.</returns>
    public override string ToString() => Name + (Joiner is null ? string.Empty : " (" + Joiner.Name + ")");
}
