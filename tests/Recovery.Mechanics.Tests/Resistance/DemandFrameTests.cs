using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>What a demand shows beside its sums: the rigid step, the frame that governs, wheels near the break between rolling and buried.</summary>
public class DemandFrameTests
{
    [Fact]
    public void A_dug_hole_and_a_shallow_rut_have_no_rigid_step()
    {
        Assert.Equal(884, PullDemand.Estimate(StuckHarvester()).RigidStep!.Value.Kilonewtons, 0.5);
        Assert.Null(PullDemand.Estimate(StuckHarvester().Dug(Angle.FromDegrees(9))).RigidStep);
        Assert.Null(PullDemand.Estimate(At(0.1)).RigidStep);
        Assert.Null(PullDemand.Estimate(At(1.03)).RigidStep);
    }

    /// <summary>Deflection 0.2 x 0.55 = 0.11 m: chords 0.92390 and 0.89978 m, area 5.0774 m2, 509.946 kN / (5.14 x 5.0774) = 19.540 kPa.</summary>
    [Fact]
    public void A_wheel_that_is_not_buried_stands_on_the_chord_of_its_deflection()
    {
        var onTop = CompiledStuckMachine.From(At(0), Suspension.Equalised);
        Assert.Equal(0.92390, onTop.Flat.Contact[0], 0.00001);
        Assert.Equal(0.89978, onTop.Flat.Contact[1], 0.00001);
        Assert.Equal(19.540, onTop.EquilibriumBoundPascals / 1000, 0.001);
        // From 0.11 m on the rut itself is longer.
        Assert.Equal(0.92390, CompiledStuckMachine.From(At(0.1099), Suspension.Equalised).Flat.Contact[0], 0.00001);
        Assert.Equal(2 * Math.Sqrt((2.05 * 0.12) - 0.0144), CompiledStuckMachine.From(At(0.12), Suspension.Equalised).Flat.Contact[0], 1e-12);
        // A buried wheel keeps the chord of its sinkage, as worked in the example of the composition.
        Assert.Equal(9.62885, CompiledStuckMachine.From(At(0.5), Suspension.Equalised).Flat.WheelArea, 0.000005);
    }

    [Fact]
    public void Locked_wheels_on_the_surface_shear_what_they_stand_on()
    {
        var onTop = PullDemand.Estimate(At(0).WithWheels(WheelMotion.Locked));
        // Under the four rear wheels, 4 x 1.0 x 0.89978 m2; the front ones are asked for more by the wheel model.
        Assert.Equal(onTop.FloorKilopascals[1] * 3.59912, onTop.Terms.Single(t => t.Key == "base").Central.Kilonewtons, 0.01);
    }

    /// <summary>Front hub at 1.025 m, rear hubs at 0.975 m.</summary>
    [Theory]
    [InlineData(0.97, 0)]
    [InlineData(0.975, 0)]
    [InlineData(0.976, 2)]
    [InlineData(1.025, 2)]
    [InlineData(1.026, 3)]
    public void Says_that_wheels_stand_over_the_hub_until_it_is_dug(double z, int axles)
    {
        Assert.Equal(axles, PullDemand.Estimate(At(z)).Findings.Count(f => f.Id == "mire.over-the-hub"));
        Assert.DoesNotContain(PullDemand.Estimate(At(z).Dug(Angle.FromDegrees(9))).Findings, f => f.Id == "mire.over-the-hub");
    }

    [Theory]
    [InlineData(0.0799, false)]
    [InlineData(0.0801, true)]
    [InlineData(0.0999, true)]
    [InlineData(0.1001, true)]
    [InlineData(0.1199, true)]
    [InlineData(0.1201, false)]
    public void Says_that_a_wheel_stands_near_the_break(double ratio, bool near)
    {
        var stuck = new StuckMachine(Harvester(), Soft, [M(ratio * 2.05), M(0), M(0)], PullDirection.Rearwards);
        var found = PullDemand.Estimate(stuck).Findings.SingleOrDefault(f => f.Id == "mire.rolling-or-buried");
        Assert.Equal(near, found is not null);
        if (found is null) return;
        Assert.Equal("front axle", found.Subject);
        Assert.Equal(Severity.Note, found.Severity);
        Assert.True(found.Required > found.Available, "a buried wheel is never easier");
        var counted = PullDemand.Estimate(stuck).Total.Central.Kilonewtons;
        Assert.Equal(ratio > 0.1 ? found.Required!.Value : found.Available!.Value, counted, 1e-9);
    }

