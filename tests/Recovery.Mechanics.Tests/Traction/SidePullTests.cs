using System;
using System.Linq;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Traction;

public class SidePullTests
{
    [Theory]
    [CheckRows("traction", "side-slope")]
    public void Shares_of_left_and_right_on_a_side_slope(CheckRow row)
    {
        // The loaded side is the downhill one; a positive slope rises to the left, so right is down.
        double Share(double a) => SidePullKernel.LoadedSide(1e5, a, row.Si("h"), row.Si("B"), 0, 0);
        foreach (var name in row.ExpectedNames)
            row.MatchesOne(name, Share(name is "R_left_over_W" or "R_up/W" ? -row.Si("a") : row.Si("a")));
    }

    [Theory]
    [CheckRows("traction", "line-tension")]
    public void Tension_with_its_vertical_and_sideways_parts(CheckRow row)
    {
        var tension = SidePullKernel.Tension(row.Si("demand"), row.Si("pitch"), row.Si("yaw"));
        row.Matches(("tension", tension), ("vertical", SidePullKernel.Vertical(tension, row.Si("pitch"))), ("sideways", SidePullKernel.Sideways(tension, row.Si("pitch"), row.Si("yaw"))));
    }

    [Fact]
    public void A_sideways_line_overturns_where_its_moment_reaches_that_of_half_the_track()
    {
        // W 157 kN, B 2 m, hitch 0.5 m: the unloaded side is empty at F_y = W B/2/0.5 = 314 kN.
        Assert.Equal(1, SidePullKernel.LoadedSide(157e3, 0, 1, 2, 314e3, 0.5), 12);
    }

    [Theory]
    [CheckRows("traction-scipy", "overturn")]
    public void Overturning_by_moments(CheckRow row)
    {
        var tower = Tractors.SixteenTonneTower(hitchHeight: row.Si("h_d"));
        var line = SidePull.Of(tower, Force.FromNewtons(row.Si("T")), Angle.FromRadians(row.Si("pitch")), Angle.FromRadians(row.Si("yaw")), Angle.FromRadians(row.Si("slope")));
        row.Matches(("used", line.Used!.Value), ("lift", line.OverturningTension!.Value.Newtons), ("across", line.Sideways.Newtons));
        Assert.Equal(1, SidePull.Of(tower, line.OverturningTension.Value, Angle.FromRadians(row.Si("pitch")), Angle.FromRadians(row.Si("yaw")), Angle.FromRadians(row.Si("slope"))).Used!.Value, 1e-9);
    }

    /// <summary>Along the machine, by moments of three-dimensional vectors; at the limit the unloaded side is empty.</summary>
    [Theory]
    [CheckRows("traction-scipy", "side-limit")]
    public void Overturning_as_a_limit_of_the_pull(CheckRow row)
    {
        var capability = PullCapability.Estimate(Tractors.SixteenTonneTower(hitchHeight: row.Si("h_d")), Angle.FromRadians(row.Si("pitch")), Angle.FromRadians(row.Si("yaw")));
        var limit = capability.OverturnLimit!.Value;
        row.MatchesOne("P", limit.Newtons);
        Assert.Equal(limit.Newtons, capability.CentralBound.Of(PullLimit.Overturn)!.Value.Newtons, 1e-9);
        var margin = capability.SideMargin(limit);
        Assert.Equal(1, margin.Used!.Value, 1e-9);
        Assert.Equal(limit.Newtons, margin.Along.Newtons, 1e-6);
        Assert.Contains("0.5 B W cos(pitch)", capability.Explain().Steps.Single(s => s.Symbol == "P_side").Expression, System.StringComparison.Ordinal);
    }

