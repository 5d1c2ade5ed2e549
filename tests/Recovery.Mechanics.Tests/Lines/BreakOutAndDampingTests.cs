using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

/// <summary>What lowers a peak and is no credit: break-out and damping; and the small identities beside the take-up.</summary>
public class BreakOutAndDampingTests
{
    [Theory]
    [CheckRows("lines", "break-out")]
    public void A_casualty_that_breaks_out_matches(CheckRow row)
    {
        var result = BreakOut.Evaluate(Taut(Linear(row)), Kg(row.Si("m1")), N(row.Si("P")), Mps(row.Si("v")), Kg(row.Si("m2")), N(row.Si("Rs")), N(row.Si("Rk")));
        Assert.True(result.BreaksOut);
        row.MatchesOne("v1", result.SpeedAtBreakOut!.Value.MetersPerSecond);
        row.MatchesOne("F_max", result.Peak.Newtons);
        row.MatchesOne("F_held", result.HeldPeak.Newtons);
        if (!row.ExpectedNames.Contains("t_break")) return;
        row.MatchesOne("t_break", result.TimeToBreakOut!.Value.Seconds);
        row.MatchesOne("t_peak", result.TimeToPeak.Seconds);
    }

    [Theory]
    [CheckRows("lines", "damped")]
    public void A_dashpot_beside_the_line_matches(CheckRow row)
    {
        var zeta = row.Si("zeta");
        var back = DampedTakeUp.ReboundShare(Frac(zeta));
        row.Matches(("peak_ratio", DampedTakeUp.PeakShare(Frac(zeta))), ("rebound_ratio", back), ("eta_r", back * back));
    }

    [Property]
    public Property Damping_never_cuts_a_peak_by_more_than_nineteen_percent() => Prop.ForAll(Gen.Choose(0, 9500).ToArbitrary(), x =>
    {
        var zeta = x / 10000.0;
        return DampedTakeUp.PeakShare(Frac(zeta)) > 0.81 && DampedTakeUp.ReboundShare(Frac(zeta)) is > 0 and <= 1;
    });

    [Theory]
    [InlineData(0.5 - 1e-12)]
    [InlineData(0.5)]
    [InlineData(0.5 + 1e-12)]
    public void The_damped_peak_joins_where_it_moves_to_the_start(double zeta) => Assert.Equal(1, DampedTakeUp.PeakShare(Frac(zeta)), 1e-9);

    [Property]
    public Property Break_out_never_raises_the_peak() => Prop.ForAll((from m1 in Gen.Choose(5, 40) from m2 in Gen.Choose(5, 60) from k in Gen.Choose(30, 3000) from v in Gen.Choose(1, 40) from p in Gen.Choose(0, 200) from rs in Gen.Choose(1, 400) from rk in Gen.Choose(0, 100) select (m1, m2, k, v / 10.0, p, rs, rs * rk / 100.0)).ToArbitrary(), x =>
    {
        var (m1, m2, k, v, p, rs, rk) = x;
        var result = BreakOut.Evaluate(OfStiffness(k * 1e3), Mass.FromTonnes(m1), KN(p), Mps(v), Mass.FromTonnes(m2), KN(rs), KN(rk));
        return result.Peak.Newtons <= result.HeldPeak.Newtons * (1 + 1e-12) && result.BreaksOut == result.HeldPeak.Kilonewtons > rs;
    });

    [Theory]
    [CheckRows("lines", "damped")]
    public void A_simulated_dashpot_matches(CheckRow row)
    {
        var zeta = row.Si("zeta");
        var line = OfStiffness(3e5);
        var run = TakeUp.Simulate(new TakeUpCase(line, Kg(20000), TowDrive.ConstantPull(Force.Zero), Mps(2)).WithDampingRatio(zeta));
        row.MatchesOne("peak_ratio", run.Peak.Newtons / (2 * Math.Sqrt(3e5 * 20000)));
        row.MatchesOne("rebound_ratio", -run.Outcome.SlackPullerSpeed / 2);
        Assert.Equal(row.Si("zeta"), run.Case.DampingRatio);
        Assert.True(run.EnergyError < 1e-9, "energy " + run.EnergyError);
    }

