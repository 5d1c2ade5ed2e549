using System;
using System.Globalization;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Ground;

public class StrengthEstimateTests
{
    [Theory]
    [CheckRows("ground", "consistency-bound")]
    public void Bounds_of_consistency_match(CheckRow row)
    {
        row.Matches(("s_u", HandTestKernel.FromUnconfined(row.Si("q_u"))));
        // The bound is one of the table, and belongs to the harder class.
        var bound = Enum.GetValues<Consistency>().Single(c => Math.Abs(HandTestKernel.UpperUnconfinedTsf(c) - row.Printed("q_u")) < 1e-12);
        var at = HandTestKernel.Upper(bound);
        Assert.Equal(bound, ConsistencyModel.Instance.Classify(Pressure.FromPascals(at * (1 - 1e-9))));
        Assert.Equal(bound + 1, ConsistencyModel.Instance.Classify(Pressure.FromPascals(at)));
        Assert.Equal(bound + 1, ConsistencyModel.Instance.Classify(Pressure.FromPascals(at * (1 + 1e-9))));
    }

    /// <summary>The printed bounds of the unconfined strength, which is twice the undrained one.</summary>
    [Theory]
    [CheckRows("ground", "consistency-table")]
    public void Printed_bounds_of_a_class_match(CheckRow row)
    {
        var band = ConsistencyModel.Instance.Evaluate(Enum.Parse<Consistency>(row.Word("consistency"), ignoreCase: true));
        row.Matches(("q_low", 2 * band.LowPascals), ("q_high", 2 * band.HighPascals));
    }

    [Theory]
    [CheckRows("ground", "consistency-class")]
    public void Class_of_a_cone_reading_matches(CheckRow row)
    {
        var s = SoilKernel.UndrainedStrength(row.Si("CI"), row.Si("N_k"));
        row.MatchesOne("s_u", s);
        row.MatchesWord("consistency", ConsistencyModel.Instance.Classify(Pressure.FromPascals(s)).ToString().ToLowerInvariant());
    }

