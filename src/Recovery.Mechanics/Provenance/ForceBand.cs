using System;
using UnitsNet;

namespace Recovery.Mechanics.Provenance;

/// <summary>An uncertain force as a band of bounds: low, central and high.</summary>
/// <remarks>Immutable value, newtons inside, equality by value. <c>default</c> is the zero band. A band of bounds is not a spread: no probability belongs to its ends.</remarks>
public readonly record struct ForceBand
{
    /// <summary>Makes a band.</summary>
    /// <param name="low">Low bound.</param>
    /// <param name="central">Central value, not below <paramref name="low"/>.</param>
    /// <param name="high">High bound, not below <paramref name="central"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A bound is not finite or larger than 1e9 N in magnitude.</exception>
    /// <exception cref="ArgumentException">The bounds are not in rising order.</exception>
    public ForceBand(Force low, Force central, Force high)
        : this(Guard.Newtons(low, -1e6, 1e6, nameof(low)), Guard.Newtons(central, -1e6, 1e6, nameof(central)), Guard.Newtons(high, -1e6, 1e6, nameof(high)))
    {
    }

    private ForceBand(double low, double central, double high)
    {
        if (!(low <= central && central <= high))
            throw new ArgumentException("A force band rises from low to high; it was " + Text.Kilonewtons(low) + ", " + Text.Kilonewtons(central) + ", " + Text.Kilonewtons(high) + ".", nameof(low));
        LowNewtons = low;
        CentralNewtons = central;
        HighNewtons = high;
    }

    /// <summary>Gets the low bound.</summary>
    public Force Low => Force.FromNewtons(LowNewtons);

    /// <summary>Gets the central value.</summary>
    public Force Central => Force.FromNewtons(CentralNewtons);

    /// <summary>Gets the high bound.</summary>
    public Force High => Force.FromNewtons(HighNewtons);

    /// <summary>Gets the low bound in newtons.</summary>
    public double LowNewtons { get; }

    /// <summary>Gets the central value in newtons.</summary>
    public double CentralNewtons { get; }

    /// <summary>Gets the high bound in newtons.</summary>
    public double HighNewtons { get; }

    /// <summary>Makes a band from newtons.</summary>
    /// <param name="low">Low bound, N.</param>
    /// <param name="central">Central value, N.</param>
    /// <param name="high">High bound, N.</param>
    /// <returns>The band.</returns>
    /// <exception cref="ArgumentException">The bounds are not finite or not in rising order.</exception>
    public static ForceBand FromNewtons(double low, double central, double high) => new(
        Guard.Range(low, -1e9, 1e9, "N", nameof(low)), Guard.Range(central, -1e9, 1e9, "N", nameof(central)), Guard.Range(high, -1e9, 1e9, "N", nameof(high)));

    /// <summary>Adds two bands bound by bound.</summary>
    /// <param name="other">The other band.</param>
    /// <returns>The sum.</returns>
    public ForceBand Plus(ForceBand other) => new(LowNewtons + other.LowNewtons, CentralNewtons + other.CentralNewtons, HighNewtons + other.HighNewtons);

    /// <summary>Gives the band in kilonewtons, invariant culture.</summary>
    /// <returns>For example <c>157 / 365 / 818 kN</c>.</returns>
    public override string ToString() => Text.Number(LowNewtons / 1000, 3) + " / " + Text.Number(CentralNewtons / 1000, 3) + " / " + Text.Number(HighNewtons / 1000, 3) + " kN";
}
