using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>Two measures whose worth together is not the sum of their worths.</summary>
public sealed record MeasureInteraction
{
    internal MeasureInteraction(Measure first, Measure second, double alone, double other, double together)
    {
        First = first;
        Second = second;
        FirstAlone = Force.FromNewtons(alone);
        SecondAlone = Force.FromNewtons(other);
        Together = Force.FromNewtons(together);
    }

    /// <summary>Gets one measure.</summary>
    public Measure First { get; }

    /// <summary>Gets the other.</summary>
    public Measure Second { get; }

    /// <summary>Gets what the first takes off the central demand alone.</summary>
    public Force FirstAlone { get; }

    /// <summary>Gets what the second takes off alone.</summary>
    public Force SecondAlone { get; }

    /// <summary>Gets what both take off together.</summary>
    public Force Together { get; }

    /// <summary>Gets what comes on top of the sum; negative where they overlap.</summary>
    public Force Extra => Force.FromNewtons(Together.Newtons - FirstAlone.Newtons - SecondAlone.Newtons);

    /// <summary>Gives the interaction in words, invariant culture.</summary>
    /// <returns>One sentence.</returns>
    public override string ToString() => First.Title + " (" + Text.Kilonewtons(FirstAlone.Newtons, 3) + ") and " + Second.Title + " (" + Text.Kilonewtons(SecondAlone.Newtons, 3) + ") together " + Text.Kilonewtons(Together.Newtons, 3) + ": " + (Extra.Newtons > 0 ? "more than their sum" : "they overlap");
}
