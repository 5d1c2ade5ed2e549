using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceGraphs;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Rigs of any arrangement: forces in space, what each part carries, what flies.</summary>
public class RigGraphTests
{
    // Ten thousand rigs: forces at every joint, added up here from the vectors that come out, and the law of every strap that is no puller's.
    [Property(MaxTest = 10000)]
    public Property Forces_balance_at_every_joint_of_ten_thousand_rigs() => Prop.ForAll(Any.ToArbitrary(), graph =>
    {
        var forces = graph.Solve(RigLoadLevel.Steady, StretchState.Stiff);
        var pull = forces.TotalPull.Newtons;
        foreach (var node in graph.Nodes.Where(n => n.Kind == RigNodeKind.Joint)) Assert.True(Sum(forces, node.Name) < 1e-10 * pull, node.Name + " of " + graph);
        foreach (var part in forces.Parts.Where(p => graph.Nodes.All(n => n.Kind != RigNodeKind.Puller || !p.Link.Nodes.Contains(n.Name))))
        {
            var length = part.Link.Nodes.Zip(part.Link.Nodes.Skip(1), (a, b) => Distance(forces, a, b)).Sum();
            var line = part.Link.Part.Elastic!;
            var tension = Math.Max(0, (length - line.LengthMetres) / line.LengthMetres * line.StiffNewtons);
            Assert.True(Math.Abs(tension - part.Greatest.Newtons) < 1e-6 * pull, part + " of " + graph);
        }
    });

    [Property(MaxTest = 1000)]
    public Property Forces_balance_with_friction_and_without_stretch() => Prop.ForAll(Any.ToArbitrary(), graph =>
    {
        List<RigGraphForces> all = [graph.Solve(RigLoadLevel.Steady, StretchState.Soft)];
        if (all[0].IsDeterminate) all.Add(graph.Solve(RigLoadLevel.Steady, StretchState.Unstretched));
        foreach (var link in graph.Links.Where(l => l.Runs))
        {
            foreach (var first in (bool[])[true, false])
            {
                var forces = graph.SolveWithFriction(RigLoadLevel.Steady, StretchState.Stiff, link.Part.Name, first);
                all.Add(forces);
                var segments = forces.Of(link.Part.Name).Segments;
                Assert.Equal(first, segments[0].Magnitude > segments[^1].Magnitude);
            }
        }

        foreach (var forces in all)
        {
            foreach (var node in graph.Nodes.Where(n => n.Kind == RigNodeKind.Joint)) Assert.True(Sum(forces, node.Name) < 1e-10 * forces.TotalPull.Newtons, node.Name + " " + forces.Stretch + " of " + graph);
            // What the pullers draw arrives at the anchors, whatever lies between.
            var whole = graph.Nodes.Where(n => n.Kind != RigNodeKind.Joint).Select(n => forces.On(n.Name).Newtons).Aggregate(default(Vector3), (a, b) => a + b);
            Assert.True(whole.Length < 1e-9 * forces.TotalPull.Newtons);
        }
    });

    // Up to 120 deg, beyond which a bridle is refused; a nearly flat one (beyond about 175 deg) is relieved by friction and the statement does not hold.
    [Property(MaxTest = 1000)]
    public Property The_worst_leg_carries_at_least_half_the_pull() => Prop.ForAll((from w in Gen.Choose(40, 300) from ratio in Gen.Choose(116, 900) from y in Gen.Choose(-1200, 1200) select (w / 100.0, ratio / 100.0, y / 100.0)).ToArbitrary(), x =>
    {
        var (w, ratio, y) = x;
        var eye = RunningEye.For(M(w * ratio), At(0, -w / 2, 0.5), At(0, w / 2, 0.5), At(60, y, 0.5));
        return eye.LegShare >= 0.5 && eye.LegShareHigh >= eye.LegShare - 1e-12 && eye.LegShareLow <= eye.LegShare + 1e-12;
    });

