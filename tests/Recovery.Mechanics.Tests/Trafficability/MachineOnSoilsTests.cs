using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Trafficability;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Trafficability;

/// <summary>One machine over many soils: mobility, go and no-go, fill limit.</summary>
public class MachineOnSoilsTests
{
    private static readonly Machine Harvester = PolderHarvester.Create().Stuck.Machine;
    private static readonly double[] Index = Enumerable.Range(0, 141).Select(i => 60 * Math.Pow(1.03, i)).ToArray();

    [Theory]
    [InlineData(0, false)]
    [InlineData(6, false)]
    [InlineData(-4, true)]
    public void Mobility_is_the_sum_of_the_typed_wheels_at_the_best_slip(double percent, bool radial)
    {
        var grade = Grade.FromPercent(percent);
        var soils = radial ? MachineOnSoils.WithRadialConstants(Harvester, grade) : MachineOnSoils.Of(Harvester, grade);
        var left = new double[Index.Length];
        soils.Mobility(Index, left);
        var loads = Harvester.AxleLoads(grade, PullDirection.Forwards);
        var model = radial ? BrixiusModel.Radial : BrixiusModel.Bias;
        for (var i = 0; i < Index.Length; i += 10)
        {
            double Net(double slip) => Harvester.Axles.Select((a, k) =>
            {
                var load = Force.FromNewtons(loads.Newtons[k] / a.Tyres);
                var wheel = new WheelOnSoil(a.Tyre.SectionWidth, a.Tyre.OverallDiameter, Ratio.FromDecimalFractions(a.Tyre.Deflection(load).Meters / a.Tyre.SectionHeight.Meters), load, Pressure.FromKilopascals(Index[i]));
                return a.Tyres * model.Evaluate(wheel, Ratio.FromDecimalFractions(slip)).NetTraction!.Value.Newtons;
            }).Sum();
            var best = Enumerable.Range(0, 601).Max(s => Net(s * 0.0005));
            Assert.Equal((best / Harvester.Weight.Newtons) - Math.Sin(grade.Radians), left[i], 2e-6);
        }
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "machine-on-soils")]
    public void Mobility_and_critical_index_agree_with_SciPy(CheckRow row)
    {
        static Tyre Wheel(double width, double diameter) => new(Length.FromMeters(width), Length.FromMeters(diameter), Length.FromMeters(0.5), Pressure.FromKilopascals(200), deflectionRatio: Ratio.FromDecimalFractions(0.2));
        var machine = new Machine("two axles",
            [new Axle("front axle", Length.Zero, 2, Wheel(0.8, 2.05), true, Length.FromMeters(2.6)), new Axle("rear axle", Length.FromMeters(-4.9), 2, Wheel(0.7, 1.9), row.Si("rear_driven") > 0, Length.FromMeters(2.4))],
            [new NamedLoad("body", Mass.FromTonnes(22), Length.FromMeters(-2.3), Length.FromMeters(1.7)), new NamedLoad("beet", Mass.FromTonnes(8), Length.FromMeters(-2.9), Length.FromMeters(2.6), LoadKind.Payload)]).WithShareOf("beet", Ratio.FromDecimalFractions(row.Si("fill")));
        var grade = Grade.FromPercent(100 * row.Si("grade"));
        var soils = row.Word("model") == "brixius-bias" ? MachineOnSoils.Of(machine, grade) : MachineOnSoils.WithRadialConstants(machine, grade);
        var left = new double[1];
        soils.Mobility([row.Si("CI") / 1000], left);
        row.Matches(("mobility", left[0]), ("critical", 1000 * soils.CriticalConeIndexKilopascals!.Value));
    }

    [Fact]
    public void Every_width_gives_the_kernel()
    {
        var flat = MobilityFlat.From(Harvester, Grade.FromPercent(2));
        var expected = new double[Index.Length];
        flat.Scalar(Index, BrixiusConstants.Bias, expected);
        var result = new double[Index.Length];
        flat.Surplus(Index, BrixiusConstants.Bias, result);
        Near(expected, result);
#if NET
        flat.Run<Lanes256>(Index, BrixiusConstants.Bias, result);
        Near(expected, result);
        flat.Run<Lanes128>(Index, BrixiusConstants.Bias, result);
        Near(expected, result);
        flat.Run<Lanes512>(Index, BrixiusConstants.Bias, result);
        Near(expected, result);
#endif
    }

    [Fact]
    public void It_goes_from_the_critical_index_upwards()
    {
        var soils = MachineOnSoils.Of(Harvester);
        var critical = soils.CriticalConeIndexKilopascals!.Value;
        var goes = new bool[3];
        soils.Goes([critical * (1 - 1e-9), critical, critical * (1 + 1e-9)], goes);
        Assert.Equal([false, true, true], goes);
        var left = new double[2];
        soils.Mobility([critical * 0.999, critical * 1.001], left);
        Assert.True(left[0] < 0 && left[1] > 0);
        Assert.True(MachineOnSoils.WithRadialConstants(Harvester).CriticalConeIndexKilopascals < critical);
        Assert.True(MachineOnSoils.Of(Harvester, Grade.FromPercent(5)).CriticalConeIndexKilopascals > critical);
    }

    [Fact]
    public void The_fill_limit_is_the_share_at_which_the_machine_just_goes()
    {
        var soils = MachineOnSoils.Of(Harvester);
        double full = soils.CriticalConeIndexKilopascals!.Value, empty = MachineOnSoils.Of(Harvester.WithShareOf("beet", Ratio.FromDecimalFractions(0))).CriticalConeIndexKilopascals!.Value;
        Assert.True(empty < full);
        double[] index = [empty * 0.99, empty, 0.5 * (empty + full), full, 2 * full], share = new double[5];
        var goes = new bool[5];
        soils.FillLimit("beet", index, share, goes);
        Assert.Equal([false, true, true, true, true], goes);
        Assert.Equal(0, share[0]);
        Assert.Equal(0, share[1]);
        Assert.Equal(1, share[3]);
        Assert.Equal(1, share[4]);
        Assert.InRange(share[2], 0.2, 0.8);
        Assert.True(MachineOnSoils.Of(Harvester.WithShareOf("beet", Ratio.FromDecimalFractions(share[2]))).CriticalConeIndexKilopascals <= index[2]);
        Assert.True(MachineOnSoils.Of(Harvester.WithShareOf("beet", Ratio.FromDecimalFractions(share[2] + (1 / 256.0)))).CriticalConeIndexKilopascals > index[2]);
        Assert.Throws<ArgumentException>(() => soils.FillLimit("maize", index, share, goes));
    }

    [Fact]
    public void A_machine_that_no_soil_carries_up_the_slope_never_goes()
    {
        var soils = MachineOnSoils.Of(Harvester, Grade.FromPercent(90));
        Assert.Null(soils.CriticalConeIndexKilopascals);
        var goes = new[] { true };
        soils.Goes([20000], goes);
        Assert.Equal([false], goes);
        Assert.Contains("no cone index", soils.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Misuse_is_refused()
    {
        var soils = MachineOnSoils.Of(Harvester);
        Assert.Throws<ArgumentException>(() => soils.Mobility([1, 2], new double[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => soils.Mobility([0], new double[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => soils.Goes([double.NaN], new bool[1]));
        Assert.Throws<ArgumentNullException>(() => MachineOnSoils.Of(null!));
    }

    private static void Near(double[] expected, double[] actual)
    {
        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], actual[i], 2e-13);
    }
}
