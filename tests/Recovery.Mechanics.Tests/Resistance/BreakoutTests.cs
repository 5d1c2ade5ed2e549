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

/// <summary>Vertical breakout and suction: worked numbers, breaks, flags, and what a seal does to a whole machine.</summary>
public class BreakoutTests
{
    private static readonly SpecificWeight Gamma = SpecificWeight.FromKilonewtonsPerCubicMeter(17);
    private static readonly SpecificWeight Weightless = SpecificWeight.FromKilonewtonsPerCubicMeter(0);

    [Theory]
    [CheckRows("resistance", "skempton")]
    public void Skempton_matches(CheckRow row) => row.Matches(("Nc", BreakoutKernel.Skempton(row.Si("B"), row.Si("L"), row.Si("D"))));

    [Theory]
    [CheckRows("resistance", "api-uplift")]
    public void Api_matches(CheckRow row) => row.Matches(("q_u", ReverseBearingModel.Api.BearingFactor(M(row.Si("B")), M(row.Si("L")), M(row.Si("D"))) * row.Si("s_u")));

    [Theory]
    [CheckRows("resistance", "reverse-bearing")]
    public void Reverse_bearing_matches(CheckRow row)
    {
        var r = ReverseBearingModel.Skempton.Evaluate(M(row.Si("B")), M(row.Si("L")), M(row.Si("D")), Pressure.FromPascals(row.Si("s_u")), Gamma);
        row.Matches(("Nc", r.BearingFactor), ("F", r.Uplift.Newtons));
        Assert.Equal(Text.Kilonewtons(r.Uplift.Newtons), ReverseBearingModel.Skempton.Explain(M(row.Si("B")), M(row.Si("L")), M(row.Si("D")), Pressure.FromPascals(row.Si("s_u")), Gamma).Steps[^1].Value);
    }

    [Theory]
    [CheckRows("resistance", "belly-shear")]
    public void Level_shear_of_the_same_belly_matches(CheckRow row)
    {
        double Shear(double alpha) => UnderbodyKernel.Drag(row.Si("L"), row.Si("B"), 0, row.Si("s_u"), 17e3, alpha);
        row.Matches(("alpha_0.5", Shear(0.5)), ("alpha_1", Shear(1)));
    }

    [Theory]
    [CheckRows("resistance", "uplift-share")]
    public void Share_of_reverse_bearing_matches(CheckRow row)
    {
        var full = BreakoutKernel.ReverseBearing(BreakoutKernel.Skempton(row.Si("B"), row.Si("L"), row.Si("D")), row.Si("s_u"), row.Si("B") * row.Si("L"), 0);
        row.Matches(("f_0.3", 0.3 * full), ("f_0.5", SuctionKernel.UpliftSealed * full), ("f_1.0", full));
    }

    [Theory]
    [CheckRows("resistance", "suction-cap")]
    public void Suction_cap_matches(CheckRow row)
    {
        Assert.Equal(BreakoutKernel.SuctionLimitPascals, row.Si("suction_limit"));
        if (row.Has("N_c")) row.Matches(("uncapped", row.Si("N_c") * row.Si("s_u") * row.Si("A")), ("F", BreakoutKernel.ReverseBearing(row.Si("N_c"), row.Si("s_u"), row.Si("A"), row.Si("q"))));
        else row.Matches(("Nc_6", (BreakoutKernel.SuctionLimitPascals + row.Si("q")) / 6), ("Nc_9", (BreakoutKernel.SuctionLimitPascals + row.Si("q")) / 9));
    }

    [Theory]
    [CheckRows("resistance", "lee")]
    public void Lee_matches(CheckRow row)
    {
        if (row.Has("D_over_B")) row.Matches(("R", LeeBreakoutModel.Instance.BreakoutRatio(row.Si("D_over_B"))));
        else row.Matches(("D_over_B", (row.Si("ceiling") - BreakoutKernel.LeeSurface) / BreakoutKernel.LeeSlope));
    }

    [Theory]
    [CheckRows("resistance", "muga")]
    public void Muga_matches(CheckRow row) => row.Matches(("coefficient", MugaBreakoutModel.Instance.Evaluate(KN(10), Duration.FromSeconds(row.Si("t"))).Force.CentralNewtons / 10000));

