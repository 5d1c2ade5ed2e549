using System;
using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

/// <summary>What holds for every wheel model on soil, whoever wrote it.</summary>
public class WheelModelPropertyTests
{
    private static readonly IWheelModel[] Models = [BrixiusModel.Bias, BrixiusModel.Radial, WismerLuthModel.Instance, GeeCloughModel.Instance, WesClayModel.Instance, VtiFineSoilModel.Instance];

    [Property]
    public Property Worse_ground_never_helps() => Each((model, wheel) =>
    {
        var better = model.Evaluate(wheel with { ConeIndex = wheel.ConeIndex * 1.1 }, Wheels.Slip(0.2));
        var worse = model.Evaluate(wheel, Wheels.Slip(0.2));
        return Value(better.MotionResistanceRatio, double.MaxValue) <= Value(worse.MotionResistanceRatio, double.MaxValue)
            && Value(better.NetTractionRatio, -1e9) >= Value(worse.NetTractionRatio, -1e9);
    });

    [Property]
    public Property A_lighter_wheel_never_rolls_harder() => Each((model, wheel) =>
        Value(model.Evaluate(wheel with { Load = wheel.Load * 0.8 }, Wheels.Slip(0)).MotionResistance?.Newtons, 1e12) <= Value(model.Evaluate(wheel, Wheels.Slip(0)).MotionResistance?.Newtons, 1e12) * (1 + 1e-12));

    /// <summary>Where the form is a soft-soil term plus a constant share, the term goes with the square of the load.</summary>
    [Property]
    public Property The_soft_term_goes_with_load_squared() => Prop.ForAll(Wheels.Any(), wheel => Array.TrueForAll(
        new (IWheelModel Model, double Constant)[] { (BrixiusModel.Bias, 0.04), (BrixiusModel.Radial, 0.0325), (WismerLuthModel.Instance, 0.04), (GeeCloughModel.Instance, 0.049) },
        m =>
        {
            double Soft(double factor)
            {
                var result = m.Model.Evaluate(wheel with { Load = wheel.Load * factor }, Wheels.Slip(0));
                return result.MotionResistance!.Value.Newtons - (m.Constant * result.Load.Newtons);
            }

            return Math.Abs((Soft(0.5) * 4 / Soft(1)) - 1) < 1e-8;
        }));

    [Property]
    public Property The_last_step_of_the_working_is_the_result() => Each((model, wheel) =>
    {
        var result = model.Evaluate(wheel, Wheels.Slip(0.25));
        var last = model.Explain(wheel, Wheels.Slip(0.25)).Steps[^1];
        if (result.Outcome == WheelOutcome.Immobile) return last.Value == "immobile";
        if (result.Outcome == WheelOutcome.NoDrive) return last.Value == "no drive";
        var expected = (result.NetTraction ?? result.MotionResistance)!.Value.Kilonewtons;
        var shown = double.Parse(last.Value.Split(' ')[0], CultureInfo.InvariantCulture);
        return Math.Abs(shown - expected) <= Math.Abs(expected) * 5.1e-4;
    });

    [Property]
    public Property Two_unit_systems_give_one_answer() => Each((model, wheel) =>
    {
        var imperial = new WheelOnSoil(
            Length.FromInches(wheel.SectionWidth.Inches), Length.FromFeet(wheel.OverallDiameter.Feet), Ratio.FromPercent(wheel.DeflectionRatio.Percent), Force.FromPoundsForce(wheel.Load.PoundsForce), Pressure.FromPoundsForcePerSquareInch(wheel.ConeIndex.PoundsForcePerSquareInch));
        double a = Value(model.Evaluate(wheel, Wheels.Slip(0.2)).MotionResistanceRatio, 0), b = Value(model.Evaluate(imperial, Ratio.FromPercent(20)).MotionResistanceRatio, 0);
        return Math.Abs(a - b) <= 1e-7 * Math.Max(a, 1);
    });

    [Fact]
    public void Every_model_refuses_a_missing_wheel_and_a_bad_slip()
    {
        foreach (var model in Models)
        {
            Assert.Throws<ArgumentNullException>(() => model.Evaluate(null!, Wheels.Slip(0)));
            Assert.Throws<ArgumentOutOfRangeException>(() => model.Evaluate(Wheels.Of(400, 30), Wheels.Slip(1.01)));
            Assert.Throws<ArgumentOutOfRangeException>(() => model.Explain(Wheels.Of(400, 30), Wheels.Slip(-0.01)));
        }
    }

