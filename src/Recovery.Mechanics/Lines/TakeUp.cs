using System;
using System.Threading;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Greatest force when a moving puller takes a line up.</summary>
/// <remarks>
/// <para>Held anchor: m v^2/2 + P s + P x = E(x); on a linear line F = P + sqrt(P^2 + 2 k P s + k m v^2), and exactly 2P from rest without slack. Locked gear: the area between the curve and P beyond F = P is at most m v_t^2/2; on a linear line F = P + v_t sqrt(k m), whatever the slack. Where both apply the smaller counts. Throttle raised over t_r on a taut line: P min(2, 1 + T/(pi t_r)).</para>
/// <para>m mass of the puller in kg, P the most it can impose in N, k stiffness in N/m, v speed at the start of slack s. Massless line, rigid anchor, no loss. Damping lowers a peak by 19 % at the most and break-out by a few per cent: neither is a credit.</para>
/// <para>Take the stiff end of k for a peak. Source: energy balance and proof (derived). No measured record of a heavy farm snatch is published: the model is checked against closed forms only.</para>
/// </remarks>
public static class TakeUp
{
    /// <summary>Gives the peak on a held anchor.</summary>
    /// <param name="line">The line; its own slack is the slack.</param>
    /// <param name="pullerMass">Mass of the puller, with the equivalent mass of what rotates where wheels cannot slip, 1 kg to 1,000 t.</param>
    /// <param name="pull">Pull that goes on, 0 to 5,000 kN.</param>
    /// <param name="speed">Speed at the start of the slack, 0 to 60 km/h.</param>
    /// <returns>The peak.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TakeUpPeak PeakHeld(LineAssembly line, Mass pullerMass, Force pull, Speed speed)
    {
        Guard.NotNull(line, nameof(line));
        double m = PullerMass(pullerMass), p = Pull(pull, 0), v = Guard.MetresPerSecond(speed, 0, 60, nameof(speed)), s = line.Slack.Meters;
        ref readonly var shape = ref line.Shape;
        var x = CurveTakeUpKernel.HeldStretch(shape, p, m, v, s);
        var time = double.NaN;
        if (shape.IsLinear && (p > 0 || v > 0)) time = TakeUpKernel.TimeToPeak(p, shape.LinearStiffness, m, TakeUpKernel.SpeedAtTaut(p, m, v, s));
        else if (shape.Kind == CurveKind.Power && p == 0 && v > 0) time = CurveTakeUpKernel.ContactFactor(shape.Exponent) * x / v / 2;
        return Make(LineLoadRule.HeldAnchor, shape, x, time, LinesSources.HeldAnchor);
    }

    /// <summary>Gives the peak in a locked gear, whatever the slack.</summary>
    /// <param name="line">The line.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Most that its wheels can put on the ground, 0 to 5,000 kN.</param>
    /// <param name="theoreticalSpeed">Theoretical speed of the gear at high idle, 0.05 to 60 km/h; an anchor that rolls away adds its own speed.</param>
    /// <param name="conditions">The declaration that the rule may be claimed.</param>
    /// <returns>The peak.</returns>
    /// <exception cref="ArgumentNullException">Line or conditions are null.</exception>
    /// <exception cref="ArgumentException">A condition is not met: the message names it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TakeUpPeak PeakLockedGear(LineAssembly line, Mass pullerMass, Force pull, Speed theoreticalSpeed, LockedGearConditions conditions)
    {
        Guard.NotNull(line, nameof(line));
        ref readonly var shape = ref line.Shape;
        double m = PullerMass(pullerMass), p = Pull(pull, 0), v = Guard.MetresPerSecond(theoreticalSpeed, 0.05, 60, nameof(theoreticalSpeed));
        var notMet = Guard.NotNull(conditions, nameof(conditions)).NotMet(CurveKernel.GreatestSlope(shape));
        if (notMet.Count > 0) throw new ArgumentException("conditions must all be met for the locked-gear rule: " + string.Join(", ", notMet) + ".", nameof(conditions));
        return Make(LineLoadRule.LockedGear, shape, CurveTakeUpKernel.LockedGearStretch(shape, p, m, v), double.NaN, LinesSources.LockedGear);
    }

    /// <summary>Gives the envelope of the peak when the throttle is raised evenly on a taut line at rest, wheels not slipping. Take the soft end of the line: the longest period counts.</summary>
    /// <param name="line">The line at its soft end; linear, without slack.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Pull that is reached, 0.001 to 5,000 kN.</param>
    /// <param name="rise">Time over which it is raised, 0.01 to 600 s.</param>
    /// <returns>The peak.</returns>
    /// <exception cref="ArgumentException">The line is not linear or hangs slack.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TakeUpPeak PeakThrottle(LineAssembly line, Mass pullerMass, Force pull, Duration rise)
    {
        Guard.NotNull(line, nameof(line));
        ref readonly var shape = ref line.Shape;
        if (!shape.IsLinear) throw new ArgumentException("line must be linear for the throttle envelope; simulate it instead.", nameof(line));
        if (line.Slack.Meters > 0) throw new ArgumentException("line must be taut for the throttle envelope; it has " + Text.With(line.Slack.Meters, "m") + " of slack.", nameof(line));
        var f = TakeUpKernel.ThrottlePeak(Pull(pull, 0.001), shape.LinearStiffness, PullerMass(pullerMass), Guard.Seconds(rise, 0.01, 600, nameof(rise)));
        return Make(LineLoadRule.RaisedThrottle, shape, f / shape.LinearStiffness, double.NaN, LinesSources.Throttle);
    }

