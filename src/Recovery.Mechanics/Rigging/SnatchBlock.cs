using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A block that a line runs through: steel, loaded by both parts of the line.</summary>
/// <remarks>Its rating is for the load on its hook or eye, not for the line. Its efficiency is the tension behind the sheave over that before it. Immutable, equality by value.</remarks>
public sealed record SnatchBlock : RigPart
{
    /// <summary>Describes a block.</summary>
    /// <param name="name">Name.</param>
    /// <param name="rating">Its marked rating, of its hook or eye.</param>
    /// <param name="mass">Its mass, 0.1 to 500 kg: what flies if something lets go.</param>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public SnatchBlock(string name, Rating rating, Mass mass)
        : base(name)
    {
        Rating = Guard.NotNull(rating, nameof(rating));
        Mass = Mass.FromKilograms(Guard.Range(mass.Kilograms, 0.1, 500, "kg", nameof(mass)));
    }

    /// <summary>Gets its marked rating.</summary>
    public Rating Rating { get; }

    /// <summary>Gets its mass.</summary>
    public Mass Mass { get; }

    /// <summary>Gets its efficiency, 0.5 to 1; 0.90 unless given, a rubbing snatch block (from memory): the cautious side for what holds it. A greased sheave passes 49 : 51, 0.96 (reported).</summary>
    public double Efficiency { get; init => field = Guard.Range(value, 0.5, 1, string.Empty, nameof(Efficiency)); } = 0.90;

    internal override double SteelKilograms => Mass.Kilograms;

    /// <summary>Gives the same with another efficiency. For callers whose language has no <c>with</c>.</summary>
    /// <param name="efficiency">The value, as in <see cref="Efficiency"/>.</param>
    /// <returns>The changed copy.</returns>
    public SnatchBlock WithEfficiency(double efficiency) => this with { Efficiency = efficiency };

    /// <summary>Gives the block in words, invariant culture.</summary>
    /// <returns>Name, rating and mass.</returns>
    public override string ToString() => Name + ", " + Rating + ", " + Text.With(Mass.Kilograms, "kg");
}
