using BenchmarkDotNet.Attributes;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Benchmarks;

/// <summary>One wheel model in its three layers, per wheel.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class BrixiusBenchmarks
{
    private const int Wheels = 1000;
    private readonly double[] _coneIndex = new double[Wheels];
    private readonly double[] _load = new double[Wheels];
    private readonly double[] _net = new double[Wheels];
    private readonly WheelOnSoil[] _wheels = new WheelOnSoil[Wheels];

    public BrixiusBenchmarks()
    {
        for (var i = 0; i < Wheels; i++)
        {
            _coneIndex[i] = 200 + i;
            _load[i] = 30 + (i % 50);
            _wheels[i] = new WheelOnSoil(Length.FromMeters(0.65), Length.FromMeters(1.9), Ratio.FromDecimalFractions(0.25), Force.FromKilonewtons(_load[i]), Pressure.FromKilopascals(_coneIndex[i]));
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Wheels)]
    public double Kernel()
    {
        double sum = 0;
        for (var i = 0; i < Wheels; i++)
        {
            var numeric = BrixiusKernel.Numeric(_coneIndex[i], 0.65, 1.9, 0.25, _load[i]);
            sum += _load[i] * BrixiusKernel.NetTractionRatio(numeric, 0.2, BrixiusConstants.Bias);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Wheels)]
    public double Typed()
    {
        double sum = 0;
        foreach (var wheel in _wheels) sum += BrixiusModel.Bias.Evaluate(wheel, Ratio.FromDecimalFractions(0.2)).NetTractionRatio!.Value;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Wheels)]
    public void Batch() => BrixiusModel.Bias.NetTraction(_coneIndex, _load, 0.65, 1.9, 0.25, 0.2, _net);
}
