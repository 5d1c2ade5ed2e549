using System;
using System.Linq;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Every method for the soil ahead of a buried wheel: worked numbers, breaks, flags, and what the choice does to a whole machine.</summary>
public class FaceMethodTests
{
    private static readonly SpecificWeight Gamma = SpecificWeight.FromKilonewtonsPerCubicMeter(17);

    [Theory]
    [CheckRows("resistance", "face-rankine-friction")]
    public void Rankine_with_friction_matches(CheckRow row) => row.Matches(("P", Of(FaceMethod.RankineFrictional(Angle.FromRadians(row.Si("phi"))), row, "c", width: 1)));

    [Theory]
    [CheckRows("resistance", "face-sliding")]
    public void Sliding_matches(CheckRow row)
    {
        var method = row.Printed("K_ru") == 2 ? FaceMethod.ApiSliding : FaceMethod.ApiSlidingFullContact;
        row.Matches(("P", row.Has("A")
            ? BuriedWheelKernel.Base(row.Si("A"), 1, row.Si("s_u0")) + FaceKernel.Resistance(method.Law, row.Si("A_h"), 2, 1, row.Si("s_u_avg"), 17e3)
            : Of(method, row, "s_u")));
    }

    [Theory]
    [CheckRows("resistance", "face-soft-clay")]
    public void Soft_clay_matches(CheckRow row)
    {
        var method = row.Si("J") == 0.5 ? FaceMethod.MatlockUpper : FaceMethod.MatlockLower;
        row.MatchesOne("P", Of(method, row, "s_u"));
        if (row.ExpectedNames.Contains("J_term")) row.MatchesOne("J_term", Of(method, row, "s_u") - FaceKernel.Resistance(new FaceLaw(FaceKind.SoftClay, 0, 0), row.Si("b"), 2, row.Si("z"), row.Si("s_u"), row.Si("gamma")));
    }

    [Theory]
    [CheckRows("resistance", "face-soft-clay-depth")]
    public void Soft_clay_depth_matches(CheckRow row) => row.Matches(("x_r_0.5", FaceKernel.SoftClayDepth(row.Si("b"), row.Si("s_u"), row.Si("gamma"), 0.5)), ("x_r_0.25", FaceKernel.SoftClayDepth(row.Si("b"), row.Si("s_u"), row.Si("gamma"), 0.25)));

    [Theory]
    [CheckRows("resistance", "face-verley-lund")]
    public void Verley_Lund_matches(CheckRow row) => row.Matches(("P", Of(FaceMethod.VerleyLund, row, "s_u")));

    [Theory]
    [CheckRows("resistance", "face-reece")]
    public void Reece_matches(CheckRow row) => row.Matches(("P", Of(FaceMethod.Reece(Frac(row.Si("ca_over_c"))), row, "s_u")));

    [Theory]
    [CheckRows("resistance", "face-rough")]
    public void Rough_factor_matches(CheckRow row) => row.Matches(("K_pc", FaceKernel.RoughFactor(row.Si("ca_over_c"))));

    [Theory]
    [CheckRows("resistance", "face-bulldozing")]
    public void Bulldozing_matches(CheckRow row) => row.Matches(("R_b", Of(FaceMethod.Bulldozing(row.Si("K_pc"), row.Si("K_pg")), row, "c")));

