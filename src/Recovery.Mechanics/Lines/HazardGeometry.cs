using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>What a host can draw round a pull: discs about the anchors that survive, the excluded line of pull through and past both ends, the reach of thrown hardware along it, and the largest published rule as the least to draw.</summary>
/// <remarks>
/// <para>A parted line sweeps within its remaining unstretched length and its stretch about the anchor it is still tied to, on both sides. Detached hardware flies along the line of pull, both ways where nothing ties it; no spread of its direction is published, so no cone is drawn. Cabs on the line of pull are in its way.</para>
/// <para>Reach estimates and quoted rules, each with its author; no distance at which anybody is out of danger. Source: geometry (derived), published rules (reported), the choice of the largest is judgement. Immutable.</para>
/// </remarks>
public sealed class HazardGeometry
{
    private HazardGeometry(IReadOnlyList<HazardDisc> discs, PlanPoint first, PlanPoint second, double? reach)
    {
        Discs = discs;
        AxisFrom = first;
        AxisTo = second;
        ThrownReach = reach is { } r ? Length.FromMeters(r) : null;
    }

    /// <summary>Gets the discs: sweeps about both anchors, the largest published rule about both ends.</summary>
    public IReadOnlyList<HazardDisc> Discs { get; }

    /// <summary>Gets one end of the line of pull. The whole line through both ends and past them is excluded.</summary>
    public PlanPoint AxisFrom { get; }

    /// <summary>Gets the other end of the line of pull.</summary>
    public PlanPoint AxisTo { get; }

    /// <summary>Gets how far hardware can be thrown along the axis past either end; null where none can come free.</summary>
    public Length? ThrownReach { get; }

    /// <summary>Makes the geometry of a pull.</summary>
    /// <param name="drawbar">The drawbar in plan.</param>
    /// <param name="attachment">The attachment on the casualty in plan.</param>
    /// <param name="wholeLine">Unstretched line from anchor to anchor with the longer leg of a bridle and the axle strap, 0.2 to 300 m.</param>
    /// <param name="stretch">Stretch at the load it may part at, 0 to 100 m.</param>
    /// <param name="thrownReach">Reach of hardware that can come free; null where none can. 0 to 10 km.</param>
    /// <returns>The geometry.</returns>
    /// <exception cref="ArgumentNullException">A point is null.</exception>
    /// <exception cref="ArgumentException">Both ends are the same point.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static HazardGeometry Of(PlanPoint drawbar, PlanPoint attachment, Length wholeLine, Length stretch, Length? thrownReach)
    {
        Guard.NotNull(drawbar, nameof(drawbar));
        Guard.NotNull(attachment, nameof(attachment));
        double line = Guard.Metres(wholeLine, 0.2, 300, nameof(wholeLine)), sweep = line + Guard.Metres(stretch, 0, 100, nameof(stretch));
        double? reach = thrownReach is { } r ? Guard.Metres(r, 0, 10000, nameof(thrownReach)) : null;
        if (Math.Abs(drawbar.X.Meters - attachment.X.Meters) + Math.Abs(drawbar.Y.Meters - attachment.Y.Meters) < 1e-9)
            throw new ArgumentException("attachment must not be the point of the drawbar, because then there is no line of pull.", nameof(attachment));
        var rule = DistanceRules.FloorOfDrawnArea(wholeLine).Meters;
        return new HazardGeometry(
            new List<HazardDisc>
            {
                new("sweep", drawbar, sweep, "sweep of a line still tied to the drawbar", GeneralSources.Statics),
                new("sweep", attachment, sweep, "sweep of a line still tied to the casualty", GeneralSources.Statics),
                new("published-rule", drawbar, rule, "largest published rule over the whole line: the least to draw", DistanceRules.Largest.Source),
                new("published-rule", attachment, rule, "largest published rule over the whole line: the least to draw", DistanceRules.Largest.Source),
            }.AsReadOnly(),
            drawbar,
            attachment,
            reach);
    }

    /// <summary>Tells what a point lies in. A point outside all of it is not out of danger.</summary>
    /// <param name="point">The point in plan.</param>
    /// <param name="halfWidth">Half width that is drawn about the line of pull, 0 to 1,000 m: a choice of the host, no spread is published.</param>
    /// <returns>True in a disc, or on the drawn strip about the line of pull and its continuation as far as hardware is thrown.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its range.</exception>
    public bool Covers(PlanPoint point, Length halfWidth)
    {
        Guard.NotNull(point, nameof(point));
        var half = Guard.Metres(halfWidth, 0, 1000, nameof(halfWidth));
        foreach (var disc in Discs)
        {
            double dx = point.X.Meters - disc.Centre.X.Meters, dy = point.Y.Meters - disc.Centre.Y.Meters;
            if ((dx * dx) + (dy * dy) <= disc.Radius.Meters * disc.Radius.Meters) return true;
        }

        double ax = AxisTo.X.Meters - AxisFrom.X.Meters, ay = AxisTo.Y.Meters - AxisFrom.Y.Meters, length = Math.Sqrt((ax * ax) + (ay * ay));
        double px = point.X.Meters - AxisFrom.X.Meters, py = point.Y.Meters - AxisFrom.Y.Meters;
        double along = ((px * ax) + (py * ay)) / length, across = ((px * ay) - (py * ax)) / length, past = ThrownReach?.Meters ?? 0;
        return Math.Abs(across) <= half && along >= -past && along <= length + past;
    }

    /// <summary>Gives the geometry in words, invariant culture.</summary>
    /// <returns>One line for each disc and one for the axis.</returns>
    public override string ToString() => string.Join("; ", Discs) + "; line of pull " + AxisFrom + " to " + AxisTo + " and beyond excluded" + (ThrownReach is { } reach ? ", hardware up to " + Text.With(reach.Meters, "m", 3) + " past either end" : string.Empty);
}
