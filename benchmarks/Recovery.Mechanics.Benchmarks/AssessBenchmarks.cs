using BenchmarkDotNet.Attributes;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using UnitsNet;

namespace Recovery.Mechanics.Benchmarks;

/// <summary>The whole plan: assessing it, making it, and its demand alone.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class AssessBenchmarks
{
    /// <summary>The twelve measures of the search.</summary>
    internal static readonly Measure[] Twelve =
    [
        RecoveryMeasures.Unload("beet"), RecoveryMeasures.Detach("lifter front"), RecoveryMeasures.Deflate(), RecoveryMeasures.Dig(Angle.FromDegrees(9)), RecoveryMeasures.Vent(), RecoveryMeasures.FreeBelly(), RecoveryMeasures.DriveOwnWheels(),
        RecoveryMeasures.MoveTower(Soil.FromConeIndex(Pressure.FromKilopascals(1500), Ratio.FromDecimalFractions(0.9))), RecoveryMeasures.Ballast(Mass.FromTonnes(2), Length.FromMeters(0.8), Length.FromMeters(0.9)), RecoveryMeasures.LongerLine("recovery strap", Length.FromMeters(18)),
        RecoveryMeasures.SlowerGear(Speed.FromKilometersPerHour(1)), RecoveryMeasures.ReplacePart("axle strap", new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(80), Length.FromMeters(1.6)) { Choked = true, AngleOfChoke = Angle.FromDegrees(125) }),
    ];

    private readonly RecoveryPlan _plan = PolderHarvester.Create();

    [Benchmark(Baseline = true)]
    public Assessment Assess() => _plan.Assess();

    [Benchmark]
    public RecoveryPlan MakePlan() => _plan.With(_plan.Stuck);

    [Benchmark]
    public PullDemand Demand() => PullDemand.Estimate(_plan.Stuck);

    [Benchmark]
    public string Report() => _plan.Assess().ToReport();

    [Benchmark]
    public int SearchTwelveMeasures() => MeasureSearch.Run(_plan, Twelve).SetsTried;

    [Benchmark]
    public int BestThreeMeasures() => MeasureList.BestSet(_plan, 3).Count;
}
