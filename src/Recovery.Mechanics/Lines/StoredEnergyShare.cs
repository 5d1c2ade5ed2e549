using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>What one part of a line holds.</summary>
public sealed record StoredEnergyShare
{
    internal StoredEnergyShare(LineSegment segment, double stretch, double joules, double total)
    {
        Segment = segment;
        Stretch = Length.FromMeters(stretch);
        Energy = Energy.FromJoules(joules);
        Share = Ratio.FromDecimalFractions(total > 0 ? joules / total : 0);
    }

    /// <summary>Gets the part.</summary>
    public LineSegment Segment { get; }

    /// <summary>Gets its stretch.</summary>
    public Length Stretch { get; }

    /// <summary>Gets its stored energy.</summary>
    public Energy Energy { get; }

    /// <summary>Gets its share of the whole; zero where nothing is stored.</summary>
    public Ratio Share { get; }

    /// <summary>Gives the part in one line, invariant culture.</summary>
    /// <returns>Name, stretch, energy.</returns>
    public override string ToString() => Segment.Name + ": " + Text.With(Stretch.Meters, "m") + ", " + Text.With(Energy.Joules / 1000, "kJ");
}
