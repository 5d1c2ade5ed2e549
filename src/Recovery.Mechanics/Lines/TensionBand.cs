using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Tension as a band over both ends of the stiffness.</summary>
public sealed record TensionBand
{
    internal TensionBand(double low, double high)
    {
        Low = Force.FromNewtons(low);
        High = Force.FromNewtons(high);
    }

    /// <summary>Gets the tension if the line is at its soft end.</summary>
    public Force Low { get; }

    /// <summary>Gets the tension if the line is at its stiff end.</summary>
    public Force High { get; }

    /// <summary>Gives the band, invariant culture.</summary>
    /// <returns>Both ends.</returns>
    public override string ToString() => Text.Number(Low.Newtons / 1000, 3) + " to " + Text.Kilonewtons(High.Newtons, 3);
}
