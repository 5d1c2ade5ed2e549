using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A number whose logarithm is normal: x = median exp(zeta z). Strengths, resistances and factors of method.</summary>
public sealed class LognormalSpread : Spread
{
    private readonly double _logMedian;

    internal LognormalSpread(double median, double logarithmicDeviation)
    {
        MedianValue = Positive(median, nameof(median));
        LogarithmicDeviation = Guard.Range(logarithmicDeviation, 1e-9, 2, string.Empty, nameof(logarithmicDeviation));
        _logMedian = Math.Log(MedianValue);
    }

    /// <summary>Gets the standard deviation of the natural logarithm.</summary>
    public double LogarithmicDeviation { get; }

    /// <inheritdoc/>
    public override double Mean => MedianValue * Math.Exp(0.5 * LogarithmicDeviation * LogarithmicDeviation);

    /// <inheritdoc/>
    public override double StandardDeviation => Mean * Math.Sqrt(Math.Exp(LogarithmicDeviation * LogarithmicDeviation) - 1);

    private double MedianValue { get; }

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Median and logarithmic deviation.</returns>
    public override string ToString() => "lognormal, median " + Text.Number(MedianValue) + ", log deviation " + Text.Number(LogarithmicDeviation, 3);

    internal static LognormalSpread FromMean(double mean, double coefficientOfVariation)
    {
        var v = Guard.Range(coefficientOfVariation, 1e-9, 5, string.Empty, nameof(coefficientOfVariation));
        return new LognormalSpread(Positive(mean, nameof(mean)) / Math.Sqrt(1 + (v * v)), Math.Sqrt(Math.Log(1 + (v * v))));
    }

    internal override double FromNormal(double z) => Math.Exp(_logMedian + (LogarithmicDeviation * z));

    internal override double Cdf(double x) => x > 0 ? NormalKernel.Cdf((Math.Log(x) - _logMedian) / LogarithmicDeviation) : 0;

    internal override void FromNormals(Span<double> numbers)
    {
        double a = _logMedian, b = LogarithmicDeviation;
        for (var i = 0; i < numbers.Length; i++) numbers[i] = Math.Exp(a + (b * numbers[i]));
    }
}
