using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Stretch as a band over both ends of the stiffness.</summary>
public sealed record StretchBand
{
    internal StretchBand(double least, double greatest)
    {
        Least = Length.FromMeters(least);
        Greatest = Length.FromMeters(greatest);
    }

    /// <summary>Gets the stretch at the stiff end.</summary>
    public Length Least { get; }

    /// <summary>Gets the stretch at the soft end.</summary>
    public Length Greatest { get; }

    /// <summary>Gives the band, invariant culture.</summary>
    /// <returns>Both ends.</returns>
    public override string ToString() => Text.Number(Least.Meters, 3) + " to " + Text.With(Greatest.Meters, "m", 3);
}
