using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Net traction of a set of wheels by any wheel model, at one common slip and at the best one. SI.</summary>
/// <remarks>No constant of its own: the sum is arithmetic, the equations are those of the model that is handed in.</remarks>
internal static class SelfMobilityKernel
{
    /// <summary>Sum over all wheels: net traction of the driven ones that drive, less the resistance of the others. Not a number where a wheel is immobile; tells whether any wheel drives.</summary>
    public static double Net(IWheelModel model, IReadOnlyList<WheelSet> wheels, double? coneIndexPascals, double slip, out bool drives)
    {
        double sum = 0;
        drives = false;
        for (var i = 0; i < wheels.Count; i++)
        {
            var set = wheels[i];
            var w = set.Wheel;
            var flat = WheelBatch.Flat(model, coneIndexPascals ?? w.ConeIndex.Pascals, w.SectionWidth.Meters, w.OverallDiameter.Meters, w.DeflectionRatio.DecimalFractions, w.Load.Newtons, set.Driven ? slip : 0);
            if (flat.Outcome == WheelOutcome.Immobile) return double.NaN;
            var pulls = set.Driven && flat.HasTraction;
            drives |= pulls;
            sum += set.LoadNewtons * (pulls ? flat.Net : -flat.Resistance);
        }

        return sum;
    }

    /// <summary>Greatest net traction at a slip up to a limit. The sum rises to one maximum and falls after it in every model: golden section, to 1e-10 of slip.</summary>
    public static double Best(IWheelModel model, IReadOnlyList<WheelSet> wheels, double? coneIndexPascals, double slipLimit, out double slip, out bool drives)
    {
        double At(double s) => Net(model, wheels, coneIndexPascals, s, out _);
        slip = slipLimit;
        var end = Net(model, wheels, coneIndexPascals, slipLimit, out drives);
        if (!(At(slipLimit * (1 - 1e-7)) > end)) return end;
        slip = GoldenSection.Crest(At, 0, slipLimit, 1e-10);
        return Net(model, wheels, coneIndexPascals, slip, out drives);
    }

    /// <summary>Cone index at which the best net traction meets a force, in the logarithm; the function is over the weight.</summary>
    public static Root Critical(IWheelModel model, IReadOnlyList<WheelSet> wheels, double forceNewtons, double slipLimit, double lowerPascals, double upperPascals)
    {
        double weight = 0;
        for (var i = 0; i < wheels.Count; i++) weight += wheels[i].LoadNewtons;
        double Surplus(double x)
        {
            // A wheel past its limit of support counts as far below: a root there is a jump, and the finder says so.
            var net = Best(model, wheels, Math.Exp(x), slipLimit, out _, out _);
            return double.IsNaN(net) ? -10 : (net - forceNewtons) / weight;
        }

        return RootFinder.Find(Surplus, Math.Log(lowerPascals), Math.Log(upperPascals), 1e-8, "critical cone index");
    }
}
