using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>A machine that pulls, on its own ground, by a hitch at its trailing end.</summary>
/// <remarks>Immutable. What is not declared is not limited by it: no engine power, no power limit; no hitch rating, no rating limit, and both are listed as still to find out.</remarks>
public sealed partial record TowingMachine
{
    /// <summary>Rounding of a position, m.</summary>
    private const double Level = 1e-9;

    /// <summary>Describes a towing machine.</summary>
    /// <param name="machine">The machine with its loads and ballast.</param>
    /// <param name="soil">The soil it pulls on.</param>
    /// <param name="hitchPosition">Position x of the hitch in the frame of the machine, -40 to 15 m: at or behind its last axle in the direction of pull, so at or below the least x of its axles forwards, at or above 0 in reverse.</param>
    /// <param name="hitchHeight">Height of the hitch above the ground, 0.1 to 3 m.</param>
    /// <param name="direction">Whether it pulls forwards (hitch at the rear) or in reverse (hitch at the front).</param>
    /// <exception cref="ArgumentNullException">Machine or soil is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The hitch lies ahead of the last axle in the direction of pull, or an axle runs on tracks.</exception>
    public TowingMachine(Machine machine, Soil soil, Length hitchPosition, Length hitchHeight, PullDirection direction = PullDirection.Forwards)
    {
        Guard.NotNull(machine, nameof(machine));
        Soil = Guard.NotNull(soil, nameof(soil));
        HitchPosition = Length.FromMeters(Guard.Metres(hitchPosition, -40, 15, nameof(hitchPosition)));
        HitchHeight = Length.FromMeters(Guard.Metres(hitchHeight, 0.1, 3, nameof(hitchHeight)));
        Direction = Guard.Defined(direction, direction is PullDirection.Forwards or PullDirection.Rearwards, nameof(direction));
        Machine = HitchedBehind(machine, nameof(hitchPosition));
    }

    /// <summary>Gets the machine. Another one must have its last axle, in the direction of pull, at or ahead of the hitch.</summary>
    public Machine Machine { get; init => field = HitchedBehind(Guard.NotNull(value, nameof(Machine)), nameof(Machine)); }

    /// <summary>Gets the soil it pulls on.</summary>
    public Soil Soil { get; init => field = Guard.NotNull(value, nameof(Soil)); }

    /// <summary>Gets the position x of the hitch.</summary>
    public Length HitchPosition { get; private init; }

    /// <summary>Gets the height of the hitch.</summary>
    public Length HitchHeight { get; private init; }

    /// <summary>Gets whether it pulls forwards or in reverse.</summary>
    public PullDirection Direction { get; }

    /// <summary>Gets the slope along its pull, positive where the ground rises.</summary>
    public Grade Grade { get; init; }

    /// <summary>Gets the cone index of the firmest ground it may stand on during the job; null takes its own soil. Not below that of its soil, up to 20,000 kPa.</summary>
    public Pressure? FirmestConeIndex { get; init => field = value is { } v ? Pressure.FromPascals(Guard.Pascals(v, 1, 20000, nameof(FirmestConeIndex))) : null; }

    /// <summary>Gets whether a road or a yard is in reach of its wheels during the job.</summary>
    public bool HardSurfaceInReach { get; init; }

