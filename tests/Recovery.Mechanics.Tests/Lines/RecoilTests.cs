using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

public class RecoilTests
{
    private static readonly LineSegment Nylon = new("strap", Linear(9, 588399, 0.25), PerMetre(2));

    [Theory]
    [CheckRows("lines", "recoil-line")]
    public void A_released_line_matches(CheckRow row) => row.Matches(("v", Recoil.OfLine(Segment(row), N(row.Si("F0"))).Speed.MetersPerSecond));

    [Theory]
    [CheckRows("lines", "recoil-all-energy")]
    public void All_energy_becomes_motion(CheckRow row) => row.Matches(("KE_over_E", Recoil.OfLine(Segment(row), N(row.Si("F0"))).ShareOfStored.DecimalFractions));

    [Theory]
    [CheckRows("lines", "transit")]
    public void Transit_matches(CheckRow row) => row.Matches(("t", row.Si("L") / Segment(row).WaveSpeed!.Value.MetersPerSecond));

    [Theory]
    [CheckRows("lines", "recoil-fits")]
    public void Lines_of_published_fits_match(CheckRow row)
    {
        var mbs = row.Si("MBS");
        row.MatchesList("v", row.SiList("EA_over_MBS").Zip(row.SiList("mass_per_MBS"), (ratio, mass) => Recoil.OfLine(new LineSegment("rope", Linear(9, mbs, 1 / ratio), PerMetre(mass * mbs)), N(row.Si("F0"))).Speed.MetersPerSecond).ToList());
    }

    [Theory]
    [CheckRows("lines", "stiffening")]
    public void A_stiffening_line_matches(CheckRow row)
    {
        var segment = new LineSegment("strap", LoadElongation.PowerLaw(M(9), N(row.Si("Fb")), Frac(row.Si("eb")), row.Si("n"), Test), PerMetre(row.Si("m_line")));
        var f = N(row.Si("F0"));
        row.Matches(("v_tip", Recoil.OfLine(segment, f).Speed.MetersPerSecond), ("v_mean", Recoil.MeanOfLine(segment, f).Speed.MetersPerSecond));
    }

    [Theory]
    [CheckRows("lines", "specific-speed")]
    public void Speed_from_specific_strength_matches(CheckRow row) => row.Matches(
        ("v_a", RecoilKernel.StiffeningTip(row.Si("specific_strength"), row.Si("eps_a"), 1, 1)), ("v_b", RecoilKernel.StiffeningTip(row.Si("specific_strength"), row.Si("eps_b"), 1, 1)));

    [Theory]
    [CheckRows("lines", "fitting-factor")]
    public void The_fitting_factor_matches(CheckRow row)
    {
        double a = row.Si("a"), f = RecoilKernel.FittingRatio(a);
        row.Matches(("f", f), ("KE_M_over_E", f * f / a));
    }

    [Theory]
    [CheckRows("lines", "third-mass")]
    public void The_third_mass_rule_matches(CheckRow row)
    {
        var rule = RecoilKernel.ThirdMassRatio(row.Si("a"));
        row.MatchesOne("v_rule", rule);
        if (row.ExpectedNames.Contains("ratio_to_f")) row.MatchesOne("ratio_to_f", rule / RecoilKernel.FittingRatio(row.Si("a")));
    }

    [Theory]
    [CheckRows("lines", "first-pass")]
    public void The_first_pass_matches(CheckRow row) => row.Matches(("f_first_pass", RecoilKernel.FirstPass(1, 1, 1, 2 * row.Si("a"))));

    [Theory]
    [CheckRows("lines", "fitting")]
    public void A_fitting_matches(CheckRow row)
    {
        var segment = Segment(row);
        var a = segment.MassKilograms / row.Si("M");
        var result = Recoil.OfFitting(segment, N(row.Si("F0")), Kg(row.Si("M")));
        row.Matches(("a", a), ("f", RecoilKernel.FittingRatio(a)), ("v", result.Speed.MetersPerSecond), ("KE_M", result.KineticEnergy.Joules), ("KE_M_over_E", result.ShareOfStored.DecimalFractions));
    }

