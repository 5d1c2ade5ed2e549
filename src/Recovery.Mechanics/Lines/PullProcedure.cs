using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>How the pull is to be done, as far as it is declared. Nothing declared means that the careless load is the procedure.</summary>
/// <remarks>
/// <para>A locked gear counts only where one gear is engaged from engine to wheels before the line comes taut and kept; v_t at high idle; level or uphill; wheels that can slip. Hydrostatic, belt, converter and automatic drives whose rims can overrun do not qualify: give the highest rim speed the drive can reach, or declare nothing.</para>
/// <para>Immutable, equality by value.</para>
/// </remarks>
public sealed record PullProcedure
{
    /// <summary>Gets the procedure with nothing declared.</summary>
    public static PullProcedure Undeclared { get; } = new();

    /// <summary>Gets the theoretical speed of the gear that is engaged throughout, at the highest no-load engine speed; null where no locked gear is declared. Accepted range 0.1 to 20 km/h.</summary>
    public Speed? LockedGear { get => Gear; init => Gear = value is { } v ? Speed.FromMetersPerSecond(Guard.MetresPerSecond(v, 0.1, 20, nameof(LockedGear))) : null; }

    /// <summary>Gets the conditions of the locked-gear rule, declared one by one; null takes them as met by declaring the gear at all, save two: on a line stiffer than 654 kN/m the line must be declared without slack, or the clutch as eased, and a puller that may stand facing downhill never claims the rule.</summary>
    public LockedGearConditions? GearConditions { get; init; }

