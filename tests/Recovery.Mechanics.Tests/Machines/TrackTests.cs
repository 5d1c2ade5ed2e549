using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Machines;

public class TrackTests
{
    private static readonly Track Belt = new(M(2.4), M(0.635));

    [Theory]
    [CheckRows("ground-machines-scipy", "track-pressure")]
    public void Pressure_along_a_track(CheckRow row)
    {
        var track = new Track(M(row.Si("l")), M(row.Si("b")));
        var p = TrackPressureModel.Instance.Evaluate(track, Force.FromNewtons(row.Si("W")), M(row.Si("e")));
        row.Matches(("mean", p.Mean.Pascals), ("front", p.Front.Pascals), ("rear", p.Rear.Pascals));
        Assert.Equal(p.Mean.Pascals, track.NominalPressure(Force.FromNewtons(row.Si("W"))).Pascals);
        Assert.EndsWith("kPa", TrackPressureModel.Instance.Explain(track, Force.FromNewtons(row.Si("W")), M(row.Si("e"))).Steps[^1].Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_outside_the_middle_third_is_flagged()
    {
        Assert.Empty(TrackPressureModel.Instance.Evaluate(Belt, KN(100), M(0.3999)).Flags);
        Assert.Empty(TrackPressureModel.Instance.Evaluate(Belt, KN(100), M(0.4)).Flags);
        var over = TrackPressureModel.Instance.Evaluate(Belt, KN(100), M(-0.4001));
        Assert.Single(over.Flags);
        Assert.Equal(0, over.Front.Pascals);
        Assert.True(over.CarryingLength.Meters < 2.4);
        // At the edge both branches give twice the mean.
        Assert.Equal(2 * over.Mean.Pascals, over.Greatest.Pascals, over.Mean.Pascals * 1e-3);
    }

    [Property]
    public Property Pressure_carries_the_load_and_rises_with_the_offset() => Prop.ForAll((from offset in Gen.Choose(0, 44) from load in Gen.Choose(1, 300) select (offset, load)).ToArbitrary(), x =>
    {
        var e = 2.4 * x.offset / 100;
        TrackPressure p = TrackPressureModel.Instance.Evaluate(Belt, KN(x.load), M(e)), more = TrackPressureModel.Instance.Evaluate(Belt, KN(x.load), M(e + 0.01)), turned = TrackPressureModel.Instance.Evaluate(Belt, KN(x.load), M(-e));
        var carried = (p.Front.Pascals + p.Rear.Pascals) / 2 * p.CarryingLength.Meters * 0.635;
        return Math.Abs(carried - (x.load * 1000.0)) < 1e-6 * x.load * 1000 && more.Greatest.Pascals > p.Greatest.Pascals && Math.Abs(turned.Rear.Pascals - p.Front.Pascals) < 1e-9 * p.Front.Pascals;
    });

    [Fact]
    public void The_track_models_take_a_track()
    {
        var known = Belt.WithRoadWheels(5).WithShoeArea(Area.FromSquareMeters(0.2)).WithGrouserHeight(M(0.05));
        var gear = TrackedGear.Of(known, KN(300));
        Assert.Equal((10, 2.4, 0.635, 0.2, 0.05), (gear.Bogies, gear.ContactLength.Meters, gear.TrackWidth.Meters, gear.ShoeArea.SquareMeters, gear.GrouserHeight.Meters));
        Assert.Contains("needs all three", Assert.Throws<ArgumentException>(() => TrackedGear.Of(Belt, KN(300))).Message, StringComparison.Ordinal);
        var onSoil = TrackOnSoil.Of(Belt, KN(150), BekkerTerrains.All[0], M(0.04));
        Assert.Equal((2.4, 0.635, 150.0), (onSoil.ContactLength.Meters, onSoil.Width.Meters, onSoil.Load.Kilonewtons));
    }

    [Fact]
    public void Refuses_with_words_and_keeps_what_it_is_told()
    {
        Assert.Contains("contactLength must be from 0.3 to 8 m; it was 0 m", Assert.Throws<ArgumentOutOfRangeException>(() => new Track(M(0), M(0.5))).Message, StringComparison.Ordinal);
        Assert.Contains("offset must be from -1.08 to 1.08 m", Assert.Throws<ArgumentOutOfRangeException>(() => TrackPressureModel.Instance.Evaluate(Belt, KN(100), M(1.2))).Message, StringComparison.Ordinal);
        Assert.Contains("roadWheels must be from 1 to 40", Assert.Throws<ArgumentOutOfRangeException>(() => Belt with { RoadWheels = 0 }).Message, StringComparison.Ordinal);
        var full = Belt.WithRoadWheels(5).WithShoeArea(Area.FromSquareMeters(0.2)).WithGrouserHeight(M(0.05));
        Assert.Equal((5, 0.2, 0.05), (full.RoadWheels, full.ShoeArea!.Value.SquareMeters, full.GrouserHeight!.Value.Meters));
        Assert.Equal("track 2.4 x 0.635 m", full.ToString());
        Assert.Equal(1.524, full.ContactArea.SquareMeters, 1e-12);
    }
}
