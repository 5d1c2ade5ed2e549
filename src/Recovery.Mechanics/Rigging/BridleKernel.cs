using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Statics of a bridle, once. SI in, SI out; angles in radians.</summary>
internal static class BridleKernel
{
    /// <summary>Friction of webbing on webbing, low end.</summary>
    public const double FrictionLow = 0.15;

    /// <summary>Friction of webbing on webbing, high end.</summary>
    public const double FrictionHigh = 0.30;

    /// <summary>Included angle of a running bridle in line with the pull, 2 asin(w/L).</summary>
    public static double IncludedAngle(double spacing, double length) => 2 * Math.Asin(spacing / length);

    /// <summary>Included angle of a running bridle whose pull leans by delta from the middle: the eye sits on the ellipse with the anchors as foci.</summary>
    public static double IncludedAngle(double spacing, double length, double lean)
    {
        Eye(spacing, length, lean, out _, out _, out var longer, out var shorter);
        return AngleBetween(spacing, longer, shorter);
    }

    /// <summary>Angle between two legs of given length whose anchors are a spacing apart, by the cosine rule.</summary>
    public static double AngleBetween(double spacing, double first, double second) => Math.Acos(((first * first) + (second * second) - (spacing * spacing)) / (2 * first * second));

    /// <summary>Where the eye sits: x along the anchors towards the side the pull leans to, y towards the pull, from the middle between the anchors; the first leg is that to the anchor the pull leans away from.</summary>
    public static void Eye(double spacing, double length, double lean, out double x, out double y, out double first, out double second)
    {
        double a = length / 2, b = Math.Sqrt((length * length) - (spacing * spacing)) / 2, c = spacing / 2;
        double s = Math.Sin(lean), k = Math.Cos(lean), n = Math.Sqrt((a * a * s * s) + (b * b * k * k));
        x = a * a * s / n;
        y = b * b * k / n;
        first = a + (c / a * x);
        second = a - (c / a * x);
    }

    /// <summary>Share of the pull in each leg without friction, 1/(2 cos(theta/2)).</summary>
    public static double LegShare(double includedAngle) => 1 / (2 * Math.Cos(includedAngle / 2));

    /// <summary>Share of the pull in the harder leg at the friction limit, r/sqrt(r^2 + 2 r cos(theta) + 1) with r = exp(mu (pi - theta)).</summary>
    public static double LegShareHigh(double includedAngle, double friction)
    {
        var r = Math.Exp(friction * (Math.PI - includedAngle));
        return r / Math.Sqrt((r * r) + (2 * r * Math.Cos(includedAngle)) + 1);
    }

    /// <summary>Share of the pull in the easier leg at the friction limit, 1/sqrt(r^2 + 2 r cos(theta) + 1).</summary>
    public static double LegShareLow(double includedAngle, double friction) => LegShareHigh(includedAngle, friction) * Math.Exp(-friction * (Math.PI - includedAngle));

    /// <summary>Friction coefficient that holds a ratio of tensions at an included angle: ln(ratio)/(pi - theta).</summary>
    public static double FrictionOf(double ratio, double includedAngle) => Math.Log(ratio) / (Math.PI - includedAngle);

    /// <summary>Inward force at each anchor over the pull, tan(theta/2)/2.</summary>
    public static double Inward(double includedAngle) => Math.Tan(includedAngle / 2) / 2;

    /// <summary>Inward part of a leg force at the anchor that the pull leans away from: T (x + c)/r1.</summary>
    public static double InwardFirst(double legForce, double x, double spacing, double first) => legForce * (x + (spacing / 2)) / first;

    /// <summary>Inward part of a leg force at the other anchor, T (c - x)/r2: negative, outward, where the eye has passed it.</summary>
    public static double InwardSecond(double legForce, double x, double spacing, double second) => legForce * ((spacing / 2) - x) / second;

    /// <summary>Length of strap for a wanted included angle, pull in the middle: w/sin(theta/2).</summary>
    public static double LengthFor(double spacing, double includedAngle) => spacing / Math.Sin(includedAngle / 2);

    /// <summary>Direction of a fixed leg from its anchor, at a place along the anchors, to the ring: from the middle line, towards the second anchor positive.</summary>
    public static double FixedDirection(double spacing, double first, double second, double anchor)
    {
        double x = ((first * first) - (second * second)) / (2 * spacing), y = Math.Sqrt((first * first) - ((x + (spacing / 2)) * (x + (spacing / 2))));
        return Math.Atan2(x - anchor, y);
    }

    /// <summary>Force in the first of two fixed legs at phi1 and phi2 from the line of pull, one each side: P sin(phi2)/sin(phi1 + phi2). A pull outside the legs hangs on the nearer one alone.</summary>
    public static double FixedFirst(double pull, double first, double second) =>
        first <= 0 ? pull : second <= 0 ? 0 : pull * Math.Sin(second) / Math.Sin(first + second);
}
