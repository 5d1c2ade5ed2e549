using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Odds that the machine drives itself out against the typed self-recovery.</summary>
public class OwnDriveTests
{
    [Property(MaxTest = 200)]
    public Property The_sampled_central_case_is_the_typed_self_recovery() => Prop.ForAll(Machines(), stuck =>
    {
        var plan = ReferencePlans.Gentle().With(stuck);
        PlanSamplerTests.Drives(stuck, PlanSamplerTests.At(PlanSampler.For(plan), []));

        // Nothing scatters, so every sample says what the typed answer says at central.
        var odds = PlanSampler.For(plan).RunPart(0, 10, 1);
        var self = SelfRecovery.Estimate(stuck);
        Assert.Equal(self.NetTraction is null ? null : self.NetTraction!.Value.CentralNewtons >= self.Holding!.Value.CentralNewtons ? 10L : 0, odds.FreesItself?.Hits);
        if (self.Outlook == SelfRecoveryOutlook.MovesItself) Assert.Equal(10, odds.FreesItself!.Value.Hits);
        if (self.Outlook == SelfRecoveryOutlook.Held) Assert.Equal(0, odds.FreesItself!.Value.Hits);
    });

    [Property(MaxTest = 50)]
    public Property Sampled_soil_is_the_typed_self_recovery_on_that_soil(byte softer) => Prop.ForAll(Machines(), stuck =>
    {
        var f = 0.5 + (softer / 200.0);
        var plan = ReferencePlans.Gentle().With(stuck);
        var typed = stuck with { Soil = Soil.FromConeIndex(stuck.Soil.ConeIndex * f, stuck.Soil.RemouldingIndex) };
        PlanSamplerTests.Drives(typed, PlanSamplerTests.At(PlanSampler.For(plan).With("stuck.cone-index", Spread.Uniform(0.1, 3)), [f]));
    });

    [Fact]
    public void Buried_wheels_and_wheels_without_drive_get_no_number_and_the_report_says_why()
    {
        var demo = PlanSampler.WithDefaults(PolderHarvester.Create()).Run(1000, 1);
        Assert.Null(demo.FreesItself);
        Assert.Equal(1000, demo.OwnWheelsNotCovered.Hits);
        Assert.Contains("it drives itself out      no number: no wheel model covers buried wheels\n", demo.ToReport(), StringComparison.Ordinal);
        var plan = PolderHarvester.Create();
        var towed = plan.With(new StuckMachine(plan.Stuck.Machine.WithAxles(plan.Stuck.Machine.Axles.Select(a => a.WithDriven(false))), plan.Stuck.Soil, [M(0.1), M(0.1), M(0.1)], PullDirection.Rearwards));
        var none = PlanSampler.WithDefaults(towed).Run(1000, 1);
        Assert.Null(none.FreesItself);
        Assert.Contains("no number: none of its wheels is driven\n", none.ToReport(), StringComparison.Ordinal);
    }

    [Fact]
    public void Gross_traction_is_never_set_against_the_demand()
    {
        // Rolling wheels on a slope: gross traction is above the demand, net traction below what holds it beside its rolling.
        var stuck = new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(420), Frac(0.8)), [M(0.1), M(0.1), M(0.1)], PullDirection.Rearwards) { Grade = Grade.FromPercent(4) };
        var self = SelfRecovery.Estimate(stuck);
        Assert.True(self.GrossTraction.Newtons > self.Demand.CentralNewtons);
        Assert.True(self.NetTraction!.Value.CentralNewtons < self.Holding!.Value.CentralNewtons);
        Assert.Equal(0, PlanSampler.For(ReferencePlans.Gentle().With(stuck)).RunPart(0, 10, 1).FreesItself!.Value.Hits);
    }

    [Fact]
    public void An_empty_machine_on_firm_ground_drives_out_in_every_sample()
    {
        var stuck = new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(1500), Frac(1)), [M(0.1), M(0.1), M(0.1)], PullDirection.Rearwards).Without("beet");
        Assert.True(SelfRecovery.Estimate(stuck).NetTraction!.Value.CentralNewtons > SelfRecovery.Estimate(stuck).Holding!.Value.CentralNewtons);
        Assert.Equal(10, PlanSampler.For(ReferencePlans.Gentle().With(stuck)).RunPart(0, 10, 1).FreesItself!.Value.Hits);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_freed_machine_is_held_by_the_firmest_ground_on_its_way_as_assessed(bool road)
    {
        var plan = ReferencePlans.Gentle();
        plan = plan.With(plan.Stuck with { Grade = Grade.FromPercent(-6) }).With(plan.Tower with { HardSurfaceInReach = road, FirmestConeIndex = KPa(2500) });
        var o = PlanSamplerTests.At(PlanSampler.For(plan), []);
        Assert.Equal(RollingAway.HoldsOnFirmest(plan), o.RollingHoldsOnFirmest, 1e-6);
        Assert.Equal(RollingAway.Holds(plan, plan.Stuck.Soil.RatingConeIndex.Pascals), o.RollingHolds, 1e-6);
        Assert.True(o.RollingHoldsOnFirmest < RollingAway.Holds(plan, plan.Stuck.Soil.ConeIndex.Pascals));
    }

    [Fact]
    public void A_depth_that_scatters_over_the_break_counts_the_samples_without_an_answer()
    {
        var plan = ReferencePlans.Gentle().With(new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(900), Frac(0.9)), [M(0.18), M(0.18), M(0.18)], PullDirection.Rearwards).Without("beet"));
        var depth = PlanInputList.For(plan).First(i => i.Key.StartsWith("stuck.sinkage:", StringComparison.Ordinal)).Key;
        var odds = PlanSampler.For(plan).With(depth, Spread.Uniform(0.8, 1.6)).RunPart(0, 400, 1);
        Assert.InRange(odds.OwnWheelsNotCovered.Hits, 100, 390);
        Assert.True(odds.FreesItself!.Value.Hits <= 400 - odds.OwnWheelsNotCovered.Hits);
        Assert.Contains("  no wheel model for it", odds.ToReport(), StringComparison.Ordinal);
    }

    private static Arbitrary<StuckMachine> Machines() => (
        from ci in Gen.Choose(150, 1500)
        from ri in Gen.Choose(50, 100)
        from z in Gen.Choose(0, 25)
        from grade in Gen.Choose(-8, 8)
        from belly in Gen.Elements(true, false)
        from unloaded in Gen.Elements(true, false)
        from wheels in Gen.Elements(WheelMotion.Undeclared, WheelMotion.Turning, WheelMotion.Locked)
        from frame in Gen.Elements(Suspension.Undeclared, Suspension.Equalised, Suspension.StraightFrame)
        let stuck = new StuckMachine(Harvester(frame), Soil.FromConeIndex(KPa(ci), Frac(ri / 100.0)), [M(z / 100.0), M(z / 100.0), M(z / 100.0)], PullDirection.Rearwards)
        {
            Grade = Grade.FromPercent(grade),
            Belly = belly ? new Belly(M(3), M(1.2), M(0.1)) : null,
            Wheels = wheels,
        }
        select unloaded ? stuck.Without("beet") : stuck).ToArbitrary();
}
