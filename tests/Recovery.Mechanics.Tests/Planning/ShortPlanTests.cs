using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

public class ShortPlanTests
{
    private static ShortFacts Facts(double tonnes = 26, double depth = 0.4) => new(
        Mass.FromTonnes(tonnes), M(depth), Soil.FromConeIndexOnly(KPa(400)), Mass.FromTonnes(14),
        new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(40), M(10)), new AttachmentPoint("rear frame eye", AttachmentKind.RecoveryPoint, true));

    [Fact]
    public void Six_facts_give_a_whole_assessment_and_everything_else_is_listed()
    {
        var a = ShortPlan.For(Facts(), DesignFactorPolicy.SlowPull).Assess();
        Assert.True(a.Demand.Total.LowNewtons > 0 && a.Capability.Sustained.CentralNewtons > 0 && a.Rig is not null);
        string[] filled = ["assume.short-machine", "assume.short-tower", "assume.short-depth", "assume.short-payload", "assume.short-tower-soil", "assume.short-belly"];
        Assert.Equal(filled, a.Assumptions.Select(x => x.Id).Where(id => id.StartsWith("assume.short", StringComparison.Ordinal)));
        // Weight is kept: 26 t and 14 t at 9.80665.
        Assert.Equal(26 * 9.80665, a.Plan.Stuck.Machine.Weight.Kilonewtons, 1e-9);
        Assert.Equal(14 * 9.80665, a.Plan.Tower.Machine.Weight.Kilonewtons, 1e-9);
    }

    [Fact]
    public void What_was_given_is_not_listed()
    {
        var plan = ShortPlan.For(Facts().WithTowerSoil(Soil.FromConeIndex(KPa(900), Frac(0.8))).WithBellyDown(false), DesignFactorPolicy.SlowPull);
        Assert.DoesNotContain(plan.Assess().Assumptions, x => x.Id is "assume.short-tower-soil" or "assume.short-belly");
        Assert.Null(plan.Stuck.Belly);
    }

    [Theory]
    [InlineData(29.9, 2)]
    [InlineData(30.0, 2)]
    [InlineData(30.1, 3)]
    public void Above_thirty_tonnes_a_third_axle_is_taken(double tonnes, int axles) => Assert.Equal(axles, ShortPlan.For(Facts(tonnes), DesignFactorPolicy.SlowPull).Stuck.Machine.Axles.Count);

    [Theory]
    [InlineData(0.49, false)]
    [InlineData(0.50, true)]
    [InlineData(0.51, true)]
    public void From_half_a_metre_the_belly_is_taken_as_down(double depth, bool down) => Assert.Equal(down, ShortPlan.For(Facts(26, depth), DesignFactorPolicy.SlowPull).Stuck.Belly is not null);

    [Fact]
    public void Deeper_and_heavier_never_takes_less()
    {
        double last = 0;
        foreach (var depth in new[] { 0.25, 0.3, 0.35, 0.4, 0.45 })
        {
            var demand = ShortPlan.For(Facts(26, depth), DesignFactorPolicy.SlowPull).Assess().Demand.Total.HighNewtons;
            Assert.True(demand > last);
            last = demand;
        }
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("stuckMass must be from 3000 to 80000 kg", Assert.Throws<ArgumentOutOfRangeException>(() => Facts(2)).Message, StringComparison.Ordinal);
        Assert.Contains("sinkage must be from 0 to 1.5 m", Assert.Throws<ArgumentOutOfRangeException>(() => Facts(26, 1.6)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => ShortPlan.For(null!, DesignFactorPolicy.SlowPull));
        Assert.Throws<ArgumentNullException>(() => ShortPlan.For(Facts(), null!));
    }
}
