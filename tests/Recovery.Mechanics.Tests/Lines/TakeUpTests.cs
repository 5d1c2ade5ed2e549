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

public class TakeUpTests
{
    private static readonly LineAssembly Nylon = Taut(Linear(9, 588399, 0.25));

    [Theory]
    [CheckRows("lines", "held-three-pulls")]
    public void Held_peaks_at_three_pulls_match(CheckRow row) => row.Matches(("F_a", Held(row, "P_a")), ("F_b", Held(row, "P_b")), ("F_c", Held(row, "P_c")));

    [Theory]
    [CheckRows("lines", "held")]
    public void A_held_peak_matches(CheckRow row)
    {
        var line = row.Has("k") ? OfStiffness(row.Si("k")) : Taut(Linear(row));
        var peak = TakeUp.PeakHeld(line, Kg(row.Si("m")), N(row.Si("P")), Mps(row.Si("v")));
        row.MatchesOne("F", peak.Peak!.Value.Newtons);
        if (row.ExpectedNames.Contains("exceeds_MBS")) row.MatchesWord("exceeds_MBS", peak.ExceedsCurve ? "true" : "false");
    }

    [Theory]
    [CheckRows("lines", "held-slack")]
    public void A_held_peak_with_slack_matches(CheckRow row)
    {
        var peak = TakeUp.PeakHeld(Taut(Linear(row), row.Si("s")), Kg(row.Si("m")), N(row.Si("P")), Mps(row.Si("v0")));
        row.MatchesOne("F", peak.Peak!.Value.Newtons);
        row.MatchesWord("exceeds_MBS", peak.ExceedsCurve ? "true" : "false");
        Assert.Equal(peak.ExceedsCurve ? ["line.peak-beyond-curve"] : [], peak.Findings().Select(f => f.Id));
    }

    [Theory]
    [CheckRows("lines", "held-fits")]
    public void A_held_peak_on_a_rope_of_published_fits_matches(CheckRow row) => row.Matches(("F", TakeUp.PeakHeld(Ratio(row), Kg(row.Si("m")), Force.Zero, Mps(row.Si("v"))).Peak!.Value.Newtons));

    [Theory]
    [CheckRows("lines", "second-pull")]
    public void A_second_pull_matches(CheckRow row)
    {
        var first = Linear(row);
        double F(LoadElongation curve) => TakeUp.PeakHeld(Taut(curve), Kg(row.Si("m")), Force.Zero, Mps(row.Si("v"))).Peak!.Value.Newtons;
        var second = F(first.In(LineState.AsTested.WithStiffeningFactor(row.Si("k_ratio"))));
        row.Matches(("F", second), ("ratio_to_first", second / F(first)));
    }

    [Theory]
    [CheckRows("lines", "kinetic-peak")]
    public void A_kinetic_rope_matches(CheckRow row)
    {
        var peak = TakeUp.PeakHeld(Ratio(row), Kg(row.Si("m")), Force.Zero, Mps(row.Si("v")));
        row.Matches(("k", Ratio(row).Stiffness!.Value.NewtonsPerMeter), ("T", peak.Peak!.Value.Newtons), ("energy", peak.StoredEnergy!.Value.Joules));
    }

    [Theory]
    [CheckRows("lines", "kinetic-peak-only")]
    public void Peaks_over_relative_stiffness_match(CheckRow row) =>
        row.Matches(("k", Ratio(row).Stiffness!.Value.NewtonsPerMeter), ("T", TakeUp.PeakHeld(Ratio(row), Kg(row.Si("m")), Force.Zero, Mps(row.Si("v"))).Peak!.Value.Newtons));

    [Theory]
    [CheckRows("lines", "kinetic-free")]
    public void Two_free_machines_match(CheckRow row)
    {
        var m = TakeUpKernel.ReducedMass(row.Si("m1"), row.Si("m2"));
        row.Matches(("m", m), ("T", TakeUpKernel.HeldPeak(0, Ratio(row).Stiffness!.Value.NewtonsPerMeter, m, row.Si("v"), 0)));
    }

