using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>One published speed of a parted line or of what it throws, quoted with its author, to set beside a result of <see cref="Recoil"/>.</summary>
public sealed record PublishedRecoilSpeed
{
    internal PublishedRecoilSpeed(string key, double low, double high, string words, Source source)
    {
        Key = key;
        LowMetresPerSecond = low;
        HighMetresPerSecond = high;
        Words = words;
        Source = source;
    }

    /// <summary>Gets the stable key.</summary>
    public string Key { get; }

    /// <summary>Gets the low end of what is published.</summary>
    public Speed Low => Speed.FromMetersPerSecond(LowMetresPerSecond);

    /// <summary>Gets the high end; equal to the low one where a single figure is published.</summary>
    public Speed High => Speed.FromMetersPerSecond(HighMetresPerSecond);

    /// <summary>Gets what it was published of.</summary>
    public string Words { get; }

    /// <summary>Gets the author with the standing.</summary>
    public Source Source { get; }

    private double LowMetresPerSecond { get; }

    private double HighMetresPerSecond { get; }

    /// <summary>Gives the speed in words, invariant culture.</summary>
    /// <returns>Words, speed and author.</returns>
    public override string ToString() => Words + ": " + (HighMetresPerSecond > LowMetresPerSecond ? Text.With(LowMetresPerSecond, "m/s", 3) + " to " : string.Empty) + Text.With(HighMetresPerSecond, "m/s", 3) + " (" + Source.Citation + ")";
}
