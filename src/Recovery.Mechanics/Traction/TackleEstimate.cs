using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Mechanical advantage by the handbook steps: first estimate, friction added, fall line checked, advantage raised until it holds.</summary>
/// <remarks>
/// <para>MA = ceil(R/E); R_t = 0.10 R n; FLF = (R + R_t)/MA must stay below the effort E, otherwise MA is raised by one. n is MA - 1 sheaves where the fall leaves a moving block, MA where it leaves a fixed one.</para>
/// <para>Every part adds a tenth of the load in friction: an effort of a tenth of the load or less never does. The load is the larger of the high demand and the depth rule, not the central demand.</para>
/// <para>Source: US Army TB 9-2350-292-10 (primary), friction Navy Steelworker Vol. 2 (primary).</para>
/// </remarks>
public sealed class TackleEstimate
{
    private TackleEstimate(double load, double effort, IReadOnlyList<TackleTry> tries)
    {
        Load = Force.FromNewtons(load);
        Effort = Force.FromNewtons(effort);
        Tries = tries;
    }

    /// <summary>Gets the load resistance.</summary>
    public Force Load { get; }

    /// <summary>Gets the effort.</summary>
    public Force Effort { get; }

    /// <summary>Gets the passes in order, the first being load over effort rounded up.</summary>
    public IReadOnlyList<TackleTry> Tries { get; }

    /// <summary>Gets the pass that holds; null where none does within the greatest advantage.</summary>
    public TackleTry? Solution => Tries[Tries.Count - 1].Holds ? Tries[Tries.Count - 1] : null;

    /// <summary>Gets the objection where no advantage holds.</summary>
    public IReadOnlyList<Finding> Findings => Solution is not null ? [] : [new Finding(TackleFindings.NoAdvantage, "the haul", Tries[Tries.Count - 1].FallLine.Kilonewtons, Effort.Kilonewtons, "kN")];

    /// <summary>Estimates the advantage.</summary>
    /// <param name="load">Load resistance, 0.001 to 10,000 kN.</param>
    /// <param name="effort">What the winch or machine pulls, 0.001 to 5,000 kN.</param>
    /// <param name="leavesFixedBlock">Whether the fall leaves a fixed block.</param>
    /// <param name="greatestAdvantage">Greatest advantage to try, 1 to 12.</param>
    /// <returns>The estimate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TackleEstimate Find(Force load, Force effort, bool leavesFixedBlock = false, int greatestAdvantage = 8)
    {
        double r = Guard.Newtons(load, 0.001, 10000, nameof(load)), e = Guard.Newtons(effort, 0.001, 5000, nameof(effort));
        var last = Guard.Count(greatestAdvantage, 1, 12, nameof(greatestAdvantage));
        var tries = new List<TackleTry>();
        for (var advantage = Math.Min(TackleKernel.FirstEstimate(r, e), last); advantage <= last; advantage++)
        {
            var next = new TackleTry(advantage, leavesFixedBlock ? advantage : advantage - 1, r, e);
            tries.Add(next);
            if (next.Holds) break;
        }

        return new TackleEstimate(r, e, tries.AsReadOnly());
    }

    /// <summary>Works the passes out step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        var working = new WorkingBuilder("Mechanical advantage by the handbook steps");
        string r = Text.Number(Load.Kilonewtons), e = Text.Number(Effort.Kilonewtons);
        working.Step("MA", "first estimate", "ceil(R/E)", r + "/" + e, Text.Number(Tries[0].MechanicalAdvantage), TackleSources.Steps);
        foreach (var t in Tries)
        {
            working.Step("R_t", "tackle resistance at " + Text.Number(t.MechanicalAdvantage) + ":1", "0.10 R n", "0.1 x " + r + " x " + Text.Number(t.Sheaves), Text.Kilonewtons(t.Resistance.Newtons), TackleSources.TenPercent)
                .Step("FLF", "fall line at " + Text.Number(t.MechanicalAdvantage) + ":1, " + (t.Holds ? "below" : "not below") + " the effort", "(R + R_t)/MA", Text.Number(t.Total.Kilonewtons) + "/" + Text.Number(t.MechanicalAdvantage), Text.Kilonewtons(t.FallLine.Newtons), TackleSources.Steps);
        }

        return working.Build();
    }

    /// <summary>Gives the outcome in words, invariant culture.</summary>
    /// <returns>The pass that holds, or the last one.</returns>
    public override string ToString() => Tries[Tries.Count - 1].ToString();
}
