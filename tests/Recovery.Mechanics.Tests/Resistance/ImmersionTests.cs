using System;
using System.Linq;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>A wheel as a short pipe: geometry, bearing, sideways breakout, residual and movement.</summary>
public class ImmersionTests
{
    private static readonly SpecificWeight Gamma = SpecificWeight.FromKilonewtonsPerCubicMeter(17);

    [Theory]
    [CheckRows("resistance", "penetrated-area")]
    public void Penetrated_area_matches(CheckRow row) => row.Matches(("A_bm", ImmersionKernel.PenetratedArea(row.Si("D"), row.Si("z"))));

    [Theory]
    [CheckRows("resistance", "immersed-bearing")]
    public void Bearing_matches(CheckRow row)
    {
        var wheel = ImmersedWheelModel.Instance.Evaluate(M(row.Si("b")), M(row.Si("D")), M(row.Si("z")), Pressure.FromPascals(row.Si("s_u")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma_eff")));
        row.Matches(("Q_v", wheel.BearingPerMetre.NewtonsPerMeter), ("Q", wheel.Bearing.Newtons));
    }

    [Theory]
    [CheckRows("resistance", "lateral-breakout")]
    public void Lateral_breakout_matches(CheckRow row)
    {
        var laboratory = row.Has("c1");
        var model = laboratory ? LateralBreakoutModel.Laboratory : LateralBreakoutModel.Standard;
        if (laboratory) Assert.Equal((LateralKernel.DepthLaboratory, LateralKernel.LoadLaboratory, LateralKernel.WeightLaboratory), (row.Si("c1"), row.Si("c2"), row.Si("c3")));
        var r = model.Evaluate(M(row.Si("b")), M(row.Si("D")), M(row.Si("z")), Force.FromNewtons(row.Si("V") * row.Si("b")), Pressure.FromPascals(row.Si("s_u")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")));
        row.MatchesOne("P", r.Breakout.Newtons);
        if (row.ExpectedNames.Contains("P_no_V")) row.MatchesOne("P_no_V", r.RollingBreakout.Newtons);
        if (row.ExpectedNames.Contains("F")) row.MatchesOne("F", r.Breakout.Newtons / row.Si("b"));
    }

    [Theory]
    [CheckRows("resistance", "lateral-residual")]
    public void Lateral_residual_matches(CheckRow row)
    {
        double b = row.Si("b"), d = row.Si("D"), s = row.Si("s_u");
        var r = LateralBreakoutModel.Standard.Evaluate(M(b), M(d), M(row.Si("z")), Force.FromNewtons(row.Si("V") * b), Pressure.FromPascals(s), Gamma);
        row.MatchesOne("V_limit", LateralKernel.ResidualLimit * s * d);
        Assert.Equal(row.ExpectedText("valid") == "true", r.Residual.HasValue);
        Assert.Equal(!r.Residual.HasValue, r.Flags.Any(f => f.Limit.Symbol == "V/(s_u d)"));
        if (!row.ExpectedNames.Contains("P_res")) return;
        row.MatchesOne("coefficient", LateralKernel.ResidualRatio(d, row.Si("z")));
        row.MatchesOne("F_res", r.Residual!.Value.Newtons / b);
        row.MatchesOne("P_res", r.Residual!.Value.Newtons);
    }

    [Theory]
    [CheckRows("resistance", "lateral-movement")]
    public void Movement_matches(CheckRow row)
    {
        var r = LateralBreakoutModel.Standard.Evaluate(M(0.6), M(row.Si("D")), M(row.Si("z")), KN(10), KPa(10), Gamma);
        row.Matches(("breakout_low", r.BreakoutMovementLow.Meters), ("breakout_best", r.BreakoutMovement.Meters), ("breakout_high", r.BreakoutMovementHigh.Meters), ("residual_low", r.ResidualMovementLow.Meters), ("residual_best", r.ResidualMovement.Meters), ("residual_high", r.ResidualMovementHigh.Meters));
    }

    [Theory]
    [CheckRows("resistance", "spoil")]
    public void Spoil_matches(CheckRow row) => row.Matches(("V", RutExitModel.Instance.Spoil(M(row.Si("b")), M(row.Si("z")), Angle.FromRadians(Math.Atan(1 / row.Si("n")))).CubicMeters));

    [Fact]
    public void Geometry_is_continuous_at_the_hub()
    {
        const double d = 2, e = 1e-9;
        Assert.Equal(d, BuriedWheelKernel.ContactLength(d, 1), 1e-12);
        Assert.Equal(d, BuriedWheelKernel.ContactLength(d, 1 - e), 1e-8);
        Assert.Equal(d, BuriedWheelKernel.ContactLength(d, 1 + e), 1e-12);
        Assert.Equal(Math.PI / 2, ImmersionKernel.PenetratedArea(d, 1), 1e-12);
        Assert.Equal(ImmersionKernel.PenetratedArea(d, 1), ImmersionKernel.PenetratedArea(d, 1 - e), 1e-8);
        Assert.Equal(ImmersionKernel.PenetratedArea(d, 1), ImmersionKernel.PenetratedArea(d, 1 + e), 1e-8);
        Assert.True(double.IsPositiveInfinity(BuriedWheelKernel.RigidStepRatio(d, 1)));
        Assert.True(double.IsPositiveInfinity(BuriedWheelKernel.RigidStepRatio(d, 1 + e)));
        Assert.InRange(BuriedWheelKernel.RigidStepRatio(d, 1 - e), 1e8, double.MaxValue);
        Assert.Equal(Math.PI, BuriedWheelKernel.SegmentArea(d, 2), 1e-12);
        Assert.Equal(0, BuriedWheelKernel.SegmentArea(d, 0), 1e-12);
    }

    [Fact]
    public void Bearing_factor_changes_over_without_a_jump()
    {
        // 6 x^0.25 = 3.4 (10 x)^0.5 at x = (6/(3.4 sqrt 10))^4.
        var x = Math.Pow(6 / (3.4 * Math.Sqrt(10)), 4);
        Assert.Equal(0.09699, x, 0.00001);
        double below = ImmersionKernel.BearingFactor(1, x - 1e-9), at = ImmersionKernel.BearingFactor(1, x), above = ImmersionKernel.BearingFactor(1, x + 1e-9);
        Assert.Equal(at, below, 1e-7);
        Assert.Equal(at, above, 1e-7);
        Assert.Equal(3.4 * Math.Sqrt(10 * 0.05), ImmersionKernel.BearingFactor(1, 0.05), 1e-12);
        Assert.Equal(6 * Math.Pow(0.5, 0.25), ImmersionKernel.BearingFactor(1, 0.5), 1e-12);
    }

    [Theory]
    [InlineData(39.999, true)]
    [InlineData(40, true)]
    [InlineData(40.001, false)]
    public void Residual_ends_at_twice_strength_times_diameter(double loadPerMetre, bool valid) =>
        Assert.Equal(valid, LateralBreakoutModel.Standard.Evaluate(M(0.5), M(2), M(0.5), KN(loadPerMetre / 2), KPa(10), Gamma).Residual.HasValue);

    [Fact]
    public void Strength_that_bears_gives_the_load_back()
    {
        var model = ImmersedWheelModel.Instance;
        var strength = model.StrengthThatBears(M(0.6), M(2), M(0.5), KN(37.5), Gamma)!.Value;
        Assert.Equal(37.5, model.Evaluate(M(0.6), M(2), M(0.5), strength, Gamma).Bearing.Kilonewtons, 1e-9);
        Assert.Null(model.StrengthThatBears(M(0.6), M(2), M(1.5), KN(5), Gamma));
    }

    [Fact]
    public void Workings_end_in_the_result_and_flags_name_the_limit()
    {
        var model = ImmersedWheelModel.Instance;
        Assert.Equal(Text.Kilonewtons(model.Evaluate(M(0.7), M(1.8), M(0.4), KPa(6), Gamma).Bearing.Newtons), model.Explain(M(0.7), M(1.8), M(0.4), KPa(6), Gamma).Steps[^1].Value);
        Assert.Equal(["b/d"], model.Evaluate(M(0.7), M(1.8), M(0.4), KPa(6), Gamma).Flags.Select(f => f.Limit.Symbol));
        Assert.Empty(model.Evaluate(M(1.5), M(1.5), M(0.4), KPa(6), Gamma).Flags);
        var lateral = LateralBreakoutModel.Standard;
        Assert.Equal("17.39 kN", lateral.Explain(M(0.6), M(2), M(0.5), KN(37.5), KPa(10), Gamma).Steps[^1].Value);
        Assert.Equal(["z/d", "V/(s_u d)"], lateral.Evaluate(M(0.6), M(2), M(1.2), KN(37.5), KPa(10), Gamma).Flags.Select(f => f.Limit.Symbol));
        Assert.Empty(lateral.Evaluate(M(0.6), M(2), M(1), KN(10), KPa(10), Gamma).Flags);
        Assert.Equal("breakout 6.28 kN rolling, 9.18 kN under its load, after about 0.14 m, then 7.84 kN", lateral.Evaluate(M(0.7), M(1.8), M(0.4), KN(14), KPa(6), Gamma).ToString());
    }

    [Property]
    public bool The_penetrated_section_grows_with_depth_and_holds_the_segment(byte depth)
    {
        double z = depth / 128.0, next = z + 0.01;
        return ImmersionKernel.PenetratedArea(2, next) > ImmersionKernel.PenetratedArea(2, z) && ImmersionKernel.PenetratedArea(2, z) >= BuriedWheelKernel.SegmentArea(2, z) - 1e-12;
    }
}
