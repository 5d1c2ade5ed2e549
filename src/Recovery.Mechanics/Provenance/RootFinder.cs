using System;
using MathNet.Numerics.RootFinding;

namespace Recovery.Mechanics.Provenance;

/// <summary>The one way to a root: bracketed, by MathNet's Brent, with the residual checked. Scale the function so that one is large.</summary>
internal static class RootFinder
{
    private const int MostIterations = 200;

    /// <summary>Finds the root between two ends of opposite sign.</summary>
    /// <exception cref="SolverException">The ends do not bracket a root, or the residual stays above its limit.</exception>
    public static Root Find(Func<double, double> function, double lower, double upper, double residualLimit, string what)
    {
        var calls = 0;
        double Counted(double x)
        {
            calls++;
            return function(x);
        }

        double atLower = Counted(lower), atUpper = Counted(upper);
        if (atLower == 0) return new Root(lower, 0, lower, upper, calls);
        if (atUpper == 0) return new Root(upper, 0, lower, upper, calls);
        if (!(atLower < 0 && atUpper > 0) && !(atLower > 0 && atUpper < 0)) throw new SolverException(what, lower, upper, Math.Min(Math.Abs(atLower), Math.Abs(atUpper)), calls);

        // MathNet's own verdict asks more of the residual than of the place; the residual is judged here instead.
        _ = Brent.TryFindRoot(Counted, lower, upper, 1e-14, MostIterations, out var root);
        var residual = root >= lower && root <= upper ? Counted(root) : double.NaN;
        return Math.Abs(residual) <= residualLimit ? new Root(root, residual, lower, upper, calls) : throw new SolverException(what, lower, upper, residual, calls);
    }
}
