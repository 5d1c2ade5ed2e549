using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Words and numbers together: a language and the units asked for.</summary>
internal sealed class Wording(Display display, ReportLanguage language)
{
    /// <summary>English, metric.</summary>
    public static Wording Default { get; } = new(Display.Metric, ReportLanguage.English);

    /// <summary>Gets the units.</summary>
    public Display Display { get; } = display;

    /// <summary>Gets the language.</summary>
    public ReportLanguage Language { get; } = language;

    /// <summary>A text with its values.</summary>
    public string Say(string key, params string[] values) => Language.Say(key, values);

    /// <summary>Words that a room gives.</summary>
    public string Say(Phrase phrase) => phrase.In(Language.Find);

    /// <summary>The title of a measure.</summary>
    public string Title(Measure measure) => Say("measure." + measure.TextKey, [.. measure.Values]);

    /// <summary>What to mind with a measure; empty where there is nothing of its own.</summary>
    public string Caution(Measure measure) => ReportLanguage.EnglishTexts.ContainsKey("measure." + measure.TextKey + ".mind") ? Say("measure." + measure.TextKey + ".mind") : string.Empty;

    /// <summary>The message of a finding.</summary>
    public string Message(Finding finding) => Display.Fill(finding, Language.Find("finding." + finding.Id + ".message") ?? finding.Definition.Message, finding.SubjectIn(Language.Find));

    /// <summary>The remedy of a finding.</summary>
    public string Remedy(Finding finding) => Display.Fill(finding, Language.Find("finding." + finding.Id + ".remedy") ?? finding.Definition.Remedy, finding.SubjectIn(Language.Find));

    /// <summary>An assumption in words.</summary>
    public string Assumed(Assumption a) => Say("assumed", Language.Find(a.Id + ".subject") ?? a.Subject, Language.Find(a.Id + ".taken") ?? a.Taken, Language.Find(a.Id + ".changes") ?? a.WouldChange);
}