    [Theory]
    [CheckRows("lines", "kinetic-energy-stored")]
    public void Energy_of_a_kinetic_rope_matches(CheckRow row) => row.Matches(("U", Ratio(row).StoredEnergy(N(row.Si("T"))).Total.Joules));

    [Theory]
    [CheckRows("lines", "strength-ratio", "stiff-ratio", "bedded-ratio", "soft-assumption", "length-ratio")]
    public void Peaks_without_pull_go_with_the_root_of_stiffness(CheckRow row)
    {
        double Peak(double k) => TakeUpKernel.HeldPeak(0, k, 20000, 2, 0);
        switch (row.Model)
        {
            case "strength-ratio": row.Matches(("peak_ratio", Peak(3e5 * row.Si("MBS_ratio")) / Peak(3e5))); break;
            case "bedded-ratio": row.Matches(("peak_ratio", Peak(3e5 * row.Si("k_ratio")) / Peak(3e5))); break;
            case "soft-assumption": row.Matches(("ratio", Peak(row.Si("EA_over_MBS")) / Peak(row.Si("assumed")))); break;
            case "length-ratio": row.Matches(("F_ratio", Peak(3e5 / row.Si("L_ratio")) / Peak(3e5)), ("E_ratio_at_equal_F", ElasticKernel.Energy(1e5, 3e5 / row.Si("L_ratio")) / ElasticKernel.Energy(1e5, 3e5))); break;
            default: row.MatchesList("peak_ratio", row.SiList("EA_over_MBS").Select(x => Peak(x) / Peak(row.Si("reference"))).ToList()); break;
        }
    }

    [Theory]
    [CheckRows("lines", "snap-force")]
    public void The_snap_force_of_marine_practice_is_the_same_rule(CheckRow row) => row.Matches(("F", TakeUpKernel.HeldPeak(0, row.Si("K"), row.Si("M"), row.Si("v"), 0)));

    [Theory]
    [CheckRows("lines", "climbing-force")]
    public void The_fall_factor_equation_is_the_same_rule(CheckRow row)
    {
        // P = m g, v^2 = 2 g f L, k = EA/L; the length drops out.
        double m = row.Si("m"), g = PhysicalConstants.StandardGravity, length = 7;
        row.Matches(("F", TakeUpKernel.HeldPeak(m * g, row.Si("EA") / length, m, Math.Sqrt(2 * g * row.Si("f") * length), 0)));
    }

    [Theory]
    [CheckRows("lines", "speed-through-slack")]
    public void Speed_through_slack_matches(CheckRow row)
    {
        double m = row.Si("m"), p = row.Si("P"), s = row.Si("s"), v = TakeUpKernel.SpeedAtTaut(p, m, 0, s);
        row.Matches(("v", v));
        Assert.Equal(v * m / p, TakeUp.TimeToTaut(OfStiffness(250e3, s), Kg(m), N(p), Mps(0))!.Value.Seconds, 1e-12);
        Assert.Equal(2.5, TakeUp.TimeToTaut(OfStiffness(250e3, 5), Kg(m), N(0), Mps(2))!.Value.Seconds, 1e-12);
        Assert.Equal(0, TakeUp.TimeToTaut(OfStiffness(250e3), Kg(m), N(0), Mps(0))!.Value.Seconds);
        Assert.Null(TakeUp.TimeToTaut(OfStiffness(250e3, s), Kg(m), N(0), Mps(0)));
    }

    [Theory]
    [CheckRows("lines", "speed-at-load")]
    public void Speeds_at_which_a_load_is_reached_match(CheckRow row)
    {
        double At(double part) => TakeUp.HighestSpeedHeld(Taut(Linear(row)), Kg(row.Si("m")), Force.Zero, N(row.Si("MBS") / part)).Highest!.Value.MetersPerSecond;
        row.Matches(("v_7", At(7)), ("v_3", At(3)), ("v_1", At(1)));
    }

