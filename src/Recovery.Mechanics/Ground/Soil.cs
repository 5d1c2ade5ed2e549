using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>The strength of a soil as a cone penetrometer reads it.</summary>
/// <remarks>
/// <para>RCI = CI RI; s_u = CI/N_k with N_k 12.5. CI cone index, RI remoulding index (cone index after 100 blows over before), RCI rating cone index.</para>
/// <para>On fine-grained soil and on sand with fines a wheel remoulds what it stands on: wheel models take RCI. Clean sand has RI 1.
/// The reading must come from the layer that carries the wheel: for the wheels of a heavy harvester the top 0.30 m and what lies below, to 0.45 m.</para>
/// <para>A remoulding index that was not measured is assumed and listed among <see cref="Assumptions"/>: on clay it changes the answer more than the choice of model does.</para>
/// <para>Immutable, equality by value, canonical units (Pa, N/m3). Source: RCI ERDC/CRREL SR-04-1 (primary); N_k from memory; unit weight and adhesion factor judgement.</para>
/// </remarks>
public sealed partial record Soil
{
    /// <summary>Remoulding index taken where none was measured on remouldable soil: the geometric mean of 0.5, which is unlikely to be undercut, and 1 (judgement).</summary>
    internal const double AssumedRemouldingIndex = 0.7;

    private static readonly Assumption RemouldingIndexAssumed = new(
        "assume.remoulding-index",
        "remoulding index of the soil (cone before and after 100 blows on a tube sample)",
        "0.7",
        "A lower one means less traction, more resistance and a weaker floor under the wheels; it can turn go into no-go.",
        GeneralSources.Judgement);

    private static readonly Assumption UnitWeightAssumed = new(
        "assume.unit-weight", "unit weight of the soil", "17 kN/m3", "Changes the soil in front of buried wheels by a few per cent.", GroundSources.UnitWeight);

    private static readonly Assumption AdhesionAssumed = new(
        "assume.adhesion-factor", "adhesion of the soil on tyre walls and belly", "0.5 of its strength, at most 12 kPa", "From 0.3 to 0.6 it changes side adhesion and belly drag in proportion.", GroundSources.Adhesion);

    private Soil(Pressure coneIndex, Pressure weakestConeIndex, Ratio? measuredRemouldingIndex, SoilKind kind, SoilEstimate? estimate = null)
    {
        ConeIndex = Pressure.FromPascals(Guard.Pascals(coneIndex, 1, 20000, nameof(coneIndex)));
        WeakestConeIndex = weakestConeIndex;
        Kind = Guard.Defined(kind, kind is >= SoilKind.FineGrained and <= SoilKind.CleanSand, nameof(kind));
        if (measuredRemouldingIndex is { } measured)
            MeasuredRemouldingIndex = Ratio.FromDecimalFractions(Guard.Fraction(measured, SoilKernel.LeastRemouldingIndex, 1, "remouldingIndex"));
        Estimate = estimate;
    }

    /// <summary>Gets the typical reading of the cone, uncut soil.</summary>
    public Pressure ConeIndex { get; }

    /// <summary>Gets the smallest of several readings; the typical one where there is no other.</summary>
    public Pressure WeakestConeIndex { get; private init => field = Pressure.FromPascals(Guard.Pascals(value, 1, ConeIndex.Pascals / 1000, "weakestConeIndex")); }

    /// <summary>Gets the remoulding index as measured; null where it was not.</summary>
    public Ratio? MeasuredRemouldingIndex { get; private init; }

    /// <summary>Gets the test that gave the remoulding index; null where it came as a number or was not measured.</summary>
    public RemouldingTest? RemouldingTest { get; private init; }

    /// <summary>Gets the kind of soil.</summary>
    public SoilKind Kind { get; }

    /// <summary>Gets whether the strength was estimated from something other than a cone: moisture, the hand, the liquidity index. It then stands among <see cref="Assumptions"/> as still to measure.</summary>
    public bool IsEstimated => Estimate is { WithoutCone: true };

    /// <summary>Gets the remoulding index used: measured, implied by a moisture fit, 1 on clean sand, else assumed.</summary>
    public Ratio RemouldingIndex => Ratio.FromDecimalFractions(RemouldingIndexUsed);

