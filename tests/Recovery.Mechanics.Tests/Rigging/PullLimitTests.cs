using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>What a whole rig admits, steady and peak apart. Worked rig: 60 t nylon of 9 m, k 5 x 588.399 kN/9 m = 326.8883 kN/m, puller 116 kN and 18 t: sqrt(k m) = 76.7072 kN s/m, bedded in sqrt(2) times that, 108.4803.</summary>
public class PullLimitTests
{
    [Fact]
    public void The_admissible_pull_is_steady_and_its_own_peak_meets_the_full_factors()
    {
        // Strap 500.1392/4.225 = 118.3761 kN; gear of 2 km/h: 118.37613 - 0.5555556 x 76.70717 = 75.7610 kN, under the rated 76.7 kN of the axle straps. Second pull: 118.3761 - 0.5555556 x 108.4803 = 58.1093 kN.
        var check = Check(Gear(2));
        Assert.Equal(75.7610, check.AdmissiblePull!.Value.Kilonewtons, 0.0005);
        Assert.Equal(118.3761, check.AdmissiblePeak!.Value.Kilonewtons, 0.0005);
        Assert.Equal(58.1093, check.AdmissibleSecondPull!.Value.Kilonewtons, 0.0005);
        Assert.Equal(58.1093, Check(Gear(2).WithSecondPull(true)).AdmissiblePull!.Value.Kilonewtons, 0.0005);
    }

    [Fact]
    public void In_a_gear_that_adds_little_the_rated_check_governs()
    {
        // Axle straps: 392.266 x 0.696/5/0.711266 = 76.77 kN steady (printed 76.7 with the share rounded); 0.5 km/h adds 0.1388889 x 76.7072 = 10.6538 kN.
        var check = Check(Gear(0.5));
        Assert.Equal(check.Parts[5].AdmissibleRated!.Value.Kilonewtons, check.AdmissiblePull!.Value.Kilonewtons, 1e-9);
        Assert.Equal(check.AdmissiblePull!.Value.Kilonewtons + 10.6538, check.AdmissiblePeak!.Value.Kilonewtons, 0.0005);
    }

    [Fact]
    public void On_a_held_anchor_the_pull_follows_from_its_energy()
    {
        // F^2 - 2 F P = 2 k P s + k m v^2 with F 118.3761 kN, s 0.1 m, v 0.5 m/s: k m v^2 = 76.7072^2 x 0.25 = 1470.998 kN^2;
        // P = (14012.90 - 1470.998)/(2 x (118.3761 + 326.8883 x 0.1)) = 12541.91/302.1299 = 41.5116 kN.
        var check = Check(new PullProcedure { Slack = M(0.1), ApproachSpeed = Speed.FromMetersPerSecond(0.5) });
        Assert.Equal(41.5116, check.AdmissiblePull!.Value.Kilonewtons, 0.001);
    }

    [Fact]
    public void A_throttle_divides_what_the_full_factors_allow()
    {
        // Longest T: soft end 2 x 588.399/9 = 130.7553 kN/m, 2 pi sqrt(18/130.7553) = 2.331237 s; t_r 5 s: 1 + 2.331237/(5 pi) = 1.148411; 118.3761/1.148411 = 103.078 kN is above the rated check.
        // t_r 0.5 s: the factor is 2 at the most: 118.3761/2 = 59.18807 kN.
        Assert.Equal(59.18807, Check(PullProcedure.Undeclared.WithThrottleRise(Duration.FromSeconds(0.5)).WithSlack(Length.Zero)).AdmissiblePull!.Value.Kilonewtons, 0.0005);
        var slow = Check(PullProcedure.Undeclared.WithThrottleRise(Duration.FromSeconds(5)).WithSlack(Length.Zero));
        Assert.Equal(slow.AdmissiblePull!.Value.Kilonewtons * 1.148411, slow.AdmissiblePeak!.Value.Kilonewtons, 0.001);
    }

    [Theory]
    // 118.3761/76.7072 = 1.543221 m/s is 5.555596 km/h: from there on the gear alone uses up the full factors.
    [InlineData(5.5555, true)]
    [InlineData(5.5557, false)]
    public void Where_the_take_up_alone_is_too_much_no_pull_is_admitted(double gear, bool some)
    {
        var check = Check(Gear(gear));
        Assert.Equal(some, check.AdmissiblePull!.Value.Newtons > 0);
        if (!some) Assert.Equal(0, check.AdmissiblePull!.Value.Newtons);
    }

