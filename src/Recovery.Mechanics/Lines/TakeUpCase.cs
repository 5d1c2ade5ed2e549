using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>One take-up to be followed in time.</summary>
/// <remarks>
/// <para>Massless line with its slack, puller with mass and drive, casualty held or resting on the ground with a static and a kinetic resistance (set-valued: it sticks until the static one is reached). Level ground. A dashpot beside the line is for study: no credit is given for it, and the run ends when a damped line goes slack.</para>
/// <para>Immutable, equality by reference of its line and drive. Ranges as on each member.</para>
/// </remarks>
public sealed record TakeUpCase
{
    /// <summary>Describes a take-up on a held anchor.</summary>
    /// <param name="line">The line with its slack.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="drive">How it drives.</param>
    /// <param name="speed">Speed at the start of the slack, 0 to 60 km/h.</param>
    /// <exception cref="ArgumentNullException">Line or drive is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TakeUpCase(LineAssembly line, Mass pullerMass, TowDrive drive, Speed speed)
    {
        Line = Guard.NotNull(line, nameof(line));
        PullerMass = Mass.FromKilograms(Guard.Kilograms(pullerMass, 0.001, 1000, nameof(pullerMass)));
        Drive = Guard.NotNull(drive, nameof(drive));
        Speed = Speed.FromMetersPerSecond(Guard.MetresPerSecond(speed, 0, 60, nameof(speed)));
    }

    /// <summary>Gets the line.</summary>
    public LineAssembly Line { get; }

    /// <summary>Gets the mass of the puller.</summary>
    public Mass PullerMass { get; }

    /// <summary>Gets how it drives.</summary>
    public TowDrive Drive { get; }

    /// <summary>Gets its speed at the start of the slack.</summary>
    public Speed Speed { get; }

    /// <summary>Gets the equivalent mass of the puller's rotating parts, where its wheels cannot slip; 0 unless declared. Accepted range 0 to 2,000 t.</summary>
    public Mass RotatingMass { get; init => field = Mass.FromKilograms(Guard.Kilograms(value, 0, 2000, nameof(RotatingMass))); }

    /// <summary>Gets the mass of a casualty that can move; null where it is held. Accepted range 1 kg to 1,000 t.</summary>
    public Mass? CasualtyMass { get; init => field = value is { } v ? Mass.FromKilograms(Guard.Kilograms(v, 0.001, 1000, nameof(CasualtyMass))) : null; }

    /// <summary>Gets the static resistance of a casualty that can move; 0 unless declared. Accepted range 0 to 20,000 kN.</summary>
    public Force StaticResistance { get; init => field = Force.FromNewtons(Guard.Newtons(value, 0, 20000, nameof(StaticResistance))); }

    /// <summary>Gets the kinetic resistance of a casualty that moves, at most the static one; 0 unless declared. Accepted range 0 to 20,000 kN.</summary>
    public Force KineticResistance { get; init => field = Force.FromNewtons(Guard.Newtons(value, 0, 20000, nameof(KineticResistance))); }

    /// <summary>Gets the dashpot beside the line as a part of the critical one, zeta = c/(2 sqrt(k m)); 0 unless a study wants it, on a linear line alone. Accepted range 0 to 0.95.</summary>
    public double DampingRatio { get; init => field = Guard.Range(value, 0, 0.95, string.Empty, nameof(DampingRatio)); }

    /// <summary>Gets whether the weakest part lets go at the end of its curve; true unless declared. A table ends the run there either way.</summary>
    public bool PartsLetGo { get; init; } = true;

    /// <summary>Gets the time that is followed; 10 s unless declared. Accepted range 0.001 to 600 s.</summary>
    public Duration Span { get; init => field = Duration.FromSeconds(Guard.Seconds(value, 0.001, 600, nameof(Span))); } = Duration.FromSeconds(10);

    /// <summary>Gets whether the run ends when the line first goes slack again.</summary>
    public bool EndsWhenSlack { get; init; }

    /// <summary>Gets whether a time history is kept.</summary>
    public bool KeepsHistory { get; init; } = true;

    /// <summary>Gets the relative tolerance of the Runge-Kutta steps; 1e-12 unless declared, at which events lie within 1e-10 s and energy balances to 1e-9 from every start that was tried. Accepted range 1e-13 to 1e-4.</summary>
    public double Tolerance { get; init => field = Guard.Range(value, 1e-13, 1e-4, string.Empty, nameof(Tolerance)); } = 1e-12;

    /// <summary>Gives the same with another value: the equivalent mass of rotating parts. For callers whose language has no <c>with</c>.</summary>
    /// <param name="rotatingMass">The value, as in <see cref="RotatingMass"/>.</param>
    /// <returns>The changed copy.</returns>
    public TakeUpCase WithRotatingMass(Mass rotatingMass) => this with { RotatingMass = rotatingMass };

