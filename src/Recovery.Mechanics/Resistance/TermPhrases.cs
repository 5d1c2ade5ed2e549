using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>The names of the terms of a demand.</summary>
internal static class TermPhrases
{
    private const string Room = "term.";

    private static readonly List<PhraseTemplate> Known = [];

    public static readonly PhraseTemplate Roll = New("roll", "rolling of buried wheels");
    public static readonly PhraseTemplate Base = New("base", "locked wheels sliding");
    public static readonly PhraseTemplate Side = New("side", "mud on tyre walls");
    public static readonly PhraseTemplate Face = New("face", "soil ahead of buried wheels");
    public static readonly PhraseTemplate Suction = New("suction", "suction behind buried wheels");
    public static readonly PhraseTemplate Model = New("model", "wheels by the wheel model");
    public static readonly PhraseTemplate Belly = New("belly", "belly drag");
    public static readonly PhraseTemplate Lift = New("lift", "lifting the sealed belly");
    public static readonly PhraseTemplate Climb = New("climb", "climb out of the hole");
    public static readonly PhraseTemplate Grade = New("grade", "grade");

    public static IReadOnlyList<PhraseTemplate> All => Known;

    /// <summary>Key of a term without its room.</summary>
    public static string KeyOf(PhraseTemplate name) => name.Key.Substring(Room.Length);

    private static PhraseTemplate New(string key, string english) => new(Known, Room + key, english);
}
