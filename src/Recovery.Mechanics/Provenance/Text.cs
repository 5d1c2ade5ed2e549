using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace Recovery.Mechanics.Provenance;

/// <summary>Numbers as text, always in the invariant culture.</summary>
internal static class Text
{
    /// <summary>Formats with a number of significant digits, without exponent between 1e-4 and 1e7.</summary>
    public static string Number(double value, int significantDigits = 4)
    {
        if (value == 0) return "0";
        var magnitude = Math.Abs(value);
        if (magnitude is < 1e-4 or >= 1e7) return value.ToString("0." + new string('#', significantDigits - 1) + "e+0", CultureInfo.InvariantCulture);
        var decimals = Math.Max(0, significantDigits - 1 - (int)Math.Floor(Math.Log10(magnitude)));
        if (decimals > 15) decimals = 15;
        return value.ToString(decimals == 0 ? "0" : "0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>Formats with a fixed number of decimals.</summary>
    public static string Fixed(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>Formats a force in kilonewtons from newtons.</summary>
    public static string Kilonewtons(double newtons, int significantDigits = 4) => Number(newtons / 1000, significantDigits) + " kN";

    /// <summary>Formats a pressure in kilopascals from pascals.</summary>
    public static string Kilopascals(double pascals, int significantDigits = 4) => Number(pascals / 1000, significantDigits) + " kPa";

    /// <summary>Cuts a text into lines of at most a number of columns, at blanks; a longer word stands alone. The lines after the first may leave room for a hanging indent.</summary>
    public static List<string> Wrap(string text, int columns, int hanging = 0)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > columns - (lines.Count > 0 ? hanging : 0))
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            if (line.Length > 0) line.Append(' ');
            line.Append(word);
        }

        lines.Add(line.ToString());
        return lines;
    }

    /// <summary>Formats a value with its unit.</summary>
    public static string With(double value, string unit, int significantDigits = 4) => unit.Length == 0 ? Number(value, significantDigits) : Number(value, significantDigits) + " " + unit;
}
