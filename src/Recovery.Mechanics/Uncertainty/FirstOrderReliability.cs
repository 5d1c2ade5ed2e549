using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>First-order reliability: the point of smallest |u| at which a limit fails, in the space of standard normal numbers, by the damped Hasofer-Lind/Rackwitz-Fiessler iteration.</summary>
/// <remarks>
/// <para>u' = u + t d with d = ((grad g . u - g)/|grad g|^2) grad g - u; the step t is halved until the merit |u|^2/2 + c |g| falls enough (c above |u|/|grad g|). The plain step may cycle. beta = |u*| with the sign of g at the medians; P = Phi(-beta).</para>
/// <para>Every input is mapped by equal probability, x = F^-1(Phi(z)), so beta does not depend on how the limit is written. A mean-value index does, and is not offered.</para>
/// <para>P is exact only for a flat limit; a factor of two either way is common, so it always stands beside a sampled value (<see cref="ReliabilityCheck"/>). The point found is a nearest one locally: a limit with several branches may have a nearer one.</para>
/// <para>Where two branches of a limit meet in an edge and the nearest point lies on it, this goes to and fro for ever; cutting planes then find the point, and its distance is the index.</para>
/// <para>Source: Hasofer and Lind 1974, Rackwitz and Fiessler 1978, line search after Zhang and Der Kiureghian 1995 (from memory), held against published cases and SciPy.</para>
/// </remarks>
public static class FirstOrderReliability
{
    private const int MostSteps = 300;
    // Numerical choices: step of a slope, farthest point that is looked at, step that counts as arrived.
    private const double Step = 1e-4, Furthest = 30, Enough = 0.1;

    /// <summary>Finds the design point.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>Index, probability, design point and directions.</returns>
    /// <exception cref="ArgumentNullException">The limit is null.</exception>
    /// <exception cref="SolverException">No point of failure was found: the limit does not depend on its inputs, or the search did not settle.</exception>
    public static FirstOrderResult Of(LimitState limit)
    {
        Guard.NotNull(limit, nameof(limit));
        if (Find(limit, out var u, out var gradient, out var atMedians, out var residual, out var steps)) return new FirstOrderResult(limit, u, gradient, atMedians, residual, steps);
        throw Norm(gradient) > 0
            ? new SolverException("design point of " + limit.Name, 0, Norm(u), residual, steps)
            : new SolverException("The limit '" + limit.Name + "' has no design point: about the place where the search stands, " + Text.Number(Norm(u), 3) + " deviations from the medians, it does not depend on its inputs.");
    }

    /// <summary>Searches from the medians, or from another point where the limit is flat about them; where the smooth iteration does not settle, along an edge between two branches.</summary>
    internal static bool Find(LimitState limit, out double[] u, out double[] gradient, out double atMedians, out double residual, out int steps, double[]? from = null)
    {
        if (Smooth(limit, out u, out gradient, out atMedians, out residual, out steps, from)) return true;
        var sign = atMedians < 0 ? -1.0 : 1.0;
        if (!EdgeSearch.Find(limit, u, sign, out var edge, out var left, out var rounds)) return false;

        // On an edge there is no one gradient: the way to the point stands for it.
        u = edge;
        for (var i = 0; i < u.Length; i++) gradient[i] = -sign * u[i];
        (residual, steps) = (left, steps + rounds);
        return true;
    }

    private static bool Smooth(LimitState limit, out double[] u, out double[] gradient, out double atMedians, out double residual, out int steps, double[]? from)
    {
        var n = limit.Dimensions;
        u = new double[n];
        gradient = new double[n];
        double[] values = new double[n], direction = new double[n], next = new double[n];
        atMedians = limit.At(u, values);
        from?.CopyTo(u, 0);
        var g = from is null ? atMedians : limit.At(u, values);
        double scale = Math.Abs(g), penalty = 0;
        residual = 0;
        for (steps = 0; steps < MostSteps; steps++)
        {
            Gradient(limit, u, gradient, next, values);
            double square = Dot(gradient, gradient), size = Norm(u), reach = 0;
            if (!(square > 0)) break;
            scale = Math.Max(scale, Math.Sqrt(square));
            var along = (Dot(gradient, u) - g) / square;
            for (var i = 0; i < n; i++)
            {
                direction[i] = (along * gradient[i]) - u[i];
                reach = Math.Max(reach, Math.Abs(u[i] + direction[i]));
            }

            residual = Norm(direction);
            if (residual <= 1e-7 * Math.Max(1, size) && Math.Abs(g) <= 1e-9 * scale) return true;

            // Far outside, the gradient says little about where the limit lies: no step goes beyond thirty deviations.
            var t = reach > Furthest ? Furthest / reach : 1;
            var ahead = Math.Abs(along) * Math.Sqrt(square);
            penalty = Math.Max(penalty, 2 * Math.Max(size / Math.Sqrt(square), Math.Abs(g) > 1e-9 * scale ? 0.5 * ahead * ahead / Math.Abs(g) : 0));
            double merit = (0.5 * size * size) + (penalty * Math.Abs(g)), slope = Dot(u, direction) + (penalty * Math.Sign(g) * Dot(gradient, direction)), tried = g;
            for (var half = 0; half < 50; half++, t *= 0.5)
            {
                for (var i = 0; i < n; i++) next[i] = u[i] + (t * direction[i]);
                tried = limit.At(next, values);
                var length = Norm(next);
                if ((0.5 * length * length) + (penalty * Math.Abs(tried)) <= merit + (Enough * t * slope)) break;
            }

            if (t * residual <= 1e-13) break;
            next.CopyTo(u, 0);
            g = tried;
        }

        // Where the last digits of the gradient stop the search, what it found is taken if it is the limit and a nearest point to seven digits.
        return Dot(gradient, gradient) > 0 && Math.Abs(g) <= 1e-7 * scale && residual <= 1e-5 * Math.Max(1, Norm(u));
    }

    internal static double Norm(ReadOnlySpan<double> a) => Math.Sqrt(Dot(a, a));

    internal static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }

    internal static void Gradient(LimitState limit, double[] u, double[] gradient, double[] moved, double[] values)
    {
        u.CopyTo(moved, 0);
        for (var i = 0; i < u.Length; i++)
        {
            gradient[i] = 0;
            if (limit.Correlation is null && limit.Inputs[i].IsFixed) continue;
            moved[i] = u[i] + Step;
            var up = limit.At(moved, values);
            moved[i] = u[i] - Step;
            gradient[i] = (up - limit.At(moved, values)) / (2 * Step);
            moved[i] = u[i];
        }
    }
}
