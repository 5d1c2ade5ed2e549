using System;
using Recovery.Mechanics.Terramechanics;
#if NET
using System.Runtime.Intrinsics;
using Recovery.Mechanics.Provenance;
#endif

namespace Recovery.Mechanics.Traction;

/// <summary>Greatest steady pull on many cone indices at once: <see cref="CapabilityKernel.Greatest"/> over an array, in the vectors of the processor where it has them.</summary>
internal static class CapabilityBatch
{
    /// <summary>Lengths have to be a multiple of this, so that every number goes the same way whatever its neighbours.</summary>
    public const int Multiple = 8;

    private const int MostSteps = 80;

    /// <summary>Fills pulls and the greatest residual that was left.</summary>
    public static void Greatest(CapabilityFlat f, double[] loads, double gradeForce, double slipLimit, in BrixiusConstants constants, ReadOnlySpan<double> coneIndexPascals, Span<double> pull, ref double residual)
    {
#if NET
        if (Array.IndexOf(f.Driven, true) >= 0 && coneIndexPascals.Length % Multiple == 0)
        {
            if (Vector512.IsHardwareAccelerated)
            {
                Run<Lanes512>(f, loads, gradeForce, slipLimit, constants, coneIndexPascals, pull, ref residual);
                return;
            }

            if (Vector256.IsHardwareAccelerated)
            {
                Run<Lanes256>(f, loads, gradeForce, slipLimit, constants, coneIndexPascals, pull, ref residual);
                return;
            }

            if (Vector128.IsHardwareAccelerated)
            {
                Run<Lanes128>(f, loads, gradeForce, slipLimit, constants, coneIndexPascals, pull, ref residual);
                return;
            }
        }
#endif
        for (var i = 0; i < coneIndexPascals.Length; i++)
        {
            pull[i] = CapabilityKernel.Greatest(f, loads, gradeForce, coneIndexPascals[i], slipLimit, constants, out _, out var left);
            residual = Math.Max(residual, Math.Abs(left));
        }
    }

#if NET
    internal static void Run<T>(CapabilityFlat f, double[] loads, double gradeForce, double slipLimit, in BrixiusConstants constants, ReadOnlySpan<double> coneIndexPascals, Span<double> pull, ref double residual)
        where T : struct, ILanes<T>
    {
        ref var source = ref System.Runtime.InteropServices.MemoryMarshal.GetReference(coneIndexPascals);
        ref var target = ref System.Runtime.InteropServices.MemoryMarshal.GetReference(pull);
        T zero = T.Of(0), ones = T.Above(T.Of(1), zero), sought = T.Of(1e-7), endless = T.Of(double.PositiveInfinity);
        Span<double> left = stackalloc double[Multiple];
        for (nuint at = 0; at < (nuint)coneIndexPascals.Length; at += (nuint)T.Count)
        {
            // The same secant inside a bracket as the kernel's; a lane that is done stands still while the others go on.
            var index = T.Read(ref source, at);
            T p0 = zero, h0 = Net(f, loads, gradeForce, slipLimit, constants, index, zero), p1 = h0, low = zero, high = endless;
            T moves = T.Above(h0, zero), done = T.Select(moves, zero, ones), rest = zero;
            p1 = T.Select(moves, p1, zero);
            for (var step = 0; step < MostSteps && !T.AllSet(done); step++)
            {
                var h1 = Net(f, loads, gradeForce, slipLimit, constants, index, p1) - p1;
                rest = T.Select(done, rest, T.Max(h1, zero - h1));
                done = T.Or(done, T.Select(T.Above(rest, sought), zero, ones));
                var rises = T.Above(h1, zero);
                T newLow = T.Select(rises, p1, low), newHigh = T.Select(rises, high, p1);
                var next = p1 - (h1 * (p1 - p0) / (h1 - h0));
                var inside = T.And(T.Above(next, newLow), T.Above(newHigh, next));
                next = T.Select(inside, next, T.Select(T.Above(newHigh, T.Of(1e300)), p1 + p1, T.Of(0.5) * (newLow + newHigh)));
                low = T.Select(done, low, newLow);
                high = T.Select(done, high, newHigh);
                p0 = T.Select(done, p0, p1);
                h0 = T.Select(done, h0, h1);
                p1 = T.Select(done, p1, next);
            }

            p1.Write(ref target, at);
            rest.Write(ref left[0], 0);
            for (var i = 0; i < T.Count; i++) residual = Math.Max(residual, left[i]);
        }
    }

    /// <summary>Net traction at the best slip, less the grade force: <see cref="TractionSum"/> over lanes.</summary>
    private static T Net<T>(CapabilityFlat f, double[] loads, double gradeForce, double slipLimit, in BrixiusConstants constants, T index, T pull)
        where T : struct, ILanes<T>
    {
        T zero = T.Of(0), one = T.Of(1), borne = zero, lifted = zero, a = zero, b = zero, c = zero;
        for (var i = 0; i < loads.Length; i++)
        {
            var load = T.Of(loads[i]) + (T.Of(f.LoadPerPull[i]) * pull);
            borne += T.Max(load, zero);
            lifted += T.Min(load, zero);
        }

        var share = T.Select(T.Above(zero, lifted), T.Max(borne + lifted, zero) / borne, one);
        for (var i = 0; i < loads.Length; i++)
        {
            var load = T.Max((T.Of(loads[i]) + (T.Of(f.LoadPerPull[i]) * pull)) * share, T.Of(1e-200));
            var numeric = index * T.Of(f.NumericTimesLoad[i] * f.Count[i]) / load;
            var soft = T.Of(constants.Soft) / numeric;
            if (f.Driven[i])
            {
                a += T.Of(BrixiusKernel.GrossLimit) * load * (one - LaneMath.Exp(T.Of(-BrixiusKernel.NumericDecay) * numeric));
                b += T.Of(BrixiusKernel.SlipResistance) * load / T.Sqrt(numeric);
                c += soft * load;
            }
            else
            {
                c += (soft + T.Of(constants.Rolling)) * load;
            }
        }

        var slip = T.Log(T.Of(constants.SlipDecay) * a / b) * T.Of(1 / constants.SlipDecay);
        slip = T.Min(T.Max(slip, zero), T.Of(slipLimit));
        return (a * (one - LaneMath.Exp(T.Of(-constants.SlipDecay) * slip))) - (b * slip) - c - T.Of(gradeForce);
    }
#endif
}
