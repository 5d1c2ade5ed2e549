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

/// <summary>No part of a rig passes without anybody knowing what it holds.</summary>
public class UnknownPartTests
{
    private static readonly Rating Unknown = Rating.Unknown(KN(100));

    // One of every kind of part, its rating not known.
    private static readonly RigPart[] OfEveryKind =
    [
        new Strap("part", Fibre.Polyester, Unknown, M(2)),
        Bridle.FreeRunning(new Strap("part", Fibre.Polyester, Unknown, M(4)), M(1.3)),
        new Shackle("part", Unknown, Mass.FromKilograms(8)),
        new SoftShackle("part", Unknown),
        new Chain("part", ChainGrade.Grade80, Length.FromMillimeters(13), M(2), Unknown),
        new WireRope("part", Unknown, Length.FromMillimeters(20), WireCore.Wire, M(2)),
        new SnatchBlock("part", Unknown, Mass.FromKilograms(20)),
    ];

    private static Rig With(RigPart part) => new(ReferenceRigs.Worked().Drawbar, [ReferenceRigs.Worked().Parts[0], part], ReferenceRigs.Worked().Casualty);

    [Fact]
    public void Every_kind_of_part_stops_where_its_rating_is_not_known()
    {
        Assert.Equal(typeof(RigPart).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(RigPart))).OrderBy(t => t.Name), OfEveryKind.Select(p => p.GetType()).OrderBy(t => t.Name));
        foreach (var part in OfEveryKind)
        {
            var findings = new List<Finding>();
            RigInspection.Add(With(part), findings);
            Assert.Single(findings, f => f.Id == "rig.rating-basis-unknown" && f.Subject == "part" && f.Severity == Severity.Stop);
        }
    }

    [Fact]
    public void A_block_of_unknown_rating_between_straps_stops_the_plan()
    {
        var worked = ReferenceRigs.Worked();
        Strap Strong(string name) => new(name, Fibre.Nylon, Rating.BreakingStrengthTonnes(90), M(9));
        var plan = ReferencePlans.Gentle();
        var rig = new Rig(worked.Drawbar, [Strong("first strap"), new SnatchBlock("block", Rating.Unknown(Force.Zero), Mass.FromKilograms(20)), Strong("second strap")], worked.Casualty).WithWear(1);
        var assessment = new RecoveryPlan(plan.Stuck, plan.Tower, rig, plan.Policy, plan.Procedure, plan.Site).Assess();
        Assert.Equal(Verdict.Stop, assessment.Verdict);
        Assert.Single(assessment.Findings, f => f.Id == "rig.rating-basis-unknown" && f.Subject == "block");
        Assert.Single(assessment.Findings, f => f.Id == "line.metal-joiner" && f.Subject == "block");
    }

    [Fact]
    public void A_place_of_unknown_strength_that_nothing_else_stopped_is_a_stop()
    {
        var loads = ReferenceRigs.Loads(ReferenceRigs.Worked());
        RigPlace[] places = [new() { Strength = double.NaN, Share = 1, Rated = double.NaN, Floor = 2.3, Full = 4 }];
        var outcomes = new RigOutcome[1];
        RigKernel.Evaluate(places, loads.Output, outcomes);
        List<Finding> Found(params Finding[] before)
        {
            var findings = before.ToList();
            RigStrengthFindings.Add(places, outcomes, loads.Output, _ => Provenance.Phrase.Name("axle strap left"), false, findings);
            return findings;
        }

        Assert.Equal("rig.rating-basis-unknown", Assert.Single(Found()).Id);
        Assert.Single(Found(new Finding(RiggingFindings.Damage, "axle strap left")));
        // The stop of another part with a like name does not count for it.
        Assert.Equal(2, Found(new Finding(RiggingFindings.Damage, "axle strap")).Count);
        Assert.Equal(2, Found(new Finding(RiggingFindings.ScrewPin, "axle strap left")).Count);
    }

    // 10 x 100 N/mm2 on both limbs of 26 mm: 2 x 530.929 mm2 x 1000 N/mm2 = 1061.858 kN; 15.92 times the 6,800 kg printed for 13 mm, so no limit is read off that.
    [Fact]
    public void Chain_without_a_tag_has_a_rating_in_every_grade_and_size()
    {
        var thick = new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(26), M(2)).Rating;
        Assert.Equal(1061.858, thick.Breaking!.Value.Kilonewtons, 0.001);
        Assert.Null(thick.WorkingLoad);
        foreach (var grade in Enumerable.Range((int)ChainGrade.Unmarked, (int)ChainGrade.Grade100 - (int)ChainGrade.Unmarked + 1).Select(g => (ChainGrade)g))
        {
            for (var millimetres = 5.0; millimetres <= 50; millimetres += 0.5)
            {
                var chain = new Chain("chain", grade, Length.FromMillimeters(millimetres), M(2));
                Assert.Equal(2 * Math.PI / 4 * millimetres * millimetres * 10 * Number(grade), chain.Rating.Breaking!.Value.Newtons, 1);
            }
        }
    }

    private static double Number(ChainGrade grade) => grade switch
    {
        ChainGrade.Grade43 => 43,
        ChainGrade.Grade70 => 70,
        ChainGrade.Grade80 => 80,
        ChainGrade.Grade100 => 100,
        _ => 30,
    };
}
