using System;
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

/// <summary>Chain and wire rope in rigs of any arrangement, and the gear such a rig needs.</summary>
public class SteelGraphTests
{
    private static Chain AxleChain(string name) => new(name, ChainGrade.Grade80, Length.FromMillimeters(16), M(1.2));

    private static RigGraph Chained() => Worked().Replace("axle strap left", AxleChain("axle chain left")).Replace("axle strap right", AxleChain("axle chain right"));

    private static RigGraph Winched(RigPart line, RigPart? joiner) => new(
        [
            RigNode.Anchor(Axle("axle"), At(0, 0, 0.5)), RigNode.Joint("block", joiner), RigNode.Anchor(Axle("ground anchor"), At(60, 2, 0)),
            RigNode.Puller(Drawbar("winch"), At(60, -2, 1), RigPull.Held(KN(50))),
        ],
        [RigLink.Between(new Strap("strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(5)), "axle", "block"), RigLink.Running(line, "ground anchor", ["block"], "winch")]);

    private static SnatchBlock Block => new("snatch block", Rating.WorkingLoadLimitTonnes(25, 4), Mass.FromKilograms(20));

    private static WireRope Rope => new WireRope("winch rope", Rating.BreakingStrength(KN(300)), Length.FromMillimeters(20), WireCore.Wire, M(80)).WithEnds(SectionPlace.Documented("a"), SectionPlace.Documented("b"));

    [Fact]
    public void Chains_carry_the_legs_and_fly_with_the_shackles()
    {
        var check = Chained().Check(DesignFactorPolicy.SlowPull, 1);
        Assert.True(check.Residual < 1e-10);
        // Without stretch chain and strap of one length carry alike: 1/(2 cos(11.72 deg)) of 116 kN.
        Assert.Equal(0.51064 * 116, check.Graph.Solve(RigLoadLevel.Steady, StretchState.Unstretched).Of("axle chain left").Greatest.Kilonewtons, 0.01);
        // 16 mm of grade 80: 800 N/mm2 x 402.124 mm2.
        Assert.Equal(321.699, check.Parts.Single(p => p.Part.Name == "axle chain left").Strength!.Value.Kilonewtons, 1e-3);
        Assert.Contains("axle chain left", check.SteelOnFreeEnds);
        var parted = check.Failures.Where(f => f.Part == "axle chain left").ToList();
        Assert.Contains(parted, f => f.Hardware.Contains("broken-off piece of the axle chain left") && f.Hardware.Contains("shackle left") && !f.MassIsComplete);
        var torn = check.Failures.Single(f => f.Part == "axle left" && f.Hardware.Contains("axle chain left"));
        // 17.5 g/(m kN) x 321.699 kN x 1.2 m and the shackle of 8 kg.
        Assert.Equal(14.756, torn.HardwareMass.Kilograms, 1e-2);
        Assert.Equal(["rig.chain", "rig.chain"], check.Findings().Where(f => f.Id == "rig.chain").Select(f => f.Id));
        Assert.Contains(check.Findings(), f => f.Id == "rig.steel-on-free-end" && f.Subject == "axle chain left");
        Assert.Contains("assume.strap-stretch", check.Assumptions.Select(a => a.Id));
    }

    // Steel a hundred times as stiff as the nylon beside it: the straps between joints become chain or wire rope, one after the other.
    [Property(MaxTest = 1000)]
    public Property Forces_balance_with_steel_beside_straps() => Prop.ForAll(Any.ToArbitrary(), Gen.Choose(0, 3).ToArbitrary(), (graph, which) =>
    {
        var i = 0;
        foreach (var link in graph.Links.Where(l => !l.Runs))
        {
            if (i++ % 4 == which) continue;
            var length = ((Strap)link.Part).Length;
            graph = graph.Replace(link.Part.Name, i % 2 == 0 ? new Chain("chain for " + link.Part.Name, ChainGrade.Grade80, Length.FromMillimeters(16), length) : new WireRope("wire for " + link.Part.Name, Rating.BreakingStrength(KN(300)), Length.FromMillimeters(20), WireCore.Wire, length));
        }

        foreach (var stretch in (StretchState[])[StretchState.Soft, StretchState.Stiff])
        {
            var forces = graph.Solve(RigLoadLevel.Steady, stretch);
            Assert.True(forces.Residual < 1e-10);
            var whole = graph.Nodes.Where(n => n.Kind != RigNodeKind.Joint).Select(n => forces.On(n.Name).Newtons).Aggregate(default(Vector3), (a, b) => a + b);
            Assert.True(whole.Length < 1e-9 * forces.TotalPull.Newtons);
        }
    });

    [Fact]
    public void The_better_arrangement_has_no_chain_on_a_free_end()
    {
        var better = Chained().Check(DesignFactorPolicy.SlowPull, 1).BetterArrangement!;
        Assert.DoesNotContain(better.Links, l => l.Part is Chain);
        Assert.Empty(better.Check(DesignFactorPolicy.SlowPull, 1).SteelOnFreeEnds);
        Assert.Contains(better.Links, l => l.Part is Strap { Fibre: Fibre.Hmpe, Name: "strap for axle chain left" });
    }

    [Fact]
    public void A_wire_rope_runs_through_a_block()
    {
        var check = Winched(Rope, Block).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.True(check.Residual < 1e-10);
        // Nearly parallel parts with 0.90 at the sheave.
        Assert.Equal((1 + (1 / 0.90)) * 50, check.Parts.Single(p => p.Part.Name == "strap").Steady.Kilonewtons, 0.3);
        Assert.Contains(check.Failures, f => f.Part == "winch rope" && f.Hardware.Contains("broken-off piece of the winch rope"));
        var stronger = check.WithStrength("winch rope", KN(400));
        Assert.Equal(400, stronger.Parts.Single(p => p.Part.Name == "winch rope").Strength!.Value.Kilonewtons, 1e-9);
        Assert.Equal(500, Chained().Check(DesignFactorPolicy.SlowPull, 1).WithStrength("axle chain left", KN(500)).Parts.Single(p => p.Part.Name == "axle chain left").Strength!.Value.Kilonewtons, 1e-9);
    }

    [Fact]
    public void Steel_does_not_run_where_it_cuts_or_catches()
    {
        Assert.Contains("no block", Assert.Throws<ArgumentException>(() => Winched(Rope, null)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Winched(Rope, Block).Replace("snatch block", null));
        Assert.Contains("links catch", Assert.Throws<ArgumentException>(() => RigLink.Running(AxleChain("chain"), "a", ["b"], "c")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => RigLink.Between(Shackle("shackle"), "a", "b"));
        Assert.Throws<ArgumentException>(() => Worked().Replace("bridle", Shackle("shackle")));
    }

    [Fact]
    public void Steel_between_straps_and_steel_in_an_eye_are_found()
    {
        static RigGraph Line(RigPart first, RigPart? a, RigPart middle, RigPart? b, RigPart last) => new(
            [RigNode.Anchor(Axle("axle"), At(0, 0, 0.5)), RigNode.Joint("one", a), RigNode.Joint("two", b), RigNode.Puller(Drawbar("drawbar"), At(40, 0, 0.5), RigPull.Held(KN(50)))],
            [RigLink.Between(last, "axle", "one"), RigLink.Between(middle, "one", "two"), RigLink.Between(first, "two", "drawbar")]);
        Strap Strap(string name, Fibre fibre = Fibre.Nylon) => new(name, fibre, Rating.BreakingStrengthTonnes(60), M(5));
        var between = Line(Strap("strap"), Shackle("s1"), AxleChain("chain"), null, Strap("strap 2")).Check(DesignFactorPolicy.SlowPull).Findings().Select(f => f.Id + " " + f.Subject).ToList();
        Assert.Contains("line.metal-joiner chain", between);
        Assert.Contains("rig.steel-in-eye chain", between);
        Assert.DoesNotContain("rig.low-stretch strap 2", between);
        var stiff = Line(Rope, Shackle("s1"), AxleChain("chain"), Shackle("s2"), Strap("strap", Fibre.Hmpe)).Check(DesignFactorPolicy.SlowPull).Findings().Select(f => f.Id + " " + f.Subject).ToList();
        Assert.Contains("rig.low-stretch strap", stiff);
        Assert.DoesNotContain(stiff, f => f.StartsWith("line.metal-joiner", StringComparison.Ordinal) || f.StartsWith("rig.steel-in-eye", StringComparison.Ordinal));
        Assert.DoesNotContain(Chained().Check(DesignFactorPolicy.SlowPull).Findings(), f => f.Id == "rig.low-stretch" || f.Id == "line.metal-joiner");
    }

    // From the drawbar to the axle: N nylon strap, P choked axle strap, C chain, W wire rope; s shackle, b block, o soft shackle.
    [Theory]
    [InlineData("N s N", "s1")]
    [InlineData("N b N", "b1")]
    [InlineData("N o N", "")]
    [InlineData("N s C s N", "C2 s1 s2")]
    [InlineData("N o W s N", "W2 s2")]
    [InlineData("N s C s C o N", "C2 C3 s1 s2")]
    [InlineData("N s C", "")]
    [InlineData("W b N", "")]
    [InlineData("C s W s N", "")]
    [InlineData("N s P", "s1")]
    [InlineData("N o N s C s P", "C3 s2 s3")]
    public void Steel_that_joins_straps_is_a_stop_in_a_list_and_in_a_graph(string parts, string joiners)
    {
        var words = parts.Split(' ');
        RigPart Make(int i)
        {
            var name = words[i] + ((i / 2) + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
            return words[i] switch
            {
                "N" => new Strap(name, Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(8)),
                "P" => AxleStrap(name),
                "C" => new Chain(name, ChainGrade.Grade80, Length.FromMillimeters(16), M(3)),
                "W" => new WireRope(name, Rating.BreakingStrength(KN(300)), Length.FromMillimeters(20), WireCore.Wire, M(10)),
                "s" => Shackle(name),
                "b" => new SnatchBlock(name, Rating.WorkingLoadLimitTonnes(25, 4), Mass.FromKilograms(20)),
                _ => new SoftShackle(name, Rating.BreakingStrengthTonnes(90)),
            };
        }

        var made = Enumerable.Range(0, words.Length).Select(Make).ToList();
        var nodes = Enumerable.Range(0, ((words.Length + 1) / 2) + 1).Select(k => k == 0 ? "drawbar" : k == (words.Length + 1) / 2 ? "axle" : "joint " + k).ToList();
        var graph = new RigGraph(
            nodes.Select((n, k) => k == 0 ? RigNode.Puller(Drawbar(n), At(90, 0, 0.5), RigPull.Held(KN(50))) : k == nodes.Count - 1 ? RigNode.Anchor(Axle(n), At(0, 0, 0.5)) : RigNode.Joint(n, made[(2 * k) - 1])),
            Enumerable.Range(0, nodes.Count - 1).Select(k => RigLink.Between(made[2 * k], nodes[k + 1], nodes[k])));
        var list = new System.Collections.Generic.List<Finding>();
        RigInspection.Add(new Rig(Drawbar("drawbar"), made, Axle("axle")), list);
        var expected = joiners.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        foreach (var findings in new[] { list, graph.Check(DesignFactorPolicy.SlowPull, 1).Findings() })
        {
            var found = findings.Where(f => f.Id == "line.metal-joiner").ToList();
            Assert.Equal(expected, found.Select(f => f.Subject).Order(StringComparer.Ordinal));
            Assert.All(found, f => Assert.Equal(Severity.Stop, f.Severity));
        }
    }

    [Fact]
    public void Shackles_behind_a_bridle_are_where_they_belong_and_a_block_between_straps_is_not()
    {
        Assert.DoesNotContain(Worked().Check(DesignFactorPolicy.SlowPull, 1).Findings(), f => f.Id == "line.metal-joiner");
        // Axle straps that are not choked as well: they lie behind the bridle.
        var open = Worked().Replace("axle strap left", new Strap("axle strap left", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(1.2)));
        Assert.DoesNotContain(open.Check(DesignFactorPolicy.SlowPull, 1).Findings(), f => f.Id == "line.metal-joiner");
        var block = Worked(joiner: new SnatchBlock("eye block", Rating.WorkingLoadLimitTonnes(25, 4), Mass.FromKilograms(20))).Check(DesignFactorPolicy.SlowPull, 1);
        Assert.Contains(block.Findings(), f => f.Id == "line.metal-joiner" && f.Subject == "eye block");
        // A block on the end of one strap, with the line of a winch hauled through it, is a tackle and joins no straps; it stays steel on a free end.
        Assert.DoesNotContain(Winched(Rope, Block).Check(DesignFactorPolicy.SlowPull, 1).Findings(), f => f.Id == "line.metal-joiner");
        var tackle = Winched(new Strap("winch line", Fibre.Hmpe, Rating.BreakingStrengthTonnes(60), M(80)), Block).Check(DesignFactorPolicy.SlowPull, 1).Findings();
        Assert.DoesNotContain(tackle, f => f.Id == "line.metal-joiner");
        Assert.Contains(tackle, f => f.Id == "rig.steel-on-free-end" && f.Subject == "snatch block");
    }

    [Fact]
    public void A_basket_round_the_axle_reaches_half_as_far()
    {
        var basket = new Strap("axle strap left", Fibre.Polyester, Rating.BreakingStrengthTonnes(40), M(2.4)).WithBasket(Angle.FromDegrees(0));
        var right = new Strap("axle strap right", Fibre.Polyester, Rating.BreakingStrengthTonnes(40), M(2.4)).WithBasket(Angle.FromDegrees(0));
        var check = Worked().Replace("axle strap left", basket).Replace("axle strap right", right).Check(DesignFactorPolicy.SlowPull, 1);
        // 1.2 m of reach, as the straps of the worked rig.
        Assert.Equal(0.51064 * 116, check.Graph.Solve(RigLoadLevel.Steady, StretchState.Unstretched).Of("axle strap left").Greatest.Kilonewtons, 0.01);
        Assert.Equal(80 * 9.80665, check.Parts.Single(p => p.Part.Name == "axle strap left").Strength!.Value.Kilonewtons, 1e-6);
        Assert.DoesNotContain(check.Findings(), f => f.Id == "line.metal-joiner");
    }

    [Fact]
    public void Gear_is_chosen_for_a_rig_of_any_arrangement()
    {
        var graph = Worked();
        var check = graph.Check(DesignFactorPolicy.SlowPull, 1);
        var needs = GearChoice.For(check);
        Assert.Equal(["drawbar", "recovery strap", "bridle", "axle strap left", "axle strap right", "shackle left", "shackle right", "axle left", "axle right"], needs.Select(n => n.Part));
        Assert.Equal([GearKind.Drawbar, GearKind.AttachmentPoint], new[] { needs[0].Kind, needs[^1].Kind });
        var strap = needs.Single(n => n.Part == "recovery strap");
        // Wet nylon 0.85; 116 kN x 5.
        Assert.Equal(116 * 5 / 0.85, strap.BreakingForRated!.Value.Kilonewtons, 0.1);
        // The eye on the bight keeps half, wet: 2.3 on 0.85 asks less than 1.25 on 0.425.
        var peak = strap.Peak.Kilonewtons;
        Assert.Equal(Math.Max(2.3 / 0.85, 1.25 / 0.425) * peak, strap.BreakingForFloor!.Value.Kilonewtons, 1e-6 * peak);
        // A leg of the choked axle strap: 0.80 x 0.87.
        var axle = needs.Single(n => n.Part == "axle strap left");
        Assert.Equal(axle.Peak.Kilonewtons * 2.3 / 0.696, axle.BreakingForFloor!.Value.Kilonewtons, 1e-6 * peak);
        var shackle = needs.Single(n => n.Part == "shackle left");
        Assert.Equal(shackle.Peak.Newtons, shackle.LeastProofLoad!.Value.Newtons, 1e-6);
        Assert.Equal(3 * shackle.Peak.Newtons, shackle.BreakingForFullFactors!.Value.Newtons, 1);
        Assert.Equal(check.Attachments.Single(a => a.Point.Name == "axle left").Procedure.Newtons, needs.Single(n => n.Part == "axle left").Peak.Newtons, 1e-6);
        // What is found holds when it is put in.
        var strong = check.WithStrength("axle strap left", axle.BreakingForFloor.Value);
        Assert.True(strong.Parts.Single(p => p.Part.Name == "axle strap left").Reserve >= 2.3 * 0.99);
        Assert.Equal([GearKind.Webbing, GearKind.Shackle, GearKind.Drawbar, GearKind.AttachmentPoint], InspectionChecklist.For(graph).Select(c => c.Kind).Distinct());
        Assert.Contains(InspectionChecklist.For(Chained()), c => c.Kind == GearKind.Chain);
    }
}
