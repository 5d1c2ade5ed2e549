using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A normal number: x = mean + sd z. It can turn negative: cut it off where the input cannot.</summary>
public sealed class NormalSpread : Spread
{
    internal NormalSpread(double mean, double standardDeviation)
    {
        Mean = Finite(mean, nameof(mean));
        StandardDeviation = Positive(standardDeviation, nameof(standardDeviation));
    }

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <inheritdoc/>
    public override double StandardDeviation { get; }

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Mean and standard deviation.</returns>
    public override string ToString() => "normal, mean " + Text.Number(Mean) + ", sd " + Text.Number(StandardDeviation, 3);

    internal override double FromNormal(double z) => Mean + (StandardDeviation * z);

    internal override double Cdf(double x) => NormalKernel.Cdf((x - Mean) / StandardDeviation);

    internal override void FromNormals(Span<double> numbers)
    {
        double a = Mean, b = StandardDeviation;
        for (var i = 0; i < numbers.Length; i++) numbers[i] = a + (b * numbers[i]);
    }
}
