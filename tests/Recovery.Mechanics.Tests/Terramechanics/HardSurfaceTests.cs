using System;
using System.Linq;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class HardSurfaceTests
{
    [Theory]
    [CheckRows("terramechanics", "hard-surface")]
    public void Ratios_match(CheckRow row)
    {
        // 30 kN on 0.65 m x 1.90 m: K = C_n W/(b d).
        var model = Model(row);
        var result = model.Evaluate(Wheels.Of(row.Si("Cn") * 30 / (0.65 * 1.9), 30), Wheels.Slip(row.Si("s")));
        Assert.Equal(row.Si("Cn"), result.Numeric, 10);
        row.Matches(("GTR", result.GrossTractionRatio!.Value), ("MRR", result.MotionResistanceRatio!.Value), ("NTR", result.NetTractionRatio!.Value), ("TE", result.TractiveEfficiency!.Value));
    }

    [Theory]
    [CheckRows("terramechanics", "hard-surface-towed")]
    public void Towed_wheel_matches(CheckRow row)
    {
        var wheel = Wheels.Of(400, row.Si("W") / 1000);
        row.Matches(("MR_bias", HardSurfaceModel.Bias.Evaluate(wheel, Wheels.Slip(0)).MotionResistance!.Value.Newtons), ("MR_radial", HardSurfaceModel.Radial.Evaluate(wheel, Wheels.Slip(0)).MotionResistance!.Value.Newtons));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "hard-surface")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var result = Model(row).Evaluate(Wheels.Of(row), Wheels.Slip(row.Si("s")));
        row.Matches(("MR", result.MotionResistance!.Value.Newtons), ("GT", result.GrossTraction!.Value.Newtons), ("NT", result.NetTraction!.Value.Newtons));
    }

    [Fact]
    public void A_known_friction_caps_net_traction_and_nothing_else()
    {
        var wheel = Wheels.Of(400, 30);
        var capped = HardSurfaceModel.Radial.CappedAt(Wheels.Slip(0.7)).Evaluate(wheel, Wheels.Slip(0.5));
        Assert.Equal(0.7, capped.NetTractionRatio!.Value, 12);
        Assert.Equal(0.71625, capped.GrossTractionRatio!.Value, 12);
        var free = HardSurfaceModel.Radial.Evaluate(wheel, Wheels.Slip(0.02));
        Assert.Equal(free.NetTractionRatio, HardSurfaceModel.Radial.CappedAt(Wheels.Slip(0.7)).Evaluate(wheel, Wheels.Slip(0.02)).NetTractionRatio);
    }

    [Theory]
    [InlineData(0.04)]
    [InlineData(1.03)]
    public void Refuses_a_friction_outside_its_range(double friction) =>
        Assert.Equal("friction", Assert.Throws<ArgumentOutOfRangeException>(() => HardSurfaceModel.Bias.CappedAt(Wheels.Slip(friction))).ParamName);

    [Theory]
    [InlineData(9.99, true)]
    [InlineData(10.01, false)]
    [InlineData(17.99, false)]
    [InlineData(18.01, true)]
    public void Flags_a_numeric_outside_what_concrete_showed(double numeric, bool flagged) =>
        Assert.Equal(flagged, HardSurfaceModel.Bias.Evaluate(Wheels.Of(numeric * 30 / (0.65 * 1.9), 30), Wheels.Slip(0.1)).Flags.Any());

    private static HardSurfaceModel Model(CheckRow row) => row.Word("constants") == "radial" ? HardSurfaceModel.Radial : HardSurfaceModel.Bias;
}
