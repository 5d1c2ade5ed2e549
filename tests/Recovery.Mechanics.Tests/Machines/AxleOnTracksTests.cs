using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Traction;
using Recovery.Mechanics.Traction;
using Recovery.Mechanics.Trafficability;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Machines;

/// <summary>A half-track machine: its axle loads hold, and no tyre stands in for its tracks.</summary>
public class AxleOnTracksTests
{
    private static Machine HalfTrack => Harvester().WithAxles(Harvester().Axles.Select((a, i) => i == 0 ? a.WithTrackUnit(new Track(M(2.2), M(0.9))) : a));

    [Fact]
    public void Axle_loads_are_those_of_a_support_on_a_pin()
    {
        Assert.Equal(
            Harvester().AxleLoads(Grade.FromPercent(2), PullDirection.Rearwards).Newtons,
            HalfTrack.AxleLoads(Grade.FromPercent(2), PullDirection.Rearwards).Newtons);
        Assert.Equal("front axle at 0 m, a track 2.2 x 0.9 m on each side", HalfTrack.Axles[0].ToString());
        Assert.Null(HalfTrack.Axles[1].TrackUnit);
    }

    [Fact]
    public void A_stuck_machine_on_tracks_is_refused_with_words()
    {
        var refusal = Assert.Throws<ArgumentException>(() => new StuckMachine(HalfTrack, StuckHarvester().Soil, [M(0.5), M(0.5), M(0.5)], PullDirection.Rearwards));
        Assert.Equal("machine", refusal.ParamName);
        Assert.StartsWith("machine: the front axle runs on tracks (track 2.2 x 0.9 m), and no wheel model covers a track; that of a tyre in its place would be no number for it.", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("there stand the depth rule with its reduction for powered tracks (DepthRule.Reduce), and the model of a track that rolls (TrackModel), each by itself.", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Whatever_takes_its_wheels_to_soil_is_refused_with_words()
    {
        var tractor = Tractors.SixteenTonneTower();
        var tracked = tractor.Machine.WithAxles(tractor.Machine.Axles.Select((a, i) => i == 1 ? a.WithTrackUnit(new Track(M(2), M(0.6))) : a));
        Assert.Contains("TrackedTower", Assert.Throws<ArgumentException>(() => tractor with { Machine = tracked }).Message, StringComparison.Ordinal);
        Assert.Contains("TrackedTower", Assert.Throws<ArgumentException>(() => new TowingMachine(tracked, tractor.Soil, M(-3), M(0.5))).Message, StringComparison.Ordinal);
        Assert.Contains("TrackModel", Assert.Throws<ArgumentException>(() => WheelSet.Of(HalfTrack.Axles[0], KN(200), KPa(300))).Message, StringComparison.Ordinal);
        Assert.Contains("TrackedMobilityModel", Assert.Throws<ArgumentException>(() => MachineOnSoils.Of(HalfTrack)).Message, StringComparison.Ordinal);
        Assert.Contains("TrackedMobilityModel", Assert.Throws<ArgumentException>(() => MachineOnSoils.WithRadialConstants(HalfTrack)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Back_on_tyres_it_goes_through_as_before()
    {
        var back = HalfTrack.WithAxles(HalfTrack.Axles.Select(a => a.WithTrackUnit(null)));
        Assert.Equal(
            PullDemand.Estimate(StuckHarvester()).Total,
            PullDemand.Estimate(new StuckMachine(back, StuckHarvester().Soil, StuckHarvester().Sinkage, PullDirection.Rearwards) { Grade = StuckHarvester().Grade, Belly = StuckHarvester().Belly }).Total);
    }
}
