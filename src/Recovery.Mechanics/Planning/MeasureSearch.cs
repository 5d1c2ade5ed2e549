using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>Looks for the smallest or cheapest set of measures that lifts the verdict. Every set is worked whole.</summary>
/// <remarks>
/// <para>Up to twelve measures every set is tried (4,096 at the most). Of more, every set of so few measures is tried that no more than 4,096 are worked (<see cref="AllTriedUpTo"/>), and the best of those is lengthened greedily, by the measure that helps most, until nothing helps: a set that is better than the one found then has more measures than that.</para>
/// <para>A measure that does not fit what the others of a set have left (a load that is already off, a strap that was replaced) makes no set with them: it is passed over. Measures are put into the plan in the order in which they are offered; one that fits only after a later one is passed over too.</para>
/// <para>One set is better than another by the milder verdict, then fewer stops, then a pull that is not undecided (1.1 of the central demand or more), then fewer measures (or less effort where every measure has one and effort is asked for), then fewer cautions, then the greater margin of sustained pull over demand.</para>
/// </remarks>
public sealed class MeasureSearch
{
    /// <summary>Most measures of which every set is tried.</summary>
    public const int MostExhaustive = 12;

    private const int MostSets = 1 << MostExhaustive;

    private MeasureSearch(RecoveryPlan plan, MeasureSet nothing, Walk walked, int offered, int allTriedUpTo)
    {
        Plan = plan;
        Nothing = nothing;
        Best = walked.Best!;
        Ties = walked.Ties();
        Pareto = walked.Front();
        IsExhaustive = allTriedUpTo == offered;
        AllTriedUpTo = allTriedUpTo;
        SetsTried = walked.Tried;
    }

    /// <summary>Gets the plan before.</summary>
    public RecoveryPlan Plan { get; }

    /// <summary>Gets the plan as it is, with no measure.</summary>
    public MeasureSet Nothing { get; }

    /// <summary>Gets the best set.</summary>
    public MeasureSet Best { get; }

    /// <summary>Gets the sets that lift the verdict as far at the same number of measures (or effort) as the best and differ from it in cautions or margin alone: the choice among them is the user's. The fewest cautions and then the greatest margin first; empty where there are none.</summary>
    public IReadOnlyList<MeasureSet> Ties { get; }

    /// <summary>Gets the sets of which none is beaten by another in both effort (or number of measures) and margin, least effort first.</summary>
    public IReadOnlyList<MeasureSet> Pareto { get; }

    /// <summary>Gets whether every set was tried.</summary>
    public bool IsExhaustive { get; }

    /// <summary>Gets the number of measures up to which every set was tried: where the best set has no more, no smaller one lifts the verdict as far; any set better than the best has more.</summary>
    public int AllTriedUpTo { get; }

    /// <summary>Gets how many sets were tried.</summary>
    public int SetsTried { get; }

    /// <summary>Searches.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measures">The measures to choose from, 0 to 40; keys unique.</param>
    /// <param name="byEffort">True: least effort before fewest measures, which needs an effort with every measure.</param>
    /// <param name="cancellation">Ends the search.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentNullException">Plan or measures are null.</exception>
    /// <exception cref="ArgumentException">A key is given twice, or effort is asked for and a measure has none.</exception>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static MeasureSearch Run(RecoveryPlan plan, IEnumerable<Measure> measures, bool byEffort, CancellationToken cancellation)
    {
        Guard.NotNull(plan, nameof(plan));
        var offered = Guard.NotNull(measures, nameof(measures)).ToList();
        Guard.Count(offered.Count, 0, 40, nameof(measures));
        if (offered.Select(m => m.Key).Distinct(StringComparer.Ordinal).Count() != offered.Count) throw new ArgumentException("measures must have unique keys.", nameof(measures));
        if (byEffort && offered.Find(m => m.Effort is null) is { } without) throw new ArgumentException("A search by effort needs one with every measure; '" + without.Title + "' has none.", nameof(measures));
        var state = new Walk(offered, byEffort, cancellation);
        var nothing = state.Try(plan, []);
        var most = MostTried(offered.Count);
        state.All(plan, [], 0, most);
        if (most < offered.Count) state.Greedy(plan);
        return new MeasureSearch(plan, nothing, state, offered.Count, most);
    }

