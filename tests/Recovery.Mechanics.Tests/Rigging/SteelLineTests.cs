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

/// <summary>Chain and wire rope as lines of a rig: length, stretch, what flies, what is found of them, how much stronger they would have to be.</summary>
public class SteelLineTests
{
    private static readonly AttachmentPoint Drawbar = new("drawbar", AttachmentKind.Drawbar, true);
    private static readonly AttachmentPoint Axle = new("front axle", AttachmentKind.FrontAxle, true);

    private static Chain Chain13(ChainGrade grade = ChainGrade.Grade80) => new("chain", grade, Length.FromMillimeters(13), M(2));

    private static WireRope Wire(double kilonewtons = 600, double length = 5) => new WireRope("wire", Rating.BreakingStrength(KN(kilonewtons)), Length.FromMillimeters(30), WireCore.Wire, M(length)).WithEnds(SectionPlace.Documented("a"), SectionPlace.Documented("b"));

    private static Strap Nylon(string name = "recovery strap") => new(name, Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9));

    private static Shackle Bow(string name = "shackle") => new(name, Rating.WorkingLoadLimitTonnes(12), Mass.FromKilograms(5), KN(588.399), KN(235.36));

    private static Rig Tailed(RigPart steel) => new Rig(Drawbar, [Nylon(), Bow(), steel], Axle).WithWear(1);

    private static IReadOnlyList<string> Found(Rig rig)
    {
        var findings = new List<Finding>();
        RigInspection.Add(rig, findings);
        return findings.Select(f => f.Id + " " + f.Subject).ToList();
    }

    // 13 mm in grade 80 breaks at 212.3717 kN and weighs 17.5 g/(m kN); series by hand: 11/(9/1176.798 + 2/14866.016) and 11/(9/2941.995 + 2/19113.450) kN.
    [Fact]
    public void A_chain_is_part_of_the_line()
    {
        var rig = Tailed(Chain13());
        var line = rig.Line!;
        Assert.Equal(11, rig.LengthOverall.Meters, 1e-12);
        Assert.Equal(11, line.Length.Meters, 1e-12);
        Assert.Equal(1413.4445, line.SoftStiffness.Kilonewtons, 1e-3);
        Assert.Equal(3476.8459, line.StiffStiffness.Kilonewtons, 1e-3);
        Assert.Equal(21.5722, line.MassPerMetre.KilogramsPerMeter * 11, 1e-3);
        Assert.Equal(Standing.FromMemory, line.Source.Standing);
        // 2.2 kg/m at 10 mm, times 1.69, two metres.
        Assert.Equal(7.436, Chain13().Mass.Kilograms, 0.01);
    }

    [Fact]
    public void Steel_of_one_size_stretches_alike_in_every_grade()
    {
        var soft = new[] { ChainGrade.Unmarked, ChainGrade.Grade43, ChainGrade.Grade70, ChainGrade.Grade100 }.Select(g => new Rig(Drawbar, [Chain13(g)], Axle).Line!.SoftStiffness.Kilonewtons).ToList();
        Assert.All(soft, s => Assert.Equal(14866.016, s, 1e-2));
        Assert.Equal(2, new Rig(Drawbar, [Chain13()], Axle).LengthOverall.Meters, 1e-12);
    }

    [Fact]
    public void A_wire_rope_stretches_by_its_breaking_strength()
    {
        var line = new Rig(Drawbar, [Wire()], Axle).Line!;
        Assert.Equal(39000, line.SoftStiffness.Kilonewtons, 1e-6);
        Assert.Equal(45000, line.StiffStiffness.Kilonewtons, 1e-6);
        // 5.18 g/(m kN) x 600 kN x 5 m.
        Assert.Equal(15.54, Wire().Mass!.Value.Kilograms, 1e-9);
        var unknown = new WireRope("wire", Rating.WorkingLoadLimitTonnes(10), Length.FromMillimeters(30), WireCore.Wire, M(5));
        Assert.Null(unknown.Mass);
        Assert.Null(new Rig(Drawbar, [unknown], Axle).Line);
        Assert.Throws<ArgumentException>(() => new Rig(Drawbar, [Bow()], Axle));
    }

    [Fact]
    public void Chain_flies_with_the_fittings_and_parts_into_a_piece_that_nobody_weighed()
    {
        var rig = Tailed(Chain13());
        var check = RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig));
        FailureCase Case(string part, string towards) => check.Failures.Single(f => f.Part == part && f.Towards == towards);
        var strap = Case("recovery strap", "the stuck machine");
        Assert.Equal(["shackle", "chain"], strap.Hardware);
        Assert.Equal(12.433, strap.HardwareMass.Kilograms, 1e-3);
        Assert.True(strap.MassIsComplete);
        Assert.Empty(Case("recovery strap", "the puller").Hardware);
        var chain = Case("chain", "the puller");
        Assert.Equal(["shackle", "broken-off piece of the chain"], chain.Hardware);
        Assert.False(chain.MassIsComplete);
        Assert.Equal(5, chain.HardwareMass.Kilograms, 1e-9);
        // The bound takes the fittings alone: the end of a chain can be as fast as the end of a line.
        Assert.Equal(chain.SpeedMetresPerSecond, strap.SpeedMetresPerSecond, 1e-9);
        Assert.Equal(["shackle", "chain", "torn-off piece of the drawbar"], Case("drawbar", "the stuck machine").Hardware);
        Assert.Equal(["shackle", "chain", "torn-off piece of the front axle"], Case("front axle", "the puller").Hardware);
    }

    [Fact]
    public void The_mass_of_a_wire_rope_that_is_not_known_is_not_counted_as_none()
    {
        var rig = Tailed(new WireRope("wire", Rating.WorkingLoadLimitTonnes(10), Length.FromMillimeters(30), WireCore.Wire, M(5)));
        var check = RigCheck.Of(rig, DesignFactorPolicy.SlowPull, LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon().Elastic!, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2))));
        var strap = check.Failures.First(f => f.Part == "recovery strap" && f.Hardware.Contains("wire"));
        Assert.False(strap.MassIsComplete);
    }

    [Fact]
    public void A_chain_behind_the_bridle_flies_with_the_loose_end()
    {
        var rig = ReferenceRigs.Worked().Replace("axle strap", new Chain("axle chain", ChainGrade.Grade80, Length.FromMillimeters(16), M(1.5)));
        Assert.Equal(9 + 2 + 1.5, rig.LengthOverall.Meters, 1e-9);
        var check = RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig));
        Assert.Equal(["shackle", "broken-off piece of the axle chain"], check.Failures.Single(f => f.Part == "axle chain" && f.Towards == "the puller" && f.Jam is null).Hardware);
        Assert.Equal(["shackle", "axle chain", "torn-off piece of the front axle"], check.Failures.Single(f => f.Part.StartsWith("front axle", StringComparison.Ordinal) && f.Jam is null).Hardware);
    }

    [Fact]
    public void Steel_in_the_line_is_found_by_where_it_lies()
    {
        Assert.Equal(["rig.chain chain", "rig.steel-on-free-end chain", "rig.steel-on-free-end shackle"], Found(Tailed(Chain13())).Where(f => !f.StartsWith("rig.screw", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        var bare = Found(new Rig(Drawbar, [Nylon(), Chain13()], Axle));
        Assert.Contains("rig.steel-in-eye chain", bare);
        Assert.DoesNotContain(bare, f => f.StartsWith("rig.low-stretch", StringComparison.Ordinal));
        var between = Found(new Rig(Drawbar, [Nylon(), Bow(), Wire(), Bow("shackle 2"), Nylon("strap 2")], Axle));
        Assert.Contains("line.metal-joiner wire", between);
        Assert.DoesNotContain("rig.steel-on-free-end wire", between);
        Assert.Contains("rig.low-stretch wire", Found(new Rig(Drawbar, [Wire()], Axle)));
        Assert.DoesNotContain(Found(new Rig(Drawbar, [Wire()], Axle)), f => f.StartsWith("rig.steel", StringComparison.Ordinal));
        Assert.Contains("rig.low-stretch strap", Found(new Rig(Drawbar, [new Strap("strap", Fibre.Hmpe, Rating.BreakingStrengthTonnes(60), M(9))], Axle)));
        var block = Found(new Rig(Drawbar, [Nylon(), new SnatchBlock("block", Rating.Unknown(Force.Zero), Mass.FromKilograms(20)), Nylon("strap 2")], Axle));
        Assert.Contains("line.metal-joiner block", block);
        Assert.Contains("rig.rating-basis-unknown block", block);
    }

    [Fact]
    public void A_thicker_chain_is_worked_for_the_whole_rig()
    {
        // Grade 30 of 13 mm breaks at 79.6 kN, under the peak of this rig.
        foreach (var steel in new RigPart[] { Chain13(ChainGrade.Unmarked), new Chain("chain", ChainGrade.Grade80, Length.FromMillimeters(13), M(2), Rating.WorkingLoadLimitTonnes(2, 4)), new WireRope("chain", Rating.BreakingStrength(KN(90)), Length.FromMillimeters(12), WireCore.Wire, M(4)).WithEnds(SectionPlace.Documented("a"), SectionPlace.Documented("b")) })
        {
            var rig = Tailed(steel);
            var check = RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig));
            PartCheck Of(RigCheck c) => c.Parts.Single(p => p.Part.Name == "chain");
            Assert.True(Of(check).Reserve < 2.3);
            var remedy = check.RemedyForFloor("chain")!;
            Assert.Equal(2.3, Of(remedy.After).Reserve!.Value, 1e-8);
            Assert.Equal(remedy.BreakingStrength.Newtons, Of(remedy.After).Strength!.Value.Newtons, 1);
            // More steel is stiffer, and the peak is higher with it.
            var grown = Math.Sqrt(remedy.BreakingStrength.Newtons / Of(check).Strength!.Value.Newtons);
            Assert.Equal(grown * Size(steel), Size(remedy.After.Rig.Parts[2]), 1e-9);
            Assert.Equal(grown * grown * steel.Elastic!.StiffNewtons, remedy.After.Rig.Parts[2].Elastic!.StiffNewtons, 1);
            Assert.True(remedy.After.Loads.Output.Procedure > check.Loads.Output.Procedure);
        }
    }

    // Chain alone is so stiff that a thicker one raises its own peak: k 9.56 MN/m, 18 t and 2 km/h ask more than fifty times grade 30 of 13 mm.
    [Fact]
    public void Chain_alone_has_no_remedy()
    {
        var rig = new Rig(Drawbar, [Chain13(ChainGrade.Unmarked)], Axle).WithWear(1);
        Assert.Null(RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig)).RemedyForFloor("chain"));
    }

    [Fact]
    public void A_chain_far_beyond_the_printed_sizes_has_its_breaking_strength_alone()
    {
        // Grade 100 is printed to 13 mm, 6,800 kg: 15 times that is its breaking strength at 25.24 mm.
        var last = new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(25.2), M(2)).Rating;
        Assert.Equal(66.68522, last.WorkingLoad!.Value.Kilonewtons, 1e-5);
        var next = new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(25.3), M(2)).Rating;
        Assert.Null(next.WorkingLoad);
        Assert.Equal(1005.45, next.Breaking!.Value.Kilonewtons, 0.1);
    }

    [Fact]
    public void No_chain_is_made_that_thick()
    {
        var rig = new Rig(Drawbar, [new Chain("chain", ChainGrade.Unmarked, Length.FromMillimeters(49.9), M(2))], Axle).WithWear(1);
        var loads = LineLoads.Evaluate(KN(1500), Mass.FromTonnes(18), rig.Line!, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)));
        Assert.Null(RigCheck.Of(rig, DesignFactorPolicy.SlowPull, loads).RemedyForFloor("chain"));
    }

    [Fact]
    public void A_block_can_be_stronger_too()
    {
        var rig = new Rig(Drawbar, [Nylon(), new SnatchBlock("block", Rating.WorkingLoadLimitTonnes(3, 4), Mass.FromKilograms(20)).WithEfficiency(0.96), Nylon("strap 2")], Axle).WithWear(1);
        var remedy = RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig)).RemedyForFloor("block")!;
        Assert.Equal(2.3, remedy.After.Parts.Single(p => p.Part.Name == "block").Reserve!.Value, 1e-8);
        Assert.Equal(0.96, ((SnatchBlock)remedy.After.Rig.Parts[1]).Efficiency);
    }

    // k = 4 cos(beta)^2 EA/L: 3683.7 kN/m of the worked bridle of 4 m, EA 4118.8 kN, anchors 1.3 m apart.
    [Fact]
    public void A_basket_is_two_legs()
    {
        var beta = Math.Asin(1.3 / 4);
        var strap = new Strap("strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(4)) { Measured = new ElasticLine(M(4), KN(4118.793), KN(4118.793), LinearDensity.FromKilogramsPerMeter(1.29), LinesSources.PolyesterWebbing) };
        var basket = strap.WithBasket(Angle.FromRadians(beta));
        var line = new Rig(Drawbar, [basket], Axle).Line!;
        Assert.Equal(3683.7, line.SoftStiffness.Kilonewtons / line.Length.Meters, 0.05);
        Assert.Equal(5.16, line.MassPerMetre.KilogramsPerMeter * line.Length.Meters, 1e-9);
        Assert.Equal(2 * Math.Cos(beta), line.Length.Meters, 1e-9);
        Assert.Equal(line.Length.Meters, new Rig(Drawbar, [basket], Axle).LengthOverall.Meters, 1e-12);
        Assert.Equal(4, new Rig(Drawbar, [basket.WithBasket(null)], Axle).LengthOverall.Meters, 1e-12);
    }

    [Theory]
    [InlineData(0, 2)]
    [InlineData(30, 1.7320508)]
    [InlineData(60, 1)]
    public void A_basket_counts_twice_the_cosine(double degrees, double parts)
    {
        var rig = ReferenceRigs.Worked();
        var strap = (Strap)rig.Parts[3];
        var check = RigCheck.Of(rig.Replace("axle strap", strap.WithBasket(Angle.FromDegrees(degrees))), DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig));
        Assert.Equal(40 * 9.80665 * parts, check.Parts.Single(p => p.Part.Name == "axle strap").Strength!.Value.Kilonewtons, 1e-4);
    }

    [Fact]
    public void A_basket_that_opens_too_wide_is_refused_and_a_choke_comes_first()
    {
        var rig = ReferenceRigs.Worked();
        var wide = ((Strap)rig.Parts[3]).WithBasket(Angle.FromDegrees(60.1));
        Assert.Contains("hitch.legs-too-wide axle strap", Found(rig.Replace("axle strap", wide)).Select(f => f.Replace("basket", "axle strap", StringComparison.Ordinal)));
        Assert.Null(RigCheck.Of(rig.Replace("axle strap", wide), DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig)).Parts.Single(p => p.Part.Name == "axle strap").Strength);
        var both = wide.WithBasket(Angle.FromDegrees(0)).WithChoked(true);
        Assert.Equal(HitchKind.Choker, both.Hitch.Kind);
        Assert.Equal(1.2, both.LineMetres);
        Assert.Throws<ArgumentException>(() => Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(4)).WithBasket(Angle.Zero), M(1.3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => wide.WithBasket(Angle.FromDegrees(91)));
    }

    private static double Size(RigPart part) => part is Chain c ? c.Diameter.Meters : ((WireRope)part).Diameter.Meters;
}
