using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A low part under a machine that the line has to pass below.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record UndersidePart
{
    /// <summary>Describes a part.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="behindAxle">Distance behind the axle that the line is made fast to, 0 to 30 m.</param>
    /// <param name="height">Height of its lowest point above the ground surface as found, 0 to 4 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public UndersidePart(string name, Length behindAxle, Length height)
    {
        Name = Guard.Name(name, nameof(name));
        BehindAxle = Length.FromMeters(Guard.Metres(behindAxle, 0, 30, nameof(behindAxle)));
        Height = Length.FromMeters(Guard.Metres(height, 0, 4, nameof(height)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the distance behind the axle.</summary>
    public Length BehindAxle { get; }

    /// <summary>Gets the height of its lowest point as found.</summary>
    public Length Height { get; }

    /// <summary>Gives the part in words, invariant culture.</summary>
    /// <returns>Name and place.</returns>
    public override string ToString() => Name + " " + Text.With(BehindAxle.Meters, "m") + " behind the axle, " + Text.With(Height.Meters, "m") + " high";
}
