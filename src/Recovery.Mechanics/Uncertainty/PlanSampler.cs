using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Linq;
using System.Runtime.ExceptionServices;
using System.Threading;
using System.Threading.Tasks;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Samples a whole plan: inputs that scatter, the compiled plan evaluated for each sample, results that add up to the bit.</summary>
/// <remarks>
/// <para>One sample is one way things may be. Its demand is the central sum at its own strengths, times the method; its towing machine pulls on its own ground, with the machines ahead of it and through its tackle; its line and gear carry what that machine can impose. The band of bounds of an assessment is not sampled: it already runs from end to end of the same causes.</para>
/// <para>Sample number, input and seed alone decide a number, so neither threads nor partitions change a bit. Plans compared with the same seed share their samples.</para>
/// <para>Every spread is one of a factor on the plan's value (<see cref="With"/>) or of a difference from it (<see cref="WithShift"/>). The defaults carry sources and standings; the cone factor, the wheel model and the method of the demand are from memory or by judgement, so probabilities are said as orders of magnitude. Wear of gear has no default: nobody can know it from here.</para>
/// <para>Immutable; many threads may use it at once.</para>
/// </remarks>
public sealed class PlanSampler
{
    internal const int Chunk = 8192;

    private readonly SampledInput[] _inputs;

    private PlanSampler(RecoveryPlan plan, SampledInput[] inputs, GaussianCopula? correlation)
    {
        Plan = plan;
        _inputs = inputs;
        Correlation = correlation;
        Numbers = new PlanNumbers(plan);
        if (Numbers.Compiled.Places.Length > PlanOutcome.MostPlaces) throw new ArgumentException("A rig of " + Text.Number(Numbers.Compiled.Places.Length) + " places cannot be sampled; at most " + Text.Number(PlanOutcome.MostPlaces) + ".", nameof(plan));
    }

    /// <summary>Gets the plan.</summary>
    public RecoveryPlan Plan { get; }

    /// <summary>Gets the inputs that scatter, in the order of their dimensions.</summary>
    public IReadOnlyList<SampledInput> Inputs => Array.AsReadOnly(_inputs);

    /// <summary>Gets the correlation of the inputs; null where they are independent.</summary>
    public GaussianCopula? Correlation { get; }

    /// <summary>Gets the weakest standing among spreads and plan: what the results are worth.</summary>
    public Standing Standing => Standings.Weakest(Standings.Weakest(_inputs.Select(i => i.Source).ToList()), Plan.Assess().Standing);

    internal PlanNumbers Numbers { get; }

    internal SampledInput[] Sampled => _inputs;

    /// <summary>Makes a sampler in which nothing scatters yet.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The sampler.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    /// <exception cref="ArgumentException">The rig of the plan has more than 64 places.</exception>
    public static PlanSampler For(RecoveryPlan plan) => new(Guard.NotNull(plan, nameof(plan)), [], null);

    /// <summary>Makes a sampler with the default spreads of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The sampler.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    /// <exception cref="ArgumentException">The rig of the plan has more than 64 places.</exception>
    public static PlanSampler WithDefaults(RecoveryPlan plan) => new(Guard.NotNull(plan, nameof(plan)), [.. PlanDefaults.For(plan)], null);

    /// <summary>Gives the sampler with a spread on an input, in the place of an earlier one.</summary>
    /// <param name="key">Key of the input, as <see cref="PlanInputList"/> lists it.</param>
    /// <param name="factor">How the factor on the plan's value scatters; its values must be above 0.</param>
    /// <param name="source">Where it comes from; null for the caller.</param>
    /// <returns>The sampler. A correlation stays; an input that is new is independent of the others.</returns>
    /// <exception cref="ArgumentException">The plan has no such input or holds it as 0, or the spread reaches zero or below.</exception>
    /// <exception cref="ArgumentNullException">The spread is null.</exception>
    public PlanSampler With(string key, Spread factor, Source? source = null)
    {
        var input = Input(key);
        if (!input.TakesFactor) throw new ArgumentException("The plan holds '" + key + "' as 0, and a factor leaves it at 0: give the spread of a difference in " + input.Unit + " with WithShift.", nameof(key));
        if (!(Guard.NotNull(factor, nameof(factor)).FromNormal(-Spread.Furthest) > 0)) throw new ArgumentException("factor must stay above 0; " + factor + " reaches " + Text.Number(factor.FromNormal(-Spread.Furthest)) + ". Cut it with Truncated" + (input.TakesShift ? ", or give the spread of a difference with WithShift." : "."), nameof(factor));
        return Put(new SampledInput(input, factor, source ?? GeneralSources.Caller));
    }

