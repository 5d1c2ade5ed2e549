using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

/// <summary>The taut line in side view and plan, its sag, and what it meets on its way.</summary>
public class GeometryTests
{
    [Theory]
    [CheckRows("lines", "line-angle")]
    public void Angle_and_vertical_part_match(CheckRow row)
    {
        var line = Between(row.Si("L"), row.Si("dh"));
        var forces = line.Forces(N(row.Si("F")));
        row.Matches(("theta", line.Pitch.Radians), ("V", forces.UpOnCasualty.Newtons));
        Assert.Equal(-forces.UpOnCasualty.Newtons, forces.UpOnPuller.Newtons);
        Assert.Equal(row.Si("L"), line.TautLength.Meters, 1e-12);
        Assert.Equal(row.Si("F"), Math.Sqrt(Math.Pow(forces.AlongGround.Newtons, 2) + Math.Pow(forces.UpOnCasualty.Newtons, 2)), 1e-6);
    }

    [Theory]
    [CheckRows("lines", "level-loss")]
    public void The_level_part_that_is_lost_matches(CheckRow row) => row.Matches(("loss", Between(row.Si("L"), row.Si("dh")).Forces(KN(100)).LevelLoss.DecimalFractions));

    [Fact]
    public void The_loss_keeps_its_digits_on_a_flat_line() =>
        // 1 - cos(theta) = s^2/2 + s^4/8 with s = 1e-6.
        Assert.Equal(1, LineOfPullKernel.LevelLoss(1e-5, 10) / (5e-13 + 1.25e-25), 1e-13);

