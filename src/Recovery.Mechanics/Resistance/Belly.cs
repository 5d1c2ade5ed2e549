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

    /// <summary>Gets the place x of the middle of the contact along the machine, forward from the foremost axle, -30 to 5 m; null where it was not measured. Known, its load and its uplift go to the axles by statics; not known, its load takes the same fraction off every axle and its uplift goes by the axle loads as found (judgement).</summary>
    public Length? Middle { get; init => field = value is { } v ? UnitsNet.Length.FromMeters(Guard.Metres(v, -30, 5, nameof(Middle))) : null; }

    /// <summary>Gives the same with another value: the place of the middle of the contact. For callers whose language has no <c>with</c>.</summary>
    /// <param name="middle">The value, as in <see cref="Middle"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside its range.</exception>
    public Belly WithMiddle(Length? middle) => this with { Middle = middle };

    /// <summary>Gives the belly in words, invariant culture.</summary>
    /// <returns>Its size and immersion.</returns>
    public override string ToString() => "belly " + Text.Number(Length.Meters, 3) + " x " + Text.With(Width.Meters, "m", 3) + ", " + Text.With(Immersion.Meters, "m", 3) + " deep";
}
