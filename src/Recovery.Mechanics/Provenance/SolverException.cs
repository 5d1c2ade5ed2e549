using System;

namespace Recovery.Mechanics.Provenance;

/// <summary>A solver that could not bracket or converge. Never a silent wrong number.</summary>
public sealed class SolverException : Exception
{
    internal SolverException(string what, double lower, double upper, double residual, int iterations)
        : base(what + ": no solution between " + Text.Number(lower, 6) + " and " + Text.Number(upper, 6) + "; residual " + Text.Number(residual, 3) + " after " + Text.Number(iterations) + " iterations.")
    {
        Lower = lower;
        Upper = upper;
        Residual = residual;
        Iterations = iterations;
    }

    /// <summary>Says in words why there is nothing to solve; the numbers are 0.</summary>
    internal SolverException(string message)
        : base(message)
    {
    }

    /// <summary>Gets the lower end of the bracket.</summary>
    public double Lower { get; }

    /// <summary>Gets the upper end of the bracket.</summary>
    public double Upper { get; }

    /// <summary>Gets the residual that was left.</summary>
    public double Residual { get; }

    /// <summary>Gets the iterations that were made.</summary>
    public int Iterations { get; }
}
