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

/// <summary>Every kind of finding of a single piece of gear, raised by a whole plan wherever a plan can.</summary>
public class GearStoryTests
{
    /// <summary>Finding ids with what raises them.</summary>
    public static IReadOnlyDictionary<string, Func<IReadOnlyList<Finding>>> Stories { get; } = new Dictionary<string, Func<IReadOnlyList<Finding>>>(StringComparer.Ordinal)
    {
        ["hitch.legs-too-wide"] = () => Wire(w => w.WithHitch(Hitch.Basket(Angle.FromDegrees(70)))),
        ["hitch.choke-too-sharp"] = () => Wire(w => w.WithHitch(Hitch.ChokedFibreChain(Angle.FromDegrees(10)))),
        ["rig.shackle-size-only"] = () => Plan("shackle", new Shackle("shackle", Rating.Unknown(Force.Zero), Mass.FromKilograms(30)).WithDimensions(Length.FromInches(1.5), null, null)),
        ["rig.shackle-legs-too-wide"] = () => Plan("shackle", new Shackle("shackle", Rating.WorkingLoadLimitTonnes(55), Mass.FromKilograms(30), KN(3000), KN(1100)).WithTwoLegs(Angle.FromDegrees(130))),
        ["rig.chain"] = () => Plan("axle strap", new Chain("axle chain", ChainGrade.Grade100, Length.FromMillimeters(22), M(2))),
        ["rig.low-stretch"] = () => Plan("recovery strap", new WireRope("rope", Rating.BreakingStrengthTonnes(200), Length.FromMillimeters(40), WireCore.Wire, M(20))),
        ["rig.steel-in-eye"] = () => Plan("shackle", new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(22), M(1))),
        ["gear.too-hot"] = () => Strap(s => s.WithExposure(LineExposure.None.WithTemperature(Temperature.FromDegreesCelsius(90)))),
        ["gear.too-cold"] = () => Strap(s => s.WithExposure(LineExposure.None.WithTemperature(Temperature.FromDegreesCelsius(-35)))),
        ["gear.frozen-wet"] = () => Strap(s => s.WithCondition(StrapCondition.Wet).WithExposure(LineExposure.None.WithTemperature(Temperature.FromDegreesCelsius(-2)))),
        ["gear.sunlight-no-figure"] = () => Strap(s => s.WithExposure(LineExposure.None.WithSunlight(30))),
        ["gear.chemical"] = () => Strap(s => s.WithExposure(LineExposure.None.WithChemicals(ChemicalExposure.Alkali))),
        ["gear.overloaded-once"] = () => Strap(s => s.WithExposure(LineExposure.None.WithGreatestLoad(Frac(0.8)))),
        ["gear.pin-too-thin"] = () => Strap(s => s.WithPlaces(SectionPlace.FibrePin("pin", Length.FromMillimeters(40), Length.FromMillimeters(50)), null, null)),
        ["gear.pin-not-stated"] = () => Strap(s => s.WithPlaces(null, SectionPlace.FibrePin("pin", Length.FromMillimeters(40), null), null)),
        ["gear.edge-sharp"] = () => Strap(s => s.WithPlaces(null, null, SectionPlace.Edge("axle", Length.FromMillimeters(8), Length.FromMillimeters(12)))),
        ["gear.edge-between"] = () => Strap(s => s.WithPlaces(null, null, SectionPlace.Edge("axle", Length.FromMillimeters(20), Length.FromMillimeters(12)))),
        ["gear.bend-too-tight"] = () => Wire(w => w.WithBody(SectionPlace.WireBody("hook", w.Diameter, Length.FromMillimeters(30)))),
        ["gear.eye-bent-tight"] = () => Wire(w => w.WithEnds(SectionPlace.WireEye("eye", new WireTermination(WireTerminationKind.FlemishEye, w.Diameter, w.Core), Length.FromMillimeters(60)), null)),
        ["gear.soft-shackle-edge"] = () => Plan("shackle", SoftShackle.OfLine("soft shackle", KN(900)).WithEdge(SectionPlace.SoftShackleEdge("bracket", Length.FromMillimeters(5), Length.FromMillimeters(40)))),
        ["gear.eye-open"] = () => EyeFitModel.Instance.Evaluate("eye", M(0.05), M(0.12), M(0.06), KN(50)).Findings,
        ["gear.eye-on-round"] = () => EyeFitModel.Instance.Evaluate("eye", M(0.05), M(0.4), M(0.06), KN(50), straight: false).Findings,
        ["gear.eye-bunched"] = () => EyeFitModel.Instance.Evaluate("eye", M(0.05), M(0.4), M(0.09), KN(50), M(0.06)).Findings,
        ["gear.bearing-pressure"] = () => EyeFitModel.Instance.Evaluate("eye", M(0.03), M(0.4), M(0.06), KN(150)).Findings,
    };

    public static TheoryData<string> Ids => [.. Stories.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_is_raised_with_its_severity_and_numbers(string id)
    {
        var finding = Stories[id]().FirstOrDefault(f => f.Id == id);
        Assert.NotNull(finding);
        Assert.Equal(FindingCatalogue.All.Single(d => d.Id == id).Severity, finding.Severity);
        Assert.DoesNotContain("{", finding.Message + finding.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain("unknown", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_kind_of_this_gear_has_a_story() => Assert.Equal(GearFindings.All.Select(d => d.Id).Order(StringComparer.Ordinal), Stories.Keys.Order(StringComparer.Ordinal));

    private static IReadOnlyList<Finding> Plan(string replaced, RigPart part) => ReferencePlans.Gentle().With(ReferencePlans.StrongRig().Replace(replaced, part)).Assess().Findings;

    private static IReadOnlyList<Finding> Strap(Func<Strap, Strap> change) => Plan("axle strap", change(new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(300), M(2)) { Choked = true, AngleOfChoke = Angle.FromDegrees(130) }));

    private static IReadOnlyList<Finding> Wire(Func<WireRope, WireRope> change) => Plan("axle strap", change(new WireRope("axle wire", Rating.BreakingStrengthTonnes(200), Length.FromMillimeters(40), WireCore.Wire, M(2))));
}
