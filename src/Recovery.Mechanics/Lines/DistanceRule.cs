using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>One published rule for how far people are kept away, quoted with its author. None is derived from physics, and they disagree.</summary>
public sealed record DistanceRule
{
    internal DistanceRule(string key, double? multiple, string of, string words, Source source)
    {
        Key = key;
        Multiple = multiple;
        Of = of;
        Words = words;
        Source = source;
    }

    /// <summary>Gets the stable key.</summary>
    public string Key { get; }

    /// <summary>Gets the multiple of the line; null where the author gives no number.</summary>
    public double? Multiple { get; }

    /// <summary>Gets what the multiple is taken of.</summary>
    public string Of { get; }

    /// <summary>Gets the rule in own words.</summary>
    public string Words { get; }

    /// <summary>Gets the author with the standing.</summary>
    public Source Source { get; }

    /// <summary>Gives the distance by this rule.</summary>
    /// <param name="line">The length that the rule speaks of, 0 to 1,000 m.</param>
    /// <returns>The distance; null where the author gives no number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public Length? Distance(Length line)
    {
        var l = Guard.Metres(line, 0, 1000, nameof(line));
        return Multiple is { } multiple ? Length.FromMeters(multiple * l) : null;
    }

    /// <summary>Gives the rule in words.</summary>
    /// <returns>Words and author.</returns>
    public override string ToString() => Words + " (" + Source.Citation + ")";
}
