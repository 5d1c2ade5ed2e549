using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Machines;

/// <summary>Axle loads in all their states, and the wheels left and right of them.</summary>
public class WheelLoadTests
{
    private static readonly Tyre Rubber = Tyre(0.8, 2.05, 0.55, 0.2);

    [Theory]
    [CheckRows("machines", "axle-loads")]
    public void Axle_loads(CheckRow row)
    {
        var machine = Harvester(row.Word("suspension") == "straight" ? Suspension.StraightFrame : Suspension.Equalised);
        machine = row.Word("state") switch
        {
            "empty" => machine.Without("beet"),
            "front-off" => machine.Without("front"),
            _ => machine,
        };
        var loads = machine.AxleLoads(Grade.FromPercent(row.Printed("grade")), PullDirection.Rearwards);
        row.Matches(("W", machine.Weight.Newtons), ("x_c", machine.CentreOfMassPosition.Meters), ("z_c", machine.CentreOfMassHeight.Meters), ("N1", loads.Newtons[0]), ("N2", loads.Newtons[1]), ("N3", loads.Newtons[2]));
    }

    [Theory]
    [CheckRows("machines", "axle-loads-under-pull")]
    public void Axle_loads_under_a_pull(CheckRow row)
    {
        var loads = Harvester().AxleLoadsUnderPull(Grade.FromPercent(row.Printed("grade")), PullDirection.Rearwards, Force.FromNewtons(row.Si("F")), Force.FromNewtons(row.Si("F_z")), M(row.Si("x_a")), M(row.Si("z_a")));
        row.Matches(("N1", loads.Newtons[0]), ("N2", loads.Newtons[1]), ("N3", loads.Newtons[2]));
    }

    [Theory]
    [CheckRows("machines", "two-axles")]
    public void Two_axles(CheckRow row)
    {
        var loads = TwoAxles(row.Si("m1"), row.Si("x"), row.Si("z"), row.Si("L"), 2, 2).AxleLoads(Grade.FromPercent(row.Printed("grade")), PullDirection.Forwards);
        row.Matches(("N1", loads.Newtons[0]), ("N2", loads.Newtons[1]));
    }

    [Theory]
    [CheckRows("machines", "straight-frame")]
    public void Straight_frame(CheckRow row)
    {
        var loads = new double[3];
        AxleStaticsKernel.Share(row.SiList("x"), row.SiList("k"), equalised: false, row.Si("N"), row.Si("M"), loads);
        row.Matches(("N1", loads[0]), ("N2", loads[1]), ("N3", loads[2]));
    }

