using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>A remoulding test: the cone in a tube sample before and after 100 blows.</summary>
/// <remarks>
/// <para>RI = cone index after / cone index before, at most 1: blows of a 2.5 lb hammer falling 12 in (FASST report SR-04-1, primary). The cap, and that an index below 0.5 is unlikely in fat clay (CH) and wants a second sample, are reported (ERDC/GSL SR-13-2).</para>
/// <para>It applies to fine-grained soils and to sands with fines; clean sand has RI 1 and no test. On clay it changes go into no-go sooner than the choice of model does: take several samples and use the smallest for what must not fail.</para>
/// <para>Immutable, equality by value, pascals inside.</para>
/// </remarks>
public sealed record RemouldingTest
{
    /// <summary>Index below which fat clay is doubted.</summary>
    private const double Doubtful = 0.5;

    /// <summary>Describes a test.</summary>
    /// <param name="before">Cone index of the sample as taken, 1 to 20,000 kPa.</param>
    /// <param name="after">Cone index after 100 blows, 0.1 to 20,000 kPa.</param>
    /// <param name="uscs">Class of the soil; null where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the class is not defined.</exception>
    /// <exception cref="ArgumentException">The soil is clean sand, which has no remoulding index but 1.</exception>
    public RemouldingTest(Pressure before, Pressure after, UscsClass? uscs = null)
    {
        Before = Pressure.FromPascals(Guard.Pascals(before, 1, 20000, nameof(before)));
        After = Pressure.FromPascals(Guard.Pascals(after, 0.1, 20000, nameof(after)));
        if (uscs is { } known)
        {
            Guard.Defined(known, known is >= UscsClass.SW and <= UscsClass.OH, nameof(uscs));
            if (MoistureCoefficients.Of(known).Kind == SoilKind.CleanSand) throw new ArgumentException("uscs " + known + " is clean sand: its remoulding index is 1 and is not tested.", nameof(uscs));
        }

        Uscs = uscs;
    }

    /// <summary>Gets the cone index of the sample as taken.</summary>
    public Pressure Before { get; }

    /// <summary>Gets the cone index after 100 blows.</summary>
    public Pressure After { get; }

    /// <summary>Gets the class of the soil; null where it is not known.</summary>
    public UscsClass? Uscs { get; }

    /// <summary>Gets the ratio as tested, before the cap.</summary>
    public Ratio Tested => Ratio.FromDecimalFractions(SoilKernel.RemouldingIndex(Before.Pascals, After.Pascals));

    /// <summary>Gets the remoulding index, 0.05 to 1: the least that a <see cref="Soil"/> takes. A test below it is counted higher than it reads, and a finding says so.</summary>
    public Ratio RemouldingIndex => Ratio.FromDecimalFractions(Math.Max(SoilKernel.LeastRemouldingIndex, Math.Min(1, Tested.DecimalFractions)));

    /// <summary>Gets what is to be said of the test; empty where it is plain.</summary>
    public IReadOnlyList<Finding> Findings => Objection is { } objection ? [Say(objection, Phrase.Name("sample"))] : [];

    /// <summary>What is to be said of the test, without its text; null where it is plain.</summary>
    private FindingDefinition? Objection
    {
        get
        {
            var tested = Tested.DecimalFractions;
            return tested > 1 ? GroundFindings.RemouldingCapped
                : tested < SoilKernel.LeastRemouldingIndex ? GroundFindings.RemouldingRaised
                : Uscs == UscsClass.CH && tested < Doubtful ? GroundFindings.RemouldingDoubtful
                : null;
        }
    }

    /// <summary>Works the index out.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        string before = Text.Kilopascals(Before.Pascals), after = Text.Kilopascals(After.Pascals);
        return new WorkingBuilder("Remoulding index")
            .Step("RI_t", "cone after 100 blows over cone before", "CI_after/CI_before", after + "/" + before, Text.Number(Tested.DecimalFractions), GroundSources.RatingConeIndex)
            .Step("RI", "remoulding index", "min(RI_t, 1), at least 0.05", "min(" + Text.Number(Tested.DecimalFractions) + ", 1)", Text.Number(RemouldingIndex.DecimalFractions), GroundSources.RemouldingLimits)
            .Build();
    }

    /// <summary>Gives the test in words, invariant culture.</summary>
    /// <returns>Readings and index.</returns>
    public override string ToString() => Text.Kilopascals(Before.Pascals, 3) + " before, " + Text.Kilopascals(After.Pascals, 3) + " after 100 blows: remoulding index " + Text.Number(RemouldingIndex.DecimalFractions, 2);

    /// <summary>Adds what is to be said of the test of a soil beside or under a machine; nothing, and nothing is made, where it is plain.</summary>
    internal void AddFindings(PhraseTemplate where, string machine, List<Finding> findings)
    {
        if (Objection is { } objection) findings.Add(Say(objection, where.With(machine)));
    }

    private Finding Say(FindingDefinition objection, Phrase subject) => new(
        objection,
        subject,
        objection == GroundFindings.RemouldingCapped ? 1 : objection == GroundFindings.RemouldingRaised ? SoilKernel.LeastRemouldingIndex : Doubtful,
        Tested.DecimalFractions);
}
