using System;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>One limit of a sampled plan: an event, and a function of the sampled inputs that is below zero where it happens.</summary>
/// <remarks>Immutable. <see cref="PlanLimits.For"/> lists those of a plan. A limit that the plan does not have, such as the rating of a hitch that nobody declared, is listed too and says why there are no odds of it.</remarks>
public sealed class PlanLimit
{
    private readonly PlanMargin _margin;

    internal PlanLimit(PlanSampler sampler, string key, string happening, string whyNot, PlanMargin margin)
    {
        Key = key;
        Event = happening;
        _margin = margin;
        var block = new BlockSampler(sampler, 0, PointSet.Random);
        block.At([.. sampler.Sampled.Select(i => i.Factor.Median)], out var o);
        var atMedians = margin(block, o);
        if (double.IsNaN(atMedians) || double.IsInfinity(atMedians)) WhyNot = whyNot;
        else State = new LimitState(happening, sampler.Sampled.Select(i => i.Factor), Function(sampler), sampler.Correlation);
    }

    /// <summary>Gets the stable key, for example <c>pull</c>, <c>nose-lift</c> or <c>floor:bridle</c>.</summary>
    public string Key { get; }

    /// <summary>Gets what happens beyond the limit, in words.</summary>
    public string Event { get; }

    /// <summary>Gets why the plan has no odds of it, in words: it cannot happen there, or a number for it is missing; empty where it has such a limit.</summary>
    public string WhyNot { get; } = string.Empty;

    /// <summary>Gets the limit over the inputs of the sampler, below zero where the event happens; null where the plan has no such limit. Use it from one thread.</summary>
    public LimitState? State { get; }

    /// <summary>Gives the event and, where the plan has no odds of it, why.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => State is null ? Event + ": no odds, " + WhyNot : Event;

    private LimitFunction Function(PlanSampler sampler)
    {
        BlockSampler? block = null;
        return values =>
        {
            block ??= new BlockSampler(sampler, 0, PointSet.Random);
            block.At(values, out var o);
            var margin = _margin(block, o);

            // Where a plan that a sample makes anew has no such limit, the event does not happen.
            return double.IsNaN(margin) || double.IsInfinity(margin) ? 1 : margin;
        };
    }
}
