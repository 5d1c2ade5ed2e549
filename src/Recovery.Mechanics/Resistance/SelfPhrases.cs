using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>The words on a machine's own wheels: what can be said, what each step does, what driving is worth.</summary>
internal static class SelfPhrases
{
    private static readonly List<PhraseTemplate> Known = [];

    public static readonly PhraseTemplate NotDriven = New("not-driven", "No axle is driven, so it cannot move itself.");
    public static readonly PhraseTemplate NoModel = New("no-model", "No number answers: the wheels of the {0} are buried, and a buried wheel is in no wheel model's range.");
    public static readonly PhraseTemplate Held = New("held", "It stays: at the best of its soil its driven wheels keep less, net of what they cost to roll while they slip, than holds it beside that at the least.{0}");
    public static readonly PhraseTemplate Moves = New("moves", "It moves itself by the wheel model: over the whole of its soil its driven wheels keep more, net of what they cost to roll while they slip, than holds it beside that.");
    public static readonly PhraseTemplate Overlap = New("overlap", "Undecided: what its driven wheels keep, net of what they cost to roll while they slip, and what holds it beside that overlap.{0}");
    public static readonly PhraseTemplate OverlapLeft = New("overlap-left", "Undecided: what its driven wheels keep, net of what they cost to roll while they slip, and what holds it beside that overlap, and the wheel model is left.{0}");
    public static readonly PhraseTemplate NotCredited = New("listed", " Listed, not credited: {0}.");

    public static readonly PhraseTemplate AxleBuried = New("axle-buried", "{0} (buried: in no wheel model's range)");
    public static readonly PhraseTemplate AxleEmpty = New("axle-empty", "{0} (carries nothing)");
    public static readonly PhraseTemplate AxleOutside = New("axle-outside", "{0} (outside the wheel model: {1})");

    public static readonly PhraseTemplate Unload = New("unload", "unload {0}");
    public static readonly PhraseTemplate TakeOff = New("take-off", "take off {0}");
    public static readonly PhraseTemplate Inflation = New("inflation", "lowest inflation");
    public static readonly PhraseTemplate Dig = New("dig", "dig out to 1:6");
    public static readonly PhraseTemplate Vent = New("vent", "vent");
    public static readonly PhraseTemplate FreeBelly = New("free-belly", "free the belly");
    public static readonly PhraseTemplate AllOfIt = New("all-of-it", "all of it");
    public static readonly PhraseTemplate TurnForwards = New("turn-forwards", "turn round, out forwards");
    public static readonly PhraseTemplate TurnRearwards = New("turn-rearwards", "turn round, out rearwards");

    public static readonly PhraseTemplate DigStays = New("dig-stays", "unchanged, because that number is for wheels that roll, and digging takes soil from wheels that are sunk");
    public static readonly PhraseTemplate VentStays = New("vent-stays", "unchanged, because that number is for wheels that roll, which nothing sucks down");
    public static readonly PhraseTemplate BellyStays = New("belly-stays", "unchanged, because that number counts the whole load on the wheels already; freed, they carry it");
    public static readonly PhraseTemplate HoldsAlike = New("holds-alike", "{0}; nor does it change what holds it");
    public static readonly PhraseTemplate Rises = New("rises", "the ground rises that way");
    public static readonly PhraseTemplate FallsThatWay = New("falls", "the ground falls that way");
    public static readonly PhraseTemplate LevelGround = New("level", "unchanged, because the ground is level along the pull");
    public static readonly PhraseTemplate OtherSide = New("other-side", "{0}; what was dug and measured belongs to the other side");
    public static readonly PhraseTemplate LugsAgainst = New("lugs-against", "{0}; its lugs do not bite that way, which no number here counts");
    public static readonly PhraseTemplate LugsBite = New("lugs-bite", "{0}; its lugs bite that way, which no number here counts");
    public static readonly PhraseTemplate NoSoilHolds = New("no-soil-holds", "unchanged, because its driven wheels do not hold it on any soil");
    public static readonly PhraseTemplate NoAxle = New("no-axle", "unchanged, because no axle is driven");
    public static readonly PhraseTemplate LoadOff = New("load-off", "it takes the load off the driven wheels");
    public static readonly PhraseTemplate LoadOn = New("load-on", "it puts load on the {0}");
    public static readonly PhraseTemplate BestGrip = New("best-grip", "it takes load off the wheels that grip best");
    public static readonly PhraseTemplate LittleChange = New("little-change", "hardly changed, because it does little to the wheels that decide");
    public static readonly PhraseTemplate EndOfFit = New("end-of-fit", "deflection of the tyres counted to 30 % of section height, the end of the fit");

    public static readonly PhraseTemplate WorthOfDriving = New("worth", "{0}; {1}");
    public static readonly PhraseTemplate AgainstLocked = New("against-locked", "turning wheels against locked ones");
    public static readonly PhraseTemplate AgainstLockedTurning = New("against-locked-turning", "turning wheels against locked ones (the central demand has them turning already)");
    public static readonly PhraseTemplate NoneLocks = New("none-locks", "no axle can lock, so turning saves nothing");
    public static readonly PhraseTemplate SlidingLess = New("sliding-less", "sliding over this weak floor takes less than rolling in it, so turning saves nothing");
    public static readonly PhraseTemplate SlidingAlike = New("sliding-alike", "sliding takes hardly more than rolling here, so turning saves little or nothing");
    public static readonly PhraseTemplate NoneDriven = New("none-driven", "no axle is driven, so there is no traction to add");
    public static readonly PhraseTemplate NetCounted = New("net-counted", "the net traction of the {0} is in the figure");
    public static readonly PhraseTemplate NoMoreThanRolling = New("no-more-than-rolling", "no traction is added: the wheels grip no more than they need to roll");
    public static readonly PhraseTemplate NoTractionBuried = New("no-traction-buried", "no traction is added: a buried wheel is in no wheel model's range");
    public static readonly PhraseTemplate NoTraction = New("no-traction", "no traction is added: {0}");

    public static IReadOnlyList<PhraseTemplate> All => Known;

    private static PhraseTemplate New(string key, string english) => new(Known, "own." + key, english);
}