    [Fact]
    public void Methods_differ_by_a_factor_of_about_two()
    {
        // b 0.6, z 0.5, d 2.0, 10 kPa, 17 kN/m3.
        var comparison = FaceComparison.OneWheel(M(0.6), M(2), M(0.5), KPa(10), Gamma);
        Assert.Equal([7.275, 6.0, 12.0, 10.9, 10.59, 12.9, 10.29, 5.83, 8.62], comparison.Results.Select(r => Math.Round(r.Force.Kilonewtons, r.Method == FaceMethod.Rankine ? 3 : r.Method == FaceMethod.VerleyLund || r.Method == FaceMethod.MatlockUpper ? 1 : 2)));
        Assert.Equal(FaceMethod.DnvLateralLaboratory, comparison.Lowest.Method);
        Assert.Equal(FaceMethod.VerleyLund, comparison.Highest.Method);
        Assert.InRange(comparison.Spread, 2.0, 2.3);
        Assert.StartsWith("lowest DNV-RP-F114 lateral, laboratory variant: 5.83 kN, highest Verley and Lund pipe: 12.9 kN", comparison.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Layers_agree_and_the_working_ends_in_the_result()
    {
        double[] z = [0.2, 0.5, 1.0, 1.6], s = [3, 10, 25, 60], batch = new double[4];
        foreach (var method in FaceMethod.Undrained.Append(FaceMethod.RankineFrictional(Angle.FromDegrees(20))).Append(FaceMethod.Bulldozing(10.6, 13.3)))
        {
            method.Evaluate(0.6, 2, z, s, 17, batch);
            for (var i = 0; i < z.Length; i++)
            {
                Assert.Equal(method.Evaluate(M(0.6), M(2), M(z[i]), KPa(s[i]), Gamma).Force.Kilonewtons, batch[i], 1e-9);
                var working = method.Explain(M(0.6), M(2), M(z[i]), KPa(s[i]), Gamma);
                Assert.Equal(Text.Kilonewtons(batch[i] * 1000), working.Steps[^1].Value);
                Assert.Equal(method.Source, working.Steps[^1].Source);
            }
        }
    }

    [Fact]
    public void Special_cases_fall_together()
    {
        foreach (var z in new[] { 0.1, 0.5, 1.1 })
        {
            var rankine = FaceMethod.Rankine.Evaluate(M(0.6), M(2), M(z), KPa(10), Gamma).Force.Newtons;
            Assert.Equal(rankine, FaceMethod.RankineFrictional(Angle.Zero).Evaluate(M(0.6), M(2), M(z), KPa(10), Gamma).Force.Newtons, 1e-6);
            Assert.Equal(rankine, FaceMethod.Reece(Frac(0)).Evaluate(M(0.6), M(2), M(z), KPa(10), Gamma).Force.Newtons, 1e-6);
            Assert.Equal(BuriedWheelKernel.Suction(0.6, z, 1e4), FaceMethod.ApiSlidingFullContact.Evaluate(M(0.6), M(2), M(z), KPa(10), Gamma).Force.Newtons - FaceMethod.ApiSliding.Evaluate(M(0.6), M(2), M(z), KPa(10), Gamma).Force.Newtons, 1e-6);
            Assert.Equal(FaceMethod.DnvLateral.Evaluate(M(0.6), M(2), M(z), KPa(10), Gamma).Force.Newtons, LateralBreakoutModel.Standard.Evaluate(M(0.6), M(2), M(z), KN(0), KPa(10), Gamma).Breakout.Newtons, 1e-6);
        }

        // Local shear, phi' 0 in the limit: (N'_c - tan phi') cos^2 phi' -> N'_c.
        var law = FaceMethod.BulldozingLocalShear(Angle.FromDegrees(20), 12, 5).Law;
        double c2 = Math.Pow(Math.Cos(Math.PI / 9), 2), t = Math.Tan(Math.PI / 9);
        Assert.Equal((12 - t) * c2, law.First, 1e-12);
        Assert.Equal(((10 / t) + 1) * c2, law.Second, 1e-12);
        Assert.Equal(Standing.FromMemory, FaceMethod.BulldozingLocalShear(Angle.FromDegrees(20), 12, 5).Source.Standing);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.25)]
    public void Soft_clay_keeps_value_and_slope_at_its_critical_depth(double j)
    {
        double b = 0.3, s = 1500, gamma = 17e3, x = FaceKernel.SoftClayDepth(b, s, gamma, j), e = 1e-6;
        Assert.InRange(x, 0.3, 0.6);
        var law = new FaceLaw(FaceKind.SoftClay, j, 0);
        double At(double z) => FaceKernel.Resistance(law, b, 2, z, s, gamma);
        Assert.Equal(At(x), At(x - e), 9 * s * b * e * 1.01);
        Assert.Equal(At(x), At(x + e), 9 * s * b * e * 1.01);
        Assert.Equal(9 * s * b, (At(x) - At(x - e)) / e, 0.1);
        Assert.Equal(9 * s * b, (At(x + e) - At(x)) / e, 0.1);
        Assert.Equal(9 * s * b, At(x + 1) - At(x), 1e-6);
    }

    [Theory]
    [InlineData(0.19, 10, "z/d")]
    [InlineData(0.2, 10, "")]
    [InlineData(1.0, 60, "")]
    [InlineData(1.01, 10, "z/d")]
    [InlineData(0.5, 61, "s_u")]
    [InlineData(0.5, 0.9, "s_u")]
    public void Flags_are_raised_and_not_raised(double z, double s, string symbol) =>
        Assert.Equal(symbol, string.Concat(FaceMethod.VerleyLund.Evaluate(M(0.6), M(2), M(z), KPa(s), Gamma).Flags.Select(f => f.Limit.Symbol)));

    [Fact]
    public void The_choice_goes_through_the_whole_machine()
    {
        var stuck = StuckHarvester();
        var rankine = PullDemand.Estimate(stuck);
        Assert.Equal(FaceMethod.Rankine, rankine.FaceMethod);
        Assert.Equal(ResistanceSources.Rankine, rankine.Terms.Single(t => t.Key == "face").Source);
        var rows = rankine.ByFaceMethod();
        Assert.Equal(FaceMethod.Undrained.Count - 1, rows.Count);
        Assert.Equal(rankine.CentralNewtons, rows.Single(r => r.Method == FaceMethod.Rankine).CentralTotal.Newtons);
        foreach (var row in rows)
        {
            var demand = PullDemand.Estimate(stuck.WithFaceMethod(row.Method));
            // Two rear wheels of 1.00 x 1.95 m meet uncut soil at central; nothing else changes with the method.
            Assert.Equal(2 * row.Method.Evaluate(M(1), M(1.95), M(0.5), KPa(19.6), Gamma).Force.Newtons, row.CentralFace.Newtons, 1e-3);
            Assert.Equal(rankine.CentralNewtons - rankine.Bounds.Central.Face + row.CentralFace.Newtons, demand.CentralNewtons, 1e-6);
            Assert.Equal(row.Method.Source, demand.Terms.Single(t => t.Key == "face").Source);
            Assert.Contains(demand.Explain().Steps, s => s.Symbol == "R_face" && s.Expression == "min(" + FaceText.Expression(row.Method.Law) + ", rigid step)");
            Assert.EndsWith(row.ToString()[^3..], " kN", StringComparison.Ordinal);
        }

        Assert.InRange(rows.Max(r => r.CentralFace.Newtons) / rows.Min(r => r.CentralFace.Newtons), 1.8, 2.4);
        Assert.Contains("K_ru 4 holds the suction", Assert.Throws<ArgumentException>(() => stuck.WithFaceMethod(FaceMethod.ApiSlidingFullContact)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_face_is_never_more_than_the_step_of_its_wheel()
    {
        // A light wheel on a strong wall climbs, whatever the method.
        var flat = CompiledStuckMachine.From(StuckHarvester(), Recovery.Mechanics.Machines.Suspension.Equalised).Flat;
        foreach (var method in FaceMethod.Undrained)
        {
            Assert.True(FaceKernel.Resistance(method.Law, 0.6, 2, 0.2, 1e5, 17e3) > 5000 * BuriedWheelKernel.RigidStepRatio(2, 0.2), method.Name);
        }

        var stuck = StuckHarvester() with { MeetsUncutSoil = [true, true, true], Soil = Recovery.Mechanics.Ground.Soil.FromConeIndex(KPa(12000), Frac(1)) };
        var face = PullDemand.Estimate(stuck).Bounds.Central;
        double step = 0;
        for (var i = 0; i < 3; i++) step += flat.Load[i] * (1 - (face.BellyLoad / flat.Weight)) * flat.Step[i];
        Assert.Equal(step, face.Face, step * 1e-9);
    }

    [Property]
    public bool A_stronger_or_deeper_face_is_never_easier(byte width, byte depth, ushort strength, byte more)
    {
        double b = 0.2 + (width / 255.0), z = 0.05 + (depth / 300.0), s = 500 + strength, factor = 1 + (more / 255.0);
        return FaceMethod.Undrained.All(m => FaceKernel.Resistance(m.Law, b, 2, z, s * factor, 17e3) >= FaceKernel.Resistance(m.Law, b, 2, z, s, 17e3)
            && FaceKernel.Resistance(m.Law, b, 2, z * factor, s, 17e3) >= FaceKernel.Resistance(m.Law, b, 2, z, s, 17e3));
    }

    [Fact]
    public void Equality_is_by_law_and_number()
    {
        Assert.Equal(FaceMethod.Reece(Frac(0.5)), FaceMethod.ReeceHalfRough);
        Assert.NotEqual(FaceMethod.Reece(Frac(0.4)), FaceMethod.ReeceHalfRough);
        Assert.Equal(FaceMethod.Reece(Frac(0.5)).GetHashCode(), FaceMethod.ReeceHalfRough.GetHashCode());
        Assert.False(FaceMethod.Rankine.Equals((object?)null));
        Assert.Equal("Matlock p-y, J 0.5", FaceMethod.MatlockUpper.ToString());
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("frictionAngle must be from 0 to 50 deg; it was 51 deg", Assert.Throws<ArgumentOutOfRangeException>(() => FaceMethod.RankineFrictional(Angle.FromDegrees(51))).Message, StringComparison.Ordinal);
        Assert.Contains("adhesionShare must be from 0 to 1", Assert.Throws<ArgumentOutOfRangeException>(() => FaceMethod.Reece(Frac(1.1))).Message, StringComparison.Ordinal);
        Assert.Contains("cohesionFactor must be from 0 to 200; it was not a number", Assert.Throws<ArgumentOutOfRangeException>(() => FaceMethod.Bulldozing(double.NaN, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("sinkage must be from 0.01 to 3 m", Assert.Throws<ArgumentOutOfRangeException>(() => FaceComparison.OneWheel(M(0.6), M(2), M(0), KPa(10), Gamma)).Message, StringComparison.Ordinal);
        Assert.Contains("strengthKilopascals[1] must be from 0.1 to 500 kPa", Assert.Throws<ArgumentOutOfRangeException>(() => FaceMethod.Rankine.Evaluate(0.6, 2, [0.5, 0.5], [10, 0], 17, new double[2])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => FaceMethod.Rankine.Evaluate(0.6, 2, [0.5], [10, 10], 17, new double[1]));
    }

    private static double Of(FaceMethod method, CheckRow row, string strength, double width = 0) =>
        FaceKernel.Resistance(method.Law, width > 0 ? width : row.Si("b"), row.Si("D", 2), row.Si("z"), row.Si(strength), row.Si("gamma", 17e3));
}
