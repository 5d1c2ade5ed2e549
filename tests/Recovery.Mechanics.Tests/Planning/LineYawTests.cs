using System;
using System.Linq;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>A line off the direction of the pull leans on the bridle as well.</summary>
public class LineYawTests
{
    private static RecoveryPlan Plan(double yaw, double? lean = null)
    {
        var plan = ReferencePlans.Gentle();
        var bridle = Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(4)), M(2));
        if (lean is { } declared) bridle = bridle.WithLean(Angle.FromDegrees(declared));
        return plan.With(plan.Rig.Replace("bridle", bridle)).With(ReferencePlans.Site() with { LineYaw = Angle.FromDegrees(yaw) });
    }

    // Eye by the highest point of the ellipse (a 2, b sqrt 3) along the pull at 20 deg: x 0.7749, legs 2.3874 and 1.6126 m, 56.05 deg, harder leg 0.7339 at friction 0.30, squeeze 0.7339 x 1.7749/2.3874 = 0.5456. Straight: 60 deg, 0.7416, 0.3708.
    [Theory]
    [InlineData(0, 60.00, 0.7416, 0.3708, 2.0)]
    [InlineData(20, 56.05, 0.7339, 0.5456, 2.3874)]
    [InlineData(-20, 56.05, 0.7339, 0.5456, 2.3874)]
    public void An_undeclared_lean_is_the_yaw_of_the_line(double yaw, double angle, double leg, double inward, double longer)
    {
        var assessment = Plan(yaw).Assess();
        var bridle = assessment.Plan.Rig.Bridle!;
        Assert.Equal(yaw, bridle.Lean.Degrees, 1e-9);
        Assert.Equal(angle, bridle.IncludedAngle.Degrees, 0.00501);
        var load = assessment.Rig!.CasualtyLoad;
        Assert.Equal(leg, load.Share, 0.0000501);
        Assert.Equal(inward, load.InwardProcedure.Newtons / load.TotalProcedure.Newtons, 0.0000501);
        Assert.Equal(longer, assessment.Plan.Rig.LengthOverall.Meters - Plan(yaw).Rig.Parts.OfType<Strap>().Where(s => s.Name == "recovery strap" || s.Name == "axle strap").Sum(s => s.Length.Meters), 0.0000501);
        Assert.DoesNotContain(assessment.Findings, f => f.Id == "plan.contradiction");
    }

    /// <summary>30 t, track 2 m, hitch 3 m up, 45 degrees: 30 x 9.80665 x 1/3 = 98.0665 kN along the pull turns it over.</summary>
    [Fact]
    public void Turning_over_limits_the_pull_of_a_plan_and_the_report_says_so()
    {
        var assessment = Plan(45).With(ReferencePlans.Tractor(30, 3.0)).Assess();
        Assert.Equal(PullLimit.Overturn, assessment.Capability.LimitedBy);
        Assert.Equal(98.0665, assessment.Capability.Sustained.Central.Kilonewtons, 1e-9);
        Assert.Contains(assessment.Findings, f => f.Id == "plan.line-sideways" && f.Severity == Severity.Stop);
        Assert.Contains("98.1 kN along the pull would turn it over", assessment.ToReport().Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("turn it over", Plan(0).Assess().ToReport(), StringComparison.Ordinal);
    }

    /// <summary>30 t (294.1995 kN), track 2 m, hitch 0.5 m up, line 40 degrees off and rising by 20: it takes weight off as it pulls. T = 294.1995/(0.5 cos 20 sin 40 + sin 20) = 456.8092 kN overturns, of it cos 20 sin 40 across: 275.9231 kN, not the 588.4 of a level line.</summary>
    [Fact]
    public void A_line_that_lifts_as_well_lifts_one_side_sooner_and_the_finding_says_by_how_much()
    {
        var assessment = Plan(40).With(ReferencePlans.Site() with { LineYaw = Angle.FromDegrees(40), LinePitch = Angle.FromDegrees(-20) }).Assess();
        Assert.Equal(275.9231, assessment.Findings.Single(f => f.Id == "plan.line-sideways").Available!.Value, 0.0001);
    }

    [Fact]
    public void A_later_yaw_takes_the_place_of_an_earlier_one_and_never_of_a_declared_lean()
    {
        Assert.Equal(0, Plan(20).With(ReferencePlans.Site()).Rig.Bridle!.Lean.Degrees, 1e-12);
        var site = ReferencePlans.Site() with { LineYaw = Angle.FromDegrees(5) };
        Assert.Equal(5, Plan(20).With(site).Rig.Bridle!.Lean.Degrees, 1e-9);
        Assert.Equal(10, Plan(20, 10).With(site).Rig.Bridle!.Lean.Degrees, 1e-9);
        // A stronger bridle of a remedy leans alike.
        Assert.Equal(20, Plan(20).Rig.Bridle!.WithStrap(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(90), M(4))).Lean.Degrees, 1e-9);
    }

    [Theory]
    [InlineData(20, 20.0, false)]
    [InlineData(20, -20.0, false)]
    [InlineData(20, 20.9, false)]
    [InlineData(20, 21.1, true)]
    [InlineData(20, 0.0, true)]
    [InlineData(0, 10.0, true)]
    [InlineData(0, 0.0, false)]
    public void A_declared_lean_that_is_not_the_yaw_is_a_contradiction(double yaw, double lean, bool contradicts)
    {
        var found = Plan(yaw, lean).Assess().Findings.Where(f => f.Id == "plan.contradiction").ToList();
        Assert.Equal(contradicts, found.Count == 1);
        if (contradicts) Assert.Contains("the bridle is said to lean by " + Math.Abs(lean).ToString(System.Globalization.CultureInfo.InvariantCulture) + " deg", found[0].Message, StringComparison.Ordinal);
    }

    /// <summary>The towing machine feels what its own line pulls: through a tackle the line to the stuck machine carries three times that, and turns the towing machine over no sooner.</summary>
    [Fact]
    public void A_tackle_adds_nothing_to_the_side_pull_on_the_puller()
    {
        var plan = Plan(20);
        Finding Side(RecoveryPlan p) => p.Assess().Findings.Single(f => f.Id == "plan.line-sideways");
        Finding alone = Side(plan), through = Side(plan.WithTackle(new LineTackle(3) { AnchorHolds = KN(2000), BlockRating = KN(2000) }));
        Assert.Equal(3 * plan.Assess().Imposable.Newtons, plan.WithTackle(new LineTackle(3)).Assess().Imposable.Newtons, 1e-6);
        Assert.Equal(alone.Required!.Value, through.Required!.Value, 1e-9);
        Assert.Equal((alone.Available, alone.Severity), (through.Available, through.Severity));
    }
}
