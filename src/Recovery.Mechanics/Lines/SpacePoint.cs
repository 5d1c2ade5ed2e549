using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A point above the ground: x along, y to the left, z up.</summary>
/// <remarks>Immutable, equality by value. Any level frame will do as long as both ends of a line are given in the same one.</remarks>
public sealed record SpacePoint
{
    /// <summary>Describes a point.</summary>
    /// <param name="x">Along, -10 to 10 km.</param>
    /// <param name="y">Across, left positive, -10 to 10 km.</param>
    /// <param name="z">Height, -100 to 100 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SpacePoint(Length x, Length y, Length z)
    {
        X = Length.FromMeters(Guard.Metres(x, -10000, 10000, nameof(x)));
        Y = Length.FromMeters(Guard.Metres(y, -10000, 10000, nameof(y)));
        Z = Length.FromMeters(Guard.Metres(z, -100, 100, nameof(z)));
    }

    /// <summary>Gets the coordinate along.</summary>
    public Length X { get; }

    /// <summary>Gets the coordinate across.</summary>
    public Length Y { get; }

    /// <summary>Gets the height.</summary>
    public Length Z { get; }

    /// <summary>Gives the point in plan.</summary>
    /// <returns>The same without its height.</returns>
    public PlanPoint InPlan() => new(X, Y);

    /// <summary>Gives the point, invariant culture.</summary>
    /// <returns>The three coordinates.</returns>
    public override string ToString() => "(" + Text.Number(X.Meters) + ", " + Text.Number(Y.Meters) + ", " + Text.Number(Z.Meters) + ") m";
}