    [Theory]
    [CheckRows("lines", "climbing-stiffness")]
    public void The_stiffness_behind_a_climbing_force_matches(CheckRow row)
    {
        // The speed limit inverted: at k = 1 it is sqrt(F (F - 2P)/m), and k goes with its square.
        double m = row.Si("m"), p = m * PhysicalConstants.StandardGravity, length = 3, v = Math.Sqrt(2 * PhysicalConstants.StandardGravity * row.Si("f") * length), at1 = TakeUpKernel.HeldSpeedLimit(row.Si("F"), p, 1, m);
        row.Matches(("EA", at1 * at1 / (v * v) * length));
    }

    [Theory]
    [CheckRows("lines", "rotation-energy")]
    public void The_energy_of_rotation_matches(CheckRow row)
    {
        foreach (var v in new[] { 0.5, 2.0 }) row.Matches(("E", RotatingKernel.EquivalentMass(row.Printed("J"), row.Printed("n") * Math.PI / 30, v) * v * v / 2));
    }

    [Theory]
    [CheckRows("lines", "kinetic-energy")]
    public void All_kinetic_energy_goes_into_the_line(CheckRow row)
    {
        double At(double v) => TakeUp.PeakHeld(Taut(Linear(9, 588399, 0.25)), Kg(row.Si("m")), Force.Zero, Speed.FromKilometersPerHour(v)).StoredEnergy!.Value.Joules;
        row.Matches(("KE_2", At(2)), ("KE_5", At(5)), ("KE_10", At(10)));
    }

    [Theory]
    [CheckRows("lines", "impactor-energy")]
    public void The_energy_of_an_impactor_matches(CheckRow row)
    {
        double At(double v) => new ThrownFitting(Kg(row.Si("m")), Mps(v), M(1)).KineticEnergy.Joules;
        row.Matches(("KE_18", At(18)), ("KE_37", At(37)));
    }

    [Theory]
    [CheckRows("lines", "specific-energy")]
    public void The_energy_behind_a_recoil_speed_matches(CheckRow row)
    {
        // Tension at which any linear line recoils at that speed.
        double ea = 2e6, mass = 1.7, f = row.Si("v") * ElasticKernel.Impedance(ea, mass);
        Assert.Equal(row.Si("v"), Recoil.OfLine(new LineSegment("rope", Linear(9, ea, 1), PerMetre(mass)), N(f)).Speed.MetersPerSecond, 1e-9);
        row.Matches(("F_eps_over_m", f * (f / ea) / mass), ("e_m", new LineSegment("rope", Linear(9, ea, 1), PerMetre(mass)).EnergyPerMass(N(f)).JoulesPerKilogram));
    }

    [Theory]
    [CheckRows("lines", "rope-mass")]
    public void A_lighter_rope_of_the_same_stiffness_recoils_faster(CheckRow row)
    {
        var mass = row.Si("mass_per_MBS") * row.Si("MBS");
        double Speed(double perMetre) => Recoil.OfLine(new LineSegment("rope", Linear(9, row.Si("MBS"), 0.1), PerMetre(perMetre)), N(2e5)).Speed.MetersPerSecond;
        row.Matches(("m_line", mass), ("v_ratio", Speed(mass) / Speed(row.Si("m_line_P10"))));
    }

    [Property]
    public Property The_highest_speed_gives_the_limit_back_on_any_curve() => Prop.ForAll((from n in Gen.Choose(100, 250) from m in Gen.Choose(5, 40) from p in Gen.Choose(0, 150) from s in Gen.Choose(0, 10) from f in Gen.Choose(60, 500) from table in Gen.Elements(true, false) select (n / 100.0, m * 1e3, p * 1e3, s / 10.0, f * 1e3, table)).ToArbitrary(), x =>
    {
        var (n, m, p, s, f, table) = x;
        var line = Taut(table ? LoadElongation.Tabulated(M(9), [0.08, 0.25], [110, 588.399], Test) : LoadElongation.PowerLaw(M(9), KN(588.399), Frac(0.25), n, Test), s);
        var held = TakeUp.HighestSpeedHeld(line, Kg(m), N(p), N(f));
        var gear = TakeUp.HighestSpeedLockedGear(line, Kg(m), N(p), N(f));
        bool Gives(SpeedLimit limit, Func<Speed, TakeUpPeak> peak) => limit.Highest!.Value.MetersPerSecond is < 0.02 or > 16 || Math.Abs(peak(limit.Highest!.Value).Peak!.Value.Newtons / f - 1) < 1e-9;
        var rest = TakeUp.PeakHeld(line, Kg(m), N(p), Speed.Zero);
        // None exists exactly where the peak from rest passes the limit already.
        return (held.Exists ? rest.Peak!.Value.Newtons <= f * (1 + 1e-9) && Gives(held, v => TakeUp.PeakHeld(line, Kg(m), N(p), v)) : rest.Peak is not { } r || r.Newtons >= f * (1 - 1e-9))
            && (gear.Exists ? Gives(gear, v => TakeUp.PeakLockedGear(line, Kg(m), N(p), v, LockedGearConditions.AllMet)) : f < p)
            && held.Exists == held.Objection("strap") is null;
    });

