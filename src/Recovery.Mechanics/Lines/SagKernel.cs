using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Sag of a uniform line, once. SI; a = H/w with w the weight of a metre. No form takes the difference of two large numbers.</summary>
/// <remarks>Sources: <see cref="LinesSources.Catenary"/>.</remarks>
internal static class SagKernel
{
    /// <summary>Parabola at mid-span, w L^2/(8 H) = L^2/(8 a).</summary>
    public static double Parabola(double span, double a) => span * span / (8 * a);

    /// <summary>Catenary at mid-span, a (cosh(L/(2a)) - 1), written 2 a sinh^2(L/(4a)).</summary>
    public static double Catenary(double span, double a)
    {
        var s = Math.Sinh(span / (4 * a));
        return 2 * a * s * s;
    }

    /// <summary>Excess of the catenary over the parabola at mid-span: (sinh(u)/u)^2 - 1, u = L/(4a).</summary>
    public static double RelativeExcess(double span, double a)
    {
        var e = SinhExcess(span / (4 * a));
        return e * (2 + e);
    }

    /// <summary>Catenary at x below the chord, its far end dh higher than its near one.</summary>
    /// <remarks>With r = L/(2a), xi = 2x/L - 1, p = x/(2a), q = (L - x)/(2a), sinh(m) = dh/(2 a sinh(r)): drop = a sinh(m) (xi sinh(r) - sinh(xi r)) + 2 a cosh(m) sinh(p) sinh(q); the first bracket from sinh(y) - y.</remarks>
    public static double CatenaryAt(double span, double a, double heightDifference, double x)
    {
        double r = span / (2 * a), xi = (2 * x / span) - 1, sinhM = heightDifference / (2 * a * Math.Sinh(r));
        var skew = (xi * r * SinhExcess(r)) - (xi * r * SinhExcess(xi * r));
        return (a * sinhM * skew) + (2 * a * Math.Sqrt(1 + (sinhM * sinhM)) * Math.Sinh(x / (2 * a)) * Math.Sinh((span - x) / (2 * a)));
    }

    /// <summary>Length beyond the span of a parabola with mid sag s, 8 s^2/(3 L).</summary>
    public static double ParabolaSlack(double span, double sag) => 8 * sag * sag / (3 * span);

    /// <summary>Length beyond the span of a level catenary with u = L/(2a): L (sinh(u)/u - 1).</summary>
    public static double CatenarySlack(double span, double u) => span * SinhExcess(u);

    /// <summary>Sag over span of a level catenary with u = L/(2a): sinh^2(u/2)/u. Rises with u.</summary>
    public static double SagOverSpan(double u)
    {
        var s = Math.Sinh(u / 2);
        return u == 0 ? 0 : s * s / u;
    }

    /// <summary>sinh(y)/y - 1.</summary>
    public static double SinhExcess(double y)
    {
        if (Math.Abs(y) > 0.5) return (Math.Sinh(y) / y) - 1;
        var s = y * y;
        return s / 6 * (1 + (s / 20 * (1 + (s / 42 * (1 + (s / 72 * (1 + (s / 110 * (1 + (s / 156))))))))));
    }
}
