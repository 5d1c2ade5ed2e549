using System;
using System.Globalization;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Machines;

/// <summary>Reads the size marking of a tyre. One pass, invariant culture, a reason in words where it gives up.</summary>
internal static class TyreSizeReader
{
    private const int LongestMarking = 60;

    /// <summary>Overall diameter of a tyre marked by width and rim in inches: d = 1.5 b + 1.06 rim (reported, origin not stated).</summary>
    public static double InchDiameter(double width, double rim) => (1.5 * width) + (1.06 * rim);

    /// <summary>A marking as far as a message can show it.</summary>
    public static string Shown(string marking) => marking.Length <= LongestMarking ? marking : marking.Substring(0, LongestMarking) + "...";

    /// <summary>Reads a marking; null with a reason that ends the sentence "marking '...' ".</summary>
    public static TyreSize? Read(string marking, out string reason)
    {
        var at = 0;
        reason = "cannot be read as a tyre size: expected width/ratio R rim such as 900/60R32, or width - rim in inches such as 18.4-38.";
        if (marking.Length > LongestMarking) return Refuse("is too long for a tyre size.", out reason);
        if (marking.IndexOf(',') >= 0) return Refuse("has a comma: the decimal sign of a tyre size is a point.", out reason);
        Blank(marking, ref at);
        string prefix = string.Empty;
        if (at + 1 < marking.Length && (marking[at] is 'I' or 'i' or 'V' or 'v') && (marking[at + 1] is 'F' or 'f'))
        {
            prefix = char.ToUpperInvariant(marking[at]) + "F ";
            at += 2;
            Blank(marking, ref at);
        }

        if (!Number(marking, ref at, out var first) || at >= marking.Length) return null;
        double second = 0;
        var ratio = marking[at] == '/';
        var cross = marking[at] is 'x' or 'X';
        if (marking[at] is 'L' or 'l') return Refuse("is a low-profile inch size, from which the diameter does not follow: give the dimensions of the data book.", out reason);
        if (ratio || cross)
        {
            at++;
            Blank(marking, ref at);
            if (!Number(marking, ref at, out second)) return null;
        }

        TyreConstruction construction;
        double rim;
        if (at < marking.Length && (marking[at] is 'R' or 'r' or '-'))
        {
            construction = marking[at] == '-' ? TyreConstruction.Bias : TyreConstruction.Radial;
            at++;
            Blank(marking, ref at);
            if (!Number(marking, ref at, out rim)) return null;
        }
        else if (cross && second > 0)
        {
            // Old marking: width x rim.
            (construction, rim, second, cross) = (TyreConstruction.Bias, second, 0, false);
        }
        else
        {
            return null;
        }

        var service = marking.Substring(at).Trim();
        foreach (var c in service)
        {
            if (!(char.IsLetterOrDigit(c) || c is ' ' or '/' or '(' or ')' or '*' or '+' or '-' or '.')) return null;
        }

        if (service.Length > 0 && service[0] is '/' or '-' or '.') return null;
        if (rim is < 8 or > 60) return Refuse("has a rim of " + Text.With(rim, "in") + "; 8 to 60 in are read.", out reason);
        return ratio ? ByRatio(prefix, first, second, rim, construction, service, out reason)
            : cross ? ByDiameter(prefix, first, second, rim, construction, service, out reason)
            : ByInches(prefix, first, rim, construction, service, out reason);
    }

    private static TyreSize? ByRatio(string prefix, double width, double ratio, double rim, TyreConstruction construction, string service, out string reason)
    {
        if (ratio is < 25 or > 110) return Refuse("has " + Text.Number(ratio) + " behind the stroke, which is no ratio of height to width: 25 to 110 % are read.", out reason);
        if (width is not ((>= 100 and <= 1500) or (>= 4 and <= 50))) return Refuse("has a width of " + Text.Number(width) + "; 100 to 1500 mm, or 4 to 50 in, are read.", out reason);
        var metres = width >= 100 ? width / 1000 : width * PhysicalConstants.MetresPerInch;
        return Sized(prefix + Text.Number(width) + "/" + Text.Number(ratio), metres, (rim * PhysicalConstants.MetresPerInch) + (2 * metres * ratio / 100), rim, construction, false, service, out reason);
    }

    private static TyreSize? ByDiameter(string prefix, double diameter, double width, double rim, TyreConstruction construction, string service, out string reason) =>
        width is < 4 or > 50
            ? Refuse("has a width of " + Text.With(width, "in") + "; 4 to 50 in are read.", out reason)
            : Sized(prefix + Text.Number(diameter) + "x" + width.ToString("0.00", CultureInfo.InvariantCulture), width * PhysicalConstants.MetresPerInch, diameter * PhysicalConstants.MetresPerInch, rim, construction, false, service, out reason);

    private static TyreSize? ByInches(string prefix, double width, double rim, TyreConstruction construction, string service, out string reason)
    {
        if (width >= 100) return Refuse("gives a width in millimetres and no ratio, from which the diameter does not follow: give the dimensions of the data book.", out reason);
        return width is < 4 or > 50
            ? Refuse("has a width of " + Text.With(width, "in") + "; 4 to 50 in are read.", out reason)
            : Sized(prefix + Text.Number(width), width * PhysicalConstants.MetresPerInch, InchDiameter(width, rim) * PhysicalConstants.MetresPerInch, rim, construction, true, service, out reason);
    }

    private static TyreSize? Sized(string head, double width, double diameter, double rim, TyreConstruction construction, bool approximate, string service, out string reason)
    {
        var rimMetres = rim * PhysicalConstants.MetresPerInch;
        if (diameter is < 0.4 or > 3 || (diameter - rimMetres) / 2 < 0.03) return Refuse("gives a diameter of " + Text.With(diameter, "m", 3) + " on a rim of " + Text.With(rimMetres, "m", 3) + ", which is no tyre.", out reason);
        reason = string.Empty;
        return new TyreSize(head + (construction == TyreConstruction.Radial ? "R" : "-") + Text.Number(rim), width, diameter, rimMetres, construction, approximate, service);
    }

    private static TyreSize? Refuse(string words, out string reason)
    {
        reason = words;
        return null;
    }

    private static void Blank(string text, ref int at)
    {
        while (at < text.Length && text[at] == ' ') at++;
    }

    private static bool Number(string text, ref int at, out double value)
    {
        var start = at;
        while (at < text.Length && (text[at] is >= '0' and <= '9' or '.')) at++;
        var read = double.TryParse(text.Substring(start, at - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
        Blank(text, ref at);
        return read && at > start && value > 0;
    }
}
