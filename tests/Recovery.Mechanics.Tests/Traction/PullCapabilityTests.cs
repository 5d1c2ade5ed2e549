using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class PullCapabilityTests
{
    [Theory]
    [CheckRows("traction", "pull-at-slip")]
    public void Pull_at_a_slip_with_load_transfer(CheckRow row)
    {
        // Two points of the curve: its last one is the slip of the row.
        var curve = PullCapability.Estimate(Tractors.Of(row, row.Si("CI"))).Curve(2, Frac(row.Si("s")));
        row.Matches(("P", curve[1].Pull.Newtons));
    }

    [Theory]
    [CheckRows("traction", "pull-at-slip-radial")]
    public void Pull_at_a_slip_with_radial_constants(CheckRow row)
    {
        var flat = CapabilityFlat.From(Tractors.Of(row, row.Si("CI")), 0);
        row.Matches(("P", CapabilityKernel.AtSlip(flat, row.Si("CI"), row.Si("s"), BrixiusConstants.Radial, out var residual)));
        Assert.InRange(residual, -1e-6, 1e-6);
    }

    [Theory]
    [CheckRows("traction", "sustained-traction")]
    public void Sustained_traction(CheckRow row)
    {
        var capability = PullCapability.Estimate(Tractors.Of(row, row.Si("CI")));
        row.Matches(("P", capability.TractionLimit.Newtons), ("P_over_W", capability.TractionLimit.Newtons / capability.Tower.Machine.Weight.Newtons));
        Assert.Equal(row.Si("s_max"), capability.Slip.DecimalFractions, 12);
    }

    [Theory]
    [CheckRows("traction", "sustained-limits")]
    public void The_least_limit_governs_and_is_named(CheckRow row)
    {
        var machine = Tractors.SixteenTonnes(row.Si("W_f") / 1000, 94.2, row.Si("h_cg"));
        var tower = new TowingMachine(machine, Soil.FromConeIndex(KPa(900), Frac(0.8)), M(-3), M(row.Si("h_d")))
        {
            EnginePower = Power.FromWatts(row.Printed("P_engine") * 1000),
            Efficiency = Frac(row.Si("eta")),
            PullSpeed = Speed.FromMetersPerSecond(row.Si("v")),
            HitchRating = Force.FromNewtons(row.Si("rating")),
        };
        var capability = PullCapability.Estimate(tower);
        var flat = CapabilityFlat.From(tower, 0);
        var sustained = CapabilityKernel.Sustained(row.Si("traction"), flat.PowerLimit, flat.NoseLimit, flat.SideLimit, flat.RatingLimit, out var limit);
        row.MatchesOne("power", capability.PowerLimit!.Value.Newtons);
        row.MatchesOne("nose", capability.NoseLimit.Newtons);
        row.MatchesOne("sustained", sustained);
        row.MatchesWord("limited_by", limit switch { PullLimit.Traction => "traction", PullLimit.Power => "power", PullLimit.NoseLift => "nose", _ => "rating" });
    }

    [Theory]
    [CheckRows("traction", "power-limit")]
    public void Power_at_the_stated_speed(CheckRow row)
    {
        var watts = row.Has("P_engine") ? row.Si("P_engine") : row.Printed("power") * row.Printed("hp");
        var tower = Tractors.SixteenTonneTower() with { EnginePower = Power.FromWatts(watts), Efficiency = Frac(row.Si("eta")), PullSpeed = Speed.FromMetersPerSecond(row.Si("v")) };
        row.MatchesOne("F", PullCapability.Estimate(tower).PowerLimit!.Value.Newtons);
    }

    [Theory]
    [CheckRows("traction", "imposable-soil")]
    public void The_most_it_can_impose_on_soil(CheckRow row)
    {
        var capability = PullCapability.Estimate(Tractors.Of(row, row.Si("CI")));
        if (row.ExpectedNames.Contains("s")) row.Matches(("s", capability.ImposableSlip.DecimalFractions));
        else row.Matches(("P", capability.Imposable.Newtons), ("P_over_W", capability.ImposableOverWeight));
    }

    [Theory]
    [CheckRows("traction", "imposable-hard")]
    public void The_most_it_can_impose_on_a_hard_surface(CheckRow row)
    {
        var capability = PullCapability.Estimate(Tractors.Of(row, row.Si("K")) with { HardSurfaceInReach = true });
        row.Matches(("P", capability.Imposable.Newtons), ("ceiling_1.02_W", 1.02 * capability.Tower.Machine.Weight.Newtons));
        Assert.Equal(1, capability.ImposableSlip.DecimalFractions);
    }

    [Theory]
    [CheckRows("traction", "imposable-downhill")]
    public void Facing_downhill_adds_its_weight_component(CheckRow row)
    {
        var level = PullCapability.Estimate(Tractors.SixteenTonneTower(1800));
        var facing = PullCapability.Estimate(Tractors.SixteenTonneTower(1800) with { DownhillInReach = Angle.FromRadians(Math.Atan(row.Si("downhill_grade"))) });
        row.Matches(("added", facing.Imposable.Newtons - level.Imposable.Newtons), ("imposable", facing.Imposable.Newtons));
        Assert.Equal(facing.Imposable.Newtons, PullCapability.Estimate(Tractors.SixteenTonneTower(1800) with { Grade = Grade.FromRatio(Frac(-row.Si("downhill_grade"))) }).Imposable.Newtons, 1e-6);
    }

    [Fact]
    public void The_band_is_weakest_reading_typical_reading_and_cone_index()
    {
        // 16 t machine, typical 900, weakest 800, remoulding index 0.80: 92.3, 97.1, 104.6 kN.
        var tower = Tractors.SixteenTonneTower();
        tower = tower with { Soil = tower.Soil.WithWeakestReading(KPa(800)) };
        var c = PullCapability.Estimate(tower);
        Assert.Equal([640.0, 720.0, 900.0], new[] { c.LowBound, c.CentralBound, c.HighBound }.Select(b => Math.Round(b.ConeIndex.Kilopascals, 9)));
        Assert.Equal(92.2947, c.Sustained.Low.Kilonewtons, 1e-3);
        Assert.Equal(97.0741, c.Sustained.Central.Kilonewtons, 1e-3);
        Assert.Equal(104.593, c.Sustained.High.Kilonewtons, 1e-3);
        Assert.Equal(PullLimit.Traction, c.LowBound.LimitedBy);
        Assert.Equal(188.4 / 97.0741, c.CentralBound.Margin(PullLimit.NoseLift)!.Value, 1e-4);
        Assert.Null(c.CentralBound.Margin(PullLimit.Power));
    }

    [Fact]
    public void Rating_power_and_an_uphill_place_do_not_lower_what_it_can_impose()
    {
        var bare = PullCapability.Estimate(Tractors.SixteenTonneTower()).Imposable.Newtons;
        var limited = PullCapability.Estimate(Tractors.SixteenTonneTower() with { HitchRating = KN(20), EnginePower = Power.FromKilowatts(20), Grade = Grade.FromPercent(8) });
        Assert.Equal(bare, limited.Imposable.Newtons, 1e-6);
        Assert.True(limited.Sustained.Central.Kilonewtons <= 20);
    }

    [Fact]
    public void Two_wheel_drive_imposes_less_than_its_whole_weight_on_a_hard_surface()
    {
        // Rear axle 94.2 kN + P h/L, front undriven: P = 1.02 (94.2 + P/6) - 0.01625 (62.8 - P/6); solved by hand.
        var tower = new TowingMachine(Tractors.SixteenTonnes(frontDriven: false), Soil.FromConeIndex(KPa(450), Frac(1)), M(-3), M(0.5)) { HardSurfaceInReach = true };
        var expected = ((1.02 * 94.2) - (0.01625 * 62.8)) / (1 - ((1.02 + 0.01625) / 6));
        Assert.Equal(expected, PullCapability.Estimate(tower).Imposable.Kilonewtons, 1e-6);
        Assert.True(PullCapability.Estimate(tower with { HardSurfaceFriction = Frac(0.7) }).Imposable.Kilonewtons < expected);
    }

    [Fact]
    public void Beyond_lift_the_rear_carries_no_more_than_everything()
    {
        // Light nose, hitch at 1.2 m: the front lifts at 35 x 3/1.2 = 87.5 kN. On a hard surface the rear then carries the whole weight: 1.02 W.
        var machine = Tractors.SixteenTonnes(35, 94.2);
        var tower = new TowingMachine(machine, Soil.FromConeIndex(KPa(900), Frac(1)), M(-3), M(1.2)) { HardSurfaceInReach = true };
        var capability = PullCapability.Estimate(tower);
        Assert.Equal(1.02 * machine.Weight.Newtons, capability.Imposable.Newtons, 1e-3);
        var loads = capability.AxleLoadsWhilePulling(capability.Imposable);
        Assert.Equal(0, loads[0].Newtons);
        Assert.Equal(machine.Weight.Newtons, loads[1].Newtons, 1e-6);
    }

    [Fact]
    public void Slip_at_a_wanted_pull_is_the_inverse_of_the_curve()
    {
        var capability = PullCapability.Estimate(Tractors.SixteenTonneTower());
        foreach (var point in capability.Curve(7, Frac(0.3)).Skip(2))
            Assert.Equal(point.Slip.DecimalFractions, capability.SlipAt(point.Pull)!.Value.DecimalFractions, 1e-6);
        Assert.Null(capability.SlipAt(KN(200)));
        Assert.Equal(0, capability.SlipAt(Force.Zero)!.Value.DecimalFractions, 0.02);
    }

    [Fact]
    public void Explains_to_the_central_pull()
    {
        var capability = PullCapability.Estimate(Tractors.SixteenTonneTower() with { EnginePower = Power.FromKilowatts(250), HitchRating = KN(150) });
        var last = capability.Explain().Steps[^1];
        Assert.Equal("P", last.Symbol);
        Assert.Equal("97.07 kN", last.Value);
        Assert.Equal("Traction", last.Substitution);
    }

    [Fact]
    public void Refuses_a_steep_line_with_words()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => PullCapability.Estimate(Tractors.SixteenTonneTower(), Angle.FromDegrees(41)));
        Assert.Contains("from -40 to 40 deg", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_what_was_not_declared()
    {
        var tower = new TowingMachine(Tractors.SixteenTonnes(), Soil.FromConeIndexOnly(KPa(900)), M(-3.9), M(0.5));
        Assert.Equal(["assume.puller-remoulding-index", "assume.puller-weakest-reading", "assume.puller-engine-power", "assume.puller-hitch-rating", "assume.puller-firmest-ground"], PullCapability.Estimate(tower).Assumptions.Select(a => a.Id));
        var read = Tractors.SixteenTonneTower() with { Soil = Soil.FromConeIndex(KPa(900), Frac(0.8)).WithWeakestReading(KPa(800)) };
        Assert.Empty(PullCapability.Estimate(read with { EnginePower = Power.FromKilowatts(250), HitchRating = KN(150), HardSurfaceInReach = true }).Assumptions);
    }

    [Fact]
    public void Without_a_weakest_reading_the_band_has_no_lower_width_and_says_so()
    {
        var c = PullCapability.Estimate(Tractors.SixteenTonneTower());
        Assert.Equal(c.Sustained.CentralNewtons, c.Sustained.LowNewtons, 1e-9);
        Assert.Contains(c.Assumptions, a => a.Id == "assume.puller-weakest-reading");
        var read = PullCapability.Estimate(Tractors.SixteenTonneTower() with { Soil = Soil.FromConeIndex(KPa(900), Frac(0.8)).WithWeakestReading(KPa(899)) });
        Assert.True(read.Sustained.LowNewtons < read.Sustained.CentralNewtons);
        Assert.DoesNotContain(read.Assumptions, a => a.Id == "assume.puller-weakest-reading");
    }

    [Fact]
    public void Batch_agrees_with_the_bounds_and_writes_nothing_on_refusal()
    {
        var c = PullCapability.Estimate(Tractors.SixteenTonneTower());
        double[] pulls = new double[3];
        c.SustainedAt([c.LowBound.ConeIndex.Kilopascals, c.CentralBound.ConeIndex.Kilopascals, c.HighBound.ConeIndex.Kilopascals], pulls);
        Assert.Equal(c.Sustained.Low.Kilonewtons, pulls[0], 1e-9);
        Assert.Equal(c.Sustained.Central.Kilonewtons, pulls[1], 1e-9);
        Assert.Equal(c.Sustained.High.Kilonewtons, pulls[2], 1e-9);
        double[] untouched = [7, 7];
        Assert.Throws<ArgumentOutOfRangeException>(() => c.SustainedAt([900, double.NaN], untouched));
        Assert.Equal([7, 7], untouched);
        Assert.Throws<ArgumentException>(() => c.SustainedAt([900], untouched));
    }
}
