using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Printed and recomputed values of bridles, of the worked rig and of the levels.</summary>
public class LoadPathRowTests
{
    private static readonly int[] PlacesOfTheTable = [0, 1, 2, 3, 5];

    [Theory]
    [CheckRows("rigging-load-path", "fixed-legs")]
    public void Fixed_legs_share_by_their_angles(CheckRow row) => row.Matches(("T1", BridleKernel.FixedFirst(row.Si("P"), row.Si("phi1"), row.Si("phi2"))), ("T2", BridleKernel.FixedFirst(row.Si("P"), row.Si("phi2"), row.Si("phi1"))));

    [Theory]
    [CheckRows("rigging-load-path", "fixed-legs-lean")]
    public void Fixed_equal_legs_share_badly_off_the_line(CheckRow row)
    {
        var legs = Legs(row.Si("w"), row.Si("leg"), row.Si("leg"), row.Si("delta"));
        row.Matches(("T_high_over_P", legs.WorstShare), ("T_low_over_P", Math.Min(legs.FirstShare, legs.SecondShare)));
    }

    [Theory]
    [CheckRows("load-path-scipy", "fixed-legs")]
    public void Fixed_legs_match_two_equations_of_force(CheckRow row)
    {
        var legs = Legs(row.Si("w"), row.Si("L1"), row.Si("L2"), row.Si("lean"));
        row.Matches(("T1_over_P", legs.FirstShare), ("T2_over_P", legs.SecondShare));
        Assert.Contains("share in the first leg", legs.Explain().ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("load-path-scipy", "eye-in-space")]
    public void A_running_eye_lies_nearest_to_its_drawbar(CheckRow row)
    {
        var eye = RunningEye.For(M(row.Si("L")), Point(row, "a"), Point(row, "b"), Point(row, "d"));
        row.Matches(("ex", eye.Eye.X.Meters), ("ey", eye.Eye.Y.Meters), ("ez", eye.Eye.Z.Meters), ("r1", eye.FirstLeg.Meters), ("r2", eye.SecondLeg.Meters), ("theta", eye.IncludedAngle.Radians), ("T_over_P", eye.LegShare));
        // The same from the graph, unstretched.
        var graph = new RigGraph(
            [RigNode.Anchor(Axle("left"), Point(row, "a")), RigNode.Anchor(Axle("right"), Point(row, "b")), RigNode.Joint("eye"), RigNode.Puller(Drawbar("drawbar"), Point(row, "d"), RigPull.Held(KN(116)))],
            [RigLink.Running(Polyester("bridle", row.Si("L")), "left", ["eye"], "right"), RigLink.Between(Nylon("strap", 9), "eye", "drawbar")]);
        var forces = graph.Solve(RigLoadLevel.Steady, StretchState.Unstretched);
        row.MatchesOne("ex", forces.At("eye").X.Meters);
        row.MatchesOne("T_over_P", forces.Of("bridle").Greatest.Newtons / 116e3);
        Assert.Contains("included angle", eye.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("load-path-scipy", "eye-with-friction")]
    public void With_friction_the_eye_moves_to_where_its_forces_balance(CheckRow row)
    {
        var graph = new RigGraph(
            [RigNode.Anchor(Axle("left"), At(0, row.Si("w") / 2, 0.5)), RigNode.Anchor(Axle("right"), At(0, -row.Si("w") / 2, 0.5)), RigNode.Joint("eye"), RigNode.Puller(Drawbar("drawbar"), At(row.Si("D"), 0, 0.5), RigPull.Held(KN(116)))],
            [RigLink.Running(Polyester("bridle", row.Si("L")), "left", ["eye"], "right"), RigLink.Between(Nylon("strap", 9), "eye", "drawbar")]);
        Assert.Equal(0.30, row.Si("mu"));
        var forces = graph.SolveWithFriction(RigLoadLevel.Steady, StretchState.Unstretched, "bridle", true);
        row.Matches(("aside", Math.Abs(forces.At("eye").Y.Meters)), ("T_high_over_P", forces.Of("bridle").Segments[0].Magnitude.Newtons / 116e3), ("T_low_over_P", forces.Of("bridle").Segments[1].Magnitude.Newtons / 116e3));
    }

    [Theory]
    [CheckRows("load-path-scipy", "ring")]
    public void A_ring_between_stretching_straps_and_two_pullers_rests_where_its_forces_balance(CheckRow row)
    {
        double[] length = row.SiList("L"), stiff = row.SiList("EA"), pull = row.SiList("P");
        List<RigNode> nodes = [RigNode.Joint("ring", new SoftShackle("ring shackle", Rating.BreakingStrengthTonnes(90)))];
        List<RigLink> links = [];
        for (var i = 0; i < 3; i++)
        {
            nodes.Add(RigNode.Anchor(Axle("anchor " + i), Point(row, "a" + i)));
            var line = new ElasticLine(M(length[i]), Force.FromNewtons(stiff[i]), Force.FromNewtons(stiff[i]), LinearDensity.FromKilogramsPerMeter(1), LineMaterial.NylonWebbing.Source);
            links.Add(RigLink.Between(new Strap("strap " + i, Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(length[i])) { Measured = line }, "anchor " + i, "ring"));
        }

        for (var i = 0; i < 2; i++)
        {
            nodes.Add(RigNode.Puller(Drawbar("tractor " + i), Point(row, "d" + i), RigPull.Held(Force.FromNewtons(pull[i]))));
            links.Add(RigLink.Between(Nylon("line " + i, 9), "ring", "tractor " + i));
        }

        var forces = new RigGraph(nodes, links).Solve(RigLoadLevel.Procedure, StretchState.Soft);
        var at = forces.At("ring");
        row.Matches(("rx", at.X.Meters), ("ry", at.Y.Meters), ("rz", at.Z.Meters), ("T0", forces.Parts[0].Greatest.Newtons), ("T1", forces.Parts[1].Greatest.Newtons), ("T2", forces.Parts[2].Greatest.Newtons));
    }

    [Theory]
    [CheckRows("rigging-load-path", "bridle-gate")]
    public void Gates_of_the_included_angle(CheckRow row)
    {
        var bridle = Bridle.FreeRunning(Polyester("bridle", BridleKernel.LengthFor(1.9, row.Si("theta"))), M(1.9));
        row.MatchesWord("gate", Gate(bridle));
        if (Gate(bridle) == "explicit_acceptance") Assert.Contains("rig.bridle-accepted", Ids(bridle.WithWideAngleAccepted(true)));
        if (Gate(bridle) == "refuse") Assert.Contains("rig.bridle-too-wide", Ids(bridle.WithWideAngleAccepted(true)));
    }

    [Theory]
    [CheckRows("rigging-load-path", "bridle-length")]
    public void A_wanted_angle_gives_the_strap(CheckRow row) => row.Matches(("L", Bridle.LengthFor(M(row.Si("w")), Angle.FromRadians(row.Si("theta"))).Meters));

    [Theory]
    [CheckRows("rigging-load-path", "bridle-capacity")]
    public void Capacity_is_the_inverse_of_the_load_factor(CheckRow row) => row.Matches(("sin_alpha", 0.5 / BridleKernel.LegShare(Math.PI - (2 * row.Si("alpha")))));

    [Theory]
    [CheckRows("rigging-load-path", "bridle-load-factors")]
    public void Load_factors_exactly(CheckRow row) => row.MatchesList("LF", Array.ConvertAll(row.SiList("alpha"), a => 2 * BridleKernel.LegShare(Math.PI - (2 * a))));

    [Theory]
    [CheckRows("rigging-load-path", "bridle-symmetric-force")]
    public void Leg_and_inward_force(CheckRow row) => row.Matches(("T", row.Si("P") * BridleKernel.LegShare(row.Si("theta"))), ("H", row.Si("P") * BridleKernel.Inward(row.Si("theta"))));

    [Theory]
    [CheckRows("rigging-load-path", "bridle-two-leg")]
    public void A_printed_example_of_two_legs(CheckRow row) => row.Matches(("T", row.Si("P") * BridleKernel.LegShare(Math.PI - (2 * row.Si("alpha")))));

    [Theory]
    [CheckRows("rigging-load-path", "bridle-angles")]
    public void One_geometry_has_four_names(CheckRow row)
    {
        var theta = Math.PI - (2 * row.Si("alpha"));
        row.Matches(("beta", theta / 2), ("theta", theta), ("LF", 2 * BridleKernel.LegShare(theta)));
    }

    [Theory]
    [CheckRows("rigging-load-path", "bridle-triangle")]
    public void Legs_as_long_as_the_spacing_open_to_sixty(CheckRow row) => row.Matches(("theta", BridleKernel.IncludedAngle(row.Si("w"), 2 * row.Si("leg"))));

    [Theory]
    [CheckRows("rigging-load-path", "eye-friction-parallel", "eye-friction-angle")]
    public void A_published_share_is_a_friction(CheckRow row)
    {
        double[] ratio = row.SiList("ratio"), theta = row.SiList("theta");
        row.MatchesList("mu", Enumerable.Range(0, Math.Max(ratio.Length, theta.Length)).Select(i => BridleKernel.FrictionOf(ratio[Math.Min(i, ratio.Length - 1)], theta[Math.Min(i, theta.Length - 1)])).ToList());
    }

    [Theory]
    [CheckRows("rigging-load-path", "eye-share")]
    public void Share_from_the_ratio_and_from_the_friction(CheckRow row) => row.Matches(
        ("T_high_over_P_ratio", BridleKernel.LegShareHigh(row.Si("theta"), BridleKernel.FrictionOf(row.Si("ratio"), row.Si("theta")))), ("T_high_over_P_mu", BridleKernel.LegShareHigh(row.Si("theta"), row.Si("mu"))));

    [Theory]
    [CheckRows("rigging-load-path", "rig-shares")]
    public void Shares_of_the_worked_bridle(CheckRow row)
    {
        var bridle = ReferenceRigs.Worked().Bridle!;
        row.MatchesOne("theta", bridle.IncludedAngle.Radians);
        row.MatchesOne("T_over_P", bridle.LegShare);
        row.MatchesList("T_high_over_P", Array.ConvertAll(row.SiList("mu"), mu => BridleKernel.LegShareHigh(bridle.IncludedRadians, mu)));
        row.MatchesOne("H_high_over_P", bridle.InwardShareWithFriction);
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-strength")]
    public void Strengths_of_the_worked_rig(CheckRow row) => row.MatchesList("R", Six(p => p.Strength!.Value.Newtons));

    [Theory]
    [CheckRows("rigging-load-path", "rig-rated")]
    public void Rated_check_of_the_worked_rig(CheckRow row) => row.MatchesList("utilisation", Six(p => p.RatedUtilisation!.Value));

    [Theory]
    [CheckRows("rigging-load-path", "rig-reserve")]
    public void Reserves_of_the_worked_rig(CheckRow row)
    {
        var loads = Worked().Loads;
        Force[] known = [loads.ProcedurePeak, loads.SecondPull, loads.Careless, loads.SecondPullCareless];
        Assert.Contains(known, f => Math.Abs(f.Newtons - row.Si("F")) < 1e-7 * row.Si("F"));
        row.MatchesList("R_over_F", Six(p => p.Strength!.Value.Newtons / (p.Share * row.Si("F"))));
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-full")]
    public void Full_factors_of_the_worked_rig(CheckRow row) => row.MatchesList("utilisation", Six(p => p.PeakUtilisation!.Value));

    [Theory]
    [CheckRows("rigging-load-path", "rig-admissible")]
    public void Admissible_pulls_of_the_worked_rig(CheckRow row)
    {
        row.MatchesList("F_rated", Six(p => p.AdmissibleRated!.Value.Newtons));
        row.MatchesList("F_partial", Six(p => p.AdmissibleFull!.Value.Newtons));
        row.MatchesList("F_floor", Six(p => p.PartingPull!.Value.Newtons / row.Si("floor")));
        row.MatchesList("F_1.5", Six(p => p.AdmissibleCareless!.Value.Newtons));
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-admissible-bight")]
    public void Admissible_pulls_of_the_bights(CheckRow row) => row.MatchesList("F_1.25", [Worked().Parts[1].AdmissibleFloor!.Value.Newtons, Worked().Parts[3].AdmissibleFloor!.Value.Newtons]);

    [Theory]
    [CheckRows("rigging-load-path", "rig-admissible-shackle")]
    public void Admissible_pulls_of_the_shackle(CheckRow row) => row.Matches(("F_rated", Worked().Parts[4].AdmissibleRated!.Value.Newtons), ("F_peak", Worked().Parts[4].AdmissibleFull!.Value.Newtons));

    [Theory]
    [CheckRows("rigging-load-path", "rig-remedy-strap")]
    public void Least_strap_with_its_own_stiffness(CheckRow row)
    {
        var needed = Worked().BreakingStrengthForFullFactors("recovery strap")!.Value.Newtons;
        row.MatchesOne("MBS_partial", needed);
        row.MatchesOne("MBS_partial_t", needed);
        row.MatchesOne("MBS_rated", row.Si("P") * row.Si("DF") / row.Si("k_wet"));
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-stronger-strap")]
    public void A_stronger_strap_as_worked(CheckRow row)
    {
        var check = Worked(strap: 90);
        var strap = check.Parts[0];
        row.Matches(("F_procedure", check.Loads.ProcedurePeak.Newtons), ("R", strap.Strength!.Value.Newtons), ("R_over_F", strap.Reserve!.Value), ("utilisation_rated", strap.RatedUtilisation!.Value), ("R_over_F_eye", check.Parts[1].Reserve!.Value));
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-remedy-axle-strap")]
    public void Least_axle_strap_under_the_stronger_strap(CheckRow row)
    {
        var check = Worked(strap: 90);
        row.MatchesOne("MBS_partial", check.BreakingStrengthForFullFactors("axle strap")!.Value.Newtons);
        row.MatchesOne("MBS_floor", check.BreakingStrengthForFloor("axle strap")!.Value.Newtons);
        row.MatchesOne("MBS_rated", 392266 * check.Parts[5].RatedUtilisation!.Value);
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-attachments")]
    public void Loads_at_the_attachments(CheckRow row)
    {
        AttachmentLoad drawbar = Worked().DrawbarLoad, axle = Worked().CasualtyLoad;
        row.MatchesList("drawbar", [drawbar.Steady.Newtons, drawbar.Procedure.Newtons, drawbar.Careless.Newtons]);
        row.MatchesList("axle_end", [axle.Steady.Newtons, axle.Procedure.Newtons, axle.Careless.Newtons]);
        row.MatchesList("inward", [axle.InwardSteady.Newtons, axle.InwardProcedure.Newtons, axle.InwardCareless.Newtons]);
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-choke")]
    public void A_choke_holds_its_own_strap_on_strap(CheckRow row) => row.Matches(("k_section", Worked().Parts[5].Strength!.Value.Newtons / 392266));

    [Theory]
    [CheckRows("rigging-load-path", "rig-leg")]
    public void A_leg_meets_the_straight_capacity_once(CheckRow row) => row.Matches(("allowable", Worked().Parts[2].RatedAllowable!.Value.Newtons), ("utilisation", Worked().Parts[2].RatedUtilisation!.Value));

    [Theory]
    [CheckRows("rigging-load-path", "rig-second-pull")]
    public void The_gear_that_lifts_the_stop_of_a_second_pull(CheckRow row)
    {
        var check = Worked(secondPull: true);
        row.MatchesOne("v_t", check.GearSpeedAtFloor()!.Value.MetersPerSecond);
        row.MatchesList("R_over_F", PlacesOfTheTable.Select(i => check.Parts[i].Strength!.Value.Newtons / (check.Parts[i].Share * row.Si("F"))).ToList());
    }

    [Theory]
    [CheckRows("rigging-load-path", "attachment-level")]
    public void An_attachment_against_its_numbers(CheckRow row)
    {
        var point = new AttachmentPoint("axle end", AttachmentKind.FrontAxle, true) { WorkingLoad = Force.FromNewtons(row.Si("working")), Yield = Force.FromNewtons(row.Si("yield")) };
        var load = new AttachmentLoad(point, (row.Si("F_steady"), row.Si("F_procedure"), 0), default);
        row.MatchesOne("steady_over_working", load.WorkingUtilisation!.Value);
        row.MatchesOne("procedure_over_yield", load.YieldUtilisation!.Value);
        var findings = new List<Finding>();
        load.AddFindings(findings);
        row.MatchesWord("level", findings.Count == 0 ? "pass" : findings[0].Id);
    }

    [Theory]
    [CheckRows("rigging-load-path", "level-peak", "level-bight-figure")]
    public void Levels_of_the_peak_check(CheckRow row) => row.MatchesWord("level", string.Join("|", row.SiList("R_over_F").Select((r, i) => Level(PlaceKind.Strap, r, row.Si("sf"), row.SiList("utilisation_rated")[Math.Min(i, row.SiList("utilisation_rated").Length - 1)], 9))));

    [Theory]
    [CheckRows("rigging-load-path", "level-bight")]
    public void Levels_of_a_bight(CheckRow row) => row.MatchesWord("level", string.Join("|", row.SiList("R_over_F_half").Select(r => Level(PlaceKind.Bight, r, 4.225, 0.5, 9))));

    [Theory]
    [CheckRows("rigging-load-path", "level-careless")]
    public void Levels_of_the_careless_load(CheckRow row) => row.MatchesWord("level", string.Join("|", row.SiList("R_over_F").Select(r => Level(PlaceKind.Strap, 9, 4.225, 0.5, r) is "pass" ? "note" : "caution")));

    [Theory]
    [CheckRows("rigging-load-path", "level-second-pull")]
    public void Levels_of_a_second_pull(CheckRow row)
    {
        Assert.Equal("false|true", row.Word("second_pull_declared"));
        var open = Place(PlaceKind.Strap, 9, 4.225, 0.5, 9, row.SiList("R_over_F")[0], out var places, out var outcomes, out var loads);
        RigStrengthFindings.Add(places, outcomes, loads, _ => Provenance.Phrase.Name("part"), true, open);
        row.MatchesWord("level", Worst(open) + "|" + Level(PlaceKind.Strap, row.SiList("R_over_F")[1], 4.225, 0.5, 9));
    }

    [Theory]
    [CheckRows("rigging-load-path", "level-margin")]
    public void A_pass_within_a_tenth_says_so(CheckRow row)
    {
        row.MatchesList("margin", row.SiList("R_over_F").Select(r => (r / row.Si("limit")) - 1).ToList());
        row.MatchesWord("says_so", string.Join("|", row.SiList("R_over_F").Select(r =>
        {
            var findings = Place(PlaceKind.Strap, r, 4.225, 0.5, 9, 9, out var places, out var outcomes, out var loads);
            RigStrengthFindings.Add(places, outcomes, loads, _ => Provenance.Phrase.Name("part"), false, findings);
            return findings.Any(f => f.Id == "rig.within-ten-percent") ? "true" : "false";
        })));
    }

    [Fact]
    public void A_strap_that_reaches_past_its_drawbar_is_refused()
    {
        RigPoint a = At(0, -1, 0.5), b = At(0, 1, 0.5);
        Assert.Contains("reaches past the drawbar", Assert.Throws<ArgumentException>(() => RunningEye.For(M(8), a, b, At(2, 0, 0.5))).Message, StringComparison.Ordinal);
        Assert.Contains("must be longer", Assert.Throws<ArgumentException>(() => RunningEye.For(M(2), a, b, At(9, 0, 0.5))).Message, StringComparison.Ordinal);
        Assert.Contains("in line with both anchors", Assert.Throws<ArgumentException>(() => RunningEye.For(M(4), a, b, At(0, 9, 0.5))).Message, StringComparison.Ordinal);
        Assert.Contains("make no triangle", Assert.Throws<ArgumentException>(() => Legs(3, 1, 1.5, 0)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_eye_measured_says_how_far_it_opens()
    {
        // 50 mm in an eye of 168.969262 mm: 20 degrees (geometry of a soft eye, worked by hand).
        var bridle = Bridle.FreeRunning(Polyester("bridle", 8), M(1.9)).WithEye(M(0.168969262), M(0.05));
        Assert.Equal(20, bridle.EyeOpening!.Value.Degrees, 1e-5);
        Assert.Contains("rig.eye-opens-wide", Ids(bridle.WithEye(M(0.168), M(0.05))));
        Assert.DoesNotContain("rig.eye-opens-wide", Ids(bridle.WithEye(M(0.170), M(0.05))));
        Assert.Contains("rig.bridle-near-gate", Ids(bridle.WithEye(M(0.170), M(0.05))));
        Assert.Contains("rig.bridle-wears", Ids(bridle));
    }

    [Fact]
    public void Stiff_legs_of_unequal_length_differ_by_their_stiffness()
    {
        // Polyester 60 t at EA/MBS 8: EA 4707.192 kN, 2 m, 10 mm: 23.53596 kN.
        Assert.Equal(23.53596, Legs(2, 2, 2, 0).DifferenceOf(M(0.01))!.Value.Kilonewtons, 1e-6);
    }

    private static RigCheck Worked(bool chokeKnown = true, bool? secondPull = null, double strap = 60)
    {
        var rig = ReferenceRigs.Worked(strap, chokeKnown: chokeKnown);
        return RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig, secondPull));
    }

    /// <summary>The five places of the worked table and the axle strap whose angle nobody looked at.</summary>
    private static List<double> Six(Func<PartCheck, double> of)
    {
        var check = Worked();
        return [.. PlacesOfTheTable.Select(i => of(check.Parts[i])), of(Worked(chokeKnown: false).Parts[5])];
    }

    private static string Level(PlaceKind kind, double reserve, double full, double rated, double careless)
    {
        var findings = Place(kind, reserve, full, rated, careless, 9, out var places, out var outcomes, out var loads);
        RigStrengthFindings.Add(places, outcomes, loads, _ => Provenance.Phrase.Name("part"), false, findings);
        return Worst(findings);
    }

    private static string Worst(List<Finding> findings) => findings.Max(f => f.Severity) switch { Severity.Stop => "stop", Severity.Caution => "caution", _ => "pass" };

    private static List<Finding> Place(PlaceKind kind, double reserve, double full, double rated, double careless, double second, out RigPlace[] places, out RigOutcome[] outcomes, out LineLoadOutput loads)
    {
        places = [new RigPlace { Kind = kind, Strength = 1, Share = 1, Rated = 1, Full = full, Floor = kind == PlaceKind.Bight ? 1.25 : 2.3, PeakLimit = double.NaN }];
        loads = new LineLoadOutput { Steady = rated, Procedure = 1 / reserve, Careless = 1 / careless, SecondProcedure = 1 / second };
        outcomes = new RigOutcome[1];
        RigKernel.Evaluate(places, loads, outcomes);
        return [];
    }

    private static string Gate(Bridle bridle)
    {
        var ids = Ids(bridle);
        return ids.Contains("rig.bridle-too-wide") ? "refuse" : ids.Contains("rig.bridle-not-accepted") ? "explicit_acceptance" : ids.Contains("rig.bridle-wide") ? "caution" : "pass";
    }

    private static List<string> Ids(Bridle bridle)
    {
        var findings = new List<Finding>();
        BridleInspection.Add(bridle, findings);
        return findings.Select(f => f.Id).ToList();
    }

    private static FixedLegs Legs(double w, double first, double second, double lean) => new(Polyester("first leg", first), Polyester("second leg", second), M(w), Angle.FromRadians(lean));

    private static Strap Polyester(string name, double length) => new(name, Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(length));

    private static Strap Nylon(string name, double length) => new(name, Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(length));

    private static AttachmentPoint Axle(string name) => new(name, AttachmentKind.FrontAxle, true);

    private static AttachmentPoint Drawbar(string name) => new(name, AttachmentKind.Drawbar, true);

    private static RigPoint Point(CheckRow row, string name) => At(row.Si(name + "x"), row.Si(name + "y"), row.Si(name + "z"));

    private static RigPoint At(double x, double y, double z) => new(M(x), M(y), M(z));
}
