using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What a square metre of bearing face of a buried log holds.</summary>
public sealed record DeadmanHolding
{
    internal DeadmanHolding(double? loamPascals, double soilFactor, IReadOnlyList<ValidityFlag> flags)
    {
        Loam = loamPascals is { } loam ? Pressure.FromPascals(loam) : null;
        Power = loamPascals is { } value ? Pressure.FromPascals(value * soilFactor) : null;
        SoilFactor = soilFactor;
        Flags = flags;
    }

    /// <summary>Gets the holding power in loam; null shallower than the table, where there is no number.</summary>
    public Pressure? Loam { get; }

    /// <summary>Gets the factor of the soil on it.</summary>
    public double SoilFactor { get; }

    /// <summary>Gets the holding power in this soil; null where there is no number.</summary>
    public Pressure? Power { get; }

    /// <summary>Gets the limits of the table that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the holding power in words, invariant culture.</summary>
    /// <returns>Holding power, or that there is none.</returns>
    public override string ToString() => (Power is { } p ? Text.Kilopascals(p.Pascals) + " on the bearing face" : "no holding power: too shallow for the table") + (Flags.Count == 0 ? string.Empty : ", outside the table");
}