    [Property]
    public Property The_batch_is_the_typed_model() => Each((model, wheel) =>
    {
        double[] resistance = new double[1], net = new double[1];
        var outcome = new WheelOutcome[1];
        var drives = new bool[1];
        WheelBatch.Evaluate(model, [wheel.ConeIndex.Kilopascals], [wheel.Load.Kilonewtons], wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, wheel.DeflectionRatio.DecimalFractions, 0.2, resistance, net, outcome, drives);
        var typed = model.Evaluate(wheel, Wheels.Slip(0.2));
        return outcome[0] == typed.Outcome && drives[0] == typed.NetTraction is not null
            && Math.Abs(resistance[0] - (typed.MotionResistance?.Kilonewtons ?? 0)) <= 1e-12 * wheel.Load.Kilonewtons
            && Math.Abs(net[0] - (typed.NetTraction?.Kilonewtons ?? 0)) <= 1e-12 * wheel.Load.Kilonewtons * (1 + Math.Abs(typed.NetTractionRatio ?? 0));
    });

    [Fact]
    public void The_batch_takes_a_model_of_the_host_and_refuses_bad_spans()
    {
        double[] resistance = new double[2], net = new double[2], own = new double[2];
        var outcome = new WheelOutcome[2];
        var drives = new bool[2];
        WheelBatch.Evaluate(new Foreign(), [200, 400], [98.1, 30], 0.9, 2.05, 0.2, 0.3, resistance, net, outcome, drives);
        WheelBatch.Evaluate(VtiFineSoilModel.Instance, [200, 400], [98.1, 30], 0.9, 2.05, 0.2, 0.3, own, net, outcome, drives);
        Assert.Equal(own, resistance);
        Assert.Equal([WheelOutcome.NoDrive, WheelOutcome.Rolls], outcome);
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => WheelBatch.Evaluate(WesClayModel.Instance, [200, double.NaN], [98.1, 30], 0.9, 2.05, 0.2, 0.3, resistance, net, outcome, drives));
        Assert.Contains("coneIndexKilopascals[1]", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => WheelBatch.Evaluate(WesClayModel.Instance, [200], [98.1], 0.9, 2.05, 0.2, 0.3, resistance, net, outcome, drives));
        Assert.Throws<ArgumentOutOfRangeException>(() => WheelBatch.Evaluate(WesClayModel.Instance, [], [], 0.9, 2.05, 0, 0.3, [], [], [], []));
    }

    [Theory]
    [InlineData(0.0004999)]
    [InlineData(0.6001)]
    public void A_wheel_that_does_not_yield_is_refused(double deflectionRatio) => Assert.Equal("deflectionRatio", Assert.Throws<ArgumentOutOfRangeException>(() => Wheels.Of(400, 30, dh: deflectionRatio)).ParamName);

    [Fact]
    public void On_firm_ground_the_farm_models_agree_within_a_third()
    {
        var wheel = Wheels.Of(900, 49.05, 0.60, 1.60, 0.20);
        foreach (var model in new IWheelModel[] { BrixiusModel.Radial, WismerLuthModel.Instance, GeeCloughModel.Instance })
            Assert.InRange(model.Evaluate(wheel, Wheels.Slip(0)).MotionResistanceRatio!.Value / BrixiusModel.Bias.Evaluate(wheel, Wheels.Slip(0)).MotionResistanceRatio!.Value, 2.0 / 3, 4.0 / 3);
    }

    private sealed class Foreign : IWheelModel
    {
        public string Name => "host";

        public Source Source => VtiFineSoilModel.Instance.Source;

        public Validity Validity => VtiFineSoilModel.Instance.Validity;

        public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip) => VtiFineSoilModel.Instance.Evaluate(wheel, slip);

        public Working Explain(WheelOnSoil wheel, Ratio slip) => VtiFineSoilModel.Instance.Explain(wheel, slip);
    }

    private static double Value(double? value, double otherwise) => value ?? otherwise;

    private static Property Each(Func<IWheelModel, WheelOnSoil, bool> holds) => Prop.ForAll(Wheels.Any(), wheel => Array.TrueForAll(Models, model => holds(model, wheel)));
}