    [Theory]
    [CheckRows("resistance", "liu")]
    public void Liu_matches(CheckRow row) => row.Matches(("ratio", LiuBreakoutModel.Instance.Evaluate(Duration.FromDays(row.Si("T_over_Tin")), Duration.FromDays(1)).Ratio));

    [Theory]
    [CheckRows("resistance", "liu-times")]
    public void Liu_with_times_matches(CheckRow row)
    {
        double Ratio(string time) => LiuBreakoutModel.Instance.Evaluate(Duration.FromSeconds(row.Si(time)), Duration.FromSeconds(row.Si("T_in"))).Ratio;
        row.Matches(("ratio_a", Ratio("T_a")), ("ratio_b", Ratio("T_b")), ("gain", 1 - (Ratio("T_b") / Ratio("T_a"))));
    }

    [Theory]
    [CheckRows("resistance", "dissipation")]
    public void Dissipation_matches(CheckRow row)
    {
        var t = SuctionDissipationModel.Instance.Evaluate(M(row.Si("H")), row.Printed("c_v")).Time90.Seconds;
        row.Matches(("t90", t), ("t90_days", t));
    }

    [Theory]
    [CheckRows("resistance", "belly-uplift")]
    public void Belly_uplift_matches(CheckRow row)
    {
        Assert.Equal(UnderbodyKernel.BearingFactor, row.Si("N_c"));
        double Of(double f) => SuctionKernel.Uplift(f, row.Si("s_f"), row.Si("A"), 17e3 * 0.15);
        row.Matches(("S_v_0.3", Of(SuctionKernel.UpliftPartVented)), ("S_v_0.5", Of(SuctionKernel.UpliftSealed)), ("S_v_1.0", Of(1)));
    }

    [Theory]
    [CheckRows("resistance", "uplift-limit")]
    public void Uplift_is_limited_by_what_the_wheels_bear(CheckRow row)
    {
        var f = DemandRows.ThreeAxles(row);
        DemandKernel.Compose(f, new DemandState { Wall = row.Si("s_f"), Floor = row.Si("s_f"), Index = 245e3, Rho = 0.15, Sealed = true, Uplift = row.Si("f"), Exit = Math.Atan(row.Si("slope")) }, out var t);
        double Bears(int i) => DemandKernel.Bearing(f, i, row.Si("s_f"));
        double Spare(int i) => Math.Max(0, Bears(i) - f.Load[i]);
        foreach (var (name, si) in new (string, double)[] { ("capacity1", Bears(0)), ("capacity2", Bears(1)), ("capacity3", Bears(2)), ("spare1", Spare(0)), ("spare2", Spare(1)), ("spare3", Spare(2)), ("S_v", t.UpliftHeld), ("S_d", t.UpliftDeveloped), ("lift", t.Lift) })
            row.MatchesOne(name, si);
        row.MatchesWord("limited_by", "axle" + (t.LimitingAxle + 1));
        row.MatchesWord("belly_drags", t.UpliftDeveloped == 0 ? "true" : "false");
    }

    [Fact]
    public void Depth_factor_stops_growing_without_a_jump()
    {
        double At(double d) => BreakoutKernel.Skempton(1, 1, d);
        Assert.Equal(9, At(2.5), 1e-12);
        Assert.Equal(9, At(2.5 + 1e-6), 1e-12);
        Assert.Equal(9, At(2.5 - 1e-6), 1e-5);
        Assert.True(At(2.5 - 1e-6) < 9);
        // Deep and square it is the ceiling of a deep plate.
        Assert.Equal(PlateBreakoutModel.Instance.Evaluate(M(1), M(1), M(3), KPa(5)).Force.CentralNewtons, ReverseBearingModel.Skempton.Evaluate(M(1), M(1), M(3), KPa(5), Weightless).Uplift.Newtons, 1e-6);
        Assert.Empty(PlateBreakoutModel.Instance.Evaluate(M(1), M(1), M(3), KPa(5)).Flags);
        Assert.Equal(["D/B"], PlateBreakoutModel.Instance.Evaluate(M(1), M(1), M(2), KPa(5)).Flags.Select(f => f.Limit.Symbol));
    }

