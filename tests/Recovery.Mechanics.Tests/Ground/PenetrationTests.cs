using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Ground;

public class PenetrationTests
{
    [Theory]
    [CheckRows("ground", "vega-nieva")]
    [CheckRows("ground-machines-scipy", "vega-nieva")]
    public void Vega_Nieva_matches(CheckRow row)
    {
        Ratio sand = Frac(row.Si("sand")), porosity = Frac(row.Si("porosity")), saturation = Frac(row.Si("S"));
        var ci = VegaNievaModel.Instance.Evaluate(sand, porosity, saturation);
        row.Matches(("CI", ci.Pascals));
        Assert.Equal(Text.Kilopascals(ci.Pascals), VegaNievaModel.Instance.Explain(sand, porosity, saturation).Steps[^1].Value);
    }

    [Theory]
    [CheckRows("ground", "peat")]
    [CheckRows("ground-machines-scipy", "peat")]
    public void Peat_power_law_matches(CheckRow row) => row.Matches(("CI", PeatModel.Instance.ConeIndex(Frac(row.Si("w"))).Pascals));

    [Theory]
    [CheckRows("ground", "amarjan")]
    [CheckRows("ground-machines-scipy", "amarjan")]
    public void Amarjan_matches(CheckRow row)
    {
        var w = Frac(row.Si("w"));
        var h = (int)row.Si("H");
        row.Matches(("CI", PeatModel.Instance.ConeIndex(w, h).Pascals), ("tau", PeatModel.Instance.ShearStrength(w, h).Pascals));
        Assert.Equal(Text.Kilopascals(PeatModel.Instance.ShearStrength(w, h).Pascals), PeatModel.Instance.Explain(w, h).Steps[^1].Value);
    }

    [Fact]
    public void Flags_and_refusals()
    {
        Assert.Single(VegaNievaModel.Instance.Flags(Frac(0.3 - 1e-9)));
        Assert.Empty(VegaNievaModel.Instance.Flags(Frac(0.3)));
        Assert.Single(VegaNievaModel.Instance.Flags(Frac(0.7 + 1e-9)));
        Assert.Single(PeatModel.Instance.Flags(Ratio.FromPercent(99)));
        Assert.Empty(PeatModel.Instance.Flags(Ratio.FromPercent(100)));
        Assert.Single(PeatModel.Instance.Flags(Ratio.FromPercent(1501)));
        Assert.Contains("humification must be from 1 to 10; it was 11", Assert.Throws<ArgumentOutOfRangeException>(() => PeatModel.Instance.ConeIndex(Ratio.FromPercent(500), 11)).Message, StringComparison.Ordinal);
        Assert.Contains("sand must be from 0 to 1; it was 1.1", Assert.Throws<ArgumentOutOfRangeException>(() => VegaNievaModel.Instance.Evaluate(Frac(1.1), Frac(0.4), Frac(0.5))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Peat_rots_weaker_at_every_moisture()
    {
        for (var h = 1; h < 10; h++)
        {
            Assert.True(PeatModel.Instance.ConeIndex(Ratio.FromPercent(600), h + 1).Pascals < PeatModel.Instance.ConeIndex(Ratio.FromPercent(600), h).Pascals);
            Assert.True(PeatModel.Instance.ShearStrength(Ratio.FromPercent(600), h + 1).Pascals > 0);
        }
    }

    [Theory]
    [CheckRows("ground", "compacted-cohesion")]
    public void Cohesion_of_compacted_soil_matches(CheckRow row)
    {
        foreach (var name in row.ExpectedNames)
        {
            var uscs = name switch { "ML-CL" => UscsClass.CLML, "SM-SC" => UscsClass.SMSC, _ => Enum.Parse<UscsClass>(name) };
            row.MatchesOne(name, CompactedSoilCohesion.Of(uscs)!.Value.Pascals);
        }

        Assert.All((UscsClass[])[UscsClass.SW, UscsClass.SP, UscsClass.OL, UscsClass.OH], c => Assert.Null(CompactedSoilCohesion.Of(c)));
        Assert.Equal(Standing.Secondary, CompactedSoilCohesion.Source.Standing);
        Assert.Throws<ArgumentOutOfRangeException>(() => CompactedSoilCohesion.Of((UscsClass)(-1)));
    }
}
