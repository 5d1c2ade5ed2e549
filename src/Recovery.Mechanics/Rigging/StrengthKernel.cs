using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Deratings and shares, once. SI in, SI out; angles in radians.</summary>
internal static class StrengthKernel
{
    /// <summary>Wet nylon.</summary>
    public const double WetNylon = 0.85;

    /// <summary>Choker on the straight rating, web and roundsling.</summary>
    public const double Choker = 0.80;

    /// <summary>Strap on strap, from memory.</summary>
    public const double StrapOnStrap = 0.5;

    /// <summary>Friction of webbing on webbing, low end.</summary>
    public const double FrictionLow = 0.15;

    /// <summary>Friction of webbing on webbing, high end.</summary>
    public const double FrictionHigh = 0.30;

    private const double Degree = Math.PI / 180;

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

    /// <summary>Included angle of a running bridle in line with the pull, 2 asin(w/L).</summary>
    public static double IncludedAngle(double spacing, double length) => 2 * Math.Asin(spacing / length);

    /// <summary>Included angle of a running bridle whose pull leans by delta from the middle: the eye sits on the ellipse with the anchors as foci.</summary>
    public static double IncludedAngle(double spacing, double length, double lean)
    {
        double a = length / 2, b = Math.Sqrt((length * length) - (spacing * spacing)) / 2, c = spacing / 2;
        double s = Math.Sin(lean), k = Math.Cos(lean), n = Math.Sqrt((a * a * s * s) + (b * b * k * k));
        double x = a * a * s / n, r1 = a + (c / a * x), r2 = a - (c / a * x);
        return Math.Acos(((r1 * r1) + (r2 * r2) - (spacing * spacing)) / (2 * r1 * r2));
    }

    /// <summary>Share of the pull in each leg without friction, 1/(2 cos(theta/2)).</summary>
    public static double LegShare(double includedAngle) => 1 / (2 * Math.Cos(includedAngle / 2));

    /// <summary>Share of the pull in the harder leg at the friction limit, r/sqrt(r^2 + 2 r cos(theta) + 1) with r = exp(mu (pi - theta)).</summary>
    public static double LegShareHigh(double includedAngle, double friction)
    {
        var r = Math.Exp(friction * (Math.PI - includedAngle));
        return r / Math.Sqrt((r * r) + (2 * r * Math.Cos(includedAngle)) + 1);
    }

    /// <summary>Inward force at each anchor over the pull, tan(theta/2)/2.</summary>
    public static double Inward(double includedAngle) => Math.Tan(includedAngle / 2) / 2;
}
