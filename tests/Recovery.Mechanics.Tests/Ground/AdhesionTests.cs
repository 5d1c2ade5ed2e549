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
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Ground;

public class AdhesionTests
{
    [Theory]
    [CheckRows("ground", "adhesion-api")]
    [CheckRows("ground-machines-scipy", "adhesion-api")]
    public void Api_factor_matches(CheckRow row) =>
        row.Matches(("alpha", AdhesionModel.Api.Evaluate(Pressure.FromPascals(row.Si("s_u")), Pressure.FromPascals(row.Si("p0"))).AdhesionFactor.DecimalFractions));

    [Theory]
    [CheckRows("ground", "adhesion-navfac")]
    public void Navfac_limits_match(CheckRow row)
    {
        row.MatchesOne("limit_1", At(250));
        row.MatchesOne("limit_2", At(500));
        row.MatchesOne("limit_3", At(1000));
        static double At(double psf) => AdhesionModel.NavfacSteelPile.Evaluate(Pressure.FromPascals(psf * AdhesionKernel.PascalsPerPsf), KPa(8)).Adhesion.Pascals;
    }

    [Theory]
    [CheckRows("ground-machines-scipy", "adhesion-navfac-line")]
    public void Navfac_line_matches(CheckRow row) => row.Matches(("f", AdhesionModel.NavfacSteelPile.Evaluate(Pressure.FromPascals(row.Si("s_u")), KPa(8)).Adhesion.Pascals));

    [Theory]
    [CheckRows("ground-machines-scipy", "adhesion-tomlinson")]
    public void Tomlinson_factor_matches(CheckRow row) => row.Matches(("alpha", AdhesionModel.Tomlinson.Evaluate(Pressure.FromPascals(row.Si("s_u")), KPa(8)).AdhesionFactor.DecimalFractions));

    [Theory]
    [CheckRows("ground", "adhesion-farm-clay")]
    public void Farm_clay_matches(CheckRow row)
    {
        Assert.Equal((row.Si("alpha"), row.Si("cap")), (AdhesionKernel.FarmClayFactor, AdhesionKernel.CapPascals));
        row.Matches(("adhesion", AdhesionModel.FarmClay.Evaluate(Pressure.FromPascals(row.Si("s_u")), KPa(8)).Adhesion.Pascals));
    }

    [Theory]
    [InlineData(250)]
    [InlineData(500)]
    [InlineData(1000)]
    public void The_broken_line_is_continuous_at_its_breaks(double psf)
    {
        var at = psf * AdhesionKernel.PascalsPerPsf;
        Assert.Equal(AdhesionKernel.NavfacSteelPile(at), AdhesionKernel.NavfacSteelPile(at - 1e-6), 1e-5);
        Assert.Equal(AdhesionKernel.NavfacSteelPile(at), AdhesionKernel.NavfacSteelPile(at + 1e-6), 1e-5);
    }

    [Theory]
    [InlineData(25e3, 1)]
    [InlineData(100e3, 0.3)]
    public void Tomlinson_is_continuous_at_its_ends(double strength, double share)
    {
        foreach (var at in (double[])[strength - 1e-6, strength, strength + 1e-6]) Assert.Equal(share, AdhesionKernel.TomlinsonFactor(at), 1e-9);
    }

    [Fact]
    public void The_api_factor_has_no_step_at_psi_one_and_is_capped_at_one()
    {
        foreach (var s in (double[])[8e3 - 1e-6, 8e3, 8e3 + 1e-6]) Assert.Equal(0.5, AdhesionKernel.ApiFactor(s, 8e3), 1e-9);
        // The cap takes over at psi = 0.25.
        Assert.Equal(1, AdhesionKernel.ApiFactor(2e3 - 1, 8e3));
        Assert.True(AdhesionKernel.ApiFactor(2e3 + 1, 8e3) < 1);
    }

    [Fact]
    public void Each_rule_flags_outside_its_range_only()
    {
        Assert.Single(AdhesionModel.Api.Evaluate(KPa(24.01), KPa(8)).Flags);
        Assert.Empty(AdhesionModel.Api.Evaluate(KPa(24), KPa(8)).Flags);
        Assert.Single(AdhesionModel.NavfacSteelPile.Evaluate(KPa(47.9), KPa(8)).Flags);
        Assert.Empty(AdhesionModel.NavfacSteelPile.Evaluate(KPa(47.8), KPa(8)).Flags);
        Assert.Single(AdhesionModel.Tomlinson.Evaluate(KPa(100.1), KPa(8)).Flags);
        Assert.Empty(AdhesionModel.Tomlinson.Evaluate(KPa(100), KPa(8)).Flags);
        Assert.Single(AdhesionModel.FarmClay.Evaluate(KPa(24.01), KPa(8)).Flags);
        Assert.Empty(AdhesionModel.FarmClay.Evaluate(KPa(24), KPa(8)).Flags);
    }

    [Fact]
    public void All_rules_stand_side_by_side_and_explain_themselves()
    {
        var all = AdhesionModel.Compare(KPa(10), KPa(5));
        Assert.Equal([0.420, 1, 1, 0.5], all.Select(r => Math.Round(r.AdhesionFactor.DecimalFractions, 3)));
        foreach (var result in all)
        {
            var working = result.Model.Explain(KPa(10), KPa(5));
            Assert.Equal(Text.Kilopascals(result.Adhesion.Pascals), working.Steps[^1].Value);
            Assert.StartsWith(result.Model.Name, result.ToString(), StringComparison.Ordinal);
        }

        Assert.Contains("undrainedShearStrength must be from 0.1 to 500 kPa; it was 0 kPa", Assert.Throws<ArgumentOutOfRangeException>(() => AdhesionModel.FarmClay.Evaluate(Pressure.Zero, KPa(5))).Message, StringComparison.Ordinal);
        Assert.Contains("effectiveOverburden", Assert.Throws<ArgumentOutOfRangeException>(() => AdhesionModel.FarmClay.Evaluate(KPa(5), Pressure.Zero)).Message, StringComparison.Ordinal);
    }

    [Property]
    public Property Stronger_clay_never_sticks_less_and_never_more_than_its_strength() =>
        Prop.ForAll((from s in Gen.Choose(1, 4000) from p in Gen.Choose(5, 1000) select (s / 10.0, p / 10.0)).ToArbitrary(), x =>
            AdhesionModel.Compare(KPa(x.Item1), KPa(x.Item2)).Zip(AdhesionModel.Compare(KPa(x.Item1 + 1), KPa(x.Item2)))
                .All(pair => pair.First.AdhesionFactor.DecimalFractions <= 1 + 1e-12 && (pair.First.Model == AdhesionModel.Tomlinson || pair.Second.Adhesion.Pascals >= pair.First.Adhesion.Pascals - 1e-6)));
}
