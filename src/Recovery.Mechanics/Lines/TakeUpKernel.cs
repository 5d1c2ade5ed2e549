using System;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Lines;

/// <summary>Peak force when a linear line is taken up, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="LinesSources.Spring"/>, <see cref="LinesSources.HeldAnchor"/>, <see cref="LinesSources.LockedGear"/>.</remarks>
internal static class TakeUpKernel
{
    /// <summary>Held anchor: F = P + sqrt(P^2 + 2 k P s + k m v^2).</summary>
    public static double HeldPeak(double pullNewtons, double stiffness, double massKilograms, double speed, double slackMetres) =>
        pullNewtons + Math.Sqrt((pullNewtons * pullNewtons) + (2 * stiffness * pullNewtons * slackMetres) + (stiffness * massKilograms * speed * speed));

    /// <summary>Locked gear: F = P + v_t sqrt(k m), whatever the slack; an anchor that rolls away adds its speed to v_t.</summary>
    public static double LockedGearPeak(double pullNewtons, double stiffness, double massKilograms, double theoreticalSpeed) =>
        RotatingKernel.Peak(pullNewtons, massKilograms, theoreticalSpeed, stiffness);

    /// <summary>Throttle raised over t_r on a taut line at rest: P min(2, 1 + T/(pi t_r)).</summary>
    public static double ThrottlePeak(double pullNewtons, double stiffness, double massKilograms, double riseSeconds) =>
        pullNewtons * ThrottleEnvelope(riseSeconds / Period(stiffness, massKilograms));

    /// <summary>Envelope over the rise in periods: min(2, 1 + 1/(pi t_r/T)).</summary>
    public static double ThrottleEnvelope(double riseInPeriods) => Math.Min(2, 1 + (1 / (Math.PI * riseInPeriods)));

    /// <summary>The same for one known period: 1 + |sin(pi t_r/T)|/(pi t_r/T). Its zeros are no credit.</summary>
    public static double ThrottleExact(double riseInPeriods)
    {
        var u = Math.PI * riseInPeriods;
        return u < 1e-9 ? 2 : 1 + (Math.Abs(Math.Sin(u)) / u);
    }

    /// <summary>Throttle in n equal steps, the line at rest before each: 1 + 1/n.</summary>
    public static double ThrottleSteps(int steps) => 1 + (1.0 / steps);

    /// <summary>Two equal steps a time apart, in periods: 1 + |cos(pi t/T)|.</summary>
    public static double TwoStepsApart(double apartInPeriods) => 1 + Math.Abs(Math.Cos(Math.PI * apartInPeriods));

    /// <summary>Natural period 2 pi sqrt(m/k).</summary>
    public static double Period(double stiffness, double massKilograms) => 2 * Math.PI * Math.Sqrt(massKilograms / stiffness);

    /// <summary>m1 m2/(m1 + m2).</summary>
    public static double ReducedMass(double first, double second) => first * second / (first + second);

    /// <summary>Time from first taut to the peak, (pi - atan2(v/w, P/k))/w; the line goes slack at twice that.</summary>
    public static double TimeToPeak(double pullNewtons, double stiffness, double massKilograms, double speed)
    {
        var w = Math.Sqrt(stiffness / massKilograms);
        return (Math.PI - Math.Atan2(speed / w, pullNewtons / stiffness)) / w;
    }

    /// <summary>Time through the slack, (sqrt(v0^2 + 2 P s/m) - v0) m/P; s/v0 without pull.</summary>
    public static double TimeToTaut(double pullNewtons, double massKilograms, double speed, double slackMetres)
    {
        if (slackMetres == 0) return 0;
        // 2 s/(v0 + v1) is the same and loses no digits where the pull adds little.
        return 2 * slackMetres / (speed + SpeedAtTaut(pullNewtons, massKilograms, speed, slackMetres));
    }

    /// <summary>Speed when the line comes taut, sqrt(v0^2 + 2 P s/m).</summary>
    public static double SpeedAtTaut(double pullNewtons, double massKilograms, double speed, double slackMetres) =>
        Math.Sqrt((speed * speed) + (2 * pullNewtons * slackMetres / massKilograms));

    /// <summary>Square of the highest speed at the start of the slack that keeps the held-anchor peak under a limit, (F (F - 2P)/k - 2 P s)/m; negative where none does. The difference is taken before it can lose digits: from twice the pull on exactly.</summary>
    public static double HeldSpeedSquared(double limitNewtons, double pullNewtons, double stiffness, double massKilograms, double slackMetres) =>
        ((limitNewtons * (limitNewtons - (2 * pullNewtons)) / stiffness) - (2 * pullNewtons * slackMetres)) / massKilograms;

    /// <summary>Highest speed that keeps the held-anchor peak on a taut line under a limit, sqrt(F (F - 2P)/(k m)); not a number where none does.</summary>
    public static double HeldSpeedLimit(double limitNewtons, double pullNewtons, double stiffness, double massKilograms) =>
        Math.Sqrt(HeldSpeedSquared(limitNewtons, pullNewtons, stiffness, massKilograms, 0));

    /// <summary>Highest gear speed that keeps the locked-gear peak under a limit, (F - P)/sqrt(k m); negative where none does.</summary>
    public static double GearSpeedLimit(double limitNewtons, double pullNewtons, double stiffness, double massKilograms) =>
        (limitNewtons - pullNewtons) / Math.Sqrt(stiffness * massKilograms);

    /// <summary>Tension step when a taut line is struck at speed, Z v.</summary>
    public static double ImpactStep(double impedance, double speed) => impedance * speed;
}
