using System;
using System.Linq;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Limits of a sampled plan, for reliability and sensitivity.</summary>
public static class PlanLimits
{
    /// <summary>Gives the limit of the pull: (sustained - demand) over the weight of the stuck machine; below zero the pull is not enough.</summary>
    /// <param name="sampler">The sampler; at least one input must scatter.</param>
    /// <returns>The limit over the inputs of the sampler. Use it from one thread.</returns>
    /// <exception cref="ArgumentNullException">The sampler is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Nothing scatters.</exception>
    public static LimitState Pull(PlanSampler sampler)
    {
        var block = new BlockSampler(Guard.NotNull(sampler, nameof(sampler)), 0, PointSet.Random);
        var weight = sampler.Numbers.Compiled.Stuck.Flat.Weight;
        return Of("pull", sampler, values =>
        {
            block.At(values, out var o);
            return (o.Sustained - o.Demand) / weight;
        });
    }

    /// <summary>Gives the limit of a part: logarithm of the strength that it has (new strength times wear) over the procedure peak at its weakest place; below zero it parts.</summary>
    /// <param name="sampler">The sampler; at least one input must scatter.</param>
    /// <param name="part">Name of the part.</param>
    /// <returns>The limit over the inputs of the sampler. Use it from one thread.</returns>
    /// <exception cref="ArgumentNullException">The sampler is null.</exception>
    /// <exception cref="ArgumentException">There is no such part, or its strength or the line is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Nothing scatters.</exception>
    public static LimitState Part(PlanSampler sampler, string part)
    {
        var block = new BlockSampler(Guard.NotNull(sampler, nameof(sampler)), 0, PointSet.Random);
        var index = sampler.Plan.Rig.Parts.Select((p, i) => (p.Name, i)).Where(p => p.Name == part).Select(p => p.i).DefaultIfEmpty(-1).First();
        block.At([.. sampler.Sampled.Select(i => i.Factor.Median)], out _);
        if (index < 0 || sampler.Numbers.Compiled.Line is null || double.IsNaN(block.LeastReserve(index))) throw new ArgumentException("The plan has no part '" + part + "' whose strength and line are known.", nameof(part));
        return Of("strength of the " + part, sampler, values =>
        {
            block.At(values, out PlanOutcome _);
            return Math.Log(block.LeastReserve(index));
        });
    }

    private static LimitState Of(string name, PlanSampler sampler, LimitFunction function) => new(name, sampler.Sampled.Select(i => i.Factor), function, sampler.Correlation);
}
