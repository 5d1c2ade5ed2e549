using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Something on the ground that the line has to pass above: the edge of a hole, a kerb, a bank. It stays where it is.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record GroundObstacle
{
    /// <summary>Describes an obstacle.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="behindAxle">Distance from the front axle as found, towards the puller, 0 to 300 m.</param>
    /// <param name="height">Height of its top above the level from which all heights are taken, -5 to 5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public GroundObstacle(string name, Length behindAxle, Length height)
    {
        Name = Guard.Name(name, nameof(name));
        BehindAxle = Length.FromMeters(Guard.Metres(behindAxle, 0, 300, nameof(behindAxle)));
        Height = Length.FromMeters(Guard.Metres(height, -5, 5, nameof(height)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the distance from the front axle as found.</summary>
    public Length BehindAxle { get; }

    /// <summary>Gets the height of its top.</summary>
    public Length Height { get; }

    /// <summary>Gives the obstacle in words, invariant culture.</summary>
    /// <returns>Name and place.</returns>
    public override string ToString() => Name + " " + Text.With(BehindAxle.Meters, "m") + " from the axle, " + Text.With(Height.Meters, "m") + " high";
}
