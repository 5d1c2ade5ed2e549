using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>How each bound arises, first movement against what goes on, and why the two methods lie apart.</summary>
public class DemandBasisTests
{
    private static readonly Angle OneInSix = Angle.FromRadians(Math.Atan(1.0 / 6));

    /// <summary>Worked example: low at the change-over of the belly, 6.88 kPa; high locked on the strongest floor, 19.6 kPa.</summary>
    [Fact]
    public void Says_how_the_bounds_of_the_worked_machine_arise()
    {
        var demand = PullDemand.Estimate(StuckHarvester());
        var basis = demand.Basis;
        Assert.Equal([DemandBound.Low, DemandBound.Central, DemandBound.High], basis.Select(b => b.Bound));
        Assert.Equal([156.9, 364.7, 817.7], basis.Select(b => Math.Round(b.Force.Kilonewtons, 1)));
        Assert.Equal([6.88, 10.48, 19.6], basis.Select(b => Math.Round(b.Floor.Kilopascals, 2)));
        Assert.Equal([16.8, 19.6, 28.0], basis.Select(b => Math.Round(b.Wall.Kilopascals, 1)));
        Assert.Equal([264.0, 245.0, 245.0], basis.Select(b => Math.Round(b.ModelConeIndex.Kilopascals, 1)));
        Assert.Equal([0.10, 0.15, 0.25], basis.Select(b => b.RollingRatio));
        Assert.Equal([false, false, true], basis.Select(b => b.Locked));
        Assert.Equal([0, 1, 1], basis.Select(b => b.SuctionShare));
        Assert.Equal([0, 0.5, 1], basis.Select(b => b.UpliftShare));
        Assert.Equal([10, 6, 4], basis.Select(b => Math.Round(1 / Math.Tan(b.ExitSlope.Radians), 9)));
        Assert.Equal([0, 1, 3], basis.Select(b => b.MeetsUncutSoil.Count));
        Assert.Equal("rear axle", Assert.Single(basis[1].MeetsUncutSoil));
        Assert.Equal("wheels turn, buried ones at 0.1 of their load; vented; drawn back along open ruts; exit 1:10, not measured; weakest wall, floor at which the belly goes over to its share by area, where the sum is least", basis[0].How);
        Assert.Equal("wheels turn, buried ones at 0.15 of their load; sealed; uncut soil ahead of the rear axle; exit 1:6, not measured; no uplift of its belly, which the wheels could not bear; middle strengths of wall and floor", basis[1].How);
        Assert.Equal("braked wheels slide locked; sealed; uncut soil ahead of the front axle, middle axle, rear axle; exit 1:4, not measured; all the uplift of its belly, as far as the wheels bear it; strongest wall, strongest floor, where the sum is greatest", basis[2].How);
        Assert.StartsWith("high 818 kN: braked wheels slide locked", basis[2].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Says_what_has_been_declared_and_dug()
    {
        var turning = PullDemand.Estimate(StuckHarvester().WithWheels(WheelMotion.Turning).WithExitSlope(Angle.FromRadians(Math.Atan(0.2)))).Basis;
        Assert.All(turning, b => Assert.Contains("exit 1:5 as measured", b.How, StringComparison.Ordinal));
        Assert.DoesNotContain(turning, b => b.Locked);
        var dug = PullDemand.Estimate(StuckHarvester().Dug(OneInSix)).Basis;
        Assert.Contains("exit 1:10, not measured", dug[0].How, StringComparison.Ordinal);
        Assert.Contains("exit 1:6 as dug", dug[2].How, StringComparison.Ordinal);
        Assert.Contains("no soil ahead of the wheels", dug[2].How, StringComparison.Ordinal);
        Assert.All(dug, b => Assert.Empty(b.MeetsUncutSoil));
        var part = PullDemand.Estimate(StuckHarvester().WithSeal(Seal.PartVented)).Basis;
        Assert.Equal([0, 0.5, 1], part.Select(b => b.SuctionShare));
        Assert.Equal([0, 0.3, 1], part.Select(b => b.UpliftShare));
        var rolling = PullDemand.Estimate(new StuckMachine(Harvester(Suspension.Undeclared), StuckHarvester().Soil, [M(0.05), M(0.05), M(0.05)], PullDirection.Rearwards) { Wheels = WheelMotion.Turning }).Basis;
        Assert.All(rolling, b => Assert.StartsWith("wheels roll", b.How, StringComparison.Ordinal));
        Assert.Contains(rolling, b => b.Frame == Suspension.StraightFrame);
    }

    [Theory]
    [InlineData(DemandBound.Low, "156.9 kN")]
    [InlineData(DemandBound.Central, "364.7 kN")]
    [InlineData(DemandBound.High, "817.7 kN")]
    public void Each_bound_is_worked_step_by_step(DemandBound bound, string value)
    {
        var working = PullDemand.Estimate(StuckHarvester()).Explain(bound);
        Assert.Equal(value, working.Steps[^1].Value);
        Assert.StartsWith(bound + " demand", working.Title, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => PullDemand.Estimate(StuckHarvester()).Explain((DemandBound)3));
    }

    /// <summary>Central 364.708 less 109.76 of suction. Without it each front wheel, 85.484 kN, has own terms of 12.823 + 6.107 = 18.930 kN against 85.484 (0.9/4.3306 + 0.0325) = 20.544 kN by the wheel model, so 2 x 1.614 kN stay: 258.18. High 817.737 less 156.8 of suction and 24.883 of lift.</summary>
    [Fact]
    public void First_movement_and_what_goes_on_are_apart()
    {
        var demand = PullDemand.Estimate(StuckHarvester());
        Assert.Equal(demand.Total, demand.FirstMovement);
        Assert.Equal(156.9, demand.Sustained.Low.Kilonewtons, 0.0501);
        Assert.Equal(258.18, demand.Sustained.Central.Kilonewtons, 0.005);
        Assert.Equal(636.05, demand.Sustained.High.Kilonewtons, 0.01);
        Assert.Equal(demand.Sustained.CentralNewtons, demand.AfterBreakout.Newtons);
        var vented = PullDemand.Estimate(StuckHarvester().Vented());
        Assert.Equal(vented.Total, vented.Sustained);
    }

    [Fact]
    public void Reason_is_owed_only_where_the_methods_lie_apart_by_more_than_two()
    {
        // As found 1.40, unloaded and dug 1.96, belly free as well 2.09 (worked example).
        Assert.Null(PullDemand.Estimate(StuckHarvester()).MethodReason);
        Assert.Null(PullDemand.Estimate(StuckHarvester().Without("beet").Dug(OneInSix)).MethodReason);
        var free = PullDemand.Estimate(StuckHarvester().Without("beet").Dug(OneInSix).WithBellyFreed());
        Assert.Equal(2.08518, free.MethodRatio!.Value, 0.0001);
        Assert.Equal("The rule looks at weight and depth alone, here once the weight; it does not know that the hole has been dug and that the belly is free.", free.MethodReason);
        Assert.Contains(free.Findings, f => f.Id == "mire.methods-differ" && f.Subject == free.MethodReason);
        Assert.Contains(free.Findings, f => f.Id == "mire.methods-differ" && f.Subject == free.MethodReason);
        // Half a metre down, drawn down 40 %: 25 t help with 25 x 9.80665 x 0.4/sqrt(1.16) = 91.05 kN.
        StuckMachine Falling(double percent) => new(
            new Machine("combine", [new Axle("front", M(0), 2, Tyre(0.8, 2, 0.5, 0.2), true, M(2)), new Axle("rear", M(-4), 2, Tyre(0.6, 1.6, 0.4, 0.2), true, M(2))], [new NamedLoad("all", Mass.FromTonnes(25), M(-1.5), M(1))]),
            Soil.FromConeIndex(KPa(350), Frac(0.7)), [M(0.5), M(0.4)], PullDirection.Rearwards)
        { Grade = Grade.FromPercent(percent), MeetsUncutSoil = [false, false] };
        var falling = PullDemand.Estimate(Falling(-40));
        Assert.Equal(-91.05, falling.Terms.Single(t => t.Name == "grade").Central.Kilonewtons, 0.00501);
        Assert.True(falling.MethodRatio > 2);
        var share = Math.Round(100 * 91.05 / (falling.Total.Central.Kilonewtons + 91.05));
        Assert.Contains("it does not know that the ground falls along the pull, where its own weight takes " + share.ToString(System.Globalization.CultureInfo.InvariantCulture) + " % off what would hold it on the level", falling.MethodReason, StringComparison.Ordinal);
        Assert.DoesNotContain("falls", PullDemand.Estimate(Falling(-1)).MethodReason ?? string.Empty, StringComparison.Ordinal);
        // A light machine in strong clay, sealed: the soil model asks for more.
        var light = PullDemand.Estimate(new StuckMachine(
            new Machine("light", [new Axle("front", M(0), 2, Tyre(0.8, 2, 0.5, 0.2), true, M(2)), new Axle("rear", M(-3), 2, Tyre(0.8, 2, 0.5, 0.2), true, M(2))], [new NamedLoad("all", Mass.FromTonnes(8), M(-1.5), M(1))]),
            Soil.FromConeIndex(KPa(500), Frac(1)),
            [M(0.6), M(0.6)],
            PullDirection.Rearwards));
        Assert.True(light.MethodRatio < 0.5);
        Assert.Contains("light machine holds more", light.MethodReason, StringComparison.Ordinal);
        Assert.Contains("suction behind buried wheels (", light.MethodReason, StringComparison.Ordinal);
    }

    /// <summary>Worked example: floor bears 175.7, 212.5, 212.5 kN at central and 307.8, 372.1, 372.1 at the high, against 256.2, 126.8, 126.8 kN.</summary>
    [Fact]
    public void Says_what_the_floor_bears_under_each_axle()
    {
        var axles = PullDemand.Estimate(StuckHarvester()).AxleBearings;
        Assert.Equal([256.2, 126.8, 126.8], axles.Select(a => Math.Round(a.Load.Kilonewtons, 1)));
        Assert.Equal([175.7, 212.5, 212.5], axles.Select(a => Math.Round(a.Bears.Central.Kilonewtons, 1)));
        Assert.Equal([307.8, 372.1, 372.1], axles.Select(a => Math.Round(a.Bears.High.Kilonewtons, 1)));
        Assert.Equal([false, true, true], axles.Select(a => a.BearsItsLoad));
        // Sums over the machine as printed: 359, 601, 1052 kN.
        Assert.Equal([359, 601, 1052], new[] { axles.Sum(a => a.Bears.Low.Kilonewtons), axles.Sum(a => a.Bears.Central.Kilonewtons), axles.Sum(a => a.Bears.High.Kilonewtons) }.Select(v => Math.Round(v)));
        // A rolling axle stands on the same floor: on the chord of its deflection, 2 x 0.8 x 0.92390 m2, at the static bound of 19.540 kPa: 5.14 x 19.540 x 1.47824 = 148.47 kN.
        Assert.Equal(148.47, PullDemand.Estimate(new StuckMachine(Harvester(), StuckHarvester().Soil, [M(0), M(0), M(0)], PullDirection.Rearwards)).AxleBearings[0].Bears.Low.Kilonewtons, 0.01);
    }

    [Property]
    public Property What_goes_on_never_exceeds_the_first_movement() => Prop.ForAll(Cases(), stuck =>
    {
        var d = PullDemand.Estimate(stuck);
        return d.Sustained.LowNewtons <= d.Total.LowNewtons + 1e-6 && d.Sustained.CentralNewtons <= d.Total.CentralNewtons + 1e-6 && d.Sustained.HighNewtons <= d.Total.HighNewtons + 1e-6;
    });

    [Property]
    public Property The_state_of_a_bound_gives_its_sum_again() => Prop.ForAll(Cases(), stuck =>
    {
        var d = PullDemand.Estimate(stuck);
        return new[] { DemandBound.Low, DemandBound.Central, DemandBound.High }.All(b =>
        {
            var (frame, terms, state) = d.At(b);
            DemandKernel.Compose(frame.Flat, state, out var again);
            return Math.Abs(again.Total - terms.Total) <= 1e-9 * Math.Max(1, Math.Abs(terms.Total)) && d.Explain(b).Steps[^1].Value == Text.Kilonewtons(terms.Total);
        });
    });

    private static Arbitrary<StuckMachine> Cases() => (
        from ci in Gen.Choose(80, 900)
        from ri in Gen.Choose(50, 100)
        from z in Gen.Choose(0, 100)
        from deeper in Gen.Choose(0, 30)
        from grade in Gen.Choose(-8, 8)
        from belly in Gen.Elements(true, false)
        from wheels in Gen.Elements(WheelMotion.Undeclared, WheelMotion.Turning, WheelMotion.Locked)
        from seal in Gen.Elements(Seal.Undeclared, Seal.Sealed, Seal.PartVented, Seal.Vented)
        from suspension in Gen.Elements(Suspension.Undeclared, Suspension.Equalised, Suspension.StraightFrame)
        from dug in Gen.Elements(true, false)
        let found = new StuckMachine(Harvester(suspension), Soil.FromConeIndex(KPa(ci), Frac(ri / 100.0)), [M(z / 100.0), M((z + deeper) / 100.0), M((z + deeper) / 100.0)], PullDirection.Rearwards)
        {
            Grade = Grade.FromPercent(grade),
            Belly = belly ? new Belly(M(3), M(1.2), M(0.1)) : null,
            Wheels = wheels,
            Seal = seal,
        }
        select dug ? found.Dug(Angle.FromDegrees(9)) : found).ToArbitrary();
}
