using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Any value between two ends alike.</summary>
public sealed class UniformSpread : Spread
{
    internal UniformSpread(double minimum, double maximum)
    {
        Minimum = Finite(minimum, nameof(minimum));
        Maximum = Finite(maximum, nameof(maximum));
        Rising(Minimum, Maximum, nameof(maximum));
    }

    /// <summary>Gets the lower end.</summary>
    public double Minimum { get; }

    /// <summary>Gets the upper end.</summary>
    public double Maximum { get; }

    /// <inheritdoc/>
    public override double Mean => 0.5 * (Minimum + Maximum);

    /// <inheritdoc/>
    public override double StandardDeviation => (Maximum - Minimum) / Math.Sqrt(12);

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Both ends.</returns>
    public override string ToString() => "uniform, " + Text.Number(Minimum) + " to " + Text.Number(Maximum);

    internal override double FromNormal(double z) => Minimum + ((Maximum - Minimum) * NormalKernel.Cdf(z));

    internal override double Cdf(double x) => Math.Min(1, Math.Max(0, (x - Minimum) / (Maximum - Minimum)));
}
