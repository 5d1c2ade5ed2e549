using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Sources of the room: the plan.</summary>
internal static class PlanningSources
{
    public static readonly Source PlanRules = new("plan-rules", "Verdict by the worst severity, will-not-move below 0.9 and undecided to 1.1 of the central demand: engineering judgement of this library", Standing.Judgement);
    public static readonly Source DigFirst = new("worksafe-victoria-2022", "Dig out, lighten and let the ground dry before a pull; nobody near the line: WorkSafe Victoria safety alert, November 2022; GRDC GroundCover 2022", Standing.Primary);
    public static readonly Source PeopleBetween = new("worksafe-wa-2019", "Nobody between two machines while either can move; both parked before anyone approaches; agreed signals: WorkSafe WA alert, July 2019", Standing.Secondary);
    public static readonly Source HitchLow = new("wisconsin-hitch-low", "Hitch to the drawbar alone, never above it; slack taken up slowly, no running start: University of Wisconsin Extension", Standing.Primary);
    public static readonly Source LineVictims = new("line-of-pull-victims", "Drivers in cabs on the line of pull are the usual victims: NIOSH FACE F2006-22; Minnesota FACE 96MN040", Standing.Primary);

    public static readonly Source RunsOn = new("runs-on", "Weight along the slope against the rolling resistance of the wheel model, at the rating cone index of its own soil (will) and on the firmest ground on its way (may): statics, the choice of levels is judgement of this library", Standing.Judgement);
    public static readonly Source LineInclined = new("line-inclined", "Vertical part of the line, T sin(pitch), on the stuck machine: statics; shown beside the demand, not inside it, by judgement of this library", Standing.Judgement);
    public static readonly Source Sideways = new("line-sideways", "Sideways part of the line and the share of the weight on the loaded side: statics; the levels (2 degrees to be mentioned, lift of one side to stop) are judgement of this library", Standing.Judgement);
    public static readonly Source Schedule = new("pull-schedule", "Four stages of equal steps up to the least allowed load: judgement of this library", Standing.Judgement);

    public static readonly Source Tackle = new("plan-tackle", "Tackle in a plan: a tenth of the load for each sheave counts against the sustained pull and not against the load on the gear; the anchor holds the parts but one: TB 9-2350-292-10 for the friction, statics, the severities are judgement of this library", Standing.Judgement);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [PlanRules, DigFirst, PeopleBetween, HitchLow, LineVictims, RunsOn, LineInclined, Sideways, Schedule, Tackle];
}
