using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>A machine on two tracks that pulls.</summary>
/// <remarks>Immutable. What is not declared is not limited by it: no engine power, no power limit; no hitch rating, no rating limit.</remarks>
public sealed record TrackedTower
{
    /// <summary>Describes a tracked towing machine.</summary>
    /// <param name="name">Name.</param>
    /// <param name="mass">Mass, 0.5 to 100 t.</param>
    /// <param name="centreAhead">Centre of mass ahead of the middle of the track on the ground, in the direction of pull, -3 to 3 m.</param>
    /// <param name="centreHeight">Height of the centre of mass, 0.2 to 4 m.</param>
    /// <param name="hitchHeight">Height of the hitch, 0.1 to 3 m.</param>
    /// <param name="hitchBehind">Hitch behind the rear end of the track on the ground, -2 to 5 m.</param>
    /// <param name="track">One of the two tracks on the soil it pulls on; its own load does not enter.</param>
    /// <exception cref="ArgumentNullException">The track is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the centre of mass lies beyond the track.</exception>
    public TrackedTower(string name, Mass mass, Length centreAhead, Length centreHeight, Length hitchHeight, Length hitchBehind, TrackOnSoil track)
    {
        Name = Guard.Name(name, nameof(name));
        Mass = Mass.FromKilograms(Guard.Kilograms(mass, 0.5, 100, nameof(mass)));
        Track = Guard.NotNull(track, nameof(track));
        var half = 0.5 * track.ContactLength.Meters;
        CentreAhead = Length.FromMeters(Guard.Metres(centreAhead, Math.Max(-3, -half), Math.Min(3, half), nameof(centreAhead)));
        CentreHeight = Length.FromMeters(Guard.Metres(centreHeight, 0.2, 4, nameof(centreHeight)));
        HitchHeight = Length.FromMeters(Guard.Metres(hitchHeight, 0.1, 3, nameof(hitchHeight)));
        HitchBehind = Length.FromMeters(Guard.Metres(hitchBehind, -2, 5, nameof(hitchBehind)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the mass.</summary>
    public Mass Mass { get; }

    /// <summary>Gets how far the centre of mass lies ahead of the middle of the track on the ground.</summary>
    public Length CentreAhead { get; }

    /// <summary>Gets the height of the centre of mass.</summary>
    public Length CentreHeight { get; }

    /// <summary>Gets the height of the hitch.</summary>
    public Length HitchHeight { get; }

    /// <summary>Gets how far the hitch lies behind the rear end of the track on the ground.</summary>
    public Length HitchBehind { get; }

    /// <summary>Gets one of the two tracks on the soil it pulls on.</summary>
    public TrackOnSoil Track { get; }

    /// <summary>Gets the slope along its pull, positive where the ground rises.</summary>
    public Grade Grade { get; init; }

    /// <summary>Gets the terrain of the weakest place; null takes that of the track.</summary>
    public BekkerTerrain? WeakestTerrain { get; init; }

    /// <summary>Gets the terrain of the firmest place it may stand on during the job; null takes that of the track.</summary>
    public BekkerTerrain? FirmestTerrain { get; init; }

    /// <summary>Gets the greatest pull over load on a hard surface in reach, 0.2 to 1.02; null where none is in reach.</summary>
    public Ratio? HardSurfaceFriction { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0.2, ImposableKernel.HardSurfaceRatio, nameof(HardSurfaceFriction))) : null; }

    /// <summary>Gets the engine power, 10 to 2,000 kW; null where it is not known.</summary>
    public Power? EnginePower { get; init => field = value is { } v ? Power.FromWatts(Guard.Watts(v, 10, 2000, nameof(EnginePower))) : null; }

    /// <summary>Gets the efficiency from engine to track and soil; 0.60 unless declared (judgement). Accepted range 0.3 to 0.95.</summary>
    public Ratio Efficiency { get; init => field = Ratio.FromDecimalFractions(Guard.Fraction(value, 0.3, 0.95, nameof(Efficiency))); } = Ratio.FromDecimalFractions(0.60);

    /// <summary>Gets the travel speed at which power is asked for; 2 km/h unless declared. Accepted range 0.2 to 20 km/h.</summary>
    public Speed PullSpeed { get; init => field = Speed.FromMetersPerSecond(Guard.MetresPerSecond(value, 0.2, 20, nameof(PullSpeed))); } = Speed.FromKilometersPerHour(2);

    /// <summary>Gets the rating of the hitch along the pull, 5 to 2,000 kN; null where it is not known.</summary>
    public Force? HitchRating { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 5, 2000, nameof(HitchRating))) : null; }

    /// <summary>Gives the same with another value: the slope along its pull. For callers whose language has no <c>with</c>.</summary>
    /// <param name="grade">The value, as in <see cref="Grade"/>.</param>
    /// <returns>The changed copy.</returns>
    public TrackedTower WithGrade(Grade grade) => this with { Grade = grade };

    /// <summary>Gives the same with other values: the terrains of the weakest and the firmest place. For callers whose language has no <c>with</c>.</summary>
    /// <param name="weakest">The value, as in <see cref="WeakestTerrain"/>.</param>
    /// <param name="firmest">The value, as in <see cref="FirmestTerrain"/>.</param>
    /// <returns>The changed copy.</returns>
    public TrackedTower WithTerrains(BekkerTerrain? weakest, BekkerTerrain? firmest) => this with { WeakestTerrain = weakest, FirmestTerrain = firmest };

    /// <summary>Gives the same with another value: the friction of a hard surface in reach. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hardSurfaceFriction">The value, as in <see cref="HardSurfaceFriction"/>.</param>
    /// <returns>The changed copy.</returns>
    public TrackedTower WithHardSurfaceFriction(Ratio? hardSurfaceFriction) => this with { HardSurfaceFriction = hardSurfaceFriction };

    /// <summary>Gives the same with other values: engine power, efficiency and speed. For callers whose language has no <c>with</c>.</summary>
    /// <param name="enginePower">The value, as in <see cref="EnginePower"/>.</param>
    /// <param name="efficiency">The value, as in <see cref="Efficiency"/>.</param>
    /// <param name="pullSpeed">The value, as in <see cref="PullSpeed"/>.</param>
    /// <returns>The changed copy.</returns>
    public TrackedTower WithPower(Power? enginePower, Ratio efficiency, Speed pullSpeed) => this with { EnginePower = enginePower, Efficiency = efficiency, PullSpeed = pullSpeed };

    /// <summary>Gives the same with another value: the rating of the hitch. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hitchRating">The value, as in <see cref="HitchRating"/>.</param>
    /// <returns>The changed copy.</returns>
    public TrackedTower WithHitchRating(Force? hitchRating) => this with { HitchRating = hitchRating };

    /// <summary>Gives the machine in words, invariant culture.</summary>
    /// <returns>Name, mass and terrain.</returns>
    public override string ToString() => Name + ", " + Text.With(Mass.Kilograms / 1000, "t", 3) + " on two tracks on " + Track.Terrain.Name;
}
