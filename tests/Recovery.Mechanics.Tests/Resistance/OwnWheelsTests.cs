using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>What the stuck machine's own wheels are worth, and why that is nothing where it is.</summary>
public class OwnWheelsTests
{
    /// <summary>Worked example: locked 450.5 less turning 364.7 kN; all wheels buried, so no traction is added.</summary>
    [Fact]
    public void Buried_wheels_count_turning_against_locked_alone()
    {
        var worth = PullDemand.Estimate(StuckHarvester()).DrivingOwnWheels;
        Assert.Equal(85.8, worth.Turning.Kilonewtons, 0.0501);
        Assert.Equal(0, worth.Traction.Newtons);
        Assert.Equal(85.8, worth.Total.Kilonewtons, 0.0501);
        Assert.Contains("turning wheels against locked ones", worth.Reason, StringComparison.Ordinal);
        Assert.Contains("a buried wheel is in no wheel model's range", worth.Reason, StringComparison.Ordinal);
    }

    /// <summary>A machine that sank with twice its present load: the index is held at its own critical value, B_n 4.21301 with radial constants, so B_n is 8.42602 now. Bias constants at slip 0.30:
    /// gross 0.88 (1 - e^-0.842602)(1 - e^-2.25) + 0.04 = 0.488268; resistance 1/8.42602 + 0.04 + 0.15/sqrt(8.42602) = 0.210355; net 0.277913 of 160 kN (SciPy root of the radial form).</summary>
    [Fact]
    public void Rolling_wheels_in_range_add_their_net_traction()
    {
        var demand = PullDemand.Estimate(Light(0.1).Without("cargo"));
        Assert.All(OwnWheels.Axles(demand), a => Assert.True(a.InRange, a.ToString()));
        Assert.Equal(8.42602, OwnWheels.Axles(demand)[0].Numeric, 0.00001);
        var worth = demand.DrivingOwnWheels;
        Assert.Equal(44.4662, worth.Traction.Kilonewtons, 0.0001);
        Assert.Equal(worth.Turning.Newtons + worth.Traction.Newtons, worth.Total.Newtons, 1e-9);
        Assert.Contains("the net traction of the front and rear is in the figure", worth.Reason, StringComparison.Ordinal);
        // Still loaded it stands below the range of the model.
        Assert.Contains("outside the wheel model: B_n", PullDemand.Estimate(Light(0.1)).DrivingOwnWheels.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Says_why_where_nothing_is_won()
    {
        var undriven = PullDemand.Estimate(Light(0.1, driven: false)).DrivingOwnWheels;
        Assert.Equal(0, undriven.Traction.Newtons);
        Assert.Contains("no axle is driven", undriven.Reason, StringComparison.Ordinal);
        var free = PullDemand.Estimate(Light(0.4, braked: false)).DrivingOwnWheels;
        Assert.Equal(0, free.Total.Newtons);
        Assert.Contains("no axle can lock", free.Reason, StringComparison.Ordinal);
        // Heavy wheels near the surface: load over width times diameter lies outside the fit.
        var heavy = PullDemand.Estimate(new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(350), Frac(0.7)), [M(0.1), M(0.1), M(0.1)], PullDirection.Rearwards)).DrivingOwnWheels;
        Assert.Equal(0, heavy.Traction.Newtons);
        Assert.Contains("outside the wheel model", heavy.Reason, StringComparison.Ordinal);
        Assert.Equal(heavy.Total.Newtons, heavy.Turning.Newtons);
    }

    private static StuckMachine Light(double z, bool driven = true, bool braked = true)
    {
        var tyre = Tyre(0.8, 2.0, 0.5, 0.2);
        return new StuckMachine(
            new Machine("sprayer", [new Axle("front", M(0), 2, tyre, driven, M(2)) { Braked = braked }, new Axle("rear", M(-4), 2, tyre, driven, M(2)) { Braked = braked }], [new NamedLoad("body", Mass.FromTonnes(160 / 9.80665), M(-2), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(160 / 9.80665), M(-2), M(1.5), LoadKind.Payload)]),
            Soil.FromConeIndex(KPa(600), Frac(1)),
            [M(z), M(z)],
            PullDirection.Rearwards);
    }
}
