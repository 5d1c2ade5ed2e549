using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>What each part of the gear of a plan needs, and what is looked at before anyone hooks on.</summary>
public class GearNeedsTests
{
    /// <summary>A plan with every kind of gear in its line, sensible or not.</summary>
    public static RecoveryPlan EveryKind()
    {
        var plan = ReferencePlans.Gentle();
        return plan.With(new Rig(
            plan.Rig.Drawbar,
            [
                new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(300), M(15)),
                new Shackle("shackle", Rating.WorkingLoadLimitTonnes(55), Mass.FromKilograms(30), KN(3000), KN(1100)),
                new SnatchBlock("block", Rating.WorkingLoadLimitTonnes(50, 4), Mass.FromKilograms(60)),
                new WireRope("wire", Rating.BreakingStrengthTonnes(200), Length.FromMillimeters(40), WireCore.Wire, M(5)),
                new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(22), M(2)),
                SoftShackle.OfLine("soft shackle", KN(1500)),
                new Strap("roundsling", Fibre.Polyester, Rating.BreakingStrengthTonnes(200), M(3)).WithConstruction(StrapConstruction.Roundsling),
                SoftShackle.OfLine("soft shackle 2", KN(1500)),
                new Strap("rope", Fibre.Hmpe, Rating.BreakingStrengthTonnes(200), M(3)).WithConstruction(StrapConstruction.Rope),
            ],
            plan.Rig.Casualty));
    }

    /// <summary>A plan with an unmarked chain alone, so stiff that no thicker one would do.</summary>
    public static RecoveryPlan ChainAlone()
    {
        var plan = ReferencePlans.AsFound();
        return plan.With(new Rig(plan.Rig.Drawbar, [new Chain("chain", ChainGrade.Unmarked, Length.FromMillimeters(13), M(2))], plan.Rig.Casualty));
    }

    [Fact]
    public void A_plan_says_what_its_gear_needs()
    {
        var a = ReferencePlans.AsFound().Assess();
        Assert.Equal(["drawbar", "recovery strap", "bridle", "shackle", "axle strap", "front axle"], a.GearNeeds.Select(n => n.Part));
        var strap = a.GearNeeds[1];
        // Wet nylon keeps 0.85; the policy of the plan asks 5 of the steady load.
        Assert.Equal(a.Loads!.Steady.Kilonewtons * 5 / 0.85, strap.BreakingForRated!.Value.Kilonewtons, 1e-6);
        Assert.Same(a.Plan.Policy, strap.Policy);
        Assert.Equal([GearKind.Webbing, GearKind.Shackle, GearKind.Drawbar, GearKind.AttachmentPoint], a.Inspection.Select(c => c.Kind).Distinct());
        Assert.All(a.Inspection, c => Assert.NotEmpty(c.Source.Citation));
        var report = a.ToReport();
        Assert.Contains("What each part must be marked with at least", report, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(Text.Number(a.Inspection.Count) + " points", string.Join(" ", report.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Contains("short tons", a.ToDocument(DisplayUnits.Imperial).ToText(72), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_said_where_the_line_is_not_known()
    {
        var plan = ReferencePlans.AsFound();
        var a = plan.With(plan.Rig.Replace("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.Unknown(Force.Zero), M(9)))).Assess();
        Assert.Empty(a.GearNeeds);
        Assert.NotEmpty(a.Inspection);
    }

    [Fact]
    public void A_chain_alone_has_no_strength_that_would_do()
    {
        var a = ChainAlone().Assess();
        Assert.Equal(Verdict.Stop, a.Verdict);
        Assert.Null(a.GearNeeds.Single(n => n.Part == "chain").LeastBreaking);
        Assert.Contains("none would do", a.ToReport(), StringComparison.Ordinal);
        Assert.Equal("rig.low-stretch", a.Findings.Single(f => f.Id == "rig.low-stretch").Id);
        Assert.Contains(a.Sources, s => s == LineMaterial.ChainOfGrade80Size.Source);
        Assert.Contains(a.Explain(), w => w.Steps.Any(s => s.Symbol == "R"));
    }

    [Fact]
    public void How_gear_is_laid_shows_in_the_fingerprint()
    {
        var plan = EveryKind();
        var before = plan.Assess().Fingerprint;
        string With(RigPart part) => plan.With(plan.Rig.Replace(part.Name, part)).Assess().Fingerprint;
        Assert.NotEqual(before, With(((Strap)plan.Rig.Parts[6]).WithBasket(Angle.FromDegrees(10))));
        Assert.NotEqual(before, With(new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(22), M(2.5))));
        Assert.NotEqual(before, With(new WireRope("wire", Rating.BreakingStrengthTonnes(200), Length.FromMillimeters(40), WireCore.Wire, M(6))));
        Assert.Equal(before, With(new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(22), M(2))));
    }
}
