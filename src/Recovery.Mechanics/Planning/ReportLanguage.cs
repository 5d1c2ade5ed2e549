using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>The words of reports, precautions, stages and measures, by key: English, or a host's own translation.</summary>
/// <remarks>
/// <para><see cref="EnglishTexts"/> lists every key with its English text; <c>{0}</c>, <c>{1}</c> stand for values that are put in (numbers with their units, names of the host's own parts). A translation may leave keys out: those stay English and are listed in <see cref="Missing"/>.</para>
/// <para>Beside these keys a translation may hold <c>finding.&lt;id&gt;.message</c> and <c>finding.&lt;id&gt;.remedy</c> (fields as in <see cref="Finding.Fill(string)"/>), and <c>&lt;assumption id&gt;.subject</c>, <c>.taken</c> and <c>.changes</c>. Immutable and safe for concurrent use.</para>
/// </remarks>
public sealed class ReportLanguage
{
    private readonly IReadOnlyDictionary<string, string> _texts;

    /// <summary>Makes a translation.</summary>
    /// <param name="name">Name of the language.</param>
    /// <param name="texts">Texts by key.</param>
    /// <exception cref="ArgumentNullException">The texts are null.</exception>
    /// <exception cref="ArgumentException">The name is empty, a key does not exist or is given twice, or a text asks for a value that its English does not have.</exception>
    public ReportLanguage(string name, IEnumerable<KeyValuePair<string, string>> texts)
    {
        Name = Guard.Name(name, nameof(name));
        var own = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var pair in Guard.NotNull(texts, nameof(texts)))
        {
            if (own.ContainsKey(pair.Key)) throw new ArgumentException("The key '" + pair.Key + "' is given twice.", nameof(texts));
            if (EnglishTexts.TryGetValue(pair.Key, out var english)) CheckFields(pair.Key, pair.Value, english);
            else if (!pair.Key.StartsWith("finding.", StringComparison.Ordinal) && !pair.Key.StartsWith("assume.", StringComparison.Ordinal)) throw new ArgumentException("There is no text with the key '" + pair.Key + "'.", nameof(texts));
            own.Add(pair.Key, pair.Value);
        }

        _texts = own;
    }

    /// <summary>Gets English.</summary>
    public static ReportLanguage English { get; } = new("English", []);

    /// <summary>Gets every key with its English text.</summary>
    public static IReadOnlyDictionary<string, string> EnglishTexts => ReportTexts.All;

    /// <summary>Gets the name of the language.</summary>
    public string Name { get; }

    /// <summary>Gets the keys that have no text of this language, in their order; all of them for English itself.</summary>
    public IReadOnlyList<string> Missing => EnglishTexts.Keys.Where(k => !_texts.ContainsKey(k)).OrderBy(k => k, StringComparer.Ordinal).ToList().AsReadOnly();

    /// <summary>Gives a text with its values put in.</summary>
    /// <param name="key">The key.</param>
    /// <param name="values">The values for <c>{0}</c>, <c>{1}</c> and so on.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException">The values are null.</exception>
    /// <exception cref="ArgumentException">There is no such key.</exception>
    public string Say(string key, params string[] values)
    {
        var text = Find(key) ?? (EnglishTexts.TryGetValue(key, out var english) ? english : throw new ArgumentException("There is no text with the key '" + key + "'.", nameof(key)));
        Guard.NotNull(values, nameof(values));
        for (var i = 0; i < values.Length; i++) text = text.Replace("{" + Text.Number(i) + "}", values[i]);
        return text;
    }

    /// <summary>Gives the name of the language.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    /// <summary>The text of this language alone; null where it has none.</summary>
    internal string? Find(string key) => _texts.TryGetValue(key, out var text) ? text : null;

    private static void CheckFields(string key, string text, string english)
    {
        for (var i = 0; i < 9; i++)
        {
            var field = "{" + Text.Number(i) + "}";
            if (text.IndexOf(field, StringComparison.Ordinal) >= 0 && english.IndexOf(field, StringComparison.Ordinal) < 0) throw new ArgumentException("The text of '" + key + "' asks for " + field + ", which its English does not have.", nameof(text));
        }
    }
}
