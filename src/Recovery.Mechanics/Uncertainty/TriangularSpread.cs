using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Two ends and a most likely value, straight lines between.</summary>
public sealed class TriangularSpread : Spread
{
    internal TriangularSpread(double minimum, double mode, double maximum)
    {
        Minimum = Finite(minimum, nameof(minimum));
        Maximum = Finite(maximum, nameof(maximum));
        Rising(Minimum, Maximum, nameof(maximum));
        Mode = Guard.Range(mode, Minimum, Maximum, string.Empty, nameof(mode));
    }

    /// <summary>Gets the lower end.</summary>
    public double Minimum { get; }

    /// <summary>Gets the most likely value.</summary>
    public double Mode { get; }

    /// <summary>Gets the upper end.</summary>
    public double Maximum { get; }

    /// <inheritdoc/>
    public override double Mean => (Minimum + Mode + Maximum) / 3;

    /// <inheritdoc/>
    public override double StandardDeviation
    {
        get
        {
            double a = Mode - Minimum, b = Maximum - Mode;
            return Math.Sqrt(((a * a) + (a * b) + (b * b)) / 18);
        }
    }

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Ends and mode.</returns>
    public override string ToString() => "triangular, " + Text.Number(Minimum) + ", " + Text.Number(Mode) + ", " + Text.Number(Maximum);

    internal override double FromNormal(double z)
    {
        double width = Maximum - Minimum, rising = Mode - Minimum;
        var p = NormalKernel.Cdf(z);
        return p * width <= rising
            ? Minimum + Math.Sqrt(p * width * rising)
            : Maximum - Math.Sqrt(NormalKernel.Upper(z) * width * (Maximum - Mode));
    }

    internal override double Cdf(double x)
    {
        if (x <= Minimum) return 0;
        if (x >= Maximum) return 1;
        var width = Maximum - Minimum;
        return x <= Mode ? (x - Minimum) * (x - Minimum) / (width * (Mode - Minimum)) : 1 - ((Maximum - x) * (Maximum - x) / (width * (Maximum - Mode)));
    }
}
