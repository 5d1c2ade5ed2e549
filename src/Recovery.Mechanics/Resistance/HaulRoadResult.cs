using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Rolling resistance on a haul road.</summary>
public sealed record HaulRoadResult
{
    internal HaulRoadResult(double ratio, double newtons, IReadOnlyList<ValidityFlag> flags)
    {
        Ratio = UnitsNet.Ratio.FromDecimalFractions(ratio);
        Resistance = Force.FromNewtons(newtons);
        Flags = flags;
    }

    /// <summary>Gets resistance over weight.</summary>
    public Ratio Ratio { get; }

    /// <summary>Gets the resistance.</summary>
    public Force Resistance { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Force and ratio.</returns>
    public override string ToString() => Text.Kilonewtons(Resistance.Newtons, 3) + ", " + Text.Number(Ratio.DecimalFractions, 3) + " of the weight";
}
