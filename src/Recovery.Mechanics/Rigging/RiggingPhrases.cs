using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Words that places, levels and flying pieces of a rig are named with.</summary>
internal static class RiggingPhrases
{
    private static readonly List<PhraseTemplate> Known = [];

    public static readonly PhraseTemplate BightInEye = New("bight-in-eye", "{0}, bight in the eye (0.5)");
    public static readonly PhraseTemplate EyeOnBight = New("eye-on-bight", "{0}, eye on the bight (0.5)");
    public static readonly PhraseTemplate BightWithFigure = New("bight-with-figure", "{0}, bight (maker's figure)");
    public static readonly PhraseTemplate Leg = New("leg", "{0}, leg");
    public static readonly PhraseTemplate EachSide = New("each-side", "{0}, each side");
    public static readonly PhraseTemplate OneSide = New("one-side", "{0}, one side");
    public static readonly PhraseTemplate AtCareless = New("at-careless", "{0}, careless take-up");
    public static readonly PhraseTemplate AtStop = New("at-stop", "{0}, stop level");
    public static readonly PhraseTemplate AtPeak = New("at-peak", "{0}, limit on its peak");
    public static readonly PhraseTemplate AtFull = New("at-full", "{0}, full factors");
    public static readonly PhraseTemplate AtRated = New("at-rated", "{0}, rated check");
    public static readonly PhraseTemplate AtWorkingLoad = New("at-working-load", "{0}, working load");
    public static readonly PhraseTemplate AtYield = New("at-yield", "{0}, yield");
    public static readonly PhraseTemplate BightNearGate = New("bight-near-gate", "bight of the {0} in its eye");
    public static readonly PhraseTemplate TornOff = New("torn-off", "torn-off piece of the {0}");
    public static readonly PhraseTemplate BrokenOff = New("broken-off", "broken-off piece of the {0}");

    /// <summary>Whom a free end flies towards.</summary>
    public static readonly Phrase Puller = New("puller", "the puller").With(), Casualty = New("casualty", "the stuck machine").With();

    public static IReadOnlyList<PhraseTemplate> All => Known;

    private static PhraseTemplate New(string key, string english) => new(Known, "rig." + key, english);
}
