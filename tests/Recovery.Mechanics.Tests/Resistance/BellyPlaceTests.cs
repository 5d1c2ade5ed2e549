using System;
using System.Linq;
using Recovery.Mechanics.Resistance;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>A belly whose place along the machine is known hands its load and its uplift to the axles by statics.</summary>
public class BellyPlaceTests
{
    /// <summary>Equalised rear pair at -5.85 m in the mean: a belly with its middle at -2.34 m goes to it by 0.4, to each of the two axles by 0.2, and to the front axle by 0.6.</summary>
    [Fact]
    public void Shares_by_the_lever()
    {
        var f = CompiledStuckMachine.From(With(-2.34), Recovery.Mechanics.Machines.Suspension.Equalised).Flat;
        Assert.Equal([0.6, 0.2, 0.2], f.BellyTakes!.Select(v => Math.Round(v, 12)));
        Assert.Equal(f.BellyTakes!, f.UpliftShare);
        // 169.642 kN on the belly (area share of the worked machine): 256.196 - 0.6 x 169.642 = 154.411; 126.824 - 0.2 x 169.642 = 92.896 kN.
        var self = SelfRecovery.Estimate(With(-2.34));
        Assert.Equal([154.41, 92.9, 92.9], self.Axles.Select(a => Math.Round(a.Load.Kilonewtons, 2)));
    }

    /// <summary>The place moves no weight off the machine: the wheels carry 340.304 kN of it (normal to a 2 % grade 340.2) wherever the belly is.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(-2.9)]
    [InlineData(-5.85)]
    [InlineData(1)]
    [InlineData(-8)]
    public void Takes_the_same_off_all_axles_together(double middle)
    {
        var self = SelfRecovery.Estimate(With(middle));
        Assert.Equal(509.8438 - 169.642, self.Axles.Sum(a => a.Load.Kilonewtons), 0.01);
        // Buried wheels that count their own terms depend on the sum alone: the climb and rho terms stay.
        Assert.Equal(PullDemand.Estimate(With(middle)).Terms.Single(t => t.Key == "climb").Central.Newtons, PullDemand.Estimate(StuckHarvester()).Terms.Single(t => t.Key == "climb").Central.Newtons, 1e-6);
    }

    /// <summary>A belly 1 m ahead of the front axle takes 1 + 1/5.85 of its load off it and puts 1/5.85 on the rear pair: 256.196 - 1.170940 x 169.642 = 57.555; 126.824 + 0.0854701 x 169.642 = 141.323 kN.</summary>
    [Fact]
    public void Outside_the_axles_it_loads_the_far_one()
    {
        var f = CompiledStuckMachine.From(With(1), Recovery.Mechanics.Machines.Suspension.Equalised).Flat;
        Assert.Equal([1.17094, -0.08547, -0.08547], f.BellyTakes!.Select(v => Math.Round(v, 6)));
        Assert.Equal([57.55, 141.32, 141.32], SelfRecovery.Estimate(With(1)).Axles.Select(a => Math.Round(a.Load.Kilonewtons, 2)));
        // Straight frame, axles at 0, -4.9, -6.8, mean -3.9, S 24.62: at -0.5 m the shares are 1/3 + 3.4 x 3.9/24.62, 1/3 - 3.4/24.62, 1/3 - 3.4 x 2.9/24.62.
        Assert.Equal([0.871920, 0.195234, -0.067154], CompiledStuckMachine.From(With(-0.5), Recovery.Mechanics.Machines.Suspension.StraightFrame).Flat.BellyTakes!.Select(v => Math.Round(v, 6)));
    }

    [Fact]
    public void Not_known_is_the_same_fraction_off_every_axle()
    {
        var f = CompiledStuckMachine.From(StuckHarvester(), Recovery.Mechanics.Machines.Suspension.Equalised).Flat;
        Assert.Null(f.BellyTakes);
        Assert.Equal(f.Carry(0, 100e3), f.Carry(2, 100e3));
    }

    /// <summary>High floor, belly under the front axle: that axle alone has to bear the rise, and has 51.55 kN to spare (worked); a belly under the rear pair leaves the front out.</summary>
    [Fact]
    public void Uplift_is_limited_by_the_axles_it_stands_under()
    {
        var front = PullDemand.Estimate(With(0));
        Assert.Equal(51.554, front.UpliftDeveloped.High.Kilonewtons, 0.01);
        var rear = PullDemand.Estimate(With(-5.85));
        Assert.Equal(483.571, rear.UpliftHeld.High.Kilonewtons, 0.01);
        Assert.Equal(483.571, rear.UpliftDeveloped.High.Kilonewtons, 0.01);
    }

    /// <summary>A belly that takes a whole axle off wheels sunk over their hub: the step is no answer there whatever they carry, so the soil ahead counts, as under a load that goes to nothing.</summary>
    [Fact]
    public void Wheels_over_their_hub_that_carry_nothing_count_the_soil_ahead()
    {
        // Rear pair 1.95 m in diameter, 1.2 m deep, and a belly of 16 m2 behind it: by its lever it takes more off the pair than the pair carries.
        StuckMachine Deep(double middle) => StuckHarvester().WithBelly(new Belly(M(8), M(2), M(0.3)).WithMiddle(M(middle))).WithSinkage([M(0.5), M(1.2), M(1.2)]);
        var bare = Deep(-11);
        var flat = CompiledStuckMachine.From(bare, Recovery.Mechanics.Machines.Suspension.Equalised).Flat;
        Assert.Equal(0, flat.Carry(2, UnderbodyKernel.Carried(flat.Weight, flat.BellyArea, flat.WheelArea, 30e3)));
        var face = PullDemand.Estimate(bare).Terms.Single(t => t.Key == "face");
        var loaded = PullDemand.Estimate(Deep(-2.34)).Terms.Single(t => t.Key == "face");
        Assert.True(face.Central.Newtons > 0);
        Assert.Equal(loaded.Central.Newtons, face.Central.Newtons, 1e-6 * loaded.Central.Newtons);
        Assert.Null(PullDemand.Estimate(bare).RigidStep);
    }

    [Fact]
    public void Refuses_a_belly_far_off_the_machine() =>
        Assert.Contains("Middle must be from -30 to 5 m; it was 6 m", Assert.Throws<ArgumentOutOfRangeException>(() => new Belly(M(3), M(1), M(0.1)).WithMiddle(M(6))).Message, StringComparison.Ordinal);

    private static StuckMachine With(double middle)
    {
        var stuck = StuckHarvester();
        return stuck.WithBelly(stuck.Belly!.WithMiddle(M(middle)));
    }
}
