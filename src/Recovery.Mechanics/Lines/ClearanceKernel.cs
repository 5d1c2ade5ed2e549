using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Distance between a straight line and what it passes, as the casualty rises and comes on, once. SI.</summary>
/// <remarks>Of the motion a share t from 0 to 1 is done. Every distance here is a polynomial of second degree in t at most, so three of its values give all of it: worst place and first contact are exact and no sampling can miss them. Geometry (derived); no constant of its own.</remarks>
internal static class ClearanceKernel
{
    /// <summary>Height of the line at x from the attachment, straight to the drawbar at distance D.</summary>
    public static double LineHeight(double attachmentHeight, double drawbarHeight, double distance, double x) => attachmentHeight + ((drawbarHeight - attachmentHeight) * x / distance);

    /// <summary>Rise of a place x behind the front axle on a body whose axles, L apart, rise by h and r: h (1 - x/L) + r x/L.</summary>
    public static double BodyRise(double frontRise, double rearRise, double wheelbase, double x) => (frontRise * (1 - (x / wheelbase))) + (rearRise * x / wheelbase);

    /// <summary>Least value from t = 0 to 1 of the parabola through three values at 0, 1/2 and 1, and where.</summary>
    public static double Least(double atStart, double halfway, double atEnd, out double t)
    {
        double c2 = 2 * (atStart + atEnd - (2 * halfway)), c1 = atEnd - atStart - c2;
        t = atStart <= atEnd ? 0 : 1;
        var least = Math.Min(atStart, atEnd);
        if (c2 <= 0) return least;
        var turn = -c1 / (2 * c2);
        if (!(turn > 0 && turn < 1)) return least;
        t = turn;
        return atStart + (turn * (c1 + (turn * c2)));
    }

    /// <summary>First t from 0 to 1 at which the same parabola falls to zero; not a number where it stays above.</summary>
    public static double FirstContact(double atStart, double halfway, double atEnd)
    {
        if (atStart <= 0) return 0;
        if (Least(atStart, halfway, atEnd, out _) > 0) return double.NaN;
        double c2 = 2 * (atStart + atEnd - (2 * halfway)), c1 = atEnd - atStart - c2;
        var d = Math.Max(0, (c1 * c1) - (4 * c2 * atStart));
        // It falls through zero first where c1 - sqrt(d) divides: the stable form of the smaller positive root.
        var t = c1 <= 0 ? 2 * atStart / (-c1 + Math.Sqrt(d)) : (-c1 - Math.Sqrt(d)) / (2 * c2);
        return Math.Min(1, Math.Max(0, t));
    }
}
