using System;
using System.Collections.Generic;
using System.Linq;

namespace Recovery.Mechanics.Provenance;

/// <summary>Words that a room gives: in English by themselves, in a host's language by key. Equal where they say the same.</summary>
internal sealed class Phrase(PhraseTemplate? template, object[] values) : IEquatable<Phrase>
{
    /// <summary>Gives the words, by the templates of a language; English where it has none for a key.</summary>
    public string In(Func<string, string?> find) => template is null ? Fill("{0}", find) : Fill(find(template.Key) ?? template.English, find);

    public bool Equals(Phrase? other) => other is not null && ToString() == other.ToString();

    public override bool Equals(object? obj) => Equals(obj as Phrase);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(ToString());

    public override string ToString() => In(static _ => null);

    /// <summary>A name of the user's own, which no language changes.</summary>
    public static Phrase Name(string name) => new(null, [name]);

    /// <summary>Several phrases with commas between them.</summary>
    public static Phrase List(List<Phrase> phrases) => phrases.Count == 1 ? phrases[0] : new(null, [phrases]);

    /// <summary>Several phrases behind one another.</summary>
    public static string Join(string between, IEnumerable<Phrase> phrases, Func<string, string?> find) => string.Join(between, phrases.Select(p => p.In(find)));

    private string Fill(string text, Func<string, string?> find)
    {
        for (var i = 0; i < values.Length; i++) text = text.Replace("{" + Text.Number(i) + "}", values[i] is Phrase phrase ? phrase.In(find) : values[i] is List<Phrase> list ? Join(", ", list, find) : values[i].ToString());
        return text;
    }
}