    [Fact]
    public void A_stiffer_axle_of_a_straight_frame_takes_more()
    {
        var machine = Harvester(Suspension.StraightFrame);
        var stiff = machine.WithAxles(machine.Axles.Select((a, i) => i == 0 ? a.WithRelativeStiffness(2) : a));
        // Full, level, front axle twice as stiff: 252.8, 128.2, 128.9 kN.
        var loads = stiff.AxleLoads(Grade.Level, PullDirection.Rearwards).Newtons;
        Assert.Equal(252.8, loads[0] / 1000, 0.0501);
        Assert.Equal(128.2, loads[1] / 1000, 0.0501);
        Assert.Equal(128.9, loads[2] / 1000, 0.0501);
        Assert.Equal(machine.AxleLoads(Grade.Level, PullDirection.Rearwards, Suspension.Equalised).Newtons, stiff.AxleLoads(Grade.Level, PullDirection.Rearwards, Suspension.Equalised).Newtons);
        Assert.Contains("relativeStiffness must be from 0.1 to 10", Assert.Throws<ArgumentOutOfRangeException>(() => machine.Axles[0].WithRelativeStiffness(0)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("machines", "weighing")]
    public void Centre_of_mass_from_axle_loads(CheckRow row)
    {
        Axle[] axles = [new("front", M(0), 2, Rubber, true, M(2)), new("rear", M(-row.Si("L")), 2, Rubber, true, M(2))];
        var load = Weighing.FromAxleLoads("all", axles, [Force.FromNewtons(row.Si("Wf")), Force.FromNewtons(row.Si("W") - row.Si("Wf"))], M(1));
        row.Matches(("x_cg", load.Position.Meters + row.Si("L")));
        Assert.Equal(row.Si("W") / 9.80665, load.Mass.Kilograms, 1e-9);
    }

    [Property]
    public Property Weighing_gives_the_machine_back() => Prop.ForAll(Gen.Elements(Suspension.Equalised, Suspension.StraightFrame).ToArbitrary(), frame =>
    {
        var machine = Harvester(frame);
        var loads = machine.AxleLoads(Grade.Level, PullDirection.Forwards);
        var all = Weighing.FromAxleLoads("all", machine.Axles, [loads.Of(0), loads.Of(1), loads.Of(2)], machine.CentreOfMassHeight);
        return Math.Abs(all.Mass.Kilograms - 52000) < 1e-6 && Math.Abs(all.Position.Meters - machine.CentreOfMassPosition.Meters) < 1e-12;
    });

    [Theory]
    [CheckRows("machines", "side-share")]
    public void Shares_left_and_right(CheckRow row)
    {
        var machine = TwoAxles(16000, -1.5, row.Si("h"), 3, row.Si("B"), row.Si("B"));
        var wheels = machine.WheelLoads(Grade.Level, Grade.FromAngle(Angle.FromRadians(row.Si("a"))), PullDirection.Forwards);
        (string, double)[] shares = [("R_left/W", wheels.LeftNewtons.Sum() / machine.Weight.Newtons), ("R_right/W", wheels.RightNewtons.Sum() / machine.Weight.Newtons)];
        row.Matches([.. shares.Where(s => row.ExpectedNames.Contains(s.Item1))]);
    }

    [Theory]
    [CheckRows("ground-machines-scipy", "wheel-loads")]
    public void Wheels_of_a_stiff_machine(CheckRow row)
    {
        var b = row.SiList("B");
        var harvester = Harvester(Suspension.StraightFrame);
        var machine = new Machine("m", harvester.Axles.Select((a, i) => new Axle(a.Name, a.Position, 2, a.Tyre, true, M(b[i]))), harvester.Loads.Select(l => l.Name == "beet" ? l.WithLeftOfMiddle(M(row.Si("left"))) : l), Suspension.StraightFrame);
        var wheels = machine.WheelLoads(Grade.FromPercent(row.Printed("grade")), Grade.FromPercent(row.Printed("side")), row.Si("p") > 0 ? PullDirection.Forwards : PullDirection.Rearwards);
        row.Matches(("L1", wheels.LeftNewtons[0]), ("R1", wheels.RightNewtons[0]), ("L2", wheels.LeftNewtons[1]), ("R2", wheels.RightNewtons[1]), ("L3", wheels.LeftNewtons[2]), ("R3", wheels.RightNewtons[2]));
        Assert.Empty(wheels.Findings);
        Assert.Equal("assume.axle-pin", Assert.Single(wheels.Assumptions).Id);
    }

    [Theory]
    [CheckRows("ground-machines-scipy", "pinned-axle")]
    public void A_rear_axle_on_a_pin(CheckRow row)
    {
        var machine = TwoAxles(row.Si("m"), row.Si("x"), row.Si("z"), row.Si("L"), row.Si("B_f"), row.Si("B_r"));
        var pinned = machine.WithAxles([machine.Axles[0], machine.Axles[1].WithPinHeight(M(row.Si("h_p")))]);
        var side = Grade.FromPercent(row.Printed("side"));
        var wheels = pinned.WheelLoads(Grade.Level, side, PullDirection.Forwards);
        row.Matches(("L1", wheels.Left(0).Newtons), ("R1", wheels.Right(0).Newtons), ("L2", wheels.Left(1).Newtons), ("R2", wheels.Right(1).Newtons));
        Assert.Empty(wheels.Assumptions);
        Assert.Contains("on a pin", pinned.ExplainWheelLoads(Grade.Level, side, PullDirection.Forwards).Steps[^1].Meaning, StringComparison.Ordinal);
        // Taken as rigid, the front axle holds less of the machine.
        var rigid = machine.WheelLoads(Grade.Level, side, PullDirection.Forwards);
        Assert.True(Math.Abs(wheels.LeftNewtons[0] - wheels.RightNewtons[0]) > Math.Abs(rigid.LeftNewtons[0] - rigid.RightNewtons[0]));
    }

    [Property]
    public Property Wheels_sum_to_axles_and_mirror_each_other() => Prop.ForAll((from grade in Gen.Choose(-15, 15) from side in Gen.Choose(0, 25) from frame in Gen.Elements(Suspension.Equalised, Suspension.StraightFrame) select (grade, side, frame)).ToArbitrary(), x =>
    {
        Grade along = Grade.FromPercent(x.grade), across = Grade.FromPercent(x.side);
        var machine = Harvester(x.frame);
        WheelLoads up = machine.WheelLoads(along, across, PullDirection.Rearwards), down = machine.WheelLoads(along, across.Reversed(), PullDirection.Rearwards);
        var normal = machine.Weight.Newtons / Math.Sqrt(1 + (x.grade * x.grade * 1e-4) + (x.side * x.side * 1e-4));
        return Enumerable.Range(0, 3).All(i => Math.Abs(up.LeftNewtons[i] + up.RightNewtons[i] - up.AxleLoads.Newtons[i]) < 1e-6 && Math.Abs(up.LeftNewtons[i] - down.RightNewtons[i]) < 1e-6 && up.LeftNewtons[i] >= 0 && up.LeftNewtons[i] <= up.RightNewtons[i] + 1e-6)
            && Math.Abs(up.AxleLoads.Total.Newtons - normal) < 1e-6;
    });

    [Fact]
    public void Without_a_side_slope_wheels_are_the_axle_loads_halved()
    {
        var wheels = Harvester().WheelLoads(Grade.FromPercent(2), Grade.Level, PullDirection.Rearwards);
        var loads = Harvester().AxleLoads(Grade.FromPercent(2), PullDirection.Rearwards);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(loads.Newtons[i] / 2, wheels.LeftNewtons[i], 1e-6);
            Assert.Equal(loads.Newtons[i] / 2, wheels.RightNewtons[i], 1e-6);
        }

        Assert.Empty(wheels.Assumptions);
        Assert.Equal(0, wheels.TippingRatio);
    }

    [Fact]
    public void A_wheel_that_lifts_is_a_finding_and_its_moment_goes_on()
    {
        // Nearly all of 20 t stands on the front; the light rear axle of the same track takes half the side moment until its upper wheel lifts.
        var machine = TwoAxles(20000, -0.3, 1.6, 3.6, 2.6, 2.6);
        var wheels = machine.WheelLoads(Grade.Level, Grade.FromPercent(15), PullDirection.Forwards);
        Assert.Equal(0, wheels.LeftNewtons[1], 1e-6);
        Assert.Equal("machine.wheel-lifts", Assert.Single(wheels.Findings).Id);
        Assert.Contains("rear axle", wheels.Findings[0].Message, StringComparison.Ordinal);
        var k = wheels.RightNewtons.Sum() - wheels.LeftNewtons.Sum();
        // Nothing of the moment is lost: K = N z tan(a), so right - left = 2 K/B.
        Assert.Equal(2 * 1.6 * 0.15 / 2.6 * 20000 * 9.80665 / Math.Sqrt(1.0225), k, 1e-3);
    }

    [Theory]
    // B/(2 z) = 2.6/(2 x 2) = 0.65: the machine tips where the slope is steeper than that.
    [InlineData(64.9, false)]
    [InlineData(65.1, true)]
    [InlineData(-64.9, false)]
    [InlineData(-65.1, true)]
    public void A_machine_tips_where_the_slope_outruns_its_track(double percent, bool tips)
    {
        var wheels = TwoAxles(16000, -1.5, 2, 3, 2.6, 2.6).WheelLoads(Grade.Level, Grade.FromPercent(percent), PullDirection.Forwards);
        Assert.Equal(tips, wheels.Findings.Any(f => f.Id == "machine.tips" && f.Severity == Severity.Stop));
        Assert.Equal(tips, wheels.TippingRatio > 1);
        Assert.Equal(Math.Abs(percent) / 65, wheels.TippingRatio, 1e-9);
        Assert.All(wheels.LeftNewtons.Concat(wheels.RightNewtons), w => Assert.True(w >= -1e-6));
    }

    /// <summary>Half of N on each axle, tan(a) 0.5: K = 1.2 x 0.5 N = 0.6 N; the pin at 2 m would take 0.5 N, but its axle of 1 m track tips at 0.25 N. 0.35 N is left to a front axle that holds 0.25 N.</summary>
    [Fact]
    public void A_pinned_axle_takes_no_more_than_its_track_holds()
    {
        var machine = TwoAxles(16000, -1.5, 1.2, 3, 1, 1);
        var wheels = machine.WithAxles([machine.Axles[0], machine.Axles[1].WithPinHeight(M(2))]).WheelLoads(Grade.Level, Grade.FromPercent(50), PullDirection.Forwards);
        Assert.Equal(1.4, wheels.TippingRatio, 1e-9);
        Assert.Equal("machine.tips", Assert.Single(wheels.Findings).Id);
        Assert.Equal(0, wheels.LeftNewtons[1], 1e-6);
    }

    /// <summary>A load off the middle tilts the machine on level ground too: how the axles hold it upright is then taken as well.</summary>
    [Fact]
    public void A_load_off_the_middle_asks_how_the_axles_hold_it()
    {
        var machine = TwoAxles(16000, -1.5, 1.2, 3, 2.6, 2.6);
        var leaning = new Machine("m", machine.Axles, [machine.Loads[0].WithLeftOfMiddle(M(0.1))]);
        Assert.Equal("assume.axle-pin", Assert.Single(leaning.WheelLoads(Grade.Level, Grade.Level, PullDirection.Forwards).Assumptions).Id);
        Assert.Empty(machine.WheelLoads(Grade.Level, Grade.Level, PullDirection.Forwards).Assumptions);
    }

    [Fact]
    public void Refuses_with_words()
    {
        var machine = TwoAxles(16000, -1.5, 2, 3, 2.6, 2.6);
        var hung = machine.WithAxles(machine.Axles.Select(a => a.WithPinHeight(M(0.5))));
        Assert.Contains("Every axle of m hangs on a pin", Assert.Throws<ArgumentException>(() => hung.WheelLoads(Grade.Level, Grade.FromPercent(5), PullDirection.Forwards)).Message, StringComparison.Ordinal);
        Assert.Contains("leftOfMiddle must be from -3 to 3 m", Assert.Throws<ArgumentOutOfRangeException>(() => machine.Loads[0].WithLeftOfMiddle(M(4))).Message, StringComparison.Ordinal);
        Assert.Contains("one load for each of the 2 axles", Assert.Throws<ArgumentException>(() => Weighing.FromAxleLoads("x", machine.Axles, [KN(10)], M(1))).Message, StringComparison.Ordinal);
    }

    private static Machine TwoAxles(double kilograms, double x, double z, double wheelbase, double trackFront, double trackRear) => new(
        "m",
        [new Axle("front axle", M(0), 2, Rubber, true, M(trackFront)), new Axle("rear axle", M(-wheelbase), 2, Rubber, true, M(trackRear))],
        [new NamedLoad("body", Mass.FromKilograms(kilograms), M(x), M(z))]);
}