    [Theory]
    [CheckRows("lines", "held-speed-limit")]
    public void The_highest_speed_on_a_held_anchor_matches(CheckRow row)
    {
        var line = Taut(Linear(row));
        Limit(row, TakeUp.HighestSpeedHeld(line, Kg(row.Si("m")), N(row.Si("P")), N(row.Si("F_allow"))), "v_max", v => TakeUp.PeakHeld(line, Kg(row.Si("m")), N(row.Si("P")), v).Peak!.Value);
    }

    [Theory]
    [CheckRows("lines", "gear-speed-limit")]
    public void The_highest_gear_speed_matches(CheckRow row)
    {
        var line = OfStiffness(row.Si("k"));
        Limit(row, TakeUp.HighestSpeedLockedGear(line, Kg(row.Si("m")), N(row.Si("P")), N(row.Si("F_allow"))), "v_t_max", v => TakeUp.PeakLockedGear(line, Kg(row.Si("m")), N(row.Si("P")), v, LockedGearConditions.AllMet).Peak!.Value);
    }

    [Theory]
    [CheckRows("lines", "locked-gear")]
    public void The_locked_gear_matches(CheckRow row)
    {
        var v = row.Si("v_t") + row.Si("v_anchor", 0);
        row.Matches(("F", TakeUp.PeakLockedGear(OfStiffness(row.Si("k")), Kg(row.Si("m")), N(row.Si("P")), Mps(v), LockedGearConditions.AllMet).Peak!.Value.Newtons));
    }

    [Theory]
    [CheckRows("lines", "gear-of-twice-pull")]
    public void The_gear_that_gives_twice_the_pull_matches(CheckRow row)
    {
        var v = TakeUp.HighestSpeedLockedGear(OfStiffness(row.Si("k")), Kg(row.Si("m")), N(row.Si("P")), N(2 * row.Si("P"))).Highest!.Value.MetersPerSecond;
        row.Matches(("v_t", v), ("v_t_kmh", v));
        Assert.Equal(2 * row.Si("P"), TakeUpKernel.LockedGearPeak(row.Si("P"), row.Si("k"), row.Si("m"), v), 1e-6);
    }

    [Theory]
    [CheckRows("lines", "smaller-rule")]
    public void The_smaller_rule_matches(CheckRow row)
    {
        double k = row.Si("k"), m = row.Si("m"), p = row.Si("P");
        var input = new LineLoadInput { Pull = p, Mass = m, Soft = k, Stiff = k, BeddedFactor = 1, GearSpeed = row.Si("v_t"), Slack = row.Si("s"), Approach = row.Si("v0"), Rise = -1, CarelessSlack = 0.5, CarelessSpeed = 5 / 3.6 };
        LineLoadKernel.Evaluate(input, out var output);
        row.MatchesOne("F_held", TakeUpKernel.HeldPeak(p, k, m, row.Si("v0"), row.Si("s")));
        row.MatchesOne("F_gear", TakeUpKernel.LockedGearPeak(p, k, m, row.Si("v_t")));
        row.MatchesOne("F", output.Procedure);
        row.MatchesWord("governs", output.Rule == LineLoadRule.LockedGear ? "gear" : "held");
    }

    [Theory]
    [CheckRows("lines", "locked-gear-curve")]
    public void The_locked_gear_on_a_curve_matches(CheckRow row)
    {
        var curve = Power(row);
        var peak = TakeUp.PeakLockedGear(Taut(curve), Kg(row.Si("m")), N(row.Si("P")), Mps(row.Si("v_t")), LockedGearConditions.AllMet);
        row.Matches(("x_P", curve.Stretch(N(row.Si("P"))).Meters), ("x_max", peak.Stretch!.Value.Meters), ("F", peak.Peak!.Value.Newtons));
    }

    [Theory]
    [CheckRows("lines", "throttle-exact")]
    public void A_raised_force_matches(CheckRow row) => row.MatchesList("factor", row.SiList("t_r_over_Tn").Select(t => RaisedForce.Evenly(Duration.FromSeconds(t), Duration.FromSeconds(1))).ToList());

