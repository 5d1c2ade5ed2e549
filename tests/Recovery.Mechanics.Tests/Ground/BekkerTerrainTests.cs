using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Ground;

public class BekkerTerrainTests
{
    // Cone indices at 6 in that the table implies, kPa, in its order (worked by hand from the conversion, printed to 1 kPa).
    private static readonly double[] AtSixInches = [213, 553, 201, 1241, 913, 235, 51, 790, 786, 2132, 225, 2244, 198, 3637, 1300, 423, 1728, 902];

    [Theory]
    [CheckRows("ground", "bekker-cone")]
    [CheckRows("ground-machines-scipy", "bekker-cone")]
    public void Cone_index_matches(CheckRow row)
    {
        var terrain = new BekkerTerrain("row", row.Printed("kc"), row.Printed("kphi"), row.Si("n"), KPa(5), Angle.FromDegrees(20));
        var ci = BekkerConeIndexModel.Instance.Evaluate(terrain, M(row.Si("z")));
        row.Matches(("CI", ci.Pascals));
        Assert.Equal(Text.Kilopascals(ci.Pascals), BekkerConeIndexModel.Instance.Explain(terrain, M(row.Si("z"))).Steps[^1].Value);
        Assert.Equal(Standing.UserSupplied, terrain.Source.Standing);
    }

    [Fact]
    public void The_whole_table_gives_its_cone_indices()
    {
        Assert.Equal(AtSixInches.Length, BekkerTerrains.All.Count);
        for (var i = 0; i < AtSixInches.Length; i++)
        {
            var terrain = BekkerTerrains.All[i];
            Assert.Equal(AtSixInches[i], BekkerConeIndexModel.Instance.Evaluate(terrain, BekkerConeIndexModel.ComparisonDepth).Kilopascals, 0.51);
            Assert.Same(terrain, BekkerTerrains.Find(terrain.Name, terrain.Moisture?.Percent));
            Assert.Equal(Standing.Secondary, terrain.Source.Standing);
        }
    }

    [Fact]
    public void Table_ends_and_what_it_does_not_hold()
    {
        Assert.Equal("dry sand (LLL)", BekkerTerrains.All[0].Name);
        Assert.Equal("Grenville loam (Wong)", BekkerTerrains.All[^1].Name);
        Assert.Null(BekkerTerrains.Find("LETE sand (Wong)").Moisture);
        Assert.Contains("there is no terrain 'lean clay (WES)' at 30 %", Assert.Throws<ArgumentException>(() => BekkerTerrains.Find("lean clay (WES)", 30)).Message, StringComparison.Ordinal);
        Assert.Contains("without a stated moisture", Assert.Throws<ArgumentException>(() => BekkerTerrains.Find("lean clay (WES)")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Table_converts_back_to_round_imperial_numbers()
    {
        // Clayey soil at 38 %: 12 lbf/in^(n+1) and 16 lbf/in^(n+2), n 0.5.
        var clay = BekkerTerrains.Find("clayey soil (Thailand)", 38);
        Assert.Equal(12, clay.CohesiveModulus * 1000 / 4.4482216152605 * Math.Pow(0.0254, 1.5), 0.01);
        Assert.Equal(16, clay.FrictionalModulus * 1000 / 4.4482216152605 * Math.Pow(0.0254, 2.5), 0.01);
    }

    [Fact]
    public void Depth_is_flagged_beyond_the_plate_tests()
    {
        Assert.Empty(BekkerConeIndexModel.Instance.Flags(M(0.3)));
        Assert.Single(BekkerConeIndexModel.Instance.Flags(M(0.3 + 1e-9)));
    }

    [Fact]
    public void A_soil_from_a_terrain_carries_it_and_is_listed()
    {
        var rubicon = BekkerTerrains.Find("Rubicon sandy loam (Wong)", 43);
        var soil = Soil.FromTerrain(rubicon, BekkerConeIndexModel.ComparisonDepth);
        Assert.Same(rubicon, soil.Terrain);
        Assert.Equal(423, soil.ConeIndex.Kilopascals, 0.5);
        Assert.True(soil.IsEstimated);
        Assert.Contains(soil.Assumptions, a => a.Taken.Contains("Rubicon", StringComparison.Ordinal));
        Assert.Same(rubicon, soil.WithWeakestReading(KPa(300)).Terrain);
        Assert.Same(rubicon, Soil.FromConeIndexOnly(KPa(400)).WithTerrain(rubicon).Terrain);
    }

    [Theory]
    [InlineData(-1001, 700, 0.5, "cohesiveModulus")]
    [InlineData(10, 0, 0.5, "frictionalModulus")]
    [InlineData(10, 700, 0, "exponent")]
    [InlineData(10, double.NaN, 0.5, "not a number")]
    public void Refuses_a_terrain_that_is_none(double kc, double kphi, double n, string words) =>
        Assert.Contains(words, Assert.Throws<ArgumentOutOfRangeException>(() => new BekkerTerrain("x", kc, kphi, n, KPa(5), Angle.FromDegrees(20))).Message, StringComparison.Ordinal);
}
