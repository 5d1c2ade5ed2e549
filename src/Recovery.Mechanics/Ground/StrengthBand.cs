using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>A strength of soil as low, central and high.</summary>
/// <remarks>Immutable value, pascals inside, equality by value.</remarks>
public readonly record struct StrengthBand
{
    internal StrengthBand(double low, double central, double high) => (LowPascals, CentralPascals, HighPascals) = (low, central, high);

    /// <summary>Gets the low end.</summary>
    public Pressure Low => Pressure.FromPascals(LowPascals);

    /// <summary>Gets the central value.</summary>
    public Pressure Central => Pressure.FromPascals(CentralPascals);

    /// <summary>Gets the high end.</summary>
    public Pressure High => Pressure.FromPascals(HighPascals);

    internal double LowPascals { get; }

    internal double CentralPascals { get; }

    internal double HighPascals { get; }

    /// <summary>Gives the band in words, invariant culture.</summary>
    /// <returns>For example <c>12 to 24 kPa, central 16.97 kPa</c>.</returns>
    public override string ToString() => Text.Number(LowPascals / 1000) + " to " + Text.Kilopascals(HighPascals) + ", central " + Text.Kilopascals(CentralPascals);
}
