using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Tension, stretch and energy of a load-elongation curve, once. SI. The caller keeps tables within their ends; a power law goes on past its break, so that a peak above break can be shown as such.</summary>
/// <remarks>Arithmetic on the curve of the caller (<see cref="LinesSources.Spring"/>, derived).</remarks>
internal static class CurveKernel
{
    /// <summary>Tension at a stretch; none where there is none.</summary>
    public static double Force(in CurveShape c, double x)
    {
        if (!(x > 0)) return 0;
        switch (c.Kind)
        {
            case CurveKind.Power:
                return c.Exponent == 1 ? c.EndForce * x / c.EndStretch : c.EndForce * Math.Pow(x / c.EndStretch, c.Exponent);
            case CurveKind.Table:
                var i = Segment(c.Stretches!, x);
                return c.Forces![i] + ((x - c.Stretches![i]) * (c.Forces[i + 1] - c.Forces[i]) / (c.Stretches[i + 1] - c.Stretches[i]));
            default:
                return SeriesForce(c, x);
        }
    }

    /// <summary>Stretch at a tension.</summary>
    public static double Stretch(in CurveShape c, double f)
    {
        if (!(f > 0)) return 0;
        switch (c.Kind)
        {
            case CurveKind.Power:
                return c.Exponent == 1 ? f * c.EndStretch / c.EndForce : c.EndStretch * Math.Pow(f / c.EndForce, 1 / c.Exponent);
            case CurveKind.Table:
                var i = Segment(c.Forces!, f);
                return c.Stretches![i] + ((f - c.Forces![i]) * (c.Stretches[i + 1] - c.Stretches[i]) / (c.Forces[i + 1] - c.Forces[i]));
            default:
                double sum = 0;
                foreach (var part in c.Parts!) sum += Stretch(part, f);
                return sum;
        }
    }

    /// <summary>Energy stored up to a stretch: the area under the loading curve.</summary>
    public static double Energy(in CurveShape c, double x)
    {
        if (!(x > 0)) return 0;
        switch (c.Kind)
        {
            case CurveKind.Power:
                return Force(c, x) * x / (c.Exponent + 1);
            case CurveKind.Table:
                var i = Segment(c.Stretches!, x);
                return c.Energies![i] + ((x - c.Stretches![i]) * (c.Forces![i] + Force(c, x)) / 2);
            default:
                double f = SeriesForce(c, x), sum = 0;
                foreach (var part in c.Parts!) sum += Energy(part, Stretch(part, f));
                return sum;
        }
    }

    /// <summary>Slope dF/dx, N/m.</summary>
    public static double Slope(in CurveShape c, double x)
    {
        switch (c.Kind)
        {
            case CurveKind.Power:
                return c.Exponent == 1 ? c.LinearStiffness : x > 0 ? c.Exponent * Force(c, x) / x : 0;
            case CurveKind.Table:
                var i = Segment(c.Stretches!, Math.Max(0, x));
                return (c.Forces![i + 1] - c.Forces[i]) / (c.Stretches![i + 1] - c.Stretches[i]);
            default:
                var f = SeriesForce(c, x);
                double compliance = 0;
                foreach (var part in c.Parts!)
                {
                    var slope = Slope(part, Stretch(part, f));
                    if (slope > 0) compliance += 1 / slope;
                    else return 0;
                }

                return 1 / compliance;
        }
    }

    /// <summary>Greatest slope up to the end of the curve.</summary>
    public static double GreatestSlope(in CurveShape c)
    {
        if (c.Kind != CurveKind.Table) return c.Kind == CurveKind.Power ? c.Exponent * c.EndForce / c.EndStretch : Slope(c, c.EndStretch);
        double greatest = 0;
        for (var i = 1; i < c.Forces!.Length; i++) greatest = Math.Max(greatest, (c.Forces[i] - c.Forces[i - 1]) / (c.Stretches![i] - c.Stretches[i - 1]));
        return greatest;
    }

    private static int Segment(double[] points, double value)
    {
        int low = 0, high = points.Length - 1;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (points[middle] <= value) low = middle;
            else high = middle;
        }

        return low;
    }

    /// <summary>Slope of the stretch over the tension, m/N.</summary>
    private static double StretchSlope(in CurveShape c, double f, double x)
    {
        switch (c.Kind)
        {
            case CurveKind.Power:
                return x / (c.Exponent * f);
            case CurveKind.Table:
                var i = Segment(c.Forces!, f);
                return (c.Stretches![i + 1] - c.Stretches[i]) / (c.Forces![i + 1] - c.Forces[i]);
            default:
                double sum = 0;
                foreach (var part in c.Parts!) sum += StretchSlope(part, f, Stretch(part, f));
                return sum;
        }
    }

    /// <summary>Tension at which the stretches of the parts add up: Newton in a bracket, halved where a step would leave it.</summary>
    private static double SeriesForce(in CurveShape c, double x)
    {
        double low = 0, high = c.EndForce;
        // Only a power law goes on past its end.
        while (Stretch(c, high) < x) high *= 2;
        var f = high * Math.Min(1, x / c.EndStretch);
        for (var i = 0; i < 200 && high - low > 1e-15 * high; i++)
        {
            if (!(f > low && f < high)) f = (low + high) / 2;
            double stretch = 0, slope = 0;
            foreach (var part in c.Parts!)
            {
                var own = Stretch(part, f);
                stretch += own;
                slope += StretchSlope(part, f, own);
            }

            var residual = stretch - x;
            if (residual == 0) return f;
            if (residual < 0) low = f;
            else high = f;
            var next = f - (residual / slope);
            if (Math.Abs(next - f) <= 1e-13 * f) return next;
            f = i > 60 ? (low + high) / 2 : next;
        }

        return (low + high) / 2;
    }
}
