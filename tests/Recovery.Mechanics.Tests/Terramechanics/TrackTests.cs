using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class TrackTests
{
    private static readonly BekkerTerrain Rubicon = BekkerTerrains.Find("Rubicon sandy loam (Wong)", 43);

    [Theory]
    [CheckRows("terramechanics", "track-sinkage")]
    public void Sinkage_and_resistance_match(CheckRow row)
    {
        var r = TrackModel.Instance.Evaluate(Track(row.Si("l"), row.Si("b"), row.Si("W") / row.Si("tracks"), Soils.Of(row), 0.05), Wheels.Slip(0.1));
        row.Matches(("z0", r.Sinkage!.Value.Meters), ("Rc", r.MotionResistance!.Value.Newtons * row.Si("tracks")));
    }

    /// <summary>The rows give both tracks together: half the area and half the load on each.</summary>
    [Theory]
    [CheckRows("terramechanics", "track-thrust")]
    public void Thrust_matches(CheckRow row) => row.Matches(("F", 2 * Half(row, row.Si("l")).Evaluate(row.Si("s")).GrossTraction!.Value.Newtons));

    [Theory]
    [CheckRows("terramechanics", "track-ceiling")]
    public void Ceiling_matches(CheckRow row) => row.Matches(("Fmax", 2 * Half(row, 3.6).Evaluate(1).GreatestGrossTraction!.Value.Newtons));

    [Theory]
    [CheckRows("terramechanics-scipy", "track")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var track = Track(row.Si("l"), row.Si("b"), row.Si("W"), Soils.Of(row), row.Si("K"));
        var r = TrackModel.Instance.Evaluate(track, Wheels.Slip(row.Si("s")));
        row.Matches(
            ("z", r.Sinkage!.Value.Meters), ("MR", r.MotionResistance!.Value.Newtons), ("GT", r.GrossTraction!.Value.Newtons), ("NT", r.NetTraction!.Value.Newtons),
            ("slip", TrackModel.Instance.SlipFor(track, Force.FromNewtons(row.Si("wanted")))!.Value.DecimalFractions));
        var net = new double[1];
        var carried = new bool[1];
        TrackModel.Instance.NetTraction(track, [row.Si("W") / 1000], [row.Si("s")], net, carried);
        Assert.True(carried[0]);
        Assert.Equal(r.NetTraction!.Value.Kilonewtons, net[0], 9);
        var shown = TrackModel.Instance.Explain(track, Wheels.Slip(row.Si("s"))).Steps[^1].Value.Split(' ')[0];
        Assert.Equal(r.NetTraction!.Value.Kilonewtons, double.Parse(shown, System.Globalization.CultureInfo.InvariantCulture), 0.01);
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "shear")]
    public void Shear_agrees_with_SciPy(CheckRow row)
    {
        var terrain = Soils.Of(row);
        Length j = Length.FromMeters(row.Si("j")), k = Length.FromMeters(row.Si("K"));
        var stress = ShearDisplacementModel.Instance.Evaluate(terrain, Pressure.FromPascals(row.Si("p")), j, k);
        row.Matches(("tau", stress.Pascals));
        var batch = new double[1];
        ShearDisplacementModel.Instance.ShearStress(terrain, row.Si("p") / 1000, [row.Si("j")], row.Si("K"), batch);
        Assert.Equal(stress.Kilopascals, batch[0], 9);
        var shown = ShearDisplacementModel.Instance.Explain(terrain, Pressure.FromPascals(row.Si("p")), j, k).Steps[^1].Value.Split(' ')[0];
        Assert.Equal(stress.Kilopascals, double.Parse(shown, System.Globalization.CultureInfo.InvariantCulture), 0.01);
    }

    [Theory]
    [InlineData(0.01, false)]
    [InlineData(0.05, false)]
    [InlineData(0.0099, true)]
    [InlineData(0.0501, true)]
    public void Flags_a_shear_modulus_outside_its_range(double modulus, bool flagged)
    {
        Assert.Equal(flagged, ShearDisplacementModel.Instance.Flags(Length.FromMeters(modulus)).Any());
        Assert.Equal(flagged ? ["K"] : [], TrackModel.Instance.Evaluate(Track(3, 0.6, 60e3, Rubicon, modulus), Wheels.Slip(0.1)).Flags.Select(f => f.Limit.Symbol));
    }

    [Theory]
    [InlineData(0.2999, "")]
    [InlineData(0.3001, "z")]
    [InlineData(1.9999, "z")]
    public void Flags_a_sinkage_beyond_the_plate_tests(double sinkage, string flagged) =>
        Assert.Equal(flagged.Length == 0 ? [] : [flagged], TrackModel.Instance.Evaluate(Sinking(sinkage), Wheels.Slip(0.1)).Flags.Select(f => f.Limit.Symbol));

    [Theory]
    [InlineData(2 - 1e-6, WheelOutcome.Rolls)]
    [InlineData(2 + 1e-6, WheelOutcome.Immobile)]
    public void Beyond_two_metres_there_is_no_number(double sinkage, WheelOutcome outcome)
    {
        var track = Sinking(sinkage);
        var r = TrackModel.Instance.Evaluate(track, Wheels.Slip(0.1));
        Assert.Equal(outcome, r.Outcome);
        Assert.Equal(outcome == WheelOutcome.Immobile, r.NetTraction is null);
        Assert.Equal(outcome == WheelOutcome.Immobile, TrackModel.Instance.Explain(track, Wheels.Slip(0.1)).Steps[^1].Value == "immobile");
        if (outcome == WheelOutcome.Immobile) Assert.Null(TrackModel.Instance.SlipFor(track, Force.FromKilonewtons(1)));
        var net = new double[1];
        var carried = new bool[1];
        TrackModel.Instance.NetTraction(track, [track.Load.Kilonewtons], [0.1], net, carried);
        Assert.Equal(outcome == WheelOutcome.Rolls, carried[0]);
    }

    [Fact]
    public void Without_slip_there_is_no_drive_and_no_support_without_a_modulus()
    {
        Assert.Equal(WheelOutcome.NoDrive, TrackModel.Instance.Evaluate(Track(3, 0.6, 60e3, Rubicon, 0.03), Wheels.Slip(0)).Outcome);
        var none = new BekkerTerrain("no support", -900, 100, 0.5, Pressure.FromKilopascals(2), Angle.FromDegrees(0));
        Assert.Equal(WheelOutcome.Immobile, TrackModel.Instance.Evaluate(Track(3, 0.6, 60e3, none, 0.03), Wheels.Slip(0.1)).Outcome);
        Assert.Contains("immobile", TrackModel.Instance.Evaluate(Track(3, 0.6, 60e3, none, 0.03), Wheels.Slip(0.1)).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1e-2)]
    public void The_series_joins_the_closed_form(double x)
    {
        double below = ShearKernel.MeanMobilised(x * (1 - 1e-9), 1, 1), above = ShearKernel.MeanMobilised(x * (1 + 1e-9), 1, 1);
        Assert.InRange(above - below, 0, 1e-10);
        Assert.Equal(0, ShearKernel.MeanMobilised(0, 3, 0.05));
    }

    [Fact]
    public void The_slip_of_the_ceiling_is_not_found()
    {
        var track = Track(3, 0.6, 60e3, Rubicon, 0.03);
        var most = TrackModel.Instance.Evaluate(track, Wheels.Slip(1)).NetTraction!.Value;
        Assert.Null(TrackModel.Instance.SlipFor(track, Force.FromNewtons(most.Newtons + 1)));
        Assert.Equal(1, TrackModel.Instance.SlipFor(track, most)!.Value.DecimalFractions, 1e-3);
    }

    [Fact]
    public void The_root_finder_says_when_it_cannot()
    {
        Assert.Equal(2, RootFinder.Find(x => x - 2, 0, 5, 1e-12, "line").Value, 12);
        Assert.Equal(0, RootFinder.Find(x => x, 0, 5, 1e-12, "line").Value);
        Assert.Equal(5, RootFinder.Find(x => x - 5, 0, 5, 1e-12, "line").Value);
        Assert.Contains("no solution between", Assert.Throws<SolverException>(() => RootFinder.Find(x => x + 1, 0, 5, 1e-12, "line")).Message, StringComparison.Ordinal);
        var step = Assert.Throws<SolverException>(() => RootFinder.Find(x => x < 1 ? -1 : 1, 0, 5, 1e-12, "step"));
        Assert.Equal(1, Math.Abs(step.Residual));
        Assert.Throws<SolverException>(() => RootFinder.Find(_ => double.NaN, 0, 5, 1e-12, "nothing"));
    }

    [Fact]
    public void Refuses_bad_input()
    {
        var track = Track(3, 0.6, 60e3, Rubicon, 0.03);
        Assert.Throws<ArgumentOutOfRangeException>(() => track.WithLoad(Force.Zero));
        Assert.Throws<ArgumentNullException>(() => Track(3, 0.6, 60e3, null!, 0.03));
        Assert.Throws<ArgumentOutOfRangeException>(() => TrackModel.Instance.Evaluate(track, Wheels.Slip(1.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => TrackModel.Instance.NetTraction(track, [60], [double.NaN], new double[1], new bool[1]));
        Assert.Throws<ArgumentException>(() => TrackModel.Instance.NetTraction(track, [60], [0.1], new double[2], new bool[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShearDisplacementModel.Instance.Evaluate(Rubicon, Pressure.FromKilopascals(-1), Length.FromMeters(0.1), Length.FromMeters(0.03)));
    }

    [Property]
    public Property Traction_rises_with_slip_to_its_ceiling_and_a_lighter_track_never_rolls_harder() => Prop.ForAll(
        (from l in Gen.Choose(15, 45) from b in Gen.Choose(30, 100) from w in Gen.Choose(20, 200) from s in Gen.Choose(1, 90) select (l / 10.0, b / 100.0, w * 1000.0, s / 100.0)).ToArbitrary(),
        x =>
        {
            var track = Track(x.Item1, x.Item2, x.Item3, Rubicon, 0.03);
            TrackResult less = TrackModel.Instance.Evaluate(track, Wheels.Slip(x.Item4)), more = TrackModel.Instance.Evaluate(track, Wheels.Slip(x.Item4 + 0.1));
            var light = TrackModel.Instance.Evaluate(track.WithLoad(Force.FromNewtons(x.Item3 * 0.8)), Wheels.Slip(x.Item4));
            return less.GrossTraction < more.GrossTraction && more.GrossTraction < more.GreatestGrossTraction && light.MotionResistance < less.MotionResistance && light.Sinkage < less.Sinkage;
        });

    private static TrackOnSoil Track(double l, double b, double newtons, BekkerTerrain terrain, double k) => new(Length.FromMeters(l), Length.FromMeters(b), Force.FromNewtons(newtons), terrain, Length.FromMeters(k));

    private static TrackOnSoil Sinking(double sinkage) => Track(3, 0.5, 60e3, new BekkerTerrain("made", 0, 40 / sinkage, 1, Pressure.FromKilopascals(5), Angle.FromDegrees(20)), 0.03);

    private static HalfTrack Half(CheckRow row, double length) => new(Track(length, row.Si("A") / 2 / length, row.Si("W") / 2, Soils.Of(row), row.Si("K")));

    private sealed record HalfTrack(TrackOnSoil Track)
    {
        public TrackResult Evaluate(double slip) => TrackModel.Instance.Evaluate(Track, Wheels.Slip(slip));
    }
}
