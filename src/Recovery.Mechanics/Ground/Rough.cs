using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>Estimated numbers as text, rounded to two digits: a fit that scatters by a factor of two never shows three.</summary>
internal static class Rough
{
    public static string Kilopascals(double pascals) => Text.Kilopascals(Digits(pascals), 2);

    private static double Digits(double value)
    {
        if (value <= 0) return value;
        var unit = Math.Pow(10, Math.Floor(Math.Log10(value)) - 1);
        return Math.Round(value / unit) * unit;
    }
}
