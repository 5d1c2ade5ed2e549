using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class BrixiusTests
{
    [Theory]
    [CheckRows("terramechanics", "brixius")]
    public void Matches_the_check_values(CheckRow row)
    {
        var wheel = Wheel(row.Si("CI") / 1000, row.Si("W") / 1000, row.Si("b"), row.Si("d"), row.Si("dh"));
        var result = (row.Word("constants") == "radial" ? BrixiusModel.Radial : BrixiusModel.Bias).Evaluate(wheel, Ratio.FromDecimalFractions(row.Si("s")));
        row.Matches(("Bn", result.Numeric), ("GTR", result.GrossTractionRatio!.Value), ("MRR", result.MotionResistanceRatio!.Value), ("NT", result.NetTraction!.Value.Newtons));
    }

    [Theory]
    [CheckRows("terramechanics", "brixius-numeric")]
    public void Wheel_numeric_matches(CheckRow row) => row.Matches(("Bn", BrixiusKernel.Numeric(row.Si("CI"), row.Si("b"), row.Si("d"), row.Si("dh"), row.Si("W"))));

    [Theory]
    [CheckRows("terramechanics", "brixius-wheel")]
    public void Ratios_of_a_wheel_match(CheckRow row)
    {
        var result = BrixiusModel.Bias.Evaluate(Wheels.Of(row), Wheels.Slip(row.Si("s")));
        row.Matches(("GTR", result.GrossTractionRatio!.Value), ("MRR", result.MotionResistanceRatio!.Value), ("NTR", result.NetTractionRatio!.Value), ("TE", result.TractiveEfficiency!.Value));
    }

    [Theory]
    [CheckRows("terramechanics", "brixius-resistance")]
    public void Resistance_matches(CheckRow row) => row.Matches(("rho", BrixiusKernel.MotionResistanceRatio(row.Si("Bn"), row.Si("s"), BrixiusConstants.Bias)));

    /// <summary>The table of ratios at six numerics and four slips, at its printed three decimals.</summary>
    [Theory]
    [CheckRows("terramechanics", "brixius-table")]
    public void The_table_of_ratios_matches(CheckRow row)
    {
        double bn = row.Si("Bn"), s = row.Si("s"), gross = BrixiusKernel.GrossTractionRatio(bn, s, BrixiusConstants.Bias), resistance = BrixiusKernel.MotionResistanceRatio(bn, s, BrixiusConstants.Bias);
        foreach (var name in row.ExpectedNames)
            row.MatchesOne(name, name switch { "GTR" => gross, "MRR" => resistance, "NTR" => gross - resistance, _ => (gross - resistance) / gross * (1 - s) });
    }

    [Theory]
    [InlineData(60, false)]
    [InlineData(60.001, true)]
    public void Flags_a_load_beyond_the_tests(double loadKilonewtons, bool flagged) =>
        Assert.Equal(flagged ? ["W"] : [], BrixiusModel.Bias.Evaluate(Wheel(2000, loadKilonewtons, 0.80, 2.0), Ratio.Zero).Flags.Select(f => f.Limit.Symbol));

    [Theory]
    [CheckRows("terramechanics", "brixius-force")]
    public void Forces_match(CheckRow row)
    {
        var result = BrixiusModel.Bias.Evaluate(Wheel(row.Si("CI") / 1000, row.Si("W") / 1000, row.Si("b"), row.Si("d"), row.Si("dh")), Ratio.FromDecimalFractions(row.Si("s")));
        row.Matches(("NT", result.NetTraction!.Value.Newtons), ("GT", result.GrossTraction!.Value.Newtons), ("MR", result.MotionResistance!.Value.Newtons));
    }

    [Theory]
    [CheckRows("terramechanics", "brixius-bias")]
    public void Bias_ratios_match(CheckRow row) => Ratios(row, BrixiusConstants.Bias);

    [Theory]
    [CheckRows("terramechanics", "brixius-radial")]
    public void Radial_ratios_match(CheckRow row) => Ratios(row, BrixiusConstants.Radial);

    [Theory]
    [CheckRows("terramechanics", "brixius-mobility-limit")]
    public void Mobility_limit_matches(CheckRow row)
    {
        // The numeric at which the greatest net traction over all slips of one driven wheel is zero.
        var constants = row.Word("constants") == "radial" ? BrixiusConstants.Radial : BrixiusConstants.Bias;
        double low = 3, high = 6;
        for (var i = 0; i < 60; i++)
        {
            var middle = 0.5 * (low + high);
            var sum = default(TractionSum);
            sum.Add(middle, 1, driven: true, constants);
            if (sum.At(sum.BestSlip(1, constants), constants) < 0) low = middle;
            else high = middle;
        }

        row.Matches(("Bn", high));
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(1.001)]
    public void Refuses_slip_outside_0_to_1_with_words(double slip)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => BrixiusModel.Bias.Evaluate(Wheel(900, 30), Ratio.FromDecimalFractions(slip)));
        Assert.Equal("slip", refusal.ParamName);
        Assert.Contains("from 0 to 1", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(121, false)]
    [InlineData(109, true)]
    public void Flags_a_wheel_numeric_below_five(double coneIndexKilopascals, bool flagged)
    {
        // b 0.65, d 1.90, delta/h 0.25, 30 kN: B_n = CI/21.876, so 5 lies at 109.4 kPa.
        var result = BrixiusModel.Bias.Evaluate(Wheel(coneIndexKilopascals, 30), Ratio.Zero);
        Assert.Equal(flagged ? ["B_n"] : [], result.Flags.Select(f => f.Limit.Symbol));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void Batch_refuses_a_bad_element_by_its_place_and_writes_nothing(double coneIndexKilopascals)
    {
        double[] batch = [7, 7];
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => BrixiusModel.Bias.NetTraction([900, coneIndexKilopascals], [30, 30], 0.65, 1.9, 0.25, 0.2, batch));
        Assert.Contains("coneIndexKilopascals[1]", refusal.Message, StringComparison.Ordinal);
        Assert.Equal([7, 7], batch);
    }

    [Property]
    public Property Worse_ground_never_helps() => Prop.ForAll(Wheels.Any(), w =>
    {
        var better = BrixiusModel.Bias.Evaluate(w with { ConeIndex = w.ConeIndex * 1.1 }, Ratio.FromDecimalFractions(0.2));
        var worse = BrixiusModel.Bias.Evaluate(w, Ratio.FromDecimalFractions(0.2));
        return better.MotionResistance <= worse.MotionResistance && better.NetTraction >= worse.NetTraction;
    });

    [Property]
    public Property The_soft_term_goes_with_load_squared() => Prop.ForAll(Wheels.Any(), w =>
    {
        double Soft(double factor)
        {
            var result = BrixiusModel.Bias.Evaluate(w with { Load = w.Load * factor }, Ratio.Zero);
            return result.MotionResistance!.Value.Newtons - (0.04 * result.Load.Newtons);
        }

        return Math.Abs((Soft(0.5) * 4 / Soft(1)) - 1) < 1e-9;
    });

    [Property]
    public Property The_three_layers_agree() => Prop.ForAll(Wheels.Any(), w =>
    {
        var typed = BrixiusModel.Radial.Evaluate(w, Ratio.FromDecimalFractions(0.15));
        var batch = new double[1];
        BrixiusModel.Radial.NetTraction([w.ConeIndex.Kilopascals], [w.Load.Kilonewtons], w.SectionWidth.Meters, w.OverallDiameter.Meters, w.DeflectionRatio.DecimalFractions, 0.15, batch);
        return Math.Abs(batch[0] - typed.NetTraction!.Value.Kilonewtons) <= 1e-12 * typed.Load.Kilonewtons;
    });

    [Fact]
    public void Explains_with_the_numbers_put_in()
    {
        var working = BrixiusModel.Bias.Explain(Wheel(900, 30), Ratio.FromDecimalFractions(0.2));
        Assert.Equal("41.14", working.Steps[0].Value);
        Assert.Equal("NT", working.Steps[^1].Symbol);
        Assert.Equal("18.98 kN", working.Steps[^1].Value);
    }

    private static void Ratios(CheckRow row, BrixiusConstants constants)
    {
        double bn = row.Si("Bn"), s = row.Si("s"), gross = BrixiusKernel.GrossTractionRatio(bn, s, constants), resistance = BrixiusKernel.MotionResistanceRatio(bn, s, constants);
        row.Matches(("GTR", gross), ("MRR", resistance), ("NTR", BrixiusKernel.NetTractionRatio(bn, s, constants)), ("TE", (gross - resistance) / gross * (1 - s)));
    }

    private static WheelOnSoil Wheel(double coneIndexKilopascals, double loadKilonewtons, double b = 0.65, double d = 1.90, double dh = 0.25) => Wheels.Of(coneIndexKilopascals, loadKilonewtons, b, d, dh);
}
