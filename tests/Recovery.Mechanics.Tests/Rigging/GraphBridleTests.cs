using System;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceGraphs;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>What is said of a bridle must not depend on whether the rig was written as a list or as a graph.</summary>
public class GraphBridleTests
{
    private static Strap Leg(string name, double metres) => new(name, Fibre.Polyester, Rating.BreakingStrengthTonnes(90), M(metres));

    // Two anchors 1.9 m apart, a puller far out on their middle line; the strap of L = 1.9/sin(theta/2).
    private static RigGraphCheck Bridled(double degrees, bool accepted = false, RigPart? joiner = null, double? eye = null) => new RigGraph(
        [
            RigNode.Anchor(Axle("left"), At(0, 0.95, 0.5)), RigNode.Anchor(Axle("right"), At(0, -0.95, 0.5)), RigNode.Joint("eye", joiner),
            RigNode.Puller(Drawbar("drawbar"), At(40, 0, 0.5), RigPull.Held(KN(100))),
        ],
        [
            RigLink.Running(Leg("bridle", 1.9 / Math.Sin(degrees / 2 * Math.PI / 180)), "left", ["eye"], "right").WithWideAngleAccepted(accepted).WithEye(eye is { } l ? M(l) : null, eye is null ? null : M(0.04)),
            RigLink.Between(new Strap("strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(90), M(9)), "eye", "drawbar"),
        ]).Check(DesignFactorPolicy.SlowPull, 1);

    [Theory]
    [InlineData(130, false, "rig.bridle-too-wide", Severity.Stop)]
    [InlineData(130, true, "rig.bridle-too-wide", Severity.Stop)]
    [InlineData(100, false, "rig.bridle-not-accepted", Severity.Stop)]
    [InlineData(100, true, "rig.bridle-accepted", Severity.Caution)]
    [InlineData(70, false, "rig.bridle-wide", Severity.Caution)]
    [InlineData(58, false, "rig.bridle-near-gate", Severity.Note)]
    public void The_gates_hold_in_a_graph(double degrees, bool accepted, string id, Severity severity)
    {
        var check = Bridled(degrees, accepted);
        var finding = check.Findings().Single(f => f.Id == id && f.Subject == "bridle");
        Assert.Equal(severity, finding.Severity);
        Assert.Equal(degrees, check.IncludedRadians(0)!.Value * 180 / Math.PI, 1e-6);
        Assert.Null(check.IncludedRadians(1));
    }

    [Fact]
    public void No_second_path_and_wear_are_said_in_a_graph()
    {
        var ids = Bridled(30).Findings().Where(f => f.Subject == "bridle").Select(f => f.Id).ToList();
        Assert.Contains("rig.bridle-no-redundancy", ids);
        Assert.Contains("rig.bridle-wears", ids);
        Assert.DoesNotContain(ids, id => id is "rig.bridle-wide" or "rig.bridle-near-gate");
        // A block is made for any angle, and what it does to the line is said of the block.
        Assert.DoesNotContain(Bridled(130, false, new SnatchBlock("block", Rating.WorkingLoadLimitTonnes(25, 4), Mass.FromKilograms(20))).Findings(), f => f.Id.StartsWith("rig.bridle", StringComparison.Ordinal));
    }

    [Fact]
    public void An_accepted_angle_stays_accepted_when_another_part_is_put_in()
    {
        var graph = Bridled(100, true).Graph.Replace("bridle", Leg("stronger bridle", 2.48));
        Assert.True(graph.Links[0].WideAngleAccepted);
    }

    [Fact]
    public void Anchors_of_a_graph_are_squeezed_as_statics_says()
    {
        // Two legs as long as their anchors are apart: 60 deg, tan(30 deg)/2 = 0.288675 of the pull. Stretched they are narrower.
        var legs = new RigGraph(
            [
                RigNode.Anchor(Axle("left"), At(0, 0.95, 0.5)), RigNode.Anchor(Axle("right"), At(0, -0.95, 0.5)), RigNode.Joint("ring", new SoftShackle("soft", Rating.BreakingStrengthTonnes(90))),
                RigNode.Puller(Drawbar("drawbar"), At(40, 0, 0.5), RigPull.Held(KN(100))),
            ],
            [RigLink.Between(Leg("one", 1.9), "left", "ring"), RigLink.Between(Leg("two", 1.9), "right", "ring"), RigLink.Between(Leg("strap", 9), "ring", "drawbar")]).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.All(legs.Attachments.Where(a => a.Point.Name != "drawbar"), a => Assert.Equal(28.8675, a.InwardSteady.Kilonewtons, 1e-3));
        Assert.Equal(0, legs.Attachments.Single(a => a.Point.Name == "drawbar").InwardSteady.Newtons);
        // With friction in the eye the harder leg squeezes more than that.
        Assert.All(Bridled(60).Attachments.Where(a => a.Point.Name != "drawbar"), a => Assert.True(a.InwardSteady.Kilonewtons > 28.8675));
        // Through a block nobody is tied to anybody.
        Assert.All(Bridled(60, false, new SnatchBlock("block", Rating.WorkingLoadLimitTonnes(25, 4), Mass.FromKilograms(20))).Attachments, a => Assert.Equal(0, a.InwardSteady.Newtons));
    }

    [Fact]
    public void Steel_is_not_said_to_stay_where_nobody_knows_what_is_stored()
    {
        var check = Worked().Replace("bridle", new Strap("bridle", Fibre.Polyester, Rating.Unknown(KN(600)), M(4))).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Empty(check.Failures);
        Assert.Equal(["shackle left", "shackle right"], check.SteelOnFreeEnds);
        Assert.Equal(2, check.Findings().Count(f => f.Id == "rig.steel-on-free-end" && f.Available is null));
    }

    [Fact]
    public void What_is_taken_of_chain_and_wire_rope_is_listed()
    {
        var chained = Worked().Replace("axle strap left", new Chain("axle chain left", ChainGrade.Unmarked, Length.FromMillimeters(16), M(1.2)));
        Assert.Contains("assume.chain-grade", chained.Check(DesignFactorPolicy.SlowPull, 1).Assumptions.Select(a => a.Id));
        var wired = Worked().Replace("axle strap left", new WireRope("axle rope left", Rating.BreakingStrength(KN(300)), Length.FromMillimeters(20), WireCore.Wire, M(1.2)));
        Assert.Single(wired.Check(DesignFactorPolicy.SlowPull, 1).Assumptions, a => a.Id == "assume.rope-end");
    }

    [Fact]
    public void A_shackle_is_asked_for_what_its_check_asks_whatever_the_wear()
    {
        var check = Worked().Check(DesignFactorPolicy.SlowPull, 1.2);
        var need = GearChoice.For(check).Single(n => n.Part == "shackle left");
        // 2.3, to which wear is not multiplied for a shackle: its peak limit is a third of its breaking load.
        Assert.Equal(2.3 * need.Peak.Newtons, need.BreakingForFloor!.Value.Newtons, 1e-6 * need.Peak.Newtons);
        Assert.Equal(3 * need.Peak.Newtons, need.LeastBreaking!.Value.Newtons, 1e-6 * need.Peak.Newtons);
    }

    [Theory]
    [InlineData(0.2, 0.25)]
    [InlineData(0.1, 0.25)]
    [InlineData(0.1, 0.1)]
    public void An_eye_that_its_bight_fills_is_opened_flat(double eye, double bight)
    {
        var bridle = Bridle.FreeRunning(Leg("bridle", 8), M(1.9)).WithEye(M(eye), M(bight));
        Assert.Equal(180, bridle.EyeOpening!.Value.Degrees, 1e-9);
        var findings = new System.Collections.Generic.List<Finding>();
        BridleInspection.Add(bridle, findings);
        Assert.Contains(findings, f => f.Id == "rig.eye-opens-wide");
    }

    // 2 asin(r/(l - r)): 40 mm of bight in 250 mm, r 20 mm: 2 asin(20/230) = 9.98 deg; in 130 mm 2 asin(20/110) = 20.95 deg; in 140 mm 2 asin(20/120) = 19.19 deg, less than a tenth below 20.
    [Theory]
    [InlineData(250, false, false)]
    [InlineData(140, false, true)]
    [InlineData(130, true, false)]
    public void The_eye_is_measured_in_a_list_and_in_a_graph_alike(double eyeMillimetres, bool wide, bool near)
    {
        var bridle = Bridle.FreeRunning(Leg("bridle", 8), M(1.9)).WithEye(M(eyeMillimetres / 1000), M(0.04));
        var list = new System.Collections.Generic.List<Finding>();
        BridleInspection.Add(bridle, list);
        var check = Bridled(2 * Math.Asin(1.9 / 8) * 180 / Math.PI, eye: eyeMillimetres / 1000);
        foreach (var findings in new[] { list, check.Findings() })
        {
            Assert.Equal(wide, findings.Any(f => f.Id == "rig.eye-opens-wide" && f.Subject == "bridle"));
            Assert.Equal(near, findings.Any(f => f.Id == "rig.bridle-near-gate" && f.Subject == "bight of the bridle in its eye"));
        }

        var link = check.Graph.Replace("bridle", Leg("longer bridle", 9)).Links[0];
        Assert.Equal(bridle.EyeOpening!.Value.Degrees, link.EyeOpening!.Value.Degrees, 1e-12);
    }

    [Fact]
    public void An_eye_that_nobody_measured_is_not_judged()
    {
        Assert.Null(Bridled(40).Graph.Links[0].EyeOpening);
        Assert.Null(Bridled(40).Graph.Links[0].WithEye(M(0.3), null).EyeOpening);
        Assert.DoesNotContain(Bridled(40).Findings(), f => f.Id == "rig.eye-opens-wide");
        Assert.Contains("runs through no eye", Assert.Throws<InvalidOperationException>(() => Bridled(40).Graph.Links[1].WithEye(M(0.3), M(0.04))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Bridled(40).Graph.Links[0].WithEye(M(0.04), M(0.04)));
    }

    [Fact]
    public void Wear_and_twist_of_a_graph_are_multiplied()
    {
        // 2.3 x 1.1 x 1.2 = 3.036; polyester 1.3 x 1.3 x 1.65 x 1.1 x 1.2 = 3.68082.
        var check = Worked().Check(DesignFactorPolicy.SlowPull, 1.1, 1.2);
        var leg = check.Parts.Single(p => p.Part.Name == "bridle" && p.Kind == PlaceKind.Strap);
        Assert.Equal(3.036, leg.Floor, 1e-12);
        Assert.Equal(3.68082, leg.FullFactors!.Value, 1e-12);
        Assert.Equal(1.2, check.WithStrength("bridle", KN(700)).TwistFactor);
        Assert.Throws<ArgumentOutOfRangeException>(() => Worked().Check(DesignFactorPolicy.SlowPull, 1.1, 0.9));
    }

    [Fact]
    public void A_null_in_a_graph_is_refused_with_words()
    {
        var graph = Worked();
        Assert.Contains("nodes must not hold a null", Assert.Throws<ArgumentException>(() => new RigGraph([.. graph.Nodes, null!], graph.Links)).Message, StringComparison.Ordinal);
        Assert.Contains("links must not hold a null", Assert.Throws<ArgumentException>(() => new RigGraph(graph.Nodes, [.. graph.Links, null!])).Message, StringComparison.Ordinal);
    }
}
