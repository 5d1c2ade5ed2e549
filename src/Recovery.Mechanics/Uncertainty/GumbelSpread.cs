using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The largest of many: Gumbel's first asymptote, F = exp(-exp(-(x - mode)/scale)).</summary>
public sealed class GumbelSpread : Spread
{
    // Euler's constant (by definition): mean less mode over scale.
    private const double Euler = 0.57721566490153286;
    private readonly double _mode;
    private readonly double _scale;

    internal GumbelSpread(double mean, double standardDeviation)
    {
        Mean = Finite(mean, nameof(mean));
        StandardDeviation = Positive(standardDeviation, nameof(standardDeviation));
        _scale = StandardDeviation * Math.Sqrt(6) / Math.PI;
        _mode = Mean - (Euler * _scale);
    }

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <inheritdoc/>
    public override double StandardDeviation { get; }

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Mean and standard deviation.</returns>
    public override string ToString() => "Gumbel, mean " + Text.Number(Mean) + ", sd " + Text.Number(StandardDeviation, 3);

    // -ln F is taken from the upper tail where F is near 1, so that large values keep their digits.
    internal override double FromNormal(double z) => _mode - (_scale * Math.Log(z > 2 ? -LogOneLess(NormalKernel.Upper(z)) : -Math.Log(NormalKernel.Cdf(z))));

    internal override double Cdf(double x) => Math.Exp(-Math.Exp(-(x - _mode) / _scale));

    /// <summary>ln(1 - e) for e up to 0.03, by its series: there is no log1p on every target.</summary>
    private static double LogOneLess(double e)
    {
        double sum = 0, power = e;
        for (var k = 1; k < 40 && power / k > 1e-17 * e; k++)
        {
            sum -= power / k;
            power *= e;
        }

        return sum;
    }
}
