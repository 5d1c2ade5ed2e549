using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>The few facts that somebody standing beside a stuck machine can give at once. Everything else is filled in by <see cref="ShortPlan"/> and listed.</summary>
/// <remarks>Immutable, equality by value. A rating still has to say what it is, and the attachment what it is: for neither is there a value to fill in.</remarks>
public sealed record ShortFacts
{
    /// <summary>Gives the facts.</summary>
    /// <param name="stuckMass">Mass of the stuck machine as it stands, 3 to 80 t.</param>
    /// <param name="sinkage">How deep the tyre bottoms are below the surface, 0 to 1.5 m.</param>
    /// <param name="soil">The uncut soil beside it.</param>
    /// <param name="towerMass">Mass of the towing machine, 2 to 60 t.</param>
    /// <param name="strap">The recovery strap.</param>
    /// <param name="casualty">What the strap is made fast to on the stuck machine.</param>
    /// <exception cref="ArgumentNullException">Soil, strap or attachment is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ShortFacts(Mass stuckMass, Length sinkage, Soil soil, Mass towerMass, Strap strap, AttachmentPoint casualty)
    {
        StuckMass = Mass.FromKilograms(Guard.Range(stuckMass.Kilograms, 3000, 80000, "kg", nameof(stuckMass)));
        Sinkage = Length.FromMeters(Guard.Metres(sinkage, 0, 1.5, nameof(sinkage)));
        Soil = Guard.NotNull(soil, nameof(soil));
        TowerMass = Mass.FromKilograms(Guard.Range(towerMass.Kilograms, 2000, 60000, "kg", nameof(towerMass)));
        Strap = Guard.NotNull(strap, nameof(strap));
        Casualty = Guard.NotNull(casualty, nameof(casualty));
    }

    /// <summary>Gets the mass of the stuck machine.</summary>
    public Mass StuckMass { get; }

    /// <summary>Gets the sinkage.</summary>
    public Length Sinkage { get; }

    /// <summary>Gets the soil beside the stuck machine.</summary>
    public Soil Soil { get; }

    /// <summary>Gets the mass of the towing machine.</summary>
    public Mass TowerMass { get; }

    /// <summary>Gets the recovery strap.</summary>
    public Strap Strap { get; }

    /// <summary>Gets what the strap is made fast to.</summary>
    public AttachmentPoint Casualty { get; }

    /// <summary>Gets the soil under the towing machine; null takes that beside the stuck machine.</summary>
    public Soil? TowerSoil { get; init; }

    /// <summary>Gets the slope along the pull, positive where the ground rises; level unless given.</summary>
    public Grade Grade { get; init; }

    /// <summary>Gets whether the belly is on the ground; null where nobody has looked (down is taken from 0.5 m of sinkage).</summary>
    public bool? BellyDown { get; init; }

    /// <summary>Gives the same with another value: the soil under the towing machine. For callers whose language has no <c>with</c>.</summary>
    /// <param name="towerSoil">The value, as in <see cref="TowerSoil"/>.</param>
    /// <returns>The changed copy.</returns>
    public ShortFacts WithTowerSoil(Soil? towerSoil) => this with { TowerSoil = towerSoil };

    /// <summary>Gives the same with another value: the slope along the pull. For callers whose language has no <c>with</c>.</summary>
    /// <param name="grade">The value, as in <see cref="Grade"/>.</param>
    /// <returns>The changed copy.</returns>
    public ShortFacts WithGrade(Grade grade) => this with { Grade = grade };

    /// <summary>Gives the same with another value: whether the belly is on the ground. For callers whose language has no <c>with</c>.</summary>
    /// <param name="bellyDown">The value, as in <see cref="BellyDown"/>.</param>
    /// <returns>The changed copy.</returns>
    public ShortFacts WithBellyDown(bool? bellyDown) => this with { BellyDown = bellyDown };

    /// <summary>Gives the facts in one line, invariant culture.</summary>
    /// <returns>Masses and sinkage.</returns>
    public override string ToString() => Text.With(StuckMass.Kilograms / 1000, "t", 3) + " sunk " + Text.With(Sinkage.Meters, "m", 3) + ", pulled by " + Text.With(TowerMass.Kilograms / 1000, "t", 3);
}
