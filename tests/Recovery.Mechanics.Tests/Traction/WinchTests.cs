using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class WinchTests
{
    [Fact]
    public void A_drum_no_wider_than_its_rope_is_refused_and_whole_turns_are_whole()
    {
        // 0.57 m over 0.01 m is 57 turns, though the quotient of the doubles lies under it: 57 pi (0.2 + 0.01) m on the first layer.
        var full = 57 * Math.PI * 0.21;
        var winch = new Winch("w", KN(50), M(0.2), M(0.01)) { DrumWidth = M(0.57), RopeLength = M(full - 0.01) };
        Assert.Equal(1, winch.LayerWith(Length.Zero));
        Assert.Contains("DrumWidth", Assert.Throws<ArgumentOutOfRangeException>(() => new Winch("w", KN(50), M(0.3), M(0.08)) { DrumWidth = M(0.06) }).Message, StringComparison.Ordinal);
    }

    private static Winch Farm => new("forest winch", KN(100), M(0.22), M(0.014)) { DrumWidth = M(0.30), RopeLength = M(60) };

    [Theory]
    [CheckRows("traction", "winch-layers")]
    public void Published_line_pull_of_five_layers(CheckRow row) =>
        row.Matches(Enumerable.Range(2, 4).Select(n => ("P" + n, WinchKernel.PullOnLayer(row.Si("P1"), row.Si("k"), n))).ToArray());

    [Theory]
    [CheckRows("traction", "winch-share")]
    public void Fifth_layer_has_seven_tenths(CheckRow row)
    {
        row.Matches(("share", row.Si("P5") / row.Si("P1")));
        Assert.Equal(row.Si("P5") / row.Si("P1"), WinchKernel.PullOnLayer(1, 0.1005, 5), 1e-3);
    }

    [Theory]
    [CheckRows("traction", "winch-constant")]
    public void Layer_constant_from_rope_and_drum(CheckRow row) => row.Matches(("k", WinchKernel.LayerConstant(row.Si("d_rope"), row.Si("D_drum"))));

    [Theory]
    [CheckRows("traction", "fleet-lead")]
    public void Lead_for_a_fleet_angle(CheckRow row) => row.Matches(("lead", WinchKernel.Lead(1, row.Si("fleet_angle"))));

    [Theory]
    [CheckRows("traction-scipy", "winch")]
    public void Layers_wound_turn_by_turn(CheckRow row)
    {
        var winch = new Winch("winch", Force.FromNewtons(row.Si("P1")), M(row.Si("D")), M(row.Si("d"))) { DrumWidth = M(row.Si("w")), RopeLength = M(row.Si("rope")) };
        var layer = winch.LayerWith(M(0))!.Value;
        row.Matches(("P2", winch.StallOnLayer(2).Newtons), ("P5", winch.StallOnLayer(5).Newtons), ("P8", winch.StallOnLayer(8).Newtons), ("layer", layer), ("on_layer", winch.StallOnLayer(layer).Newtons));
    }

    [Theory]
    [CheckRows("traction-scipy", "fleet-angle")]
    public void Least_lead_of_a_drum(CheckRow row)
    {
        var winch = new Winch("winch", KN(50), M(0.2), M(0.012)) { DrumWidth = M(row.Si("w")), Grooved = row.Word("grooved") == "yes" };
        row.Matches(("lead", winch.LeastLead!.Value.Meters));
        Assert.Equal(winch.GreatestFleetAngle.Degrees, winch.FleetAngle(winch.LeastLead.Value)!.Value.Degrees, 1e-9);
    }

    [Theory]
    [CheckRows("traction", "capstan")]
    [CheckRows("traction-scipy", "capstan")]
    public void Friction_of_a_wrap(CheckRow row) => row.Matches(("ratio", CapstanModel.Instance.TensionRatio(Frac(row.Si("mu")), Angle.FromRadians(row.Si("wrap")))));

    [Fact]
    public void Capstan_layers_agree_and_flags_its_friction()
    {
        var model = CapstanModel.Instance;
        Assert.Equal("2.566", model.Explain(Frac(0.1), Angle.FromDegrees(540)).Steps[^1].Value);
        Assert.Equal(540, model.WrapThatHolds(model.Held(KN(1), Frac(0.1), Angle.FromDegrees(540)), KN(1), Frac(0.1)).Degrees, 1e-9);
        Assert.Equal(1, model.TensionRatio(Frac(0.3), Angle.Zero));
        Assert.True(model.FrictionThatHolds < model.FrictionThatLoads);
        Assert.True(model.Validity.Limits[0].Contains(0.1));
        Assert.False(model.Validity.Limits[0].Contains(0.05));
        Assert.Contains("friction", Assert.Throws<ArgumentOutOfRangeException>(() => model.TensionRatio(Frac(1.1), Angle.Zero)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Raises_fleet_angle_piling_and_too_few_wraps_and_none()
    {
        string[] Ids(double lead, double paidOut) => Farm.Check(M(lead), M(paidOut)).Select(f => f.Id).ToArray();
        var least = Farm.LeastLead!.Value.Meters;
        Assert.Equal(["winch.fleet-angle"], Ids(least - 0.01, 10));
        Assert.Empty(Ids(least + 0.01, 10));
        Assert.Equal(["winch.fleet-angle-small"], Ids(40, 10));
        var usable = Farm.UsableRope!.Value.Meters;
        Assert.Equal(60 - (5 * Math.PI * 0.234), usable, 1e-9);
        Assert.Empty(Ids(10, usable - 0.01));
        Assert.Equal(["winch.few-wraps"], Ids(10, usable + 0.01));
        Assert.Equal(Severity.Stop, Farm.Check(M(10), M(59)).Single().Severity);
    }

    [Fact]
    public void Layer_steps_up_where_a_layer_is_full()
    {
        var onePerLayer = WinchKernel.Held(0.014, 0.22, 0.30, 1);
        Assert.Equal(1, WinchKernel.Layer(0.014, 0.22, 0.30, onePerLayer - 1e-9));
        Assert.Equal(2, WinchKernel.Layer(0.014, 0.22, 0.30, onePerLayer + 1e-9));
        Assert.Equal(1, WinchKernel.Layer(0.014, 0.22, 0.30, 0));
        Assert.Equal(1, Farm.LayerWith(M(60)));
    }

    [Fact]
    public void What_is_not_known_is_not_made_up()
    {
        var bare = new Winch("winch", KN(80), M(0.2), M(0.012));
        Assert.Null(bare.LayerWith(M(0)));
        Assert.Null(bare.LeastLead);
        Assert.Null(bare.UsableRope);
        Assert.Null(bare.FleetAngle(M(5)));
        Assert.Empty(bare.Check(M(1), M(900)));
        Assert.Equal(80, bare.EffortOnLayer(1).Kilonewtons, 1e-9);
        Assert.Equal(60, (bare with { RatedPull = KN(60) }).EffortOnLayer(1).Kilonewtons, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => bare with { RatedPull = KN(81) });
        Assert.Contains("layer", Assert.Throws<ArgumentOutOfRangeException>(() => bare.StallOnLayer(0)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Explains_with_the_value_it_gives()
    {
        Assert.Equal("67.63 kN", Farm.Explain(5).Steps[^1].Value);
        Assert.Equal(67.63, Farm.StallOnLayer(5).Kilonewtons, 0.005);
        Assert.Equal("forest winch, stalls at 100 kN on the first layer", Farm.ToString());
    }

    [Property]
    public Property A_mark_on_any_layer_gives_the_same_winch() => Prop.ForAll(Gen.Choose(1, 12).ToArbitrary(), Gen.Choose(5, 40).ToArbitrary(), (layer, millimetres) =>
    {
        var winch = Winch.FromPullOnLayer("winch", KN(70), layer, M(0.2), M(millimetres / 1000.0));
        return Math.Abs(winch.StallOnLayer(layer).Kilonewtons - 70) < 1e-9 && winch.StallPull.Kilonewtons >= 70 - 1e-9 && winch.StallOnLayer(layer + 1) < winch.StallOnLayer(layer);
    });

    [Property]
    public Property More_rope_out_never_pulls_less() => Prop.ForAll(Gen.Choose(0, 59).ToArbitrary(), metres =>
        Farm.EffortOnLayer(Farm.LayerWith(M(metres + 1))!.Value) >= Farm.EffortOnLayer(Farm.LayerWith(M(metres))!.Value));
}
