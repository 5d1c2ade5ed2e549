using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Ground;

public class SoilTests
{
    [Theory]
    [CheckRows("ground", "undrained-strength")]
    public void Undrained_strength_matches(CheckRow row) => row.Matches(("s_u", SoilKernel.UndrainedStrength(row.Si("CI"), row.Si("N_k"))));

    [Theory]
    [CheckRows("ground", "wall-and-floor")]
    public void Wall_and_floor_match(CheckRow row)
    {
        var s = SoilKernel.Stuck(row.Si("CI"), row.Si("CI") * row.Si("RI"), row.Si("bound"), row.Si("N_k"));
        row.MatchesOne("floor_low", s.FloorLow);
        row.MatchesOne("floor_central", s.FloorCentral);
        row.MatchesOne("floor_high", s.FloorHigh);
        row.MatchesOne("wall_low", s.WallLow);
        row.MatchesOne("wall_central", s.WallCentral);
        row.MatchesOne("wall_high", s.WallHigh);
        Assert.Equal(row.ExpectedText("contradiction") == "true", s.ReadingBelowBound);
    }

    [Fact]
    public void A_remoulding_index_that_was_not_measured_is_assumed_and_listed()
    {
        var soil = Soil.FromConeIndexOnly(Pressure.FromKilopascals(400));
        Assert.Equal(280, soil.RatingConeIndex.Kilopascals, 1e-9);
        Assert.Contains(soil.Assumptions, a => a.Id == "assume.remoulding-index");
        Assert.DoesNotContain(Soil.FromConeIndex(Pressure.FromKilopascals(400), Ratio.FromDecimalFractions(0.8)).Assumptions, a => a.Id == "assume.remoulding-index");
        var sand = Soil.FromConeIndexOnly(Pressure.FromKilopascals(400), SoilKind.CleanSand);
        Assert.Equal(400, sand.RatingConeIndex.Kilopascals, 1e-9);
        Assert.DoesNotContain(sand.Assumptions, a => a.Id == "assume.remoulding-index");
    }

    [Theory]
    [InlineData(0, 0.8, "coneIndex", "from 1 to 20000 kPa; it was 0 kPa")]
    [InlineData(-5, 0.8, "coneIndex", "it was -5 kPa")]
    [InlineData(400, 0, "remouldingIndex", "from 0.05 to 1; it was 0")]
    [InlineData(400, 1.01, "remouldingIndex", "it was 1.01")]
    public void Refuses_bad_readings_with_words(double coneIndexKilopascals, double remouldingIndex, string parameter, string words)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Soil.FromConeIndex(Pressure.FromKilopascals(coneIndexKilopascals), Ratio.FromDecimalFractions(remouldingIndex)));
        Assert.Equal(parameter, refusal.ParamName);
        Assert.Contains(words, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Explains_itself_and_takes_the_weakest_standing()
    {
        var working = Soil.FromConeIndex(Pressure.FromKilopascals(400), Ratio.FromDecimalFractions(0.8)).Explain();
        Assert.Equal(["320 kPa", "32 kPa"], working.Steps.Select(s => s.Value));
        Assert.Equal(Standing.FromMemory, working.Standing);
    }

    [Theory]
    [InlineData(10, 0.0996686524911620)]
    [InlineData(-10, -0.0996686524911620)]
    public void Grade_from_percent_is_an_arctangent(double percent, double radians) => Assert.Equal(radians, Grade.FromPercent(percent).Radians, 1e-14);

    [Fact]
    public void Two_unit_systems_give_one_soil() =>
        Assert.Equal(Soil.FromConeIndex(Pressure.FromPoundsForcePerSquareInch(50), Ratio.FromPercent(80)).RatingConeIndex.Pascals, Soil.FromConeIndex(Pressure.FromKilopascals(50 * 6.894757293168361), Ratio.FromDecimalFractions(0.8)).RatingConeIndex.Pascals, 1e-6);

    /// <summary>A plan lends the ground of the puller the index of the mire; another reading or a declared number must not lose it.</summary>
    [Fact]
    public void A_weakest_reading_leaves_everything_else_as_it_was()
    {
        var lent = Soil.FromConeIndexOnly(Pressure.FromKilopascals(400)).WithRemouldingIndexOf(Soil.FromConeIndex(Pressure.FromKilopascals(300), Ratio.FromDecimalFractions(0.9)));
        var read = lent.WithWeakestReading(Pressure.FromKilopascals(200));
        Assert.Equal(180, read.WeakestRatingConeIndex.Kilopascals, 1e-9);
        Assert.Equal(lent, read.WithWeakestReading(Pressure.FromKilopascals(400)));
        Assert.Equal("weakestConeIndex", Assert.Throws<ArgumentOutOfRangeException>(() => lent.WithWeakestReading(Pressure.FromKilopascals(401))).ParamName);
    }
}