    [Fact]
    public void A_line_in_plan_puts_sideways_forces_on_both_machines()
    {
        // 3-4-5 in plan: the puller stands 8 m ahead and 6 m to the left, the line level.
        var line = new LineOfPull(new SpacePoint(M(8), M(6), M(0.5)), new SpacePoint(M(0), M(0), M(0.5)));
        Assert.Equal(10, line.SpanInPlan.Meters, 1e-12);
        Assert.Equal(36.8698976458, line.Bearing.Degrees, 1e-9);
        var forces = line.Forces(KN(100), Angle.FromDegrees(36.8698976458), Angle.Zero);
        Assert.Equal(80, forces.AlongCasualty.Kilonewtons, 1e-9);
        Assert.Equal(60, forces.LeftOnCasualty.Kilonewtons, 1e-9);
        Assert.Equal(100, forces.AgainstPuller.Kilonewtons, 1e-9);
        Assert.Equal(0, forces.LeftOnPuller.Kilonewtons, 1e-6);
        // A puller that points straight ahead is drawn back and to its right: towards the casualty.
        Assert.Equal(-60, line.Forces(KN(100), Angle.Zero, Angle.Zero).LeftOnPuller.Kilonewtons, 1e-9);
        Assert.Equal(100, line.TensionFor(KN(80), Angle.Zero).Kilonewtons, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => line.TensionFor(KN(80), Angle.FromDegrees(120)));
        Assert.Contains("up", forces.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_higher_end_is_pressed_down_and_the_lower_one_lifted()
    {
        Assert.True(Between(9, 0.4).Forces(KN(200)).UpOnCasualty.Newtons > 0);
        Assert.Equal(0, Between(9, 0).Forces(KN(200)).UpOnCasualty.Newtons);
        Assert.True(Between(9, -0.4).Forces(KN(200)).UpOnPuller.Newtons > 0);
        Assert.Equal("8.889 kN", Between(9, 0.4).Explain(KN(200)).Steps[^1].Value);
    }

    [Property]
    public Property A_longer_line_is_flatter() => Prop.ForAll((from dh in Gen.Choose(-150, 150) from l in Gen.Choose(3, 30) from more in Gen.Choose(1, 30) from y in Gen.Choose(-60, 60) select (dh / 100.0, (double)l, (double)more, y * Math.PI / 180)).ToArbitrary(), x =>
    {
        var (dh, l, more, y) = x;
        var line = new LineOfPull(new SpacePoint(M(l * Math.Cos(y)), M(l * Math.Sin(y)), M(0.5 + dh)), new SpacePoint(M(0), M(0), M(0.5)));
        var longer = line.WithTautLength(M(line.TautLength.Meters + more));
        double v = Math.Abs(line.Forces(KN(100)).UpOnCasualty.Newtons), w = Math.Abs(longer.Forces(KN(100)).UpOnCasualty.Newtons);
        // The same heights and direction; the vertical part goes as 1/L.
        return Math.Abs((w * longer.TautLength.Meters) - (v * line.TautLength.Meters)) < 1e-6 && w <= v && Math.Abs(longer.Bearing.Radians - y) < 1e-9 && Math.Abs(longer.TautLength.Meters - line.TautLength.Meters - more) < 1e-9;
    });

    [Theory]
    [CheckRows("lines", "sag")]
    public void Sag_matches(CheckRow row)
    {
        var sag = new LineSag(PerMetre(row.Si("m_line")), M(row.Si("L")), N(row.Si("H")));
        row.Matches(("parabola", sag.Parabola.Meters), ("catenary", sag.Catenary.Meters), ("rel_excess", sag.CatenaryExcess.DecimalFractions));
        Assert.Equal(sag.Catenary.Meters, sag.DropAt(M(row.Si("L") / 2)).Meters, 1e-12);
        Assert.Equal(Text.With(sag.Catenary.Meters, "m"), sag.Explain().Steps[^1].Value);
    }

    [Theory]
    [CheckRows("lines", "slack-of-sag")]
    public void The_slack_behind_a_sag_matches(CheckRow row) => row.Matches(("parabola", LineSag.ParabolaSlackOf(M(row.Si("L")), M(row.Si("sag"))).Meters), ("catenary", LineSag.SlackOf(M(row.Si("L")), M(row.Si("sag"))).Meters));

    [Property]
    public Property A_catenary_hangs_through_its_anchors_and_a_little_below_the_parabola() => Prop.ForAll((from l in Gen.Choose(2, 60) from h in Gen.Choose(2, 4000) from dh in Gen.Choose(-30, 30) from part in Gen.Choose(1, 99) select ((double)l, h * 50.0, dh / 10.0, part / 100.0)).ToArbitrary(), x =>
    {
        var (l, h, dh, part) = x;
        var a = h / (2 * PhysicalConstants.StandardGravity);
        if (a < l / 4) return true;
        double drop = SagKernel.CatenaryAt(l, a, dh, part * l), parabola = 4 * part * (1 - part) * SagKernel.Parabola(l, a);
        return SagKernel.CatenaryAt(l, a, dh, 0) == 0 && Math.Abs(SagKernel.CatenaryAt(l, a, dh, l)) < 1e-12 * l && drop > 0 && (dh != 0 || drop >= parabola * (1 - 1e-12)) && Math.Abs(SagKernel.CatenaryAt(l, a, -dh, (1 - part) * l) - drop) < 1e-10 * l;
    });

    [Theory]
    [CheckRows("lines", "contact-force")]
    public void The_force_on_an_obstacle_matches(CheckRow row)
    {
        double a = row.Si("a"), b = row.Si("b");
        row.Matches(("N", Between(a + b, 0).ContactForce(N(row.Si("F")), M(row.Si("d")), M(a)).Newtons));
    }

    [Theory]
    [CheckRows("lines", "under-bridle")]
    public void A_bridle_whose_eye_lies_behind_the_tail_matches(CheckRow row)
    {
        double w = row.Si("w"), tail = row.Si("x_tail"), margin = row.Si("margin"), reach = row.Si("reach_axle_strap");
        var way = new UnderMachineLine(M(tail), M(4.9), M(row.Si("z_axle")), M(row.Si("z_eye")), []);
        var bridle = way.BridleLengthFor(M(w), M(margin), M(reach)).Meters;
        double leg = (bridle / 2) + reach, theta = ElasticKernel.RunningBridleAngle(2 * leg, w);
        row.MatchesOne("x_apex", way.ApexBehindAxle(M(leg), M(w)).Meters);
        row.MatchesOne("leg", leg);
        row.MatchesOne("L_b", bridle);
        row.MatchesOne("theta", theta);
        row.MatchesOne("T_over_P", BridleKernel.LegShare(theta));
        row.MatchesList("T_high_over_P", row.SiList("mu").Select(mu => BridleKernel.LegShareHigh(theta, mu)).ToList());
    }

    [Theory]
    [CheckRows("lines", "under-legs")]
    public void Legs_under_the_machine_match(CheckRow row)
    {
        row.MatchesList("y", row.SiList("x").Select(x => UnderMachineKernel.HalfSpacing(row.Si("w"), row.Si("x_apex"), x)).ToList());
        row.MatchesList("z", row.SiList("x").Select(x => UnderMachineKernel.Height(row.Si("z_axle"), row.Si("z_eye"), row.Si("x_apex"), x)).ToList());
    }

    [Theory]
    [CheckRows("lines", "under-belly")]
    public void Legs_beside_a_belly_match(CheckRow row)
    {
        double apex = row.Si("x_apex"), end = row.Si("x_belly_end"), w = row.Si("w");
        var widths = row.SiList("belly_width");
        row.MatchesList("w_min", widths.Select(b => UnderMachineKernel.LeastSpacing(b, apex, end)).ToList());
        var way = new UnderMachineLine(M(8.5), M(4.9), M(0.5), M(0.5), []) { BellyEndBehindAxle = M(end), StrapWidth = M(0.02) };
        var leg = UnderMachineKernel.Leg(apex, w, 0);
        row.MatchesWord("result", string.Join("|", widths.Select(b => Findings(way, leg, w, b, 0).Count == 0 ? "clear" : "fouls")));
        // With the width of the strap the spacing is larger, and at it the legs just pass.
        var least = way.WithStrapWidth(M(0.15)).LeastAnchorSpacing(M(widths[0]), M(apex))!.Value.Meters;
        Assert.Equal((widths[0] + 0.15) / (1 - (end / apex)), least, 1e-12);
        Assert.Null(way.LeastAnchorSpacing(M(0.5), M(end)));
    }

    [Theory]
    [CheckRows("lines", "under-climb")]
    public void The_rise_to_which_a_clear_line_lasts_matches(CheckRow row)
    {
        double za = row.Si("z_axle"), ze = row.Si("z_eye"), apex = row.Si("x_apex"), half = row.Si("half_thickness"), l = row.Si("wheelbase");
        double[] x = row.SiList("x"), under = row.SiList("underside");
        var gaps = x.Zip(under, (s, u) => u - UnderMachineKernel.Height(za, ze, apex, s) - half).ToList();
        row.MatchesList("gap", gaps);
        row.MatchesList("rise", x.Zip(gaps, (s, g) => UnderMachineKernel.RiseToFoul(g, s, l, apex, row.Si("rear_rise"))).ToList());
        // The same by the sweep of a line that ends at the eye.
        var sweep = new LineClearance(M(za), M(apex), M(ze), M(l), x.Zip(under, (s, u) => new UndersidePart("part at " + s, M(s), M(u)))) { FrontRise = M(0.6), Thickness = M(2 * half) }.Sweep();
        row.MatchesOne("rise_stop", sweep.FirstContact!.RiseAtContact!.Value.Meters);
        row.MatchesList("gap", sweep.Obstacles.Select(o => o.First.Meters).ToList());
        row.MatchesList("rise", sweep.Obstacles.Select(o => o.RiseAtContact!.Value.Meters).ToList());
    }

    [Theory]
    [CheckRows("lines", "under-verdict")]
    public void The_verdict_on_the_way_of_the_line_matches(CheckRow row)
    {
        string Level(bool asFound, bool within)
        {
            var sweep = new LineClearance(M(0.5), M(20), M(0.5), M(4.9), [new UndersidePart("rear axle", M(4.9), M(asFound ? 0.5 : within ? 0.6 : 1.5))]) { FrontRise = M(0.4) }.Sweep();
            return sweep.Findings().Select(f => f.Severity).DefaultIfEmpty(Severity.Note).Max() switch { Severity.Stop => "stop", Severity.Caution => "caution", _ => "none" };
        }

        row.MatchesWord("level", string.Join("|", row.Word("fouls_as_found").Split('|').Zip(row.Word("fouls_within_climb").Split('|'), (a, b) => Level(a == "true", b == "true"))));
    }

    [Fact]
    public void A_line_that_is_straight_to_the_drawbar_fouls_sooner_than_one_held_at_the_eye()
    {
        // Gap 0.127895 m under a rear axle at 4.9 m: 0.264 m with the eye held at 9.5 m, 0.127895/(1 - 4.9/21.5) = 0.165647 m straight to a drawbar at 21.5 m.
        var way = new UnderMachineLine(M(8.5), M(4.9), M(0.525), M(0.5), [new UndersidePart("rear axle", M(4.9), M(0.65))]);
        var leg = UnderMachineKernel.Leg(9.5, 1.3, -0.025);
        double Rise(double beyond)
        {
            List<Finding> findings = [];
            way.AddFindings(leg, 1.3, beyond, null, 0.5, findings);
            return findings.Single(f => f.Id == "line.fouls-in-climb").Available!.Value;
        }

        Assert.Equal(0.264130, Rise(0), 1e-6);
        Assert.Equal(0.165647, Rise(12), 1e-6);
        var sweep = new LineClearance(M(0.525), M(21.5), M(0.525 - (0.025 * 21.5 / 9.5)), M(4.9), way.Parts) { FrontRise = M(0.5) }.Sweep();
        Assert.Equal(0.165647, sweep.FirstContact!.RiseAtContact!.Value.Meters, 1e-6);
    }

    [Fact]
    public void Where_the_axles_rise_early_the_rise_at_which_to_stop_is_theirs_and_not_a_share_of_the_way()
    {
        // Rear axle: 0.19 as found, 0.275 lost over the whole rise of 0.5 m: touched at 0.5 x 0.19/0.275 = 0.345455 m; risen after 0.4 of the way, so at 0.4 x 0.690909 = 0.276364 of it.
        var way = new LineClearance(M(0.9), M(20), M(0.5), M(5), [new UndersidePart("rear axle", M(5), M(1.0))]).WithMotion(M(0.5), M(0.1), M(10)).WithThickness(M(0.02)).WithAttachmentBehindAxle(M(0));
        var sweep = (way with { RisenAfter = 0.4 }).Sweep();
        Assert.Equal(0.276364, sweep.FirstContact!.ContactAt!.Value.DecimalFractions, 1e-6);
        Assert.Equal(0.345455, sweep.FirstContact.RiseAtContact!.Value.Meters, 1e-6);
        Assert.Equal(0.345455, Assert.Single(sweep.Findings()).Available!.Value, 1e-6);
    }

    [Fact]
    public void The_sweep_names_the_worst_place_and_what_is_touched_first()
    {
        // A hump lies 14 m off as found; the casualty comes 10 m on, so the hump ends 4 m from the axle.
        var way = new LineClearance(M(0.9), M(20), M(0.5), M(5), [new UndersidePart("rear axle", M(5), M(1.0)), new UndersidePart("chute", M(8), M(1.3))])
            .WithMotion(M(0.5), M(0.1), M(10)).WithGround([new GroundObstacle("bank", M(14), M(0.55)), new GroundObstacle("far kerb", M(40), M(0.3))]).WithThickness(M(0.02)).WithAttachmentBehindAxle(M(0));
        var sweep = way.Sweep();
        Assert.Equal(["rear axle", "chute", "bank"], sweep.Obstacles.Select(o => o.Name));
        // Rear axle: 1.0 - (0.9 - 0.4 x 5/20) - 0.01 = 0.19 as found; the line gains 0.5 x 15/20 = 0.375 and the axle 0.1.
        Assert.Equal(0.19, sweep.Obstacles[0].First.Meters, 1e-12);
        Assert.Equal(-0.085, sweep.Obstacles[0].Least.Meters, 1e-12);
        Assert.Equal(0.5 * 0.19 / 0.275, sweep.Obstacles[0].RiseAtContact!.Value.Meters, 1e-12);
        Assert.Equal("rear axle", sweep.Worst!.Name);
        Assert.Equal("rear axle", sweep.FirstContact!.Name);
        Assert.Equal(1, sweep.Worst.LeastAt.DecimalFractions);
        // 150 kN bent by 0.085 m at 5 and 15 m.
        Assert.Equal(150 * 0.085 * ((1 / 5.0) + (1 / 15.0)), sweep.Worst.ContactForce(KN(150))!.Value.Kilonewtons, 1e-9);
        // The bank: 0.9 - 0.4 x 14/20 - 0.55 - 0.01 = 0.06 as found, clear ever after.
        Assert.Equal(0.06, sweep.Obstacles[2].Least.Meters, 1e-12);
        Assert.Null(sweep.Obstacles[2].ContactAt);
        Assert.Null(sweep.Obstacles[2].ContactForce(KN(150)));
        var finding = Assert.Single(sweep.Findings());
        Assert.Equal("line.fouls-in-climb", finding.Id);
        Assert.Equal(0.5 * 0.19 / 0.275, finding.Available!.Value, 1e-12);
        Assert.Equal(-0.085, sweep.LeastAt(Frac(1))!.Value.Meters, 1e-12);
        Assert.Equal(0.06, sweep.LeastAt(Frac(0))!.Value.Meters, 1e-12);
        Assert.Null(new LineClearance(M(0.5), M(9), M(0.5), M(5), []).Sweep().Worst);
    }

    [Fact]
    public void A_line_that_bears_as_found_stops_the_job()
    {
        var sweep = new LineClearance(M(0.5), M(9), M(0.5), M(5), [new UndersidePart("belly pan", M(3), M(0.4))]).Sweep();
        Assert.True(sweep.Worst!.FoulsAsFound);
        Assert.Equal(["line.fouls"], sweep.Findings().Select(f => f.Id));
        Assert.Throws<ArgumentException>(() => new LineClearance(M(0.5), M(2), M(0.5), M(5), []).WithAttachmentBehindAxle(M(2)).Sweep());
        Assert.Throws<ArgumentOutOfRangeException>(() => new GroundObstacle("bank", M(-1), M(0)));
        Assert.Throws<ArgumentException>(() => new LineOfPull(new SpacePoint(M(0), M(0), M(1)), new SpacePoint(M(0), M(0.05), M(0))));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineSag(PerMetre(2), M(9), N(1)));
    }

    [Property]
    public Property No_sample_lies_below_the_worst_or_touches_before_first_contact() => Prop.ForAll((from za in Gen.Choose(20, 120) from zd in Gen.Choose(0, 150) from d in Gen.Choose(6, 30) from x in Gen.Choose(1, 59) from z in Gen.Choose(0, 150) from h in Gen.Choose(0, 100) from r in Gen.Choose(0, 60) from u in Gen.Choose(0, 200) from ground in Gen.Elements(true, false) select (za / 100.0, zd / 100.0, (double)d, x / 2.0, z / 100.0, h / 100.0, r / 100.0, u / 10.0, ground)).ToArbitrary(), x =>
    {
        var (za, zd, d, at, z, h, r, u, ground) = x;
        var sweep = new LineClearance(M(za), M(d), M(zd), M(4.9), ground ? [] : [new UndersidePart("part", M(at), M(z))]) { Ground = ground ? [new GroundObstacle("bank", M(at), M(z))] : [] }.WithMotion(M(h), M(r), M(u)).Sweep();
        if (sweep.Worst is not { } worst) return true;
        var contact = worst.ContactAt?.DecimalFractions ?? 2;
        for (var i = 0; i <= 200; i++)
        {
            if (worst.At(i / 200.0) is not { } c) continue;
            if (c < worst.Least.Meters - 1e-12 || (i / 200.0 < contact - 1e-9 && c < -1e-12)) return false;
        }

        return (contact <= 1) == worst.Least.Meters <= 0 && Math.Abs(worst.At(worst.LeastAt.DecimalFractions)!.Value - worst.Least.Meters) < 1e-9;
    });

    private static LineOfPull Between(double taut, double dh) => new(new SpacePoint(M(Math.Sqrt((taut * taut) - (dh * dh))), M(0), M(0.5 + dh)), new SpacePoint(M(0), M(0), M(0.5)));

    private static List<Finding> Findings(UnderMachineLine way, double leg, double spacing, double belly, double climb)
    {
        List<Finding> findings = [];
        way.AddFindings(leg, spacing, 0, belly, climb, findings);
        return findings;
    }

    [Fact]
    public void A_hump_met_on_the_level_is_told_by_the_way()
    {
        // The line rises 0.5 m in 20 m; it lies 0.66 m high at 6.4 m, 3.6 m nearer than the hump of 0.65 m stands as found.
        var way = new LineClearance(M(0.5), M(20), M(1.0), M(5), []).WithGround([new GroundObstacle("kerb", M(10), M(0.65))]).WithMotion(M(0), M(0), M(8));
        var finding = Assert.Single(way.Sweep().Findings());
        Assert.Equal("line.meets-ground", finding.Id);
        Assert.Equal(3.6, finding.Available!.Value, 1e-9);
        Assert.Contains("the kerb once the machine has come 3.6 m on; it is to be drawn 8 m", finding.Message, StringComparison.Ordinal);
    }
}
