using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Nearest point of failure where two branches of a limit meet in an edge, on which the smooth iteration goes to and fro for ever.</summary>
/// <remarks>
/// Cutting planes: min |u|^2/2 under the tangent planes of the last points, s (g_k + grad g_k . (u - u_k)) at most 0 with s the sign of g at the medians; each minimum gives the next plane. On an edge the planes of both branches hold it. A plane of a curved branch made far off may hold it in a wrong place: such planes are given up and made again nearby, in steps that become smaller, until all that hold it are of its neighbourhood.
/// Source: Kelley's cutting planes and Hildreth's row action (from memory); the point found is held to be on the limit.
/// </remarks>
internal static class EdgeSearch
{
    // Numerical choices: planes kept, rounds, sweeps of the small quadratic programme, farthest point, step and limit that count as arrived (within the step of a slope, both branches mix in it).
    private const int Planes = 8, Rounds = 150, Sweeps = 400;
    private const double Furthest = 30, StepDone = 1e-5, OnLimit = 1e-5, Nearby = 1e-3, FirstReach = 0.2, Shrink = 0.25;

    /// <summary>Searches from a point; gives false where it does not settle on the limit.</summary>
    public static bool Find(LimitState limit, double[] from, double sign, out double[] u, out double residual, out int rounds)
    {
        var n = limit.Dimensions;
        u = (double[])from.Clone();
        double[] values = new double[n], moved = new double[n], next = new double[n];
        var planes = new List<Plane>(Planes);
        double scale = 0, reach = double.PositiveInfinity;
        residual = double.PositiveInfinity;
        for (rounds = 0; rounds < Rounds; rounds++)
        {
            var g = limit.At(u, values);
            var normal = new double[n];
            FirstOrderReliability.Gradient(limit, u, normal, moved, values);
            var size = FirstOrderReliability.Norm(normal);
            if (!(size > 0)) return false;
            scale = Math.Max(scale, size);
            var length = Math.Max(1, FirstOrderReliability.Norm(u));
            if (residual <= StepDone * length && Math.Abs(g) <= OnLimit * scale)
            {
                var (at, near) = (u, Nearby * length);
                if (planes.RemoveAll(p => p.Weight > 0 && Distance(p.At, at) > near) == 0) return true;
                reach = Shrink * Math.Min(reach, FirstReach * length);
            }

            for (var i = 0; i < n; i++) normal[i] *= sign / size;
            if (planes.Count == Planes) planes.RemoveAt(0);
            planes.Add(new Plane((double[])u.Clone(), normal, FirstOrderReliability.Dot(normal, u) - (sign * g / size)));
            Nearest(planes, next);
            if (!(FirstOrderReliability.Norm(next) <= Furthest)) return false;
            residual = Distance(next, u);
            var t = residual > reach ? reach / residual : 1;
            for (var i = 0; i < n; i++) u[i] += t * (next[i] - u[i]);
        }

        return false;
    }

    /// <summary>Point of smallest |u| with every normal . u at most its bound; normals are unit vectors.</summary>
    private static void Nearest(List<Plane> planes, double[] u)
    {
        Array.Clear(u, 0, u.Length);
        foreach (var plane in planes) plane.Weight = 0;
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            double most = 0;
            foreach (var plane in planes)
            {
                var change = Math.Max(-plane.Weight, FirstOrderReliability.Dot(plane.Normal, u) - plane.Bound);
                plane.Weight += change;
                for (var i = 0; i < u.Length; i++) u[i] -= change * plane.Normal[i];
                most = Math.Max(most, Math.Abs(change));
            }

            if (most < 1e-12) return;
        }
    }

    private static double Distance(double[] a, double[] b)
    {
        double square = 0;
        for (var i = 0; i < a.Length; i++) square += (a[i] - b[i]) * (a[i] - b[i]);
        return Math.Sqrt(square);
    }

    private sealed class Plane(double[] at, double[] normal, double bound)
    {
        public double[] At { get; } = at;

        public double[] Normal { get; } = normal;

        public double Bound { get; } = bound;

        public double Weight { get; set; }
    }
}
