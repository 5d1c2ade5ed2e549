using System;
using System.Diagnostics;
using Recovery.Mechanics.Provenance;
#if NET
using System.Runtime.Intrinsics.X86;
#endif

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The counter-based generator Philox4x32-10: random words as a pure function of a counter and a key.</summary>
/// <remarks>
/// <para>One round on counter c and key k, hi and lo the halves of a 64-bit product: p0 = D2511F53 c0, p1 = CD9E8D57 c2; c = (hi p1 xor c1 xor k0, lo p1, hi p0 xor c3 xor k1, lo p0); then k0 += 9E3779B9, k1 += BB67AE85. Ten rounds.</para>
/// <para>The layout of this library: counter = (sample, dimension, stream, upper half of sample), key = seed. There is no state, so a value never depends on threads, partitions or the order in which samples are drawn.</para>
/// <para>Uniforms lie in the open interval: (n + 1/2) 2^-32 from one word, (n + 1/2) 2^-52 from two (a 53-bit number, always exact; 2^-53 steps would round up to 1). Never 0 or 1, so an inverse distribution is always finite.</para>
/// <para>Blocks of samples run on the vectors of the processor where it has them; the words are the same to the bit. No allocation. Not for secrets.</para>
/// <para>Source: Salmon, Moraes, Dror and Shaw 2011, constants and vectors reported; vectors of the published test file in the tests.</para>
/// </remarks>
public static class Philox4x32
{
    /// <summary>Rounds of the generator: 10.</summary>
    public const int StandardRounds = 10;

    internal const uint M0 = 0xD2511F53, M1 = 0xCD9E8D57, W0 = 0x9E3779B9, W1 = 0xBB67AE85;

    /// <summary>Gives one block of four words.</summary>
    /// <param name="counter">Four words of counter.</param>
    /// <param name="key">Two words of key.</param>
    /// <param name="words">Receives four words.</param>
    /// <param name="rounds">Rounds, 1 to 16; 10 unless you compare with another number of rounds.</param>
    /// <exception cref="ArgumentException">A span has another length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of rounds is outside its range.</exception>
    public static void Block(ReadOnlySpan<uint> counter, ReadOnlySpan<uint> key, Span<uint> words, int rounds = StandardRounds)
    {
        Guard.SameLength(4, counter.Length, nameof(counter));
        Guard.SameLength(2, key.Length, nameof(key));
        Guard.SameLength(4, words.Length, nameof(words));
        Guard.Count(rounds, 1, 16, nameof(rounds));
        uint c0 = counter[0], c1 = counter[1], c2 = counter[2], c3 = counter[3];
        Rounds(ref c0, ref c1, ref c2, ref c3, key[0], key[1], rounds);
        (words[0], words[1], words[2], words[3]) = (c0, c1, c2, c3);
    }

    /// <summary>Turns one word into a uniform number, (n + 1/2) 2^-32.</summary>
    /// <param name="word">The word.</param>
    /// <returns>A number above 0 and below 1.</returns>
    public static double Uniform32(uint word) => (word + 0.5) * (1.0 / 4294967296.0);

    /// <summary>Turns two words into a uniform number with 53 bits, (n + 1/2) 2^-52 with the upper 52 bits of the pair as n.</summary>
    /// <param name="high">The upper word.</param>
    /// <param name="low">The lower word.</param>
    /// <returns>A number above 0 and below 1.</returns>
    public static double Uniform53(uint high, uint low) => ((((ulong)high << 20) | (low >> 12)) + 0.5) * (1.0 / 4503599627370496.0);

    /// <summary>Gives the uniform number that belongs to one place of the layout.</summary>
    /// <param name="seed">Seed.</param>
    /// <param name="sample">Number of the sample, 0 or more.</param>
    /// <param name="dimension">Number of the input, 0 or more.</param>
    /// <param name="stream">Number of the stream, 0 or more: independent replicates, second matrices of a design.</param>
    /// <returns>A number above 0 and below 1, 53 bits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative.</exception>
    public static double Uniform(ulong seed, long sample, int dimension, int stream = 0)
    {
        Check(sample, 1, dimension, stream);
        return At(seed, (ulong)sample, (uint)dimension, (uint)stream);
    }

    /// <summary>Gives the uniform numbers of consecutive samples in one dimension and stream.</summary>
    /// <param name="seed">Seed.</param>
    /// <param name="firstSample">Number of the first sample, 0 or more.</param>
    /// <param name="dimension">Number of the input, 0 or more.</param>
    /// <param name="stream">Number of the stream, 0 or more.</param>
    /// <param name="uniforms">Receives one number a sample; the same as <see cref="Uniform"/> gives, to the bit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative.</exception>
    public static void Uniforms(ulong seed, long firstSample, int dimension, int stream, Span<double> uniforms)
    {
        Check(firstSample, uniforms.Length, dimension, stream);
        Fill(seed, (ulong)firstSample, (uint)dimension, (uint)stream, uniforms);
    }

    internal static void Fill(ulong seed, ulong firstSample, uint dimension, uint stream, Span<double> uniforms)
    {
        var done = 0;
#if NET
        if (Avx512F.IsSupported) done = PhiloxVectors.Fill512(seed, firstSample, dimension, stream, uniforms);
        else if (Avx2.IsSupported) done = PhiloxVectors.Fill256(seed, firstSample, dimension, stream, uniforms);
#endif
        for (var i = done; i < uniforms.Length; i++) uniforms[i] = At(seed, firstSample + (ulong)i, dimension, stream);
    }

    internal static double At(ulong seed, ulong sample, uint dimension, uint stream)
    {
        uint c0 = (uint)sample, c1 = dimension, c2 = stream, c3 = (uint)(sample >> 32);
        Rounds(ref c0, ref c1, ref c2, ref c3, (uint)seed, (uint)(seed >> 32), StandardRounds);
        return Uniform53(c0, c1);
    }

    private static void Rounds(ref uint c0, ref uint c1, ref uint c2, ref uint c3, uint k0, uint k1, int rounds)
    {
        Debug.Assert(rounds > 0, "a generator without a round is a counter");
        for (var r = 0; r < rounds; r++)
        {
            ulong p0 = (ulong)M0 * c0, p1 = (ulong)M1 * c2;
            (c0, c1, c2, c3) = ((uint)(p1 >> 32) ^ c1 ^ k0, (uint)p1, (uint)(p0 >> 32) ^ c3 ^ k1, (uint)p0);
            unchecked
            {
                k0 += W0;
                k1 += W1;
            }
        }
    }

    private static void Check(long sample, int count, int dimension, int stream)
    {
        if (sample < 0 || sample > long.MaxValue - count) throw new ArgumentOutOfRangeException(nameof(sample), "sample must be 0 or more; it was " + Text.Number(sample) + ".");
        Guard.Count(dimension, 0, int.MaxValue, nameof(dimension));
        Guard.Count(stream, 0, int.MaxValue, nameof(stream));
    }
}
