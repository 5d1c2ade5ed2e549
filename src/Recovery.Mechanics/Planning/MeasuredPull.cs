using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>What was measured during a pull: at which stage it moved, and the stretch of the line or the load cell at that moment.</summary>
/// <remarks>Immutable, equality by value. A load cell is the better of the two: a tape tells the load only within the stiffness band of the line until its curve is known.</remarks>
public sealed record MeasuredPull
{
    /// <summary>Describes a measurement.</summary>
    /// <param name="stageThatMovedIt">Number of the stage in which the machine began to move, 1 to 20; null where it did not move.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public MeasuredPull(int? stageThatMovedIt) => StageThatMovedIt = stageThatMovedIt is { } stage ? Guard.Count(stage, 1, 20, nameof(stageThatMovedIt)) : null;

    /// <summary>Gets the stage in which it began to move; null where it did not move.</summary>
    public int? StageThatMovedIt { get; }

    /// <summary>Gets the stretch of the line when it moved, or the greatest one; through a tackle the travel of the puller over its parts. Null where nobody read the tape. Accepted range 0.001 to 100 m.</summary>
    public Length? Stretch { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.001, 100, nameof(Stretch))) : null; }

    /// <summary>Gets the reading of a load cell in the line when it moved, or the greatest one; null where there was none. Accepted range 1 to 5,000 kN.</summary>
    public Force? LoadCell { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 1, 5000, nameof(LoadCell))) : null; }

    /// <summary>Gives the same with a stretch. For callers whose language has no <c>with</c>.</summary>
    /// <param name="stretch">The value, as in <see cref="Stretch"/>.</param>
    /// <returns>The changed copy.</returns>
    public MeasuredPull WithStretch(Length? stretch) => this with { Stretch = stretch };

    /// <summary>Gives the same with a load-cell reading. For callers whose language has no <c>with</c>.</summary>
    /// <param name="loadCell">The value, as in <see cref="LoadCell"/>.</param>
    /// <returns>The changed copy.</returns>
    public MeasuredPull WithLoadCell(Force? loadCell) => this with { LoadCell = loadCell };

    /// <summary>Gives the measurement in words, invariant culture.</summary>
    /// <returns>Stage, stretch and load.</returns>
    public override string ToString() => (StageThatMovedIt is { } stage ? "moved in stage " + Text.Number(stage) : "did not move") + (Stretch is { } stretch ? ", stretch " + Text.With(stretch.Meters, "m", 3) : string.Empty) + (LoadCell is { } cell ? ", load cell " + Text.Kilonewtons(cell.Newtons, 3) : string.Empty);
}
