using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>How far the tension of a taut line overshoots a pull that is raised on it: the greatest force over the pull.</summary>
/// <remarks>
/// <para>Put on at once 2; evenly over t_r: 1 + |sin(pi t_r/T)|/(pi t_r/T), at most min(2, 1 + T/(pi t_r)); in n equal steps with the line at rest before each: 1 + 1/n; in two equal steps t apart: 1 + |cos(pi t/T)|.</para>
/// <para>T natural period of the puller on the line (<see cref="TakeUp.NaturalPeriod"/>), linear line, held anchor, no loss, wheels that do not slip. The zeros of the exact factors hang on a period that nobody knows so well: they are no credit, gear is checked with the envelope over the longest period. Source: response of a linear oscillator (derived).</para>
/// </remarks>
public static class RaisedForce
{
    /// <summary>Gets the source.</summary>
    public static Source Source => LinesSources.Throttle;

    /// <summary>Gives the factor of a pull raised evenly, for one known period.</summary>
    /// <param name="rise">Time over which it is raised, 0 to 600 s.</param>
    /// <param name="period">Natural period, 0.001 to 600 s.</param>
    /// <returns>Greatest force over the pull, 1 to 2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public static double Evenly(Duration rise, Duration period) => TakeUpKernel.ThrottleExact(Periods(rise, 0, period, nameof(rise)));

    /// <summary>Gives the envelope of the factor of a pull raised evenly: what the longest period is put into.</summary>
    /// <param name="rise">Time over which it is raised, 0.01 to 600 s.</param>
    /// <param name="period">Natural period, 0.001 to 600 s.</param>
    /// <returns>At most this factor, 1 to 2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public static double Envelope(Duration rise, Duration period) => TakeUpKernel.ThrottleEnvelope(Periods(rise, 0.01, period, nameof(rise)));

    /// <summary>Gives the factor of a pull raised in equal steps, the line at rest before each.</summary>
    /// <param name="steps">Number of steps, 1 to 1,000.</param>
    /// <returns>Greatest force over the pull.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static double InSteps(int steps) => TakeUpKernel.ThrottleSteps((int)Guard.Range(steps, 1, 1000, string.Empty, nameof(steps)));

    /// <summary>Gives the factor of a pull raised in two equal steps, the second on the moving line.</summary>
    /// <param name="apart">Time between the steps, 0 to 600 s.</param>
    /// <param name="period">Natural period, 0.001 to 600 s.</param>
    /// <returns>Greatest force over the pull, 1 to 2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public static double InTwoSteps(Duration apart, Duration period) => TakeUpKernel.TwoStepsApart(Periods(apart, 0, period, nameof(apart)));

    private static double Periods(Duration time, double least, Duration period, string name) => Guard.Seconds(time, least, 600, name) / Guard.Seconds(period, 0.001, 600, nameof(period));
}
