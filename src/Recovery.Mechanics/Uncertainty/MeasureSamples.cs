using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What a measure does to the odds: the plan before and after it on the same samples.</summary>
/// <remarks>Immutable. Common random numbers: what is equal before and after cancels, so the effect is far surer than the two probabilities are. Worths of measures do not add.</remarks>
public sealed class MeasureSamples
{
    private MeasureSamples(IReadOnlyList<Measure> measures, long count, long before, long after, long helped, long harmed, long stopsBefore, long stopsAfter, Tally saved)
    {
        Measures = measures;
        NotEnoughBefore = new SampledProbability(before, count);
        NotEnoughAfter = new SampledProbability(after, count);
        Helped = new SampledProbability(helped, count);
        Harmed = new SampledProbability(harmed, count);
        StopBefore = new SampledProbability(stopsBefore, count);
        StopAfter = new SampledProbability(stopsAfter, count);
        DemandSavedNewtons = new SampleSummary(saved);
    }

    /// <summary>Gets the measures, applied together in this order.</summary>
    public IReadOnlyList<Measure> Measures { get; }

    /// <summary>Gets how likely the pull is not enough before.</summary>
    public SampledProbability NotEnoughBefore { get; }

    /// <summary>Gets how likely the pull is not enough after.</summary>
    public SampledProbability NotEnoughAfter { get; }

    /// <summary>Gets how likely it was not enough before and is after.</summary>
    public SampledProbability Helped { get; }

    /// <summary>Gets how likely it was enough before and is not after.</summary>
    public SampledProbability Harmed { get; }

    /// <summary>Gets how likely the verdict is a stop before.</summary>
    public SampledProbability StopBefore { get; }

    /// <summary>Gets how likely the verdict is a stop after.</summary>
    public SampledProbability StopAfter { get; }

    /// <summary>Gets how the demand that is saved spreads, N; negative where it adds.</summary>
    public SampleSummary DemandSavedNewtons { get; }

    /// <summary>Gets the fall of the probability that the pull is not enough.</summary>
    public double Effect => Helped.Estimate - Harmed.Estimate;

    /// <summary>Gets the standard error of <see cref="Effect"/>, from the pairs: root of (h + k - (h - k)^2)/n.</summary>
    public double EffectError
    {
        get
        {
            double h = Helped.Estimate, k = Harmed.Estimate;
            return Math.Sqrt((h + k - ((h - k) * (h - k))) / Helped.Count);
        }
    }

    /// <summary>Samples a plan before and after measures.</summary>
    /// <param name="sampler">The sampler of the plan before.</param>
    /// <param name="measures">The measures, applied together in their order; at least one.</param>
    /// <param name="samples">Number of samples, 100 to 1e9.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The effect.</returns>
    /// <exception cref="ArgumentNullException">Sampler or measures are null.</exception>
    /// <exception cref="ArgumentException">There is no measure, or one does not fit the plan.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples is outside its range.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static MeasureSamples Of(PlanSampler sampler, IEnumerable<Measure> measures, int samples, ulong seed, CancellationToken cancellation = default)
    {
        Guard.NotNull(sampler, nameof(sampler));
        var list = Guard.NotNull(measures, nameof(measures)).ToList();
        if (list.Count == 0) throw new ArgumentException("measures must hold at least one measure.", nameof(measures));
        Guard.Count(samples, 100, 1_000_000_000, nameof(samples));
        var edited = sampler.On(list.Aggregate(sampler.Plan, static (plan, measure) => measure.ApplyTo(plan)));
        BlockSampler one = new(sampler, seed, PointSet.Random), other = new(edited, seed, PointSet.Random);
        var saved = new Tally(sampler.Numbers.Compiled.Stuck.Flat.Weight);
        long before = 0, after = 0, helped = 0, harmed = 0, stopsBefore = 0, stopsAfter = 0;
        for (var first = 0; first < samples; first += BlockSampler.Block)
        {
            cancellation.ThrowIfCancellationRequested();
            var size = Math.Min(BlockSampler.Block, samples - first);
            one.Draw(first, size);
            other.Draw(first, size);
            for (var s = 0; s < size; s++)
            {
                one.Evaluate(s, out var a);
                other.Evaluate(s, out var b);
                bool short1 = a.Sustained < a.Demand, short2 = b.Sustained < b.Demand;
                if (short1) before++;
                if (short2) after++;
                if (short1 && !short2) helped++;
                if (short2 && !short1) harmed++;
                if (a.Verdict == Verdict.Stop) stopsBefore++;
                if (b.Verdict == Verdict.Stop) stopsAfter++;
                saved.Add(a.Demand - b.Demand);
            }
        }

        return new MeasureSamples(list.AsReadOnly(), samples, before, after, helped, harmed, stopsBefore, stopsAfter, saved);
    }

    /// <summary>Gives the measures and both probabilities in words, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => string.Join("; ", Measures.Select(m => m.Title)) + ": the pull is not enough " + NotEnoughBefore.WithInterval() + " before, " + NotEnoughAfter.WithInterval() + " after";
}
