using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Ground;

public class CriticalLayerTests
{
    private const double Inch = 0.0254;

    [Theory]
    [CheckRows("ground", "critical-layer")]
    public void Reported_table_matches(CheckRow row)
    {
        var load = Force.FromNewtons(row.Si("W"));
        var layer = row.Word("gear") == "wheel" ? CriticalLayer.UnderWheel(load) : CriticalLayer.UnderTrack(Pressure.FromPascals(row.Si("p")), load);
        row.Matches(("top", layer.Top.Meters), ("bottom", layer.Bottom.Meters));
    }

    [Theory]
    [CheckRows("ground", "cone-full-scale")]
    public void Full_scale_of_the_army_cone_matches(CheckRow row)
    {
        row.Matches(("CI", MoistureKernel.FullScalePascals), ("CI_kPa", MoistureKernel.FullScalePascals));
        Assert.Equal(MoistureKernel.FullScalePascals, row.Si("force") / row.Si("area"), 1e-6);
    }

    [Theory]
    [CheckRows("ground", "units")]
    public void Units_match(CheckRow row) =>
        row.Matches(("force_si", row.Printed("force") * PhysicalConstants.NewtonsPerPoundForce), ("a_si", row.Printed("pressure_a") * PhysicalConstants.PascalsPerPsf), ("b_si", row.Printed("pressure_b") * PhysicalConstants.PascalsPerPsi), ("c_si", row.Printed("pressure_c") * HandTestKernel.PascalsPerTsf));

    [Theory]
    // Table 3 of ERDC/GSL SR-13-2: bounds at 2,000 and 15,000 lbf.
    [InlineData(1, 3, 9)]
    [InlineData(1999.999, 3, 9)]
    [InlineData(2000, 6, 12)]
    [InlineData(2000.001, 6, 12)]
    [InlineData(14999.999, 6, 12)]
    [InlineData(15000, 6, 12)]
    [InlineData(15000.001, 0, 12)]
    [InlineData(22000, 0, 12)]
    public void Layer_under_a_wheel(double pounds, double top, double bottom)
    {
        var layer = CriticalLayer.UnderWheel(Force.FromPoundsForce(pounds));
        Assert.Equal(top * Inch, layer.Top.Meters, 1e-12);
        Assert.Equal(bottom * Inch, layer.Bottom.Meters, 1e-12);
        Assert.Equal((bottom + 6) * Inch, layer.MeasureTo.Meters, 1e-12);
        Assert.Empty(layer.Remark);
    }

    [Theory]
    [InlineData(3.999, 300000, 3, 9)]
    [InlineData(4, 99999, 6, 12)]
    [InlineData(4.001, 99999, 6, 12)]
    [InlineData(8, 100000, 0, 12)]
    [InlineData(8, 100001, 0, 12)]
    public void Layer_under_a_track(double psi, double pounds, double top, double bottom)
    {
        var layer = CriticalLayer.UnderTrack(Pressure.FromPoundsForcePerSquareInch(psi), Force.FromPoundsForce(pounds));
        Assert.Equal(top * Inch, layer.Top.Meters, 1e-12);
        Assert.Equal(bottom * Inch, layer.Bottom.Meters, 1e-12);
    }

