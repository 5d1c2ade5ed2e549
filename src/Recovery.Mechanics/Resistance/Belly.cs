using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The part of the underside that rests on the ground.</summary>
/// <remarks>Immutable, equality by value, metres inside.</remarks>
public sealed record Belly
{
    /// <summary>Describes a belly on the ground.</summary>
    /// <param name="length">Length of the contact along the machine, 0.1 to 15 m.</param>
    /// <param name="width">Width of the contact, 0.1 to 5 m.</param>
    /// <param name="immersion">Depth of its underside below the ground surface, 0 to 1.5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Belly(Length length, Length width, Length immersion)
    {
        Length = UnitsNet.Length.FromMeters(Guard.Metres(length, 0.1, 15, nameof(length)));
        Width = UnitsNet.Length.FromMeters(Guard.Metres(width, 0.1, 5, nameof(width)));
        Immersion = UnitsNet.Length.FromMeters(Guard.Metres(immersion, 0, 1.5, nameof(immersion)));
    }

    /// <summary>Gets the length of the contact.</summary>
    public Length Length { get; }

    /// <summary>Gets the width of the contact.</summary>
    public Length Width { get; }

    /// <summary>Gets the depth of the underside below the surface.</summary>
    public Length Immersion { get; }

    /// <summary>Gives the belly in words, invariant culture.</summary>
    /// <returns>Its size and immersion.</returns>
    public override string ToString() => "belly " + Text.Number(Length.Meters, 3) + " x " + Text.With(Width.Meters, "m", 3) + ", " + Text.With(Immersion.Meters, "m", 3) + " deep";
}
