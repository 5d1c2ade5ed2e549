using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

public class LineLoadTests
{
    private static readonly ElasticLine Nylon = ElasticLine.Of(LineMaterial.NylonWebbing, KN(588.399), M(9));

    [Fact]
    public void The_worked_plan_comes_out_side_by_side()
    {
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)));
        Assert.Equal(116, loads.Steady.Kilonewtons, 1e-9);
        Assert.Equal(158.615, loads.ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Equal(142.952, loads.ProcedurePeakSoft.Kilonewtons, 0.0005);
        Assert.Equal(366.450, loads.Careless.Kilonewtons, 0.0005);
        Assert.Equal(176.267, loads.SecondPull.Kilonewtons, 0.0005);
        Assert.Equal(450.656, loads.SecondPullCareless.Kilonewtons, 0.0005);
        Assert.Equal(78.1, loads.StoredEnergy.Kilojoules, 0.0501);
        Assert.Equal(LineLoadRule.LockedGear, loads.Rule);
    }

    [Fact]
    public void Nothing_declared_means_that_the_careless_load_is_the_procedure()
    {
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, PullProcedure.Undeclared);
        Assert.Equal(loads.Careless.Newtons, loads.ProcedurePeak.Newtons);
        Assert.Equal(LineLoadRule.Careless, loads.Rule);
    }

    [Theory]
    [InlineData(8, LineLoadRule.HeldAnchor)]
    [InlineData(2, LineLoadRule.LockedGear)]
    public void The_smaller_of_the_two_rules_counts(double kilometresPerHour, LineLoadRule rule)
    {
        // Rest, no slack, 326.888 kN/m, 18 t, 116 kN: held anchor 232 kN; locked gear 286.46 at 8 km/h, 158.62 at 2 km/h.
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(kilometresPerHour)) with { ApproachSpeed = Speed.Zero });
        Assert.Equal(rule, loads.Rule);
        Assert.Equal(rule == LineLoadRule.HeldAnchor ? 232 : 158.615, loads.ProcedurePeak.Kilonewtons, 0.0005);
    }

    [Theory]
    [InlineData(2.0, 50, 258.5364, 376.3265)]
    [InlineData(2.0, 300, 329.3998, 420.9472)]
    [InlineData(null, 50, 423.0080, 423.0080)]
    public void What_turns_counts_where_the_wheels_cannot_slip(double? gear, double tonnes, double procedure, double careless)
    {
        // k 326.8883 kN/m, 18 t, P 116 kN, m_r turning: 116 + sqrt(116^2 + k (18 + m_r) 0.55556^2), careless 116 + sqrt(116^2 + k 116 + k (18 1.38889^2 + m_r v^2)) with v no more than the gear has.
        var declared = gear is { } speed ? PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(speed)) : PullProcedure.Undeclared;
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, declared.WithRotatingMass(Mass.FromTonnes(tonnes)));
        Assert.Equal(procedure, loads.ProcedurePeak.Kilonewtons, 0.0001);
        Assert.Equal(careless, loads.Careless.Kilonewtons, 0.0001);
        Assert.Equal(gear is null ? LineLoadRule.Careless : LineLoadRule.HeldAnchor, loads.Rule);
        Assert.Equal(gear is not null, loads.Findings().Any(f => f.Id == "line.locked-gear-not-met" && f.Message.Contains("the wheels cannot slip", StringComparison.Ordinal)));
        Assert.Equal(loads.ProcedurePeak.Newtons, loads.WithLine(Nylon).ProcedurePeak.Newtons);
        Assert.Contains("turning", loads.Procedure.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Wheels_that_cannot_slip_without_what_turns_say_that_the_load_lacks_it()
    {
        var procedure = PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)) with { GearConditions = LockedGearConditions.AllMet with { WheelsCanSlip = false } };
        Assert.Contains("not in the load", Gear(procedure), StringComparison.Ordinal);
        Assert.DoesNotContain("not in the load", Gear(procedure.WithRotatingMass(Mass.FromTonnes(50))), StringComparison.Ordinal);
        Assert.Contains("RotatingMass", Assert.Throws<ArgumentOutOfRangeException>(() => procedure.WithRotatingMass(Mass.FromTonnes(20001))).Message, StringComparison.Ordinal);

        static string Gear(PullProcedure p) => LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, p).Findings().Single(f => f.Id == "line.locked-gear-not-met").Message;
    }

    [Fact]
    public void A_raised_throttle_takes_the_longest_period()
    {
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, new PullProcedure { Slack = Length.Zero, ThrottleRise = Duration.FromSeconds(5) });
        Assert.Equal(133.2157, loads.ProcedurePeak.Kilonewtons, 0.0001);
        Assert.Equal(LineLoadRule.RaisedThrottle, loads.Rule);
    }

    [Theory]
    [InlineData(null, 363.196, LineLoadRule.HeldAnchor)]
    [InlineData(0.0, 127.108, LineLoadRule.RaisedThrottle)]
    [InlineData(0.5, 363.196, LineLoadRule.HeldAnchor)]
    public void A_raised_throttle_alone_takes_no_slack_away(double? slack, double expected, LineLoadRule rule)
    {
        // 64 t of nylon, 9 m: k 348.681 and 139.472 kN/m. Through 0.5 m of slack from rest 122.7 + sqrt(122.7^2 + 2 x 348.681 x 122.7 x 0.5);
        // declared taut 122.7 (1 + 2.2572/(pi 20)), T = 2 pi sqrt(18/139.472).
        var loads = Of(LineMaterial.NylonWebbing, 64, new PullProcedure { Slack = slack is { } s ? M(s) : null, ThrottleRise = Duration.FromSeconds(20) });
        Assert.Equal(expected, loads.ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Equal(rule, loads.Rule);
    }

    [Theory]
    [InlineData(null, 1303.464, true)]
    [InlineData(0.5, 1303.464, true)]
    [InlineData(0.0, 246.943, false)]
    public void On_a_low_stretch_line_a_gear_counts_only_with_the_slack_gone_or_the_clutch_eased(double? slack, double expected, bool objects)
    {
        // 120 t of HMPE, 9 m: k 11114.2 kN/m. 122.7 + sqrt(122.7^2 + 2 x 11114.2 x 122.7 x 0.5 + 11114.2 x 18 x 0.27778^2), and 122.7 + 0.27778 sqrt(11114.2 x 18).
        var procedure = new PullProcedure { LockedGear = Speed.FromKilometersPerHour(1), Slack = slack is { } s ? M(s) : null };
        var loads = Of(LineMaterial.HmpeRope, 120, procedure);
        Assert.Equal(expected, loads.ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Equal(objects, loads.Findings().Any(f => f.Id == "line.locked-gear-not-met"));
        var eased = Of(LineMaterial.HmpeRope, 120, procedure.WithGearConditions(LockedGearConditions.AllMet));
        Assert.Equal(246.943, eased.ProcedurePeak.Kilonewtons, 0.0005);
        Assert.DoesNotContain(eased.Findings(), f => f.Id == "line.locked-gear-not-met");
    }

    [Theory]
    [InlineData(653.999, 160.2771)]
    [InlineData(654, 160.2771)]
    [InlineData(654.001, 381.1289)]
    public void Slack_that_nobody_declared_ends_the_gear_rule_above_654_kilonewtons_per_metre(double kilonewtonsPerMetre, double expected)
    {
        // 100 kN, 18 t, 2 km/h: 100 + 0.55556 sqrt(654 x 18) below; 100 + sqrt(100^2 + 2 x 654 x 100 x 0.5 + 654 x 18 x 0.55556^2) above. Each end of k by its own stiffness.
        var line = new ElasticLine(M(1), KN(300), KN(kilonewtonsPerMetre), LinearDensity.FromKilogramsPerMeter(2), LineMaterial.NylonWebbing.Source);
        var loads = LineLoads.Evaluate(KN(100), Mass.FromTonnes(18), line, new PullProcedure { LockedGear = Speed.FromKilometersPerHour(2), SecondPull = false });
        Assert.Equal(expected, loads.ProcedurePeak.Kilonewtons, 0.0002);
        Assert.Equal(140.8248, loads.ProcedurePeakSoft.Kilonewtons, 0.0001);
        Assert.Equal(expected > 200, loads.Findings().Any(f => f.Id == "line.locked-gear-not-met"));
    }

    [Fact]
    public void A_puller_that_may_face_downhill_claims_no_gear_and_keeps_that_on_another_line()
    {
        // 122.7 kN and 18 t on 10 % down: 140.264 kN. 140.264 + sqrt(140.264^2 + 348.681 x 18 x 0.55556^2); the gear would claim 184.277.
        var line = ElasticLine.Of(LineMaterial.NylonWebbing, KN(627.6256), M(9));
        var procedure = PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)).WithGearConditions(LockedGearConditions.AllMet);
        LineLoads Down(bool facesDownhill)
        {
            var input = LineLoads.InputOf(140264.37, 18000, 0, line, procedure, 2, facesDownhill);
            LineLoadKernel.Evaluate(input, out var output);
            return new LineLoads(line, procedure, input, output);
        }

        Assert.Equal(184.277, Down(false).ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Equal(287.272, Down(true).ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Equal(287.272, Down(true).WithLine(line).ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Contains("downhill", Down(true).Findings()[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_approach_faster_than_the_gear_is_a_run_up_on_the_held_anchor()
    {
        // Taut at 10 km/h into a gear of 2: simulated 216.8 kN, the rule would claim 158.6. 116 + sqrt(116^2 + 326.888 x 18 x 2.7778^2) bounds it.
        var into = PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)).WithApproachSpeed(Speed.FromKilometersPerHour(10));
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, into);
        Assert.Equal(358.605, loads.ProcedurePeak.Kilonewtons, 0.0005);
        Assert.Equal(["line.run-up", "line.locked-gear-not-met", "line.second-pull"], loads.Findings().Select(f => f.Id));
        Assert.False(into.WithApproachSpeed(Speed.FromKilometersPerHour(2)).IsRunUp);
    }

    [Theory]
    [InlineData(0.05, 0.22171)]
    [InlineData(0.1, 0.31086)]
    [InlineData(0.2, 0.43045)]
    [InlineData(0.6, 0.72039)]
    [InlineData(1, 0.86914)]
    [InlineData(6, 0.99999)]
    public void The_fitting_ratio_matches_its_table(double massRatio, double expected) => Assert.Equal(expected, RecoilKernel.FittingRatio(massRatio), 1.1e-5);

    [Fact]
    public void The_fitting_ratio_joins_where_its_closed_form_begins() => Assert.Equal(RecoilKernel.FittingRatio(0.175868), RecoilKernel.FittingRatio(0.175866), 1e-5);

    [Fact]
    public void Recoil_speed_does_not_depend_on_length_and_all_energy_becomes_motion()
    {
        var line = new ElasticLine(M(9), KN(2353.596), KN(2353.596), LinearDensity.FromKilogramsPerMeter(2), LineMaterial.NylonWebbing.Source);
        var longer = new ElasticLine(M(30), KN(2353.596), KN(2353.596), LinearDensity.FromKilogramsPerMeter(2), LineMaterial.NylonWebbing.Source);
        Assert.Equal(92.18, line.RecoilSpeed(KN(200)).MetersPerSecond, 0.005);
        Assert.Equal(line.RecoilSpeed(KN(200)).MetersPerSecond, longer.RecoilSpeed(KN(200)).MetersPerSecond, 1e-12);
        var v = line.RecoilSpeed(KN(200)).MetersPerSecond;
        Assert.Equal(1, 0.5 * 18 * v * v / line.StoredEnergy(KN(200)).Joules, 1e-12);
    }

    [Property]
    public Property A_peak_rises_with_speed_and_falls_with_length_and_never_undercuts_the_pull() => Prop.ForAll((from p in Gen.Choose(10, 200) from m in Gen.Choose(5, 40) from v in Gen.Choose(0, 30) from k in Gen.Choose(30, 4000) select (p * 1e3, m * 1e3, v / 10.0, k * 1e3)).ToArbitrary(), x =>
    {
        var (p, m, v, k) = x;
        var peak = TakeUpKernel.HeldPeak(p, k, m, v, 0);
        return peak >= 2 * p * (1 - 1e-12) && TakeUpKernel.HeldPeak(p, k, m, v + 0.1, 0) > peak && TakeUpKernel.HeldPeak(p, k / 2, m, v, 0) <= peak && TakeUpKernel.LockedGearPeak(p, k, m, v) >= p;
    });

    [Theory]
    [InlineData(0.3, 0, true)]
    [InlineData(0, 1, true)]
    [InlineData(0, 0, false)]
    public void Slack_or_speed_without_a_locked_gear_is_a_run_up(double slack, double speed, bool runUp) =>
        Assert.Equal(runUp, new PullProcedure { Slack = M(slack), ApproachSpeed = Speed.FromKilometersPerHour(speed) }.IsRunUp);

    [Theory]
    [InlineData(true, true, 1, false)]
    [InlineData(false, true, 1, true)]
    [InlineData(true, false, 1, true)]
    [InlineData(false, false, 0, false)]
    public void A_gear_that_does_not_hold_the_speed_is_no_gear(bool engaged, bool noOverrun, double slack, bool runUp)
    {
        var conditions = LockedGearConditions.AllMet with { EngagedBeforeTaut = engaged, RimsCannotOverrun = noOverrun };
        Assert.Equal(runUp, new PullProcedure { LockedGear = Speed.FromKilometersPerHour(1), Slack = M(slack), GearConditions = conditions }.IsRunUp);
    }

    private static LineLoads Of(LineMaterial material, double tonnes, PullProcedure procedure) =>
        LineLoads.Evaluate(KN(122.7), Mass.FromTonnes(18), ElasticLine.Of(material, KN(tonnes * 9.80665), M(9)), procedure);

    [Fact]
    public void The_careless_step_is_worked_with_the_mass_that_moves_at_its_speed()
    {
        // 10 t turning in a gear of 2 km/h count (2/5)^2 of themselves at 5 km/h: 18 + 1.6 = 19.6 t.
        var procedure = PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)).WithRotatingMass(Mass.FromTonnes(10));
        var step = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, procedure).Explain().Steps.Single(s => s.Symbol == "F_careless");
        Assert.Contains(" x 19.6 x ", step.Substitution, StringComparison.Ordinal);
    }

    [Fact]
    public void Explains_itself()
    {
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)));
        Assert.Equal("158.6 kN", loads.Explain().Steps[^1].Value);
        Assert.Equal(4, Nylon.Explain(KN(100)).Steps.Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => Nylon.StoredEnergy(KN(-1)));
    }
}