    /// <summary>Gets the rating cone index of the typical reading.</summary>
    public Pressure RatingConeIndex => Pressure.FromPascals(SoilKernel.RatingConeIndex(ConeIndex.Pascals, RemouldingIndexUsed));

    /// <summary>Gets the rating cone index of the weakest reading.</summary>
    public Pressure WeakestRatingConeIndex => Pressure.FromPascals(SoilKernel.RatingConeIndex(WeakestConeIndex.Pascals, RemouldingIndexUsed));

    /// <summary>Gets the undrained shear strength of the uncut soil, CI/12.5 (cone factor from memory).</summary>
    public Pressure UndrainedShearStrength => Pressure.FromPascals(SoilKernel.UndrainedStrength(ConeIndex.Pascals, SoilKernel.ConeFactor));

    /// <summary>Gets the unit weight; 17 kN/m3 (judgement) unless declared.</summary>
    public SpecificWeight UnitWeight => SpecificWeight.FromNewtonsPerCubicMeter(DeclaredUnitWeight?.NewtonsPerCubicMeter ?? 17000);

    /// <summary>Gets the unit weight as declared; null where it was not. Accepted range 9 to 24 kN/m3.</summary>
    public SpecificWeight? DeclaredUnitWeight { get; init => field = value is { } v ? SpecificWeight.FromNewtonsPerCubicMeter(Guard.NewtonsPerCubicMetre(v, 9, 24, "unitWeight")) : null; }

    /// <summary>Gets the share of its strength with which the soil sticks to tyre walls and belly; 0.5 (judgement) unless declared.</summary>
    public Ratio AdhesionFactor => Ratio.FromDecimalFractions(DeclaredAdhesionFactor?.DecimalFractions ?? 0.5);

