using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>A text that a room composes its words of: a key for translations, and its English with <c>{0}</c>, <c>{1}</c> for values.</summary>
internal sealed class PhraseTemplate
{
    /// <summary>Makes a template and puts it into the list of its room.</summary>
    public PhraseTemplate(List<PhraseTemplate> room, string key, string english)
    {
        Key = key;
        English = english;
        room.Add(this);
    }

    public string Key { get; }

    public string English { get; }

    /// <summary>The phrase with its values: names, numbers with their units, or other phrases.</summary>
    public Phrase With(params object[] values) => new(this, values);
}
