using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The ceiling of a vertical pull on a closed contact.</summary>
public sealed record ReverseBearing
{
    internal ReverseBearing(double factor, double uncapped, double uplift, IReadOnlyList<ValidityFlag> flags)
    {
        BearingFactor = factor;
        Uncapped = Force.FromNewtons(uncapped);
        Uplift = Force.FromNewtons(uplift);
        Flags = flags;
    }

    /// <summary>Gets the bearing factor N_c.</summary>
    public double BearingFactor { get; }

    /// <summary>Gets N_c s_u A, before the cap on suction.</summary>
    public Force Uncapped { get; }

    /// <summary>Gets the ceiling: at most what suction can carry.</summary>
    public Force Uplift { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Uplift and factor.</returns>
    public override string ToString() => "up to " + Text.Kilonewtons(Uplift.Newtons, 3) + " (N_c " + Text.Number(BearingFactor, 3) + ")";
}
