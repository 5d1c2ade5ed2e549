using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>One row of the table of relative stiffness EA over breaking strength.</summary>
public sealed record StiffnessEntry
{
    internal StiffnessEntry(LineKind kind, LineLoading loading, double low, double high, double? reference, Source source)
    {
        Kind = kind;
        Loading = loading;
        Low = low;
        High = high;
        Reference = reference;
        Source = source;
    }

    /// <summary>Gets the kind of line.</summary>
    public LineKind Kind { get; }

    /// <summary>Gets the loading it holds for.</summary>
    public LineLoading Loading { get; }

    /// <summary>Gets the low end of EA over breaking strength.</summary>
    public double Low { get; }

    /// <summary>Gets the high end.</summary>
    public double High { get; }

    /// <summary>Gets the reference value within the band; null where none is given.</summary>
    public double? Reference { get; }

    /// <summary>Gets the source with its standing.</summary>
    public Source Source { get; }

    /// <summary>Gives the row in words, invariant culture.</summary>
    /// <returns>Kind, loading, band and standing.</returns>
    public override string ToString() => Kind + " " + Loading + ": EA/MBS " + Text.Number(Low) + " to " + Text.Number(High) + " (" + Standings.Describe(Source.Standing) + ")";
}
