using System;
using System.Numerics;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Counts numbers so that parts add up exactly, in any order: fixed-point sums in 128 bits, and counts in bins of equal relative width.</summary>
/// <remarks>
/// A number is rounded once, to a multiple of 2^-32 of the scale; from there on everything is whole numbers, so addition is exact and neither order nor partition can change a bit.
/// Bins: 128 to the octave, read off the bits of the number, so a bin is at most 1/128 wide relative to its value. Numbers nearer zero than 2^-20 count as zero.
/// </remarks>
internal sealed class Tally
{
    /// <summary>Greatest number over scale that keeps its place in the sums; beyond it the number counts as that.</summary>
    public const double Reach = 4096;

    private const int BinsPerOctaveLog = 7, LowestExponent = -20, Octaves = 53, Resolution = 32;
    private const int Bins = Octaves << BinsPerOctaveLog, FirstKey = (1023 + LowestExponent) << BinsPerOctaveLog;

    private readonly int _exponent;
    private readonly double _toUnits;
    private readonly double _most;
    private readonly long[] _positive = new long[Bins];
    private long[]? _negative;
    private long _count;
    private long _clipped;
    private long _nearZero;
    private long _sumHigh;
    private ulong _sumLow;
    private ulong _squareHigh;
    private ulong _squareLow;
    private double _minimum = double.PositiveInfinity;
    private double _maximum = double.NegativeInfinity;

    /// <summary>Makes an empty tally.</summary>
    /// <param name="scale">Size of a typical number, above 0. It sets the resolution and has to be the same in all parts.</param>
    public Tally(double scale)
    {
        _exponent = (int)Math.Floor(Math.Log(scale) / Math.Log(2)) - Resolution;
        _toUnits = Math.Pow(2, -_exponent);
        _most = Math.Pow(2, Resolution + 12);
    }

    public long Count => _count;

    public long Clipped => _clipped;

    public double Minimum => _minimum;

    public double Maximum => _maximum;

    /// <summary>Half of what a number was rounded to.</summary>
    public double Rounding => 0.5 / _toUnits;

    /// <summary>Counts one finite number.</summary>
    public void Add(double value)
    {
        _count++;
        if (value < _minimum) _minimum = value;
        if (value > _maximum) _maximum = value;
        var units = Math.Round(value * _toUnits);
        if (units > _most || units < -_most)
        {
            _clipped++;
            units = units > 0 ? _most : -_most;
        }

        AddUnits((long)units);
        var key = (int)((BitConverter.DoubleToInt64Bits(value) & long.MaxValue) >> (52 - BinsPerOctaveLog)) - FirstKey;
        if (key < 0) _nearZero++;
        else if (value > 0) _positive[key < Bins ? key : Bins - 1]++;
        else (_negative ??= new long[Bins])[key < Bins ? key : Bins - 1]++;
    }

    /// <summary>Adds another tally of the same scale.</summary>
    public void Add(Tally other)
    {
        if (other._exponent != _exponent) throw new ArgumentException("Parts of different scale do not add up.", nameof(other));
        _count += other._count;
        _clipped += other._clipped;
        _nearZero += other._nearZero;
        if (other._minimum < _minimum) _minimum = other._minimum;
        if (other._maximum > _maximum) _maximum = other._maximum;
        Add128(ref _sumLow, other._sumLow, out var carry);
        _sumHigh = unchecked(_sumHigh + other._sumHigh + (long)carry);
        Add128(ref _squareLow, other._squareLow, out carry);
        _squareHigh += other._squareHigh + carry;
        for (var i = 0; i < Bins; i++) _positive[i] += other._positive[i];
        if (other._negative is null) return;
        _negative ??= new long[Bins];
        for (var i = 0; i < Bins; i++) _negative[i] += other._negative[i];
    }

    public double Mean() => (double)Sum() / _count / _toUnits;

    /// <summary>Standard deviation with n - 1, worked out in whole numbers up to the last root.</summary>
    public double Deviation()
    {
        if (_count < 2) return 0;
        var sum = Sum();
        var squares = (new BigInteger(_squareHigh) << 64) + _squareLow;
        return Math.Sqrt((double)((squares * _count) - (sum * sum)) / _count / (_count - 1)) / _toUnits;
    }

    /// <summary>Number of the given rank, 1 the least, to half a bin: 1/256 of itself.</summary>
    public double Ranked(long rank)
    {
        long seen = 0;
        if (_negative is not null)
        {
            for (var i = Bins - 1; i >= 0; i--)
            {
                seen += _negative[i];
                if (seen >= rank) return Inside(-Middle(i));
            }
        }

        seen += _nearZero;
        if (seen >= rank) return Inside(0);
        for (var i = 0; i < Bins; i++)
        {
            seen += _positive[i];
            if (seen >= rank) return Inside(Middle(i));
        }

        return _maximum;
    }

    /// <summary>Writes everything that is counted: equal tallies give equal bytes.</summary>
    public void Write(System.Collections.Generic.List<byte> bytes)
    {
        Put(bytes, _exponent);
        Put(bytes, _count);
        Put(bytes, _clipped);
        Put(bytes, _nearZero);
        Put(bytes, _sumHigh);
        Put(bytes, unchecked((long)_sumLow));
        Put(bytes, unchecked((long)_squareHigh));
        Put(bytes, unchecked((long)_squareLow));
        Put(bytes, BitConverter.DoubleToInt64Bits(_minimum));
        Put(bytes, BitConverter.DoubleToInt64Bits(_maximum));
        Put(bytes, _positive, 0);
        if (_negative is not null) Put(bytes, _negative, Bins);
    }

    /// <summary>Gives an independent copy.</summary>
    public Tally Copy()
    {
        var copy = new Tally(Math.Pow(2, _exponent + Resolution));
        copy.Add(this);
        return copy;
    }

    internal static void Put(System.Collections.Generic.List<byte> bytes, long value)
    {
        for (var i = 0; i < 64; i += 8) bytes.Add((byte)(value >> i));
    }

    private static void Put(System.Collections.Generic.List<byte> bytes, long[] bins, int offset)
    {
        for (var i = 0; i < bins.Length; i++)
        {
            if (bins[i] == 0) continue;
            Put(bytes, i + offset);
            Put(bytes, bins[i]);
        }
    }

    private static double Middle(int bin) => 0.5 * (Edge(bin) + Edge(bin + 1));

    private static double Edge(int bin) => BitConverter.Int64BitsToDouble((long)(bin + FirstKey) << (52 - BinsPerOctaveLog));

    private static void Add128(ref ulong low, ulong added, out ulong carry)
    {
        low = unchecked(low + added);
        carry = low < added ? 1UL : 0;
    }

    private double Inside(double value) => Math.Min(_maximum, Math.Max(_minimum, value));

    private BigInteger Sum() => (new BigInteger(_sumHigh) << 64) + _sumLow;

    private void AddUnits(long units)
    {
        Add128(ref _sumLow, unchecked((ulong)units), out var carry);
        _sumHigh = unchecked(_sumHigh + (units >> 63) + (long)carry);

        // Square of a number below 2^45 in two halves, so that it is exact on every target.
        ulong size = (ulong)Math.Abs(units), high = size >> 32, low = size & 0xFFFFFFFF, cross = (high * low) << 1;
        Add128(ref _squareLow, unchecked(low * low), out carry);
        _squareHigh += (high * high) + (cross >> 32) + carry;
        Add128(ref _squareLow, cross << 32, out carry);
        _squareHigh += carry;
    }
}
