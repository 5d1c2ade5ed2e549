using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Words on why the handbook rule and the soil model lie apart, and which readings are held.</summary>
internal static class MethodPhrases
{
    private static readonly List<PhraseTemplate> Known = [];

    public static readonly PhraseTemplate EveryReading = New("every-reading", "every reading (low, central and high)");
    public static readonly PhraseTemplate AllButWeakest = New("all-but-weakest", "all but the weakest reading (low and central of the demand)");
    public static readonly PhraseTemplate IndexAlone = New("index-alone", "the cone index alone (low of the demand; the rating cone index of central stays as it is)");
    public static readonly PhraseTemplate RuleKnows = New("rule-knows", "The rule looks at weight and depth alone, here {0} the weight; it does not know {1}.");
    public static readonly PhraseTemplate RuleHeavy = New("rule-heavy", "The rule looks at weight and depth alone, here {0} the weight: a heavy machine in weak ground needs less.");
    public static readonly PhraseTemplate SoilAbove = New("soil-above", "The rule looks at weight and depth alone: strong or sealed soil round a light machine holds more. Most of central is {0}.");
    public static readonly PhraseTemplate Once = New("once", "once");
    public static readonly PhraseTemplate Twice = New("twice", "twice");
    public static readonly PhraseTemplate ThreeTimes = New("three-times", "three times");
    public static readonly PhraseTemplate And = New("and", "{0} and {1}");
    public static readonly PhraseTemplate HoleDug = New("hole-dug", "that the hole has been dug");
    public static readonly PhraseTemplate IsVented = New("is-vented", "that it is vented");
    public static readonly PhraseTemplate BellyFree = New("belly-free", "that the belly is free");
    public static readonly PhraseTemplate RutsOpen = New("ruts-open", "that the ruts are open");
    public static readonly PhraseTemplate GroundFalls = New("ground-falls", "that the ground falls along the pull, where its own weight takes {0} % off what would hold it on the level");
    public static readonly PhraseTemplate Share = New("share", "{0} ({1} %)");

    public static IReadOnlyList<PhraseTemplate> All => Known;

    /// <summary>Phrases with "and" between them.</summary>
    public static Phrase Both(List<Phrase> phrases) => phrases.Skip(1).Aggregate(phrases[0], (a, b) => And.With(a, b));

    private static PhraseTemplate New(string key, string english) => new(Known, "method." + key, english);
}
