using System;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>A root inside a bracket by the method of Brent (MathNet), refused where the bracket holds none or a residual is left.</summary>
internal static class BracketedRoot
{
    private const int Iterations = 200;

    /// <summary>Finds the root.</summary>
    /// <param name="what">What is solved for, named in the exception.</param>
    /// <param name="function">The function, continuous.</param>
    /// <param name="lower">Lower end of the bracket.</param>
    /// <param name="upper">Upper end of the bracket.</param>
    /// <param name="accepted">Greatest residual that counts as solved, in the unit of the function.</param>
    /// <exception cref="SolverException">The ends do not bracket a root, or a greater residual is left.</exception>
    public static double Find(string what, Func<double, double> function, double lower, double upper, double accepted)
    {
        double left = function(lower), right = function(upper);
        if (Math.Abs(left) <= accepted) return lower;
        if (Math.Abs(right) <= accepted) return upper;
        if (left > 0 == right > 0) throw new SolverException(what, lower, upper, Math.Min(Math.Abs(left), Math.Abs(right)), 0);
        var root = double.NaN;
        try
        {
            root = Brent.FindRoot(function, lower, upper, 1e-14 * Math.Max(1, Math.Abs(upper)), Iterations);
        }
        catch (NonConvergenceException)
        {
            throw new SolverException(what, lower, upper, Math.Min(Math.Abs(left), Math.Abs(right)), Iterations);
        }

        var residual = function(root);
        return Math.Abs(residual) <= accepted ? root : throw new SolverException(what, lower, upper, residual, Iterations);
    }
}
