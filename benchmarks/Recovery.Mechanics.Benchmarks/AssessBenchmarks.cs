using BenchmarkDotNet.Attributes;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Scenarios;

namespace Recovery.Mechanics.Benchmarks;

/// <summary>The whole plan: assessing it, making it, and its demand alone.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class AssessBenchmarks
{
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
    public int BestThreeMeasures() => MeasureList.BestSet(_plan, 3).Count;
}