    [Theory]
    [InlineData(-1e-6)]
    [InlineData(0)]
    [InlineData(1e-6)]
    public void Ratio_of_immediate_breakout_meets_its_ceiling(double e)
    {
        var x = (BreakoutKernel.LeeCeiling - BreakoutKernel.LeeSurface) / BreakoutKernel.LeeSlope;
        Assert.Equal(e < 0 ? BreakoutKernel.LeeCeiling + (BreakoutKernel.LeeSlope * e) : BreakoutKernel.LeeCeiling, BreakoutKernel.Lee(x + e), 1e-12);
    }

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Cap_on_suction_begins_where_the_pressures_meet(double pascals, bool flagged)
    {
        // Square at the surface, N_c 6: 100 kPa at 16.667 kPa.
        var s = Pressure.FromPascals((100000.0 / 6) + pascals);
        var r = ReverseBearingModel.Skempton.Evaluate(M(1), M(1), M(0), s, Weightless);
        Assert.Equal(Math.Min(6 * s.Pascals, 100000), r.Uplift.Newtons, 1e-6);
        Assert.Equal(6 * s.Pascals, r.Uncapped.Newtons, 1e-6);
        Assert.Equal(flagged, r.Flags.Count > 0);
    }

    [Fact]
    public void Models_say_how_good_they_are()
    {
        var lee = LeeBreakoutModel.Instance.Evaluate(M(1.2), M(3), M(0.1), KPa(5));
        // N_c 5.49, R 0.21 + 0.86/12: 27.8 kN, half to one and a half times.
        Assert.Equal(27.83, lee.Force.CentralNewtons / 1000, 0.005);
        Assert.Equal(0.5, lee.Force.LowNewtons / lee.Force.CentralNewtons, 1e-12);
        Assert.Equal(1.5, lee.Force.HighNewtons / lee.Force.CentralNewtons, 1e-12);
        Assert.Empty(lee.Flags);
        Assert.Equal(["D/B"], LeeBreakoutModel.Instance.Evaluate(M(1), M(1), M(1.1), KPa(5)).Flags.Select(f => f.Limit.Symbol));
        Assert.Equal(Standing.FromMemory, LeeBreakoutModel.Instance.Source.Standing);
        Assert.Equal("27.83 kN", LeeBreakoutModel.Instance.Explain(M(1.2), M(3), M(0.1), KPa(5)).Steps[^1].Value);
        Assert.Empty(MugaBreakoutModel.Instance.Evaluate(KN(98), Duration.FromMinutes(600)).Flags);
        Assert.Equal(["t", "A q"], MugaBreakoutModel.Instance.Evaluate(KN(99), Duration.FromMinutes(601)).Flags.Select(f => f.Limit.Symbol));
        Assert.Equal("77.15 kN", MugaBreakoutModel.Instance.Explain(KN(100), Duration.FromMinutes(10)).Steps[^1].Value);
        Assert.Empty(LiuBreakoutModel.Instance.Evaluate(Duration.FromDays(10), Duration.FromDays(1)).Flags);
        Assert.Equal(["T/T_in"], LiuBreakoutModel.Instance.Evaluate(Duration.FromSeconds(80), Duration.FromDays(1)).Flags.Select(f => f.Limit.Symbol));
        Assert.Equal(["T/T_in"], LiuBreakoutModel.Instance.Evaluate(Duration.FromDays(10.1), Duration.FromDays(1)).Flags.Select(f => f.Limit.Symbol));
        Assert.Equal("2.124", LiuBreakoutModel.Instance.Explain(Duration.FromMinutes(10), Duration.FromDays(1)).Steps[^1].Value);
        Assert.Equal("9.292 d", SuctionDissipationModel.Instance.Explain(M(0.3), 3).Steps[^1].Value);
        Assert.Empty(SuctionDissipationModel.Instance.Evaluate(M(0.3), SuctionDissipationModel.NormallyConsolidatedSquareMetresPerYear).Flags);
        Assert.Equal(["c_v"], SuctionDissipationModel.Instance.Evaluate(M(0.3), 0.2).Flags.Select(f => f.Limit.Symbol));
        Assert.Equal(["D/B"], ReverseBearingModel.Api.Evaluate(M(1), M(1), M(2.6), KPa(5), Gamma).Flags.Select(f => f.Limit.Symbol));
    }

