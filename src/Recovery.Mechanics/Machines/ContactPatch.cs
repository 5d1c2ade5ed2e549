using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Area of contact of a tyre and the mean pressure in it, by one model.</summary>
/// <remarks>Immutable.</remarks>
public sealed record ContactPatch
{
    internal ContactPatch(IModel model, double area, double loadNewtons, IReadOnlyList<ValidityFlag> flags)
    {
        By = model.Name;
        Source = model.Source;
        Area = Area.FromSquareMeters(area);
        MeanPressure = Pressure.FromPascals(loadNewtons / area);
        Flags = flags;
    }

    /// <summary>Gets the name of the model.</summary>
    public string By { get; }

    /// <summary>Gets the area of contact.</summary>
    public Area Area { get; }

    /// <summary>Gets load over area.</summary>
    public Pressure MeanPressure { get; }

    /// <summary>Gets the limits that the case lies outside of.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gets the source of the model.</summary>
    public Source Source { get; }

    /// <summary>Gives the contact in words, invariant culture.</summary>
    /// <returns>Model, area, pressure.</returns>
    public override string ToString() => By + ": " + Text.With(Area.SquareMeters, "m2", 3) + ", mean " + Text.Kilopascals(MeanPressure.Pascals, 3);
}