    [Fact]
    public void A_harvester_is_measured_to_46_centimetres_and_more_passes_bring_a_remark()
    {
        var layer = CriticalLayer.UnderWheel(KN(98.1), 50);
        Assert.Equal("0 to 0.3 m, measure to 0.46 m", layer.ToString());
        Assert.Contains("passes", layer.Remark, StringComparison.Ordinal);
        Assert.Equal(50, layer.Passes);
        Assert.Equal(Standing.Secondary, layer.Source.Standing);
        Assert.Contains("passes must be from 1 to 1000; it was 0", Assert.Throws<ArgumentOutOfRangeException>(() => CriticalLayer.UnderWheel(KN(98.1), 0)).Message, StringComparison.Ordinal);
        Assert.Contains("wheelLoad", Assert.Throws<ArgumentOutOfRangeException>(() => CriticalLayer.UnderWheel(Force.Zero)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("ground-machines-scipy", "profile-mean")]
    public void Mean_of_a_layer_matches(CheckRow row) =>
        row.Matches(("CI", Profile(row.SiList("depths"), row.SiList("readings")).Mean(M(row.Si("top")), M(row.Si("bottom"))).Pascals));

    [Fact]
    public void A_weaker_layer_below_counts_and_a_stronger_one_does_not()
    {
        var heavy = CriticalLayer.UnderWheel(KN(98.1));
        // 600 kPa down to 12 in, then soft: the layer from 12 to 18 in governs.
        var soft = Profile([0, 0.30, 0.31, 0.6], [600e3, 600e3, 200e3, 200e3]).Governing(heavy);
        Assert.True(soft.Dropped);
        Assert.True(soft.MeasuredDeepEnough);
        Assert.Equal(0.3048, soft.Top.Meters, 1e-9);
        Assert.InRange(soft.ConeIndex.Kilopascals, 200, 215);
        Assert.Contains("weaker than the critical layer", soft.ToString(), StringComparison.Ordinal);
        // Hardening with depth: the critical layer stays.
        var firm = Profile([0, 0.6], [300e3, 900e3]).Governing(heavy);
        Assert.False(firm.Dropped);
        Assert.Equal(firm.CriticalConeIndex.Pascals, firm.ConeIndex.Pascals);
        Assert.Equal(300 + (600 * 0.1524 / 0.6), firm.ConeIndex.Kilopascals, 1e-6);
        // Level profile: the tie stays with the critical layer.
        Assert.False(Profile([0, 0.6], [300e3, 300e3]).Governing(heavy).Dropped);
    }

    [Theory]
    [InlineData(18 - 1e-6, false)]
    [InlineData(18, true)]
    [InlineData(18 + 1e-6, true)]
    public void A_sounding_that_ends_too_high_is_said(double inches, bool complete)
    {
        var profile = Profile([0, inches * Inch], [400e3, 400e3]);
        var layer = CriticalLayer.UnderWheel(KN(98.1));
        Assert.Equal(complete, profile.Governing(layer).MeasuredDeepEnough);
        var soil = Soil.FromProfile(profile, layer, Frac(0.8));
        Assert.Equal(!complete, soil.Assumptions.Any(a => a.Id == "assume.layer-below"));
        Assert.Equal(400, soil.ConeIndex.Kilopascals, 1e-9);
        Assert.Equal(320, soil.RatingConeIndex.Kilopascals, 1e-9);
        Assert.False(soil.IsEstimated);
    }

    [Fact]
    public void A_reading_at_full_scale_means_at_least()
    {
        Assert.True(Profile([0, 0.6], [2100e3, 2100e3]).Governing(CriticalLayer.UnderWheel(KN(50))).AtFullScale);
        Assert.False(Profile([0, 0.6], [2000e3, 2000e3]).Governing(CriticalLayer.UnderWheel(KN(50))).AtFullScale);
    }

    [Fact]
    public void Refuses_a_sounding_that_is_none()
    {
        Assert.Contains("depths must rise", Assert.Throws<ArgumentException>(() => Profile([0, 0.1, 0.1], [1e5, 1e5, 1e5])).Message, StringComparison.Ordinal);
        Assert.Contains("readings must have 2 elements", Assert.Throws<ArgumentException>(() => Profile([0, 0.1], [1e5])).Message, StringComparison.Ordinal);
        Assert.Contains("depths must be from 2", Assert.Throws<ArgumentOutOfRangeException>(() => Profile([0], [1e5])).Message, StringComparison.Ordinal);
        Assert.Contains("bottom must be from 0 to 0.2 m; it was 0.3048 m", Assert.Throws<ArgumentOutOfRangeException>(() => Profile([0, 0.2], [1e5, 1e5]).Governing(CriticalLayer.UnderWheel(KN(98.1)))).Message, StringComparison.Ordinal);
    }

    private static ConeProfile Profile(double[] depths, double[] readings) => new(depths.Select(z => Length.FromMeters(z)), readings.Select(q => Pressure.FromPascals(q)));
}
