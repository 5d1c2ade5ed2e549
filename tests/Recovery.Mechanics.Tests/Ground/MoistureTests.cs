using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Ground;

public class MoistureTests
{
    private static readonly UscsClass[] Fine = [UscsClass.SM, UscsClass.SC, UscsClass.SMSC, UscsClass.CL, UscsClass.CLML, UscsClass.ML, UscsClass.MH, UscsClass.CH, UscsClass.OL, UscsClass.OH];

    [Theory]
    [CheckRows("ground", "moisture")]
    [CheckRows("ground-machines-scipy", "moisture")]
    public void Indices_match(CheckRow row)
    {
        var uscs = Enum.Parse<UscsClass>(row.Word("uscs").Replace("-", string.Empty, StringComparison.Ordinal));
        var fit = MoistureConeIndexModel.Instance.Evaluate(uscs, Ratio.FromDecimalFractions(row.Si("w")));
        foreach (var name in row.ExpectedNames)
        {
            row.MatchesOne(name, name switch
            {
                "CI" or "CI_kPa" => fit.ConeIndex.Pascals,
                "RCI" => fit.RatingConeIndex.Pascals,
                "RCI_uncapped" => fit.UncappedRatingConeIndex.Pascals,
                _ => fit.RemouldingIndex.DecimalFractions,
            });
        }

        var working = MoistureConeIndexModel.Instance.Explain(uscs, Ratio.FromDecimalFractions(row.Si("w")));
        Assert.Equal(Text.Kilopascals(fit.RatingConeIndex.Pascals), working.Steps[^1].Value);
        Assert.Equal(row.Word("uscs"), MoistureConeIndexModel.Label(uscs));
    }

    [Fact]
    public void The_printed_slope_of_fat_clay_cannot_be_and_is_not_taken()
    {
        // exp(13.816 - 5.583 ln 40) is 0.001 psi.
        Assert.True(Math.Exp(13.816 - (5.583 * Math.Log(40))) < 0.0012);
        var fit = MoistureConeIndexModel.Instance.Evaluate(UscsClass.CH, Ratio.FromPercent(40));
        Assert.Equal(73, fit.ConeIndex.PoundsForcePerSquareInch, 0.5);
        Assert.Equal(Standing.FromMemory, fit.Standing);
        Assert.Contains(fit.Remarks, r => r.Contains("-5.583", StringComparison.Ordinal));
        Assert.DoesNotContain(MoistureConeIndexModel.Instance.Evaluate(UscsClass.CL, Ratio.FromPercent(40)).Remarks, r => r.Contains("-5.583", StringComparison.Ordinal));
        Assert.Equal(Standing.Secondary, MoistureConeIndexModel.Instance.Evaluate(UscsClass.CL, Ratio.FromPercent(40)).Standing);
    }

    [Theory]
    // Where the two fits of a class cross, the rating cone index leaves the cone index: (a' - a)/(b - b').
    [InlineData(UscsClass.MH, 12.321, -2.044, 23.641, -5.191)]
    [InlineData(UscsClass.OL, 10.977, -1.754, 17.399, -3.584)]
    public void Rating_cone_index_is_cut_to_the_cone_index_up_to_where_the_fits_cross(UscsClass uscs, double a, double b, double ratingA, double ratingB)
    {
        var cross = Math.Exp((ratingA - a) / (b - ratingB));
        var below = MoistureConeIndexModel.Instance.Evaluate(uscs, Ratio.FromPercent(cross * (1 - 1e-6)));
        var above = MoistureConeIndexModel.Instance.Evaluate(uscs, Ratio.FromPercent(cross * (1 + 1e-6)));
        Assert.True(below.RatingIsCapped);
        Assert.Equal(below.ConeIndex.Pascals, below.RatingConeIndex.Pascals);
        Assert.Contains(below.Remarks, r => r.Contains("cut to it", StringComparison.Ordinal));
        Assert.False(above.RatingIsCapped);
        Assert.DoesNotContain(above.Remarks, r => r.Contains("cut to it", StringComparison.Ordinal));
        Assert.Equal(below.RatingConeIndex.Pascals, above.RatingConeIndex.Pascals, below.ConeIndex.Pascals * 1e-4);
    }

    [Fact]
    public void Clean_sand_carries_its_remark_and_one_pair()
    {
        foreach (var sand in (UscsClass[])[UscsClass.SW, UscsClass.SP])
        {
            var fit = MoistureConeIndexModel.Instance.Evaluate(sand, Ratio.FromPercent(10));
            Assert.Equal(fit.ConeIndex.Pascals, fit.RatingConeIndex.Pascals);
            Assert.Contains(fit.Remarks, r => r.Contains("field capacity", StringComparison.Ordinal));
        }

        Assert.DoesNotContain(MoistureConeIndexModel.Instance.Evaluate(UscsClass.SM, Ratio.FromPercent(10)).Remarks, r => r.Contains("field capacity", StringComparison.Ordinal));
    }

