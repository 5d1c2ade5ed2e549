using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>What is on each free end of the worked rig: soft end F0 142.952 kN and 80.917 kJ, stiff end 158.615 kN and 41.897 kJ.</summary>
public class FailureSideTests
{
    private const string Puller = "the puller", Stuck = "the stuck machine";

    private static RigCheck Check(Rig rig) => RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig));

    private static FailureCase Case(RigCheck check, string part, string towards, bool jam = false) => check.Failures.Single(f => f.Part == part && f.Towards == towards && f.Jam is not null == jam);

    // Axle strap of 392.266 kN: soft Z = sqrt(6 x 392266 x 0.862985) = 1425.2 N s/m, 0.7115 x 142952/1425.2 = 71.4 m/s; stiff Z 1645.6, 0.7115 x 158615/1645.6 = 68.6 m/s.
    [Fact]
    public void What_is_left_on_the_casualty_flies_that_way()
    {
        var check = Check(ReferenceRigs.Worked());
        Assert.Equal(["shackle"], Case(check, "shackle", Puller).Hardware);
        var shackle = Case(check, "shackle", Stuck);
        Assert.Equal(["shackle"], shackle.Hardware);
        Assert.Equal(71.4, shackle.SpeedBound.MetersPerSecond, 0.0501);
        Assert.Equal(80.9, shackle.StoredEnergy.Kilojoules, 0.0501);
        // The half of the bridle that stays on the casualty has the shackle on it.
        var bridle = Case(check, "bridle", Stuck);
        Assert.Equal(["shackle"], bridle.Hardware);
        Assert.Equal(71.4, bridle.SpeedBound.MetersPerSecond, 0.0501);
        // Of the axle strap itself a bare stub is left.
        var axle = Case(check, "axle strap", Stuck);
        Assert.Empty(axle.Hardware);
        Assert.Equal(71.4, axle.SpeedBound.MetersPerSecond, 0.0501);
        Assert.DoesNotContain(check.Failures, f => f.Part == "front axle, one side" && f.Towards == Stuck);
    }

    // Nothing behind the shackle: sqrt(2 x 80917/8) = 142.2 m/s, both ways.
    [Fact]
    public void A_shackle_tied_to_nothing_flies_both_ways_with_all_the_energy()
    {
        var worked = ReferenceRigs.Worked();
        var check = Check(new Rig(worked.Drawbar, worked.Parts.Take(3), worked.Casualty).WithWear(1));
        Assert.Equal(142.2, Case(check, "shackle", Puller).SpeedBound.MetersPerSecond, 0.0501);
        var stuck = Case(check, "shackle", Stuck);
        Assert.Equal(142.2, stuck.SpeedBound.MetersPerSecond, 0.0501);
        Assert.Contains("both ways", stuck.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_soft_shackle_behind_the_eye_leaves_nothing_to_throw()
    {
        var worked = ReferenceRigs.Worked();
        var soft = new SoftShackle("soft", Rating.BreakingStrengthTonnes(60));
        Assert.Empty(Case(Check(worked.Replace("shackle", soft)), "soft", Stuck).Hardware);
        var direct = Check(new Rig(worked.Drawbar, [worked.Parts[0], worked.Parts[1], soft], worked.Casualty).WithWear(1));
        Assert.DoesNotContain(direct.Failures, f => f.Part == "soft" && f.Towards == Stuck);
    }

    // Bridle 4 m x 1.29 kg/m = 5.16 kg: 1.02 sqrt(2 x 80917/(20 + 5.16/3)) = 88.0 m/s; with the 14.14 kg of the recovery strap it would be 82.5.
    [Fact]
    public void Steel_between_strap_and_bridle_hangs_on_the_bridle_when_the_strap_parts()
    {
        var worked = ReferenceRigs.Worked();
        var heavy = new Shackle("joiner", Rating.WorkingLoadLimitTonnes(12), Mass.FromKilograms(20), KN(588.399), KN(235.36));
        var check = Check(new Rig(worked.Drawbar, [worked.Parts[0], heavy, .. worked.Parts.Skip(1)], worked.Casualty).WithWear(1));
        Assert.Equal(88.0, Case(check, "recovery strap", Stuck).SpeedBound.MetersPerSecond, 0.0501);
        Assert.Equal(88.0, Case(check, "joiner", Stuck).SpeedBound.MetersPerSecond, 0.0501);
        Assert.Equal(82.5, Case(check, "joiner", Puller).SpeedBound.MetersPerSecond, 0.0501);
    }

    // The whole 158.6 kN on one leg: axle strap 273.0/158.6 = 1.72, bight of the bridle 294.2/158.6 = 1.85. The shackle on the loose part hangs on the bridle: F0/Z = 142952/1359.7 = 105.1 m/s is below 1.02 sqrt(2 x 80917/(8 + 5.16/3)) = 131.6.
    [Fact]
    public void A_bridle_that_jams_in_the_eye_is_a_case_of_its_own_without_a_level()
    {
        var check = Check(ReferenceRigs.Worked());
        var jam = Case(check, "axle strap", Puller, jam: true);
        Assert.Equal(158.6, jam.Jam!.LegLoad.Kilonewtons, 0.0501);
        Assert.Equal("axle strap", jam.Jam.Weakest);
        Assert.Equal(1.72, jam.Jam.Reserve!.Value, 0.00501);
        Assert.Equal(["shackle"], jam.Hardware);
        Assert.Equal(105.1, jam.SpeedBound.MetersPerSecond, 0.0501);
        Assert.Equal("axle strap lets go: shackle, up to 200 m/s towards the puller; the other leg takes 159 kN, its axle strap keeps 1.72", jam.ToString());
        Assert.Equal(["bridle", "shackle", "axle strap", "front axle, one side"], check.Failures.Where(f => f.Jam is not null).Select(f => f.Part));
        Assert.DoesNotContain("jams", Case(check, "axle strap", Puller).Why, StringComparison.Ordinal);
        Assert.DoesNotContain(Check(new Rig(check.Rig.Drawbar, [check.Rig.Parts[0]], check.Rig.Casualty)).Failures, f => f.Jam is not null);
    }

    [Fact]
    public void A_leg_of_unknown_strength_says_so_where_the_bridle_jams()
    {
        var rig = ReferenceRigs.Worked().Replace("axle strap", new Strap("axle strap", Fibre.Polyester, Rating.Unknown(Force.Zero), M(1.2)));
        var jam = Case(Check(rig), "shackle", Puller, jam: true).Jam!;
        Assert.Equal("axle strap", jam.Weakest);
        Assert.Null(jam.Reserve);
        Assert.EndsWith("keeps nobody knows what", jam.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_report_of_a_plan_prints_the_jam()
    {
        var text = string.Join(" ", ReferencePlans.AsFound().Assess().ToReport().Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("jams in the eye instead of running out", text, StringComparison.Ordinal);
        Assert.Contains("There is no accepted level for it.", text, StringComparison.Ordinal);
    }
}