    [Theory]
    [CheckRows("lines", "throttle-envelope")]
    public void Its_envelope_matches(CheckRow row) => row.MatchesList("envelope", row.SiList("t_r_over_Tn").Select(t => RaisedForce.Envelope(Duration.FromSeconds(t), Duration.FromSeconds(1))).ToList());

    [Theory]
    [CheckRows("lines", "throttle-band")]
    public void A_raised_force_over_the_band_matches(CheckRow row)
    {
        double m = row.Si("m"), p = row.Si("P"), rise = row.Si("t_r");
        var k = row.SiList("k");
        row.MatchesList("Tn", k.Select(x => TakeUp.NaturalPeriod(OfStiffness(x), Kg(m)).Seconds).ToList());
        row.MatchesList("F", k.Select(x => p * RaisedForce.Evenly(Duration.FromSeconds(rise), TakeUp.NaturalPeriod(OfStiffness(x), Kg(m)))).ToList());
        row.MatchesOne("F_envelope", TakeUp.PeakThrottle(OfStiffness(k.Min()), Kg(m), N(p), Duration.FromSeconds(rise)).Peak!.Value.Newtons);
    }

    [Theory]
    [CheckRows("lines", "throttle-steps")]
    public void A_force_raised_in_steps_matches(CheckRow row) => row.MatchesList("factor", row.SiList("steps").Select(n => RaisedForce.InSteps((int)n)).ToList());

    [Theory]
    [CheckRows("lines", "two-steps")]
    public void Two_steps_apart_match(CheckRow row) => row.MatchesList("factor", row.SiList("spacing_over_Tn").Select(t => RaisedForce.InTwoSteps(Duration.FromSeconds(t), Duration.FromSeconds(1))).ToList());

    [Theory]
    [CheckRows("lines", "line-loads")]
    public void The_three_line_loads_match(CheckRow row)
    {
        double k = row.Si("k"), length = 9;
        var line = new ElasticLine(M(length), N(k * length), N(k * length), PerMetre(2), Test);
        var procedure = PullProcedure.DrawnTautInGear(Mps(row.Si("v_t"))) with { CarelessSlack = M(row.Si("s_careless")), CarelessSpeed = Mps(row.Si("v_careless")) };
        var loads = LineLoads.Evaluate(N(row.Si("P")), Kg(row.Si("m")), line, procedure);
        row.Matches(("F_steady", loads.Steady.Newtons), ("F_procedure", loads.ProcedurePeak.Newtons), ("F_careless", loads.Careless.Newtons));
    }

    [Theory]
    [CheckRows("lines", "stretch-and-energy")]
    public void Stretch_and_energy_of_the_worked_plan_match(CheckRow row)
    {
        var line = OfStiffness(row.Si("k"));
        row.MatchesList("x", row.SiList("F").Select(f => line.Stretch(N(f)).Meters).ToList());
        row.MatchesList("E", row.SiList("F").Select(f => line.StoredEnergy(N(f)).Total.Joules).ToList());
    }

    [Theory]
    [CheckRows("lines", "gear-energy")]
    public void Energy_at_the_peak_of_a_gear_matches(CheckRow row)
    {
        var peak = TakeUp.PeakLockedGear(OfStiffness(row.Si("k")), Kg(row.Si("m")), N(row.Si("P")), Mps(row.Si("v_t")), LockedGearConditions.AllMet);
        row.Matches(("F", peak.Peak!.Value.Newtons), ("E", peak.StoredEnergy!.Value.Joules));
    }

    [Theory]
    [CheckRows("lines", "rotating-mass")]
    public void Wheels_that_cannot_slip_match(CheckRow row)
    {
        double omega = row.Printed("n") * Math.PI / 30;
        var rotating = TakeUp.RotatingMass(MassMomentOfInertia.FromKilogramSquareMeters(row.Printed("J")), RotationalSpeed.FromRevolutionsPerMinute(row.Printed("n")), Mps(row.Si("v_t")));
        var peak = TakeUp.PeakLockedGear(OfStiffness(row.Si("k")), Kg(row.Si("m")) + rotating, N(row.Si("P")), Mps(row.Si("v_t")), LockedGearConditions.AllMet);
        row.Matches(("i_over_r", omega / row.Si("v_t")), ("m_rot", rotating.Kilograms), ("F", peak.Peak!.Value.Newtons));
    }

