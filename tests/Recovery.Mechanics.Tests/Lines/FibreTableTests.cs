using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

public class FibreTableTests
{
    [Theory]
    [CheckRows("lines", "yarn")]
    public void A_yarn_of_the_table_matches(CheckRow row)
    {
        var yarn = FibreTable.Yarns.Single(y => y.ModulusNewtonsPerTex == row.Printed("modulus") && y.StrengthNewtonsPerTex == row.Printed("strength"));
        row.Matches(("EA_over_MBS", yarn.RelativeStiffness), ("strain", yarn.LinearStrainAtBreak.DecimalFractions), ("c", yarn.WaveSpeed.MetersPerSecond), ("mass_per_MBS", yarn.GramsPerMetrePerKilonewton * 1e-6));
        Assert.Equal(Standing.Primary, yarn.Source.Standing);
    }

    [Theory]
    [CheckRows("lines", "braid")]
    public void A_size_of_braided_nylon_matches(CheckRow row)
    {
        var rope = Braid(row);
        row.Matches(("Fb", rope.BreakingForce.Newtons), ("AE", rope.AxialStiffness.Newtons));
    }

    [Theory]
    [CheckRows("lines", "braid-ratio")]
    public void The_ratio_of_braided_nylon_matches(CheckRow row)
    {
        var rope = FibreTable.BraidedNylon.Single(r => Math.Abs(r.BreakingForce.Newtons - row.Si("Fb")) < 1 && Math.Abs(r.AxialStiffness.Newtons - row.Si("AE")) < 1);
        row.Matches(("ratio", rope.RelativeStiffness));
        row.Matches(("ratio", FibreTable.BraidedNylonRatio));
    }

    [Theory]
    [CheckRows("lines", "braid-si")]
    public void Braided_nylon_in_SI_matches(CheckRow row)
    {
        var rope = Braid(row);
        row.Matches(("Fb_SI", rope.BreakingForce.Newtons), ("AE_SI", rope.AxialStiffness.Newtons), ("ratio", rope.RelativeStiffness));
    }

    [Theory]
    [CheckRows("lines", "braid-strain")]
    public void Strain_of_braided_nylon_matches(CheckRow row)
    {
        var line = Linear(10, 149.46e3, 1 / row.Si("EA_over_MBS"));
        row.Matches(("strain_20", line.Stretch(N(0.2 * 149.46e3)).Meters / 10), ("strain_50", line.Stretch(N(0.5 * 149.46e3)).Meters / 10), ("strain_100", line.Stretch(N(149.46e3)).Meters / 10));
    }

    [Theory]
    [CheckRows("lines", "webbing-secant")]
    public void Secant_stiffness_of_webbing_matches(CheckRow row) => row.MatchesList("EA_over_MBS", row.SiList("strain").Select(strain =>
        LoadElongation.Tabulated(M(9), [strain, 2 * strain], [row.Si("load_fraction") * 300, 300], Test).SecantStiffness(KN(row.Si("load_fraction") * 300)).NewtonsPerMeter * 9 / 300e3).ToList());

    [Theory]
    [CheckRows("lines", "dynamic-law")]
    public void The_dynamic_law_matches(CheckRow row)
    {
        var law = FibreTable.Dynamic.Single(l => l.Constant == row.Si("c") && l.SlopePerPercent == row.Si("slope"));
        Assert.Equal(row.Si("EA_over_MBS_static"), law.QuasiStatic);
        row.MatchesList("EA_over_MBS", row.SiList("Lm").Select(load => law.At(Frac(load))).ToList());
        row.MatchesList("ratio", row.SiList("Lm").Select(load => law.OverQuasiStatic(Frac(load))).ToList());
    }

    [Theory]
    [CheckRows("lines", "dynamic-ratio")]
    public void The_dynamic_laws_side_by_side_match(CheckRow row) =>
        row.MatchesList("ratio", row.SiList("c").Zip(row.SiList("Lm"), (c, load) => FibreTable.Dynamic.Single(l => l.Constant == c).OverQuasiStatic(Frac(load))).ToList());

