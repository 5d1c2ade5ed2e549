using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>What a dashpot beside the spring of a line would do to a take-up without pull: for comparison only, no result here takes credit for damping.</summary>
/// <remarks>
/// <para>m x'' + c x' + k x = 0 from speed v, zeta = c/(2 sqrt(k m)). Damping lowers the first peak by 19 % at the most, at zeta 0.26, and raises it from 0.5 on, where the dashpot itself is the peak: 2 zeta. What it lowers is the rebound.</para>
/// <para>Nothing is published of the damping of webbing under such loads. Source: linear oscillator (derived).</para>
/// </remarks>
public static class DampedTakeUp
{
    /// <summary>Gets the source.</summary>
    public static Source Source => LinesSources.HeldAnchor;

    /// <summary>Gives the greatest force over that without damping, v sqrt(k m).</summary>
    /// <param name="dampingRatio">Damping over critical damping, zeta, 0 to 0.95.</param>
    /// <returns>The share; above 1 from 0.5 on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its range.</exception>
    public static double PeakShare(Ratio dampingRatio) => DampedTakeUpKernel.PeakRatio(Guard.Fraction(dampingRatio, 0, 0.95, nameof(dampingRatio)));

    /// <summary>Gives the speed at which the puller is thrown back over that of its approach.</summary>
    /// <param name="dampingRatio">Damping over critical damping, zeta, 0 to 0.95.</param>
    /// <returns>The share; its square is the fraction of energy given back.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its range.</exception>
    public static double ReboundShare(Ratio dampingRatio) => DampedTakeUpKernel.ReboundRatio(Guard.Fraction(dampingRatio, 0, 0.95, nameof(dampingRatio)));
}
