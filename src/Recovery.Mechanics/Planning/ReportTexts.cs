using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The English of every text of a report, by key.</summary>
internal static partial class ReportTexts
{
    /// <summary>Gets every key with its text.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = Collect();

    private static Dictionary<string, string> Collect()
    {
        var all = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var table in (string[][])[Report, Rig, Work, Stages, Record, MeasureTitles])
        {
            for (var i = 0; i < table.Length; i += 2) all.Add(table[i], table[i + 1]);
        }

        foreach (var room in (IReadOnlyList<PhraseTemplate>[])[BoundPhrases.All, MethodPhrases.All, TermPhrases.All, SelfPhrases.All, RiggingPhrases.All, LinesPhrases.All, PlanningPhrases.All])
        {
            foreach (var phrase in room) all.Add(phrase.Key, phrase.English);
        }

        return all;
    }
}