    [Theory]
    [CheckRows("lines", "first-pass-time")]
    public void A_fitting_before_the_wave_is_back_matches(CheckRow row) => row.Matches(("v", Recoil.FittingSpeedAfter(Segment(row), N(row.Si("F0")), Kg(row.Si("M")), Duration.FromSeconds(row.Si("t"))).MetersPerSecond));

    [Theory]
    [CheckRows("lines", "fitting-travel")]
    public void Travel_to_nine_tenths_matches(CheckRow row) => row.Matches(("distance", Recoil.FittingTravel(Segment(row), N(row.Si("F0")), Kg(row.Si("M")), Frac(0.9))!.Value.Meters));

    [Fact]
    public void The_first_pass_of_a_fitting_ends_when_the_wave_is_back()
    {
        // N25, 9 m: c 1084.803 m/s, back after 18/1084.803 = 16.593 ms. At 12 kg a = 1.5 and 0.9502 of F0/Z by then; at 100 kg 0.3023.
        Assert.Equal(0.950212931632 * 150e3 / 2169.60641592, Recoil.FittingSpeedAfter(Nylon, KN(150), Kg(12), Duration.FromSeconds(18 / 1084.80320796)).MetersPerSecond, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => Recoil.FittingSpeedAfter(Nylon, KN(150), Kg(12), Duration.FromSeconds(0.0166)));
        Assert.NotNull(Recoil.FittingTravel(Nylon, KN(150), Kg(12), Frac(0.95)));
        Assert.Null(Recoil.FittingTravel(Nylon, KN(150), Kg(12), Frac(0.951)));
        Assert.Null(Recoil.FittingTravel(Nylon, KN(150), Kg(100), Frac(0.9)));
        var stiffening = new LineSegment("strap", LoadElongation.PowerLaw(M(9), N(588399), Frac(0.25), 1.5, Test), PerMetre(2));
        Assert.Throws<ArgumentException>(() => Recoil.FittingTravel(stiffening, KN(150), Kg(12), Frac(0.9)));
        Assert.Null(stiffening.WaveSpeed);
    }

    [Theory]
    [CheckRows("lines", "threshold-tension")]
    public void Tension_at_which_the_released_line_moves_a_fitting_with_an_energy_matches(CheckRow row)
    {
        // Speed is proportional to tension. The fitting moves with the line: f(a) taken as 1.
        var f = 100e3 * BallisticsKernel.SpeedOfEnergy(row.Si("KE"), row.Si("M")) / Recoil.OfLine(Segment(row), KN(100)).Speed.MetersPerSecond;
        row.Matches(("F0", f), ("fraction_of_MBS", f / row.Si("MBS")));
    }

    [Theory]
    [CheckRows("lines", "chain-bound")]
    public void The_bound_at_the_end_of_a_chain_matches(CheckRow row)
    {
        var mbs = row.Si("MBS");
        LineSegment tied = new("bridle", Linear(row.Si("L_1"), mbs, 1 / row.Si("EA_over_MBS_1")), PerMetre(row.Si("m_line_1"))), tail = new("strap", Linear(row.Si("L_2"), mbs, 1 / row.Si("EA_over_MBS_2")), PerMetre(row.Si("m_line_2")));
        var line = new LineAssembly([tied, tail], Length.Zero);
        var f = N(row.Si("F0"));
        var bound = Recoil.Bound(line, f, Kg(row.Si("M")), HardwarePlace.ChainEnd);
        double least = Math.Min(ElasticKernel.Impedance(mbs * row.Si("EA_over_MBS_1"), row.Si("m_line_1")), ElasticKernel.Impedance(mbs * row.Si("EA_over_MBS_2"), row.Si("m_line_2")));
        row.MatchesOne("E", bound.StoredEnergy.Joules);
        row.MatchesOne("v_bound", bound.Speed.MetersPerSecond);
        row.MatchesOne("v_wave", RecoilKernel.Line(f.Newtons, least));
        row.MatchesOne("v_third", RecoilKernel.ChainEnd(f.Newtons, 1e-9, bound.StoredEnergy.Joules, row.Si("M"), tied.MassKilograms));
        if (row.ExpectedNames.Contains("Z_min")) row.MatchesOne("Z_min", least);
        Assert.Equal(Provenance.Text.With(bound.Speed.MetersPerSecond, "m/s"), Recoil.Explain(line, f, Kg(row.Si("M")), HardwarePlace.ChainEnd).Steps[^1].Value);
    }

