using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What a first-order reliability search gives: index, probability, design point, directions.</summary>
/// <remarks>Immutable. The probability is that of a flat limit; see <see cref="FirstOrderReliability"/>.</remarks>
public sealed class FirstOrderResult
{
    private readonly double[] _standard;
    private readonly double[] _values;
    private readonly double[] _directions;

    internal FirstOrderResult(LimitState limit, double[] standard, double[] gradient, double atMedians, double residual, int steps)
    {
        Limit = limit;
        _standard = standard;
        _values = new double[standard.Length];
        limit.Map(standard, _values);
        Beta = FirstOrderReliability.Norm(standard) * (atMedians < 0 ? -1 : 1);
        var size = FirstOrderReliability.Norm(gradient);
        _directions = new double[gradient.Length];
        for (var i = 0; i < gradient.Length; i++) _directions[i] = -gradient[i] / size;
        Residual = residual;
        Steps = steps;
    }

    /// <summary>Gets the limit.</summary>
    public LimitState Limit { get; }

    /// <summary>Gets the reliability index; negative where the limit fails at the medians of its inputs.</summary>
    public double Beta { get; }

    /// <summary>Gets the first-order probability of failure, Phi(-beta), for computing with.</summary>
    public double Probability => NormalKernel.Cdf(-Beta);

    /// <summary>Gets the inputs at the design point: the likeliest way in which it fails.</summary>
    public IReadOnlyList<double> DesignPoint => Array.AsReadOnly(_values);

    /// <summary>Gets the design point in standard normal numbers.</summary>
    public IReadOnlyList<double> StandardPoint => Array.AsReadOnly(_standard);

    /// <summary>Gets the direction cosines towards failure, one an input: above zero where a larger normal number leads to failure. Their squares sum to 1 and say which input counts.</summary>
    public IReadOnlyList<double> Directions => Array.AsReadOnly(_directions);

    /// <summary>Gets the last step that was still wanted, in deviations.</summary>
    public double Residual { get; }

    /// <summary>Gets the number of steps taken.</summary>
    public int Steps { get; }

    /// <summary>Gives index and order of magnitude, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Limit.Name + ": beta " + Text.Number(Beta, 3) + ", first order " + SampledProbability.Magnitude(Probability);
}