    [Fact]
    public void Slack_counts_against_the_highest_speed_and_is_said()
    {
        var slack = Taut(Linear(9, 588399, 0.25), 0.5);
        // From rest through half a metre of slack: 290.134 kN (row K-slack-N25-0.5).
        var none = TakeUp.HighestSpeedHeld(slack, Kg(20000), KN(100), KN(290));
        Assert.False(none.Exists);
        Assert.Equal(290.134338473, none.LeastLimit.Kilonewtons, 1e-6);
        Assert.Equal(290.134338473, none.Objection("strap")!.Required!.Value, 1e-6);
        Assert.Contains("290.1 kN that a pull of 100 kN reaches from rest", none.Statement, StringComparison.Ordinal);
        Assert.True(TakeUp.HighestSpeedHeld(slack, Kg(20000), KN(100), KN(290.2)).Exists);
        Assert.Equal("no speed at all is admissible: the limit of 199 kN is below twice the pull of 100 kN", TakeUp.HighestSpeedHeld(Taut(Linear(9, 588399, 0.25)), Kg(20000), KN(100), KN(199)).Statement);
        Assert.Throws<ArgumentOutOfRangeException>(() => TakeUp.HighestSpeedHeld(Taut(LoadElongation.Tabulated(M(9), [0.25], [500], Test)), Kg(20000), KN(100), KN(501)));
    }

    [Property]
    public Property The_batch_gives_what_the_typed_model_gives() => Prop.ForAll((from p in Gen.Choose(0, 300) from ea in Gen.Choose(500, 30000) from v in Gen.Choose(0, 100) from s in Gen.Choose(0, 20) from m in Gen.Choose(5, 40) select (p, ea, v / 10.0, s / 10.0, m)).ToArbitrary(), x =>
    {
        var (p, ea, v, s, m) = x;
        var line = new ElasticLine(M(9), KN(ea), KN(ea), PerMetre(2), Test);
        double[] peak = new double[1], k = [ea / 9.0], pull = [p];
        TakeUpModel.Instance.PeakHeld(pull, k, [v], [s], m, peak);
        var held = TakeUpModel.Instance.PeakHeld(KN(p), line, Mass.FromTonnes(m), Mps(v), M(s)).Kilonewtons;
        var both = Math.Abs(peak[0] - held) <= 1e-12 * held;
        TakeUpModel.Instance.PeakLockedGear(pull, k, [v], m, peak);
        return both && (v < 0.02 || Math.Abs(peak[0] / TakeUp.PeakLockedGear(OfStiffness(ea / 9.0 * 1000), Mass.FromTonnes(m), KN(p), Mps(v), LockedGearConditions.AllMet).Peak!.Value.Kilonewtons - 1) < 1e-9);
    });

    [Fact]
    public void The_batch_refuses_before_it_writes()
    {
        double[] peak = [-1, -1];
        Assert.Throws<ArgumentOutOfRangeException>(() => TakeUpModel.Instance.PeakHeld([100, double.NaN], [300, 300], [1, 1], [0, 0], 18, peak));
        Assert.Throws<ArgumentException>(() => TakeUpModel.Instance.PeakLockedGear([100], [300, 300], [1, 1], 18, peak));
        Assert.Equal([-1, -1], peak);
    }
}