    /// <summary>Gives the same with a casualty that rests on the ground and can break out.</summary>
    /// <param name="mass">Its mass, 1 kg to 1,000 t.</param>
    /// <param name="staticResistance">Static resistance, 0 to 20,000 kN.</param>
    /// <param name="kineticResistance">Kinetic resistance, 0 to the static one.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TakeUpCase WithCasualty(Mass mass, Force staticResistance, Force kineticResistance) => this with
    {
        CasualtyMass = mass,
        StaticResistance = staticResistance,
        KineticResistance = Force.FromNewtons(Guard.Newtons(kineticResistance, 0, staticResistance.Newtons / 1000, nameof(kineticResistance))),
    };

    /// <summary>Gives the same with another value: the damping ratio. For callers whose language has no <c>with</c>.</summary>
    /// <param name="dampingRatio">The value, as in <see cref="DampingRatio"/>.</param>
    /// <returns>The changed copy.</returns>
    public TakeUpCase WithDampingRatio(double dampingRatio) => this with { DampingRatio = dampingRatio };

    /// <summary>Gives the same with another value: whether the weakest part lets go. For callers whose language has no <c>with</c>.</summary>
    /// <param name="partsLetGo">The value, as in <see cref="PartsLetGo"/>.</param>
    /// <returns>The changed copy.</returns>
    public TakeUpCase WithPartsLetGo(bool partsLetGo) => this with { PartsLetGo = partsLetGo };

    /// <summary>Gives the same with another value: the time that is followed. For callers whose language has no <c>with</c>.</summary>
    /// <param name="span">The value, as in <see cref="Span"/>.</param>
    /// <returns>The changed copy.</returns>
    public TakeUpCase WithSpan(Duration span) => this with { Span = span };

    /// <summary>Gives the same with another value: whether the run ends when the line goes slack. For callers whose language has no <c>with</c>.</summary>
    /// <param name="endsWhenSlack">The value, as in <see cref="EndsWhenSlack"/>.</param>
    /// <returns>The changed copy.</returns>
    public TakeUpCase WithEndsWhenSlack(bool endsWhenSlack) => this with { EndsWhenSlack = endsWhenSlack };

    /// <summary>Gives the same with another value: whether a time history is kept. For callers whose language has no <c>with</c>.</summary>
    /// <param name="keepsHistory">The value, as in <see cref="KeepsHistory"/>.</param>
    /// <returns>The changed copy.</returns>
    public TakeUpCase WithKeepsHistory(bool keepsHistory) => this with { KeepsHistory = keepsHistory };

    /// <summary>Gives the same with another value: the relative tolerance. For callers whose language has no <c>with</c>.</summary>
    /// <param name="tolerance">The value, as in <see cref="Tolerance"/>.</param>
    /// <returns>The changed copy.</returns>
    public TakeUpCase WithTolerance(double tolerance) => this with { Tolerance = tolerance };

    /// <summary>Gives the take-up in one line, invariant culture.</summary>
    /// <returns>Puller, drive, speed and line.</returns>
    public override string ToString() => Text.With(PullerMass.Kilograms / 1000, "t") + ", " + Drive + ", " + Text.With(Speed.MetersPerSecond * 3.6, "km/h") + ", " + Line;

    internal TakeUpProblem ToProblem()
    {
        ref readonly var shape = ref Line.Shape;
        if (DampingRatio > 0 && !shape.IsLinear) throw new ArgumentException("DampingRatio must be 0 on a line that is not linear; it was " + Text.Number(DampingRatio) + ".", nameof(DampingRatio));
        if (KineticResistance.Newtons > StaticResistance.Newtons) throw new ArgumentException("KineticResistance must be at most the static one of " + Text.Kilonewtons(StaticResistance.Newtons) + "; it was " + Text.Kilonewtons(KineticResistance.Newtons) + ".", nameof(KineticResistance));
        var mass = PullerMass.Kilograms + RotatingMass.Kilograms;
        return new TakeUpProblem
        {
            Puller = mass,
            Casualty = CasualtyMass?.Kilograms ?? double.PositiveInfinity,
            Drive = Drive.Kind,
            Pull = Drive.PullNewtons,
            Rise = Drive.RiseSeconds,
            GearSpeed = Drive.GearSpeed,
            SlipExponent = Drive.SlipExponent,
            TyreStiffness = Drive.TyreStiffness,
            Line = shape,
            Damping = DampingRatio > 0 ? 2 * DampingRatio * Math.Sqrt(shape.LinearStiffness * mass) : 0,
            FailForce = PartsLetGo && shape.Kind == CurveKind.Power ? shape.EndForce : double.PositiveInfinity,
            Stretch = -Line.Slack.Meters,
            Speed = Speed.MetersPerSecond,
            StaticResistance = CasualtyMass is null ? double.PositiveInfinity : StaticResistance.Newtons,
            KineticResistance = KineticResistance.Newtons,
            EndTime = Span.Seconds,
            EndAtSlack = EndsWhenSlack,
            Tolerance = Tolerance,
        };
    }
}
