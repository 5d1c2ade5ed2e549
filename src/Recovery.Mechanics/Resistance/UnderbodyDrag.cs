using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What a belly on the ground holds along the pull.</summary>
public sealed record UnderbodyDrag
{
    internal UnderbodyDrag(double adhesion, double front, bool capped, IReadOnlyList<ValidityFlag> flags)
    {
        Adhesion = Force.FromNewtons(adhesion);
        Front = Force.FromNewtons(front);
        AdhesionCapped = capped;
        Flags = flags;
    }

    /// <summary>Gets the adhesion under the belly.</summary>
    public Force Adhesion { get; }

    /// <summary>Gets the soil pushed ahead of its leading edge.</summary>
    public Force Front { get; }

    /// <summary>Gets both together.</summary>
    public Force Total => Force.FromNewtons(Adhesion.Newtons + Front.Newtons);

    /// <summary>Gets whether the adhesion is held at its cap of 12 kPa.</summary>
    public bool AdhesionCapped { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the drag in one line, invariant culture.</summary>
    /// <returns>Total and parts.</returns>
    public override string ToString() => "drags " + Text.Kilonewtons(Total.Newtons, 3) + " (adhesion " + Text.Kilonewtons(Adhesion.Newtons, 3) + ", front " + Text.Kilonewtons(Front.Newtons, 3) + ")";
}