    [Theory]
    [CheckRows("lines", "impact-step")]
    public void The_step_on_impact_matches(CheckRow row) => row.Matches(("dF", TakeUp.ImpactStep(Segment(row), Mps(row.Si("v"))).Newtons));

    [Theory]
    [CheckRows("lines", "frequency")]
    public void The_highest_frequency_matches(CheckRow row) => row.Matches(("w_max", 2 * Math.PI / TakeUp.NaturalPeriod(row.Has("k") ? OfStiffness(row.Si("k")) : Taut(Linear(row)), Kg(row.Si("m1")), Kg(row.Si("m2"))).Seconds));

    [Fact]
    public void What_a_raised_force_and_a_step_cannot_be_reckoned_with_is_refused()
    {
        var power = LoadElongation.PowerLaw(M(9), N(588399), Frac(0.25), 2, Test);
        Assert.Throws<ArgumentException>(() => TakeUp.NaturalPeriod(Taut(power), Mass.FromTonnes(20)));
        Assert.Throws<ArgumentException>(() => TakeUp.ImpactStep(new LineSegment("strap", power, PerMetre(2)), Mps(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RaisedForce.InSteps(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RaisedForce.Evenly(Duration.FromSeconds(1), Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => RaisedForce.Envelope(Duration.Zero, Duration.FromSeconds(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DampedTakeUp.PeakShare(Frac(0.96)));
        Assert.Equal(2, RaisedForce.Evenly(Duration.Zero, Duration.FromSeconds(1)));
        Assert.Equal(Standing.Derived, RaisedForce.Source.Standing);
        Assert.Equal(Standing.Derived, DampedTakeUp.Source.Standing);
    }

    [Theory]
    [CheckRows("lines", "contact-factor")]
    public void The_contact_factor_matches(CheckRow row) => row.Matches(("two_I", CurveTakeUpKernel.ContactFactor(row.Si("n"))));

    [Theory]
    [CheckRows("lines", "power-take-up")]
    public void A_take_up_of_a_stiffening_line_matches(CheckRow row)
    {
        var peak = TakeUp.PeakHeld(Taut(Power(row)), Kg(row.Si("m")), Force.Zero, Mps(row.Si("v")));
        row.Matches(("F", peak.Peak!.Value.Newtons), ("x", peak.Stretch!.Value.Meters), ("T_contact", 2 * peak.TimeToPeak!.Value.Seconds));
    }

    [Property]
    public Property The_held_peak_balances_energy_on_any_curve() => Prop.ForAll((from n in Gen.Choose(100, 300) from m in Gen.Choose(1, 40) from v in Gen.Choose(1, 30) from p in Gen.Choose(0, 150) from s in Gen.Choose(0, 20) select (n / 100.0, m * 1e3, v / 10.0, p * 1e3, s / 10.0)).ToArbitrary(), x =>
    {
        var (n, m, v, p, s) = x;
        var shape = LoadElongation.PowerLaw(M(9), KN(588.399), Frac(0.25), n, Test).Shape;
        double stretch = CurveTakeUpKernel.HeldStretch(shape, p, m, v, s), work = (m * v * v / 2) + (p * (s + stretch));
        return Math.Abs(CurveKernel.Energy(shape, stretch) - work) <= 1e-12 * work && CurveKernel.Force(shape, stretch) >= p;
    });

    [Property]
    public Property A_peak_rises_with_speed_slack_and_pull_and_falls_with_length() => Prop.ForAll((from n in Gen.Choose(100, 300) from v in Gen.Choose(1, 30) from p in Gen.Choose(1, 150) from s in Gen.Choose(0, 20) select (n / 100.0, v / 10.0, p, s / 10.0)).ToArbitrary(), x =>
    {
        var (n, v, p, s) = x;
        double Peak(double length, double speed, double pull, double slack) => TakeUp.PeakHeld(Taut(LoadElongation.PowerLaw(M(length), KN(588.399), Frac(0.25), n, Test), slack), Mass.FromTonnes(20), KN(pull), Mps(speed)).Peak!.Value.Newtons;
        var f = Peak(9, v, p, s);
        return Peak(9, v + 0.1, p, s) > f && Peak(9, v, p + 1, s) > f && Peak(9, v, p, s + 0.1) > f && (s > 0 || Peak(10, v, p, s) < f);
    });

    [Fact]
    public void A_table_that_ends_before_the_energy_is_taken_up_gives_no_number()
    {
        var table = LoadElongation.Tabulated(M(9), [0.1, 0.25], [150, 588.399], Test);
        var within = TakeUp.PeakHeld(Taut(table), Kg(20000), KN(50), Speed.FromKilometersPerHour(5));
        Assert.Equal((20000 * Math.Pow(5 / 3.6, 2) / 2) + (50e3 * within.Stretch!.Value.Meters), within.StoredEnergy!.Value.Joules, 1e-6);
        var beyond = TakeUp.PeakHeld(Taut(table), Kg(20000), KN(50), Speed.FromKilometersPerHour(30));
        Assert.Null(beyond.Peak);
        Assert.True(beyond.ExceedsCurve);
        var finding = Assert.Single(beyond.Findings());
        Assert.Equal("line.peak-beyond-curve", finding.Id);
        Assert.DoesNotContain("NaN", finding.ToString(), StringComparison.Ordinal);
        Assert.Null(TakeUp.PeakLockedGear(Taut(table), Kg(20000), KN(600), Speed.FromKilometersPerHour(2), LockedGearConditions.AllMet).Peak);
    }

    [Fact]
    public void A_limit_below_twice_the_pull_admits_no_speed_and_says_so()
    {
        var none = TakeUp.HighestSpeedHeld(Nylon, Kg(20000), KN(100), KN(199.9));
        Assert.False(none.Exists);
        Assert.Null(none.Highest);
        Assert.Contains("no speed at all", none.Statement, StringComparison.Ordinal);
        Assert.Equal("line.no-admissible-speed", none.Objection("strap")!.Id);
        var just = TakeUp.HighestSpeedHeld(Nylon, Kg(20000), KN(100), KN(200));
        Assert.Equal(0, just.Highest!.Value.MetersPerSecond);
        Assert.Null(just.Objection("strap"));
        Assert.True(TakeUp.HighestSpeedLockedGear(Nylon, Kg(20000), KN(100), KN(199.9)).Exists);
    }

    [Fact]
    public void A_gear_whose_conditions_are_not_met_is_not_claimed()
    {
        var not = LockedGearConditions.AllMet with { WheelsCanSlip = false, LevelOrUphill = false };
        var error = Assert.Throws<ArgumentException>(() => TakeUp.PeakLockedGear(Nylon, Kg(18000), KN(116), Speed.FromKilometersPerHour(2), not));
        Assert.Contains("the wheels cannot slip", error.Message, StringComparison.Ordinal);
        Assert.Contains("the ground falls", error.Message, StringComparison.Ordinal);
        Assert.Equal("line.locked-gear-not-met", not.Objection(Nylon.Stiffness!.Value)!.Id);
        Assert.Null(LockedGearConditions.AllMet.Objection(Nylon.Stiffness!.Value));
    }

    [Theory]
    [InlineData(653.999, 0)]
    [InlineData(654, 0)]
    [InlineData(654.001, 1)]
    public void A_dropped_clutch_matters_on_low_stretch_lines(double kilonewtonsPerMetre, int objections) =>
        Assert.Equal(objections, (LockedGearConditions.AllMet with { ClutchEasedOrLineDrawnTaut = false }).NotMet(ForcePerLength.FromKilonewtonsPerMeter(kilonewtonsPerMetre)).Count);

    [Fact]
    public void The_line_loads_say_what_follows_from_them()
    {
        var line = ElasticLine.Of(LineMaterial.NylonWebbing, KN(588.399), M(9));
        string[] Ids(PullProcedure procedure) => LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), line, procedure).Findings().Select(f => f.Id).ToArray();
        var gear = PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2));
        Assert.Equal(["line.second-pull"], Ids(gear));
        Assert.Empty(Ids(gear with { SecondPull = false }));
        Assert.Equal(["line.locked-gear-not-met", "line.second-pull"], Ids(gear.WithGearConditions(LockedGearConditions.AllMet with { RimsCannotOverrun = false })));
        Assert.Equal(["line.procedure-undeclared", "line.second-pull"], Ids(PullProcedure.Undeclared));
        Assert.Equal(["line.run-up", "line.second-pull"], Ids(new PullProcedure { Slack = M(0.5) }));
        // The rule of a gear whose condition is broken does not count; the held anchor stands.
        var broken = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), line, gear.WithGearConditions(LockedGearConditions.AllMet with { RimsCannotOverrun = false }));
        Assert.Equal(LineLoadRule.HeldAnchor, broken.Rule);
        Assert.Equal(239.580, broken.ProcedurePeak.Kilonewtons, 0.001);
        Assert.Equal(broken.ProcedurePeak.Kilonewtons / 326.888333, broken.Stretch.Least.Meters, 1e-6);
        Assert.Equal(broken.ProcedurePeakSoft.Kilonewtons / 130.755333, broken.Stretch.Greatest.Meters, 1e-6);
    }