    [Fact]
    public void The_worked_rig_comes_out_of_the_graph()
    {
        // Unstretched, so that the included angle is that of the worked example but for the axle straps, which let the legs toe in: their ends draw together, and the angle falls.
        var forces = Worked().Solve(RigLoadLevel.Steady, StretchState.Unstretched);
        Assert.Equal(116, forces.Of("recovery strap").Greatest.Kilonewtons, 1e-6);
        var share = forces.Of("bridle").Greatest.Newtons / 116e3;
        Assert.InRange(share, 0.5, 0.528701057);
        // Straps of 1.2 m in line with their legs: 2 asin(1.3/6.4) = 23.44 deg and 1/(2 cos(11.72 deg)) = 0.51064.
        Assert.Equal(0.51064, share, 1e-5);
        Assert.Equal(0, forces.On("axle left").Newtons.Y + forces.On("axle right").Newtons.Y, 1e-3);
        Assert.Equal(116, (forces.On("axle left").Newtons + forces.On("axle right").Newtons).X / 1000, 1e-6);
        Assert.Contains("bridle: 59.23 kN", forces.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_block_doubles_the_pull_and_its_hook_carries_both_parts()
    {
        var graph = Block();
        var check = graph.Check(DesignFactorPolicy.SlowPull, 1);
        // Parallel parts, no friction: twice the line; at an efficiency of 0.90 the part behind the sheave has the line over 0.90 at the worst.
        Assert.Equal(100, graph.Solve(RigLoadLevel.Steady, StretchState.Unstretched).Of("strap").Greatest.Kilonewtons, 0.2);
        Assert.Equal((1 + (1 / 0.90)) * 50, check.Parts.Single(p => p.Part.Name == "strap").Steady.Kilonewtons, 0.2);
        Assert.Equal(check.Parts.Single(p => p.Part.Name == "strap").Steady.Newtons, check.Parts.Single(p => p.Part.Name == "snatch block").Steady.Newtons, 1);
        Assert.Equal(50 / 0.90, check.Attachments.Single(a => a.Point.Name == "ground anchor").Steady.Kilonewtons, 0.01);
    }

    [Fact]
    public void The_check_takes_the_worst_end_of_every_band()
    {
        var check = Worked().Check(DesignFactorPolicy.SlowPull, 1);
        var leg = check.Parts.Single(p => p.Part.Name == "bridle" && p.Kind == PlaceKind.Strap);
        // 0.70667 unstretched (recomputed with SciPy, see the row of the eye with friction); the stretched legs are a little narrower and wrap more.
        Assert.Equal(0.70667, leg.Share, 0.0002);
        Assert.Contains("bridle, bight in the eye (0.5)", check.Parts.Select(p => p.Name));
        Assert.Contains("recovery strap, eye on the bight (0.5)", check.Parts.Select(p => p.Name));
        Assert.Equal(leg.Share, check.Parts.Single(p => p.Part.Name == "shackle left").Share, 1e-9);
        Assert.True(check.Residual < 1e-10);
        // By reserve over what is asked: the axle straps, 273.0 kN over a leg of 112 kN against 2.3.
        Assert.Contains("weakest: axle strap", check.ToString(), StringComparison.Ordinal);
        Assert.Equal(3, check.Attachments.Count);
        Assert.True(check.Forces.Residual < 1e-10);
    }

    [Fact]
    public void What_was_assumed_is_listed()
    {
        var graph = Worked().Replace("axle strap left", new Strap("axle strap left", Fibre.Polyester, Rating.BreakingStrengthTonnes(40), M(1.2)) { Choked = true });
        var open = graph.Check(DesignFactorPolicy.SlowPull);
        Assert.Equal(["assume.wear", "assume.angle-of-choke", "assume.bight", "assume.strap-stretch"], open.Assumptions.Select(a => a.Id));
        Assert.Equal(2.76, open.Parts[0].Floor, 1e-12);
        Assert.Null(open.DeclaredWear);
        Assert.Equal(["assume.bight", "assume.strap-stretch"], Worked().Check(DesignFactorPolicy.SlowPull, 1).Assumptions.Select(a => a.Id));
        Assert.Throws<ArgumentOutOfRangeException>(() => graph.Check(DesignFactorPolicy.SlowPull, 2));
    }

    [Fact]
    public void A_weak_link_moves_the_failure()
    {
        var check = Worked().Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Equal("recovery strap, eye on the bight (0.5)", check.PartingOrder[0].Name);
        var moved = check.WithStrength("axle strap left", KN(150));
        Assert.Equal("axle strap left", moved.PartingOrder[0].Name);
        Assert.Contains(moved.Failures, f => f.Part == "axle strap left" && f.Hardware.Contains("shackle left"));
        Assert.Throws<ArgumentException>(() => check.WithStrength("shackle left", KN(150)));
    }

    [Fact]
    public void What_flies_follows_from_the_graph()
    {
        var check = Worked().Check(DesignFactorPolicy.SlowPull, 1);
        // A parted recovery strap: bridle and shackles stay between two anchors, nothing but line on either end.
        Assert.All(check.Failures.Where(f => f.Part == "recovery strap"), f => Assert.Empty(f.Hardware));
        Assert.Contains(check.Failures, f => f.Part == "recovery strap" && f.Towards == "drawbar");
        // An axle strap: the bridle runs out through the eye with the shackle, towards the puller; the other shackle hangs on the other axle strap.
        var axle = check.Failures.Where(f => f.Part == "axle strap left").ToList();
        var out_ = axle.Single(f => f.Why.Contains("runs out", StringComparison.Ordinal));
        Assert.Equal(["shackle left"], out_.Hardware);
        Assert.Equal("drawbar", out_.Towards);
        Assert.Equal(Math.Sqrt(2 * out_.StoredEnergy.Joules / 8), out_.SpeedBound.MetersPerSecond, 1e-6);
        Assert.Contains(axle, f => f.Towards == "axle right" && f.Hardware.Single() == "shackle right");
        // An attachment leaves a piece of itself on the line.
        Assert.Contains(check.Failures, f => f.Part == "drawbar" && f.Hardware.Contains("torn-off piece of the drawbar") && !f.MassIsComplete);
        Assert.Equal(["shackle left", "torn-off piece of the axle left"], check.Failures.Single(f => f.Part == "axle left" && f.Towards == "drawbar" && f.Hardware.Count > 0).Hardware);
    }

    // As in the list: the whole 158.6 kN on one leg, axle strap 273.0/158.6 = 1.72, bight of the bridle 294.2/158.6 = 1.85.
    [Theory]
    [InlineData("bridle")]
    [InlineData("shackle left")]
    [InlineData("axle strap right")]
    [InlineData("axle left")]
    public void A_bridle_that_jams_in_the_eye_is_worked_with_the_rest_of_the_rig(string part)
    {
        var check = Worked().Check(DesignFactorPolicy.SlowPull, 1);
        var jam = check.Failures.Single(f => f.Part == part && f.Jam is not null).Jam!;
        Assert.Equal(158.6, jam.LegLoad.Kilonewtons, 0.0501);
        Assert.StartsWith("axle strap", jam.Weakest, StringComparison.Ordinal);
        Assert.Equal(1.72, jam.Reserve!.Value, 0.00501);
        if (part == "shackle left" || part == "axle left") Assert.Equal("axle strap right", jam.Weakest);
        var strong = Worked().Replace("axle strap right", AxleStrap("axle strap right") with { Rating = Rating.BreakingStrengthTonnes(90) }).Check(DesignFactorPolicy.SlowPull, 1);
        var of = strong.Failures.Single(f => f.Part == "axle left" && f.Jam is not null).Jam!;
        Assert.Equal("bridle", of.Weakest);
        Assert.Equal(1.85, of.Reserve!.Value, 0.00501);
    }

    [Fact]
    public void What_does_not_run_through_an_eye_jams_in_none()
    {
        var check = Worked().Check(DesignFactorPolicy.SlowPull, 1);
        Assert.All(check.Failures.Where(f => f.Part is "recovery strap" or "drawbar"), f => Assert.Null(f.Jam));
        Assert.All(check.Failures.Where(f => f.Jam is not null), f => Assert.Contains("if it jams there", f.Why, StringComparison.Ordinal));
        // Of a strap whose breaking strength is not known nobody knows the stretch, nor what is stored.
        var unknown = Worked().Replace("axle strap right", AxleStrap("axle strap right") with { Rating = Rating.WorkingLoadLimitTonnes(10) }).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Empty(unknown.Failures);
    }

    [Fact]
    public void A_shackle_in_the_middle_is_found_and_the_better_arrangement_flies_no_steel()
    {
        var bad = Worked(joiner: Shackle("joiner")).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Contains("joiner", bad.SteelOnFreeEnds);
        Assert.Contains(bad.Failures, f => f.Part == "recovery strap" && f.Hardware.Contains("joiner"));
        var ids = bad.Findings().Select(f => f.Id).ToList();
        Assert.Contains("line.metal-joiner", ids);
        Assert.Contains("rig.steel-on-free-end", ids);
        var better = bad.BetterArrangement!.Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Empty(better.SteelOnFreeEnds);
        Assert.DoesNotContain("line.metal-joiner", better.Findings().Select(f => f.Id));
        Assert.Null(better.BetterArrangement);
        // Without a joiner the bridle runs in the eye of the strap, and that bight is a place of its own.
        Assert.DoesNotContain("joiner", bad.Graph.Replace("joiner", null).Check(DesignFactorPolicy.SlowPull, 1).SteelOnFreeEnds);
    }

    [Fact]
    public void A_strap_of_unknown_strength_is_a_stop_and_nothing_is_said_of_what_flies()
    {
        var check = Worked().Replace("bridle", new Strap("bridle", Fibre.Polyester, Rating.Unknown(KN(600)), M(4))).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Equal("rig.rating-basis-unknown", check.Findings()[0].Id);
        Assert.Empty(check.Failures);
        Assert.NotNull(check.Weakest);
    }

    [Fact]
    public void Two_straps_side_by_side_share_by_their_stiffness_and_the_shorter_takes_more()
    {
        RigGraph Two(double second) => new(
            [RigNode.Anchor(Axle("left"), At(0, 0.1, 0.5)), RigNode.Anchor(Axle("right"), At(0, -0.1, 0.5)), RigNode.Joint("ring", new SoftShackle("soft", Rating.BreakingStrengthTonnes(90))), RigNode.Puller(Drawbar("drawbar"), At(30, 0, 0.5), RigPull.Held(KN(100)))],
            [RigLink.Between(new Strap("one", Fibre.Hmpe, Rating.BreakingStrengthTonnes(60), M(6)), "left", "ring"), RigLink.Between(new Strap("two", Fibre.Hmpe, Rating.BreakingStrengthTonnes(60), M(second)), "right", "ring"), RigLink.Between(new Strap("line", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9)), "ring", "drawbar")]);
        var equal = Two(6).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Equal(0.5, equal.Parts.Single(p => p.Part.Name == "one").Share, 0.001);
        // 3 cm longer: (EA/L) x 0.03 = 250 kN at the stiff end, more than the pull: the shorter one takes all.
        Assert.Equal(1, Two(6.03).Solve(RigLoadLevel.Steady, StretchState.Stiff).Of("one").Greatest.Kilonewtons / 100, 0.002);
    }

    [Theory]
    [InlineData("Two nodes are named")]
    [InlineData("is no node of the rig")]
    [InlineData("One part hangs on the puller")]
    [InlineData("nothing is joined")]
    [InlineData("needs an anchor")]
    [InlineData("needs a puller")]
    [InlineData("only joints let a part run")]
    [InlineData("Two parts are named")]
    [InlineData("joins nothing")]
    public void What_is_no_rig_is_refused_with_words(string words)
    {
        RigNode a = RigNode.Anchor(Axle("a"), At(0, 0, 0.5)), p = RigNode.Puller(Drawbar("p"), At(20, 0, 0.5), RigPull.Held(KN(100))), j = RigNode.Joint("j", new SoftShackle("soft", Rating.BreakingStrengthTonnes(60)));
        Strap s = new("s", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9)), t = new("t", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(5));
        Action make = words switch
        {
            "Two nodes are named" => () => _ = new RigGraph([a, a, p], [RigLink.Between(s, "a", "p")]),
            "is no node of the rig" => () => _ = new RigGraph([a, p], [RigLink.Between(s, "a", "q")]),
            "One part hangs on the puller" => () => _ = new RigGraph([a, p], [RigLink.Between(s, "a", "p"), RigLink.Between(t, "a", "p")]),
            "nothing is joined" => () => _ = new RigGraph([a, p, j], [RigLink.Between(s, "a", "p"), RigLink.Between(t, "a", "j")]),
            "needs an anchor" => () => _ = new RigGraph([p, j], [RigLink.Between(s, "j", "p")]),
            "needs a puller" => () => _ = new RigGraph([a, j], [RigLink.Between(s, "a", "j")]),
            "only joints let a part run" => () => _ = new RigGraph([a, p, j], [RigLink.Running(s, "j", ["a"], "p"), RigLink.Between(t, "a", "j")]),
            "Two parts are named" => () => _ = new RigGraph([a, p, j], [RigLink.Between(s, "a", "j"), RigLink.Between(s, "j", "p")]),
            _ => () => RigNode.Joint("j", s),
        };
        Assert.Contains(words, Assert.Throws<ArgumentException>(make).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_reaches_past_its_puller_is_a_solver_failure_with_its_residual()
    {
        RigNode a = RigNode.Anchor(Axle("a"), At(0, 0, 0.5)), p = RigNode.Puller(Drawbar("p"), At(5, 0, 0.5), RigPull.Held(KN(100))), j = RigNode.Joint("j", new SoftShackle("soft", Rating.BreakingStrengthTonnes(60)));
        var graph = new RigGraph([a, p, j], [RigLink.Between(new Strap("s", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9)), "a", "j"), RigLink.Between(new Strap("t", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(5)), "j", "p")]);
        Assert.Throws<SolverException>(() => graph.Solve(RigLoadLevel.Steady, StretchState.Stiff));
    }

    private static RigGraph Block() => new(
        [
            RigNode.Anchor(Axle("axle"), At(0, 0, 0.5)), RigNode.Anchor(new AttachmentPoint("ground anchor", AttachmentKind.RecoveryPoint, true), At(60, 0.2, 0.5)),
            RigNode.Joint("block", new SnatchBlock("snatch block", Rating.WorkingLoadLimitTonnes(25, 4), Mass.FromKilograms(20))), RigNode.Puller(Drawbar("winch"), At(60, -0.2, 0.5), RigPull.Held(KN(50))),
        ],
        [RigLink.Between(new Strap("strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(4)), "axle", "block"), RigLink.Running(new Strap("winch line", Fibre.Hmpe, Rating.BreakingStrengthTonnes(40), M(100)), "ground anchor", ["block"], "winch")]);

    private static double Sum(RigGraphForces forces, string node)
    {
        var sum = default(Vector3);
        foreach (var part in forces.Parts)
        {
            for (var s = 0; s < part.Segments.Count; s++)
            {
                if (part.Link.Nodes[s] == node) sum += part.Segments[s].Newtons;
                if (part.Link.Nodes[s + 1] == node) sum -= part.Segments[s].Newtons;
            }
        }

        return sum.Length;
    }

    private static double Distance(RigGraphForces forces, string a, string b) => (forces.At(a).Metres - forces.At(b).Metres).Length;
}
