using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>What one wheel leaves to the next in its rut, on compactible soil.</summary>
public sealed record MultiPassResult
{
    internal MultiPassResult(double ratio, Pressure coneIndexAfter, double numeric, IReadOnlyList<ValidityFlag> flags)
    {
        Ratio = ratio;
        ConeIndexAfter = coneIndexAfter;
        Numeric = numeric;
        Flags = flags;
    }

    /// <summary>Gets cone index after the pass over cone index before it.</summary>
    public double Ratio { get; }

    /// <summary>Gets the cone index after the pass.</summary>
    public Pressure ConeIndexAfter { get; }

    /// <summary>Gets the Brixius numeric of the wheel before.</summary>
    public double Numeric { get; }

    /// <summary>Gets the limits that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Cone index after the pass and its ratio.</returns>
    public override string ToString() => "cone index in the rut " + Text.Kilopascals(ConeIndexAfter.Pascals) + ", " + Text.Number(Ratio, 3) + " of that before";
}
