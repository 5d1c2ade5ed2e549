using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding that this room raises: what can pull it.</summary>
internal static class TractionFindings
{
    public static readonly FindingDefinition NoseLift = new(
        "pull.nose-lift",
        Severity.Stop,
        "The front of the {subject} would lift: the pull asks for {required} of moment about the rear axle, its front holds {available}.",
        "Hitch lower, add front ballast, or pull less: never hitch above the drawbar.",
        TractionSources.Nose);

    public static readonly FindingDefinition NoseLight = new(
        "pull.nose-light",
        Severity.Caution,
        "The front of the {subject} becomes light: the pull uses more than 0.8 of what holds it down ({required} of {available}).",
        "Add front ballast, hitch lower, or pull less.",
        TractionSources.Nose);

    public static readonly FindingDefinition PullerMayBog = new(
        "pull.puller-may-bog",
        Severity.Caution,
        "The {subject} can hardly move itself on its ground: it is left with {available} of pull there.",
        "Stand it on firmer ground with a longer line; look at its way in and out.",
        TractionSources.TwoPulls);

    public static readonly FindingDefinition WillNotMove = new(
        "pull.will-not-move-it",
        Severity.Stop,
        "This pull will not move it: {subject} sustains {available}, the central demand is {required}. Lighten, dig and vent first.",
        "Do the measures in the order of their worth, then look again; or use a second machine or tackle.",
        TractionSources.TwoPulls);

    public static readonly FindingDefinition Undecided = new(
        "pull.undecided",
        Severity.Caution,
        "Whether the pull will move it is undecided: {subject} sustains {available}, the central demand is {required}.",
        "One more measure before the pull; measure what is still assumed.",
        TractionSources.TwoPulls);

    public static readonly FindingDefinition BandsOverlap = new(
        "pull.bands-overlap",
        Severity.Note,
        "The band of what it takes reaches {required}, above the {available} that {subject} sustains at its low: it may still not move. No probability belongs to that.",
        "Lower the demand further before the pull.",
        TractionSources.TwoPulls);

    public static readonly FindingDefinition HitchRatingExceeded = new(
        "pull.hitch-rating-exceeded",
        Severity.Caution,
        "The {subject} can put {required} into a hitch that is rated for {available}: neither the rating nor a careful driver lowers what it can pull.",
        "Use a hitch or a machine that carries it, or less ballast on softer ground.",
        TractionSources.TwoPulls);

    public static readonly FindingDefinition PowerLimited = new(
        "pull.power-limited",
        Severity.Note,
        "At the stated speed the engine of {subject} gives {available}; its wheels would grip for {required}.",
        "Pull at a crawl in the lowest gear: at half the speed power allows twice the pull.",
        TractionSources.TwoPulls);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [NoseLift, NoseLight, PullerMayBog, WillNotMove, Undecided, BandsOverlap, HitchRatingExceeded, PowerLimited, .. WinchFindings.All, .. TackleFindings.All, .. AnchorFindings.All, .. TeamFindings.All, .. ChoiceFindings.All, .. TowingFindings.All];
}
