using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Words that findings on lines are composed of.</summary>
internal static class LinesPhrases
{
    private static readonly List<PhraseTemplate> Known = [];

    public static readonly PhraseTemplate NotEngaged = New("gear-not-engaged", "the gear is not engaged before the line comes taut");
    public static readonly PhraseTemplate Overrun = New("gear-overrun", "the rims can overrun the gear");
    public static readonly PhraseTemplate Falls = New("gear-falls", "the ground falls along the pull");
    public static readonly PhraseTemplate CannotSlip = New("gear-cannot-slip", "the wheels cannot slip");
    public static readonly PhraseTemplate Clutch = New("gear-clutch", "a clutch may be dropped on a low-stretch line");
    public static readonly PhraseTemplate Downhill = New("gear-downhill", "the puller may stand facing downhill");
    public static readonly PhraseTemplate Turning = New("gear-turning", "what engine and wheels that turn add then is not declared and not in the load");
    public static readonly PhraseTemplate Approach = New("gear-approach", "the approach is faster than the gear");
    public static readonly PhraseTemplate Stiff = New("gear-stiff", "the line, of {0}, stretches little, and neither is it declared free of slack nor the clutch eased");
    public static readonly PhraseTemplate BearsOn = New("bears-on", "it bears on the {0}");
    public static readonly PhraseTemplate The = New("the", "the {0}");
    public static readonly PhraseTemplate TheAfter = New("the-after", "the {0} (after {1} of its way)");
    public static readonly PhraseTemplate TheBelly = New("the-belly", "the belly");
    public static readonly PhraseTemplate EyeBeforeBelly = New("eye-before-belly", "the eye lies in front of the end of the belly, so the line runs into belly and soil");
    public static readonly PhraseTemplate LegsBesideBelly = New("legs-beside-belly", "the legs of the bridle do not pass beside the belly, which is {0} wide");
    public static readonly PhraseTemplate BellyUnmeasured = New("belly-unmeasured", "the belly is on the ground and nobody has measured whether the line passes beside it");

    public static IReadOnlyList<PhraseTemplate> All => Known;

    private static PhraseTemplate New(string key, string english) => new(Known, "line." + key, english);
}
