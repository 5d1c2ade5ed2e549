using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Which arrangements of what is on the farm can move a casualty, at which utilisation, and which cannot and why.</summary>
/// <remarks>
/// <para>Arrangements: every machine alone, every pair in line and side by side, three or four side by side, every winch on a single line, every winch and every machine through the smallest tackle that holds, to every anchor.</para>
/// <para>A puller is chosen on the central demand: below 0.9 of it Cannot, up to 1.1 Undecided. Tackle and anchors are sized on the planning high (the larger of high demand and depth rule), the anchors without friction and never for more than the haul can impose, and anchors, blocks and what holds the winch also on what the winch at stall or the machine can impose.</para>
/// <para>Straps, shackles, bridles and attachments are not in it: they are checked as a rig against the most that the arrangement imposes. CanDo is therefore not a verdict on the job.</para>
/// <para>Source: handbook steps and stall rule (primary), levels judgement. Immutable.</para>
/// </remarks>
public sealed class PullChoice
{
    private PullChoice(ForceBand demand, double planning, IReadOnlyList<PullOption> options)
    {
        Demand = demand;
        PlanningHigh = Force.FromNewtons(planning);
        Options = options;
    }

    /// <summary>Gets the demand.</summary>
    public ForceBand Demand { get; }

    /// <summary>Gets what tackle and anchors are sized on.</summary>
    public Force PlanningHigh { get; }

    /// <summary>Gets all arrangements: those that can do it first, each group by utilisation.</summary>
    public IReadOnlyList<PullOption> Options { get; }

    /// <summary>Gets the arrangements that can do it.</summary>
    public IReadOnlyList<PullOption> Possible => Options.Where(o => o.Outcome == PullOutcome.CanDo).ToList().AsReadOnly();

    /// <summary>Gets the arrangements that something stops.</summary>
    public IReadOnlyList<PullOption> NotPossible => Options.Where(o => o.Outcome == PullOutcome.Cannot).ToList().AsReadOnly();

    /// <summary>Lists the choice for an estimated demand.</summary>
    /// <param name="demand">The demand.</param>
    /// <param name="means">What is on the farm.</param>
    /// <returns>The choice.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static PullChoice For(PullDemand demand, PullMeans means) => For(Guard.NotNull(demand, nameof(demand)).Total, demand.PlanningHigh, means);

    /// <summary>Lists the choice for a demand.</summary>
    /// <param name="demand">The demand, its central above 0.</param>
    /// <param name="planningHigh">What tackle and anchors are sized on, not below the high demand, up to 10,000 kN.</param>
    /// <param name="means">What is on the farm.</param>
    /// <returns>The choice.</returns>
    /// <exception cref="ArgumentNullException">The means are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The demand is not above 0, or the planning high is outside its range.</exception>
    public static PullChoice For(ForceBand demand, Force planningHigh, PullMeans means)
    {
        Guard.NotNull(means, nameof(means));
        Guard.Range(demand.CentralNewtons / 1000, 0.001, 10000, "kN", nameof(demand));
        var planning = Guard.Newtons(planningHigh, demand.HighNewtons / 1000, 10000, nameof(planningHigh));
        return new PullChoice(demand, planning, PullOptions.All(means, demand, planning));
    }

    /// <summary>Gives the choice as text, at most 80 columns, invariant culture: every arrangement with its reasons and cautions.</summary>
    /// <returns>The text.</returns>
    public string ToText() => PullChoiceText.Write(this);

    /// <summary>Gives the choice in one line, invariant culture.</summary>
    /// <returns>How many arrangements can do it.</returns>
    public override string ToString() => Text.Number(Possible.Count) + " of " + Text.Number(Options.Count) + " arrangements can do it, demand " + Demand;
}
