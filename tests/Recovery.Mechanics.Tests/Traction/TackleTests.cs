using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class TackleTests
{
    private static readonly TacklePoint First = new("first traveller", TacklePointKind.Traveller);
    private static readonly TacklePoint Second = new("second traveller", TacklePointKind.Traveller);

    [Theory]
    [CheckRows("traction", "tackle-rule")]
    public void Published_twofold_purchase(CheckRow row)
    {
        Assert.Equal(row.Si("friction_per_sheave"), TackleRule.FrictionPerSheave.DecimalFractions, 1e-12);
        var load = Force.FromNewtons(row.Si("load"));
        var sheaves = (int)row.Si("sheaves");
        row.Matches(("tackle", TackleRule.Resistance(load, sheaves).Newtons), ("total", TackleRule.Total(load, sheaves).Newtons), ("pull", TackleRule.FallLine(load, sheaves, row.Si("MA")).Newtons));
        var twofold = Tackle.Purchase(4, leavesFixedBlock: true);
        Assert.Equal(sheaves, twofold.Sheaves);
        row.MatchesOne("pull", twofold.HandbookFallLine(load).Newtons);
        Assert.Equal("1.557 kN", TackleRule.Explain(load, sheaves, 4).Steps[^1].Value);
    }

    [Theory]
    [CheckRows("traction", "tackle-chain")]
    public void Depth_rule_tackle_fall_line_and_dead_line(CheckRow row)
    {
        var load = DepthRule.Resistance(row.Word("depth_class") == "wheel" ? DepthClass.Hub : DepthClass.Fender, Force.FromNewtons(row.Si("W")));
        var sheaves = (int)row.Si("sheaves");
        var fall = TackleRule.FallLine(load, sheaves, row.Si("MA"));
        row.Matches(
            ("load", load.Newtons), ("tackle", TackleRule.Resistance(load, sheaves).Newtons), ("total", TackleRule.Total(load, sheaves).Newtons),
            ("fall_line", fall.Newtons), ("dead_line", TackleRule.DeadLine(fall, (int)row.Si("dead_line_parts")).Newtons));
    }

    [Theory]
    [CheckRows("traction", "tackle-first-estimate")]
    public void First_estimate_of_the_advantage(CheckRow row) =>
        row.Matches(("MA_est", TackleEstimate.Find(Force.FromNewtons(row.Si("load")), Force.FromNewtons(row.Si("effort"))).Tries[0].MechanicalAdvantage));

    [Theory]
    [CheckRows("traction", "tackle-estimate")]
    public void Advantage_raised_until_it_holds(CheckRow row)
    {
        var found = TackleEstimate.Find(Force.FromNewtons(row.Si("load")), Force.FromNewtons(row.Si("effort"))).Solution!;
        row.Matches(("MA", found.MechanicalAdvantage), ("tackle", found.Resistance.Newtons), ("total", found.Total.Newtons), ("fall_line", found.FallLine.Newtons));
    }

    [Theory]
    [CheckRows("traction-scipy", "estimate")]
    public void Advantage_by_the_steps(CheckRow row)
    {
        var estimate = TackleEstimate.Find(Force.FromNewtons(row.Si("load")), Force.FromNewtons(row.Si("effort")), row.Word("fixed") == "yes", 12);
        row.Matches(("MA", estimate.Solution!.MechanicalAdvantage), ("fall_line", estimate.Solution.FallLine.Newtons), ("tries", estimate.Tries.Count));
    }

    [Theory]
    [CheckRows("traction", "tackle-efficiency")]
    public void Efficiency_form(CheckRow row)
    {
        var n = (int)row.Si("n");
        var eta = Frac(row.Si("eta"));
        row.Matches(("fixed", TackleKernel.Advantage(n, row.Si("eta"), true)), ("moving", TackleKernel.Advantage(n, row.Si("eta"), false)));
        row.Matches(("fixed", Tackle.Purchase(n, leavesFixedBlock: true).Advantage(eta)), ("moving", Tackle.Purchase(n).Advantage(eta)));
    }

    [Theory]
    [CheckRows("traction", "tackle-over-ask")]
    public void The_rule_asks_more_than_the_efficiency_form(CheckRow row)
    {
        var tackle = Tackle.Purchase((int)row.Si("n"), leavesFixedBlock: true);
        var share = 1 / tackle.Advantage(Frac(row.Si("eta")));
        var rule = tackle.HandbookFallLine(KN(1)).Kilonewtons;
        Assert.Equal(row.Si("T_over_R_rule"), rule, 1e-12);
        row.Matches(("T_over_R", share), ("over_ask", rule / share));
    }

    [Theory]
    [CheckRows("traction", "dead-line-stall")]
    public void Dead_line_at_stall(CheckRow row) => row.Matches(("dead_line", TackleRule.DeadLine(Force.FromNewtons(row.Si("stall")), (int)row.Si("dead_line_parts")).Newtons));

    [Theory]
    [CheckRows("traction", "dead-line-ratio")]
    public void Dead_line_at_stall_over_the_one_from_the_demand(CheckRow row) =>
        row.Matches(("ratio", TackleRule.DeadLine(Force.FromNewtons(row.Si("stall")), (int)row.Si("dead_line_parts")).Newtons / row.Si("dead_line_from_demand")));

    [Theory]
    [CheckRows("traction", "stall-sizing")]
    public void Published_sizing_to_stall(CheckRow row)
    {
        var sizing = StallSizing.For(Force.FromNewtons(row.Si("stall")));
        row.Matches(("connectors", sizing.Connectors.Newtons), ("block_anchor", sizing.BlockAndAnchor.Newtons));
        var overBlock = Tackle.ChangeOfDirection(Angle.Zero);
        row.MatchesOne("block_anchor", sizing.Of(overBlock, TacklePoint.Anchor).Newtons);
        row.MatchesOne("connectors", sizing.Of(overBlock, TacklePoint.Load).Newtons);
    }

    [Theory]
    [CheckRows("traction", "open-link-chain")]
    public void Open_link_chain(CheckRow row)
    {
        var newtons = OpenLinkChain.WorkingCapacity(M(row.Si("D"))).Newtons;
        row.Matches(("SWC", newtons), ("SWC_lb", newtons));
    }

    [Theory]
    [CheckRows("traction-scipy", "tackle")]
    public void Graph_against_a_linear_system(CheckRow row)
    {
        var forces = Rig(row.Word("rig")).Forces(KN(1), Frac(row.Si("eta")));
        row.Matches(("load", forces.Load.Kilonewtons), ("anchor", forces.At(TacklePoint.Anchor).Kilonewtons));
    }

    [Theory]
    [CheckRows("traction-scipy", "tackle-way")]
    public void Advantage_is_rope_hauled_over_way(CheckRow row) => row.Matches(("rope_per_metre", Rig(row.Word("rig")).MechanicalAdvantage));

    [Theory]
    [CheckRows("traction-scipy", "block")]
    public void Block_by_vectors(CheckRow row)
    {
        var forces = Tackle.ChangeOfDirection(Angle.FromRadians(row.Si("angle"))).Forces(Force.FromNewtons(row.Si("T")), Frac(row.Si("eta")));
        row.Matches(("F", forces.At(TacklePoint.Anchor).Newtons));
    }

    [Property]
    public Property Forces_close_round_the_whole_tackle() => Prop.ForAll(Gen.Choose(1, 12).ToArbitrary(), Gen.Choose(50, 100).ToArbitrary(), Gen.Elements(true, false).ToArbitrary(), (parts, eta, leavesFixed) =>
    {
        // Parallel parts: what the anchor side takes is what the casualty takes, the haul being on the anchor's side or, off a fixed block, on the other.
        var forces = Tackle.Purchase(parts, leavesFixed).Forces(KN(50), Frac(eta / 100.0));
        var anchor = leavesFixed || parts > 1 ? forces.At(TacklePoint.Anchor).Newtons : 0;
        var haul = leavesFixed ? -forces.Haul.Newtons : forces.Haul.Newtons;
        return Math.Abs(anchor + haul - forces.Load.Newtons) < 1e-6;
    });

    [Property]
    public Property A_traveller_is_in_balance() => Prop.ForAll(Gen.Choose(2, 6).ToArbitrary(), Gen.Choose(2, 6).ToArbitrary(), Gen.Choose(50, 100).ToArbitrary(), (hauling, hauled, eta) =>
    {
        var tackle = Tackle.PurchaseOnPurchase(hauling, hauled);
        var forces = tackle.Forces(KN(10), Frac(eta / 100.0));
        var traveller = tackle.Points.Single(p => p.Kind == TacklePointKind.Traveller);
        var e = eta / 100.0;
        var hauledLoad = forces.At(traveller).Newtons * TackleKernel.Advantage(hauled, e, false);
        return Math.Abs(hauledLoad - forces.Load.Newtons) < 1e-6 && Math.Abs(tackle.MechanicalAdvantage - (hauling * hauled)) < 1e-9
            && Math.Abs(forces.At(traveller).Newtons - (1e4 * TackleKernel.Advantage(hauling, e, false))) < 1e-6;
    });

    [Property]
    public Property Friction_never_adds_pull_and_the_forces_scale() => Prop.ForAll(Gen.Choose(1, 8).ToArbitrary(), Gen.Choose(50, 99).ToArbitrary(), (parts, eta) =>
    {
        var tackle = Tackle.Purchase(parts, leavesFixedBlock: true);
        double rough = tackle.Advantage(Frac(eta / 100.0)), smoother = tackle.Advantage(Frac((eta + 1) / 100.0));
        var back = tackle.ForcesAtLoad(KN(300), Frac(eta / 100.0));
        return rough < smoother && smoother <= tackle.MechanicalAdvantage + 1e-12 && Math.Abs(back.Load.Kilonewtons - 300) < 1e-9 && Math.Abs((back.Haul.Kilonewtons * rough) - 300) < 1e-9;
    });

    [Property]
    public Property The_steps_end_at_the_least_advantage_that_holds() => Prop.ForAll(Gen.Choose(20, 900).ToArbitrary(), Gen.Choose(20, 200).ToArbitrary(), Gen.Elements(true, false).ToArbitrary(), (load, effort, leavesFixed) =>
    {
        var estimate = TackleEstimate.Find(KN(load), KN(effort), leavesFixed, 12);
        return estimate.Tries.Take(estimate.Tries.Count - 1).All(t => !t.Holds)
            && (estimate.Solution is null ? estimate.Findings.Single().Id == "tackle.no-advantage" && estimate.Tries[^1].MechanicalAdvantage == 12 : estimate.Solution.FallLine < estimate.Effort && estimate.Findings.Count == 0);
    });

    [Fact]
    public void An_effort_of_a_tenth_of_the_load_never_does()
    {
        var estimate = TackleEstimate.Find(KN(600), KN(60), greatestAdvantage: 12);
        Assert.Null(estimate.Solution);
        Assert.Contains("60 kN", estimate.Findings.Single().Message, StringComparison.Ordinal);
        Assert.NotNull(TackleEstimate.Find(KN(600), KN(110), greatestAdvantage: 12).Solution);
    }

    [Fact]
    public void An_effort_just_equal_to_the_fall_line_does_not_hold()
    {
        // 2:1 with one sheave: 150 x 1.1/2 = 82.5 kN.
        Assert.Equal(3, TackleEstimate.Find(KN(150), KN(82.5)).Solution!.MechanicalAdvantage);
        Assert.Equal(2, TackleEstimate.Find(KN(150), KN(82.5 + 1e-6)).Solution!.MechanicalAdvantage);
        Assert.Equal(3, TackleEstimate.Find(KN(150), KN(82.5 - 1e-6)).Solution!.MechanicalAdvantage);
    }

    [Fact]
    public void A_place_with_many_parts_is_sized_on_its_force_at_stall()
    {
        // Four parts without friction put 4 x 50 kN on the casualty; a block of two parts asks for 4 x 50 kN at failure, this place for 2 x 200.
        var sizing = StallSizing.For(KN(50));
        Assert.Equal(400, sizing.Of(Tackle.Purchase(4), TacklePoint.Load).Kilonewtons, 1e-9);
        Assert.Equal(200, sizing.Of(Tackle.Purchase(2), TacklePoint.Load).Kilonewtons, 1e-9);
        Assert.Equal(100, sizing.Of(Tackle.Purchase(2), TacklePoint.Anchor).Kilonewtons, 1e-9);
        Assert.Equal("stall 50 kN: connectors 100 kN, blocks and anchors 200 kN", sizing.ToString());
    }

    [Fact]
    public void Explains_with_the_value_it_gives()
    {
        var forces = Tackle.Purchase(4, leavesFixedBlock: true).Forces(KN(100), Frac(0.96));
        Assert.Equal("361.6 kN", forces.Explain().Steps[^1].Value);
        Assert.Equal(84.93, forces.DeadEnd("fall").Kilonewtons, 0.005);
        Assert.Equal(4, forces.Points.Single(p => p.Point == TacklePoint.Load).Parts);
        Assert.Equal("97.5 kN", TackleEstimate.Find(KN(300), KN(100)).Explain().Steps[^1].Value);
        Assert.Contains("does not hold", TackleEstimate.Find(KN(300), KN(100)).Tries[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_what_is_no_tackle_and_says_why()
    {
        TackleRope Rope(string name, TacklePoint from, TacklePoint over, TacklePoint end) => new(name, from, [new TackleBlock(over)], end);
        string Refused(params TackleRope[] ropes) => Assert.ThrowsAny<ArgumentException>(() => new Tackle("t", ropes)).Message;
        var plain = Rope("a", TacklePoint.Haul, TacklePoint.Load, TacklePoint.Anchor);
        Assert.Contains("one to eight", Refused(), StringComparison.Ordinal);
        Assert.Contains("Exactly one rope", Refused(plain, Rope("b", TacklePoint.Haul, TacklePoint.Load, TacklePoint.Anchor)), StringComparison.Ordinal);
        Assert.Contains("bear one name", Refused(plain, Rope("a", First, TacklePoint.Load, TacklePoint.Anchor)), StringComparison.Ordinal);
        Assert.Contains("Nothing hauls", Refused(plain, Rope("b", First, TacklePoint.Load, TacklePoint.Anchor)), StringComparison.Ordinal);
        Assert.Contains("exactly one rope", Refused(Rope("a", TacklePoint.Haul, First, TacklePoint.Load)), StringComparison.Ordinal);
        Assert.Contains("circle", Refused(plain, Rope("b", First, Second, TacklePoint.Anchor), Rope("c", Second, First, TacklePoint.Anchor)), StringComparison.Ordinal);
        Assert.Contains("two kinds", Refused(Rope("a", TacklePoint.Haul, new TacklePoint("casualty", TacklePointKind.Anchor), TacklePoint.Load)), StringComparison.Ordinal);
        Assert.Contains("No part", Refused(Rope("a", TacklePoint.Haul, TacklePoint.Anchor, TacklePoint.Anchor)), StringComparison.Ordinal);
        Assert.Contains("not to the haul", Assert.Throws<ArgumentException>(() => new TackleBlock(TacklePoint.Haul)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Tackle.SingleLine().Forces(KN(1), Frac(1)).At(TacklePoint.Anchor));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tackle.SingleLine().Advantage(Frac(0.4)));
    }

    private static Tackle Rig(string name)
    {
        TackleBlock On(TacklePoint point) => new(point);
        TacklePoint load = TacklePoint.Load, anchor = TacklePoint.Anchor, haul = TacklePoint.Haul;
        return name switch
        {
            "2-moving" => Tackle.Purchase(2),
            "3-moving" => Tackle.Purchase(3),
            "4-fixed" => Tackle.Purchase(4, leavesFixedBlock: true),
            "2-on-3" => Tackle.PurchaseOnPurchase(2, 3),
            "spanish" => new Tackle(name, [new TackleRope("one", haul, [On(First)], load), new TackleRope("two", First, [On(anchor)], load)]),
            "two-travellers" => new Tackle(name, [new TackleRope("three", Second, [On(load)], anchor), new TackleRope("one", haul, [On(First)], anchor), new TackleRope("two", First, [On(Second)], anchor)]),
            _ => throw new ArgumentOutOfRangeException(nameof(name)),
        };
    }
}
