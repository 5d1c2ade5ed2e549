using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>The published rules side by side, and how they disagree.</summary>
/// <remarks>No derivation is published for 1, 1.5, 2 or 2.5 times the line. They describe the sweep of a line, while thrown hardware goes further. The ends of the line and the line of pull are excluded in all of them. The multiples are alternatives and are never multiplied with each other. The largest, taken over the whole line, is the floor of what is drawn (judgement).</remarks>
public static class DistanceRules
{
    /// <summary>Gets the rules.</summary>
    public static IReadOnlyList<DistanceRule> All { get; } = Array.AsReadOnly<DistanceRule>(
    [
        new("army-cable", 1, "cable", "at least one cable length, opposite the angle of pull", LinesSources.ArmyManual),
        new("army-paid-out", 2, "paid-out line", "at least twice the paid-out length, in the same text", LinesSources.ArmyManual),
        new("strap-instructions", 1.5, "unstretched strap", "at least 1.5 times the unstretched strap from the vehicles, never in its path", LinesSources.StrapInstructions),
        new("emergency-service", 1.5, "tow line", "1.5 times the tow line, at right angles, never at either end", LinesSources.EmergencyService),
        new("farmers-programme", 2.5, "line", "2.5 times, to the side", LinesSources.FarmersProgramme),
        new("regulators", null, string.Empty, "an exclusion zone without a number, at right angles, operators alone inside", LinesSources.RegulatorZone),
        new("mooring-alert", null, string.Empty, "almost the remaining length, through and past the held end", LinesSources.MooringAlert),
        new("mooring-deck", null, string.Empty, "no zones at all: the whole mooring deck", LinesSources.MooringDeck),
    ]);

    /// <summary>Gets the rule with the largest multiple.</summary>
    public static DistanceRule Largest { get; } = All.Where(r => r.Multiple is not null).OrderByDescending(r => r.Multiple).First();

    /// <summary>Gives the distances of all rules with a number over one length, smallest first: how far they disagree.</summary>
    /// <param name="line">The line, 0 to 1,000 m.</param>
    /// <returns>The distances.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static IReadOnlyList<Length> Distances(Length line) => All.Where(r => r.Multiple is not null).Select(r => r.Distance(line)!.Value).OrderBy(d => d.Meters).ToList().AsReadOnly();

    /// <summary>Gives the floor of the drawn area: the largest rule over the whole unstretched line.</summary>
    /// <param name="wholeLine">From the drawbar to the casualty's axle, the longer leg of a bridle and the axle strap included, 0 to 1,000 m.</param>
    /// <returns>The distance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static Length FloorOfDrawnArea(Length wholeLine) => Largest.Distance(wholeLine)!.Value;
}
