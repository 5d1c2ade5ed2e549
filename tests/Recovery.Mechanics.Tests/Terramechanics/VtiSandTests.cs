using System;
using System.Linq;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class VtiSandTests
{
    [Theory]
    [CheckRows("terramechanics", "vti-sand-ratio")]
    public void Ratio_matches(CheckRow row)
    {
        row.Matches(("Y", VtiKernel.SandSlipTerm(row.Si("s"))), ("GTR", VtiKernel.SandGrossTractionRatio(row.Si("Ns"), row.Si("s"))));
        var batch = new double[1];
        VtiSandModel.Instance.GrossTraction(row.Si("Ns"), [row.Si("s")], batch);
        row.MatchesOne("GTR", batch[0]);
    }

    [Theory]
    [CheckRows("terramechanics", "vti-sand")]
    public void A_wheel_matches(CheckRow row)
    {
        var r = VtiSandModel.Instance.Evaluate(Wheels.Of(row), Wheels.Slip(row.Si("s")));
        row.Matches(("G", r.GradientKilopascalsPerMetre * 1000), ("Ns", r.Numeric), ("GTR", r.GrossTractionRatio));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "vti-sand")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var wheel = Wheels.Of(row);
        var r = VtiSandModel.Instance.Evaluate(wheel, Wheels.Slip(row.Si("s")));
        row.Matches(("Ns", r.Numeric), ("GT", r.GrossTraction.Newtons));
        Assert.Equal(r.GrossTractionRatio, VtiSandModel.Instance.Evaluate(wheel, r.GradientKilopascalsPerMetre, Wheels.Slip(row.Si("s"))).GrossTractionRatio, 12);
        Assert.Equal(r.GrossTraction.Kilonewtons, double.Parse(VtiSandModel.Instance.Explain(wheel, Wheels.Slip(row.Si("s"))).Steps[^1].Value.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 0.01);
    }

    [Fact]
    public void No_slip_no_traction() => Assert.Equal(0, VtiSandModel.Instance.Evaluate(Wheels.Of(400, 30), Wheels.Slip(0)).GrossTractionRatio);

    [Theory]
    [InlineData(60, 0.3, "")]
    [InlineData(60.001, 0.3, "W")]
    [InlineData(60, 0.301, "s")]
    public void Flags_each_limit(double load, double slip, string flagged) =>
        Assert.Equal(flagged.Length == 0 ? [] : [flagged], VtiSandModel.Instance.Evaluate(Wheels.Of(900, load), Wheels.Slip(slip)).Flags.Select(f => f.Limit.Symbol));

    [Fact]
    public void Refuses_a_bad_gradient() => Assert.Throws<ArgumentOutOfRangeException>(() => VtiSandModel.Instance.Evaluate(Wheels.Of(400, 30), 0, Wheels.Slip(0.1)));
}
