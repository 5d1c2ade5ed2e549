using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding and sources about several machines.</summary>
internal static class TeamFindings
{
    /// <summary>Angle off the wanted direction above which it is a caution, degrees (judgement).</summary>
    public const double OffDegrees = 5;

    public static readonly Source Together = new("several-machines", "Several machines on one casualty: vector sum of their lines, equal tension in a free-running strap, common speed over the ground; statics, levels judgement", Standing.Judgement);

    public static readonly Source Angles = new("spread-angle", "Included angle of two lines: to 60 degrees as in a naval tow bridle (TB 55-1900-232-10), at most 120 degrees as in lifting (ASME B30.9, EN 1492); gates between by judgement", Standing.Judgement);

    public static readonly FindingDefinition NotTogether = new(
        "pull.team-not-together",
        Severity.Caution,
        "{subject} do not take up load at one moment: until the others pull, one machine has it all, and its gear with it.",
        "Lines equally taut before the pull, one person in command, one radio channel, all in gears of one speed.",
        GeneralSources.Trade);

    public static readonly FindingDefinition AngleWide = new(
        "pull.team-angle-wide",
        Severity.Caution,
        "The lines of {subject} spread by {available}, beyond {required}: part of the pull is lost across, and each line carries more than it gives.",
        "Longer lines, or machines nearer together; beyond 120 degrees do not pull so at all.",
        Angles);

    public static readonly FindingDefinition OffDirection = new(
        "pull.team-off-direction",
        Severity.Caution,
        "The pull of {subject} points {available} off the wanted direction, more than {required}: it draws the casualty out of its ruts.",
        "Set the stronger machine nearer to the direction of pull, or use an equaliser.",
        Together);

    public static readonly FindingDefinition FrontPoint = new(
        "pull.team-front-point",
        Severity.Caution,
        "The front point of {subject} by which the machine ahead draws it has no known rating; up to {required} can come onto it.",
        "Use a point that its maker rates for recovery; not the front axle, not a weight bracket.",
        Together);

    public static readonly FindingDefinition FrontPointExceeded = new(
        "pull.team-front-point-exceeded",
        Severity.Stop,
        "The machines ahead can put {required} onto the front point of {subject}, rated for {available}.",
        "Side by side instead of in line, or the weaker machine ahead.",
        Together);

    public static readonly FindingDefinition OneLosesGrip = new(
        "pull.team-one-loses-grip",
        Severity.Note,
        "If {subject} loses its grip, {available} of the {required} remain, suddenly.",
        "Stop at the first spinning wheel; do not make up for it with the others.",
        Together);

    /// <summary>All kinds of this file.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [NotTogether, AngleWide, OffDirection, FrontPoint, FrontPointExceeded, OneLosesGrip];

    /// <summary>All sources of this file.</summary>
    public static IEnumerable<Source> Sources { get; } = [Together, Angles];
}
