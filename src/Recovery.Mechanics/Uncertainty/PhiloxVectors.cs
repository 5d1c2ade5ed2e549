#if NET
using System;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Philox4x32-10 over eight or four samples at once. Each 32-bit word sits in a 64-bit lane; the multiplier reads lower halves only, so upper halves may hold anything until the end.</summary>
internal static class PhiloxVectors
{
    // 1.xxx less (1 - 2^-53) is (n + 1/2) 2^-52 exactly: the same number as the scalar way gives.
    private const ulong One = 0x3FF0000000000000UL;
    private const double AlmostOne = 1 - (1.0 / 9007199254740992.0);

    /// <summary>Fills whole groups of eight; returns how many numbers were written.</summary>
    public static int Fill512(ulong seed, ulong firstSample, uint dimension, uint stream, Span<double> uniforms)
    {
        var groups = MemoryMarshal.Cast<double, Vector512<double>>(uniforms);
        Vector512<uint> m0 = Vector512.Create((ulong)Philox4x32.M0).AsUInt32(), m1 = Vector512.Create((ulong)Philox4x32.M1).AsUInt32();
        var sample = Vector512.Create(firstSample) + Vector512.Create(0UL, 1, 2, 3, 4, 5, 6, 7);
        for (var g = 0; g < groups.Length; g++)
        {
            Vector512<ulong> c0 = sample, c1 = Vector512.Create((ulong)dimension), c2 = Vector512.Create((ulong)stream), c3 = sample >>> 32;
            uint k0 = (uint)seed, k1 = (uint)(seed >> 32);
            for (var r = 0; r < Philox4x32.StandardRounds; r++)
            {
                Vector512<ulong> p0 = Avx512F.Multiply(m0, c0.AsUInt32()), p1 = Avx512F.Multiply(m1, c2.AsUInt32());
                c0 = (p1 >>> 32) ^ c1 ^ Vector512.Create((ulong)k0);
                c2 = (p0 >>> 32) ^ c3 ^ Vector512.Create((ulong)k1);
                c1 = p1;
                c3 = p0;
                unchecked
                {
                    k0 += Philox4x32.W0;
                    k1 += Philox4x32.W1;
                }
            }

            var bits = ((c0 << 32) >>> 12) | ((c1 << 32) >>> 44) | Vector512.Create(One);
            groups[g] = bits.AsDouble() - Vector512.Create(AlmostOne);
            sample += Vector512.Create(8UL);
        }

        return groups.Length * 8;
    }

    /// <summary>Fills whole groups of four; returns how many numbers were written.</summary>
    public static int Fill256(ulong seed, ulong firstSample, uint dimension, uint stream, Span<double> uniforms)
    {
        var groups = MemoryMarshal.Cast<double, Vector256<double>>(uniforms);
        Vector256<uint> m0 = Vector256.Create((ulong)Philox4x32.M0).AsUInt32(), m1 = Vector256.Create((ulong)Philox4x32.M1).AsUInt32();
        var sample = Vector256.Create(firstSample) + Vector256.Create(0UL, 1, 2, 3);
        for (var g = 0; g < groups.Length; g++)
        {
            Vector256<ulong> c0 = sample, c1 = Vector256.Create((ulong)dimension), c2 = Vector256.Create((ulong)stream), c3 = sample >>> 32;
            uint k0 = (uint)seed, k1 = (uint)(seed >> 32);
            for (var r = 0; r < Philox4x32.StandardRounds; r++)
            {
                Vector256<ulong> p0 = Avx2.Multiply(m0, c0.AsUInt32()), p1 = Avx2.Multiply(m1, c2.AsUInt32());
                c0 = (p1 >>> 32) ^ c1 ^ Vector256.Create((ulong)k0);
                c2 = (p0 >>> 32) ^ c3 ^ Vector256.Create((ulong)k1);
                c1 = p1;
                c3 = p0;
                unchecked
                {
                    k0 += Philox4x32.W0;
                    k1 += Philox4x32.W1;
                }
            }

            var bits = ((c0 << 32) >>> 12) | ((c1 << 32) >>> 44) | Vector256.Create(One);
            groups[g] = bits.AsDouble() - Vector256.Create(AlmostOne);
            sample += Vector256.Create(4UL);
        }

        return groups.Length * 4;
    }
}
#endif
