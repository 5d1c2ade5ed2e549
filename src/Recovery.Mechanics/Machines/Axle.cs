using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>An axle with its tyres. x points forward; the foremost axle stands at x = 0, the others at negative x.</summary>
/// <remarks>Immutable, equality by value. Duals: give the number of all tyres on the axle; they share its load equally.</remarks>
public sealed record Axle
{
    /// <summary>Describes an axle.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="position">Position x, -30 to 0 m.</param>
    /// <param name="tyres">Number of tyres on the axle, 2 to 8.</param>
    /// <param name="tyre">The tyre.</param>
    /// <param name="driven">Whether the axle is driven.</param>
    /// <param name="trackWidth">Distance between the middles of left and right tyre (or pair), 0.5 to 6 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The name is empty, or the tyre is null.</exception>
    public Axle(string name, Length position, int tyres, Tyre tyre, bool driven, Length trackWidth)
    {
        Name = Guard.Name(name, nameof(name));
        Position = Length.FromMeters(Guard.Metres(position, -30, 0, nameof(position)));
        Tyres = Guard.Count(tyres, 2, 8, nameof(tyres));
        Tyre = Guard.NotNull(tyre, nameof(tyre));
        Driven = driven;
        TrackWidth = Length.FromMeters(Guard.Metres(trackWidth, 0.5, 6, nameof(trackWidth)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the position x.</summary>
    public Length Position { get; }

    /// <summary>Gets the number of tyres on the axle.</summary>
    public int Tyres { get; }

    /// <summary>Gets the tyre.</summary>
    public Tyre Tyre { get; init => field = Guard.NotNull(value, nameof(Tyre)); }

    /// <summary>Gets whether the axle is driven.</summary>
    public bool Driven { get; init; }

    /// <summary>Gets the distance between the middles of left and right tyre.</summary>
    public Length TrackWidth { get; }

    /// <summary>Gets whether a brake can lock the axle. A pull may have to drag locked wheels unless the axle is named unbraked.</summary>
    public bool Braked { get; init; } = true;

    /// <summary>Gives the same with another value: the tyre. For callers whose language has no <c>with</c>.</summary>
    /// <param name="tyre">The value, as in <see cref="Tyre"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithTyre(Tyre tyre) => this with { Tyre = tyre };

    /// <summary>Gives the same with another value: whether the axle is driven. For callers whose language has no <c>with</c>.</summary>
    /// <param name="driven">The value, as in <see cref="Driven"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithDriven(bool driven) => this with { Driven = driven };

    /// <summary>Gives the same with another value: whether a brake can lock the axle. A pull may have to drag locked wheels unless the axle is named unbraked. For callers whose language has no <c>with</c>.</summary>
    /// <param name="braked">The value, as in <see cref="Braked"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithBraked(bool braked) => this with { Braked = braked };

    /// <summary>Gives the axle in words, invariant culture.</summary>
    /// <returns>Name, position and tyres.</returns>
    public override string ToString() => Name + " at " + Text.With(Position.Meters, "m") + ", " + Text.Number(Tyres) + " tyres " + Tyre;
}
