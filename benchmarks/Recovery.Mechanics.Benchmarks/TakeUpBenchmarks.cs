using System.Collections.Generic;
using BenchmarkDotNet.Attributes;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Benchmarks;

/// <summary>The take-ups of <c>benchmarks/reference/lines.py</c> followed in time, without a history. Compare with <c>python3 benchmarks/reference/lines.py --time</c> on the same machine.</summary>
[ShortRunJob]
public class TakeUpBenchmarks
{
    private static readonly Source Made = new("made", "made up for a benchmark", Standing.UserSupplied);
    private static readonly LoadElongation Nylon = LoadElongation.Linear(M(9), N(588399), Strain(0.25), Made);
    private static readonly LoadElongation Stiffer = LoadElongation.Linear(M(9), N(588399), Strain(0.2), Made);
    private static readonly LoadElongation Power = LoadElongation.PowerLaw(M(9), N(588399), Strain(0.25), 1.5, Made);

    private static readonly Dictionary<string, TakeUpCase> All = new()
    {
        ["linear-pull"] = Case(0, 20e3, 5, TowDrive.ConstantPull(N(100e3)), 4, Nylon),
        ["linear-slack"] = Case(0.5, 18e3, 2, TowDrive.ConstantPull(N(116e3)), 4, Nylon),
        ["linear-raised"] = Case(0, 18e3, 0, TowDrive.RaisedPull(N(116e3), Duration.FromSeconds(2)), 4, Stiffer),
        ["power-pull"] = Case(0, 20e3, 10, TowDrive.ConstantPull(N(50e3)), 4, Power),
        ["power-slack"] = Case(0.3, 14e3, 3, TowDrive.ConstantPull(N(60e3)), 4, LoadElongation.PowerLaw(M(12), N(400e3), Strain(0.15), 2.2, Made)),
        ["table-pull"] = Case(0, 16e3, 4, TowDrive.ConstantPull(N(70e3)), 4, LoadElongation.Tabulated(M(9), [0.05, 0.12, 0.25], [40, 180, 588.399], Made)),
        ["series-pull"] = Case(0, 20e3, 5, TowDrive.ConstantPull(N(80e3)), 3, LoadElongation.PowerLaw(M(9), N(588399), Strain(0.25), 1.4, Made), LoadElongation.Linear(M(6), N(500e3), Strain(0.1), Made)),
        ["gear-slack"] = Case(0.5, 18e3, 0, TowDrive.LockedGear(N(116e3), Kmh(5)), 5, Stiffer),
        ["gear-power"] = Case(0, 18e3, 2, TowDrive.LockedGear(N(116e3), Kmh(2)), 4, Power),
        ["break-out"] = Case(0, 20e3, 10, TowDrive.ConstantPull(N(100e3)), 2, Nylon).WithCasualty(Kg(30e3), N(150e3), N(100e3)),
        ["break-out-power"] = Case(0.2, 20e3, 5, TowDrive.ConstantPull(N(60e3)), 5, Power).WithCasualty(Kg(28e3), N(90e3), N(70e3)),
        ["gear-stick-slip"] = Case(0, 18e3, 0.6, TowDrive.LockedGear(N(116e3), Kmh(0.6)), 5, Stiffer).WithCasualty(Kg(25e3), N(100e3), N(75e3)),
    };

    /// <summary>Gets the names of the take-ups.</summary>
    public static IEnumerable<string> Names => All.Keys;

    [ParamsSource(nameof(Names))]
    public string Name { get; set; } = "linear-pull";

    [Benchmark]
    public Force Simulate() => TakeUp.Simulate(All[Name]).Peak;

    private static TakeUpCase Case(double slack, double kilograms, double kilometresPerHour, TowDrive drive, double seconds, params LoadElongation[] curves)
    {
        var parts = new List<LineSegment>();
        foreach (var curve in curves) parts.Add(new LineSegment("part", curve, LinearDensity.FromKilogramsPerMeter(1)));
        // The tolerance is the loosest that holds every force and time within 1e-8, as for the other solver.
        return new TakeUpCase(new LineAssembly(parts, M(slack)), Kg(kilograms), drive, Kmh(kilometresPerHour)).WithSpan(Duration.FromSeconds(seconds)).WithPartsLetGo(false).WithKeepsHistory(false).WithTolerance(1e-10);
    }

    private static Length M(double value) => Length.FromMeters(value);

    private static Force N(double value) => Force.FromNewtons(value);

    private static Mass Kg(double value) => Mass.FromKilograms(value);

    private static Ratio Strain(double value) => Ratio.FromDecimalFractions(value);

    private static Speed Kmh(double value) => Speed.FromKilometersPerHour(value);
}
