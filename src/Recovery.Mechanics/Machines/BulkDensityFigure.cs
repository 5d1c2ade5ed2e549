using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>One published or remembered bulk density with where it comes from.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record BulkDensityFigure
{
    internal BulkDensityFigure(double kilogramsPerCubicMetre, Source source)
    {
        Density = Density.FromKilogramsPerCubicMeter(Guard.Range(kilogramsPerCubicMetre, 10, 3000, "kg/m3", nameof(kilogramsPerCubicMetre)));
        Source = source;
    }

    /// <summary>Gets the bulk density.</summary>
    public Density Density { get; }

    /// <summary>Gets where it comes from, with its standing.</summary>
    public Source Source { get; }

    /// <summary>Gives the figure in words, invariant culture.</summary>
    /// <returns>Density and standing.</returns>
    public override string ToString() => Text.With(Density.KilogramsPerCubicMeter, "kg/m3") + " (" + Standings.Describe(Source.Standing) + ")";
}
