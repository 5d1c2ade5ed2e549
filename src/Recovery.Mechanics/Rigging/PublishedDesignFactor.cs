using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>One published design factor: for which gear, in which family of standards, on which strength, and where it stands.</summary>
/// <remarks>Lifting factors assume a slow vertical load without shock. The naval factors of 10 to 14 stand for a shock that nobody computed and are never applied on top of a computed peak.</remarks>
public sealed record PublishedDesignFactor
{
    internal PublishedDesignFactor(GearItem item, StandardRegion region, double low, double high, FactorBasis basis, Source source, bool standsForPeak = false)
    {
        Item = item;
        Region = region;
        Low = low;
        High = high;
        Basis = basis;
        Source = source;
        StandsForPeak = standsForPeak;
    }

    /// <summary>Gets the kind of gear.</summary>
    public GearItem Item { get; }

    /// <summary>Gets the family of standards.</summary>
    public StandardRegion Region { get; }

    /// <summary>Gets the low end of the factor.</summary>
    public double Low { get; }

    /// <summary>Gets the high end of the factor: the cautious one.</summary>
    public double High { get; }

    /// <summary>Gets which strength it divides.</summary>
    public FactorBasis Basis { get; }

    /// <summary>Gets whether it stands for a shock that nobody computed.</summary>
    public bool StandsForPeak { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gives the factor in one line, invariant culture.</summary>
    /// <returns>Gear, region and factor.</returns>
    public override string ToString() => Item + ", " + Region + ": " + Text.Number(Low) + (High > Low ? " to " + Text.Number(High) : string.Empty) + " on " + Basis;
}
