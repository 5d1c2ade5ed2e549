using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class RatingConeIndexTests
{
    private const double Psi = 6894.757293168361;

    private static readonly MobilityResult Wheeled = Gear(49.05);

    [Theory]
    [CheckRows("terramechanics", "rating-cone-index")]
    public void Rating_cone_index_matches(CheckRow row) => row.Matches(("RCI", Soil.FromConeIndex(Pressure.FromPascals(row.Si("CI")), Wheels.Slip(row.Si("RI"))).RatingConeIndex.Pascals));

    /// <summary>The printed cases give the vehicle cone index itself; the decision is that of the excess.</summary>
    [Theory]
    [CheckRows("terramechanics", "go-once")]
    public void Go_matches(CheckRow row) => row.MatchesWord("go", Decision(row.Si("RCI"), row.Si("VCI1")));

    [Theory]
    [CheckRows("terramechanics", "go-fifty-times")]
    public void Go_fifty_times_matches(CheckRow row) => row.MatchesWord("go", Decision(row.Si("RCI"), row.Si("VCI50")));

    [Theory]
    [CheckRows("terramechanics", "towed-reading-a")]
    public void Reading_a_matches(CheckRow row) => row.Matches(("R/W", ExcessIndexKernel.ResistanceReadingA(row.Si("RCIx"))));

    [Theory]
    [CheckRows("terramechanics", "towed-readings")]
    public void Band_of_readings_matches(CheckRow row) => row.Matches(("reading_b", ExcessIndexKernel.ResistanceReadingB(row.Si("RCIx"))), ("reading_a", ExcessIndexKernel.ResistanceReadingA(row.Si("RCIx"))));

    [Theory]
    [CheckRows("terramechanics", "drawbar-coefficient")]
    public void Drawbar_coefficient_matches(CheckRow row)
    {
        DrawbarConstants[] sets = [DrawbarConstants.Wheels, DrawbarConstants.LightWheels, DrawbarConstants.Tracks, DrawbarConstants.LightTracks];
        var set = Assert.Single(sets, c => c == new DrawbarConstants(row.Printed("a"), row.Printed("b"), row.Printed("c")));
        row.Matches(("D/W", ExcessIndexKernel.Drawbar(row.Si("RCIx"), set)));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "excess")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var tracks = row.Word("tracks") == "true";
        double high = ExcessIndexKernel.ResistanceReadingA(row.Si("RCIx")), low = tracks ? high : ExcessIndexKernel.ResistanceReadingB(row.Si("RCIx"));
        row.Matches(("low", low), ("high", high), ("drawbar", ExcessIndexKernel.Drawbar(row.Si("RCIx"), DrawbarConstants.Of(tracks, row.Si("CPF")))));
    }

    [Fact]
    public void The_constants_change_at_four_psi()
    {
        Assert.Equal(DrawbarConstants.LightWheels, DrawbarConstants.Of(false, (4 * Psi) - 1e-6));
        Assert.Equal(DrawbarConstants.Wheels, DrawbarConstants.Of(false, 4 * Psi));
        Assert.Equal(DrawbarConstants.Wheels, DrawbarConstants.Of(false, (4 * Psi) + 1e-6));
        Assert.Equal(DrawbarConstants.LightTracks, DrawbarConstants.Of(true, (4 * Psi) - 1e-6));
        Assert.Equal(DrawbarConstants.Tracks, DrawbarConstants.Of(true, 4 * Psi));
        Assert.Equal(DrawbarConstants.Tracks, DrawbarConstants.Of(true, (4 * Psi) + 1e-6));
    }

    [Theory]
    [InlineData(-1e-6, false)]
    [InlineData(0, true)]
    [InlineData(1e-6, true)]
    public void Below_the_vehicle_cone_index_there_is_no_number(double step, bool go)
    {
        var r = At(Wheeled.OnePass.Pascals + step);
        Assert.Equal(go, r.Go);
        Assert.Equal(go, r.MotionResistanceHigh is not null);
        Assert.Equal(go, r.DrawbarPull is not null);
        Assert.Equal(go ? [] : ["RCI_x"], r.Flags.Select(f => f.Limit.Symbol));
        var last = RatingConeIndexModel.Instance.Explain(Wheeled, Force.FromKilonewtons(98.1), Pressure.FromPascals(Wheeled.OnePass.Pascals + step)).Steps[^1];
        Assert.Equal(go ? "D" : "R", last.Symbol);
        if (!go) return;
        Assert.Equal(0.3, r.MotionResistanceRatioLow!.Value, 1e-4);
        Assert.Equal(0.4, r.MotionResistanceRatioHigh!.Value, 1e-6);
        Assert.Equal(0, r.DrawbarCoefficient!.Value, 1e-6);
    }

    [Fact]
    public void Wheels_below_four_psi_are_flagged_and_tracks_never()
    {
        Assert.Equal(["CPF"], RatingConeIndexModel.Instance.Evaluate(Gear(5), Force.FromKilonewtons(10), Pressure.FromKilopascals(900)).Flags.Select(f => f.Limit.Symbol));
        var light = TrackedMobilityModel.Instance.Evaluate(new TrackedGear(Force.FromKilonewtons(50), Length.FromMeters(3), Length.FromMeters(0.9), 12, Area.FromSquareMeters(0.2), Length.FromMeters(0.05)), new MobilityFactors(Length.FromMeters(0.4)));
        var r = RatingConeIndexModel.Instance.Evaluate(light, Force.FromKilonewtons(50), Pressure.FromKilopascals(900));
        Assert.Empty(r.Flags);
        Assert.Equal(r.MotionResistanceRatioHigh, r.MotionResistanceRatioLow);
    }

    [Fact]
    public void A_grade_takes_its_share_of_the_drawbar_pull()
    {
        var r = At(Wheeled.OnePass.Pascals + (10 * Psi));
        Assert.Equal(0.3907, r.DrawbarCoefficient!.Value, 5e-5);
        // RCI_x 10 psi carries a slope of 39 % with nothing in tow.
        Assert.True(r.PullOn(Grade.FromPercent(39))!.Value.Newtons > 0);
        Assert.True(r.PullOn(Grade.FromPercent(39.2))!.Value.Newtons < 0);
        Assert.Equal(r.DrawbarPull, r.PullOn(Grade.Level));
        Assert.Null(At(1).PullOn(Grade.Level));
    }

    [Fact]
    public void The_batch_is_the_typed_model()
    {
        double[] index = [100, Wheeled.OnePass.Kilopascals, 400, 900], low = new double[4], high = new double[4];
        var go = new bool[4];
        RatingConeIndexModel.Instance.MotionResistance(Wheeled, index, low, high, go);
        for (var i = 0; i < index.Length; i++)
        {
            var r = At(index[i] * 1000);
            Assert.Equal(r.Go, go[i]);
            Assert.Equal(r.MotionResistanceRatioLow ?? 0, low[i], 12);
            Assert.Equal(r.MotionResistanceRatioHigh ?? 0, high[i], 12);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => RatingConeIndexModel.Instance.MotionResistance(Wheeled, [double.NaN], new double[1], new double[1], new bool[1]));
        Assert.Throws<ArgumentException>(() => RatingConeIndexModel.Instance.MotionResistance(Wheeled, index, new double[3], high, go));
    }

    [Fact]
    public void Explains_with_the_numbers_put_in()
    {
        var working = RatingConeIndexModel.Instance.Explain(Wheeled, Force.FromKilonewtons(98.1), Pressure.FromKilopascals(400));
        Assert.Equal("23.18 psi", working.Steps[0].Value);
        Assert.Equal(["RCI_x", "R_low", "R_high", "X", "D"], working.Steps.Select(s => s.Symbol));
    }

    private static string Decision(double index, double needed) => index >= needed ? "true" : "false";

    private static RatingConeIndexResult At(double pascals) => RatingConeIndexModel.Instance.Evaluate(Wheeled, Force.FromKilonewtons(98.1), Pressure.FromPascals(pascals));

    private static MobilityResult Gear(double wheelKilonewtons) => WheeledMobilityModel.Instance.Evaluate(
        new WheelSet(Wheels.Of(400, wheelKilonewtons, 0.60, 1.60, 0.20), 2), new MobilityFactors(Length.FromMeters(0.40)).WithPower(Power.FromKilowatts(350), Mass.FromTonnes(30)));
}
