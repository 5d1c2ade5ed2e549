using System;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>One limit of a sampled plan: an event, and a function of the sampled inputs that is below zero where it happens.</summary>
/// <remarks>Immutable. <see cref="PlanLimits.For"/> lists those of a plan. A limit that the plan does not have, such as the rating of a hitch that nobody declared, is listed too and says why there are no odds of it. A limit that only some samples have (ground that falls along the pull in one and rises in another) has odds: where a sample does not have it, it is not passed.</remarks>
public sealed class PlanLimit
{
    // Numerical choices: samples, and deviations of each input by itself, in which a limit that the medians do not have is looked for.
    private const int Tried = 256;
    private const double Outwards = 4;

    // A margin below which nothing is told apart; infinite where the event is certain.
    private const double Certain = -1e6;

    private readonly PlanMargin _margin;

    internal PlanLimit(PlanSampler sampler, string key, string happening, string whyNot, PlanMargin margin)
    {
        Key = key;
        Event = happening;
        _margin = margin;
        var state = new LimitState(happening, sampler.Sampled.Select(i => i.Factor), Function(sampler), sampler.Correlation);
        if (Has(sampler, state)) State = state;
        else WhyNot = whyNot;
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

    private static bool IsNone(double margin) => double.IsNaN(margin) || double.IsPositiveInfinity(margin);

    /// <summary>Whether the sampled plan has the limit: at the medians, or in any sample tried, because what scatters may bring it.</summary>
    private bool Has(PlanSampler sampler, LimitState state)
    {
        var block = new BlockSampler(sampler, 0, PointSet.Random);
        double[] u = new double[state.Dimensions], values = new double[state.Dimensions];
        if (There()) return true;
        for (var i = 0; i < u.Length; i++)
        {
            if (sampler.Sampled[i].Factor.IsFixed) continue;
            u[i] = -Outwards;
            if (There()) return true;
            u[i] = Outwards;
            if (There()) return true;
            u[i] = 0;
        }

        for (var s = 0; s < Tried; s++)
        {
            for (var i = 0; i < u.Length; i++) u[i] = NormalKernel.Inverse(Philox4x32.At(0, (ulong)s, (uint)i, 0));
            if (There()) return true;
        }

        return false;

        bool There()
        {
            state.Map(u, values);
            block.At(values, out var o);
            return !IsNone(_margin(block, o));
        }
    }

    private LimitFunction Function(PlanSampler sampler)
    {
        BlockSampler? block = null;
        return values =>
        {
            block ??= new BlockSampler(sampler, 0, PointSet.Random);
            block.At(values, out var o);
            var margin = _margin(block, o);

            // Where a sample has no such limit, the event does not happen.
            return IsNone(margin) ? 1 : Math.Max(margin, Certain);
        };
    }
}
