using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Limits of a sampled plan, for reliability and sensitivity: everything that the verdict of a sample turns on by a number.</summary>
/// <remarks>
/// <para>The pull, the machine that frees itself, the nose of the puller, the freed machine that rolls away, ratings of hitches, front points and attachments, the tackle, a line off to the side, and every part of the rig: rated, full factors, floor, second pull, careless take-up, breaking.</para>
/// <para>A belly that drags and a gear that is refused are yes or no in a sample: they have no distance and are no limits here.</para>
/// </remarks>
public static class PlanLimits
{
    /// <summary>Gives every limit of a sampled plan, those of which it has no odds with the reason.</summary>
    /// <param name="sampler">The sampler; at least one input must scatter.</param>
    /// <returns>The limits: of the pull and the machines first, then part by part.</returns>
    /// <exception cref="ArgumentNullException">The sampler is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Nothing scatters.</exception>
    /// <exception cref="ArgumentException">Sampled inputs together make no plan.</exception>
    /// <exception cref="SolverException">A pull could not be solved.</exception>
    public static IReadOnlyList<PlanLimit> For(PlanSampler sampler) =>
        PlanLimitRows.For(PlanSampler.ThatScatters(sampler).Plan).Select(r => new PlanLimit(sampler, r.Key, r.Event, r.WhyNot, r.Margin)).ToList().AsReadOnly();

    /// <summary>Gives one limit of a sampled plan.</summary>
    /// <param name="sampler">The sampler; at least one input must scatter.</param>
    /// <param name="key">Key of the limit, as <see cref="For"/> lists it.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentNullException">The sampler is null.</exception>
    /// <exception cref="ArgumentException">There is no such limit, or sampled inputs together make no plan.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Nothing scatters.</exception>
    /// <exception cref="SolverException">A pull could not be solved.</exception>
    public static PlanLimit Of(PlanSampler sampler, string key)
    {
        foreach (var r in PlanLimitRows.For(PlanSampler.ThatScatters(sampler).Plan))
        {
            if (r.Key == key) return new PlanLimit(sampler, r.Key, r.Event, r.WhyNot, r.Margin);
        }

        throw new ArgumentException("The plan has no limit '" + key + "'. PlanLimits.For lists those that it has.", nameof(key));
    }

    /// <summary>Gives the limit of the pull: (sustained - demand) over the weight of the stuck machine; below zero the pull is not enough.</summary>
    /// <param name="sampler">The sampler; at least one input must scatter.</param>
    /// <returns>The limit over the inputs of the sampler. Use it from one thread.</returns>
    /// <exception cref="ArgumentNullException">The sampler is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Nothing scatters.</exception>
    public static LimitState Pull(PlanSampler sampler) => Of(sampler, "pull").State!;

    /// <summary>Gives the limit of a part: logarithm of the strength that it has (new strength times wear) over the procedure peak at its weakest place; below zero it parts.</summary>
    /// <param name="sampler">The sampler; at least one input must scatter.</param>
    /// <param name="part">Name of the part.</param>
    /// <returns>The limit over the inputs of the sampler. Use it from one thread.</returns>
    /// <exception cref="ArgumentNullException">The sampler is null.</exception>
    /// <exception cref="ArgumentException">There is no such part, or its strength or the line is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Nothing scatters.</exception>
    public static LimitState Part(PlanSampler sampler, string part) =>
        Guard.NotNull(sampler, nameof(sampler)).Plan.Rig.Parts.Any(p => p.Name == part) && Of(sampler, "breaks:" + part).State is { } state
            ? state
            : throw new ArgumentException("The plan has no part '" + part + "' whose strength and line are known.", nameof(part));
}
