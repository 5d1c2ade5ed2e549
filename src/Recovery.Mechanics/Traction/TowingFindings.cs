using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Kinds of finding and sources about how a towing machine is hitched.</summary>
internal static class TowingFindings
{
    public static readonly Source Category = new("drawbar-category", "ISO 6489-3, drawbar categories 0 to 5 with power and pins (scope primary, values from memory)", Standing.FromMemory);

    public static readonly Source Sideways = new("side-pull", "Moments about the contact of the loaded side; stop at overturning, caution above 0.8 and beyond 10 degrees off the centre line: statics (derived), levels judgement", Standing.Judgement);

    public static readonly Source Turning = new("rotating-inertia", "Energy of engine and wheels reflected to the line, held by a linear line without slip: statics and energy (derived)", Standing.Derived);

    public static readonly FindingDefinition Overturn = new(
        "pull.overturn",
        Severity.Stop,
        "The line across the {subject} uses {required} of what holds it upright; {available} is overturning.",
        "Pull along the centre line, turn the machine into the line first, or hitch lower.",
        Sideways);

    public static readonly FindingDefinition OffCentre = new(
        "pull.off-centre",
        Severity.Caution,
        "The line runs {available} off the centre line of the {subject}, more than {required}: it drags the machine sideways and loads one side.",
        "Turn the machine into the line before the pull.",
        Sideways);

    public static readonly FindingDefinition DrawbarBelowPower = new(
        "pull.drawbar-category",
        Severity.Caution,
        "The drawbar of the {subject} is of a category for {available}, its engine gives {required}.",
        "Look at the plate: a drawbar of a smaller tractor may have been fitted.",
        Category);

    public static readonly FindingDefinition DrawbarVertical = new(
        "pull.drawbar-vertical",
        Severity.Caution,
        "The falling line puts up to {required} down on the drawbar of the {subject}, which is rated for {available}.",
        "A longer line is flatter.",
        Category);

    public static readonly FindingDefinition NoSupport = new(
        "pull.track-no-support",
        Severity.Stop,
        "The ground gives the tracks of {subject} no support: there is no number for its pull.",
        "Stand it on other ground, or on mats.",
        TractionSources.TwoPulls);

    public static readonly FindingDefinition TrackEnd = new(
        "pull.track-end-light",
        Severity.Caution,
        "While it pulls, the ground bears {subject} {available} from the middle of its tracks, beyond the middle third at {required}: one end bears nothing and the other sinks deeper than reckoned.",
        "Hitch lower, ballast the front, or pull less.",
        TractionSources.Nose);

    /// <summary>All kinds of this file.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [Overturn, OffCentre, DrawbarBelowPower, DrawbarVertical, NoSupport, TrackEnd];

    /// <summary>All sources of this file.</summary>
    public static IEnumerable<Source> Sources { get; } = [Category, Sideways, Turning];
}
