using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Clearance of a line over the motion of the casualty: every obstacle and the worst of them.</summary>
public sealed class ClearanceSweep
{
    internal ClearanceSweep(LineClearance way, IReadOnlyList<ObstacleClearance> obstacles)
    {
        Way = way;
        Obstacles = obstacles;
        Worst = obstacles.OrderBy(o => o.Least.Meters).FirstOrDefault();
        FirstContact = obstacles.Where(o => o.ContactAt is not null).OrderBy(o => o.ContactAt!.Value.DecimalFractions).FirstOrDefault();
    }

    /// <summary>Gets the way that was swept.</summary>
    public LineClearance Way { get; }

    /// <summary>Gets the obstacles that the line passes, each with its clearance.</summary>
    public IReadOnlyList<ObstacleClearance> Obstacles { get; }

    /// <summary>Gets the obstacle with the least clearance; null where the line passes none.</summary>
    public ObstacleClearance? Worst { get; }

    /// <summary>Gets the obstacle that the line touches first; null where it touches none.</summary>
    public ObstacleClearance? FirstContact { get; }

    /// <summary>Gives the least clearance when a share of the motion is done, for a drawing.</summary>
    /// <param name="done">Share of the motion, 0 to 1.</param>
    /// <returns>The least clearance of all obstacles then; null where the line passes none.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The share is outside its range.</exception>
    public Length? LeastAt(Ratio done)
    {
        var t = Guard.Fraction(done, 0, 1, nameof(done));
        double? least = null;
        foreach (var obstacle in Obstacles)
        {
            if (obstacle.At(t) is { } c && !(c >= least)) least = c;
        }

        return least is { } metres ? Length.FromMeters(metres) : null;
    }

    /// <summary>Gives what follows: a line that fouls as found stops the job, one that fouls within the motion is a caution with the rise, or over the ground the way, at which to stop and rig anew.</summary>
    /// <returns>The findings; empty where the line stays clear.</returns>
    public IReadOnlyList<Finding> Findings()
    {
        var findings = new List<Finding>();
        foreach (var obstacle in Obstacles.Where(o => o.FoulsAsFound)) findings.Add(new Finding(LinesFindings.FoulsMachine, LinesPhrases.BearsOn.With(obstacle.Name)));
        if (findings.Count == 0 && FirstContact is { } first)
        {
            double share = first.ContactAt!.Value.DecimalFractions, advance = Way.Advance.Meters;
            findings.Add(first.IsGround && advance > 0
                ? new Finding(LinesFindings.MeetsGround, LinesPhrases.The.With(first.Name), advance, advance * share, "m")
                : new Finding(LinesFindings.FoulsInClimb, advance > 0 ? LinesPhrases.TheAfter.With(first.Name, Text.With(advance * share, "m", 2)) : LinesPhrases.The.With(first.Name), Way.FrontRise.Meters, first.RiseAtContact!.Value.Meters, "m"));
        }

        return findings.AsReadOnly();
    }

    /// <summary>Gives the worst place in words, invariant culture.</summary>
    /// <returns>The worst obstacle.</returns>
    public override string ToString() => Worst?.ToString() ?? "no obstacle on the way of the line";
}