    /// <summary>Gets the slack in the line when the pull begins; null where it is not declared. Accepted range 0 to 10 m.</summary>
    public Length? Slack { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0, 10, nameof(Slack))) : null; }

    /// <summary>Gets the speed at the start of the slack where no gear is locked; null where it is not declared. Accepted range 0 to 40 km/h.</summary>
    public Speed? ApproachSpeed { get; init => field = value is { } v ? Speed.FromMetersPerSecond(Guard.MetresPerSecond(v, 0, 40, nameof(ApproachSpeed))) : null; }

    /// <summary>Gets the time over which the throttle is raised on the taut line, wheels not slipping; null where it is not declared. Accepted range 0.5 to 600 s.</summary>
    public Duration? ThrottleRise { get; init => field = value is { } v ? Duration.FromSeconds(Guard.Seconds(v, 0.5, 600, nameof(ThrottleRise))) : null; }

    /// <summary>Gets whether the line has been pulled before today (bedded in, about twice as stiff); null where it is not declared.</summary>
    public bool? SecondPull { get; init; }

    /// <summary>Gets the mass that engine and wheels stand for at the line in the gear that is engaged, where the ground does not let the wheels slip: dug in, chained, on a step (<see cref="Traction.RotatingInertia.EquivalentMass"/>); 0 unless declared. Accepted range 0 to 20,000 t.</summary>
    /// <remarks>It is added to the mass of the puller in every peak, the careless one too, there with no more speed than its gear has, and the locked-gear rule is then not claimed. While the wheels slip grip caps what they push, and it does not belong here.</remarks>
    public Mass RotatingMass { get; init => field = Mass.FromKilograms(Guard.Kilograms(value, 0, 20000, nameof(RotatingMass))); }

    /// <summary>Gets the slack of the careless load; 0.5 m (judgement) unless changed. Accepted range 0 to 10 m.</summary>
    public Length CarelessSlack { get; init => field = Length.FromMeters(Guard.Metres(value, 0, 10, nameof(CarelessSlack))); } = Length.FromMeters(0.5);

    /// <summary>Gets the speed of the careless load at the start of its slack; 5 km/h (judgement) unless changed. Accepted range 0 to 40 km/h.</summary>
    public Speed CarelessSpeed { get; init => field = Speed.FromMetersPerSecond(Guard.MetresPerSecond(value, 0, 40, nameof(CarelessSpeed))); } = Speed.FromKilometersPerHour(5);

    /// <summary>Gets whether anything of the take-up is declared.</summary>
    public bool IsDeclared => LockedGear is not null || Slack is not null || ApproachSpeed is not null || ThrottleRise is not null;

    /// <summary>Gets whether it declares slack or an approach at speed without a locked gear: a run-up. Slack taken up from rest is one too, because the pull accelerates the machine through it. A gear that is not engaged before the line comes taut, whose rims can overrun it, or that is slower than the approach is no locked gear here.</summary>
    public bool IsRunUp => !GearHolds && (ApproachSpeed is { MetersPerSecond: > 0 } || Slack is { Meters: > 0 });

    /// <summary>Whether the approach is declared faster than the gear: the gear then is not engaged.</summary>
    internal bool ApproachPassesGear => LockedGear is { } gear && ApproachSpeed is { } approach && approach.MetersPerSecond > gear.MetersPerSecond;

    /// <summary>Whether it is declared, by a condition or by what turns, that the wheels cannot slip.</summary>
    internal bool WheelsCannotSlip => RotatingMass.Kilograms > 0 || GearConditions is { WheelsCanSlip: false };

    private Speed? Gear { get; init; }

    private bool GearHolds => LockedGear is not null && (GearConditions?.HoldsSpeed ?? true) && !ApproachPassesGear;

    /// <summary>Makes a procedure in a locked gear with the line drawn taut first.</summary>
    /// <param name="theoreticalSpeed">Theoretical speed of the gear at high idle, 0.1 to 20 km/h.</param>
    /// <returns>The procedure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range.</exception>
    public static PullProcedure DrawnTautInGear(Speed theoreticalSpeed) => new() { LockedGear = theoreticalSpeed, Slack = Length.Zero };

    /// <summary>Gives the same with another value: the theoretical speed of the gear that is engaged throughout, at the highest no-load engine speed. For callers whose language has no <c>with</c>.</summary>
    /// <param name="lockedGear">The value, as in <see cref="LockedGear"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithLockedGear(Speed? lockedGear) => this with { LockedGear = lockedGear };

    /// <summary>Gives the same with another value: the conditions of the locked-gear rule. For callers whose language has no <c>with</c>.</summary>
    /// <param name="gearConditions">The value, as in <see cref="GearConditions"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithGearConditions(LockedGearConditions? gearConditions) => this with { GearConditions = gearConditions };

    /// <summary>Gives the same with another value: the slack in the line when the pull begins. For callers whose language has no <c>with</c>.</summary>
    /// <param name="slack">The value, as in <see cref="Slack"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithSlack(Length? slack) => this with { Slack = slack };

    /// <summary>Gives the same with another value: the speed at the start of the slack where no gear is locked. For callers whose language has no <c>with</c>.</summary>
    /// <param name="approachSpeed">The value, as in <see cref="ApproachSpeed"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithApproachSpeed(Speed? approachSpeed) => this with { ApproachSpeed = approachSpeed };

    /// <summary>Gives the same with another value: the time over which the throttle is raised on the taut line, wheels not slipping. For callers whose language has no <c>with</c>.</summary>
    /// <param name="throttleRise">The value, as in <see cref="ThrottleRise"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithThrottleRise(Duration? throttleRise) => this with { ThrottleRise = throttleRise };

    /// <summary>Gives the same with another value: whether the line has been pulled before today (bedded in, about twice as stiff). For callers whose language has no <c>with</c>.</summary>
    /// <param name="secondPull">The value, as in <see cref="SecondPull"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithSecondPull(bool? secondPull) => this with { SecondPull = secondPull };

    /// <summary>Gives the same with another value: the equivalent mass of what turns, where the wheels cannot slip. For callers whose language has no <c>with</c>.</summary>
    /// <param name="rotatingMass">The value, as in <see cref="RotatingMass"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The value is outside its range.</exception>
    public PullProcedure WithRotatingMass(Mass rotatingMass) => this with { RotatingMass = rotatingMass };

    /// <summary>Gives the same with another value: the slack of the careless load. For callers whose language has no <c>with</c>.</summary>
    /// <param name="carelessSlack">The value, as in <see cref="CarelessSlack"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithCarelessSlack(Length carelessSlack) => this with { CarelessSlack = carelessSlack };

    /// <summary>Gives the same with another value: the speed of the careless load at the start of its slack. For callers whose language has no <c>with</c>.</summary>
    /// <param name="carelessSpeed">The value, as in <see cref="CarelessSpeed"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullProcedure WithCarelessSpeed(Speed carelessSpeed) => this with { CarelessSpeed = carelessSpeed };

    /// <summary>The procedure as the line feels it through a tackle: the speeds are the puller's, divided by the parts; slack is the line's own and stays. The gear may then be slower than any of a machine.</summary>
    internal PullProcedure Through(int parts) => parts == 1 ? this : this with { Gear = Gear / parts, ApproachSpeed = ApproachSpeed / parts, CarelessSpeed = CarelessSpeed / parts };

    /// <summary>Gives the procedure in words, invariant culture.</summary>
    /// <returns>What is declared.</returns>
    public override string ToString() => (!IsDeclared ? "nothing declared"
        : (LockedGear is { } gear ? "gear of " + Text.With(gear.MetersPerSecond * 3.6, "km/h") : "no locked gear") + ", slack " + (Slack is { } slack ? Text.With(slack.Meters, "m") : "not declared") + (ThrottleRise is { } rise ? ", throttle raised over " + Text.With(rise.Seconds, "s") : string.Empty))
        + (RotatingMass.Kilograms > 0 ? ", wheels that cannot slip with " + Text.With(RotatingMass.Kilograms / 1000, "t", 3) + " turning" : string.Empty);
}
