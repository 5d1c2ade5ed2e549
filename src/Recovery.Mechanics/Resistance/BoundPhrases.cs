using System.Collections.Generic;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>The words of how a bound arises.</summary>
internal static class BoundPhrases
{
    private static readonly List<PhraseTemplate> Known = [];

    public static readonly PhraseTemplate TakesCentral = New("takes-central", "its own sum would cross central, so it takes central");
    public static readonly PhraseTemplate Locked = New("locked", "braked wheels slide locked");
    public static readonly PhraseTemplate Turning = New("turning", "wheels turn, buried ones at {0} of their load");
    public static readonly PhraseTemplate Rolling = New("rolling", "wheels roll");
    public static readonly PhraseTemplate Vented = New("vented", "vented");
    public static readonly PhraseTemplate Dug = New("dug", "dug out");
    public static readonly PhraseTemplate DugSealed = New("dug-sealed", "dug out, belly sealed");
    public static readonly PhraseTemplate PartVented = New("part-vented", "part-vented, {0} of the suction");
    public static readonly PhraseTemplate Sealed = New("sealed", "sealed");
    public static readonly PhraseTemplate NoSoil = New("no-soil-ahead", "no soil ahead of the wheels");
    public static readonly PhraseTemplate OpenRuts = New("open-ruts", "drawn back along open ruts");
    public static readonly PhraseTemplate Uncut = New("uncut", "uncut soil ahead of the {0}");
    public static readonly PhraseTemplate ExitDug = New("exit-dug", "exit {0} as dug");
    public static readonly PhraseTemplate ExitMeasured = New("exit-measured", "exit {0} as measured");
    public static readonly PhraseTemplate ExitOpen = New("exit-open", "exit {0}, not measured");
    public static readonly PhraseTemplate Level = New("level", "level");
    public static readonly PhraseTemplate NothingRises = New("nothing-rises", "no uplift of its belly, because on rolling wheels nothing rises");
    public static readonly PhraseTemplate UpliftShare = New("uplift-share", "{0} of the uplift of its belly, as far as the wheels bear it");
    public static readonly PhraseTemplate UpliftAll = New("uplift-all", "all the uplift of its belly, as far as the wheels bear it");
    public static readonly PhraseTemplate NoUplift = New("no-uplift", "no uplift of its belly, which the wheels could not bear");
    public static readonly PhraseTemplate Middle = New("middle-strengths", "middle strengths of wall and floor");
    public static readonly PhraseTemplate WeakestWall = New("weakest-wall", "weakest wall");
    public static readonly PhraseTemplate StrongestWall = New("strongest-wall", "strongest wall");
    public static readonly PhraseTemplate Least = New("least", "least");
    public static readonly PhraseTemplate Greatest = New("greatest", "greatest");
    public static readonly PhraseTemplate OneFloor = New("one-floor", "{0}, the one floor there is");
    public static readonly PhraseTemplate WeakestFloor = New("weakest-floor", "{0}, weakest floor, where the sum is {1}");
    public static readonly PhraseTemplate StrongestFloor = New("strongest-floor", "{0}, strongest floor, where the sum is {1}");
    public static readonly PhraseTemplate ChangeFloor = New("change-floor", "{0}, floor at which the belly goes over to its share by area, where the sum is {1}");
    public static readonly PhraseTemplate BetweenFloor = New("between-floor", "{0}, floor between its ends, where the sum is {1}");
    public static readonly PhraseTemplate StraightFrame = New("straight-frame", "straight frame");
    public static readonly PhraseTemplate LinkedAxles = New("linked-axles", "linked axles");

    public static IReadOnlyList<PhraseTemplate> All => Known;

    /// <summary>How the axles share the load.</summary>
    public static PhraseTemplate Of(Suspension frame) => frame == Suspension.StraightFrame ? StraightFrame : LinkedAxles;

    private static PhraseTemplate New(string key, string english) => new(Known, "bound." + key, english);
}
