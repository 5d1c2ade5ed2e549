using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class TrackedPullTests
{
    private static BekkerTerrain Clay(double scale = 1) => new("clayey soil", 13.19 * scale, 692.15 * scale, 0.5, Pressure.FromKilopascals(4.14 * scale), Angle.FromDegrees(13));

    private static TrackedTower Tower(double hitchHeight = 0.5, double ahead = 0.3, BekkerTerrain? terrain = null) => new(
        "dozer", Mass.FromTonnes(18), M(ahead), M(0.9), M(hitchHeight), M(0.6), new TrackOnSoil(M(3), M(0.6), KN(88), terrain ?? Clay(), M(0.025)));

    [Fact]
    public void What_is_not_declared_is_listed()
    {
        string[] every = ["assume.puller-weakest-terrain", "assume.puller-engine-power", "assume.puller-hitch-rating", "assume.puller-firmest-terrain"];
        var bare = Tower();
        Assert.Equal(every, TrackedPull.Estimate(bare).Assumptions.Select(a => a.Id));
        // An anchor stands: neither its engine nor firmer ground is asked for.
        Assert.Equal(["assume.puller-weakest-terrain", "assume.puller-hitch-rating"], new TrackedAnchor(bare).Assumptions.Select(a => a.Id));
        var known = bare.WithTerrains(bare.Track.Terrain, bare.Track.Terrain).WithPower(Power.FromKilowatts(150), Frac(0.6), Speed.FromKilometersPerHour(2)).WithHitchRating(KN(200));
        Assert.Empty(TrackedPull.Estimate(known).Assumptions);
    }

    [Theory]
    [CheckRows("traction-scipy", "tracked-pull")]
    public void Pull_by_integrated_shear(CheckRow row)
    {
        var terrain = new BekkerTerrain("terrain", row.Si("kc"), row.Si("kphi"), row.Si("n"), Pressure.FromPascals(row.Si("c")), Angle.FromRadians(row.Si("phi")));
        var tower = new TrackedTower("tracks", Mass.FromKilograms(row.Si("m")), M(0.2), M(0.9), M(0.5), M(0.5), new TrackOnSoil(M(row.Si("l")), M(row.Si("b")), KN(50), terrain, M(row.Si("K")))) { Grade = Grade.FromRatio(Frac(row.Si("grade"))) };
        row.Matches(("P", TrackedPull.Estimate(tower, Angle.FromRadians(row.Si("pitch"))).AtSlip(Frac(row.Si("s")))!.Value.Newtons));
    }

    [Theory]
    [CheckRows("traction-scipy", "track-ends")]
    public void Place_of_the_resultant_and_peak_pressure(CheckRow row)
    {
        var tower = new TrackedTower("tracks", Mass.FromKilograms(row.Si("m")), M(row.Si("xc")), M(row.Si("h")), M(row.Si("hd")), M(row.Si("behind")), new TrackOnSoil(M(row.Si("l")), M(0.6), KN(50), Clay(), M(0.025))) { Grade = Grade.FromRatio(Frac(row.Si("grade"))) };
        var pull = TrackedPull.Estimate(tower, Angle.FromRadians(row.Si("pitch")));
        row.Matches(("e", pull.Resultant(Force.FromNewtons(row.Si("P"))).Meters), ("peak", pull.PeakOverMeanPressure(Force.FromNewtons(row.Si("P")))!.Value));
    }

    [Fact]
    public void Sustained_is_a_band_and_never_passes_a_limit()
    {
        var pull = TrackedPull.Estimate(Tower().WithTerrains(Clay(0.7), Clay(1.4)));
        var band = pull.Sustained!.Value;
        Assert.True(band.LowNewtons < band.CentralNewtons && band.CentralNewtons < band.HighNewtons);
        Assert.True(pull.Imposable.Newtons >= band.HighNewtons);
        Assert.Equal(PullLimit.Traction, pull.LimitedBy);
        Assert.Equal(PullLimit.Rating, TrackedPull.Estimate(Tower().WithHitchRating(KN(20))).LimitedBy);
        Assert.Equal(PullLimit.Power, TrackedPull.Estimate(Tower().WithPower(Power.FromKilowatts(60), Frac(0.6), Speed.FromKilometersPerHour(8))).LimitedBy);
        // 0.6 x 60 kW at 8 km/h.
        Assert.Equal(16.2, TrackedPull.Estimate(Tower().WithPower(Power.FromKilowatts(60), Frac(0.6), Speed.FromKilometersPerHour(8))).Central!.Value.Kilonewtons, 1e-6);
        Assert.Equal(Text.Kilonewtons(pull.Central!.Value.Newtons), pull.Explain().Steps[^1].Value);
        Assert.Contains("sustains", pull.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Slip_at_a_pull_is_the_inverse_of_the_curve()
    {
        var pull = TrackedPull.Estimate(Tower(), Angle.FromDegrees(6));
        var at = pull.AtSlip(Frac(0.12))!.Value;
        Assert.Equal(0.12, pull.SlipAt(at)!.Value.DecimalFractions, 1e-6);
        Assert.Null(pull.SlipAt(KN(300)));
        var curve = pull.Curve(7, Frac(0.30));
        Assert.Equal(pull.TractionLimit!.Value.Newtons, curve[^1].Pull.Newtons, 1e-2);
        Assert.True(curve[0].Pull.Newtons < 0);
    }

    [Property(MaxTest = 50)]
    public Property Steeper_never_pulls_more_and_a_higher_hitch_never_gains_nose() => Prop.ForAll(Gen.Choose(0, 20).ToArbitrary(), Gen.Choose(2, 15).ToArbitrary(), (percent, decimetres) =>
    {
        double Of(double grade) => TrackedPull.Estimate(Tower().WithGrade(Grade.FromPercent(grade))).TractionLimit!.Value.Newtons;
        double Nose(double height) => TrackedPull.Estimate(Tower(height)).NoseLimit.Newtons;
        return Of(percent + 1) <= Of(percent) && Nose((decimetres + 1) / 10.0) <= Nose(decimetres / 10.0) + 1e-9;
    });

    [Fact]
    public void Raises_no_support_light_ends_nose_and_rating()
    {
        static string[] Ids(TrackedTower tower) => [.. TrackedPull.Estimate(tower).Findings.Select(f => f.Id)];
        Assert.Empty(Ids(Tower()));
        Assert.Equal(["pull.track-no-support"], Ids(Tower(terrain: new BekkerTerrain("slurry", 0, 0.01, 0.5, Pressure.Zero, Angle.FromDegrees(2)))));
        Assert.Contains("pull.track-end-light", Ids(Tower(ahead: -1.0)));
        Assert.Contains("pull.hitch-rating-exceeded", Ids(Tower().WithHitchRating(KN(20))));
        Assert.Contains("pull.nose-lift", Ids(Tower(hitchHeight: 3, ahead: -0.9).WithHardSurfaceFriction(Frac(0.9))));
        Assert.Null(TrackedPull.Estimate(Tower(ahead: -1.5)).PeakOverMeanPressure(KN(50)));
        Assert.Equal("immobile", TrackedPull.Estimate(Tower(terrain: new BekkerTerrain("slurry", 0, 0.01, 0.5, Pressure.Zero, Angle.FromDegrees(2)))).Explain().Steps[0].Value);
    }

    [Fact]
    public void Holds_as_an_anchor_by_its_weakest_terrain()
    {
        var anchor = new TrackedAnchor(Tower().WithTerrains(Clay(0.7), null).WithPower(Power.FromKilowatts(20), Frac(0.6), Speed.FromKilometersPerHour(8)));
        Assert.Equal(TrackedPull.Estimate(Tower(terrain: Clay(0.7))).Central!.Value.Newtons, anchor.Holds!.Value.Newtons, 1e-6);
        Assert.Equal(Text.Kilonewtons(anchor.Holds.Value.Newtons), anchor.Explain().Steps[^1].Value);
        Assert.Empty(anchor.Findings);
        // Ground that rises away from the casualty: its weight pulls with the line.
        Assert.True(new TrackedAnchor(Tower().WithGrade(Grade.FromPercent(10))).Holds!.Value < new TrackedAnchor(Tower()).Holds!.Value);
        var mud = new TrackedAnchor(Tower(terrain: new BekkerTerrain("slurry", 0, 0.01, 0.5, Pressure.Zero, Angle.FromDegrees(2))));
        Assert.Null(mud.Holds);
        Assert.False(mud.Check(KN(1), KN(1)).HoldsBoth);
        Assert.Equal("none", mud.Explain().Steps[^1].Value);
    }

    [Fact]
    public void Middle_third_is_continuous()
    {
        Assert.Equal(2, TrackedKernel.PeakPressure((3.0 / 6) - 1e-12, 3), 1e-9);
        Assert.Equal(2, TrackedKernel.PeakPressure((3.0 / 6) + 1e-12, 3), 1e-9);
        Assert.Equal(1, TrackedKernel.PeakPressure(0, 3));
    }

    [Fact]
    public void Imposes_its_ceiling_or_the_hard_surface()
    {
        // 2 x 3 m x 0.6 m x 4.14 kPa + 176.52 kN tan(13 deg) = 14.904 + 40.753 kN.
        Assert.Equal(55.657, TrackedPull.Estimate(Tower()).Imposable.Kilonewtons, 2e-3);
        Assert.Equal(0.9 * 18 * 9.80665, TrackedPull.Estimate(Tower().WithHardSurfaceFriction(Frac(0.9))).Imposable.Kilonewtons, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => Tower(ahead: 1.6));
    }
}
