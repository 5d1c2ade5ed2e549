using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Sobol points, plain or scrambled: numbers that fill the unit cube more evenly than random ones.</summary>
/// <remarks>
/// <para>x_i = xor of the direction numbers v_k over the bits k of the Gray code of i. Scrambled: every direction number is multiplied by a random lower triangular matrix of bits with ones on its diagonal, and the point is shifted by random bits (Matousek 1998, from memory); the net keeps its evenness and each point is uniform. Uniforms are (x + 1/2) 2^-32, never 0 or 1.</para>
/// <para>Point i needs no other point, so partitions and threads change nothing. Take a power of two of points, from the first one on: a part of a net loses its evenness. Immutable; many threads may use it at once.</para>
/// <para>Source: direction numbers of Joe and Kuo 2008 (reported, as SciPy carries them), the first 100 dimensions.</para>
/// </remarks>
public sealed class SobolPoints
{
    /// <summary>Most dimensions: 100.</summary>
    public const int MostDimensions = 100;

    private const int Bits = 32;
    private const uint ScrambleMark = 0xFFFFFFFF;

    private readonly uint[] _directions;
    private readonly uint[] _shift;

    private SobolPoints(int dimensions)
    {
        Dimensions = Guard.Count(dimensions, 1, MostDimensions, nameof(dimensions));
        _directions = new uint[dimensions * Bits];
        _shift = new uint[dimensions];
        for (var d = 0; d < dimensions; d++) SobolDirections.Fill(d, _directions.AsSpan(d * Bits, Bits));
    }

    /// <summary>Gets the number of dimensions.</summary>
    public int Dimensions { get; }

    /// <summary>Makes plain points, the first of them at the origin.</summary>
    /// <param name="dimensions">Number of dimensions, 1 to 100.</param>
    /// <returns>The points.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static SobolPoints Plain(int dimensions) => new(dimensions);

    /// <summary>Makes scrambled points.</summary>
    /// <param name="dimensions">Number of dimensions, 1 to 100.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="stream">Number of the stream, 0 or more: independent scramblings.</param>
    /// <returns>The points.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static SobolPoints Scrambled(int dimensions, ulong seed, int stream = 0)
    {
        var points = new SobolPoints(dimensions);
        Guard.Count(stream, 0, int.MaxValue, nameof(stream));
        Span<uint> words = stackalloc uint[4], key = [(uint)seed, (uint)(seed >> 32)], rows = stackalloc uint[Bits];
        for (var d = 0; d < dimensions; d++)
        {
            for (var r = 0; r <= Bits; r++)
            {
                Philox4x32.Block([(uint)r, (uint)d, (uint)stream, ScrambleMark], key, words);
                if (r == Bits) points._shift[d] = words[0];
                else rows[r] = r == 0 ? 0x80000000 : (words[0] & ~(uint.MaxValue >> r)) | (0x80000000 >> r);
            }

            var v = points._directions.AsSpan(d * Bits, Bits);
            for (var k = 0; k < Bits; k++)
            {
                uint mixed = 0;
                for (var r = 0; r < Bits; r++) mixed |= Parity(rows[r] & v[k]) << (Bits - 1 - r);
                v[k] = mixed;
            }
        }

        return points;
    }

    /// <summary>Gives one coordinate of one point as a 32-bit word: the point times 2^32.</summary>
    /// <param name="index">Number of the point, 0 to 2^32 - 1.</param>
    /// <param name="dimension">Number of the coordinate.</param>
    /// <returns>The word.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public uint Word(long index, int dimension)
    {
        Check(index, 1);
        return At((uint)index, Guard.Count(dimension, 0, Dimensions - 1, nameof(dimension)));
    }

    /// <summary>Gives one coordinate of consecutive points, each above 0 and below 1.</summary>
    /// <param name="firstIndex">Number of the first point, 0 to 2^32 - 1.</param>
    /// <param name="dimension">Number of the coordinate.</param>
    /// <param name="uniforms">Receives one number a point.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public void Uniforms(long firstIndex, int dimension, Span<double> uniforms)
    {
        Check(firstIndex, uniforms.Length);
        Guard.Count(dimension, 0, Dimensions - 1, nameof(dimension));
        if (uniforms.Length == 0) return;
        var x = At((uint)firstIndex, dimension);
        var v = _directions.AsSpan(dimension * Bits, Bits);
        for (var i = 0; i < uniforms.Length; i++)
        {
            uniforms[i] = Philox4x32.Uniform32(x);

            // The next Gray code differs in the lowest zero bit of the index.
            var k = TrailingOnes((ulong)firstIndex + (ulong)i);
            if (k < Bits) x ^= v[k];
        }
    }

    /// <summary>Gives the points in words.</summary>
    /// <returns>The number of dimensions.</returns>
    public override string ToString() => "Sobol points in " + Text.Number(Dimensions) + " dimensions";

    private static int TrailingOnes(ulong value)
    {
        var count = 0;
        for (; (value & 1) != 0; value >>= 1) count++;
        return count;
    }

    private static uint Parity(uint value)
    {
        value ^= value >> 16;
        value ^= value >> 8;
        value ^= value >> 4;
        return (0x6996u >> (int)(value & 15)) & 1;
    }

    private static void Check(long index, int count)
    {
        if (index < 0 || index > uint.MaxValue - (long)count + 1) throw new ArgumentOutOfRangeException(nameof(index), "index must be from 0 to 4294967295, the last point of a block included; it was " + Text.Number(index, 10) + ".");
    }

    private uint At(uint index, int dimension)
    {
        var x = _shift[dimension];
        var v = _directions.AsSpan(dimension * Bits, Bits);
        var gray = index ^ (index >> 1);
        for (var k = 0; gray != 0; k++, gray >>= 1)
        {
            if ((gray & 1) != 0) x ^= v[k];
        }

        return x;
    }
}
