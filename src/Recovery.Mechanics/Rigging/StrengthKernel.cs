using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Deratings, once. SI in, SI out; angles in radians.</summary>
/// <remarks>Sources: <see cref="RiggingSources.WetNylon"/>, <see cref="RiggingSources.Choker"/>, <see cref="RiggingSources.ChokeAngle"/>, <see cref="RiggingSources.ShackleAxis"/>, <see cref="RiggingSources.Bight"/>.</remarks>
internal static class StrengthKernel
{
    /// <summary>Wet nylon.</summary>
    public const double WetNylon = 0.85;

    /// <summary>Choker on the straight rating, web and roundsling.</summary>
    public const double Choker = 0.80;

    /// <summary>Strap on strap, from memory.</summary>
    public const double StrapOnStrap = 0.5;

    private const double Degree = Math.PI / 180;

    /// <summary>What may be carried under a steady load: the lesser of the derated working load limit and the derated breaking strength over the design factor, each where known; not a number where neither is.</summary>
    public static double Allowable(double working, double breaking, double designFactor)
    {
        var allowed = breaking / designFactor;
        return double.IsNaN(allowed) || working < allowed ? working : allowed;
    }

    /// <summary>Share of the choker rating by angle of choke: above 120 deg 1, from 90 0.87, from 60 0.74, from 30 0.62, below 0.49. No interpolation; the lower bin at every edge.</summary>
    public static double ChokeAngle(double radians)
    {
        // Edges are whole degrees; a value within rounding of an edge belongs to it.
        var degrees = Math.Round(radians / Degree, 9);
        return degrees > 120 ? 1 : degrees >= 90 ? 0.87 : degrees >= 60 ? 0.74 : degrees >= 30 ? 0.62 : 0.49;
    }

    /// <summary>Share of a shackle's working load limit by the angle off its axis: to 5 deg 1, to 45 0.70, to 90 0.50; beyond not permitted (0).</summary>
    public static double OffAxis(double radians)
    {
        var degrees = Math.Round(radians / Degree, 9);
        return degrees <= 5 ? 1 : degrees <= 45 ? 0.70 : degrees <= 90 ? 0.50 : 0;
    }
}
