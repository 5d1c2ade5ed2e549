using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>What some models of a comparison ask beside the wheels. What is not given is not assumed: the models that need it are refused with the reason.</summary>
/// <remarks>Immutable, equality by value, canonical units.</remarks>
public sealed record ComparisonInputs
{
    /// <summary>Gets an empty set: models that need more than the wheels are refused.</summary>
    public static ComparisonInputs None { get; } = new();

    /// <summary>Gets clearance and the rest for the mobility index; null where it is not known.</summary>
    public MobilityFactors? Mobility { get; init; }

    /// <summary>Gets the Bekker parameters of the soil; null where they are not known.</summary>
    public BekkerTerrain? Terrain { get; init; }

    /// <summary>Gets the unit weight of the soil, for the soil that Bekker's wheel pushes ahead; null to leave that out. Accepted range 5 to 24 kN/m3.</summary>
    public SpecificWeight? UnitWeight { get; init => field = value is { } v ? SpecificWeight.FromNewtonsPerCubicMeter(Guard.NewtonsPerCubicMetre(v, 5, 24, "unitWeight")) : null; }

    /// <summary>Gets the greatest slip of the net traction; 0.30 unless said. Accepted range 0.01 to 1.</summary>
    public Ratio SlipLimit { get; init => field = Ratio.FromDecimalFractions(Guard.Fraction(value, 0.01, 1, "slipLimit")); } = Ratio.FromDecimalFractions(CriticalIndexKernel.PlanningSlip);

    /// <summary>Takes from a soil what it knows beside its cone index: its Bekker parameters and its unit weight, each as far as it was declared.</summary>
    /// <param name="soil">The soil.</param>
    /// <returns>The inputs; without Bekker parameters Bekker's model is listed as not worked.</returns>
    /// <exception cref="ArgumentNullException">The soil is null.</exception>
    public static ComparisonInputs Of(Soil soil) => new() { Terrain = Guard.NotNull(soil, nameof(soil)).Terrain, UnitWeight = soil.DeclaredUnitWeight };

    /// <summary>Gives the same with another value: the mobility factors. For callers whose language has no <c>with</c>.</summary>
    /// <param name="mobility">The value, as in <see cref="Mobility"/>.</param>
    /// <returns>The changed copy.</returns>
    public ComparisonInputs WithMobility(MobilityFactors? mobility) => this with { Mobility = mobility };

    /// <summary>Gives the same with another value: the terrain. For callers whose language has no <c>with</c>.</summary>
    /// <param name="terrain">The value, as in <see cref="Terrain"/>.</param>
    /// <returns>The changed copy.</returns>
    public ComparisonInputs WithTerrain(BekkerTerrain? terrain) => this with { Terrain = terrain };

    /// <summary>Gives the same with another value: the unit weight of the soil. For callers whose language has no <c>with</c>.</summary>
    /// <param name="unitWeight">The value, as in <see cref="UnitWeight"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The unit weight is outside its range.</exception>
    public ComparisonInputs WithUnitWeight(SpecificWeight? unitWeight) => this with { UnitWeight = unitWeight };

    /// <summary>Gives the same with another value: the greatest slip. For callers whose language has no <c>with</c>.</summary>
    /// <param name="slipLimit">The value, as in <see cref="SlipLimit"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slip is outside its range.</exception>
    public ComparisonInputs WithSlipLimit(Ratio slipLimit) => this with { SlipLimit = slipLimit };

    /// <summary>Gives the inputs in words, invariant culture.</summary>
    /// <returns>What is given.</returns>
    public override string ToString() => "slip at most " + Text.Number(SlipLimit.DecimalFractions, 3) + (Mobility is { } m ? ", " + m : string.Empty) + (Terrain is { } t ? ", " + t : string.Empty) + (UnitWeight is { } g ? ", " + Text.With(g.KilonewtonsPerCubicMeter, "kN/m3", 3) : string.Empty);
}
