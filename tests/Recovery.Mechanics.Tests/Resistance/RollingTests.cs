using System;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Rolling on a surface: the haul-road rule and the published tables.</summary>
public class RollingTests
{
    [Theory]
    [CheckRows("resistance", "haul-road")]
    public void Haul_road_rule(CheckRow row)
    {
        var r = HaulRoadModel.Instance.Evaluate(KN(100), M(row.Si("penetration")));
        row.Matches(("R_over_W", r.Ratio.DecimalFractions));
        Assert.Equal(100 * r.Ratio.DecimalFractions, r.Resistance.Kilonewtons, 1e-9);
    }

    [Theory]
    [CheckRows("resistance", "haul-road-centimetre")]
    public void Haul_road_rule_for_a_centimetre(CheckRow row)
    {
        Assert.Equal(HaulRoadKernel.PerInch, row.Si("per_inch"), 1e-12);
        row.Matches(("per_cm", HaulRoadKernel.Ratio(0.01) - HaulRoadKernel.Ratio(0)));
    }

    /// <summary>One tonne: 2 %, 1.5 % for an inch spread over its 25.4 mm, 1 % of grade.</summary>
    [Theory]
    [CheckRows("resistance", "one-tonne")]
    public void One_tonne(CheckRow row)
    {
        var weight = row.Si("m") / 9806.65 * 1000 * row.Si("g");
        row.MatchesOne("two_percent", weight * HaulRoadKernel.Ratio(0));
        row.MatchesOne("one_percent", weight * 0.01);
        Assert.Equal(double.Parse(row.ExpectedText("per_inch"), System.Globalization.CultureInfo.InvariantCulture), weight * (HaulRoadKernel.Ratio(0.001) - HaulRoadKernel.Ratio(0)), 0.00005);
    }

    [Theory]
    [CheckRows("resistance-scipy", "haul-road")]
    public void Haul_road_recomputed(CheckRow row) => row.Matches(("R", HaulRoadModel.Instance.Evaluate(UnitsNet.Force.FromNewtons(row.Si("W")), M(row.Si("p"))).Resistance.Newtons));

    [Fact]
    public void Flags_a_rut_and_refuses_a_hole()
    {
        Assert.Empty(HaulRoadModel.Instance.Evaluate(KN(100), M(0.15)).Flags);
        Assert.Equal("p", Assert.Single(HaulRoadModel.Instance.Evaluate(KN(100), M(0.1501)).Flags).Limit.Symbol);
        Assert.Contains("penetration must be from 0 to 1 m", Assert.Throws<ArgumentOutOfRangeException>(() => HaulRoadModel.Instance.Evaluate(KN(100), M(1.1))).Message, StringComparison.Ordinal);
        Assert.Equal("11 kN", HaulRoadModel.Instance.Explain(KN(100), M(0.1524)).Steps[^1].Value);
    }

    [Theory]
    [CheckRows("resistance", "earthmoving-table")]
    public void Pounds_for_a_ton_are_a_share_of_the_weight(CheckRow row)
    {
        var table = RollingSurfaces.All.Where(s => s.Source.Key == "fm-5-434-rolling").ToList();
        row.Matches(("hard_smooth", table[0].High.DecimalFractions), ("rutted_low", table[1].Low.DecimalFractions), ("rutted_high", table[1].High.DecimalFractions), ("soft_low", table[2].Low.DecimalFractions), ("soft_high", table[2].High.DecimalFractions));
        Assert.Equal(row.Printed("soft_high") / 2000, table[2].High.DecimalFractions, 1e-12);
    }

    [Fact]
    public void Surfaces_carry_their_table()
    {
        Assert.Equal(14, RollingSurfaces.All.Count);
        Assert.Equal([0.008, 0.012, 0.06], RollingSurfaces.All.Where(s => s.Source.Standing == Standing.Secondary).Select(s => s.High.DecimalFractions));
        Assert.Equal(11, RollingSurfaces.All.Count(s => s.Source.Standing == Standing.FromMemory));
        var band = RollingSurfaces.All.Single(s => s.Name == "tilled loam, farm tyre").Resistance(KN(100));
        Assert.Equal([19, 29.5, 40], new[] { band.Low.Kilonewtons, band.Central.Kilonewtons, band.High.Kilonewtons }.Select(v => Math.Round(v, 9)));
    }
}
