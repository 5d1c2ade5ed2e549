using System.Linq;
using BenchmarkDotNet.Attributes;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Traction;
using Recovery.Mechanics.Trafficability;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;

namespace Recovery.Mechanics.Benchmarks;

/// <summary>Ground and machines: a soil from its moisture, axle loads on a grade.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class GroundAndMachinesBenchmarks
{
    private readonly Machine _machine = PolderHarvester.Create().Stuck.Machine;
    private readonly Grade _grade = Grade.FromPercent(3);

    [Benchmark]
    public Soil SoilFromCone() => Soil.FromConeIndex(Pressure.FromKilopascals(350), Ratio.FromDecimalFractions(0.7));

    [Benchmark]
    public AxleLoads AxleLoads() => _machine.AxleLoads(_grade, PullDirection.Rearwards);
}

/// <summary>Traction, lines and rigging: what a tractor pulls, what the line then carries, what every part is left with.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class TractionLinesRiggingBenchmarks
{
    private readonly RecoveryPlan _plan = PolderHarvester.Create();
    private readonly LineLoads _loads;

    public TractionLinesRiggingBenchmarks() => _loads = _plan.Assess().Loads!;

    [Benchmark]
    public PullCapability Capability() => PullCapability.Estimate(_plan.Tower);

    [Benchmark]
    public LineLoads Loads() => LineLoads.Evaluate(Force.FromKilonewtons(130), Mass.FromTonnes(18), _plan.Rig.Line!, _plan.Procedure);

    [Benchmark]
    public RigCheck Rig() => RigCheck.Of(_plan.Rig, _plan.Policy, _loads);
}

/// <summary>Uncertainty: samples of a whole plan, random numbers, sensitivity.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class UncertaintyBenchmarks
{
    private const int Samples = 8192;
    private readonly BlockSampler _sampler = new(PlanSampler.WithDefaults(PolderHarvester.Create()), 1, PointSet.Random);
    private readonly double[] _uniforms = new double[Samples];
    private readonly LimitState _limit = PlanLimits.Pull(PlanSampler.WithDefaults(PolderHarvester.Create()));

    [Benchmark(Baseline = true, OperationsPerInvoke = Samples)]
    public long PlanSample()
    {
        _sampler.Run(0, Samples, default);
        return _sampler.Tallies.Count;
    }

    [Benchmark(OperationsPerInvoke = Samples)]
    public void Uniform() => Philox4x32.Uniforms(1, 0, 0, 0, _uniforms);

    [Benchmark]
    public FirstOrderResult FirstOrder() => FirstOrderReliability.Of(_limit);
}

/// <summary>Trafficability: one machine over many soils.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class TrafficabilityBenchmarks
{
    private const int Cells = 16384;
    private readonly MachineOnSoils _soils = MachineOnSoils.Of(PolderHarvester.Create().Stuck.Machine);
    private readonly double[] _index = Enumerable.Range(0, Cells).Select(i => 150.0 + (i % 1500)).ToArray();
    private readonly double[] _result = new double[Cells];
    private readonly bool[] _goes = new bool[Cells];

    [Benchmark(OperationsPerInvoke = Cells)]
    public void Mobility() => _soils.Mobility(_index, _result);

    [Benchmark(OperationsPerInvoke = Cells)]
    public void FillLimit() => _soils.FillLimit("beet", _index, _result, _goes);

    [Benchmark(OperationsPerInvoke = Cells)]
    public void NetTraction() => BrixiusBatch.Bias.NetTraction(_index, [40], 0.65, 1.9, 0.2, 0.2, _result);
}
