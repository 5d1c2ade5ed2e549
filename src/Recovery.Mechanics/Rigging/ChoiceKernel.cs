using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Least ratings, once. SI in, SI out.</summary>
/// <remarks>Arithmetic on the factors of the policy (<see cref="RiggingSources.PartialFactors"/>, <see cref="RiggingSources.ShacklePeak"/>); no constant of its own.</remarks>
internal static class ChoiceKernel
{
    /// <summary>Strength that a load asks: load x factor / share that is left.</summary>
    public static double Strength(double load, double factor, double share) => load * factor / share;

    /// <summary>Rounds up to three significant digits, rounding noise of nine digits allowed.</summary>
    public static double RoundUp(double value)
    {
        if (value <= 0) return 0;
        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return Math.Round(Math.Ceiling(Math.Round(value / step, 6)) * step, 12);
    }
}