    /// <summary>Gives the natural period of the puller on a linear line, 2 pi sqrt(m/k): against it the time over which a throttle is raised is measured (<see cref="RaisedForce"/>). The soft end of the line has the longest.</summary>
    /// <param name="line">The line; linear.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="casualtyMass">Mass of a casualty that rolls free, 1 kg to 1,000 t; null where it is held. Both then swing against each other, faster: m = m1 m2/(m1 + m2).</param>
    /// <returns>The period.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentException">The line is not linear.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass is outside its range.</exception>
    public static Duration NaturalPeriod(LineAssembly line, Mass pullerMass, Mass? casualtyMass = null)
    {
        double k = LinearStiffness(line), m = PullerMass(pullerMass);
        return Duration.FromSeconds(TakeUpKernel.Period(k, casualtyMass is { } second ? TakeUpKernel.ReducedMass(m, Guard.Kilograms(second, 0.001, 1000, nameof(casualtyMass))) : m));
    }

    /// <summary>Gives the time in which the slack is run through, 2 s/(v0 + v1).</summary>
    /// <param name="line">The line; its own slack is the slack.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Pull that goes on, 0 to 5,000 kN.</param>
    /// <param name="speed">Speed at the start of the slack, 0 to 60 km/h.</param>
    /// <returns>The time; null where neither pull nor speed ever takes the slack up.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Duration? TimeToTaut(LineAssembly line, Mass pullerMass, Force pull, Speed speed)
    {
        double s = Guard.NotNull(line, nameof(line)).Slack.Meters, m = PullerMass(pullerMass), p = Pull(pull, 0), v = Guard.MetresPerSecond(speed, 0, 60, nameof(speed));
        return s > 0 && p == 0 && v == 0 ? null : Duration.FromSeconds(TakeUpKernel.TimeToTaut(p, m, v, s));
    }

    /// <summary>Gives the step of tension that runs along a taut line whose end is moved at a speed all at once, Z v: there before the line as a whole has stretched.</summary>
    /// <param name="segment">The line; linear.</param>
    /// <param name="speed">Speed of its end, 0 to 60 km/h.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="segment"/> is null.</exception>
    /// <exception cref="ArgumentException">The line is not linear.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range.</exception>
    public static Force ImpactStep(LineSegment segment, Speed speed)
    {
        if (!Guard.NotNull(segment, nameof(segment)).Curve.Shape.IsLinear) throw new ArgumentException("segment must be linear: a wave on another curve has no single impedance.", nameof(segment));
        return Force.FromNewtons(TakeUpKernel.ImpactStep(segment.Impedance, Guard.MetresPerSecond(speed, 0, 60, nameof(speed))));
    }

    /// <summary>Gives the highest speed at the start of the slack that keeps the held-anchor peak under a limit.</summary>
    /// <param name="line">The line; its own slack is the slack.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Pull that goes on, 0 to 5,000 kN.</param>
    /// <param name="limit">Limit on the force, 0.1 to 20,000 kN and within the table of a tabulated line.</param>
    /// <returns>The speed, or the statement that none exists: from rest already the peak passes the limit. On a taut linear line that is so whenever the limit is below twice the pull.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SpeedLimit HighestSpeedHeld(LineAssembly line, Mass pullerMass, Force pull, Force limit)
    {
        double f = Limit(line, limit), p = Pull(pull, 0), m = PullerMass(pullerMass), s = line.Slack.Meters;
        ref readonly var shape = ref line.Shape;
        var rest = p == 0 ? 0 : CurveTakeUpKernel.HeldStretch(shape, p, m, 0, s);
        var v2 = CurveTakeUpKernel.HeldSpeedSquared(shape, f, p, m, s);
        return new SpeedLimit(LineLoadRule.HeldAnchor, f, p, double.IsNaN(rest) ? shape.EndForce : CurveKernel.Force(shape, rest), v2 < 0 ? double.NaN : Math.Sqrt(v2));
    }