    [Fact]
    public void Every_level_has_its_load_its_stretch_and_its_gear_on_the_worse_pull()
    {
        var levels = Check(Gear(2)).Levels;
        Assert.Equal([RigLevelKind.Rated, RigLevelKind.FullFactors, RigLevelKind.Floor], levels.Select(l => l.Kind));
        Assert.Equal(["axle strap", "recovery strap", "axle strap"], levels.Select(l => l.Place));
        // Printed admissible pulls of the worked example: 76.7, 118.4, 166.8 kN.
        Assert.Equal([76.7, 118.4, 166.8], levels.Select(l => Math.Round(l.LineLoad.Kilonewtons, 1)));
        // Gears: none for the rated check; (118.3761 - 116)/108.4803 = 0.021904 m/s; the printed gear that lifts the stop of a second pull, 1.687 km/h.
        Assert.Null(levels[0].Gear);
        Assert.Equal(0.021904, levels[1].Gear!.Value.MetersPerSecond, 2e-6);
        Assert.Equal(1.687, levels[2].Gear!.Value.KilometersPerHour, 0.001);
        // Stretch of the full factors: 118.3761/(2 x 326.8883) = 0.181065 m to 118.3761/130.7553 = 0.905325 m.
        Assert.Equal(0.181065, levels[1].Stretch.Least.Meters, 1e-6);
        Assert.Equal(0.905325, levels[1].Stretch.Greatest.Meters, 1e-6);
        // A first pull, declared: 118.3761/326.8883 = 0.362130 m and (118.3761 - 116)/76.7072 = 0.030977 m/s.
        var first = Check(Gear(2).WithSecondPull(false)).Levels[1];
        Assert.Equal(0.362130, first.Stretch.Least.Meters, 1e-6);
        Assert.Equal(0.030977, first.Gear!.Value.MetersPerSecond, 2e-6);
    }

    [Fact]
    public void In_the_gear_of_a_level_neither_a_first_nor_a_second_pull_goes_below_it()
    {
        var floor = Check(Gear(1)).GearSpeedAtFloor()!.Value;
        var check = Check(PullProcedure.DrawnTautInGear(floor));
        Assert.Equal(2.3, check.Parts[5].SecondPullReserve!.Value, 1e-9);
        Assert.All(check.Parts, p => Assert.True(p.Reserve >= p.Floor && p.SecondPullReserve >= p.Floor * (1 - 1e-12)));
        Assert.Equal(floor.MetersPerSecond, check.Levels[2].Gear!.Value.MetersPerSecond, 1e-12);
    }

    [Fact]
    public void A_gear_whose_rule_is_not_claimed_is_not_offered()
    {
        var check = Check(Gear(2).WithGearConditions(new LockedGearConditions { EngagedBeforeTaut = true }));
        Assert.Null(check.GearSpeedAtFloor());
        Assert.Null(check.GearSpeedAtFullFactors());
        Assert.All(check.Levels, l => Assert.Null(l.Gear));
    }

    [Theory]
    // Nylon of 9 m, bedded in: 60 t 2 x 326.888 = 653.8 kN/m, under 654; 130 t 2 x 708.258 kN/m, above it.
    [InlineData(60, false, true)]
    [InlineData(130, false, false)]
    [InlineData(130, true, true)]
    public void On_a_stiff_line_a_gear_is_offered_only_where_the_line_is_declared_free_of_slack(double tonnes, bool taut, bool offered)
    {
        var rig = ReferenceRigs.Worked(tonnes, 80);
        var procedure = new PullProcedure { LockedGear = Speed.FromKilometersPerHour(2), Slack = taut ? Length.Zero : null };
        var check = RigCheck.Of(rig, DesignFactorPolicy.SlowPull, LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), rig.Line!, procedure));
        Assert.Equal(offered, check.GearSpeedAtFloor() is not null);
        Assert.Equal(offered, check.Levels[2].Gear is not null);
    }

    [Fact]
    public void A_level_that_needs_an_unknown_number_is_left_out()
    {
        var rig = ReferenceRigs.Worked().Replace("shackle", new Shackle("shackle", Rating.BreakingStrengthTonnes(60), Mass.FromKilograms(8)));
        var levels = RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig)).Levels;
        Assert.Equal([RigLevelKind.FullFactors, RigLevelKind.Floor], levels.Select(l => l.Kind));
    }

    private static PullProcedure Gear(double kilometresPerHour) => PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(kilometresPerHour));

    private static RigCheck Check(PullProcedure procedure)
    {
        var rig = ReferenceRigs.Worked();
        return RigCheck.Of(rig, DesignFactorPolicy.SlowPull, LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), rig.Line!, procedure));
    }
}