    /// <summary>Searches for the set with the fewest measures.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measures">The measures to choose from, 0 to 40; keys unique.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentNullException">Plan or measures are null.</exception>
    /// <exception cref="ArgumentException">A key is given twice.</exception>
    public static MeasureSearch Run(RecoveryPlan plan, IEnumerable<Measure> measures) => Run(plan, measures, byEffort: false, CancellationToken.None);

    /// <summary>Gives the pairs of the best set whose worth together differs from the sum of their worths by more than a share of it: two that each do next to nothing may do much together.</summary>
    /// <param name="share">Share of the larger of the two that counts as different, 0.01 to 1.</param>
    /// <returns>The interactions, the strongest first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public IReadOnlyList<MeasureInteraction> Interactions(double share = 0.1)
    {
        Guard.Range(share, 0.01, 1, string.Empty, nameof(share));
        var found = new List<MeasureInteraction>();
        var before = Demand(Plan);
        for (var i = 0; i < Best.Measures.Count; i++)
        {
            for (var k = i + 1; k < Best.Measures.Count; k++)
            {
                Measure first = Best.Measures[i], second = Best.Measures[k];
                var after = first.ApplyTo(Plan);
                double alone = before - Demand(after), other = before - Demand(second.ApplyTo(Plan)), together = before - Demand(second.ApplyTo(after));
                if (Math.Abs(together - alone - other) > share * Math.Max(Math.Abs(together), Math.Abs(alone) + Math.Abs(other)) && Math.Abs(together - alone - other) > 100) found.Add(new MeasureInteraction(first, second, alone, other, together));
            }
        }

        return found.OrderByDescending(x => Math.Abs(x.Extra.Newtons)).ToList().AsReadOnly();
    }

    /// <summary>Gives for each measure of the best set what the plan comes to with it alone, and with all of the set but it: why it is in the set.</summary>
    /// <returns>One for each measure, in their order.</returns>
    public IReadOnlyList<MeasureContribution> Contributions() => Best.Measures.Select((m, i) =>
    {
        MeasureSet Worked(Measure[] set) => MeasureSet.Of(set.Aggregate(Plan, (p, x) => x.TryApplyTo(p, out var edited) ? edited : p), set);
        return new MeasureContribution(m, Nothing, Worked([m]), Worked([.. Best.Measures.Where((_, k) => k != i)]), Best);
    }).ToList().AsReadOnly();

    /// <summary>Gives the best set in one line, invariant culture.</summary>
    /// <returns>The set and how it was found.</returns>
    public override string ToString() => Best + (IsExhaustive ? " (all sets tried)" : Best.Measures.Count <= AllTriedUpTo ? " (no smaller set does as much)" : " (all sets of up to " + Text.Number(AllTriedUpTo) + " tried, then greedy: a better set may exist and has more than " + Text.Number(AllTriedUpTo) + ")");

    /// <summary>Number of measures up to which all sets are no more than can be tried.</summary>
    private static int MostTried(int offered)
    {
        long sets = 1, ofThisSize = 1;
        for (var size = 1; size <= offered; size++)
        {
            ofThisSize = ofThisSize * (offered - size + 1) / size;
            sets += ofThisSize;
            if (sets > MostSets) return size - 1;
        }

        return offered;
    }

    /// <summary>Sustained pull over central demand; on a slope that would take the machine out by itself over a thousandth of its weight.</summary>
    internal static double Margin(Assessment a) => a.Available.Central / Math.Max(a.Demand.CentralNewtons, 1e-3 * a.Demand.Stuck.Machine.WeightNewtons);

    internal static double? Gear(Assessment a) => a.Rig?.Weakest is { Reserve: { } reserve } weakest ? reserve / weakest.Floor : null;

    private static double Demand(RecoveryPlan plan) => plan.Compiled.CentralDemand(plan.Stuck);

