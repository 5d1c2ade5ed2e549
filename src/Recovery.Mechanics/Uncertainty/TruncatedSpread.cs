using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A spread cut off at two ends and rescaled between them: F = (F0 - F0(a))/(F0(b) - F0(a)).</summary>
public sealed class TruncatedSpread : Spread
{
    private readonly double _below;
    private readonly double _between;

    internal TruncatedSpread(Spread of, double minimum, double maximum)
    {
        Of = Guard.NotNull(of, nameof(of));
        Minimum = Finite(minimum, nameof(minimum));
        Maximum = Finite(maximum, nameof(maximum));
        Rising(Minimum, Maximum, nameof(maximum));
        _below = of.Cdf(Minimum);
        _between = of.Cdf(Maximum) - _below;
        if (of.IsFixed || !(_between > 1e-6)) throw new ArgumentException("Less than a millionth of the spread (" + of + ") lies between " + Text.Number(Minimum) + " and " + Text.Number(Maximum) + ".", nameof(minimum));
        (Mean, StandardDeviation) = Moments();
    }

    /// <summary>Gets the spread that is cut.</summary>
    public Spread Of { get; }

    /// <summary>Gets the lower end.</summary>
    public double Minimum { get; }

    /// <summary>Gets the upper end.</summary>
    public double Maximum { get; }

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <inheritdoc/>
    public override double StandardDeviation { get; }

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>The spread and its ends.</returns>
    public override string ToString() => Of + ", cut to " + Text.Number(Minimum) + " to " + Text.Number(Maximum);

    internal override double FromNormal(double z)
    {
        var p = _below + (_between * NormalKernel.Cdf(z));
        if (p <= 0) return Minimum;
        if (p >= 1) return Maximum;
        return Math.Min(Maximum, Math.Max(Minimum, Of.FromNormal(NormalKernel.Inverse(p))));
    }

    internal override double Cdf(double x) => x <= Minimum ? 0 : x >= Maximum ? 1 : (Of.Cdf(x) - _below) / _between;

    /// <summary>Mean and deviation from the distribution function, by parts: E[x] = b - integral of F, E[x^2] = b^2 - integral of 2 x F.</summary>
    private (double Mean, double Deviation) Moments()
    {
        double first = 0, second = 0, width = Maximum - Minimum;
        const int Panels = 4096;
        // Measured from the lower end, so that nothing cancels. Composite midpoint: F is smooth between the ends; 4096 panels leave 1e-7 of the width.
        for (var i = 0; i < Panels; i++)
        {
            var t = width * (i + 0.5) / Panels;
            var above = 1 - Cdf(Minimum + t);
            first += above;
            second += 2 * t * above;
        }

        first *= width / Panels;
        second *= width / Panels;
        return (Minimum + first, Math.Sqrt(Math.Max(0, second - (first * first))));
    }
}
