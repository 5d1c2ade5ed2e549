using System.Collections.Generic;
using System.Linq;
using System.Text;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>A choice as text.</summary>
internal static class PullChoiceText
{
    private const int Columns = 80;

    public static string Write(PullChoice choice)
    {
        var text = new StringBuilder();
        text.Append("Demand along the ground ").Append(choice.Demand).Append(" (low / central / high)\n");
        text.Append("Tackle and anchors are sized on ").Append(Provenance.Text.Kilonewtons(choice.PlanningHigh.Newtons, 3)).Append("\n");
        Group(text, choice, PullOutcome.CanDo, "CAN DO IT, as far as grip, power, tackle and anchors go");
        Group(text, choice, PullOutcome.Undecided, "UNDECIDED");
        Group(text, choice, PullOutcome.Cannot, "CANNOT");
        var seen = new HashSet<string>(System.StringComparer.Ordinal);
        var cautions = choice.Options.Where(o => o.Outcome != PullOutcome.Cannot).SelectMany(o => o.Findings).Where(f => f.Severity == Severity.Caution && f.Id != TractionFindings.Undecided.Id && seen.Add(f.Message)).ToList();
        if (cautions.Count > 0) text.Append("\nCAUTIONS of those that are not ruled out\n");
        foreach (var caution in cautions)
        {
            Wrap(text, "- ", caution.Message);
            Wrap(text, "  -> ", caution.Remedy);
        }

        var assumed = choice.Options.SelectMany(o => o.Assumptions).Where(a => seen.Add(a.Id)).ToList();
        if (assumed.Count > 0) text.Append("\nTAKEN WHERE NOTHING WAS DECLARED\n");
        foreach (var assumption in assumed) Wrap(text, "- ", assumption.ToString());

        text.Append('\n');
        Wrap(text, string.Empty, "Straps, shackles, bridles and attachment points are not judged here: check the rig against \"can impose\", never against the demand.");
        return text.ToString();
    }

    private static void Group(StringBuilder text, PullChoice choice, PullOutcome outcome, string title)
    {
        text.Append('\n').Append(title).Append('\n');
        var any = false;
        var said = new HashSet<string>(System.StringComparer.Ordinal);
        var haul = string.Empty;
        foreach (var option in choice.Options.Where(o => o.Outcome == outcome))
        {
            any = true;
            Wrap(text, "* ", option.Name);
            var line = "sustains " + option.Capacity + (option.Utilisation is { } used ? ", uses " + Percent(used) : string.Empty) + ", can impose " + Provenance.Text.Kilonewtons(option.Imposable.Newtons, 3);
            if (option.TackleUtilisation is { } fall) line += "; fall line at planning high " + Percent(fall) + " of effort";
            if (option.Anchor?.Utilisation is { } anchor) line += "; anchor " + Percent(anchor);
            if (option.Holder?.Utilisation is { } holder) line += "; holder of the winch " + Percent(holder);
            Wrap(text, "    ", line);
            // The same haul to another anchor: what was said of the first is not said again.
            var thisHaul = option.Kind + " " + option.Name.Split([" to "], System.StringSplitOptions.None)[0];
            if (thisHaul != haul) said.Clear();
            var again = false;
            foreach (var stop in option.Findings.Where(f => f.Severity == Severity.Stop))
            {
                if (said.Add(stop.Message)) Wrap(text, "    - ", stop.Message);
                else again = true;
            }

            if (again) text.Append("    - and what was said of ").Append(haul.Substring(haul.IndexOf(' ') + 1)).Append(" above\n");
            haul = thisHaul;
        }

        if (!any) text.Append("  none\n");
    }

    private static string Percent(double share) => Provenance.Text.Number(100 * share, 2 + (share >= 1 ? 1 : 0)) + " %";

    private static void Wrap(StringBuilder text, string lead, string words) =>
        text.Append(lead).Append(string.Join("\n" + new string(' ', lead.Length), Provenance.Text.Wrap(words, Columns - lead.Length))).Append('\n');
}