    private sealed class Walk(List<Measure> offered, bool byEffort, CancellationToken cancellation)
    {
        private readonly List<MeasureSet> _front = [], _tied = [];

        public MeasureSet? Best { get; private set; }

        public int Tried { get; private set; }

        public MeasureSet Try(RecoveryPlan plan, Measure[] chosen)
        {
            cancellation.ThrowIfCancellationRequested();
            Tried++;
            var set = MeasureSet.Of(plan, chosen);
            Rank(set);
            Keep(set);
            return set;
        }

        public void All(RecoveryPlan plan, Measure[] chosen, int from, int most)
        {
            if (chosen.Length == most) return;
            for (var i = from; i < offered.Count; i++)
            {
                if (!offered[i].TryApplyTo(plan, out var edited)) continue;
                Measure[] longer = [.. chosen, offered[i]];
                Try(edited, longer);
                All(edited, longer, i + 1, most);
            }
        }

        public void Greedy(RecoveryPlan plan)
        {
            var current = Best!;
            Measure[] chosen = [.. current.Measures];
            foreach (var measure in chosen) plan = measure.ApplyTo(plan);
            while (chosen.Length < offered.Count)
            {
                MeasureSet? next = null;
                RecoveryPlan? nextPlan = null;
                foreach (var measure in offered)
                {
                    if (Array.IndexOf(chosen, measure) >= 0) continue;
                    if (!measure.TryApplyTo(plan, out var edited)) continue;
                    var set = Try(edited, [.. chosen, measure]);
                    if (next is null || Better(set, next)) (next, nextPlan) = (set, edited);
                }

                if (next is null || !Better(next, current)) return;
                (plan, current, chosen) = (nextPlan!, next, [.. next.Measures]);
            }
        }

        public IReadOnlyList<MeasureSet> Front() => _front.OrderBy(Cost).ThenByDescending(s => s.Margin).ToList().AsReadOnly();

        public IReadOnlyList<MeasureSet> Ties() => _tied.OrderBy(s => s.Cautions).ThenByDescending(s => s.Margin).ToList().AsReadOnly();

        /// <summary>While adding one measure at a time the number of measures does not count.</summary>
        private static bool Better(MeasureSet a, MeasureSet b) => a.Verdict != b.Verdict ? a.Verdict < b.Verdict : a.Stops != b.Stops ? a.Stops < b.Stops : a.Margin > b.Margin + 1e-9;

        private static bool Undecided(MeasureSet set) => set.Margin < ChoiceFindings.Undecided;

        private double Cost(MeasureSet set) => byEffort ? set.PersonMinutes!.Value : set.Measures.Count;

        private void Rank(MeasureSet set)
        {
            var compared = Best is null ? -1 : Compare(set, Best);
            if (compared > 0 || (compared == 0 && (set.IsOf(Best!.Measures) || _tied.Exists(t => set.IsOf(t.Measures))))) return;
            if (compared < 0) _tied.Clear();
            else if (set.Cautions != Best!.Cautions ? set.Cautions > Best.Cautions : set.Margin <= Best.Margin)
            {
                _tied.Add(set);
                return;
            }
            else
            {
                _tied.Add(Best);
            }

            Best = set;
        }

        /// <summary>Whether a set does more, or as much at less cost: -1, 1, and 0 where only cautions and margin tell them apart.</summary>
        private int Compare(MeasureSet a, MeasureSet b)
        {
            if (a.Verdict != b.Verdict) return a.Verdict < b.Verdict ? -1 : 1;
            if (a.Stops != b.Stops) return a.Stops.CompareTo(b.Stops);
            if (Undecided(a) != Undecided(b)) return Undecided(a) ? 1 : -1;
            return Cost(a).CompareTo(Cost(b));
        }

        private void Keep(MeasureSet set)
        {
            var cost = Cost(set);
            foreach (var kept in _front)
            {
                if (Cost(kept) <= cost && kept.Margin >= set.Margin) return;
            }

            _front.RemoveAll(kept => cost <= Cost(kept) && set.Margin >= kept.Margin);
            _front.Add(set);
        }
    }
}
