using System;
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

    [Fact]
    public void A_raised_throttle_takes_the_longest_period()
    {
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, new PullProcedure { Slack = Length.Zero, ThrottleRise = Duration.FromSeconds(5) });
        Assert.Equal(133.2157, loads.ProcedurePeak.Kilonewtons, 0.0001);
        Assert.Equal(LineLoadRule.RaisedThrottle, loads.Rule);
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

    [Fact]
    public void Explains_itself()
    {
        var loads = LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), Nylon, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)));
        Assert.Equal("158.6 kN", loads.Explain().Steps[^1].Value);
        Assert.Equal(4, Nylon.Explain(KN(100)).Steps.Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => Nylon.StoredEnergy(KN(-1)));
    }
}