    [Fact]
    public void Explains_itself_and_refuses_what_has_no_meaning()
    {
        Assert.Equal("241.7 kN", TakeUp.ExplainHeld(Nylon, Kg(20000), KN(100), Speed.FromKilometersPerHour(5)).Steps[^1].Value);
        Assert.Equal("276.7 kN", BreakOut.Explain(Nylon, Kg(20000), KN(100), Speed.FromKilometersPerHour(10), Kg(30000), KN(150), KN(100)).Steps[^1].Value);
        Assert.Equal("200.9 kN", BreakOut.Explain(Nylon, Kg(20000), Force.Zero, Speed.FromKilometersPerHour(10), Kg(30000), KN(201), KN(100)).Steps[^1].Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => TakeUp.PeakHeld(Nylon, Kg(20000), KN(-1), Mps(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => TakeUp.PeakHeld(Nylon, Mass.Zero, KN(1), Mps(1)));
        Assert.Throws<ArgumentException>(() => TakeUp.PeakThrottle(Taut(Linear(9, 588399, 0.25), 0.1), Kg(20000), KN(1), Duration.FromSeconds(2)));
        Assert.Throws<ArgumentException>(() => BreakOut.Evaluate(Nylon, Kg(20000), Force.Zero, Speed.Zero, Kg(30000), KN(150), KN(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BreakOut.Evaluate(Nylon, Kg(20000), KN(10), Speed.Zero, Kg(30000), KN(150), KN(151)));
    }

    private static double Held(CheckRow row, string pull) => TakeUp.PeakHeld(Taut(Linear(row)), Kg(row.Si("m")), N(row.Si(pull)), Mps(row.Si("v"))).Peak!.Value.Newtons;

    private static LineAssembly Ratio(CheckRow row) => Taut(Linear(row.Si("L"), row.Si("MBS"), 1 / row.Si("EA_over_MBS")));

    private static void Limit(CheckRow row, SpeedLimit limit, string name, Func<Speed, Force> peak)
    {
        row.MatchesWord("admissible", limit.Exists ? "true" : "false");
        if (!limit.Exists) return;
        row.MatchesOne(name, limit.Highest!.Value.MetersPerSecond);
        Assert.Equal(row.Si("F_allow"), peak(limit.Highest!.Value).Newtons, row.Si("F_allow") * 1e-9);
    }
}
