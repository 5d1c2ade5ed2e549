using System;
using System.Collections.Generic;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What sampling a plan comes to: probabilities with their sampling error, and how the numbers spread. Parts merge exactly.</summary>
/// <remarks>Immutable. Probabilities hold for the spreads that were put on the inputs, and most of those are from memory or by judgement: in words they are orders of magnitude. A low probability never says that a pull is without danger.</remarks>
public sealed class PlanSamples
{
    private readonly PlanTallies _tallies;

    internal PlanSamples(PlanSampler sampler, PlanTallies tallies)
    {
        Sampler = sampler;
        _tallies = tallies;
    }

    /// <summary>Gets the sampler.</summary>
    public PlanSampler Sampler { get; }

    /// <summary>Gets the number of samples.</summary>
    public long Count => _tallies.Count;

    /// <summary>Gets how likely the sustained pull is below the demand.</summary>
    public SampledProbability NotEnough => new(_tallies.NotEnough, Count);

    /// <summary>Gets how likely the machine drives itself out: the net traction of its own driven wheels reaches what holds it beside their rolling, all wheels turning, as <see cref="Recovery.Mechanics.Resistance.SelfRecovery"/> sets them against each other at central. Null where no sample has an answer: a buried wheel is in no wheel model's range, and a machine without drive does not move itself.</summary>
    /// <remarks>A sample without an answer counts as one in which it does not free itself; <see cref="OwnWheelsNotCovered"/> says how many there are. Wheels that roll outside the tested range of the wheel model are counted, where the typed answer stays undecided: harvester wheels are heavier than any that were tested.</remarks>
    public SampledProbability? FreesItself => _tallies.NotCovered == Count ? null : new(_tallies.Frees, Count);

    /// <summary>Gets how often no wheel model covers the machine's own drive: none of its loaded axles is driven, or a driven wheel is buried.</summary>
    public SampledProbability OwnWheelsNotCovered => new(_tallies.NotCovered, Count);

    /// <summary>Gets how the central demand spreads, N.</summary>
    public SampleSummary DemandNewtons => new(_tallies.Demand);

    /// <summary>Gets how the sustained pull spreads, N.</summary>
    public SampleSummary SustainedNewtons => new(_tallies.Sustained);

    /// <summary>Gets how the most that the towing machine can put into the line spreads, N.</summary>
    public SampleSummary ImposableNewtons => new(_tallies.Imposable);

    /// <summary>Gets how the procedure peak spreads, N; null where the line is not known.</summary>
    public SampleSummary? ProcedurePeakNewtons => _tallies.Procedure.Count == 0 ? null : new(_tallies.Procedure);

    /// <summary>Gets how sustained pull over demand spreads.</summary>
    public SampleSummary Margin => new(_tallies.Margin);

    /// <summary>Gets every place of the rig; empty where the line is not known.</summary>
    public IReadOnlyList<PartSamples> Parts
    {
        get
        {
            var parts = new List<PartSamples>(_tallies.Places.Length);
            for (var i = 0; i < _tallies.Places.Length; i++)
            {
                var place = Sampler.Numbers.Compiled.Places[i];
                parts.Add(new PartSamples(Sampler.Plan.Rig.Parts[place.Part].Name, place.Kind, place.Floor, _tallies.Places[i], Count));
            }

            return parts.AsReadOnly();
        }
    }

    /// <summary>Gets how likely a verdict is: findings that do not turn on numbers as the plan has them, the others worked for each sample.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>Its probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The verdict is not one of the defined values.</exception>
    public SampledProbability Probability(Verdict verdict) => new(_tallies.Of(Guard.Defined(verdict, verdict is >= Verdict.NoObjectionFound and <= Verdict.Stop, nameof(verdict))), Count);

    /// <summary>Gives both parts together, exactly.</summary>
    /// <param name="other">Another part of the samples of the same sampler.</param>
    /// <returns>The merged results.</returns>
    /// <exception cref="ArgumentNullException">The other part is null.</exception>
    /// <exception cref="ArgumentException">It comes from another sampler.</exception>
    public PlanSamples Merge(PlanSamples other)
    {
        if (!ReferenceEquals(Guard.NotNull(other, nameof(other)).Sampler, Sampler)) throw new ArgumentException("other was sampled with another sampler: its numbers do not belong to these.", nameof(other));
        var merged = new PlanTallies(Sampler.Numbers);
        merged.Add(_tallies);
        merged.Add(other._tallies);
        return new PlanSamples(Sampler, merged);
    }

    /// <summary>Gives everything that was counted as bytes: equal samples give equal bytes, on any number of threads and in any partition.</summary>
    /// <returns>The bytes.</returns>
    public byte[] ToBytes()
    {
        var bytes = new List<byte>(65536);
        _tallies.Write(bytes);
        return [.. bytes];
    }

    /// <summary>Gives the results as plain text of at most 80 columns, orders of magnitude only, each probability with its sampling error; invariant culture.</summary>
    /// <returns>The text, line feeds.</returns>
    public string ToReport() => PlanSamplesReport.Of(this);

    /// <summary>Gives the first probability in one line, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Text.Number(Count, 12) + " samples, the pull is not enough: " + NotEnough.WithInterval();
}