    /// <summary>16 t, track 2 m, hitch at 2.5 m, 45 degrees: 157 x 1/2.5 = 62.8 kN along turns it over, less than the 97.1 kN that it grips.</summary>
    [Fact]
    public void A_line_across_the_machine_limits_what_it_sustains()
    {
        static PullCapability At(double yaw, double hitch = 2.5) => PullCapability.Estimate(Tractors.SixteenTonneTower(hitchHeight: hitch), Angle.Zero, Angle.FromDegrees(yaw));
        var across = At(45);
        Assert.Equal(PullLimit.Overturn, across.LimitedBy);
        Assert.Equal(62.8, across.Sustained.Central.Kilonewtons, 1e-6);
        Assert.Equal(1, across.CentralBound.Margin(PullLimit.Overturn)!.Value, 1e-12);
        Assert.Contains(across.Findings, f => f.Id == "pull.overturn" && f.Severity == Recovery.Mechanics.Provenance.Severity.Stop);
        Assert.Contains(across.Findings, f => f.Id == "pull.off-centre");
        var low = At(12, hitch: 0.5);
        Assert.NotEqual(PullLimit.Overturn, low.LimitedBy);
        Assert.Equal(["pull.off-centre"], low.Findings.Where(f => f.Id is "pull.overturn" or "pull.off-centre").Select(f => f.Id));
        var straight = At(0, hitch: 0.5);
        Assert.Null(straight.OverturnLimit);
        Assert.Null(straight.CentralBound.Margin(PullLimit.Overturn));
        Assert.DoesNotContain(straight.Findings, f => f.Id is "pull.overturn" or "pull.off-centre");
        Assert.DoesNotContain(straight.Explain().Steps, s => s.Symbol == "P_side");
        Assert.Equal(PullCapability.Estimate(Tractors.SixteenTonneTower(hitchHeight: 0.5)).Sustained, straight.Sustained);
        Assert.Contains("lineYaw", Assert.Throws<System.ArgumentOutOfRangeException>(() => At(46)).Message, System.StringComparison.Ordinal);
    }

    /// <summary>Further off the centre line and higher hitched it never takes more to turn it over.</summary>
    [Fact]
    public void The_limit_falls_with_the_angle_and_with_the_height_of_the_hitch()
    {
        static double Limit(double yaw, double hitch) => PullCapability.Estimate(Tractors.SixteenTonneTower(hitchHeight: hitch), Angle.Zero, Angle.FromDegrees(yaw)).OverturnLimit!.Value.Newtons;
        for (var yaw = 1; yaw < 45; yaw++)
        {
            Assert.True(Limit(yaw + 1, 0.8) < Limit(yaw, 0.8));
            Assert.True(Limit(yaw, 0.9) < Limit(yaw, 0.8));
        }
    }

    [Fact]
    public void Overturning_and_off_centre_are_said()
    {
        static string[] Ids(double kilonewtons, double yaw, double slope = 0) => [.. SidePull.Of(Tractors.SixteenTonneTower(hitchHeight: 1), ReferenceMachines.KN(kilonewtons), Angle.Zero, Angle.FromDegrees(yaw), Angle.FromDegrees(slope)).Findings.Select(f => f.Id)];
        Assert.Empty(Ids(100, 10));
        Assert.Equal(["pull.off-centre"], Ids(100, -10.1));
        // Track 2.0 m, weight 157 kN: 157 kN across at 1 m height overturns.
        Assert.Equal(["pull.off-centre"], Ids(0.8 * 157 * 0.999, 90));
        Assert.Equal(["pull.overturn", "pull.off-centre"], Ids(0.8 * 157 * 1.001, 90));
        Assert.Null(SidePull.Of(Tractors.SixteenTonneTower(), ReferenceMachines.KN(100), Angle.Zero, Angle.Zero, Angle.Zero).OverturningTension);
        Assert.Contains("upright", SidePull.Of(Tractors.SixteenTonneTower(), ReferenceMachines.KN(100), Angle.Zero, Angle.Zero, Angle.Zero).ToString(), System.StringComparison.Ordinal);
    }
}