    [Theory]
    [CheckRows("lines", "braid-mended")]
    public void The_mended_size_takes_its_SI_column(CheckRow row)
    {
        var rope = FibreTable.BraidedNylon.Single(r => r.BreakIsInferred);
        row.Matches(("AE", rope.AxialStiffness.Newtons));
        Assert.Equal((row.Si("AE_SI"), 1.8), (rope.AxialStiffness.Newtons, Math.Round(rope.Diameter.Inches, 9)));
        Assert.Equal(110, rope.BreakingForce.KilopoundsForce, 0.5);
        Assert.Equal(Standing.Derived, rope.Source.Standing);
        Assert.Contains("break inferred", rope.ToString(), StringComparison.Ordinal);
        Assert.All(FibreTable.BraidedNylon.Where(r => !r.BreakIsInferred), r => Assert.Equal(Standing.Primary, r.Source.Standing));
        Assert.Equal(FibreTable.BraidedNylon.OrderBy(r => r.Diameter.Meters).Select(r => r.BreakingForce.Newtons), FibreTable.BraidedNylon.Select(r => r.BreakingForce.Newtons).Order());
    }

    [Theory]
    [CheckRows("lines", "mooring-fit")]
    public void Stiffness_by_the_mooring_fits_matches(CheckRow row)
    {
        MooringLineFit wire = Fit(LineKind.WireRopeSheathed), chain = Fit(LineKind.ChainR4);
        Assert.Equal((row.Si("EA_wire"), row.Si("MBL_wire")), (wire.StiffnessPerDiameterSquared.Pascals, wire.StrengthPerDiameterSquared.Pascals));
        Assert.Equal((row.Si("EA_chain"), row.Si("MBL_chain")), (chain.StiffnessPerDiameterSquared.Pascals, chain.StrengthPerDiameterSquared.Pascals));
        row.Matches(("wire", wire.RelativeStiffness), ("chain", chain.RelativeStiffness));
        row.Matches(("wire", LineMaterial.SheathedWireRope.Stiff), ("chain", LineMaterial.StudlessChainR4.Soft));
        Assert.Equal((Standing.Secondary, Standing.Secondary), (LineMaterial.SheathedWireRope.Source.Standing, chain.Source.Standing));
        Assert.Equal("WireRopeSheathed: EA/MBS 95 (reported)", wire.ToString());
    }

    [Theory]
    [CheckRows("lines", "laid-rope-mass")]
    public void Mass_of_a_laid_rope_matches(CheckRow row)
    {
        var laid = FibreTable.Masses.Single(m => m.Source == LinesSources.LaidPolyester);
        row.Matches(("strength_per_mass", laid.KilonewtonMetresPerKilogram * 1000), ("m_line_60t", laid.HeaviestOf(N(row.Si("MBS"))).KilogramsPerMeter));
    }

    [Fact]
    public void Mass_by_strength_is_a_band_whose_light_end_recoils_faster()
    {
        Assert.All(FibreTable.Masses, m => Assert.True(m.Lightest > 0 && m.Lightest <= m.Heaviest && m.LightestOf(KN(100)) <= m.HeaviestOf(KN(100))));
        Assert.All(FibreTable.Masses, m => Assert.Equal(Standing.Secondary, m.Source.Standing));
        var nylon = FibreTable.Masses.Single(m => m.Name == "nylon rope");
        Assert.Equal(0.267, nylon.LightestOf(KN(100)).KilogramsPerMeter, 1e-12);
        Assert.Equal(0.283, nylon.HeaviestOf(KN(100)).KilogramsPerMeter, 1e-12);
        Assert.Equal("nylon rope: 2.67 to 2.83 g/m per kN (reported)", nylon.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => nylon.LightestOf(KN(0.09)));
    }

    [Fact]
    public void Every_number_has_its_standing_and_every_band_holds_its_reference()
    {
        Assert.All(FibreTable.Stiffness, e => Assert.True(e.Low <= e.High && (e.Reference is not { } r || (r >= e.Low && r <= e.High))));
        Assert.Equal(Standing.FromMemory, FibreTable.Find(LineKind.NylonStrap, LineLoading.FirstLoading)!.Source.Standing);
        Assert.Equal(Standing.Secondary, FibreTable.Find(LineKind.HmpeRope, LineLoading.QuasiStatic)!.Source.Standing);
        Assert.Null(FibreTable.Find(LineKind.NylonStrap, LineLoading.Dynamic));
        Assert.Null(FibreTable.Law(LineKind.ChainGrade80));
        Assert.Equal(59, FibreTable.Law(LineKind.HmpeRope)!.Constant);
        Assert.Throws<ArgumentOutOfRangeException>(() => FibreTable.Law(LineKind.NylonRope)!.At(Frac(0.71)));
    }

    private static BraidedNylonRope Braid(CheckRow row) => FibreTable.BraidedNylon.Single(r => Math.Abs(r.Diameter.Meters - row.Si("diameter")) < 1e-6);

    private static MooringLineFit Fit(LineKind kind) => FibreTable.Fits.Single(f => f.Kind == kind);
}
