using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>What a person measured between the machines: humps and edges under the line, how high the drawbar stands over them, and how far the casualty is to be drawn.</summary>
/// <remarks>All heights from one level: the ground surface at the stuck machine as found, from which the attachment is measured too; on a slope from a straight line along it through that surface, because both machines go on along it. Immutable.</remarks>
public sealed record GroundBetween
{
    /// <summary>Describes the ground.</summary>
    /// <param name="obstacles">Humps, kerbs, banks and edges under the line.</param>
    /// <param name="drawbarHeight">Height of the puller's drawbar as it stands, above that level, -5 to 10 m.</param>
    /// <param name="travel">How far the casualty is to be drawn; the puller goes on as far. 0 to 100 m.</param>
    /// <exception cref="ArgumentNullException"><paramref name="obstacles"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no obstacle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public GroundBetween(IEnumerable<GroundObstacle> obstacles, Length drawbarHeight, Length travel)
    {
        Obstacles = Guard.NotNull(obstacles, nameof(obstacles)).ToList().AsReadOnly();
        if (Obstacles.Count == 0) throw new ArgumentException("obstacles must hold at least one; leave the ground undeclared where nothing was measured.", nameof(obstacles));
        DrawbarHeight = Length.FromMeters(Guard.Metres(drawbarHeight, -5, 10, nameof(drawbarHeight)));
        Travel = Length.FromMeters(Guard.Metres(travel, 0, 100, nameof(travel)));
    }

    /// <summary>Gets the humps, kerbs, banks and edges under the line.</summary>
    public IReadOnlyList<GroundObstacle> Obstacles { get; }

    /// <summary>Gets the height of the puller's drawbar as it stands.</summary>
    public Length DrawbarHeight { get; }

    /// <summary>Gets how far the casualty is to be drawn.</summary>
    public Length Travel { get; }

    /// <summary>Gives the ground in words, invariant culture.</summary>
    /// <returns>Number of obstacles and travel.</returns>
    public override string ToString() => Text.Number(Obstacles.Count) + " obstacles on the ground, drawn " + Text.With(Travel.Meters, "m");
}
