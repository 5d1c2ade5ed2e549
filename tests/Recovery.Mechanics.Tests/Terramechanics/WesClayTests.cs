using System.Linq;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class WesClayTests
{
    [Theory]
    [CheckRows("terramechanics-scipy", "wes-clay")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var result = WesClayModel.Instance.Evaluate(Wheels.Of(row), Wheels.Slip(0));
        row.Matches(("Nc", result.Numeric), ("MR", result.MotionResistance!.Value.Newtons));
    }

    [Theory]
    [InlineData(2.5 - 1e-9, WheelOutcome.Immobile)]
    [InlineData(2.5 + 1e-9, WheelOutcome.Rolls)]
    public void At_the_pole_there_is_no_number(double numeric, WheelOutcome outcome)
    {
        var result = WesClayModel.Instance.Evaluate(Wheels.Of(numeric / WesClayModel.NumericOf(Wheels.Of(1, 30)), 30), Wheels.Slip(0));
        Assert.Equal(outcome, result.Outcome);
        Assert.Equal(outcome == WheelOutcome.Immobile, result.MotionResistance is null);
        Assert.Null(result.NetTraction);
        Assert.Equal(["N_c"], result.Flags.Select(f => f.Limit.Symbol));
    }

    [Fact]
    public void Below_the_pole_the_working_says_immobile()
    {
        var wheel = Wheels.Of(200, 98.1, 0.90, 2.05, 0.20);
        Assert.Equal("immobile", WesClayModel.Instance.Explain(wheel, Wheels.Slip(0)).Steps[^1].Value);
        Assert.Contains("immobile", WesClayModel.Instance.Evaluate(wheel, Wheels.Slip(0)).ToString(), System.StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3.001, 30, "")]
    [InlineData(2.999, 30, "N_c")]
    [InlineData(3.001, 60.001, "W")]
    public void Flags_each_limit(double numeric, double load, string flagged)
    {
        var index = numeric / WesClayModel.NumericOf(Wheels.Of(1, load));
        Assert.Equal(flagged.Length == 0 ? [] : [flagged], WesClayModel.Instance.Evaluate(Wheels.Of(index, load), Wheels.Slip(0)).Flags.Select(f => f.Limit.Symbol));
    }
}
