using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

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

    /// <summary>Puts the values into their places in one pass: a name may hold braces of its own.</summary>
    private string Fill(string text, Func<string, string?> find)
    {
        var filled = new StringBuilder(text.Length);
        for (var at = 0; at < text.Length; at++)
        {
            var close = text[at] == '{' ? text.IndexOf('}', at) : -1;
            if (close > 0 && int.TryParse(text.Substring(at + 1, close - at - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var i) && i < values.Length)
            {
                filled.Append(Said(values[i], find));
                at = close;
            }
            else
            {
                filled.Append(text[at]);
            }
        }

        return filled.ToString();
    }

    private static string? Said(object value, Func<string, string?> find) => value is Phrase phrase ? phrase.In(find) : value is List<Phrase> list ? Join(", ", list, find) : value.ToString();
}
