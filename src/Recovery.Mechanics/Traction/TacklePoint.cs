using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>A place in a tackle to which blocks and rope ends are made fast. Two with one name are one place.</summary>
public sealed record TacklePoint
{
    /// <summary>Names a place.</summary>
    /// <param name="name">Name, unique in its tackle.</param>
    /// <param name="kind">What it is.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not defined.</exception>
    public TacklePoint(string name, TacklePointKind kind)
    {
        Name = Guard.Name(name, nameof(name));
        Kind = Guard.Defined(kind, kind is >= TacklePointKind.Load and <= TacklePointKind.Haul, nameof(kind));
    }

    /// <summary>Gets the casualty.</summary>
    public static TacklePoint Load { get; } = new("casualty", TacklePointKind.Load);

    /// <summary>Gets the anchor.</summary>
    public static TacklePoint Anchor { get; } = new("anchor", TacklePointKind.Anchor);

    /// <summary>Gets the winch or the machine that hauls.</summary>
    public static TacklePoint Haul { get; } = new("haul", TacklePointKind.Haul);

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets what it is.</summary>
    public TacklePointKind Kind { get; }

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
