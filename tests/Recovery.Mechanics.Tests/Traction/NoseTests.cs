using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class NoseTests
{
    [Theory]
    [CheckRows("traction", "nose-load")]
    public void Front_axle_load_while_the_line_is_loaded(CheckRow row)
    {
        double moment = row.Si("W_f") * row.Si("L"), force = row.Si("F"), behind = row.Si("a", 0);
        var height = NoseKernel.LineHeight(row.Si("h_d"), behind, force > 0 ? Math.Atan(row.Si("V", 0) / force) : 0);
        row.Matches(
            ("front_load", NoseKernel.FrontLoad(moment, row.Si("L"), height, row.Si("h_cg"), row.Si("T"), force)),
            ("ratio", NoseKernel.Ratio(moment, height, row.Si("h_cg"), row.Si("T"), force)));
    }

    [Theory]
    [CheckRows("traction", "nose-lift")]
    public void Pull_at_which_the_front_lifts(CheckRow row)
    {
        var moment = row.Si("W_f") * row.Si("L");
        row.Matches(
            ("T_start", NoseKernel.Lift(moment, 0, row.Si("h_cg"))),
            ("P_steady", NoseKernel.Lift(moment, row.Si("h_d"), 0)),
            ("P_nose", NoseKernel.Lift(moment, row.Si("h_d"), row.Si("h_cg"))));
    }

    [Theory]
    [CheckRows("traction", "nose-on-grade")]
    public void On_a_grade_the_moment_is_that_of_the_grade(CheckRow row)
    {
        var weight = row.Si("W") / 1000;
        var machine = Tractors.SixteenTonnes(weight * row.Si("x_cg") / 3, weight * (3 - row.Si("x_cg")) / 3, row.Si("h_cg"));
        var flat = CapabilityFlat.From(new TowingMachine(machine, Soil.FromConeIndex(KPa(900), Frac(1)), M(-3), M(row.Si("h_d"))) { Grade = Grade.FromRatio(Frac(row.Si("grade"))) }, 0);
        row.Matches(
            ("W_f_grade", flat.NoseMoment / 3),
            ("front_load", NoseKernel.FrontLoad(flat.NoseMoment, 3, flat.LineHeight, flat.CentreHeight, row.Si("T"), row.Si("F"))),
            ("ratio", NoseKernel.Ratio(flat.NoseMoment, flat.LineHeight, flat.CentreHeight, row.Si("T"), row.Si("F"))));
        Assert.Equal(flat.NoseMoment / 3, flat.Load[0], 1e-6);
    }

    /// <summary>tan(10 deg)/cos(30 deg) = 0.176327/0.866025 = 0.203605: 20.36 kN down for 100 kN along, 17.63 without the yaw. Hitch 0.9 m behind the trailing axle, 0.5 m high: 0.5 + 0.9 x 0.203605 = 0.683244 m.</summary>
    [Fact]
    public void A_line_that_falls_and_slants_presses_with_its_whole_tension()
    {
        var flat = CapabilityFlat.From(ReferencePlans.Tractor(18), 10 * Math.PI / 180, 30 * Math.PI / 180);
        Assert.Equal(0.203605, flat.DownPerPull, 5e-7);
        Assert.Equal(0.203605, flat.LoadPerPull.Sum(), 5e-7);
        Assert.Equal(0.683244, flat.LineHeight, 5e-7);
        Assert.Equal(0.176327, CapabilityFlat.From(ReferencePlans.Tractor(18), 10 * Math.PI / 180).DownPerPull, 5e-7);
        var site = ReferencePlans.Site() with { LinePitch = Angle.FromDegrees(10), LineYaw = Angle.FromDegrees(30) };
        var capability = ReferencePlans.AsFound().With(site).Assess().Capability;
        double Sum(double pull) => capability.AxleLoadsWhilePulling(KN(pull)).Sum(f => f.Kilonewtons);
        Assert.Equal(20.36, Sum(100) - Sum(0), 0.005);
    }

    [Theory]
    [CheckRows("traction", "hitch-rule")]
    public void The_hitch_rule_is_the_caution_of_the_steady_formula(CheckRow row) =>
        row.Matches(("P", NoseKernel.Caution * NoseKernel.Lift(row.Si("Wf") * row.Si("L"), row.Si("H"), 0)));

    [Theory]
    [CheckRows("traction", "tractor-quasi-static")]
    public void A_steady_line_that_falls(CheckRow row)
    {
        // The line falls by dh over its length L: sin(theta) = dh/L.
        double theta = Math.Asin(row.Si("dh") / row.Si("L")), height = NoseKernel.LineHeight(row.Si("hd"), row.Si("d"), theta), wheelbase = row.Si("B");
        var front = row.Has("m") ? row.Printed("m") * Tractors.G * row.Si("front_share") : 1e5;
        var moment = front * wheelbase;
        if (row.ExpectedNames.Contains("F_rear"))
        {
            row.Matches(("F_rear", NoseKernel.Lift(moment, height, 0) / Math.Cos(theta)));
            return;
        }

        double along = row.Si("F") * Math.Cos(theta), loss = NoseKernel.Ratio(moment, height, 0, along, along) * front;
        if (row.ExpectedNames.Contains("rear_gain")) row.Matches(("front_loss", loss), ("rear_gain", loss + (row.Si("F") * Math.Sin(theta))));
        else row.MatchesOne("front_loss", loss);
    }

    [Theory]
    [CheckRows("traction", "tractor-nose")]
    public void The_nose_from_standing_start_to_careless_peak(CheckRow row)
    {
        double theta = Math.Asin(row.Si("dh") / row.Si("L")), height = NoseKernel.LineHeight(row.Si("hd"), row.Si("d"), theta), wheelbase = row.Si("B"), moment = row.Si("Wf") * wheelbase;
        var loads = row.SiList("F").Select(f => NoseKernel.FrontLoad(moment, wheelbase, height, row.Si("h_cg"), row.Si("T"), f * Math.Cos(theta))).ToArray();
        row.MatchesList("N_f", loads);
        row.MatchesWord("F_worst", loads[0] < loads[^1] ? "start" : "peak");
    }

    [Theory]
    [CheckRows("traction", "tractor-nose-grade")]
    public void Two_ways_to_count_a_grade_give_one_load(CheckRow row)
    {
        double theta = Math.Atan(row.Si("grade")), wheelbase = row.Si("B"), h = row.Si("h_cg"), level = row.Si("Wf") * wheelbase;
        var moment = (level * Math.Cos(theta)) - (row.Si("W") * h * Math.Sin(theta));
        var net = row.Si("T") - (row.Si("W") * Math.Sin(theta));
        row.Matches(
            ("N_f", NoseKernel.FrontLoad(moment, wheelbase, row.Si("hd"), h, net, row.Si("F"))),
            ("Wf_on_grade", moment / wheelbase),
            ("T_net", net));
        row.MatchesOne("N_f", NoseKernel.FrontLoad(level * Math.Cos(theta), wheelbase, row.Si("hd"), h, row.Si("T"), row.Si("F")));
    }

    [Theory]
    [CheckRows("traction", "tractor-nose-lift")]
    public void Lift_and_share_used(CheckRow row)
    {
        double moment = row.Si("Wf") * row.Si("B"), hd = row.Si("hd"), h = row.Si("h_cg"), p = row.Si("P");
        row.Matches(
            ("T_start", NoseKernel.Lift(moment, 0, h)), ("F_steady", NoseKernel.Lift(moment, hd, 0)),
            ("loss_start", NoseKernel.Ratio(moment, hd, h, p, 0)), ("loss_steady", NoseKernel.Ratio(moment, hd, h, p, p)));
    }

    [Theory]
    [CheckRows("traction", "tractor-nose-peak-lift")]
    public void A_hitch_above_the_centre_lifts_the_nose_at_a_peak(CheckRow row) =>
        row.Matches(("F", NoseKernel.LiftAtPeak(row.Si("Wf") * row.Si("B"), row.Si("hd"), row.Si("h_cg"), row.Si("P"))));

    [Theory]
    [CheckRows("traction", "tractor-effective-height")]
    public void A_falling_line_can_stand_above_the_centre(CheckRow row)
    {
        double[] heights = row.SiList("hd").Zip(row.SiList("theta"), (hd, theta) => NoseKernel.LineHeight(hd, row.Si("d"), theta)).ToArray();
        row.MatchesList("h_e", heights);
        row.MatchesWord("worst", string.Join('|', heights.Select(h => double.IsInfinity(NoseKernel.LiftAtPeak(1e5, h, row.Si("h_cg"), 0)) ? "start" : "peak")));
    }

    [Theory]
    [CheckRows("traction", "tractor-nose-peak")]
    public void A_peak_presses_the_nose_of_a_low_hitch_down(CheckRow row)
    {
        double theta = Math.Asin(row.Si("dh") / row.Si("L")), wheelbase = row.Si("B"), front = row.Printed("m") * Tractors.G * row.Si("front_share");
        row.Matches(("N_f", NoseKernel.FrontLoad(front * wheelbase, wheelbase, NoseKernel.LineHeight(row.Si("hd"), row.Si("d"), theta), row.Si("h_cg"), row.Si("T"), row.Si("F") * Math.Cos(theta))));
    }

    [Theory]
    [CheckRows("traction", "nose-gate")]
    public void Gates_on_the_share_lost(CheckRow row) =>
        row.MatchesWord("gate", string.Join('|', row.SiList("loss").Select(l => NoseMargin.Judge(l) switch { null => "pass", Recovery.Mechanics.Provenance.Severity.Stop => "stop", _ => "caution" })));

    [Fact]
    public void Raises_lift_and_light_nose_and_neither()
    {
        string[] Ids(double frontKn, double hitch) => PullCapability.Estimate(new TowingMachine(Tractors.SixteenTonnes(frontKn, 94.2), Soil.FromConeIndex(KPa(1800), Frac(0.8)), M(-3.9), M(hitch)) { HitchRating = KN(500) }).Findings.Select(f => f.Id).ToArray();
        Assert.Contains("pull.nose-lift", Ids(30, 0.5));
        Assert.Contains("pull.nose-light", Ids(42, 0.5));
        Assert.Empty(Ids(62.8, 0.5));
    }
}
