using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Like wheels of one axle on one soil: one of them, how many there are, and whether they are driven.</summary>
/// <remarks>Immutable, equality by value. One wheel alone is a set of one.</remarks>
public sealed record WheelSet
{
    /// <summary>Describes a set of like wheels.</summary>
    /// <param name="wheel">One of the wheels with its own load.</param>
    /// <param name="count">Number of wheels, 1 to 8.</param>
    /// <param name="driven">Whether they are driven.</param>
    /// <exception cref="ArgumentNullException">The wheel is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public WheelSet(WheelOnSoil wheel, int count, bool driven = true)
    {
        Wheel = Guard.NotNull(wheel, nameof(wheel));
        Count = Guard.Count(count, 1, 8, nameof(count));
        Driven = driven;
    }

    /// <summary>Gets one of the wheels with its own load.</summary>
    public WheelOnSoil Wheel { get; }

    /// <summary>Gets the number of wheels.</summary>
    public int Count { get; }

    /// <summary>Gets whether the wheels are driven.</summary>
    public bool Driven { get; }

    /// <summary>Load of all of them, N.</summary>
    internal double LoadNewtons => Wheel.Load.Newtons * Count;

    /// <summary>Gives the set in words, invariant culture.</summary>
    /// <returns>Number, wheel and drive.</returns>
    public override string ToString() => Text.Number(Count) + " x " + Wheel + (Driven ? ", driven" : ", not driven");
}
