using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>A set of measures with what the plan comes to after all of them.</summary>
public sealed record MeasureSet
{
    internal MeasureSet(IReadOnlyList<Measure> measures, Verdict verdict, int stops, int cautions, double margin, double? personMinutes)
    {
        Measures = measures;
        Verdict = verdict;
        Stops = stops;
        Cautions = cautions;
        Margin = margin;
        PersonMinutes = personMinutes;
    }

    /// <summary>Gets the measures, in the order in which they were put into the plan.</summary>
    public IReadOnlyList<Measure> Measures { get; }

    /// <summary>Gets the verdict after all of them.</summary>
    public Verdict Verdict { get; }

    /// <summary>Gets how many stops are left.</summary>
    public int Stops { get; }

    /// <summary>Gets how many cautions are left.</summary>
    public int Cautions { get; }

    /// <summary>Gets the sustained pull over the central demand.</summary>
    public double Margin { get; }

    /// <summary>Gets the effort of all of them together in person-minutes; null where one of them has none.</summary>
    public double? PersonMinutes { get; }

    /// <summary>Whether it is made of the same measures, in whatever order.</summary>
    internal bool IsOf(IReadOnlyList<Measure> measures) => measures.Count == Measures.Count && measures.All(Measures.Contains);

    /// <summary>Counts what a plan comes to once the measures are in it.</summary>
    internal static MeasureSet Of(RecoveryPlan edited, Measure[] measures)
    {
        var assessment = edited.Assess();
        int stops = 0, cautions = 0;
        foreach (var finding in assessment.Findings)
        {
            if (finding.Severity == Severity.Stop) stops++;
            else if (finding.Severity == Severity.Caution) cautions++;
        }

        double? minutes = 0;
        foreach (var measure in measures) minutes += measure.Effort?.PersonMinutes;
        return new MeasureSet(measures, assessment.Verdict, stops, cautions, MeasureSearch.Margin(assessment), minutes);
    }

    /// <summary>Gives the set in one line, invariant culture.</summary>
    /// <returns>Titles, verdict and margin.</returns>
    public override string ToString() => (Measures.Count == 0 ? "nothing" : string.Join("; ", Measures.Select(m => m.Title))) + ": " + Verdict + ", sustained over demand " + Text.Number(Margin, 3) + (PersonMinutes is { } minutes ? ", " + Text.Number(minutes, 3) + " person-minutes" : string.Empty);
}
