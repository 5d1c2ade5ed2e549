using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Least ratings that one piece of gear needs for its loads, and what marking to look for.</summary>
/// <remarks>
/// <para>Line: breaking strength at least max(steady x design factor, peak x partial factor) / derated share; a working load limit at least steady / share. Shackle: working load limit at least steady / step off the axis, breaking load 3 x peak, proof load the peak. Attachment: working load the steady load, yield the peak.</para>
/// <para>Parts are chosen together: a stronger strap is stiffer and raises the peak on the rest. Check the whole rig again. Immutable.</para>
/// </remarks>
public sealed record GearNeed
{
    internal GearNeed(string part, GearKind kind, double steady, double peak, double rated, double full, double floor, double working, double proof, DesignFactorPolicy policy)
    {
        Part = part;
        Kind = kind;
        Steady = Force.FromNewtons(steady);
        Peak = Force.FromNewtons(peak);
        RatedNewtons = rated;
        FullNewtons = full;
        FloorNewtons = floor;
        WorkingNewtons = working;
        ProofNewtons = proof;
        Policy = policy;
    }

    /// <summary>Gets the part.</summary>
    public string Part { get; }

    /// <summary>Gets its kind.</summary>
    public GearKind Kind { get; }

    /// <summary>Gets its steady load.</summary>
    public Force Steady { get; }

    /// <summary>Gets its procedure peak.</summary>
    public Force Peak { get; }

    /// <summary>Gets the policy it was reckoned with.</summary>
    public DesignFactorPolicy Policy { get; }

    /// <summary>Gets the breaking strength that the rated check asks; null where that check asks none.</summary>
    public Force? BreakingForRated => Known(RatedNewtons);

    /// <summary>Gets the breaking strength that the full partial factors ask, for a shackle three times the peak, for an attachment its yield; null where no strength would do.</summary>
    public Force? BreakingForFullFactors => Known(FullNewtons);

    /// <summary>Gets the breaking strength below which the part is a stop; null where no strength would do.</summary>
    public Force? BreakingForFloor => Known(FloorNewtons);

    /// <summary>Gets the breaking strength that both checks ask; null where no strength would do.</summary>
    public Force? LeastBreaking => double.IsNaN(FullNewtons) ? null : Known(double.IsNaN(RatedNewtons) ? FullNewtons : Math.Max(RatedNewtons, FullNewtons));

    /// <summary>Gets the working load limit that the steady load asks.</summary>
    public Force LeastWorkingLoad => Force.FromNewtons(WorkingNewtons);

    /// <summary>Gets the proof load that a shackle needs; null for other gear.</summary>
    public Force? LeastProofLoad => Known(ProofNewtons);

    /// <summary>Gets what marking to look for, in English.</summary>
    public string LookFor => GearMarkings.LookFor(Kind);

    /// <summary>Gets the kinds of rating that are marked on such gear.</summary>
    public IReadOnlyList<RatingKind> MarkedKinds => GearMarkings.Kinds(Kind);

    private double RatedNewtons { get; }

    private double FullNewtons { get; }

    private double FloorNewtons { get; }

    private double WorkingNewtons { get; }

    private double ProofNewtons { get; }

    /// <summary>Gives the least number on a tag that says a breaking strength.</summary>
    /// <param name="unit">Unit of the tag, a known one.</param>
    /// <returns>The number, rounded up to three digits; null where no strength would do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not a known one.</exception>
    public double? MarkedBreaking(MarkingUnit unit) => LeastBreaking is { } force ? ChoiceKernel.RoundUp(Marking.In(force, unit)) : null;

    /// <summary>Gives the least number on a tag that says a working load limit and whose standard says its design factor: it holds steady load and peak.</summary>
    /// <param name="unit">Unit of the tag, a known one.</param>
    /// <param name="designFactor">Design factor in the limit, 2 to 15: 5 US slings and shackles, 7 EN 1492, 8 AS 1353, 6 AS 2741 grade S, 4 chain.</param>
    /// <returns>The number, rounded up to three digits; null where no strength would do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not a known one or the factor is outside its range.</exception>
    public double? MarkedWorkingLoad(MarkingUnit unit, double designFactor)
    {
        Guard.Range(designFactor, 2, 15, string.Empty, nameof(designFactor));
        var least = double.IsNaN(FullNewtons) ? double.NaN : Math.Max(WorkingNewtons, MarkingKernel.Working(LeastBreaking!.Value.Newtons, designFactor));
        return double.IsNaN(least) ? null : ChoiceKernel.RoundUp(Marking.In(Force.FromNewtons(least), unit));
    }

    /// <summary>Gives the need in one line, invariant culture.</summary>
    /// <returns>Part and least ratings in tonnes and kilonewtons.</returns>
    public override string ToString() => Part + ": " + (LeastBreaking is { } least ? "breaking strength at least " + Text.Kilonewtons(least.Newtons, 3) + " (" + Text.Number(ChoiceKernel.RoundUp(Marking.In(least, MarkingUnit.Tonne)), 3) + " t)" : "no strength would do") + ", working load limit at least " + Text.Kilonewtons(WorkingNewtons, 3);

    private static Force? Known(double newtons) => double.IsNaN(newtons) || double.IsInfinity(newtons) ? null : Force.FromNewtons(newtons);
}
