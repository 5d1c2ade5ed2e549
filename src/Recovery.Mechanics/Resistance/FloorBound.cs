using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The least floor strength that carries what stands on it.</summary>
public sealed record FloorBound
{
    internal FloorBound(double strength, double wheelArea, double bellyArea, double factor, IReadOnlyList<ValidityFlag> flags)
    {
        Strength = Pressure.FromPascals(strength);
        Floor = Pressure.FromPascals(Math.Max(strength, SoilKernel.LeastFloorPascals));
        WheelArea = Area.FromSquareMeters(wheelArea);
        BellyArea = Area.FromSquareMeters(bellyArea);
        BearingFactor = factor;
        Flags = flags;
    }

    /// <summary>Gets the strength s_b at which the floor just bears; at or below zero where displaced soil alone carries it, so that its standing there says nothing.</summary>
    public Pressure Strength { get; }

    /// <summary>Gets the low floor taken from it: at least 1 kPa (judgement).</summary>
    public Pressure Floor { get; }

    /// <summary>Gets the area on which the wheels stand.</summary>
    public Area WheelArea { get; }

    /// <summary>Gets the area of the belly on the ground.</summary>
    public Area BellyArea { get; }

    /// <summary>Gets the bearing factor N_c that was taken.</summary>
    public double BearingFactor { get; }

    /// <summary>Gets whether the bound says anything: it is above zero.</summary>
    public bool IsPositive => Strength.Pascals > 0;

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the bound in one line, invariant culture.</summary>
    /// <returns>Strength and areas.</returns>
    public override string ToString() => (IsPositive ? "floor of at least " + Text.Kilopascals(Strength.Pascals, 3) : "displaced soil alone carries it, floor not known")
        + " (N_c " + Text.Number(BearingFactor, 3) + ", wheels " + Text.With(WheelArea.SquareMeters, "m2", 3) + (BellyArea.SquareMeters > 0 ? ", belly " + Text.With(BellyArea.SquareMeters, "m2", 3) : string.Empty) + ")";
}
