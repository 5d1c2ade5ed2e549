using System.Linq;
using MathNet.Numerics;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class GeeCloughTests
{
    [Theory]
    [CheckRows("terramechanics", "clay-numeric")]
    public void Numeric_matches(CheckRow row) => row.Matches(("M", WesClayModel.NumericOf(Wheels.Of(row))));

    /// <summary>The published table of the 9.5x24 drive tyre: it pins all six constants.</summary>
    [Theory]
    [CheckRows("terramechanics", "gee-clough-table")]
    public void Returns_the_published_table(CheckRow row)
    {
        var m = WesClayModel.NumericOf(Wheels.Of(row));
        foreach (var name in row.ExpectedNames)
        {
            row.MatchesOne(name, name switch
            {
                "CTmax" => ClayNumericKernel.GreatestTraction(m),
                "kCTmax" => ClayNumericKernel.RateProduct(m),
                "CRR" => ClayNumericKernel.RollingResistance(m),
                _ => BestEfficiency(m),
            });
        }
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "gee-clough")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var result = GeeCloughModel.Instance.Evaluate(Wheels.Of(row), Wheels.Slip(row.Si("s")));
        row.Matches(("M", result.Numeric), ("MR", result.MotionResistance!.Value.Newtons), ("NT", result.NetTraction!.Value.Newtons), ("GT", result.GrossTraction!.Value.Newtons));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "gee-clough-efficiency")]
    public void Best_efficiency_agrees_with_SciPy(CheckRow row) => row.Matches(("eta_max", BestEfficiency(row.Si("M"))));

    [Fact]
    public void Efficiency_of_the_kernel_is_the_tractive_efficiency_of_the_result()
    {
        var result = GeeCloughModel.Instance.Evaluate(Wheels.Of(600, 30), Wheels.Slip(0.15));
        Assert.Equal(ClayNumericKernel.Efficiency(result.Numeric, 0.15), result.TractiveEfficiency!.Value, 12);
    }

    [Fact]
    public void The_ceiling_stands_where_it_is_not_positive_and_joins_without_a_step()
    {
        const double Zero = 0.92 / 0.796;
        Assert.Equal(0, ClayNumericKernel.CoefficientOfTraction(Zero, 0.3), 12);
        Assert.InRange(ClayNumericKernel.CoefficientOfTraction(Zero * (1 + 1e-9), 0.3), 0, 1e-8);
        Assert.InRange(ClayNumericKernel.CoefficientOfTraction(Zero * (1 - 1e-9), 0.3), -1e-8, 0);
        Assert.Equal(0.796 - 0.92, ClayNumericKernel.CoefficientOfTraction(1, 0.3), 12);
    }

    [Theory]
    [InlineData(3.001, 30, "")]
    [InlineData(2.999, 30, "M")]
    [InlineData(3.001, 60.001, "W")]
    public void Flags_each_limit(double numeric, double load, string flagged)
    {
        var index = numeric / WesClayModel.NumericOf(Wheels.Of(1, load));
        Assert.Equal(flagged.Length == 0 ? [] : [flagged], GeeCloughModel.Instance.Evaluate(Wheels.Of(index, load), Wheels.Slip(0)).Flags.Select(f => f.Limit.Symbol));
    }

    private static double BestEfficiency(double numeric) =>
        ClayNumericKernel.Efficiency(numeric, FindMinimum.OfScalarFunctionConstrained(s => -ClayNumericKernel.Efficiency(numeric, s), 1e-3, 0.9, 1e-7));
}
