using System.Linq;
using System.Text;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Sampled odds as plain text of at most 80 columns: each probability as an order of magnitude with the error of sampling beside it.</summary>
internal static class PlanSamplesReport
{
    private const int Event = 26, Odds = 24, Columns = 80;

    public static string Of(PlanSamples samples)
    {
        var text = new StringBuilder();
        text.Append("Samples: ").Append(SampledProbability.Whole(samples.Count)).Append(", ").Append(Text.Number(samples.Sampler.Inputs.Count(i => !i.Factor.IsFixed))).Append(" inputs scatter; weakest standing: ").Append(Standings.Describe(samples.Sampler.Standing)).Append(".\n\n");
        text.Append(string.Empty.PadRight(Event)).Append("odds".PadRight(Odds)).Append("sampling error alone\n");
        Line(text, "the pull is not enough", samples.NotEnough);
        Own(text, samples);
        text.Append("verdict\n");
        Line(text, "  stop", samples.Probability(Verdict.Stop));
        Line(text, "  needs competent review", samples.Probability(Verdict.NeedsCompetentReview));
        Line(text, "  no objection found", samples.Probability(Verdict.NoObjectionFound));
        var parts = samples.Parts;
        if (parts.Count > 0)
        {
            text.Append("steady load over what is allowed, at the most the puller can impose\n");
            foreach (var part in parts.Where(p => p.RatedUtilisation is not null)) Line(text, "  " + Short(part), part.OverRated);
            text.Append("peak too near the breaking strength: reserve below its floor\n");
            foreach (var part in parts)
            {
                if (part.PeakUtilisation is null) text.Append(("  " + Short(part)).PadRight(Event)).Append(part.BelowFloorInWords).Append('\n');
                else Line(text, "  " + Short(part), part.BelowFloor);
            }
        }
        else
        {
            text.Append("the gear".PadRight(Event)).Append("no number: strength or stretch of the line is not known\n");
        }

        text.Append('\n').Append("kN".PadRight(36)).Append("1 in 20 below     middle   1 in 20 above\n");
        Row(text, "demand", samples.DemandNewtons);
        Row(text, "sustained pull", samples.SustainedNewtons);
        Row(text, "most it can impose", samples.ImposableNewtons);
        if (samples.ProcedurePeakNewtons is { } peak) Row(text, "peak of the procedure in the line", peak);
        text.Append("\nOdds are rungs: even, 1 in 10, 1 in 100 ... Sampling error: between which rungs\nthe odds of endless samples lie, 19 times in 20; \"within that\" where it leaves\nthe words as they are. What the inputs do not know comes on top of it.\n");
        return text.ToString();
    }

    /// <summary>Whether the machine drives itself out; where no wheel model answers, why.</summary>
    private static void Own(StringBuilder text, PlanSamples samples)
    {
        const string Drives = "it drives itself out";
        if (samples.FreesItself is not { } frees)
        {
            text.Append(Drives.PadRight(Event)).Append(samples.Sampler.Plan.Stuck.Machine.Axles.Any(a => a.Driven) ? "no number: no wheel model covers buried wheels\n" : "no number: none of its wheels is driven\n");
            return;
        }

        Line(text, Drives, frees);
        if (samples.OwnWheelsNotCovered.Hits > 0) Line(text, "  no wheel model for it", samples.OwnWheelsNotCovered);
    }

    private static string Short(PartSamples part)
    {
        const int Most = 15;
        var name = part.Name.Length > Most ? part.Name.Substring(0, Most) : part.Name;
        return part.Kind is PlaceKind.Bight or PlaceKind.BightWithFigure ? name + ", bight" : name;
    }

    private static void Line(StringBuilder text, string what, SampledProbability probability)
    {
        string odds = probability.ToString(), interval = IntervalWords.Says(odds, probability.Low, probability.High) ? "within that" : probability.IntervalInWords();
        var line = what.PadRight(Event) + odds.PadRight(Odds - 1) + " " + interval;
        text.Append(line.Length <= Columns ? line : what.PadRight(Event) + odds + "\n" + interval.PadLeft(Columns)).Append('\n');
    }

    private static void Row(StringBuilder text, string what, SampleSummary summary) =>
        text.Append(what.PadRight(36)).Append(Kilonewtons(summary, 0.05).PadLeft(13)).Append(Kilonewtons(summary, 0.5).PadLeft(11)).Append(Kilonewtons(summary, 0.95).PadLeft(16)).Append('\n');

    private static string Kilonewtons(SampleSummary summary, double probability) => Text.Number(summary.Quantile(probability) / 1000, 2);
}
