using System;
using System.Linq;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class VtiFineSoilTests
{
    [Theory]
    [CheckRows("terramechanics", "vti-fine")]
    public void Matches_the_check_values(CheckRow row)
    {
        var wheel = Wheels.Of(row);
        var result = VtiFineSoilModel.Instance.Evaluate(wheel, Wheels.Slip(row.Si("s")));
        row.Matches(("Nv", result.Numeric), ("s0", VtiFineSoilModel.Instance.SlipOfZeroTraction(wheel).DecimalFractions), ("GTR", result.GrossTractionRatio!.Value), ("MRR", result.MotionResistanceRatio!.Value), ("NTR", result.NetTractionRatio!.Value));
    }

    [Theory]
    [CheckRows("terramechanics", "vti-fine-no-drive")]
    public void Says_no_drive(CheckRow row)
    {
        var wheel = Wheels.Of(row);
        var result = VtiFineSoilModel.Instance.Evaluate(wheel, Wheels.Slip(row.Si("s")));
        row.MatchesOne("Nv", result.Numeric);
        row.MatchesOne("s0", VtiFineSoilModel.Instance.SlipOfZeroTraction(wheel).DecimalFractions);
        row.MatchesOne("MRR", result.MotionResistanceRatio!.Value);
        row.MatchesWord("drive", result.Outcome == WheelOutcome.NoDrive ? "false" : "true");
        Assert.Null(result.NetTraction);
        Assert.Equal("no drive", VtiFineSoilModel.Instance.Explain(wheel, Wheels.Slip(row.Si("s"))).Steps[^1].Value);
    }

    [Theory]
    [CheckRows("terramechanics", "vti-fine-resistance")]
    public void Resistance_matches(CheckRow row) => row.Matches(("R_over_W", VtiKernel.MotionResistanceRatio(row.Si("N_v"))));

    [Theory]
    [CheckRows("terramechanics", "vti-fine-numeric")]
    public void Numeric_matches(CheckRow row)
    {
        var result = VtiFineSoilModel.Instance.Evaluate(Wheels.Of(row), Wheels.Slip(0));
        row.Matches(("N_v", result.Numeric), ("R_over_W", result.MotionResistanceRatio!.Value));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "vti-fine")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var wheel = Wheels.Of(row);
        var result = VtiFineSoilModel.Instance.Evaluate(wheel, Wheels.Slip(row.Si("s")));
        row.Matches(("s0", VtiFineSoilModel.Instance.SlipOfZeroTraction(wheel).DecimalFractions), ("MR", result.MotionResistance!.Value.Newtons), ("GT", result.GrossTraction!.Value.Newtons), ("NT", result.NetTraction!.Value.Newtons));
    }

    [Theory]
    [InlineData(-1e-9, WheelOutcome.NoDrive)]
    [InlineData(0, WheelOutcome.NoDrive)]
    [InlineData(1e-9, WheelOutcome.Rolls)]
    public void Drives_only_above_s0(double step, WheelOutcome outcome)
    {
        var wheel = Wheels.Of(400, 98.1, 0.90, 2.05, 0.20);
        var zero = VtiFineSoilModel.Instance.SlipOfZeroTraction(wheel).DecimalFractions;
        var result = VtiFineSoilModel.Instance.Evaluate(wheel, Wheels.Slip(zero + step));
        Assert.Equal(outcome, result.Outcome);
        if (outcome == WheelOutcome.Rolls) Assert.InRange(result.GrossTractionRatio!.Value, 0, 1e-7);
    }

    [Fact]
    public void The_flagged_numeric_is_where_the_wheel_drives_at_the_planning_slip() => Assert.Equal(5.47, Math.Pow(21 / CriticalIndexKernel.PlanningSlip, 0.4), 2);

    [Theory]
    [InlineData(5.48, 30, "")]
    [InlineData(5.46, 30, "N_v")]
    [InlineData(5.48, 60.001, "W")]
    public void Flags_each_limit(double numeric, double load, string flagged)
    {
        var index = numeric / VtiFineSoilModel.Instance.Evaluate(Wheels.Of(1, load), Wheels.Slip(0)).Numeric;
        Assert.Equal(flagged.Length == 0 ? [] : [flagged], VtiFineSoilModel.Instance.Evaluate(Wheels.Of(index, load), Wheels.Slip(0)).Flags.Select(f => f.Limit.Symbol));
    }
}
