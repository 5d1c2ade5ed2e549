using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Why a measure is in a set: what the plan comes to with it alone, and with all the others of the set but it.</summary>
/// <remarks>A measure that does next to nothing alone may be what the set cannot do without, where another must be done as well before it counts.</remarks>
public sealed record MeasureContribution
{
    // Change of the margin below which a measure is said to do next to nothing (judgement).
    private const double Little = 0.02;

    private readonly MeasureSet _nothing, _all;

    internal MeasureContribution(Measure measure, MeasureSet nothing, MeasureSet alone, MeasureSet others, MeasureSet all)
    {
        Measure = measure;
        Alone = alone;
        WithoutIt = others;
        _nothing = nothing;
        _all = all;
    }

    /// <summary>Gets the measure.</summary>
    public Measure Measure { get; }

    /// <summary>Gets what the plan comes to with this measure alone.</summary>
    public MeasureSet Alone { get; }

    /// <summary>Gets what the plan comes to with all the others of the set.</summary>
    public MeasureSet WithoutIt { get; }

    /// <summary>Gets whether alone it does next to nothing: same verdict, as many stops, margin changed by less than a fiftieth.</summary>
    public bool DoesNothingAlone => Same(Alone, _nothing);

    /// <summary>Gets whether the set does less without it: a worse verdict, more stops, or a margin lower by a fiftieth or more.</summary>
    public bool IsNeeded => WithoutIt.Verdict > _all.Verdict || WithoutIt.Stops > _all.Stops || WithoutIt.Margin < _all.Margin * (1 - Little);

    /// <summary>Gives the contribution in one sentence, invariant culture.</summary>
    /// <returns>Title, what it does alone, what is left without it.</returns>
    public override string ToString() => Measure.Title + ": " + (DoesNothingAlone ? "alone it does next to nothing" : "alone " + Words(Alone)) + "; the set without it " + Words(WithoutIt) + (DoesNothingAlone && IsNeeded ? ": it counts once the others are done" : string.Empty);

    private static bool Same(MeasureSet a, MeasureSet b) => a.Verdict == b.Verdict && a.Stops == b.Stops && Math.Abs(a.Margin - b.Margin) <= Little * b.Margin;

    private static string Words(MeasureSet set) => (set.Stops == 1 ? "leaves 1 stop" : "leaves " + Text.Number(set.Stops) + " stops") + ", sustained over demand " + Text.Number(set.Margin, 3);
}
