using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Pull at one slip, load transfer included.</summary>
public sealed record SlipPoint
{
    internal SlipPoint(double slip, double pullNewtons)
    {
        Slip = Ratio.FromDecimalFractions(slip);
        Pull = Force.FromNewtons(pullNewtons);
    }

    /// <summary>Gets the slip.</summary>
    public Ratio Slip { get; }

    /// <summary>Gets the pull; negative where the machine does not even move itself.</summary>
    public Force Pull { get; }

    /// <summary>Gives the point in words, invariant culture.</summary>
    /// <returns>Slip and pull.</returns>
    public override string ToString() => "slip " + Text.Number(Slip.DecimalFractions, 3) + ": " + Text.Kilonewtons(Pull.Newtons, 3);
}
