using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Static deflection of a tyre by one law or from data.</summary>
/// <remarks>Immutable.</remarks>
public sealed record TyreDeflection
{
    internal TyreDeflection(string by, double metres, Tyre tyre, IReadOnlyList<ValidityFlag> flags, Source source)
    {
        By = by;
        Deflection = Length.FromMeters(metres);
        Ratio = UnitsNet.Ratio.FromDecimalFractions(metres / tyre.SectionHeight.Meters);
        LoadedRadius = Length.FromMeters((tyre.OverallDiameter.Meters / 2) - metres);
        Flags = flags;
        Source = source;
    }

    /// <summary>Gets the name of the law, or that it is from data.</summary>
    public string By { get; }

    /// <summary>Gets the deflection along the radius.</summary>
    public Length Deflection { get; }

    /// <summary>Gets the deflection over the section height.</summary>
    public Ratio Ratio { get; }

    /// <summary>Gets the loaded radius that goes with it.</summary>
    public Length LoadedRadius { get; }

    /// <summary>Gets the limits that the case lies outside of.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gets where the deflection comes from.</summary>
    public Source Source { get; }

    /// <summary>Gives the deflection in words, invariant culture.</summary>
    /// <returns>Law, deflection and ratio.</returns>
    public override string ToString() => By + ": " + Text.With(Deflection.Meters, "m", 3) + ", " + Text.With(Ratio.Percent, "%", 3) + " of the section height";
}