    [Fact]
    public void Both_ends_of_the_table_stand()
    {
        Assert.Equal(Consistency.VerySoft, ConsistencyModel.Instance.Classify(Pressure.Zero));
        Assert.Equal(Consistency.Hard, ConsistencyModel.Instance.Classify(KPa(2000)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConsistencyModel.Instance.Classify(KPa(2001)));
        var softest = ConsistencyModel.Instance.Evaluate(Consistency.VerySoft);
        Assert.Equal(1, softest.Low.Kilopascals, 1e-9);
        Assert.Equal(11.97, softest.High.Kilopascals, 0.005);
        var hardest = ConsistencyModel.Instance.Evaluate(Consistency.Hard);
        Assert.Equal(191.5, hardest.Low.Kilopascals, 0.05);
        Assert.Equal(hardest.LowPascals, hardest.HighPascals);
        Assert.Throws<ArgumentOutOfRangeException>(() => ConsistencyModel.Instance.Evaluate((Consistency)6));
    }

    [Theory]
    [InlineData(Consistency.VerySoft)]
    [InlineData(Consistency.Soft)]
    [InlineData(Consistency.Medium)]
    [InlineData(Consistency.Stiff)]
    [InlineData(Consistency.VeryStiff)]
    [InlineData(Consistency.Hard)]
    public void A_soil_from_the_thumb_keeps_the_class_and_is_listed(Consistency consistency)
    {
        var band = ConsistencyModel.Instance.Evaluate(consistency);
        var soil = Soil.FromConsistency(consistency);
        Assert.Equal(band.CentralPascals, soil.UndrainedShearStrength.Pascals, 1e-6);
        Assert.Equal(band.LowPascals * 12.5, soil.WeakestConeIndex.Pascals, 1e-6);
        Assert.Contains(soil.Assumptions, a => a.Id == "assume.strength-without-cone" && a.Taken.Contains(ConsistencyModel.Instance.HandTest(consistency), StringComparison.Ordinal));
        Assert.Contains(soil.Assumptions, a => a.Id == "assume.remoulding-index");
        Assert.Equal(consistency, ConsistencyModel.Instance.Classify(Pressure.FromPascals(band.CentralPascals)));
        var working = ConsistencyModel.Instance.Explain(consistency);
        Assert.Equal(Text.Kilopascals(band.CentralPascals), working.Steps[^1].Value);
        Assert.Equal(consistency is Consistency.VerySoft or Consistency.Hard, working.Steps.Take(2).Any(s => s.Source.Standing == Standing.Judgement));
    }

    [Theory]
    [CheckRows("ground", "liquidity-index")]
    [CheckRows("ground-machines-scipy", "liquidity-index")]
    public void Strength_from_the_liquidity_index_matches(CheckRow row)
    {
        if (row.Has("R")) Assert.Equal((row.Si("R"), row.Si("s_LL")), (HandTestKernel.StrengthRatio, HandTestKernel.LiquidLimitPascals));
        var s = LiquidityIndexModel.Instance.Evaluate(Frac(row.Si("LI")));
        row.Matches(("s_u", s.Pascals));
        var working = LiquidityIndexModel.Instance.Explain(Frac(row.Si("LI")));
        Assert.Equal(Text.Kilopascals(s.Pascals), working.Steps[^1].Value);
        Assert.Equal(Standing.FromMemory, working.Standing);
    }

    [Theory]
    [InlineData(0.2 - 1e-9, true)]
    [InlineData(0.2, false)]
    [InlineData(1.1, false)]
    [InlineData(1.1 + 1e-9, true)]
    public void The_liquidity_index_is_flagged_outside_its_range(double index, bool flagged) => Assert.Equal(flagged, LiquidityIndexModel.Instance.Flags(Frac(index)).Count == 1);

    [Fact]
    public void The_liquidity_index_speaks_of_remoulded_soil()
    {
        var soil = Soil.FromLiquidityIndex(Frac(0.5));
        Assert.Equal(10.0573 * 12.5, soil.RatingConeIndex.Kilopascals, 0.001);
        Assert.Equal(10.0573, soil.RemouldedShearStrengthBand.Central.Kilopascals, 1e-4);
        Assert.Equal(10.0573 / 0.7, soil.UndrainedShearStrength.Kilopascals, 1e-3);
        Assert.Contains(soil.Assumptions, a => a.Id == "assume.remoulding-index");
        Assert.Contains("liquidityIndex must be from -0.5 to 1.8; it was 1.9", Assert.Throws<ArgumentOutOfRangeException>(() => Soil.FromLiquidityIndex(Frac(1.9))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shear_test_gives_back_its_strength()
    {
        var soil = Soil.FromUndrainedShearStrength(KPa(14));
        Assert.Equal(14, soil.UndrainedShearStrength.Kilopascals, 1e-9);
        Assert.Contains(soil.Assumptions, a => a.Taken.Contains("14 kPa", StringComparison.Ordinal));
        Assert.Contains("undrainedShearStrength must be from 0.1 to 1600 kPa; it was 0 kPa", Assert.Throws<ArgumentOutOfRangeException>(() => Soil.FromUndrainedShearStrength(Pressure.Zero)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("ground", "strength-band")]
    public void The_band_of_the_cone_factor_matches(CheckRow row)
    {
        var soil = row.Has("RI") ? Soil.FromConeIndex(Pressure.FromPascals(row.Si("CI")), Frac(row.Si("RI"))) : Soil.FromConeIndexOnly(Pressure.FromPascals(row.Si("CI")));
        var band = row.Has("RI") ? soil.RemouldedShearStrengthBand : soil.UndrainedShearStrengthBand;
        foreach (var name in row.ExpectedNames)
        {
            row.MatchesOne(name, name switch
            {
                "RCI" => soil.RatingConeIndex.Pascals,
                "N_k_10" or "s_u_high" => band.HighPascals,
                "N_k_20" or "s_u_low" => band.LowPascals,
                _ => band.CentralPascals,
            });
        }

        Assert.StartsWith(Text.Number(band.Low.Kilopascals) + " to ", band.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("ground", "remoulding-undeclared")]
    public void An_undeclared_remoulding_index_is_borrowed_and_stays_to_measure(CheckRow row)
    {
        var tow = Soil.FromConeIndexOnly(Pressure.FromPascals(row.Si("CI")));
        var used = tow.WithRemouldingIndexOf(Soil.FromConeIndex(KPa(350), Frac(row.Si("RI_stuck"))));
        row.MatchesOne("index_low", used.WeakestRatingConeIndex.Pascals);
        row.MatchesOne("index_central", used.RatingConeIndex.Pascals);
        row.MatchesOne("index_high", used.ConeIndex.Pascals);
        Assert.Equal(row.ExpectedText("to_measure"), tow.Assumptions.Any(a => a.Id == "assume.remoulding-index").ToString(CultureInfo.InvariantCulture).ToLowerInvariant());
    }
}
