using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Ground;

public class RemouldingTests
{
    [Theory]
    [CheckRows("ground", "remoulding-test")]
    public void Remoulding_index_of_a_test(CheckRow row)
    {
        var test = new RemouldingTest(Pressure.FromPascals(row.Si("before")), Pressure.FromPascals(row.Si("after")));
        Assert.Equal(0.87, test.RemouldingIndex.DecimalFractions, 1e-12);
        row.Matches(("RCI", Soil.FromConeIndex(Pressure.FromPascals(row.Si("CI")), test.RemouldingIndex).RatingConeIndex.Pascals));
        Assert.Empty(test.Findings);
        Assert.Equal(2, test.Explain().Steps.Count);
    }

    [Theory]
    [CheckRows("ground", "rating-signs")]
    public void Rules_of_thumb(CheckRow row) => row.Matches(("likely_immobilised", RatingIndexSigns.LikelyImmobilised.Pascals), ("slippery", RatingIndexSigns.Slippery.Pascals), ("CBR", RatingIndexSigns.BearingRatio(Pressure.FromPascals(row.Si("RCI"))).DecimalFractions));

    [Fact]
    public void A_ratio_above_one_is_cut_and_said()
    {
        Assert.Empty(new RemouldingTest(KPa(300), KPa(300)).Findings);
        var test = new RemouldingTest(KPa(300), KPa(300.3));
        Assert.Equal(1, test.RemouldingIndex.DecimalFractions);
        Assert.Equal("ground.remoulding-capped", Assert.Single(test.Findings).Id);
    }

    [Fact]
    public void A_low_ratio_in_fat_clay_is_doubted_and_used()
    {
        Assert.Empty(new RemouldingTest(KPa(300), KPa(150), UscsClass.CH).Findings);
        Assert.Empty(new RemouldingTest(KPa(300), KPa(149.7), UscsClass.CL).Findings);
        var test = new RemouldingTest(KPa(300), KPa(149.7), UscsClass.CH);
        Assert.Equal("ground.remoulding-doubtful", Assert.Single(test.Findings).Id);
        Assert.Equal(0.499, test.RemouldingIndex.DecimalFractions, 1e-12);
    }

    /// <summary>A sample that turns liquid reads below the least index that is taken; the index then lies above the reading, and that is said.</summary>
    [Theory]
    [InlineData(15.1, false)]
    [InlineData(15, false)]
    [InlineData(14.9, true)]
    [InlineData(1, true)]
    public void A_ratio_below_the_least_index_is_raised_and_said(double after, bool raised)
    {
        var test = new RemouldingTest(KPa(300), KPa(after), UscsClass.CL);
        Assert.Equal(raised ? 0.05 : after / 300, test.RemouldingIndex.DecimalFractions, 1e-12);
        if (!raised)
        {
            Assert.Empty(test.Findings);
            return;
        }

        var finding = Assert.Single(test.Findings);
        Assert.Equal("ground.remoulding-raised", finding.Id);
        Assert.Equal(Severity.Caution, finding.Severity);
    }

    [Fact]
    public void A_soil_takes_the_index_of_its_test_and_keeps_the_rest()
    {
        var test = new RemouldingTest(KPa(300), KPa(10));
        var soil = Soil.FromConeIndexOnly(KPa(350)).WithWeakestReading(KPa(300)).WithDeclaredUnitWeight(SpecificWeight.FromKilonewtonsPerCubicMeter(18)).WithDeclaredAdhesionFactor(Frac(0.4)).WithTerrain(BekkerTerrains.All[0]).WithRemouldingTest(test);
        Assert.Equal(0.05, soil.RemouldingIndex.DecimalFractions, 1e-12);
        Assert.Equal(17.5, soil.RatingConeIndex.Kilopascals, 1e-9);
        Assert.Equal(15, soil.WeakestRatingConeIndex.Kilopascals, 1e-9);
        Assert.Equal(18, soil.UnitWeight.KilonewtonsPerCubicMeter, 1e-9);
        Assert.Equal(0.4, soil.AdhesionFactor.DecimalFractions, 1e-12);
        Assert.Equal(BekkerTerrains.All[0], soil.Terrain);
        Assert.DoesNotContain(soil.Assumptions, a => a.Id == "assume.remoulding-index");
        Assert.Same(test, soil.RemouldingTest);
        Assert.Same(test, soil.WithWeakestReading(KPa(200)).RemouldingTest);
        Assert.Null(Soil.FromConeIndex(KPa(350), Frac(0.7)).RemouldingTest);
        Assert.Contains("clean sand", Assert.Throws<ArgumentException>(() => Soil.FromConeIndexOnly(KPa(350), SoilKind.CleanSand).WithRemouldingTest(test)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => soil.WithRemouldingTest(null!));
    }

    [Fact]
    public void The_signs_turn_at_their_limits()
    {
        // 40 psi is 275.79 kPa, 50 psi 344.738 kPa.
        Assert.True(RatingIndexSigns.IsLikelyToImmobilise(Soil.FromConeIndex(KPa(275.7), Frac(1))));
        Assert.False(RatingIndexSigns.IsLikelyToImmobilise(Soil.FromConeIndex(KPa(275.9), Frac(1))));
        Assert.True(RatingIndexSigns.IsLikelyToImmobilise(Soil.FromConeIndex(KPa(600), Frac(0.7)).WithWeakestReading(KPa(390))));
        Assert.True(RatingIndexSigns.IsSlippery(KPa(344.7)));
        Assert.False(RatingIndexSigns.IsSlippery(KPa(344.8)));
        Assert.Equal(Standing.Secondary, RatingIndexSigns.Source.Standing);
    }

    [Property]
    public Property A_softer_sample_never_gives_a_higher_index() => Prop.ForAll((from before in Gen.Choose(20, 2000) from after in Gen.Choose(2, 3000) select (before, after)).ToArbitrary(), x =>
    {
        double index = new RemouldingTest(KPa(x.before), KPa(x.after)).RemouldingIndex.DecimalFractions, softer = new RemouldingTest(KPa(x.before), KPa(x.after - 1)).RemouldingIndex.DecimalFractions;
        return softer <= index && index is >= 0.05 and <= 1;
    });

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("before must be from 1 to 20000 kPa; it was 0 kPa", Assert.Throws<ArgumentOutOfRangeException>(() => new RemouldingTest(KPa(0), KPa(100))).Message, StringComparison.Ordinal);
        Assert.Contains("clean sand", Assert.Throws<ArgumentException>(() => new RemouldingTest(KPa(300), KPa(200), UscsClass.SP)).Message, StringComparison.Ordinal);
        Assert.Equal("300 kPa before, 150 kPa after 100 blows: remoulding index 0.5", new RemouldingTest(KPa(300), KPa(150)).ToString());
    }
}