    [Fact]
    public void Seal_has_three_states_behind_a_wheel_and_under_a_belly()
    {
        var model = SuctionAllowanceModel.Instance;
        ForceBand Wheel(Seal seal) => model.BehindWheel(M(0.6), M(0.5), KPa(10), seal).Force;
        Assert.Equal(ForceBand.FromNewtons(0, 6000, 6000), Wheel(Seal.Sealed));
        Assert.Equal(ForceBand.FromNewtons(0, 3000, 6000), Wheel(Seal.PartVented));
        Assert.Equal(ForceBand.FromNewtons(0, 0, 0), Wheel(Seal.Vented));
        Assert.Equal(Wheel(Seal.Sealed), Wheel(Seal.Undeclared));
        var belly = new Belly(M(3), M(1.6), M(0.15));
        ForceBand Under(Seal seal, double kilopascals = 10.4835) => model.UnderBelly(belly, KPa(kilopascals), Gamma, seal).Force;
        Assert.Equal(129.324, Under(Seal.Sealed).CentralNewtons / 1000, 0.001);
        Assert.Equal(77.5947, Under(Seal.PartVented).CentralNewtons / 1000, 0.001);
        Assert.Equal(258.649, Under(Seal.PartVented).HighNewtons / 1000, 0.001);
        Assert.Equal(0, Under(Seal.Vented).HighNewtons);
        // The cap: (100 + 17 x 0.15) x 4.8.
        Assert.Equal(492.24, Under(Seal.Sealed, 25).HighNewtons / 1000, 0.001);
        Assert.Empty(model.UnderBelly(belly, KPa(60), Gamma, Seal.Sealed).Flags);
        Assert.Equal(["s_u"], model.UnderBelly(belly, KPa(61), Gamma, Seal.Sealed).Flags.Select(f => f.Limit.Symbol));
        Assert.Equal("part-vented: 0 / 3 / 6 kN", model.BehindWheel(M(0.6), M(0.5), KPa(10), Seal.PartVented).ToString());
    }

    [Fact]
    public void Seal_goes_through_the_whole_machine()
    {
        PullDemand Of(Seal seal) => PullDemand.Estimate(StuckHarvester().WithSeal(seal));
        PullDemand closed = Of(Seal.Sealed), part = Of(Seal.PartVented), open = Of(Seal.Vented);
        Assert.Equal(closed.Bounds.Central.Suction / 2, part.Bounds.Central.Suction, 1e-6);
        Assert.Equal(0, open.Bounds.Central.Suction);
        Assert.Equal(closed.HighNewtons, part.HighNewtons);
        Assert.True(open.HighNewtons < part.HighNewtons);
        Assert.Equal(closed.Bounds.Low, open.Bounds.Low);
        Assert.Equal(0.6, part.UpliftHeld.CentralNewtons / closed.UpliftHeld.CentralNewtons, 1e-9);
        Assert.Contains(part.Explain().Steps, s => s.Symbol == "R_suct" && s.Expression.Contains("half", StringComparison.Ordinal));
        Assert.DoesNotContain(part.Assumptions, a => a.Id == "assume.sealed");
    }

    [Property]
    public bool Uplift_rises_with_strength_and_never_passes_what_suction_carries(ushort strength, byte depth)
    {
        double s = 100 + strength, d = depth / 100.0, q = 17e3 * d, n = BreakoutKernel.Skempton(1.2, 3, d);
        var f = BreakoutKernel.ReverseBearing(n, s, 3.6, q);
        return f <= 3.6 * (100e3 + q) && f <= BreakoutKernel.ReverseBearing(n, s * 1.1, 3.6, q) && n is >= 5 and <= 9;
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("length must be from 2 to 1000 m; it was 1 m", Assert.Throws<ArgumentOutOfRangeException>(() => ReverseBearingModel.Skempton.BearingFactor(M(2), M(1), M(0))).Message, StringComparison.Ordinal);
        Assert.Contains("seal is not one of the defined values", Assert.Throws<ArgumentOutOfRangeException>(() => SuctionAllowanceModel.Instance.BehindWheel(M(0.6), M(0.5), KPa(10), (Seal)9)).Message, StringComparison.Ordinal);
        Assert.Contains("time must be from 0 to 2592000 s", Assert.Throws<ArgumentOutOfRangeException>(() => MugaBreakoutModel.Instance.Evaluate(KN(1), Duration.FromDays(31))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => SuctionAllowanceModel.Instance.UnderBelly(null!, KPa(5), Gamma, Seal.Sealed));
    }
}
