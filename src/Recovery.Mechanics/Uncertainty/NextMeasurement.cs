using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Which measurement to take next: inputs by the share of the doubt that goes away when they become known.</summary>
/// <remarks>
/// <para>The doubt is the variance of ln(sustained/demand) for the pull, and of ln(strength/load) of the weakest part for the gear. The share is the first-order Sobol index: what remains on average once this input is known and nothing else. The total index says what it does together with others.</para>
/// <para>Only inputs that something on the spot can narrow are ranked; the rest of the doubt is shown apart. Immutable. Correlation of inputs is left out.</para>
/// </remarks>
public sealed class NextMeasurement
{
    private NextMeasurement(IReadOnlyList<MeasurementWorth> ranked, double pull, double? gear, string weakest)
    {
        Ranked = ranked;
        NotMeasurableOfPull = pull;
        NotMeasurableOfGear = gear;
        WeakestPart = weakest;
    }

    /// <summary>Gets the measurements, the most worth first: by the larger of the two shares.</summary>
    public IReadOnlyList<MeasurementWorth> Ranked { get; }

    /// <summary>Gets the share of the doubt about the pull that nothing on the spot takes away; 0 where nothing that scatters reaches the pull.</summary>
    public double NotMeasurableOfPull { get; }

    /// <summary>Gets the share of the doubt about the gear that nothing on the spot takes away; null where the gear is not known or does not scatter.</summary>
    public double? NotMeasurableOfGear { get; }

    /// <summary>Gets the name of the part that the gear is judged by; empty where it is not known.</summary>
    public string WeakestPart { get; }

    /// <summary>Ranks the measurements of a sampled plan.</summary>
    /// <param name="sampler">The sampler; at most 50 inputs.</param>
    /// <param name="samples">Points of one randomisation, a power of two, 64 to 65,536.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The ranking.</returns>
    /// <exception cref="ArgumentNullException">The sampler is null.</exception>
    /// <exception cref="ArgumentException">The number of points is not a power of two.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or nothing scatters.</exception>
    /// <exception cref="SolverException">Neither pull nor gear varies, or a pull could not be solved.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static NextMeasurement Rank(PlanSampler sampler, int samples, ulong seed, CancellationToken cancellation = default)
    {
        PlanSampler.ThatScatters(sampler);
        Guard.Count(samples, 64, 65536, nameof(samples));
        var block = new BlockSampler(sampler, 0, PointSet.Random);
        var spreads = sampler.Sampled.Select(i => i.Factor).ToList();

        // Either is null where nothing that scatters reaches it: there is no doubt to share out.
        var pull = SobolIndices.OrNull(spreads, Pull, samples, seed, cancellation: cancellation);
        var weakest = sampler.Plan.Assess().Rig?.Weakest?.Part.Name;
        SobolIndices? gear = null;
        if (weakest is not null)
        {
            var limit = PlanLimits.Part(sampler, weakest);
            gear = SobolIndices.OrNull(spreads, limit.Of, samples, seed, cancellation: cancellation);
        }

        if (pull is null && gear is null) throw new SolverException("Neither the pull nor the gear varies with what scatters" + (weakest is null ? string.Empty : " (the gear is judged by its weakest part, the " + weakest + ")") + ", so no measurement narrows anything.");
        var ranked = new List<MeasurementWorth>();
        double restOfPull = 0, restOfGear = 0;
        for (var i = 0; i < spreads.Count; i++)
        {
            var input = sampler.Sampled[i];
            if (input.Input.IsMeasurable) ranked.Add(new MeasurementWorth(input, pull?.Inputs[i] ?? new InputSensitivity(i, 0, 0, 0, 0), gear?.Inputs[i]));
            else (restOfPull, restOfGear) = (restOfPull + Math.Max(0, pull?.Inputs[i].First ?? 0), restOfGear + Math.Max(0, gear?.Inputs[i].First ?? 0));
        }

        return new NextMeasurement(ranked.OrderByDescending(m => m.Share).ToList().AsReadOnly(), restOfPull, gear is null ? null : restOfGear, weakest ?? string.Empty);

        double Pull(ReadOnlySpan<double> x)
        {
            block.At(x, out var o);

            // A puller that does not move itself pulls nothing: a thousandth of its demand stands for it.
            return Math.Log(Math.Max(o.Sustained, 1e-3 * o.Demand) / o.Demand);
        }
    }

    /// <summary>Gives the first measurement in one line, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Ranked.Count == 0 ? "nothing to measure" : "measure next: " + Ranked[0];
}
