using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Peak force when a line is taken up against a held anchor, once. SI in, SI out.</summary>
internal static class TakeUpKernel
{
    /// <summary>Held anchor: F = P + sqrt(P^2 + 2 k P s + k m v^2).</summary>
    public static double HeldPeak(double pullNewtons, double stiffness, double massKilograms, double speed, double slackMetres) =>
        pullNewtons + Math.Sqrt((pullNewtons * pullNewtons) + (2 * stiffness * pullNewtons * slackMetres) + (stiffness * massKilograms * speed * speed));

    /// <summary>Locked gear: F = P + v_t sqrt(k m), whatever the slack.</summary>
    public static double LockedGearPeak(double pullNewtons, double stiffness, double massKilograms, double theoreticalSpeed) =>
        pullNewtons + (theoreticalSpeed * Math.Sqrt(stiffness * massKilograms));

    /// <summary>Throttle raised over t_r on a taut line at rest: P min(2, 1 + T/(pi t_r)).</summary>
    public static double ThrottlePeak(double pullNewtons, double stiffness, double massKilograms, double riseSeconds) =>
        pullNewtons * Math.Min(2, 1 + (Period(stiffness, massKilograms) / (Math.PI * riseSeconds)));

    /// <summary>Natural period 2 pi sqrt(m/k).</summary>
    public static double Period(double stiffness, double massKilograms) => 2 * Math.PI * Math.Sqrt(massKilograms / stiffness);

    /// <summary>Time from first taut to the peak, (pi - atan2(v/w, P/k))/w.</summary>
    public static double TimeToPeak(double pullNewtons, double stiffness, double massKilograms, double speed)
    {
        var w = Math.Sqrt(stiffness / massKilograms);
        return (Math.PI - Math.Atan2(speed / w, pullNewtons / stiffness)) / w;
    }

    /// <summary>Highest speed that keeps the held-anchor peak under a limit, sqrt(F (F - 2P)/(k m)); not a number where none does.</summary>
    public static double HeldSpeedLimit(double limitNewtons, double pullNewtons, double stiffness, double massKilograms) =>
        Math.Sqrt(limitNewtons * (limitNewtons - (2 * pullNewtons)) / (stiffness * massKilograms));

    /// <summary>Highest gear speed that keeps the locked-gear peak under a limit, (F - P)/sqrt(k m); negative where none does.</summary>
    public static double GearSpeedLimit(double limitNewtons, double pullNewtons, double stiffness, double massKilograms) =>
        (limitNewtons - pullNewtons) / Math.Sqrt(stiffness * massKilograms);
}
