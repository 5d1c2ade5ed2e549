using System.Linq;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class WismerLuthTests
{
    [Theory]
    [CheckRows("terramechanics", "wismer-luth-numeric")]
    public void Numeric_matches(CheckRow row) => row.Matches(("Cn", WismerLuthKernel.Numeric(row.Si("CI"), row.Si("b"), row.Si("d"), row.Si("W"))));

    [Theory]
    [CheckRows("terramechanics", "wismer-luth-towed")]
    public void Towed_force_matches(CheckRow row) => row.Matches(("TF", row.Si("W") * WismerLuthKernel.MotionResistanceRatio(row.Si("Cn"))));

    [Theory]
    [CheckRows("terramechanics", "wismer-luth-ratios")]
    public void Ratios_match(CheckRow row)
    {
        double cn = row.Si("Cn"), gross = WismerLuthKernel.GrossTractionRatio(cn, row.Si("s"));
        row.Matches(("GTR", gross), ("NTR", gross - WismerLuthKernel.MotionResistanceRatio(cn)));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "wismer-luth")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var result = WismerLuthModel.Instance.Evaluate(Wheels.Of(row), Wheels.Slip(row.Si("s")));
        row.Matches(("MR", result.MotionResistance!.Value.Newtons), ("GT", result.GrossTraction!.Value.Newtons), ("NT", result.NetTraction!.Value.Newtons));
    }

    [Theory]
    [InlineData(5.0, 0.31, -1)] // 30 kN on 0.6 m x 2 m: C_n = CI/25
    [InlineData(5.0, 0.33, 1)]
    public void At_numeric_five_net_traction_needs_more_than_a_third_of_slip(double numeric, double slip, int sign)
    {
        var result = WismerLuthModel.Instance.Evaluate(Wheels.Of(numeric * 25, 30, 0.6, 2.0, 0.2), Wheels.Slip(slip));
        Assert.Equal(numeric, result.Numeric, 12);
        Assert.Equal(sign, System.Math.Sign(result.NetTractionRatio!.Value));
    }

    [Theory]
    [InlineData(0.6, 2.0, 0.20, 30, 500, 0.30, "")]
    [InlineData(0.39, 2.0, 0.20, 30, 500, 0.30, "b/d")]
    [InlineData(0.81, 2.0, 0.20, 30, 500, 0.30, "b/d")]
    [InlineData(0.6, 2.0, 0.12, 30, 500, 0.30, "delta/h")]
    [InlineData(0.6, 2.0, 0.28, 30, 500, 0.30, "delta/h")]
    [InlineData(0.6, 2.0, 0.20, 30, 124, 0.30, "C_n")]
    [InlineData(0.6, 2.0, 0.20, 61, 500, 0.30, "W")]
    [InlineData(0.6, 2.0, 0.20, 30, 500, 0.31, "s")]
    public void Flags_each_limit(double b, double d, double dh, double load, double coneIndex, double slip, string flagged) =>
        Assert.Equal(flagged.Length == 0 ? [] : [flagged], WismerLuthModel.Instance.Evaluate(Wheels.Of(coneIndex, load, b, d, dh), Wheels.Slip(slip)).Flags.Select(f => f.Limit.Symbol));
}