    /// <summary>Gives the sampler with a spread on an input by difference, in the place of an earlier one: what scatters is added to the plan's value. The way for a level slope, a straight line, a taut one, and wherever a tape or a level errs by so much and not by so many per cent.</summary>
    /// <param name="key">Key of the input, as <see cref="PlanInputList"/> lists it, with a <see cref="PlanInput.Unit"/>.</param>
    /// <param name="shift">How the difference scatters, in the input's SI unit; median 0 where the plan holds the best estimate. What leaves the range that the plan can take is held at its end.</param>
    /// <param name="source">Where it comes from; null for the caller.</param>
    /// <returns>The sampler, whose samples make the plan anew. A correlation stays; an input that is new is independent of the others.</returns>
    /// <exception cref="ArgumentException">The plan has no such input, or it takes factors alone.</exception>
    /// <exception cref="ArgumentNullException">The spread is null.</exception>
    public PlanSampler WithShift(string key, Spread shift, Source? source = null)
    {
        var input = Input(key);
        if (!input.TakesShift) throw new ArgumentException("The input '" + key + "' takes factors alone: give the spread of a factor with With.", nameof(key));
        return Put(new SampledInput(input, Guard.NotNull(shift, nameof(shift)), source ?? GeneralSources.Caller, isShift: true));
    }

    /// <summary>Gives the sampler with an input held at the plan's value.</summary>
    /// <param name="key">Key of the input.</param>
    /// <returns>The sampler; the dimensions of the others stay as they are.</returns>
    /// <exception cref="ArgumentException">No such input scatters.</exception>
    public PlanSampler Without(string key)
    {
        var held = _inputs.FirstOrDefault(i => i.Input.Key == key) ?? throw new ArgumentException("No input '" + key + "' scatters.", nameof(key));
        return Put(new SampledInput(held.Input, Spread.Fixed(held.IsShift ? 0 : 1), GeneralSources.Caller, held.IsShift));
    }

    /// <summary>Gives the sampler with correlated inputs.</summary>
    /// <param name="correlation">The copula, as many dimensions as inputs, in their order.</param>
    /// <returns>The sampler.</returns>
    /// <exception cref="ArgumentNullException">The copula is null.</exception>
    /// <exception cref="ArgumentException">It has another number of dimensions.</exception>
    public PlanSampler WithCorrelation(GaussianCopula correlation) => Guard.NotNull(correlation, nameof(correlation)).Dimensions == _inputs.Length
        ? new PlanSampler(Plan, _inputs, correlation)
        : throw new ArgumentException("correlation has " + Text.Number(correlation.Dimensions) + " dimensions and " + Text.Number(_inputs.Length) + " inputs scatter.", nameof(correlation));

    /// <summary>Gives the same spreads on another plan; inputs that it does not have are kept as dimensions and change nothing.</summary>
    /// <param name="plan">The other plan, usually an edit of this one.</param>
    /// <returns>The sampler: with the same seed it draws the same samples.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    /// <exception cref="ArgumentException">The rig of the plan has more than 64 places.</exception>
    public PlanSampler On(RecoveryPlan plan)
    {
        var there = PlanInputList.For(Guard.NotNull(plan, nameof(plan)));
        return new PlanSampler(plan, _inputs.Select(i => new SampledInput(there.FirstOrDefault(t => t.Key == i.Input.Key && (i.IsShift ? t.TakesShift : t.TakesFactor)) ?? new PlanInput(i.Input), i.Factor, i.Source, i.IsShift)).ToArray(), Correlation);
    }

    /// <summary>Runs samples on all cores.</summary>
    /// <param name="samples">Number of samples, 100 to 1e12.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="points">Where the points come from. Sobol points: at most 100 inputs, a power of two of samples.</param>
    /// <param name="progress">Told how many samples are done, from any thread; null for nobody.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The results: the same bits on any number of cores.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples is outside its range, or the points are not one of the defined values.</exception>
    /// <exception cref="ArgumentException">The number of Sobol points is not a power of two, or sampled inputs together make no plan.</exception>
    /// <exception cref="SolverException">A pull could not be solved.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public PlanSamples Run(long samples, ulong seed, PointSet points = PointSet.Random, IProgress<long>? progress = null, CancellationToken cancellation = default)
    {
        Guard.Range(samples, 100, 1e12, string.Empty, nameof(samples));
        Guard.Defined(points, points is PointSet.Random or PointSet.ScrambledSobol, nameof(points));
        if (points == PointSet.ScrambledSobol && ((samples & (samples - 1)) != 0 || samples > 1L << 32)) throw new ArgumentException("samples must be a power of two up to 2^32 for Sobol points; it was " + Text.Number(samples, 12) + ".", nameof(samples));
        return Run(samples, seed, points, progress, cancellation, out _);
    }

