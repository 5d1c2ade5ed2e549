using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>A sealed belly under a machine of which some or all wheels still roll.</summary>
public class RollingBellyTests
{
    /// <summary>
    /// Harvester of 509.946 kN, level, wheels 0.15 m in (a tenth of the diameter is 0.205 and 0.195 m: all roll), belly 3.0 x 1.6 m 0.05 m in.
    /// Chords 1.06771 and 1.03923 m, areas 1.70833, 2.07846, 2.07846 m2; floor (509.946 - 17 x 0.15 x 5.86525 - 17 x 0.05 x 4.8)/(5.14 x 10.66525) = 8.955, sqrt(8.955 x 19.6) = 13.248, 19.6 kPa.
    /// Front axle 252.710 kN; the floor bears 1.70833 (5.14 s + 2.55) = 120.688 and 176.460 kN under it: nothing to spare, no uplift develops, and nothing rises.
    /// Central: belly 6.62417 x 4.8 + 1.6 (0.02125 + 2 x 13.24834 x 0.05) = 33.950; wheels on 280.440 kN beside it, at RCI 245 by 0.9/B_n + 0.0325 44.554: 78.504 kN.
    /// High, locked: base 19.6 x 5.86525 = 114.959, belly 47.04 + 1.6 (0.02125 + 1.96) = 50.210: 165.169 kN.
    /// </summary>
    [Fact]
    public void A_belly_under_rolling_wheels_drags_and_lifts_nothing()
    {
        var demand = PullDemand.Estimate(Shallow(Harvester()));
        Assert.Equal([8.955, 13.248, 19.6], demand.FloorKilopascals.Select(v => Math.Round(v, 3)));
        Assert.Equal(78.504, demand.Total.Central.Kilonewtons, 0.0006);
        Assert.Equal(165.169, demand.Total.High.Kilonewtons, 0.0006);
        Assert.Equal(0, demand.UpliftDeveloped.High.Newtons);
        Assert.Equal([120.688, 176.460], new[] { demand.AxleBearings[0].Bears.Central, demand.AxleBearings[0].Bears.High }.Select(f => Math.Round(f.Kilonewtons, 3)));
        var found = Assert.Single(demand.Findings, f => f.Id == "mire.belly-drags");
        Assert.Equal(Severity.Caution, found.Severity);
        Assert.Equal("front axle", found.Subject);
        Assert.All(demand.Basis, b => Assert.DoesNotContain("could not bear", b.How, StringComparison.Ordinal));
        Assert.Contains("nothing rises", demand.Basis[2].How, StringComparison.Ordinal);
    }

    /// <summary>
    /// Body alone, 264.780 kN, CI 900, RI 1: floor (264.780 - 14.9564 - 4.08)/(5.14 x 10.66525) = 4.4828, four times that 17.931 kPa, which sqrt(4.4828 x 72) = 17.965 is cut to.
    /// Front 264.780 (1 - 2.75/5.85) = 140.311 kN, share 0.52991; it bears 1.70833 (5.14 x 17.9313 + 2.55) = 161.81: 21.50 to spare, 40.57 kN of uplift, of 4.8 x 0.5 x 5.14 x 17.9313 = 221.20 held. None of it goes into the pull: nothing climbs either.
    /// </summary>
    [Fact]
    public void Uplift_that_can_develop_is_shown_and_stays_out_of_the_pull_where_nothing_rises()
    {
        var demand = PullDemand.Estimate(Shallow(Harvester().Without("beet").Without("front"), 900, 1));
        var found = Assert.Single(demand.Findings, f => f.Id == "mire.belly-uplift");
        Assert.Equal(221.20, found.Required!.Value, 0.01);
        Assert.Equal(40.57, found.Available!.Value, 0.01);
        Assert.DoesNotContain(demand.Terms, t => t.Key is "lift" or "climb");
    }

    /// <summary>Rear pair half a metre in, front 0.15 m: the rear axles could bear the whole 483.6 kN at the high floor of 19.6 kPa (372.1 less 128.6 kN, over 0.2522), the front 176.46 of its 252.71 kN: no uplift.</summary>
    [Fact]
    public void A_rolling_axle_that_has_nothing_to_spare_limits_the_uplift_of_buried_ones()
    {
        var stuck = Shallow(Harvester());
        var mixed = PullDemand.Estimate(new StuckMachine(stuck.Machine, stuck.Soil, [M(0.15), M(0.5), M(0.5)], PullDirection.Rearwards) { Belly = stuck.Belly });
        Assert.Equal(19.6, mixed.FloorKilopascals[2], 1e-9);
        Assert.Equal(483.571, mixed.UpliftHeld.High.Kilonewtons, 0.001);
        Assert.Equal(0, mixed.UpliftDeveloped.High.Newtons);
        Assert.Equal("front axle", Assert.Single(mixed.Findings, f => f.Id == "mire.belly-drags").Subject);
    }

    [Fact]
    public void The_seal_of_a_belly_is_listed_and_venting_it_offered_where_wheels_roll()
    {
        var stuck = Shallow(Harvester());
        Assert.Equal(["assume.sealed-belly"], Sealing(stuck));
        Assert.Empty(Sealing(stuck.Vented()));
        Assert.Empty(Sealing(stuck.WithBelly(null)));
        Assert.Equal(["assume.sealed"], Sealing(StuckHarvester()));
        Assert.DoesNotContain(PullDemand.Estimate(stuck.Vented()).Findings, f => f.Id == "mire.belly-drags");
        Assert.Contains(MeasureList.For(ReferencePlans.AsFound().With(stuck)), m => m.Key == "vent");
        Assert.DoesNotContain(MeasureList.For(ReferencePlans.AsFound().With(stuck.Vented())), m => m.Key == "vent");
        Assert.DoesNotContain(MeasureList.For(ReferencePlans.AsFound().With(stuck.WithBelly(null))), m => m.Key == "vent");
        var worth = ReferencePlans.AsFound().With(stuck).Assess().Measures.Single(m => m.Measure.Key == "vent");
        Assert.Equal(0, worth.Central.Newtons, 1e-6);
        Assert.Contains("nothing rises", worth.Reason, StringComparison.Ordinal);
    }

    private static string[] Sealing(StuckMachine stuck) => PullDemand.Estimate(stuck).Assumptions.Select(a => a.Id).Where(id => id.StartsWith("assume.sealed", StringComparison.Ordinal)).ToArray();

    private static StuckMachine Shallow(Machine machine, double coneIndex = 350, double remoulding = 0.7) => new(
        machine,
        Soil.FromConeIndex(KPa(coneIndex), Frac(remoulding)) with { DeclaredUnitWeight = SpecificWeight.FromKilonewtonsPerCubicMeter(17), DeclaredAdhesionFactor = Frac(0.5) },
        [M(0.15), M(0.15), M(0.15)],
        PullDirection.Rearwards)
    {
        Belly = new Belly(M(3.0), M(1.6), M(0.05)),
    };
}
