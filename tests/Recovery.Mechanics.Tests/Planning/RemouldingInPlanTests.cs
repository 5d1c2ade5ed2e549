using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Tests.Support;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>What a remoulding test says reaches the plan that rests on it.</summary>
public class RemouldingInPlanTests
{
    private static RemouldingTest Liquid => new(KPa(300), KPa(10));

    private static RemouldingTest Stronger => new(KPa(300), KPa(330));

    [Fact]
    public void Each_machine_is_named_with_the_test_of_its_soil()
    {
        var plan = ReferencePlans.Gentle();
        var both = plan.With(plan.Stuck.WithSoil(plan.Stuck.Soil.WithRemouldingTest(Liquid))).With(plan.Tower.WithSoil(plan.Tower.Soil.WithRemouldingTest(Stronger)));
        Assert.Equal(
            ["ground.remoulding-raised: soil beside the " + plan.Stuck.Machine.Name, "ground.remoulding-capped: soil under the " + plan.Tower.Machine.Name],
            both.Assess().Findings.Where(f => f.Id.StartsWith("ground.", StringComparison.Ordinal)).OrderByDescending(f => f.Severity).Select(f => f.Id + ": " + f.Subject));
    }

    [Fact]
    public void One_test_for_both_is_said_once_and_a_plain_one_not_at_all()
    {
        var plan = ReferencePlans.Gentle();
        var same = plan.With(plan.Stuck.WithSoil(plan.Stuck.Soil.WithRemouldingTest(Liquid))).With(plan.Tower.WithSoil(plan.Tower.Soil.WithRemouldingTest(Liquid)));
        Assert.Single(same.Assess().Findings, f => f.Id.StartsWith("ground.", StringComparison.Ordinal));
        var plain = plan.With(plan.Stuck.WithSoil(plan.Stuck.Soil.WithRemouldingTest(new RemouldingTest(KPa(300), KPa(210)))));
        Assert.DoesNotContain(plain.Assess().Findings, f => f.Id.StartsWith("ground.", StringComparison.Ordinal));
    }

    /// <summary>An index of 0.05 by declaration and one that a test was raised to give the same numbers and another answer.</summary>
    [Fact]
    public void A_test_is_part_of_the_fingerprint()
    {
        var plan = ReferencePlans.Gentle();
        RecoveryPlan On(Soil soil) => plan.With(plan.Stuck.WithSoil(soil));
        var number = On(Soil.FromConeIndex(KPa(350), Frac(0.05)));
        var test = On(Soil.FromConeIndexOnly(KPa(350)).WithRemouldingTest(Liquid));
        Assert.Equal(number.Assess().Demand.Total, test.Assess().Demand.Total);
        Assert.NotEqual(number.Assess().Fingerprint, test.Assess().Fingerprint);
    }
}