    /// <summary>Worked example, linked: 156.9, 364.7, 817.7 kN; on a straight frame 155.7 (155.5 with the critical index of the linked axles), 364.7, 821.5 kN.</summary>
    [Fact]
    public void An_undeclared_suspension_shows_both_bands()
    {
        var demand = PullDemand.Estimate(StuckHarvester(Suspension.Undeclared));
        Assert.Equal([Suspension.Equalised, Suspension.StraightFrame], demand.ByFrame.Select(f => f.Frame));
        Assert.Equal([156.9, 364.7, 817.7], Rounded(demand.ByFrame[0]));
        Assert.Equal([155.7, 364.7, 821.5], Rounded(demand.ByFrame[1]));
        Assert.StartsWith("straight frame: ", demand.ByFrame[1].ToString(), StringComparison.Ordinal);
        Assert.Equal(817.7, Rounded(Assert.Single(PullDemand.Estimate(StuckHarvester()).ByFrame))[2]);
    }

    private static double[] Rounded(FrameDemand demand) => [Math.Round(demand.Total.LowNewtons / 1000, 1), Math.Round(demand.Total.CentralNewtons / 1000, 1), Math.Round(demand.Total.HighNewtons / 1000, 1)];

    [Fact]
    public void An_undeclared_suspension_shows_the_frame_that_governs_everywhere()
    {
        // Rear wheels deep, front shallow: the straight frame loads the rear pair unequally and costs more by the wheel model.
        StuckMachine Of(Suspension suspension) => new(Harvester(suspension), Soft, [M(0.1), M(0.1), M(0.1)], PullDirection.Rearwards) { Grade = Grade.FromPercent(2) };
        PullDemand open = PullDemand.Estimate(Of(Suspension.Undeclared)), linked = PullDemand.Estimate(Of(Suspension.Equalised)), straight = PullDemand.Estimate(Of(Suspension.StraightFrame));
        Assert.NotEqual(linked.Total.CentralNewtons, straight.Total.CentralNewtons, 1.0);
        var governing = linked.Total.CentralNewtons >= straight.Total.CentralNewtons ? linked : straight;
        Assert.Equal(governing.Total.CentralNewtons, open.Total.CentralNewtons, 1e-9);
        Assert.Equal(governing.CentralLocked.Newtons, open.CentralLocked.Newtons, 1e-9);
        Assert.Equal(governing.OwnGrossTraction.Newtons, open.OwnGrossTraction.Newtons, 1e-9);
        Assert.Equal(governing.Explain().Steps[^1].Value, open.Explain().Steps[^1].Value);
        Assert.Equal(Math.Min(linked.WithConeFactor(20).LowNewtons, straight.WithConeFactor(20).LowNewtons), open.WithConeFactor(20).LowNewtons, 1e-9);
        Assert.Equal(Math.Max(linked.WithConeFactor(20).CentralNewtons, straight.WithConeFactor(20).CentralNewtons), open.WithConeFactor(20).CentralNewtons, 1e-9);
        Assert.Equal(Math.Max(linked.WithConeFactor(20).HighNewtons, straight.WithConeFactor(20).HighNewtons), open.WithConeFactor(20).HighNewtons, 1e-9);
    }

    [Property]
    public Property Explain_and_the_usual_cone_factor_give_the_demand_whatever_the_frame() => Prop.ForAll((from ci in Gen.Choose(100, 900) from z in Gen.Choose(0, 80) from deeper in Gen.Choose(0, 40) select (ci, z / 100.0, deeper / 100.0)).ToArbitrary(), x =>
    {
        var stuck = new StuckMachine(Harvester(Suspension.Undeclared), Soil.FromConeIndex(KPa(x.ci), Frac(0.7)), [M(x.Item2), M(x.Item2 + x.Item3), M(x.Item2)], PullDirection.Rearwards);
        var demand = PullDemand.Estimate(stuck);
        var step = StuckStep(demand);
        return demand.Explain().Steps[^1].Value == Text.Kilonewtons(demand.Total.CentralNewtons) && demand.WithConeFactor(12.5) == demand.Total && (step is null || demand.RigidStep is { } shown && Math.Abs(shown.Newtons - step.Value) < 1);
    });

    private static Soil Soft => Soil.FromConeIndex(KPa(350), Frac(0.7)) with { DeclaredUnitWeight = SpecificWeight.FromKilonewtonsPerCubicMeter(17), DeclaredAdhesionFactor = Frac(0.5) };

    private static StuckMachine At(double z) => new(Harvester(), Soft, [M(z), M(z), M(z)], PullDirection.Rearwards);

    /// <summary>The rigid step of whichever declared frame has the greater central demand.</summary>
    private static double? StuckStep(PullDemand demand)
    {
        PullDemand Of(Suspension s)
        {
            var stuck = demand.Stuck;
            return PullDemand.Estimate(new StuckMachine(Harvester(s), stuck.Soil, stuck.Sinkage, stuck.Direction));
        }

        PullDemand linked = Of(Suspension.Equalised), straight = Of(Suspension.StraightFrame);
        return (straight.Total.CentralNewtons > linked.Total.CentralNewtons * (1 + 1e-9) ? straight : linked).RigidStep?.Newtons;
    }
}
