using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A strap, chain or wire rope of a rig between two of its nodes, straight or running free through others.</summary>
/// <remarks>A strap runs through eyes and blocks, a wire rope through blocks alone, a chain through nothing. Immutable.</remarks>
public sealed record RigLink
{
    private RigLink(RigPart part, IReadOnlyList<string> nodes)
    {
        Part = part;
        Nodes = nodes;
    }

    /// <summary>Gets the strap, chain or wire rope.</summary>
    public RigPart Part { get; }

    /// <summary>Gets the names of its nodes from one end to the other: two, or more where it runs through eyes or blocks.</summary>
    public IReadOnlyList<string> Nodes { get; }

    /// <summary>Gets whether it runs through a node.</summary>
    public bool Runs => Nodes.Count > 2;

    /// <summary>Gets whether an included angle beyond 90 and up to 120 degrees was accepted where it runs as a bridle through an eye, as in <see cref="Bridle.WideAngleAccepted"/>.</summary>
    public bool WideAngleAccepted { get; private init; }

    /// <summary>Gets the inside length of the eye it runs through, the shortest where there are several; null where nobody measured it. Accepted range 0.05 to 5 m, as in <see cref="Bridle.EyeLength"/>.</summary>
    public Length? EyeLength { get; private init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.05, 5, nameof(EyeLength))) : null; }

    /// <summary>Gets the thickness of its bight where it lies in that eye, folded as it lies; null where nobody measured it. Accepted range 2 to 300 mm, as in <see cref="Bridle.BightThickness"/>.</summary>
    public Length? BightThickness { get; private init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.002, 0.3, nameof(BightThickness))) : null; }

    /// <summary>Gets the angle by which its bight opens the eye; null where eye or bight was not measured. At most 20 degrees in a soft eye (EN 1492-1 annex, reported).</summary>
    public Angle? EyeOpening => EyeLength is { } eye && BightThickness is { } bight ? Angle.FromRadians(SectionKernel.EyeAngle(eye.Meters, bight.Meters)) : null;

    /// <summary>A strap, chain or wire rope from one node to another.</summary>
    /// <param name="part">The strap, chain or wire rope.</param>
    /// <param name="from">Name of the node at one end.</param>
    /// <param name="to">Name of the node at the other.</param>
    /// <returns>The link.</returns>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, both are one, or the part is no line.</exception>
    public static RigLink Between(RigPart part, string from, string to) => Running(part, from, [], to);

    /// <summary>A strap or wire rope whose middle runs free through one or more nodes: a bridle in an eye, a line in a block.</summary>
    /// <param name="part">The strap, chain or wire rope.</param>
    /// <param name="from">Name of the node at one end.</param>
    /// <param name="through">Names of the nodes it runs through, in order.</param>
    /// <param name="to">Name of the node at the other end.</param>
    /// <returns>The link.</returns>
    /// <exception cref="ArgumentNullException">The part or the list is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, the part is no strap or wire rope, or it stands twice in a row at one node.</exception>
    public static RigLink Running(RigPart part, string from, IEnumerable<string> through, string to)
    {
        if (!Guard.NotNull(part, nameof(part)).IsLine) throw new ArgumentException(part.Name + " is no line: a link of a rig is a strap, a chain or a wire rope.", nameof(part));
        List<string> nodes = [Guard.Name(from, nameof(from)), .. Guard.NotNull(through, nameof(through)).Select(n => Guard.Name(n, nameof(through))), Guard.Name(to, nameof(to))];
        for (var i = 1; i < nodes.Count; i++)
        {
            if (nodes[i] == nodes[i - 1]) throw new ArgumentException("The " + part.Name + " cannot run from " + nodes[i] + " to " + nodes[i] + ".", nameof(through));
        }

        if (part is Chain && nodes.Count > 2) throw new ArgumentException("The chain " + part.Name + " cannot run through " + nodes[1] + ": its links catch and bend.", nameof(through));
        return new RigLink(part, nodes.AsReadOnly());
    }

    /// <summary>Gives the same with a wide included angle accepted or not, by somebody competent who knows the squeeze on the anchors. Beyond 120 degrees nothing is accepted.</summary>
    /// <param name="accepted">The value, as in <see cref="WideAngleAccepted"/>.</param>
    /// <returns>The changed copy.</returns>
    public RigLink WithWideAngleAccepted(bool accepted) => this with { WideAngleAccepted = accepted };

    /// <summary>Gives the same with the eye measured that it runs through.</summary>
    /// <param name="eyeLength">Inside length of the eye, as in <see cref="EyeLength"/>.</param>
    /// <param name="bightThickness">Thickness of the bight, as in <see cref="BightThickness"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="InvalidOperationException">It runs through nothing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RigLink WithEye(Length? eyeLength, Length? bightThickness) => Runs ? this with { EyeLength = eyeLength, BightThickness = bightThickness } : throw new InvalidOperationException(Part.Name + " runs through no eye.");

    /// <summary>Length of the part that lies between its nodes, m: all of it, unless a part of it is lost.</summary>
    internal double LineMetres => Part.LineMetres * (1 - LostShare);

    /// <summary>Name of the eye in which its bight lies jammed; null where it is not.</summary>
    internal string? Jammed { get; private init; }

    private double LostShare { get; init; }

    /// <summary>What is left of it between an eye in which it jammed and the end that holds.</summary>
    internal RigLink JammedIn(string eye, string held, double share) => Between(Part, eye, held) with { Jammed = eye, LostShare = 1 - share };

    /// <summary>The same way with another part on it.</summary>
    internal RigLink WithPart(RigPart part) => Running(part, Nodes[0], Nodes.Skip(1).Take(Nodes.Count - 2), Nodes[Nodes.Count - 1]) with { WideAngleAccepted = WideAngleAccepted, EyeLength = EyeLength, BightThickness = BightThickness };

    /// <summary>Whether it ends at a node or runs through it.</summary>
    internal bool Touches(string node)
    {
        for (var i = 0; i < Nodes.Count; i++)
        {
            if (Nodes[i] == node) return true;
        }

        return false;
    }

    /// <summary>Whether it is steel.</summary>
    internal bool IsSteel => Part is not Strap;

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
    /// <returns>Part and nodes.</returns>
    public override string ToString() => Part.Name + ": " + string.Join(" - ", Nodes);
}
