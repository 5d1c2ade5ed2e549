using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>What one measure takes off the demand when it is done alone.</summary>
public sealed record MeasureWorth
{
    internal MeasureWorth(Measure measure, double low, double central, double high, double depthRule, string reasonKey, Phrase? reasonWords)
    {
        Measure = measure;
        Low = Force.FromNewtons(low);
        Central = Force.FromNewtons(central);
        High = Force.FromNewtons(high);
        DepthRule = Force.FromNewtons(depthRule);
        ReasonKey = reasonKey;
        ReasonWords = reasonWords;
    }

    /// <summary>Gets the measure.</summary>
    public Measure Measure { get; }

    /// <summary>Gets what it takes off the low; negative where it adds.</summary>
    public Force Low { get; }

    /// <summary>Gets what it takes off central; for driving the own wheels, locked less turning.</summary>
    public Force Central { get; }

    /// <summary>Gets what it takes off the high.</summary>
    public Force High { get; }

    /// <summary>Gets what it takes off the handbook depth rule.</summary>
    public Force DepthRule { get; }

    /// <summary>Gets why it is worth little, or adds; empty where the number speaks for itself.</summary>
    public string Reason => ReasonKey.Length == 0 ? string.Empty : ReportLanguage.English.Say(ReasonKey, ReasonWords?.ToString() ?? string.Empty);

    internal Phrase? ReasonWords { get; }

    /// <summary>Gets the key of the reason, as in <see cref="ReportLanguage"/>; empty where there is none.</summary>
    public string ReasonKey { get; }

    /// <summary>Gives the worth in one line, invariant culture.</summary>
    /// <returns>Title and central worth.</returns>
    public override string ToString() => Measure.Title + ": " + Text.Kilonewtons(Central.Newtons, 3);
}
