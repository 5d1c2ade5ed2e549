using System;
using System.Linq;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class MaclaurinTests
{
    [Theory]
    [CheckRows("terramechanics", "maclaurin-limit")]
    public void Limiting_cone_index_matches(CheckRow row)
    {
        var result = MaclaurinModel.Instance.Evaluate(Wheels.Of(300, row.Si("W") / 1000, row.Si("b"), row.Si("d")), Length.FromMeters(row.Si("delta")));
        row.Matches(("MMP", result.MeanMaximumPressure.Pascals), ("CI_limit", result.LimitingConeIndex.Pascals));
    }

    [Theory]
    [CheckRows("terramechanics", "maclaurin-rut")]
    public void Rut_matches(CheckRow row) => row.Matches(("z", MaclaurinModel.Instance.Evaluate(Wheels.Of(row), Length.FromMeters(row.Si("delta"))).RutDepth.Meters));

    [Theory]
    [CheckRows("terramechanics-scipy", "maclaurin")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var result = MaclaurinModel.Instance.Evaluate(Wheels.Of(row), Length.FromMeters(row.Si("delta")));
        row.Matches(
            ("MMP", result.MeanMaximumPressure.Pascals),
            ("CI_limit", result.LimitingConeIndex.Pascals),
            ("z", result.RutDepth.Meters),
            ("z_m", MaclaurinModel.Instance.RutDepthAfter(result.RutDepth, (int)row.Si("passes"), row.Si("a")).Meters),
            ("MR", result.MotionResistance.Newtons),
            ("VCI1", result.OnePass.Pascals));
        var rut = new double[1];
        var go = new bool[1];
        MaclaurinModel.Instance.RutDepth([row.Si("CI") / 1000], [row.Si("W") / 1000], row.Si("b"), row.Si("d"), row.Si("delta"), rut, go);
        row.MatchesOne("z", rut[0]);
        Assert.Equal(result.Go, go[0]);
    }

    [Fact]
    public void The_batch_refuses_bad_spans()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MaclaurinModel.Instance.RutDepth([double.NaN], [30], 0.6, 1.6, 0.08, new double[1], new bool[1]));
        Assert.Throws<ArgumentException>(() => MaclaurinModel.Instance.RutDepth([300], [30], 0.6, 1.6, 0.08, new double[2], new bool[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MaclaurinModel.Instance.RutDepth([300], [30], 0.6, 1.6, 0, new double[1], new bool[1]));
    }

    [Theory]
    [InlineData(-1e-6, false)]
    [InlineData(1e-6, true)]
    public void Goes_from_the_limiting_index_on(double step, bool go)
    {
        var limit = MaclaurinModel.Instance.Evaluate(Wheels.Of(300, 30), Length.FromMeters(0.08)).LimitingConeIndex.Kilopascals;
        var result = MaclaurinModel.Instance.Evaluate(Wheels.Of(limit + step, 30), Length.FromMeters(0.08));
        Assert.Equal(go, result.Go);
        Assert.Equal(!go, result.Flags.Any(f => f.Limit.Symbol == "N"));
    }

    [Theory]
    [InlineData(1.89, true)] // z/d = 0.224 N^-1.25 is a tenth at N 1.906
    [InlineData(1.92, false)]
    public void Flags_a_rut_deeper_than_a_tenth_of_the_diameter(double numeric, bool flagged)
    {
        var pressure = MaclaurinModel.Instance.Evaluate(Wheels.Of(300, 30), Length.FromMeters(0.08)).MeanMaximumPressure.Kilopascals;
        var result = MaclaurinModel.Instance.Evaluate(Wheels.Of(numeric * pressure, 30), Length.FromMeters(0.08));
        Assert.Equal(flagged ? ["z/d"] : [], result.Flags.Select(f => f.Limit.Symbol));
    }

    [Theory]
    [InlineData(60, false)]
    [InlineData(60.001, true)]
    public void Flags_a_load_beyond_the_tests(double load, bool flagged) =>
        Assert.Equal(flagged ? ["W"] : [], MaclaurinModel.Instance.Evaluate(Wheels.Of(2000, load), Length.FromMeters(0.08)).Flags.Select(f => f.Limit.Symbol));

    [Fact]
    public void One_pass_leaves_the_rut_as_it_is() => Assert.Equal(0.1, MaclaurinModel.Instance.RutDepthAfter(Length.FromMeters(0.1), 1, 3).Meters, 12);

    [Theory]
    [InlineData(0, 3)]
    [InlineData(5, 1.9)]
    [InlineData(5, 5.1)]
    public void Refuses_passes_and_exponents_outside_their_range(int passes, double exponent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MaclaurinModel.Instance.RutDepthAfter(Length.FromMeters(0.1), passes, exponent));

    [Fact]
    public void Explains_down_to_the_rut()
    {
        var wheel = Wheels.Of(400, 98.1, 0.90, 2.05);
        var working = MaclaurinModel.Instance.Explain(wheel, Length.FromMeters(0.110));
        Assert.Equal("0.1295 m", working.Steps[^1].Value);
        Assert.Equal("145.3 kPa", working.Steps[0].Value);
    }
}