    /// <summary>Gives the highest gear speed that keeps the locked-gear peak under a limit, whatever the slack.</summary>
    /// <param name="line">The line.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Most that its wheels can put on the ground, 0 to 5,000 kN.</param>
    /// <param name="limit">Limit on the force, 0.1 to 20,000 kN and within the table of a tabulated line.</param>
    /// <returns>The speed, or the statement that none exists: the limit is below the pull.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SpeedLimit HighestSpeedLockedGear(LineAssembly line, Mass pullerMass, Force pull, Force limit)
    {
        double f = Limit(line, limit), p = Pull(pull, 0), m = PullerMass(pullerMass);
        ref readonly var shape = ref line.Shape;
        var v2 = CurveTakeUpKernel.GearSpeedSquared(shape, f, p, m);
        return new SpeedLimit(LineLoadRule.LockedGear, f, p, p, v2 < 0 ? double.NaN : Math.Sqrt(v2));
    }

    /// <summary>Gives the equivalent mass of rotating parts, to be added to the puller where its wheels cannot slip.</summary>
    /// <param name="momentOfInertia">Moment of inertia of engine and driveline at the engine, 0.001 to 1,000 kg m2.</param>
    /// <param name="engineSpeed">Engine speed, 100 to 10,000 rpm.</param>
    /// <param name="roadSpeed">Road speed of the gear at that engine speed, 0.05 to 60 km/h.</param>
    /// <returns>J i^2/r^2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Mass RotatingMass(MassMomentOfInertia momentOfInertia, RotationalSpeed engineSpeed, Speed roadSpeed) => Mass.FromKilograms(RotatingKernel.EquivalentMass(
        Guard.Range(momentOfInertia.KilogramSquareMeters, 0.001, 1000, "kg m2", nameof(momentOfInertia)),
        Guard.Range(engineSpeed.RevolutionsPerMinute, 100, 10000, "rpm", nameof(engineSpeed)) * Math.PI / 30,
        Guard.MetresPerSecond(roadSpeed, 0.05, 60, nameof(roadSpeed))));

    /// <summary>Follows a take-up in time: line taut or slack, casualty stuck or sliding, parts that let go.</summary>
    /// <param name="take">The take-up.</param>
    /// <param name="cancellation">Stops it between two steps.</param>
    /// <returns>Summary, events and time history.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="take"/> is null.</exception>
    /// <exception cref="SolverException">The step length fell under its least or too many steps were needed.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static TakeUpSimulation Simulate(TakeUpCase take, CancellationToken cancellation = default) => TakeUpSimulation.Run(Guard.NotNull(take, nameof(take)), cancellation);

    /// <summary>Works out the held-anchor peak of a linear line.</summary>
    /// <param name="line">The line; linear.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Pull that goes on, 0 to 5,000 kN.</param>
    /// <param name="speed">Speed at the start of the slack, 0 to 60 km/h.</param>
    /// <returns>The worked steps; the last is the peak.</returns>
    /// <exception cref="ArgumentException">The line is not linear.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Working ExplainHeld(LineAssembly line, Mass pullerMass, Force pull, Speed speed)
    {
        var k = LinearStiffness(line);
        var peak = PeakHeld(line, pullerMass, pull, speed);
        string p = Text.Number(pull.Newtons / 1000), ks = Text.Number(k / 1000), m = Text.Number(pullerMass.Kilograms / 1000), v = Text.Number(speed.MetersPerSecond), s = Text.Number(line.Slack.Meters);
        return new WorkingBuilder("Take-up on a held anchor")
            .Step("k", "stiffness of the line", "1/k = sum of 1/k_i", line.ToString(), ks + " kN/m", line.Segments[0].Curve.Source)
            .Step("F", "peak", "P + sqrt(P^2 + 2 k P s + k m v^2)", p + " + sqrt(" + p + "^2 + 2 x " + ks + " x " + p + " x " + s + " + " + ks + " x " + m + " x " + v + "^2)", Text.Kilonewtons(peak.Newtons), LinesSources.HeldAnchor)
            .Build();
    }

    private static double PullerMass(Mass mass) => Guard.Kilograms(mass, 0.001, 1000, "pullerMass");

    private static double Pull(Force pull, double least) => Guard.Newtons(pull, least, 5000, nameof(pull));

    private static double Limit(LineAssembly line, Force limit) =>
        Guard.Newtons(limit, 0.1, Guard.NotNull(line, nameof(line)).Shape.Kind == CurveKind.Power ? 20000 : line.Shape.EndForce / 1000, nameof(limit));

    private static double LinearStiffness(LineAssembly line) =>
        Guard.NotNull(line, nameof(line)).Shape.IsLinear ? line.Shape.LinearStiffness : throw new ArgumentException("line must be linear.", nameof(line));

    private static TakeUpPeak Make(LineLoadRule rule, in CurveShape shape, double x, double time, Source source) => double.IsNaN(x)
        ? new TakeUpPeak(rule, double.NaN, double.NaN, double.NaN, shape.EndForce, double.NaN, source)
        : new TakeUpPeak(rule, CurveKernel.Force(shape, x), x, CurveKernel.Energy(shape, x), shape.EndForce, time, source);
}