    /// <summary>Runs a part of the samples on the calling thread: parts that together cover a range merge to the same bits as one run over it.</summary>
    /// <param name="firstSample">Number of the first sample, 0 or more.</param>
    /// <param name="count">Number of samples, 1 to 1e9.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="points">Where the points come from.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The results of the part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the points are not one of the defined values.</exception>
    /// <exception cref="ArgumentException">Sampled inputs together make no plan.</exception>
    /// <exception cref="SolverException">A pull could not be solved.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public PlanSamples RunPart(long firstSample, int count, ulong seed, PointSet points = PointSet.Random, CancellationToken cancellation = default)
    {
        Guard.Defined(points, points is PointSet.Random or PointSet.ScrambledSobol, nameof(points));
        Guard.Range(firstSample, 0, points == PointSet.ScrambledSobol ? (1L << 32) - count : 1e15, string.Empty, nameof(firstSample));
        Guard.Count(count, 1, 1_000_000_000, nameof(count));
        var sampler = new BlockSampler(this, seed, points);
        sampler.Run(firstSample, count, cancellation);
        return new PlanSamples(this, sampler.Tallies);
    }

    /// <summary>The run itself; tells how many samplers it made.</summary>
    internal PlanSamples Run(long samples, ulong seed, PointSet points, IProgress<long>? progress, CancellationToken cancellation, out int samplers)
    {
        var chunks = (int)((samples + Chunk - 1) / Chunk);

        // Tasks come and go while a long run lasts, so what one leaves the next takes up: as many samplers as threads at once, however long it lasts.
        var free = new ConcurrentBag<BlockSampler>();
        long done = 0;
        try
        {
            Parallel.For(
                0,
                chunks,
                new ParallelOptions { CancellationToken = cancellation },
                () => free.TryTake(out var left) ? left : new BlockSampler(this, seed, points),
                (chunk, _, sampler) =>
                {
                    var first = (long)chunk * Chunk;
                    var count = (int)Math.Min(Chunk, samples - first);
                    sampler.Run(first, count, cancellation);
                    if (progress is not null) progress.Report(Interlocked.Add(ref done, count));
                    return sampler;
                },
                free.Add);
        }
        catch (AggregateException e)
        {
            // Said as one thread would say it.
            ExceptionDispatchInfo.Capture(e.Flatten().InnerExceptions[0]).Throw();
        }

        var whole = new PlanTallies(Numbers);
        samplers = free.Count;
        foreach (var part in free) whole.Add(part.Tallies);
        return new PlanSamples(this, whole);
    }

    /// <summary>Refuses a sampler in which nothing scatters where odds or doubt are asked for.</summary>
    internal static PlanSampler ThatScatters(PlanSampler sampler) => Guard.NotNull(sampler, nameof(sampler))._inputs.Length > 0
        ? sampler
        : throw new ArgumentOutOfRangeException(nameof(sampler), "Nothing scatters in the sampler, so there are no odds: put a spread on an input with With or WithShift, or begin with WithDefaults.");

    private PlanInput Input(string key) => PlanInputList.For(Plan).FirstOrDefault(i => i.Key == key) ?? throw new ArgumentException("The plan has no input '" + key + "'. PlanInputList.For lists those that it has; what it does not declare is none.", nameof(key));

    private PlanSampler Put(SampledInput added)
    {
        var at = Array.FindIndex(_inputs, i => i.Input.Key == added.Input.Key);
        return at < 0 ? new PlanSampler(Plan, [.. _inputs, added], Correlation?.WithOneMore()) : new PlanSampler(Plan, _inputs.Select((i, k) => k == at ? added : i).ToArray(), Correlation);
    }

    /// <summary>Gives plan and number of inputs in one line, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Text.Number(_inputs.Length) + " inputs that scatter, " + Standings.Describe(Standing);
}
