using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A mass on a machine with its place.</summary>
/// <remarks>Immutable, equality by value. x forward from the foremost axle (a front ahead of it has a positive x), z up from the ground.</remarks>
public sealed record NamedLoad
{
    /// <summary>Describes a mass.</summary>
    /// <param name="name">Name, unique on its machine.</param>
    /// <param name="mass">Mass, 0 to 100 t.</param>
    /// <param name="position">Position x of its centre, -40 to 15 m.</param>
    /// <param name="height">Height z of its centre above the ground, 0 to 6 m.</param>
    /// <param name="kind">Whether it can be taken off.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public NamedLoad(string name, Mass mass, Length position, Length height, LoadKind kind = LoadKind.Fixed)
    {
        Name = Guard.Name(name, nameof(name));
        Mass = Mass.FromKilograms(Guard.Kilograms(mass, 0, 100, nameof(mass)));
        Position = Length.FromMeters(Guard.Metres(position, -40, 15, nameof(position)));
        Height = Length.FromMeters(Guard.Metres(height, 0, 6, nameof(height)));
        Kind = Guard.Defined(kind, kind is >= LoadKind.Fixed and <= LoadKind.Detachable, nameof(kind));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the mass.</summary>
    public Mass Mass { get; }

    /// <summary>Gets the position x of its centre.</summary>
    public Length Position { get; }

    /// <summary>Gets the height of its centre.</summary>
    public Length Height { get; }

    /// <summary>Gets whether it can be taken off.</summary>
    public LoadKind Kind { get; }

    /// <summary>Gets how far its centre lies left of the middle of the machine, -3 to 3 m; right is negative. Counts on wheel loads left and right only.</summary>
    public Length LeftOfMiddle { get; init => field = Length.FromMeters(Guard.Metres(value, -3, 3, "leftOfMiddle")); }

    /// <summary>Gives the same with another value: how far left of the middle it lies. For callers whose language has no <c>with</c>.</summary>
    /// <param name="leftOfMiddle">The value, as in <see cref="LeftOfMiddle"/>.</param>
    /// <returns>The changed copy.</returns>
    public NamedLoad WithLeftOfMiddle(Length leftOfMiddle) => this with { LeftOfMiddle = leftOfMiddle };

    /// <summary>Gives the load in words, invariant culture.</summary>
    /// <returns>Name, mass and place.</returns>
    public override string ToString() => Name + " " + Text.With(Mass.Kilograms / 1000, "t") + " at " + Text.With(Position.Meters, "m");
}
