using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A point in plan.</summary>
public sealed record PlanPoint
{
    /// <summary>Describes a point.</summary>
    /// <param name="x">Along, -10 to 10 km.</param>
    /// <param name="y">Across, left positive, -10 to 10 km.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public PlanPoint(Length x, Length y)
    {
        X = Length.FromMeters(Guard.Metres(x, -10000, 10000, nameof(x)));
        Y = Length.FromMeters(Guard.Metres(y, -10000, 10000, nameof(y)));
    }

    /// <summary>Gets the coordinate along.</summary>
    public Length X { get; }

    /// <summary>Gets the coordinate across.</summary>
    public Length Y { get; }

    /// <summary>Gives the point, invariant culture.</summary>
    /// <returns>Both coordinates.</returns>
    public override string ToString() => "(" + Text.Number(X.Meters) + ", " + Text.Number(Y.Meters) + ") m";
}
