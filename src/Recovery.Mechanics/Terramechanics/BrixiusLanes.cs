#if NET
using System;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The equations of <see cref="BrixiusKernel"/> over lanes. Every element goes through a whole vector, the last ones in a padded one.</summary>
internal static class BrixiusLanes
{
    /// <summary>Fills net traction (or motion resistance) times load; false where the processor has no vectors.</summary>
    /// <param name="coneIndex">Cone index.</param>
    /// <param name="load">Load of every wheel, or one for all.</param>
    /// <param name="shape">B_n W/CI in the units of the two.</param>
    /// <param name="slip">Slip.</param>
    /// <param name="constants">Constants.</param>
    /// <param name="net">Net traction, else motion resistance.</param>
    /// <param name="result">Receives force in the unit of the load.</param>
    public static bool Fill(ReadOnlySpan<double> coneIndex, ReadOnlySpan<double> load, double shape, double slip, in BrixiusConstants constants, bool net, Span<double> result)
    {
        if (Vector512.IsHardwareAccelerated) Run<Lanes512>(coneIndex, load, shape, slip, constants, net, result);
        else if (Vector256.IsHardwareAccelerated) Run<Lanes256>(coneIndex, load, shape, slip, constants, net, result);
        else if (Vector128.IsHardwareAccelerated) Run<Lanes128>(coneIndex, load, shape, slip, constants, net, result);
        else return false;
        return true;
    }

    internal static void Run<T>(ReadOnlySpan<double> coneIndex, ReadOnlySpan<double> load, double shape, double slip, in BrixiusConstants constants, bool net, Span<double> result)
        where T : struct, ILanes<T>
    {
        int whole = coneIndex.Length - (coneIndex.Length % T.Count), rest = coneIndex.Length - whole;
        var k = new Factors<T>(shape, load[0], slip, constants);
        Part(coneIndex.Slice(0, whole), load.Length == 1 ? load : load.Slice(0, whole), k, net, result.Slice(0, whole));
        if (rest == 0) return;
        Span<double> index = stackalloc double[T.Count], loads = stackalloc double[T.Count], tail = stackalloc double[T.Count];
        index.Fill(coneIndex[whole]);
        coneIndex.Slice(whole).CopyTo(index);
        loads.Fill(load[load.Length - 1]);
        if (load.Length > 1) load.Slice(whole).CopyTo(loads);
        Part(index, load.Length == 1 ? load : loads, k, net, tail);
        tail.Slice(0, rest).CopyTo(result.Slice(whole));
    }

    private static void Part<T>(ReadOnlySpan<double> coneIndex, ReadOnlySpan<double> load, in Factors<T> k, bool net, Span<double> result)
        where T : struct, ILanes<T>
    {
        ref double index = ref MemoryMarshal.GetReference(coneIndex), loads = ref MemoryMarshal.GetReference(load), target = ref MemoryMarshal.GetReference(result);
        var length = (nuint)coneIndex.Length;
        if (load.Length == 1)
        {
            for (nuint i = 0; i < length; i += (nuint)T.Count)
            {
                var numeric = T.Read(ref index, i) * k.ShapeOverLoad;
                (k.Load * (net ? Net(numeric, k) : Resistance(numeric, k))).Write(ref target, i);
            }

            return;
        }

        for (nuint i = 0; i < length; i += (nuint)T.Count)
        {
            var w = T.Read(ref loads, i);
            var numeric = T.Read(ref index, i) * k.Shape / w;
            (w * (net ? Net(numeric, k) : Resistance(numeric, k))).Write(ref target, i);
        }
    }

    [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.AggressiveInlining)]
    private static T Net<T>(T numeric, in Factors<T> k)
        where T : struct, ILanes<T> => (k.Gross * (k.One - LaneMath.Exp(k.Decay * numeric))) + k.Rolling - Resistance(numeric, k);

    [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.AggressiveInlining)]
    private static T Resistance<T>(T numeric, in Factors<T> k)
        where T : struct, ILanes<T>
    {
        var root = k.One / T.Sqrt(numeric);
        return (k.Soft * root * root) + k.Rolling + (k.Slip * root);
    }

    private readonly struct Factors<T>(double shape, double load, double slip, BrixiusConstants c)
        where T : struct, ILanes<T>
    {
        public readonly T Shape = T.Of(shape);
        public readonly T Load = T.Of(load);
        public readonly T ShapeOverLoad = T.Of(shape / load);
        public readonly T One = T.Of(1);
        public readonly T Gross = T.Of(BrixiusKernel.GrossLimit * (1 - Math.Exp(-c.SlipDecay * slip)));
        public readonly T Decay = T.Of(-BrixiusKernel.NumericDecay);
        public readonly T Soft = T.Of(c.Soft);
        public readonly T Rolling = T.Of(c.Rolling);
        public readonly T Slip = T.Of(BrixiusKernel.SlipResistance * slip);
    }
}
#endif
