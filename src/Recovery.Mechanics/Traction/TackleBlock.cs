using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>One sheave that a rope runs over, and the angle between its two parts.</summary>
public sealed record TackleBlock
{
    /// <summary>Describes a sheave with parallel parts.</summary>
    /// <param name="at">Where it is made fast; not the haul.</param>
    /// <exception cref="ArgumentNullException">The place is null.</exception>
    /// <exception cref="ArgumentException">The place is the haul.</exception>
    public TackleBlock(TacklePoint at)
        : this(at, Angle.Zero)
    {
    }

    /// <summary>Describes a sheave.</summary>
    /// <param name="at">Where it is made fast; not the haul.</param>
    /// <param name="includedAngle">Angle between its two parts: 0 where they run parallel, up to 180 degrees where the rope hardly turns.</param>
    /// <exception cref="ArgumentNullException">The place is null.</exception>
    /// <exception cref="ArgumentException">The place is the haul.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public TackleBlock(TacklePoint at, Angle includedAngle)
    {
        At = Guard.NotNull(at, nameof(at));
        if (at.Kind == TacklePointKind.Haul) throw new ArgumentException("A block is made fast to the casualty, an anchor or a traveller, not to the haul.", nameof(at));
        IncludedAngle = Angle.FromRadians(Guard.Radians(includedAngle, 0, 180, nameof(includedAngle)));
    }

    /// <summary>Gets where it is made fast.</summary>
    public TacklePoint At { get; }

    /// <summary>Gets the angle between its two parts.</summary>
    public Angle IncludedAngle { get; }

    /// <summary>Gives the block in words, invariant culture.</summary>
    /// <returns>Place and angle.</returns>
    public override string ToString() => "block on " + At.Name + ", " + Text.Number(IncludedAngle.Degrees, 3) + " deg";
}
