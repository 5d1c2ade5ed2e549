using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>A root inside a bracket whose ends may be roots themselves within the accepted residual.</summary>
internal static class BracketedRoot
{
    /// <summary>Finds the root.</summary>
    /// <param name="what">What is solved for, named in the exception.</param>
    /// <param name="function">The function, continuous.</param>
    /// <param name="lower">Lower end of the bracket.</param>
    /// <param name="upper">Upper end of the bracket.</param>
    /// <param name="accepted">Greatest residual that counts as solved, in the unit of the function.</param>
    /// <exception cref="SolverException">The ends do not bracket a root, or a greater residual is left.</exception>
    public static double Find(string what, Func<double, double> function, double lower, double upper, double accepted)
    {
        if (Math.Abs(function(lower)) <= accepted) return lower;
        if (Math.Abs(function(upper)) <= accepted) return upper;
        return RootFinder.Find(function, lower, upper, accepted, what).Value;
    }
}
