using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Machines;

public class MachineTests
{
    private static readonly Grade Up2 = Grade.FromPercent(2);

    [Theory]
    [CheckRows("machines", "saarilahti")]
    public void Deflection_matches(CheckRow row)
    {
        var tyre = new Tyre(M(0.9), M(2.05), M(0.55), Pressure.FromPascals(row.Si("p")));
        row.Matches(("delta", tyre.Deflection(Force.FromNewtons(row.Si("W"))).Meters));
        Assert.EndsWith(" m", tyre.Explain(Force.FromNewtons(row.Si("W"))).Steps[0].Value, StringComparison.Ordinal);
    }

    [Theory]
    // Worked examples of the statics, kN: rear pair linked, then a straight frame.
    [InlineData("full", Suspension.Equalised, 256.2, 126.8, 126.8)]
    [InlineData("full", Suspension.StraightFrame, 249.9, 149.5, 110.5)]
    [InlineData("tank empty", Suspension.Equalised, 182.4, 55.9, 55.9)]
    [InlineData("tank empty", Suspension.StraightFrame, 176.2, 78.0, 39.9)]
    [InlineData("front off", Suspension.Equalised, 215.6, 132.4, 132.4)]
    [InlineData("front off", Suspension.StraightFrame, 211.6, 147.0, 121.9)]
    [InlineData("level", Suspension.Equalised, 252.7, 128.6, 128.6)]
    [InlineData("level", Suspension.StraightFrame, 246.6, 150.3, 113.0)]
    public void Axle_loads_match_the_worked_examples(string state, Suspension suspension, double front, double middle, double rear)
    {
        var machine = Harvester(suspension);
        if (state == "tank empty") machine = machine.Without("beet");
        if (state == "front off") machine = machine.Without("front");
        var loads = machine.AxleLoads(state == "level" ? Grade.Level : Up2, PullDirection.Rearwards);
        Assert.Equal(front, loads.Newtons[0] / 1000, 0.0501);
        Assert.Equal(middle, loads.Newtons[1] / 1000, 0.0501);
        Assert.Equal(rear, loads.Newtons[2] / 1000, 0.0501);
    }

    [Fact]
    public void A_line_at_the_front_axle_moves_load_as_worked()
    {
        var loads = Harvester().AxleLoadsUnderPull(Up2, PullDirection.Rearwards, KN(120), KN(-8), M(0), M(0.5));
        Assert.Equal(253.9, loads.Newtons[0] / 1000, 0.0501);
        Assert.Equal(132.0, loads.Newtons[2] / 1000, 0.0501);
    }

    [Fact]
    public void An_axle_that_would_lift_carries_nothing_and_the_others_carry_all()
    {
        Span<double> loads = stackalloc double[3];
        AxleStaticsKernel.Share(new AxlePlaces([0, -4.9, -6.8], [1, 1, 1]), equalised: false, 300e3, -270e3, loads);
        Assert.Equal(244.9, loads[0] / 1000, 0.0501);
        Assert.Equal(55.1, loads[1] / 1000, 0.0501);
        Assert.Equal(0, loads[2]);
    }

    [Fact]
    public void Taking_the_front_off_relieves_the_front_axle_by_more_than_its_mass()
    {
        // 3 t, 2 m ahead, wheelbase 3.6 m: front +4.67 t, rear -1.67 t.
        var tyre = Tyre(0.8, 2.05, 0.55, 0.2);
        var machine = new Machine("m", [new Axle("front", M(0), 2, tyre, true, M(2)), new Axle("rear", M(-3.6), 2, tyre, true, M(2))], [new NamedLoad("body", Mass.FromTonnes(20), M(-1.8), M(1)), new NamedLoad("header", Mass.FromTonnes(3), M(2), M(1), LoadKind.Detachable)]);
        var before = machine.AxleLoads(Grade.Level, PullDirection.Forwards);
        var after = machine.Without("header").AxleLoads(Grade.Level, PullDirection.Forwards);
        Assert.Equal(4.67, (before.Newtons[0] - after.Newtons[0]) / 9806.65, 0.005);
        Assert.Equal(-1.67, (before.Newtons[1] - after.Newtons[1]) / 9806.65, 0.005);
    }

    [Property]
    public Property Axle_loads_sum_to_the_weight_across_the_slope() => Prop.ForAll((from percent in Gen.Choose(-30, 30) from frame in Gen.Elements(Suspension.Equalised, Suspension.StraightFrame) select (percent, frame)).ToArbitrary(), x =>
    {
        var grade = Grade.FromPercent(x.percent);
        var machine = Harvester(x.frame);
        return Math.Abs(machine.AxleLoads(grade, PullDirection.Rearwards).Total.Newtons - (machine.Weight.Newtons * Math.Cos(grade.Radians))) < 1e-6;
    });

    [Fact]
    public void Refuses_what_cannot_be_with_words()
    {
        Assert.Contains("mass must be from 0 to 100 t; it was -1 t", Assert.Throws<ArgumentOutOfRangeException>(() => new NamedLoad("x", Mass.FromTonnes(-1), M(0), M(1))).Message, StringComparison.Ordinal);
        Assert.Contains("overallDiameter must be from 0.4 to 3 m; it was 0 m", Assert.Throws<ArgumentOutOfRangeException>(() => new Tyre(M(0.6), M(0), M(0.4), KPa(200))).Message, StringComparison.Ordinal);
        Assert.Contains("less than half of overallDiameter", Assert.Throws<ArgumentException>(() => new Tyre(M(0.6), M(1.6), M(0.9), KPa(200))).Message, StringComparison.Ordinal);
        Assert.Contains("carries no load named 'grain'", Assert.Throws<ArgumentException>(() => Harvester().Without("grain")).Message, StringComparison.Ordinal);
        Assert.Contains("fixed part", Assert.Throws<ArgumentException>(() => Harvester().Without("body")).Message, StringComparison.Ordinal);
        Assert.Contains("unique names", Assert.Throws<ArgumentException>(() => new Machine("m", Harvester().Axles, [new NamedLoad("a", Mass.FromTonnes(5), M(-1), M(1)), new NamedLoad("a", Mass.FromTonnes(5), M(-1), M(1))])).Message, StringComparison.Ordinal);
        Assert.Contains("foremost at x = 0", Assert.Throws<ArgumentException>(() => new Machine("m", [Harvester().Axles[1], Harvester().Axles[2]], Harvester().Loads)).Message, StringComparison.Ordinal);
        Assert.Contains("from 30 to 1000 kPa", Assert.Throws<ArgumentOutOfRangeException>(() => new Tyre(M(0.8), M(2), M(0.5), KPa(240), KPa(190)).AtInflation(KPa(20))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Explains_its_axle_loads()
    {
        var working = Harvester().Explain(Up2, PullDirection.Rearwards);
        Assert.Equal("126.8 kN", working.Steps[^1].Value);
    }
}
