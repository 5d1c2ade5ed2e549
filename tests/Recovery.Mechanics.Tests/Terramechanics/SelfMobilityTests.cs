using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class SelfMobilityTests
{
    public static IModel Model(string name) => name switch
    {
        "brixius-bias" => BrixiusModel.Bias,
        "brixius-radial" => BrixiusModel.Radial,
        "wismer-luth" => WismerLuthModel.Instance,
        "gee-clough" => GeeCloughModel.Instance,
        "wes-clay" => WesClayModel.Instance,
        "vti" => VtiFineSoilModel.Instance,
        "maclaurin" => MaclaurinModel.Instance,
        "nrmm" => RatingConeIndexModel.Instance,
        _ => BekkerWheelModel.Instance,
    };

    [Theory]
    [CheckRows("terramechanics", "critical-bias")]
    public void Brixius_bias_matches(CheckRow row) => row.Matches(("CI", Index(BrixiusModel.Bias, Wheels.TwoAxles(row, 400))));

    [Theory]
    [CheckRows("terramechanics", "critical-bias-front")]
    public void Brixius_bias_on_the_front_axle_matches(CheckRow row) => row.Matches(("CI", Index(BrixiusModel.Bias, Wheels.TwoAxles(row, 400, rearDriven: false))));

    [Theory]
    [CheckRows("terramechanics", "critical-wismer-luth")]
    public void Wismer_Luth_matches(CheckRow row) => row.Matches(("CI", Index(WismerLuthModel.Instance, Wheels.TwoAxles(row, 400))));

    [Theory]
    [CheckRows("terramechanics", "critical-vti")]
    public void Vti_matches(CheckRow row) => row.Matches(("CI_all", Index(VtiFineSoilModel.Instance, Wheels.TwoAxles(row, 400))), ("CI_front", Index(VtiFineSoilModel.Instance, Wheels.TwoAxles(row, 400, rearDriven: false))));

    [Theory]
    [CheckRows("terramechanics", "comparison-30t-critical")]
    public void Reproduces_the_critical_indices(CheckRow row)
    {
        var model = (IWheelModel)Model(row.Word("model"));
        row.Matches(("CI_all", Index(model, Machine(true))), ("CI_front", Index(model, Machine(false))));
    }

    [Theory]
    [CheckRows("terramechanics", "stuck-cap-bias")]
    public void A_stuck_machine_caps_the_index_by_bias(CheckRow row) => Capped(row, BrixiusModel.Bias);

    [Theory]
    [CheckRows("terramechanics", "stuck-cap-radial")]
    public void A_stuck_machine_caps_the_index_by_radial(CheckRow row) => Capped(row, BrixiusModel.Radial);

    [Theory]
    [CheckRows("terramechanics", "stuck-cap-two-ways")]
    public void The_less_mobile_direction_caps(CheckRow row)
    {
        var wheels = Wheels.TwoAxles(row, 400);
        double pull = Index(BrixiusModel.Bias, wheels, Grade(wheels, row.Si("grade_pull"))), entry = Index(BrixiusModel.Bias, wheels, Grade(wheels, row.Si("grade_entry"))), cap = Math.Max(pull, entry);
        row.Matches(("CI_critical_pull", pull), ("CI_critical_entry", entry), ("CI_used", Math.Min(row.Si("CI"), cap)), ("RCI_used", Math.Min(row.Si("CI"), cap)));
    }

    [Theory]
    [CheckRows("terramechanics", "stuck-cap-three-axles")]
    public void A_stuck_three_axle_machine_caps_the_index(CheckRow row)
    {
        var all = row.Word("driven") == "all";
        var wheels = Enumerable.Range(1, 3).Select(i => new WheelSet(Wheels.Of(400, row.Si("N" + i) / 2000, row.Si("b" + i), row.Si("d" + i), row.Si("dh")), 2, all || i == 1)).ToArray();
        var critical = Index(BrixiusModel.Radial, wheels, row.Si("W") * Math.Sin(Math.Atan(row.Si("grade"))));
        row.Matches(("CI_critical", critical), ("CI_used", Math.Min(row.Si("CI"), critical)), ("RCI_used", Math.Min(row.Si("CI") * row.Si("RI"), critical)));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "self-mobility")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        WheelSet[] wheels =
        [
            new(Wheels.Of(400, row.Si("W1") / 1000, row.Si("b1"), row.Si("d1"), row.Si("dh")), 2),
            new(Wheels.Of(400, row.Si("W2") / 1000, row.Si("b2"), row.Si("d2"), row.Si("dh")), 4),
            new(Wheels.Of(400, row.Si("W3") / 1000, row.Si("b3"), row.Si("d3"), row.Si("dh")), 2, driven: false),
        ];
        var result = SelfMobility.Find((IWheelModel)Model(row.Word("model")), wheels, Force.FromNewtons(row.Si("F")), Wheels.Slip(row.Si("limit")));
        row.Matches(("CI", result.CriticalConeIndex!.Value.Pascals));
        Assert.True(Math.Abs(result.Residual!.Value.Newtons) < 0.01, result.Residual.Value.Newtons.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.InRange(result.Calls, 3, 200);
    }

    [Property(MaxTest = 50)]
    public Property The_fast_search_of_the_demand_agrees() => Prop.ForAll(Wheels.Any(), wheel =>
    {
        WheelSet[] wheels = [new(wheel, 2), new(wheel with { Load = wheel.Load * 0.6 }, 2, driven: false)];
        var found = SelfMobility.Find(BrixiusModel.Radial, wheels, Force.FromNewtons(0.02 * wheel.Load.Newtons));
        double[] perPascal = wheels.Select(s => BrixiusKernel.Numeric(1, s.Wheel.SectionWidth.Meters, s.Wheel.OverallDiameter.Meters, s.Wheel.DeflectionRatio.DecimalFractions, s.Wheel.Load.Newtons)).ToArray();
        var fast = CriticalIndexKernel.Find(perPascal, wheels.Select(s => s.LoadNewtons).ToArray(), [true, false], 0.02 * wheel.Load.Newtons, BrixiusConstants.Radial);
        return Math.Abs((found.CriticalConeIndex!.Value.Pascals / fast) - 1) < 1e-6;
    });

    [Property(MaxTest = 30)]
    public Property Below_it_the_wheels_do_not_move_and_above_they_do() => Prop.ForAll(Wheels.Any(), wheel =>
    {
        foreach (var model in new IWheelModel[] { BrixiusModel.Bias, WismerLuthModel.Instance, GeeCloughModel.Instance, VtiFineSoilModel.Instance })
        {
            WheelSet[] wheels = [new(wheel, 2)];
            var index = SelfMobility.Find(model, wheels).CriticalConeIndex!.Value;
            Force? below = SelfMobility.NetTraction(model, [wheels[0].On(index * 0.999)]), above = SelfMobility.NetTraction(model, [wheels[0].On(index * 1.001)]);
            if (below is { Newtons: >= 0 } || above is not { Newtons: > 0 }) return false;
        }

        return true;
    });

    [Fact]
    public void Says_why_there_is_none()
    {
        WheelSet[] towed = [new(Wheels.Of(400, 30), 2, driven: false)], driven = [new(Wheels.Of(400, 30), 2)];
        Assert.Equal("no wheel is driven", SelfMobility.Find(BrixiusModel.Bias, towed).Refusal);
        Assert.Equal("the model gives no traction", SelfMobility.Find(WesClayModel.Instance, driven).Refusal);
        Assert.Contains("firm enough", SelfMobility.Find(BrixiusModel.Bias, driven, Force.FromKilonewtons(100)).Refusal, StringComparison.Ordinal);
        Assert.Contains("any soil", SelfMobility.Find(BrixiusModel.Bias, [new(Wheels.Of(400, 0.02, 1.2, 2.2, 0.3), 2)], Force.FromKilonewtons(-10)).Refusal, StringComparison.Ordinal);
        Assert.Null(SelfMobility.Find(BrixiusModel.Bias, towed).CriticalConeIndex);
        Assert.Null(SelfMobility.NetTraction(WesClayModel.Instance, [new(Wheels.Of(10, 98.1), 2)]));
        Assert.Null(SelfMobility.NetTraction(WesClayModel.Instance, driven));
        Assert.Contains("no wheel", SelfMobility.Find(BrixiusModel.Bias, towed).ToString(), StringComparison.Ordinal);
    }

    /// <summary>A model of the host that jumps from immobile to plenty: no root, and it is said.</summary>
    [Fact]
    public void A_jump_is_not_taken_for_a_root() => Assert.Throws<SolverException>(() => SelfMobility.Find(new Jump(), [new(Wheels.Of(400, 30), 2)]));

    private sealed class Jump : IWheelModel
    {
        public string Name => "jump";

        public Source Source => BrixiusModel.Bias.Source;

        public Validity Validity => BrixiusModel.Bias.Validity;

        public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip) => wheel.ConeIndex.Kilopascals < 300 ? WesClayModel.Instance.Evaluate(Wheels.Of(1, 400), slip) : BrixiusModel.Bias.Evaluate(wheel with { ConeIndex = Pressure.FromKilopascals(2000) }, slip);

        public Working Explain(WheelOnSoil wheel, Ratio slip) => BrixiusModel.Bias.Explain(wheel, slip);
    }

    [Fact]
    public void The_best_slip_within_the_limit_is_taken()
    {
        // On soft ground at slip up to 1 the greatest net traction lies inside; at 0.30 it lies at the limit.
        WheelSet[] wheels = [new(Wheels.Of(400, 60), 2)];
        var free = SelfMobility.Find(BrixiusModel.Radial, wheels, null, Ratio.FromDecimalFractions(1));
        var planned = SelfMobility.Find(BrixiusModel.Radial, wheels);
        Assert.InRange(free.Slip!.Value.DecimalFractions, 0.2, 0.9);
        Assert.True(free.CriticalConeIndex <= planned.CriticalConeIndex);
    }

    [Fact]
    public void Refuses_bad_input()
    {
        WheelSet[] driven = [new(Wheels.Of(400, 30), 2)];
        Assert.Throws<ArgumentNullException>(() => SelfMobility.Find(null!, driven));
        Assert.Throws<ArgumentException>(() => SelfMobility.Find(BrixiusModel.Bias, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => SelfMobility.Find(BrixiusModel.Bias, driven, null, Ratio.FromDecimalFractions(1.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SelfMobility.Find(BrixiusModel.Bias, driven, Force.FromKilonewtons(6000)));
    }

    private static WheelSet[] Machine(bool rearDriven) => [new(Wheels.Of(400, 98.1, 0.90, 2.05, 0.20), 2), new(Wheels.Of(400, 49.05, 0.60, 1.60, 0.20), 2, rearDriven)];

    private static double Index(IWheelModel model, WheelSet[] wheels, double newtons = 0) => SelfMobility.Find(model, wheels, Force.FromNewtons(newtons)).CriticalConeIndex!.Value.Pascals;

    private static double Grade(WheelSet[] wheels, double grade) => wheels.Sum(s => s.LoadNewtons) * Math.Sin(Math.Atan(grade));

    private static void Capped(CheckRow row, BrixiusModel model)
    {
        var wheels = Wheels.TwoAxles(row, 400);
        var critical = Index(model, wheels, Grade(wheels, row.Si("grade")));
        double index = Math.Min(row.Si("CI"), critical), rating = Math.Min(row.Si("CI") * row.Si("RI"), critical);
        row.Matches(("CI_critical", critical), ("CI_used", index), ("RCI_used", rating), ("MR", WheelModelComparison.OfMachine(Wheels.TwoAxles(row, rating / 1000))[model].MotionResistanceHigh!.Value.Newtons));
    }
}
