using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Words that the findings of a plan are composed of.</summary>
internal static class PlanningPhrases
{
    private static readonly List<PhraseTemplate> Known = [];

    public static readonly PhraseTemplate ForwardsUnder = New("forwards-under", "the machine is drawn forwards, yet the line is said to run back under it");
    public static readonly PhraseTemplate ApproachFaster = New("approach-faster", "the approach of {0} is faster than the locked gear of {1}");
    public static readonly PhraseTemplate TwoRatings = New("two-ratings", "the hitch is rated {0} at the towing machine and {1} in the rig");
    public static readonly PhraseTemplate TwoLeans = New("two-leans", "the {0} is said to lean by {1}, and the line to lie {2} off the direction of the pull");
    public static readonly PhraseTemplate TwoFalls = New("two-falls", "the line is said to fall by {0} towards the casualty, and its ends were measured at a fall of {1}");
    public static readonly PhraseTemplate HumpsUnchecked = New("humps-unchecked", "the humps between the machines ({0})");
    public static readonly PhraseTemplate TackleLeads = New("tackle-leads", "a tackle leads the line another way");
    public static readonly PhraseTemplate AttachmentMissing = New("attachment-missing", "place or height of the attachment is missing");
    public static readonly PhraseTemplate PastOwnAxle = New("past-own-axle", "the line runs past its own machine's axle");
    public static readonly PhraseTemplate AheadOfAxle = New("ahead-of-axle", "drawn forwards by a point ahead of its front axle: that way is not worked, look along the line");
    public static readonly PhraseTemplate EndsDoNotFit = New("ends-do-not-fit", "its ends do not fit its length");
    public static readonly PhraseTemplate SoilBeside = New("soil-beside", "soil beside the {0}");
    public static readonly PhraseTemplate SoilUnder = New("soil-under", "soil under the {0}");
    public static readonly PhraseTemplate Tackle = New("tackle", "tackle of {0} parts");
    public static readonly PhraseTemplate SustainedPull = New("sustained-pull", "the sustained pull of the {0}");
    public static readonly PhraseTemplate Nose = New("nose", "the nose of the {0}");
    public static readonly PhraseTemplate Hitch = New("hitch", "the hitch of the {0}");
    public static readonly PhraseTemplate Lifts = New("lifts", "lifts");
    public static readonly PhraseTemplate Presses = New("presses", "presses on");
    public static readonly PhraseTemplate LineOfPull = New("line-of-pull", "line of pull");
    public static readonly PhraseTemplate FromMemory = New("from-memory", "the cone factor, the friction in the bridle's eye and the stiffness of webbing that nobody measured");
    public static readonly PhraseTemplate FromMemoryWithRule = New("from-memory-with-rule", "the cone factor, the factors of the depth rule, the friction in the bridle's eye and the stiffness of webbing that nobody measured");

    public static IReadOnlyList<PhraseTemplate> All => Known;

    private static PhraseTemplate New(string key, string english) => new(Known, "plan." + key, english);
}