    /// <summary>Gets the adhesion factor as declared; null where it was not. Accepted range 0 to 1.</summary>
    public Ratio? DeclaredAdhesionFactor { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0, 1, "adhesionFactor")) : null; }

    /// <summary>Gets the Bekker parameters of the same soil; null where there are none.</summary>
    public BekkerTerrain? Terrain { get; init; }

    /// <summary>Gets what was filled in because it was not given.</summary>
    public IReadOnlyList<Assumption> Assumptions
    {
        get
        {
            var assumptions = new List<Assumption>();
            if (Estimate is { } estimate) assumptions.Add(estimate.Assumption);
            if (RemouldingIndexIsAssumed) assumptions.Add(RemouldingIndexAssumed);
            if (DeclaredUnitWeight is null) assumptions.Add(UnitWeightAssumed);
            if (DeclaredAdhesionFactor is null) assumptions.Add(AdhesionAssumed);
            return assumptions.AsReadOnly();
        }
    }

    /// <summary>Gets whether the remoulding index was assumed.</summary>
    internal bool RemouldingIndexIsAssumed => MeasuredRemouldingIndex is null && Estimate?.RemouldingIndex is null && Kind != SoilKind.CleanSand;

    private SoilEstimate? Estimate { get; }

    private double RemouldingIndexUsed => MeasuredRemouldingIndex?.DecimalFractions ?? Estimate?.RemouldingIndex ?? (Kind == SoilKind.CleanSand ? 1 : BorrowedRemouldingIndex ?? AssumedRemouldingIndex);

    /// <summary>Taken over from another soil for want of one of its own; it stays assumed.</summary>
    private double? BorrowedRemouldingIndex { get; init; }

    /// <summary>Makes a soil from a cone reading and a measured remoulding index.</summary>
    /// <param name="coneIndex">Typical cone index of the uncut soil, above 0 to 20,000 kPa.</param>
    /// <param name="remouldingIndex">Remoulding index, 0.05 to 1.</param>
    /// <param name="kind">Kind of soil.</param>
    /// <returns>The soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Soil FromConeIndex(Pressure coneIndex, Ratio remouldingIndex, SoilKind kind = SoilKind.FineGrained) => new(coneIndex, coneIndex, remouldingIndex, kind);

    /// <summary>Makes a soil from a cone reading alone; the remoulding index is assumed and listed as still to measure.</summary>
    /// <param name="coneIndex">Typical cone index of the uncut soil, above 0 to 20,000 kPa.</param>
    /// <param name="kind">Kind of soil; clean sand has remoulding index 1.</param>
    /// <returns>The soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Soil FromConeIndexOnly(Pressure coneIndex, SoilKind kind = SoilKind.FineGrained) => new(coneIndex, coneIndex, null, kind);

    /// <summary>Gives the same soil with the smallest of several readings beside the typical one.</summary>
    /// <param name="weakestConeIndex">Smallest reading, at most the typical one.</param>
    /// <returns>The soil with both readings.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reading is not above 0 or is above the typical one.</exception>
    public Soil WithWeakestReading(Pressure weakestConeIndex) => this with { WeakestConeIndex = weakestConeIndex };

    /// <summary>Gives the same soil with the remoulding index of a test; what is to be said of the test goes with it into the assessment of a plan.</summary>
    /// <param name="test">The test of a sample of this soil.</param>
    /// <returns>The soil with a measured index.</returns>
    /// <exception cref="ArgumentNullException">The test is null.</exception>
    /// <exception cref="ArgumentException">The soil is clean sand, which has no remoulding index but 1.</exception>
    public Soil WithRemouldingTest(RemouldingTest test)
    {
        Guard.NotNull(test, nameof(test));
        if (Kind == SoilKind.CleanSand) throw new ArgumentException("test cannot be of this soil: it is clean sand, whose remoulding index is 1 and is not tested.", nameof(test));
        return this with { MeasuredRemouldingIndex = test.RemouldingIndex, BorrowedRemouldingIndex = null, RemouldingTest = test };
    }

    /// <summary>Gives the same soil with the remoulding index of another, where it has none of its own.</summary>
    internal Soil WithRemouldingIndexOf(Soil other) =>
        RemouldingIndexIsAssumed && RemouldingIndexUsed != other.RemouldingIndexUsed ? this with { BorrowedRemouldingIndex = other.RemouldingIndexUsed } : this;

    /// <summary>Works out rating cone index and undrained strength step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        string ci = Text.Number(ConeIndex.Kilopascals), ri = Text.Number(RemouldingIndexUsed);
        return new WorkingBuilder("Soil strength from the cone")
            .Step("RCI", "rating cone index, what a wheel leaves of the soil it stands on", "CI RI", ci + " x " + ri, Text.Kilopascals(RatingConeIndex.Pascals), GroundSources.RatingConeIndex)
            .Step("s_u", "undrained shear strength of the uncut soil", "CI/N_k", ci + "/12.5", Text.Kilopascals(UndrainedShearStrength.Pascals), GroundSources.ConeFactor)
            .Build();
    }

    /// <summary>Gives the same with another value: the unit weight as declared. For callers whose language has no <c>with</c>.</summary>
    /// <param name="declaredUnitWeight">The value, as in <see cref="DeclaredUnitWeight"/>.</param>
    /// <returns>The changed copy.</returns>
    public Soil WithDeclaredUnitWeight(SpecificWeight? declaredUnitWeight) => this with { DeclaredUnitWeight = declaredUnitWeight };

    /// <summary>Gives the same with another value: the adhesion factor as declared. For callers whose language has no <c>with</c>.</summary>
    /// <param name="declaredAdhesionFactor">The value, as in <see cref="DeclaredAdhesionFactor"/>.</param>
    /// <returns>The changed copy.</returns>
    public Soil WithDeclaredAdhesionFactor(Ratio? declaredAdhesionFactor) => this with { DeclaredAdhesionFactor = declaredAdhesionFactor };

    /// <summary>Gives the same with another value: the Bekker parameters of the same soil. For callers whose language has no <c>with</c>.</summary>
    /// <param name="terrain">The value, as in <see cref="Terrain"/>.</param>
    /// <returns>The changed copy.</returns>
    public Soil WithTerrain(BekkerTerrain? terrain) => this with { Terrain = terrain };

    /// <summary>Gives the soil in words, invariant culture.</summary>
    /// <returns>Cone index and remoulding index.</returns>
    public override string ToString() => "cone index " + (IsEstimated ? "about " : string.Empty) + (IsEstimated ? Rough.Kilopascals(ConeIndex.Pascals) : Text.Kilopascals(ConeIndex.Pascals)) + ", remoulding index " + Text.Number(RemouldingIndexUsed, IsEstimated ? 2 : 4) + (RemouldingIndexIsAssumed ? " (assumed)" : string.Empty);
}
