using System;
using MathNet.Numerics;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Two ends and a most likely value, smooth between: beta with shapes 1 + 4 (mode - min)/(max - min) and 1 + 4 (max - mode)/(max - min).</summary>
public sealed class BetaPertSpread : Spread
{
    private readonly double _a;
    private readonly double _b;

    internal BetaPertSpread(double minimum, double mode, double maximum)
    {
        Minimum = Finite(minimum, nameof(minimum));
        Maximum = Finite(maximum, nameof(maximum));
        Rising(Minimum, Maximum, nameof(maximum));
        Mode = Guard.Range(mode, Minimum, Maximum, string.Empty, nameof(mode));
        _a = 1 + (4 * (Mode - Minimum) / (Maximum - Minimum));
        _b = 1 + (4 * (Maximum - Mode) / (Maximum - Minimum));
    }

    /// <summary>Gets the lower end.</summary>
    public double Minimum { get; }

    /// <summary>Gets the most likely value.</summary>
    public double Mode { get; }

    /// <summary>Gets the upper end.</summary>
    public double Maximum { get; }

    /// <inheritdoc/>
    public override double Mean => (Minimum + (4 * Mode) + Maximum) / 6;

    /// <inheritdoc/>
    public override double StandardDeviation => (Maximum - Minimum) * Math.Sqrt(_a * _b / 7) / 6;

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Ends and mode.</returns>
    public override string ToString() => "beta-PERT, " + Text.Number(Minimum) + ", " + Text.Number(Mode) + ", " + Text.Number(Maximum);

    internal override double FromNormal(double z) => z <= 0
        ? Minimum + ((Maximum - Minimum) * Inverse(_a, _b, NormalKernel.Cdf(z)))
        : Maximum - ((Maximum - Minimum) * Inverse(_b, _a, NormalKernel.Upper(z)));

    internal override double Cdf(double x) => x <= Minimum ? 0 : x >= Maximum ? 1 : SpecialFunctions.BetaRegularized(_a, _b, (x - Minimum) / (Maximum - Minimum));

    /// <summary>Share of the way from one end at a probability up to a half: Newton inside a bracket that every step narrows.</summary>
    private static double Inverse(double a, double b, double p)
    {
        double scale = Math.Exp(-SpecialFunctions.BetaLn(a, b)), low = 0, high = 1;
        var x = Math.Min(0.5, Math.Pow(p * a / scale, 1 / a));
        for (var i = 0; i < 100; i++)
        {
            var miss = SpecialFunctions.BetaRegularized(a, b, x) - p;
            if (miss > 0) high = x;
            else low = x;
            var step = miss / (scale * Math.Pow(x, a - 1) * Math.Pow(1 - x, b - 1));
            var next = x - step;
            if (!(next > low && next < high)) next = 0.5 * (low + high);
            if (Math.Abs(next - x) <= 1e-15 * x) return next;
            x = next;
        }

        return x;
    }
}