    [Theory]
    [CheckRows("lines", "running-bridle")]
    public void The_bound_on_the_loose_end_of_a_running_bridle_matches(CheckRow row)
    {
        var mbs = row.Si("MBS");
        var bridle = LineSegment.RunningBridle("bridle", Linear(row.Si("L_b"), mbs, 1 / row.Si("EA_over_MBS_b")), M(row.Has("w") ? row.Si("w") : row.Si("L_b") * Math.Sin(row.Si("theta") / 2)), PerMetre(2.2));
        var line = new LineAssembly([bridle, new LineSegment("strap", Linear(row.Si("L"), mbs, 1 / row.Si("EA_over_MBS")), PerMetre(1.571))], Length.Zero);
        var bound = Recoil.Bound(line, N(row.Si("F0")), Kg(row.Si("M")), HardwarePlace.RunningBridleEnd);
        row.MatchesOne("E", bound.StoredEnergy.Joules);
        row.MatchesOne("v_bound", bound.Speed.MetersPerSecond);
        if (row.ExpectedNames.Contains("KE_bound")) row.MatchesOne("KE_bound", bound.KineticEnergy.Joules);
        Assert.True(bound.Speed > Recoil.Bound(line, N(row.Si("F0")), Kg(row.Si("M")), HardwarePlace.ChainEnd).Speed);
    }

    [Theory]
    [CheckRows("lines", "printed-speed")]
    public void Speeds_are_printed_to_one_figure_rounded_up(CheckRow row) => row.MatchesList("printed", row.SiList("v").Select(RecoilResult.RoundedUp).ToList());

    [Theory]
    [CheckRows("lines", "tip-speed")]
    public void Wave_and_tip_of_a_kinetic_rope_match(CheckRow row) =>
        row.Matches(("c", ElasticKernel.WaveSpeed(row.Si("EA"), row.Si("m_line"))), ("v", RecoilKernel.Line(row.Si("T"), ElasticKernel.Impedance(row.Si("EA"), row.Si("m_line")))));

    [Theory]
    [CheckRows("lines", "tip-against-report")]
    public void The_tip_comes_near_what_was_reported(CheckRow row) => row.Matches(("v", RecoilKernel.Line(row.Si("T"), ElasticKernel.Impedance(row.Si("EA"), row.Si("m_line")))));

    [Theory]
    [CheckRows("lines", "published-speed")]
    public void Published_speeds_in_SI_match(CheckRow row) => row.MatchesList("v", row.Word("key").Split('|').Select(key => PublishedRecoilSpeeds.All.Single(s => s.Key == key).High.MetersPerSecond).ToList());

