using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

/// <summary>The batch over many soils against the typed model and the kernel, in every vector width.</summary>
public class BrixiusBatchTests
{
    private static readonly double[] Index = Enumerable.Range(0, 203).Select(i => 5 * Math.Pow(1.041, i)).ToArray();
    private static readonly double[] Load = Enumerable.Range(0, 203).Select(i => 3 + ((i * 37) % 90)).Select(x => (double)x).ToArray();

    [Theory]
    [InlineData(0)]
    [InlineData(0.15)]
    [InlineData(1)]
    public void Every_element_is_that_of_the_typed_model(double slip)
    {
        foreach (var batch in new[] { BrixiusBatch.Bias, BrixiusBatch.Radial })
        {
            double[] net = new double[Index.Length], resistance = new double[Index.Length], single = new double[Index.Length];
            batch.NetTraction(Index, Load, 0.65, 1.9, 0.2, slip, net);
            batch.MotionResistance(Index, Load, 0.65, 1.9, 0.2, slip, resistance);
            batch.NetTraction(Index, [40], 0.65, 1.9, 0.2, slip, single);
            for (var i = 0; i < Index.Length; i++)
            {
                var typed = batch.Model.Evaluate(Wheel(Index[i], Load[i]), Ratio.FromDecimalFractions(slip));
                Close(typed.MotionResistance!.Value.Kilonewtons, resistance[i], typed.MotionResistance!.Value.Kilonewtons);
                Close(typed.NetTraction!.Value.Kilonewtons, net[i], typed.MotionResistance!.Value.Kilonewtons);
                var one = batch.Model.Evaluate(Wheel(Index[i], 40), Ratio.FromDecimalFractions(slip));
                Close(one.NetTraction!.Value.Kilonewtons, single[i], one.MotionResistance!.Value.Kilonewtons);
            }
        }
    }

#if NET
    [Fact]
    public void Every_width_gives_the_kernel()
    {
        var shape = BrixiusKernel.Numeric(1, 0.65, 1.9, 0.2, 1);
        foreach (var count in new[] { 1, 2, 3, 7, 8, 9, 15, 16, 203 })
        {
            foreach (var net in new[] { true, false })
            {
                double[] wide = new double[count], middle = new double[count], narrow = new double[count];
                BrixiusLanes.Run<Lanes512>(Index.AsSpan(0, count), Load.AsSpan(0, count), shape, 0.2, BrixiusConstants.Bias, net, wide);
                BrixiusLanes.Run<Lanes256>(Index.AsSpan(0, count), Load.AsSpan(0, count), shape, 0.2, BrixiusConstants.Bias, net, middle);
                BrixiusLanes.Run<Lanes128>(Index.AsSpan(0, count), Load.AsSpan(0, count), shape, 0.2, BrixiusConstants.Bias, net, narrow);
                for (var i = 0; i < count; i++)
                {
                    var numeric = Index[i] * shape / Load[i];
                    double resistance = Load[i] * BrixiusKernel.MotionResistanceRatio(numeric, 0.2, BrixiusConstants.Bias), expected = net ? Load[i] * BrixiusKernel.NetTractionRatio(numeric, 0.2, BrixiusConstants.Bias) : resistance;
                    Close(expected, wide[i], resistance);
                    Close(expected, middle[i], resistance);
                    Close(expected, narrow[i], resistance);
                }
            }
        }
    }

    [Fact]
    public void The_exponential_of_lanes_is_that_of_the_runtime()
    {
        var x = new double[8];
        var y = new double[8];
        for (var i = -700.0; i <= 700; i += 0.37)
        {
            for (var k = 0; k < 8; k++) x[k] = i + (k * 0.04);
            if (x[7] > 700) break;
            LaneMath.Exp(Lanes512.Read(ref x[0], 0)).Write(ref y[0], 0);
            for (var k = 0; k < 8; k++) Assert.True(Math.Abs((y[k] / Math.Exp(x[k])) - 1) < 1e-15, FormattableString.Invariant($"{x[k]}"));
        }

        LaneMath.Exp(Lanes512.Of(0)).Write(ref y[0], 0);
        Assert.Equal(1, y[3]);
        LaneMath.Exp(Lanes512.Of(-5000)).Write(ref y[0], 0);
        Assert.InRange(y[0], 0, 1e-300);
    }
#endif

    [Fact]
    public void The_result_may_take_the_place_of_the_input()
    {
        double[] expected = new double[Index.Length], own = [.. Index];
        BrixiusBatch.Bias.NetTraction(Index, Load, 0.65, 1.9, 0.2, 0.2, expected);
        BrixiusBatch.Bias.NetTraction(own, Load, 0.65, 1.9, 0.2, 0.2, own);
        Assert.Equal(expected, own);
    }

    [Property]
    public bool Firmer_soil_never_pulls_less(PositiveInt index, PositiveInt load)
    {
        double ci = 1 + (index.Get % 5000), w = 1 + (load.Get % 80);
        double[] result = new double[2];
        BrixiusBatch.Radial.NetTraction([ci, 1.1 * ci], [w], 0.7, 1.8, 0.2, 0.2, result);
        return result[1] > result[0];
    }

    [Fact]
    public void Nothing_is_written_where_an_element_is_refused()
    {
        double[] result = [7, 7];
        Assert.Throws<ArgumentOutOfRangeException>(() => BrixiusBatch.Bias.NetTraction([100, double.NaN], [40], 0.65, 1.9, 0.2, 0.2, result));
        Assert.Throws<ArgumentOutOfRangeException>(() => BrixiusBatch.Bias.NetTraction([100, 200], [40, 0], 0.65, 1.9, 0.2, 0.2, result));
        Assert.Throws<ArgumentOutOfRangeException>(() => BrixiusBatch.Bias.MotionResistance([100, 200], [40], 0.65, 1.9, 0.2, 1.2, result));
        Assert.Throws<ArgumentException>(() => BrixiusBatch.Bias.NetTraction([100, 200, 300], [40], 0.65, 1.9, 0.2, 0.2, result));
        Assert.Throws<ArgumentException>(() => BrixiusBatch.Bias.NetTraction([100, 200], [40, 40, 40], 0.65, 1.9, 0.2, 0.2, result));
        Assert.Equal([7, 7], result);
        BrixiusBatch.Bias.NetTraction([], [40], 0.65, 1.9, 0.2, 0.2, []);
    }

    private static WheelOnSoil Wheel(double kilopascals, double kilonewtons) => new(Length.FromMeters(0.65), Length.FromMeters(1.9), Ratio.FromDecimalFractions(0.2), Force.FromKilonewtons(kilonewtons), Pressure.FromKilopascals(kilopascals));

    /// <summary>1e-12 of the terms: net traction is their difference.</summary>
    private static void Close(double expected, double actual, double term) => Assert.True(Math.Abs(expected - actual) <= 1e-12 * Math.Max(Math.Abs(expected), term), FormattableString.Invariant($"{actual} for {expected}"));
}
