using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>One thing a bare marking can mean: what it would carry in use and at which force it would part.</summary>
/// <remarks>The readings of one tag lie five to eight times apart and more; that is why a rating without kind, unit and scope is refused.</remarks>
public sealed record MarkingReading
{
    // Design factors that the standards of gear ask for (GearSources, RiggingSources); each gives one reading of a bare mark.
    private static readonly double[] BreakingFactors = [10, 8, 7, 5, 3];

    private MarkingReading(MarkingUnit unit, RatingKind kind, double? designFactor, double? working, double breaking, string where, Source source)
    {
        Unit = unit;
        Kind = kind;
        DesignFactor = designFactor;
        WorkingNewtons = working;
        BreakingNewtons = breaking;
        WhereUsed = where;
        Source = source;
    }

    /// <summary>Gets the unit it is read in.</summary>
    public MarkingUnit Unit { get; }

    /// <summary>Gets what the marking is taken to say.</summary>
    public RatingKind Kind { get; }

    /// <summary>Gets the design factor of the reading; null for a lashing capacity.</summary>
    public double? DesignFactor { get; }

    /// <summary>Gets the working load in this reading; null where it has none for a pull.</summary>
    public Force? WorkingLoad => WorkingNewtons is { } w ? Force.FromNewtons(w) : null;

    /// <summary>Gets the breaking strength in this reading.</summary>
    public Force Breaking => Force.FromNewtons(BreakingNewtons);

    /// <summary>Gets where such markings are used.</summary>
    public string WhereUsed { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    internal double? WorkingNewtons { get; }

    internal double BreakingNewtons { get; }

    /// <summary>Gives the reading in one line, invariant culture.</summary>
    /// <returns>Kind, working load and breaking strength.</returns>
    public override string ToString() => "read in " + MarkingKernel.Symbol(Unit) + " as " + Kind + (DesignFactor is { } df ? ", design factor " + Text.Number(df) : string.Empty) + ": " + (WorkingNewtons is { } w ? "working load " + Text.Kilonewtons(w) + ", " : string.Empty) + "breaking strength " + Text.Kilonewtons(BreakingNewtons) + " (" + WhereUsed + ")";

    internal static IReadOnlyList<MarkingReading> All(Marking marking)
    {
        var readings = new List<MarkingReading>();
        MarkingUnit[] units = marking.Unit == MarkingUnit.UnknownTon ? [MarkingUnit.ShortTon, MarkingUnit.Tonne, MarkingUnit.LongTon] : [marking.Unit];
        foreach (var unit in units)
        {
            var force = marking.Value * MarkingKernel.Newtons(unit);
            foreach (var factor in BreakingFactors)
                readings.Add(new MarkingReading(unit, RatingKind.BreakingStrength, factor, MarkingKernel.Working(force, factor), force, "recovery straps; Australian law marks the breaking strength", GearSources.MarkingReadings));
            readings.Add(new MarkingReading(unit, RatingKind.LashingCapacity, null, null, force * MarkingKernel.LashingFactor, "cargo lashings", GearSources.Lashing));
            readings.Add(new MarkingReading(unit, RatingKind.WorkingLoadLimit, 5, force, MarkingKernel.Breaking(force, 5), "slings to US practice", GearSources.MarkingReadings));
            readings.Add(new MarkingReading(unit, RatingKind.WorkingLoadLimit, 7, force, MarkingKernel.Breaking(force, 7), "slings to EN 1492", GearSources.MarkingReadings));
            readings.Add(new MarkingReading(unit, RatingKind.WorkingLoadLimit, 8, force, MarkingKernel.Breaking(force, 8), "flat slings to AS 1353", GearSources.MarkingReadings));
        }

        return readings.AsReadOnly();
    }
}
