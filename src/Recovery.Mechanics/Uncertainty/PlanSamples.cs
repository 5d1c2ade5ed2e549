using System;
using System.Collections.Generic;
using System.Text;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What sampling a plan comes to: probabilities with their sampling error, and how the numbers spread. Parts merge exactly.</summary>
/// <remarks>Immutable. Probabilities hold for the spreads that were put on the inputs, and most of those are from memory or by judgement: in words they are orders of magnitude. A low probability never says that a pull is without danger.</remarks>
public sealed class PlanSamples
{
    private readonly PlanTallies _tallies;

    internal PlanSamples(PlanSampler sampler, PlanTallies tallies)
    {
        Sampler = sampler;
        _tallies = tallies;
    }

    /// <summary>Gets the sampler.</summary>
    public PlanSampler Sampler { get; }

    /// <summary>Gets the number of samples.</summary>
    public long Count => _tallies.Count;

    /// <summary>Gets how likely the sustained pull is below the demand.</summary>
    public SampledProbability NotEnough => new(_tallies.NotEnough, Count);

    /// <summary>Gets how likely the gross traction of the machine's own driven wheels reaches the demand with all wheels turning. A buried wheel is in no model's range: an upper estimate.</summary>
    public SampledProbability FreesItself => new(_tallies.Frees, Count);

    /// <summary>Gets how the central demand spreads, N.</summary>
    public SampleSummary DemandNewtons => new(_tallies.Demand);

    /// <summary>Gets how the sustained pull spreads, N.</summary>
    public SampleSummary SustainedNewtons => new(_tallies.Sustained);

    /// <summary>Gets how the most that the towing machine can put into the line spreads, N.</summary>
    public SampleSummary ImposableNewtons => new(_tallies.Imposable);

    /// <summary>Gets how the procedure peak spreads, N; null where the line is not known.</summary>
    public SampleSummary? ProcedurePeakNewtons => _tallies.Procedure.Count == 0 ? null : new(_tallies.Procedure);

    /// <summary>Gets how sustained pull over demand spreads.</summary>
    public SampleSummary Margin => new(_tallies.Margin);

    /// <summary>Gets every place of the rig; empty where the line is not known.</summary>
    public IReadOnlyList<PartSamples> Parts
    {
        get
        {
            var parts = new List<PartSamples>(_tallies.Places.Length);
            for (var i = 0; i < _tallies.Places.Length; i++)
            {
                var place = Sampler.Numbers.Compiled.Places[i];
                parts.Add(new PartSamples(Sampler.Plan.Rig.Parts[place.Part].Name, place.Kind, place.Floor, _tallies.Places[i], Count));
            }

            return parts.AsReadOnly();
        }
    }

    /// <summary>Gets how likely a verdict is: findings that do not turn on numbers as the plan has them, the others worked for each sample.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>Its probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The verdict is not one of the defined values.</exception>
    public SampledProbability Probability(Verdict verdict) => new(_tallies.Of(Guard.Defined(verdict, verdict is >= Verdict.NoObjectionFound and <= Verdict.Stop, nameof(verdict))), Count);

    /// <summary>Gives both parts together, exactly.</summary>
    /// <param name="other">Another part of the samples of the same sampler.</param>
    /// <returns>The merged results.</returns>
    /// <exception cref="ArgumentNullException">The other part is null.</exception>
    /// <exception cref="ArgumentException">It comes from another sampler.</exception>
    public PlanSamples Merge(PlanSamples other)
    {
        if (!ReferenceEquals(Guard.NotNull(other, nameof(other)).Sampler, Sampler)) throw new ArgumentException("other was sampled with another sampler: its numbers do not belong to these.", nameof(other));
        var merged = new PlanTallies(Sampler.Numbers);
        merged.Add(_tallies);
        merged.Add(other._tallies);
        return new PlanSamples(Sampler, merged);
    }

    /// <summary>Gives everything that was counted as bytes: equal samples give equal bytes, on any number of threads and in any partition.</summary>
    /// <returns>The bytes.</returns>
    public byte[] ToBytes()
    {
        var bytes = new List<byte>(65536);
        _tallies.Write(bytes);
        return [.. bytes];
    }

    /// <summary>Gives the results as plain text of at most 80 columns, orders of magnitude only, invariant culture.</summary>
    /// <returns>The text, line feeds.</returns>
    public string ToReport()
    {
        var text = new StringBuilder();
        text.Append("Samples: ").Append(SampledProbability.Whole(Count)).Append(", ").Append(Text.Number(Sampler.Inputs.Count)).Append(" inputs scatter; weakest standing: ").Append(Standings.Describe(Sampler.Standing)).Append(".\n\n");
        Line(text, "the pull is not enough", NotEnough);
        Line(text, "the machine drives itself out (upper estimate)", FreesItself);
        Line(text, "verdict: stop", Probability(Verdict.Stop));
        Line(text, "verdict: needs competent review", Probability(Verdict.NeedsCompetentReview));
        Line(text, "verdict: no objection found", Probability(Verdict.NoObjectionFound));
        text.Append('\n').Append("kN".PadRight(36)).Append("1 in 20 below     middle   1 in 20 above\n");
        Row(text, "demand", DemandNewtons);
        Row(text, "sustained pull", SustainedNewtons);
        Row(text, "most it can impose", ImposableNewtons);
        if (ProcedurePeakNewtons is { } peak) Row(text, "peak of the procedure in the line", peak);
        if (Parts.Count == 0) return text.ToString();
        text.Append('\n').Append("part, at the most the puller can impose\n").Append(' ', 24).Append("over its rating".PadRight(29)).Append("below its floor\n");
        foreach (var part in Parts) text.Append(Short(part).PadRight(24)).Append((part.RatedUtilisation is null ? "-" : part.OverRated.ToString()).PadRight(29)).Append(part.BelowFloorInWords).Append('\n');
        return text.ToString();
    }

    /// <summary>Gives the first probability in one line, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Text.Number(Count, 12) + " samples, the pull is not enough: " + NotEnough;

    private static string Short(PartSamples part)
    {
        const int Most = 15;
        var name = part.Name.Length > Most ? part.Name.Substring(0, Most) : part.Name;
        return part.Kind is PlaceKind.Bight or PlaceKind.BightWithFigure ? name + ", bight" : name;
    }

    private static void Line(StringBuilder text, string what, SampledProbability probability) => text.Append(what.PadRight(48)).Append(probability).Append('\n');

    private static void Row(StringBuilder text, string what, SampleSummary summary) =>
        text.Append(what.PadRight(36)).Append(Kilonewtons(summary, 0.05).PadLeft(13)).Append(Kilonewtons(summary, 0.5).PadLeft(11)).Append(Kilonewtons(summary, 0.95).PadLeft(16)).Append('\n');

    private static string Kilonewtons(SampleSummary summary, double probability) => Text.Number(summary.Quantile(probability) / 1000, 2);
}
