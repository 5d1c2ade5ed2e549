using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;

namespace Recovery.Mechanics.Planning;

/// <summary>The measures that a plan leaves open, and what each is worth.</summary>
public static class MeasureList
{
    /// <summary>Gives the measures that apply to a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The measures, in the order in which they are usually done.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    public static IReadOnlyList<Measure> For(RecoveryPlan plan)
    {
        Guard.NotNull(plan, nameof(plan));
        var stuck = plan.Stuck;
        var measures = new List<Measure>();
        foreach (var load in stuck.Machine.Loads)
        {
            if (load.Kind == LoadKind.Payload) measures.Add(RecoveryMeasures.Unload(load.Name));
            if (load.Kind == LoadKind.Detachable) measures.Add(RecoveryMeasures.Detach(load.Name));
        }

        if (stuck.Machine.Axles.Any(a => a.Tyre.LowestInflation is { } lowest && lowest.Pascals < a.Tyre.Inflation.Pascals)) measures.Add(RecoveryMeasures.Deflate());
        if (stuck.AnyWheelBuried && stuck.DugSlope is null) measures.Add(RecoveryMeasures.Dig(CompiledStuckMachine.OfferedRamp));
        if ((stuck.AnyWheelBuried || stuck.Belly is not null) && stuck.Seal != Seal.Vented) measures.Add(RecoveryMeasures.Vent());
        if (stuck.Belly is not null) measures.Add(RecoveryMeasures.FreeBelly());
        if (stuck.Wheels != WheelMotion.Turning && stuck.Machine.Axles.Any(a => a.Driven)) measures.Add(RecoveryMeasures.DriveOwnWheels());
        return measures.AsReadOnly();
    }

    /// <summary>Gives the set of at most a number of measures that leaves the least central demand, every set worked whole.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="most">Most measures in the set, 1 to 4.</param>
    /// <returns>The measures of the best set; of two alike the smaller, then the one first in order.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is outside its range.</exception>
    public static IReadOnlyList<Measure> BestSet(RecoveryPlan plan, int most)
    {
        Guard.Count(most, 1, 4, nameof(most));
        var measures = For(plan);
        var best = Array.Empty<Measure>();
        var least = PullDemand.Estimate(plan.Stuck).CentralNewtons;
        Extend([], 0, plan);
        return Array.AsReadOnly(best);

        void Extend(Measure[] chosen, int from, RecoveryPlan edited)
        {
            var demand = edited.Compiled.CentralDemand(edited.Stuck);
            if (demand < least - 1 || (Math.Abs(demand - least) <= 1 && chosen.Length < best.Length))
            {
                least = demand;
                best = chosen;
            }

            if (chosen.Length == most) return;
            for (var i = from; i < measures.Count; i++) Extend([.. chosen, measures[i]], i + 1, measures[i].ApplyTo(edited));
        }
    }

    internal static IReadOnlyList<MeasureWorth> Rank(RecoveryPlan plan, PullDemand before) =>
        For(plan).Select(m => Worth(plan, before, m)).OrderByDescending(w => w.Central.Newtons).ToList().AsReadOnly();

    private static MeasureWorth Worth(RecoveryPlan plan, PullDemand before, Measure measure)
    {
        var after = PullDemand.Estimate(measure.ApplyTo(plan).Stuck);
        var own = measure.Key == "drive" ? before.DrivingOwnWheels : null;
        var central = own?.Total.Newtons ?? before.CentralNewtons - after.CentralNewtons;
        return new MeasureWorth(measure, before.LowNewtons - after.LowNewtons, central, before.HighNewtons - after.HighNewtons, before.DepthRuleNewtons - after.DepthRuleNewtons, own is null ? Reason(measure, before, after, central) : "reason.own-wheels", own?.Why);
    }

    /// <summary>Key of the reason why a measure is worth little, or adds; empty where the number speaks for itself.</summary>
    private static string Reason(Measure measure, PullDemand before, PullDemand after, double central)
    {
        if (measure.Key == "deflate" && central < 0.02 * before.CentralNewtons && before.Stuck.AnyWheelBuried) return "reason.deflate";
        if (measure.Key == "vent" && !before.Stuck.AnyWheelBuried) return "reason.vent-rolling";
        if (measure.Key == "free-belly") return "reason.free-belly";
        if (central < 0) return "reason.negative";
        return after.HighNewtons > before.HighNewtons + 1 && after.Stuck.Belly is not null ? "reason.lighter-lifts" : string.Empty;
    }
}
