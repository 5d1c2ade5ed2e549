using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>What digging, venting, freeing the belly and turning round do to a machine that is to move itself.</summary>
public class SelfRecoveryStepTests
{
    /// <summary>Loads by moments and critical index by bounded minimum and root, each direction on the slope.</summary>
    [Theory]
    [CheckRows("resistance-scipy", "own-wheels-turned")]
    public void Turning_round_recomputed(CheckRow row)
    {
        var full = StuckHarvester() with { Grade = Grade.FromPercent(100 * row.Si("grade")) };
        var self = SelfRecovery.Estimate(row.Word("state") == "full" ? full : full.Without("beet"));
        var turned = self.Steps()[^1];
        Assert.Equal("turn round, out forwards", turned.Name);
        var loads = CompiledStuckMachine.From(self.Demand.Stuck, Suspension.Equalised).Flat.Load;
        row.Matches(("N1", loads[0]), ("N2", loads[1]), ("rearwards", self.CriticalConeIndex!.Value.Pascals), ("forwards", turned.CriticalConeIndex!.Value.Pascals));
        Assert.StartsWith(row.Si("grade") > 0 ? "the ground falls that way" : row.Si("grade") < 0 ? "the ground rises that way" : "unchanged, because the ground is level along the pull", turned.Remark, StringComparison.Ordinal);
        Assert.EndsWith("; its lugs bite that way, which no number here counts", turned.Remark, StringComparison.Ordinal);
        Assert.DoesNotContain("other side", turned.Remark, StringComparison.Ordinal);
    }

    /// <summary>Turning, central: unloaded 303.334 kN, dug as well 150.124 kN, belly free as well 141.091 kN (worked whole apart).</summary>
    [Fact]
    public void Digging_and_freeing_the_belly_leave_the_index_and_change_what_holds()
    {
        var light = StuckHarvester().Without("beet");
        var self = SelfRecovery.Estimate(light);
        var dig = self.Steps().Single(s => s.Name == "dig out to 1:6");
        Assert.Equal(303.334, self.Demand.Total.Central.Kilonewtons, 0.0031);
        Assert.Equal(150.124, dig.Holds.Kilonewtons, 0.0016);
        Assert.Equal(150.124 - 303.334, dig.HoldsChange.Kilonewtons, 0.0047);
        Assert.Equal(0, dig.Change!.Value.Pascals, 1e-6);
        Assert.Equal("unchanged, because that number is for wheels that roll, and digging takes soil from wheels that are sunk", dig.Remark);
        var dug = SelfRecovery.Estimate(light.Dug(Angle.FromRadians(Math.Atan(1.0 / 6))));
        Assert.DoesNotContain(dug.Steps(), s => s.Name.StartsWith("dig", StringComparison.Ordinal));
        var free = dug.Steps().Single(s => s.Name == "free the belly");
        Assert.Equal(141.091, free.Holds.Kilonewtons, 0.0015);
        Assert.Equal(0, free.Change!.Value.Pascals, 1e-6);
        Assert.Equal("unchanged, because that number counts the whole load on the wheels already; freed, they carry it", free.Remark);
        Assert.Contains("(0 kPa), unchanged, because that number counts", free.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("; towed it takes 141 kN (-9.03 kN)", free.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Vented, the sum lacks its suction and nothing else, as long as no wheel then rolls harder by the wheel model; a machine that was dug out has none left to lose.</summary>
    [Fact]
    public void Venting_takes_the_suction_alone()
    {
        var self = SelfRecovery.Estimate(StuckHarvester().Without("beet"));
        var vent = self.Steps().Single(s => s.Name == "vent");
        Assert.Equal(-self.Demand.Terms.Single(t => t.Key == "suction").Central.Newtons, vent.HoldsChange.Newtons, 1e-6);
        Assert.True(vent.HoldsChange.Newtons < -1000);
        Assert.Equal(0, vent.Change!.Value.Pascals, 1e-6);
        Assert.Equal("unchanged, because that number is for wheels that roll, which nothing sucks down", vent.Remark);
        var dug = SelfRecovery.Estimate(new StuckMachine(Harvester(), StuckHarvester().Soil, [M(0.5), M(0.5), M(0.5)], PullDirection.Rearwards).Dug(Angle.FromDegrees(9)));
        Assert.EndsWith("; nor does it change what holds it", dug.Steps().Single(s => s.Name == "vent").Remark, StringComparison.Ordinal);
        Assert.DoesNotContain(SelfRecovery.Estimate(StuckHarvester().Vented()).Steps(), s => s.Name == "vent");
    }

    [Fact]
    public void A_rolling_machine_with_nothing_left_to_do_can_only_turn_round()
    {
        var bare = new Tyre(M(0.8), M(2), M(0.5), KPa(140), KPa(140));
        var stuck = new StuckMachine(new Machine("bare", [new Axle("front", M(0), 2, bare, true, M(2)), new Axle("rear", M(-4), 2, bare, true, M(2))], [new NamedLoad("body", Mass.FromTonnes(12), M(-2), M(1))]), StuckHarvester().Soil, [M(0.1), M(0.1)], PullDirection.Forwards);
        var step = Assert.Single(SelfRecovery.Estimate(stuck).Steps());
        Assert.Equal("turn round, out rearwards", step.Name);
        Assert.Equal("unchanged, because the ground is level along the pull; its lugs do not bite that way, which no number here counts", step.Remark);
        Assert.Equal(0, step.Change!.Value.Pascals, 1e-6);
    }

    [Fact]
    public void What_was_dug_or_measured_does_not_turn_round_with_the_pull()
    {
        var dug = SelfRecovery.Estimate(StuckHarvester().Dug(Angle.FromDegrees(9))).Steps()[^1];
        Assert.Contains("; what was dug and measured belongs to the other side", dug.Remark, StringComparison.Ordinal);
        Assert.Equal(PullDemand.Estimate(StuckHarvester().DrivingItsWheels().DrawnTheOtherWay()).CentralNewtons, dug.Holds.Newtons, 1e-6);
    }

    /// <summary>A belly that drags holds a lightened machine that rolls; freed, its wheels carry what the belly bore, and its net traction is the 44.4662 kN that it has without a belly (SciPy).</summary>
    [Fact]
    public void Freeing_the_belly_of_a_machine_that_rolls_changes_what_can_be_said()
    {
        var tyre = Tyre(0.8, 2.0, 0.5, 0.2);
        var stuck = new StuckMachine(
            new Machine("sprayer", [new Axle("front", M(0), 2, tyre, true, M(2)), new Axle("rear", M(-4), 2, tyre, true, M(2))], [new NamedLoad("body", Mass.FromTonnes(160 / 9.80665), M(-2), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(160 / 9.80665), M(-2), M(1.5), LoadKind.Payload)]),
            Soil.FromConeIndex(KPa(600), Frac(1)),
            [M(0.1), M(0.1)],
            PullDirection.Rearwards)
        { Belly = new Belly(M(4), M(2), M(0.1)) };
        var self = SelfRecovery.Estimate(stuck.Without("cargo"));
        Assert.NotEqual(SelfRecoveryOutlook.MovesItself, self.Outlook);
        var free = self.Steps().Single(s => s.Name == "free the belly");
        Assert.Equal(SelfRecoveryOutlook.MovesItself, free.Outlook);
        Assert.Equal(44.4662, free.NetTraction!.Value.Central.Kilonewtons, 0.0001);
        Assert.Equal(0, free.Holding!.Value.CentralNewtons, 1e-6);
        Assert.DoesNotContain(self.Steps(), s => s.Name.StartsWith("dig", StringComparison.Ordinal));
    }
}