    /// <summary>Gets a known greatest pull over load on that hard surface, 0.2 to 1.02; null takes 1.02, the end of the hard-surface branch. It lowers what the machine can impose only as far as the surface stays as measured.</summary>
    public Ratio? HardSurfaceFriction { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0.2, ImposableKernel.HardSurfaceRatio, nameof(HardSurfaceFriction))) : null; }

    /// <summary>Gets the slope of the steepest place where it may stand facing downhill while pulling, 0 to 30 degrees; level unless declared.</summary>
    public Angle DownhillInReach { get; init => field = Angle.FromRadians(Guard.Radians(value, 0, 30, nameof(DownhillInReach))); }

    /// <summary>Gets the engine power; null where it is not known. Accepted range 10 to 2,000 kW.</summary>
    public Power? EnginePower { get; init => field = value is { } v ? Power.FromWatts(Guard.Watts(v, 10, 2000, nameof(EnginePower))) : null; }

    /// <summary>Gets the efficiency from engine to wheels and soil; 0.70 unless declared (judgement). Accepted range 0.3 to 0.95.</summary>
    public Ratio Efficiency { get; init => field = Ratio.FromDecimalFractions(Guard.Fraction(value, 0.3, 0.95, nameof(Efficiency))); } = Ratio.FromDecimalFractions(0.70);

    /// <summary>Gets the travel speed at which power is asked for; 2 km/h unless declared. Accepted range 0.2 to 20 km/h.</summary>
    public Speed PullSpeed { get; init => field = Speed.FromMetersPerSecond(Guard.MetresPerSecond(value, 0.2, 20, nameof(PullSpeed))); } = Speed.FromKilometersPerHour(2);

    /// <summary>Gets the rating of the hitch along the pull; null where it is not known. Accepted range 5 to 2,000 kN.</summary>
    public Force? HitchRating { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 5, 2000, nameof(HitchRating))) : null; }

    /// <summary>Gets the category of the drawbar; null where it is not known. It is no rating: only compared with the engine power.</summary>
    public DrawbarCategory? DrawbarCategory { get; init => field = value is { } v ? Guard.Defined(v, v is >= Traction.DrawbarCategory.Category0 and <= Traction.DrawbarCategory.Category5, nameof(DrawbarCategory)) : null; }

    /// <summary>Gets the load down on the hitch that its maker allows; null where it is not known. Accepted range 0.5 to 500 kN.</summary>
    public Force? HitchVerticalRating { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 0.5, 500, nameof(HitchVerticalRating))) : null; }

    /// <summary>Gives the same with another value: the machine. For callers whose language has no <c>with</c>.</summary>
    /// <param name="machine">The value, as in <see cref="Machine"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithMachine(Machine machine) => this with { Machine = machine };

    /// <summary>Gives the same with another value: the soil it pulls on. For callers whose language has no <c>with</c>.</summary>
    /// <param name="soil">The value, as in <see cref="Soil"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithSoil(Soil soil) => this with { Soil = soil };

    /// <summary>Gives the same with another value: the slope along its pull, positive where the ground rises. For callers whose language has no <c>with</c>.</summary>
    /// <param name="grade">The value, as in <see cref="Grade"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithGrade(Grade grade) => this with { Grade = grade };

    /// <summary>Gives the same with another value: the cone index of the firmest ground it may stand on during the job. For callers whose language has no <c>with</c>.</summary>
    /// <param name="firmestConeIndex">The value, as in <see cref="FirmestConeIndex"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithFirmestConeIndex(Pressure? firmestConeIndex) => this with { FirmestConeIndex = firmestConeIndex };

    /// <summary>Gives the same with another value: whether a road or a yard is in reach of its wheels during the job. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hardSurfaceInReach">The value, as in <see cref="HardSurfaceInReach"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithHardSurfaceInReach(bool hardSurfaceInReach) => this with { HardSurfaceInReach = hardSurfaceInReach };

    /// <summary>Gives the same with another value: a known greatest pull over load on that hard surface, 0.2 to 1.02. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hardSurfaceFriction">The value, as in <see cref="HardSurfaceFriction"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithHardSurfaceFriction(Ratio? hardSurfaceFriction) => this with { HardSurfaceFriction = hardSurfaceFriction };

    /// <summary>Gives the same with another value: the slope of the steepest place where it may stand facing downhill while pulling, 0 to 30 degrees. For callers whose language has no <c>with</c>.</summary>
    /// <param name="downhillInReach">The value, as in <see cref="DownhillInReach"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithDownhillInReach(Angle downhillInReach) => this with { DownhillInReach = downhillInReach };

    /// <summary>Gives the same with another value: the engine power. For callers whose language has no <c>with</c>.</summary>
    /// <param name="enginePower">The value, as in <see cref="EnginePower"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithEnginePower(Power? enginePower) => this with { EnginePower = enginePower };

    /// <summary>Gives the same with another value: the efficiency from engine to wheels and soil. For callers whose language has no <c>with</c>.</summary>
    /// <param name="efficiency">The value, as in <see cref="Efficiency"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithEfficiency(Ratio efficiency) => this with { Efficiency = efficiency };

    /// <summary>Gives the same with another value: the travel speed at which power is asked for. For callers whose language has no <c>with</c>.</summary>
    /// <param name="pullSpeed">The value, as in <see cref="PullSpeed"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithPullSpeed(Speed pullSpeed) => this with { PullSpeed = pullSpeed };

    /// <summary>Gives the same with another value: the rating of the hitch along the pull. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hitchRating">The value, as in <see cref="HitchRating"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithHitchRating(Force? hitchRating) => this with { HitchRating = hitchRating };

    /// <summary>Gives the same with another value: the category of the drawbar. For callers whose language has no <c>with</c>.</summary>
    /// <param name="drawbarCategory">The value, as in <see cref="DrawbarCategory"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithDrawbarCategory(DrawbarCategory? drawbarCategory) => this with { DrawbarCategory = drawbarCategory };

    /// <summary>Gives the same with another value: the load down on the hitch that its maker allows. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hitchVerticalRating">The value, as in <see cref="HitchVerticalRating"/>.</param>
    /// <returns>The changed copy.</returns>
    public TowingMachine WithHitchVerticalRating(Force? hitchVerticalRating) => this with { HitchVerticalRating = hitchVerticalRating };

    /// <summary>The same machine with its hitch elsewhere, both numbers within their ranges: what sampling does to a reading.</summary>
    internal TowingMachine WithHitch(double positionMetres, double heightMetres) => this with { HitchPosition = Length.FromMeters(positionMetres), HitchHeight = Length.FromMeters(heightMetres) };

    /// <summary>Gives the machine in words, invariant culture.</summary>
    /// <returns>Machine and soil.</returns>
    public override string ToString() => Machine + " on " + Soil;

    /// <summary>A line at the wrong end would be drawn under the machine, and neither grip nor nose would be what is reckoned: refused with words. At the axle itself counts as behind.</summary>
    private Machine HitchedBehind(Machine machine, string name)
    {
        machine.OnTyres(name == nameof(Machine) ? name : "machine", "A puller on two tracks is a TrackedTower; for one with tracks and tyres there is no model.");
        var forwards = Direction == PullDirection.Forwards;
        var last = machine.Axles[forwards ? machine.Axles.Count - 1 : 0];
        if (forwards ? HitchPosition.Meters <= last.Position.Meters + Level : HitchPosition.Meters >= last.Position.Meters - Level) return machine;
        throw new ArgumentException(
            "hitch at x " + Text.With(HitchPosition.Meters, "m") + " is not behind the last axle of " + machine.Name + " when it pulls " + (forwards ? "forwards" : "in reverse") + ": that is its " + last.Name + " at x "
            + Text.With(last.Position.Meters, "m") + ", and the hitch must be at " + (forwards ? "that x or less (x runs forward from the foremost axle)" : "that x or more") + ". Give the place of the hitch, or the direction, as it is.",
            name);
    }
}
