using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class ModelPullTests
{
    private static IWheelModel Model(string name) => name switch
    {
        "wismer-luth" => WismerLuthModel.Instance,
        "gee-clough" => GeeCloughModel.Instance,
        _ => BrixiusModel.Radial,
    };

    [Theory]
    [CheckRows("traction-scipy", "model-pull")]
    public void Pull_by_each_model_with_load_transfer(CheckRow row)
    {
        var machine = Tractors.SixteenTonnes(frontDriven: row.Word("drive") == "4wd");
        var tower = new TowingMachine(machine, Soil.FromConeIndex(Pressure.FromPascals(row.Si("CI")), Frac(1)), M(-3.9), M(row.Si("H"))) { Grade = Grade.FromRatio(Frac(row.Si("grade"))) };
        row.Matches(("P", ModelPull.Estimate(tower, Model(row.Word("model"))).AtSlip(Frac(row.Si("s")))!.Value.Newtons));
    }

    [Property(MaxTest = 30)]
    public Property Agrees_with_the_capability_where_the_model_is_its_own() => Prop.ForAll(Gen.Choose(35, 200).ToArbitrary(), Gen.Choose(-5, 15).ToArbitrary(), Gen.Choose(-10, 20).ToArbitrary(), (cone, grade, pitch) =>
    {
        var tower = Tractors.SixteenTonneTower(10 * cone) with { Grade = Grade.FromPercent(grade) };
        var own = PullCapability.Estimate(tower, Angle.FromDegrees(pitch));
        var same = ModelPull.Estimate(tower, BrixiusModel.Bias, Angle.FromDegrees(pitch));
        return Math.Abs(own.TractionLimit.Newtons - same.TractionLimit!.Value.Newtons) < 0.5 && own.LimitedBy == same.LimitedBy && Math.Abs(own.Sustained.High.Newtons - same.Sustained!.Value.High.Newtons) < 0.5;
    });

    [Fact]
    public void Slip_at_a_pull_is_the_inverse_and_out_of_reach_is_null()
    {
        foreach (var model in new IWheelModel[] { BrixiusModel.Bias, WismerLuthModel.Instance, GeeCloughModel.Instance })
        {
            var pull = ModelPull.Estimate(Tractors.SixteenTonneTower(), model);
            var at = pull.AtSlip(Frac(0.17))!.Value;
            Assert.Equal(0.17, pull.SlipAt(at)!.Value.DecimalFractions, 1e-5);
            Assert.Null(pull.SlipAt(KN(400)));
            var curve = pull.Curve(11, Frac(0.30));
            Assert.Equal(11, curve.Count);
            Assert.Equal(pull.TractionLimit!.Value.Newtons, curve[^1].Pull.Newtons, 1);
            Assert.True(curve[0].Pull.Newtons <= 0);
        }
    }

    [Fact]
    public void Soft_ground_has_its_best_slip_inside_the_limit()
    {
        var pull = ModelPull.Estimate(Tractors.SixteenTonneTower(165, 1), BrixiusModel.Radial);
        Assert.InRange(pull.Slip!.Value.DecimalFractions, 0.05, 0.2999);
        var best = pull.TractionLimit!.Value.Newtons;
        Assert.True(best >= pull.AtSlip(pull.Slip.Value + Frac(0.005))!.Value.Newtons);
        Assert.True(best >= pull.AtSlip(pull.Slip.Value - Frac(0.005))!.Value.Newtons);
    }

    [Fact]
    public void Models_side_by_side_with_their_flags()
    {
        var firm = ModelPullComparison.Of(Tractors.SixteenTonneTower());
        Assert.Equal(4, firm.Pulls.Count);
        Assert.InRange(firm.Spread!.Value, 1.05, 1.6);
        Assert.Contains("Gee-Clough", firm.ToString(), StringComparison.Ordinal);
        var soft = ModelPull.Estimate(Tractors.SixteenTonneTower(120, 1), GeeCloughModel.Instance);
        Assert.NotEmpty(soft.Flags);
        Assert.Empty(ModelPull.Estimate(Tractors.SixteenTonneTower(), GeeCloughModel.Instance).Flags);
        Assert.Equal(soft.Flags.Count, soft.Flags.Select(f => f.Limit).Distinct().Count());
    }

    [Fact]
    public void A_machine_that_cannot_move_itself_pulls_nothing_and_an_immobile_model_gives_no_number()
    {
        var mud = Tractors.SixteenTonneTower(60, 1);
        Assert.Equal(0, ModelPull.Estimate(mud, BrixiusModel.Bias).Central!.Value.Newtons);
        Assert.True(ModelPull.Estimate(mud, BrixiusModel.Bias).AtSlip(Frac(0.2))!.Value.Newtons < 0);
        var clay = ModelPull.Estimate(mud, WesClayModel.Instance);
        Assert.Null(clay.Central);
        Assert.Null(clay.Sustained);
        Assert.Null(clay.AtSlip(Frac(0.2)));
        Assert.Null(clay.SlipAt(KN(1)));
        Assert.Contains("no number", clay.ToString(), StringComparison.Ordinal);
        Assert.Null(ModelPullComparison.Of(mud, [WesClayModel.Instance]).Spread);
    }

    [Fact]
    public void Assist_duals_and_ballast()
    {
        var rearOnly = Tractors.SixteenTonneTower().WithDrive("front axle", false);
        double Of(TowingMachine t) => PullCapability.Estimate(t).TractionLimit.Newtons;
        Assert.True(Of(rearOnly.WithDrive("front axle", true)) > Of(rearOnly));
        Assert.True(Of(rearOnly.WithDuals("rear axle")) > Of(rearOnly));
        Assert.Equal(4, rearOnly.WithDuals("rear axle").Machine.Axles[1].Tyres);
        var ballast = rearOnly.WithBallast("front weights", Mass.FromTonnes(1), M(0.8), M(0.8));
        Assert.True(PullCapability.Estimate(ballast).NoseLimit > PullCapability.Estimate(rearOnly).NoseLimit);
        Assert.Throws<ArgumentException>(() => ballast.WithBallast("front weights", Mass.FromTonnes(1), M(0.8), M(0.8)));
        Assert.Throws<ArgumentException>(() => rearOnly.WithDuals("middle axle"));
    }

    [Fact]
    public void Drawbar_category_and_vertical_rating()
    {
        var tower = Tractors.SixteenTonneTower() with { EnginePower = Power.FromKilowatts(185), DrawbarCategory = DrawbarCategory.Category3, HitchVerticalRating = KN(20) };
        string[] Ids(TowingMachine t, double pitch = 0) => PullCapability.Estimate(t, Angle.FromDegrees(pitch)).Findings.Select(f => f.Id).ToArray();
        Assert.DoesNotContain("pull.drawbar-category", Ids(tower));
        Assert.Contains("pull.drawbar-category", Ids(tower with { EnginePower = Power.FromKilowatts(186) }));
        Assert.DoesNotContain("pull.drawbar-vertical", Ids(tower, 5));
        Assert.Contains("pull.drawbar-vertical", Ids(tower, 15));
        Assert.Equal(DrawbarCategory.Category4, DrawbarCategories.For(Power.FromKilowatts(250)));
        Assert.Null(DrawbarCategories.For(Power.FromKilowatts(501)));
        Assert.Equal(50, DrawbarCategories.Pin(DrawbarCategory.Category4)!.Value.Millimeters, 1e-9);
        Assert.Null(DrawbarCategories.Pin(DrawbarCategory.Category1));
    }
}