    [Fact]
    public void Published_speeds_stand_with_their_authors_slowest_first()
    {
        Assert.All(PublishedRecoilSpeeds.All, s => Assert.Contains(s.Source.Citation, s.ToString(), StringComparison.Ordinal));
        Assert.All(PublishedRecoilSpeeds.All, s => Assert.Equal(Standing.Primary, s.Source.Standing));
        Assert.Equal(PublishedRecoilSpeeds.All.Select(s => s.High.MetersPerSecond).Order(), PublishedRecoilSpeeds.All.Select(s => s.High.MetersPerSecond));
        var hook = PublishedRecoilSpeeds.All.Single(s => s.Key == "nylon-hook");
        Assert.Equal(268.224, hook.Low.MetersPerSecond, 1e-9);
        Assert.Equal(312.928, hook.High.MetersPerSecond, 1e-9);
        Assert.StartsWith("hook thrown by a nylon rope: 268 m/s to 313 m/s (", hook.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(RecoilKernel.OneTripRatio)]
    public void The_fitting_factor_joins_at_its_seams(double a) => Assert.Equal(RecoilKernel.FittingRatio(a * (1 - 1e-9)), RecoilKernel.FittingRatio(a * (1 + 1e-9)), 2e-5);

    [Fact]
    public void The_seam_is_the_root_of_its_equation() => Assert.Equal(4 * RecoilKernel.OneTripRatio, Math.Exp(-2 * RecoilKernel.OneTripRatio), 1e-12);

    [Property]
    public Property The_fitting_factor_rises_and_stays_below_one_and_below_the_bound() => Prop.ForAll(Gen.Choose(-4000, 3000).ToArbitrary(), x =>
    {
        double a = Math.Pow(10, x / 1000.0), f = RecoilKernel.FittingRatio(a), more = RecoilKernel.FittingRatio(a * 1.001);
        return f > 0 && f <= 1 && more >= f && f <= 1.02 * RecoilKernel.ThirdMassRatio(a);
    });

    [Property]
    public Property The_bound_holds_the_exact_speed_and_recoil_does_not_depend_on_length() => Prop.ForAll((from m in Gen.Choose(1, 500) from f in Gen.Choose(10, 580) from l in Gen.Choose(1, 60) select (m / 2.0, (double)f, (double)l)).ToArbitrary(), x =>
    {
        var segment = new LineSegment("strap", Linear(x.Item3, 588399, 0.25), PerMetre(2));
        var exact = Recoil.OfFitting(segment, KN(x.Item2), Kg(x.Item1));
        var bound = Recoil.Bound(new LineAssembly(segment), KN(x.Item2), Kg(x.Item1), HardwarePlace.ChainEnd);
        var energy = Recoil.Bound(new LineAssembly(segment), KN(x.Item2), Kg(x.Item1), HardwarePlace.Other);
        return exact.Speed.MetersPerSecond <= bound.Speed.MetersPerSecond * (1 + 1e-12) && exact.KineticEnergy.Joules <= exact.StoredEnergy.Joules && Math.Abs(energy.ShareOfStored.DecimalFractions - 1) < 1e-12
            && Math.Abs(Recoil.OfLine(segment, KN(x.Item2)).Speed.MetersPerSecond - Recoil.OfLine(Nylon, KN(x.Item2)).Speed.MetersPerSecond) < 1e-9;
    });

    [Fact]
    public void A_test_of_unloading_lowers_speed_by_its_root_and_nothing_else_does()
    {
        var tested = new LineSegment("strap", Linear(9, 588399, 0.25).WithUnloading(new UnloadingTest(Frac(0.64), Test)), PerMetre(2));
        Assert.Equal(0.8, Recoil.OfLine(tested, KN(200)).Speed / Recoil.OfLine(Nylon, KN(200)).Speed, 1e-12);
        Assert.Equal(0.8, Recoil.OfFitting(tested, KN(200), Kg(5)).Speed / Recoil.OfFitting(Nylon, KN(200), Kg(5)).Speed, 1e-12);
        Assert.Equal(0.64, Recoil.Bound(new LineAssembly(tested), KN(200), Kg(5), HardwarePlace.Other).StoredEnergy / Recoil.Bound(new LineAssembly(Nylon), KN(200), Kg(5), HardwarePlace.Other).StoredEnergy, 1e-12);
    }

    [Fact]
    public void What_is_not_known_is_refused()
    {
        var table = new LineSegment("strap", LoadElongation.Tabulated(M(9), [0.1, 0.2], [100, 300], Test), PerMetre(2));
        Assert.Contains("table", Assert.Throws<ArgumentException>(() => Recoil.OfLine(table, KN(100))).Message, StringComparison.Ordinal);
        Assert.Contains("linear", Assert.Throws<ArgumentException>(() => Recoil.OfFitting(table, KN(100), Kg(5))).Message, StringComparison.Ordinal);
        // A table is bounded by its energy alone.
        Assert.Equal(Recoil.Bound(new LineAssembly(table), KN(100), Kg(5), HardwarePlace.Other).Speed, Recoil.Bound(new LineAssembly(table), KN(100), Kg(5), HardwarePlace.ChainEnd).Speed);
        Assert.Throws<ArgumentOutOfRangeException>(() => Recoil.OfLine(Nylon, KN(600)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Recoil.OfFitting(Nylon, KN(100), Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Recoil.Bound(new LineAssembly(Nylon), KN(100), Kg(5), (HardwarePlace)9));
    }

    [Fact]
    public void A_result_says_itself_without_false_figures() => Assert.Equal("up to 70 m/s, 43 kJ stored", Recoil.OfFitting(Nylon, KN(150), Kg(5)).ToString());
}
