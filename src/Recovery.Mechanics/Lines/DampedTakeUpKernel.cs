using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Take-up of a spring with a dashpot beside it, no pull, once. zeta = c/(2 sqrt(k m)). For comparison only: no credit is given for damping.</summary>
/// <remarks>Sources: <see cref="LinesSources.HeldAnchor"/>.</remarks>
internal static class DampedTakeUpKernel
{
    /// <summary>Greatest force over v sqrt(k m).</summary>
    public static double PeakRatio(double zeta)
    {
        if (zeta <= 0) return 1;
        if (zeta >= 0.5) return 2 * zeta;
        var q = Math.Sqrt(1 - (zeta * zeta));
        var t = Math.Atan2(q * (1 - (4 * zeta * zeta)), zeta * (3 - (4 * zeta * zeta))) / q;
        return Force(zeta, q, t);
    }

    /// <summary>Speed when the force is back at zero over the approach speed, zeta below 1.</summary>
    public static double ReboundRatio(double zeta)
    {
        if (zeta <= 0) return 1;
        var q = Math.Sqrt(1 - (zeta * zeta));
        // Force is zero where tan(qT) = -2 z q/(1 - 2 z^2), first time after the peak.
        var phase = Math.Atan2(2 * zeta * q, -(1 - (2 * zeta * zeta)));
        var t = phase / q;
        return Math.Exp(-zeta * t) * ((zeta / q * Math.Sin(phase)) - Math.Cos(phase));
    }

    private static double Force(double zeta, double q, double t) =>
        Math.Exp(-zeta * t) * (((1 - (2 * zeta * zeta)) / q * Math.Sin(q * t)) + (2 * zeta * Math.Cos(q * t)));
}