    [Fact]
    public void A_reading_beyond_the_instrument_is_flagged_and_one_within_is_not()
    {
        // CL reaches 300 psi at exp((ln 300 - 10.998)/-1.848) = 17.5 %.
        var at = Math.Exp((Math.Log(300) - 10.998) / -1.848);
        Assert.Single(MoistureConeIndexModel.Instance.Evaluate(UscsClass.CL, Ratio.FromPercent(at * 0.9999)).Flags);
        Assert.Empty(MoistureConeIndexModel.Instance.Evaluate(UscsClass.CL, Ratio.FromPercent(at * 1.0001)).Flags);
    }

    [Fact]
    public void A_soil_from_moisture_is_listed_as_still_to_measure_with_two_digits_and_the_low_end_of_the_scatter()
    {
        var soil = Soil.FromMoisture(UscsClass.ML, Ratio.FromPercent(25));
        Assert.Equal(1234.25, soil.ConeIndex.Kilopascals, 0.1);
        Assert.Equal(454.4, soil.RatingConeIndex.Kilopascals, 0.1);
        Assert.Equal(1234.25 / 2, soil.WeakestConeIndex.Kilopascals, 0.1);
        Assert.True(soil.IsEstimated);
        var assumption = Assert.Single(soil.Assumptions, a => a.Id == "assume.strength-from-moisture");
        Assert.Contains("about 1200 kPa", soil.ToString(), StringComparison.Ordinal);
        Assert.Contains("ML at 25 %", assumption.Taken, StringComparison.Ordinal);
        Assert.Contains("factor of 1.5 to 2", assumption.WouldChange, StringComparison.Ordinal);
        Assert.DoesNotContain(soil.Assumptions, a => a.Id == "assume.remoulding-index");
        Assert.Equal(SoilKind.CleanSand, Soil.FromMoisture(UscsClass.SP, Ratio.FromPercent(10)).Kind);
        Assert.Equal(SoilKind.SandWithFines, Soil.FromMoisture(UscsClass.SMSC, Ratio.FromPercent(20)).Kind);
        Assert.False(Soil.FromConeIndexOnly(Pressure.FromKilopascals(300)).IsEstimated);
        Assert.True(soil.WithWeakestReading(Pressure.FromKilopascals(400)).IsEstimated);
    }

    [Theory]
    [InlineData(0.5, "gravimetricMoisture must be from 1 to 200 %; it was 0.5 %")]
    [InlineData(201, "it was 201 %")]
    [InlineData(4, "gives CL a cone index of")]
    public void Refuses_a_moisture_that_gives_no_soil(double percent, string words) =>
        Assert.Contains(words, Assert.Throws<ArgumentOutOfRangeException>(() => Soil.FromMoisture(UscsClass.CL, Ratio.FromPercent(percent))).Message, StringComparison.Ordinal);

    [Fact]
    public void Refuses_a_class_that_is_not_one() => Assert.Throws<ArgumentOutOfRangeException>(() => MoistureConeIndexModel.Instance.Evaluate((UscsClass)99, Ratio.FromPercent(20)));

    [Property]
    public Property Wetter_fine_soil_is_weaker_and_its_remoulding_index_at_most_one() =>
        Prop.ForAll((from uscs in Gen.Elements(Fine) from w in Gen.Choose(20, 190) select (uscs, w)).ToArbitrary(), x =>
        {
            var drier = MoistureConeIndexModel.Instance.Evaluate(x.uscs, Ratio.FromPercent(x.w));
            var wetter = MoistureConeIndexModel.Instance.Evaluate(x.uscs, Ratio.FromPercent(x.w + 1));
            return wetter.ConeIndex.Pascals < drier.ConeIndex.Pascals && wetter.RatingConeIndex.Pascals < drier.RatingConeIndex.Pascals && drier.RemouldingIndex.DecimalFractions <= 1;
        });

    [Fact]
    public void Layers_agree()
    {
        var w = Enumerable.Range(10, 40).Select(i => (double)i).ToArray();
        double[] ci = new double[w.Length], rci = new double[w.Length];
        MoistureConeIndexModel.Instance.Evaluate(UscsClass.OL, w, ci, rci);
        for (var i = 0; i < w.Length; i++)
        {
            var one = MoistureConeIndexModel.Instance.Evaluate(UscsClass.OL, Ratio.FromPercent(w[i]));
            Assert.Equal(one.ConeIndex.Kilopascals, ci[i], ci[i] * 1e-12);
            Assert.Equal(one.RatingConeIndex.Kilopascals, rci[i], rci[i] * 1e-12);
        }

        w[3] = double.NaN;
        Array.Clear(ci);
        Assert.Contains("moisturePercent[3]", Assert.Throws<ArgumentOutOfRangeException>(() => MoistureConeIndexModel.Instance.Evaluate(UscsClass.OL, w, ci, rci)).Message, StringComparison.Ordinal);
        Assert.All(ci, v => Assert.Equal(0, v));
        Assert.Throws<ArgumentException>(() => MoistureConeIndexModel.Instance.Evaluate(UscsClass.OL, w, new double[3], rci));
    }
}
