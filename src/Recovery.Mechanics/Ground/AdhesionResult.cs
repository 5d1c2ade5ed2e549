using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Adhesion by one rule.</summary>
/// <remarks>Immutable, canonical pascals.</remarks>
public sealed record AdhesionResult
{
    internal AdhesionResult(AdhesionModel model, double strength, double adhesion, IReadOnlyList<ValidityFlag> flags)
    {
        Model = model;
        Adhesion = Pressure.FromPascals(adhesion);
        AdhesionFactor = Ratio.FromDecimalFractions(adhesion / strength);
        Flags = flags;
    }

    /// <summary>Gets the rule.</summary>
    public AdhesionModel Model { get; }

    /// <summary>Gets the adhesion.</summary>
    public Pressure Adhesion { get; }

    /// <summary>Gets adhesion over undrained strength.</summary>
    public Ratio AdhesionFactor { get; }

    /// <summary>Gets the limits that the values lie outside of.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in words, invariant culture.</summary>
    /// <returns>Rule, adhesion and factor.</returns>
    public override string ToString() => Model.Name + ": " + Text.Kilopascals(Adhesion.Pascals, 3) + ", factor " + Text.Number(AdhesionFactor.DecimalFractions, 3) + (Flags.Count > 0 ? " (outside its range)" : string.Empty);
}
