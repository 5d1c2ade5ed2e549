using System;
using System.Globalization;
using System.Linq;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>The generator against its published vectors, and what the layout promises.</summary>
public class PhiloxTests
{
    [Theory]
    [CheckRows("uncertainty", "philox")]
    public void Gives_the_published_words_to_the_bit(CheckRow row)
    {
        var words = new uint[4];
        Philox4x32.Block([Word(row.Word("c0")), Word(row.Word("c1")), Word(row.Word("c2")), Word(row.Word("c3"))], [Word(row.Word("k0")), Word(row.Word("k1"))], words, (int)row.Printed("rounds"));
        for (var i = 0; i < 4; i++) Assert.Equal(Word(row.ExpectedText("x" + i)), words[i]);
    }

    [Theory]
    [CheckRows("uncertainty", "uniform")]
    public void A_word_becomes_a_uniform(CheckRow row) => row.Matches(("u", Philox4x32.Uniform32(Word(row.Word("word")))));

    [Theory]
    [CheckRows("uncertainty", "uniform-ends")]
    public void Uniforms_stay_inside_the_open_interval(CheckRow row)
    {
        row.Matches(("u_a", Philox4x32.Uniform32(Word(row.Word("word_a")))), ("u_b", Philox4x32.Uniform32(Word(row.Word("word_b")))));
        Assert.True(Philox4x32.Uniform53(0, 0) > 0);
        Assert.True(Philox4x32.Uniform53(uint.MaxValue, uint.MaxValue) < 1);
        Assert.Equal(1 - Philox4x32.Uniform53(0, 0), Philox4x32.Uniform53(uint.MaxValue, uint.MaxValue));
    }

    [Theory]
    [InlineData(0UL, 0L, 0, 0, 1000)]
    [InlineData(0xFEDCBA9876543210UL, 4294967290L, 7, 3, 67)]
    [InlineData(42UL, 1L, 19, 0, 3)]
    public void A_block_is_the_same_numbers_to_the_bit(ulong seed, long first, int dimension, int stream, int count)
    {
        var block = new double[count];
        Philox4x32.Uniforms(seed, first, dimension, stream, block);
        for (var i = 0; i < count; i++) Assert.Equal(BitConverter.DoubleToInt64Bits(Philox4x32.Uniform(seed, first + i, dimension, stream)), BitConverter.DoubleToInt64Bits(block[i]));
    }

#if NET
    [Fact]
    public void Both_vector_widths_give_the_scalar_numbers()
    {
        double[] wide = new double[40], narrow = new double[40];
        if (System.Runtime.Intrinsics.X86.Avx512F.IsSupported) Assert.Equal(40, PhiloxVectors.Fill512(9, 4294967280, 2, 1, wide));
        if (System.Runtime.Intrinsics.X86.Avx2.IsSupported) Assert.Equal(40, PhiloxVectors.Fill256(9, 4294967280, 2, 1, narrow));
        for (var i = 0; i < 40; i++)
        {
            var expected = Philox4x32.Uniform(9, 4294967280 + i, 2, 1);
            if (System.Runtime.Intrinsics.X86.Avx512F.IsSupported) Assert.Equal(expected, wide[i]);
            if (System.Runtime.Intrinsics.X86.Avx2.IsSupported) Assert.Equal(expected, narrow[i]);
        }
    }
#endif

    [Fact]
    public void Every_place_of_the_layout_changes_the_number()
    {
        var places = new[] { Philox4x32.Uniform(1, 2, 3, 4), Philox4x32.Uniform(2, 2, 3, 4), Philox4x32.Uniform(1, 3, 3, 4), Philox4x32.Uniform(1, 2, 4, 4), Philox4x32.Uniform(1, 2, 3, 5), Philox4x32.Uniform(1UL << 32, 2, 3, 4), Philox4x32.Uniform(1, 2 + (1L << 32), 3, 4) };
        Assert.Equal(places.Length, places.Distinct().Count());
    }

    [Fact]
    public void Uniforms_fill_the_interval_evenly()
    {
        var u = new double[200_000];
        Philox4x32.Uniforms(2026, 0, 0, 0, u);
        var cells = new int[100];
        foreach (var x in u) cells[(int)(x * 100)]++;
        // Chi-squared with 99 degrees of freedom: 1e-6 and 1 - 1e-6 quantiles are 43.2 and 179.4.
        var chi = cells.Sum(c => (c - 2000.0) * (c - 2000.0) / 2000);
        Assert.InRange(chi, 43.2, 179.4);
        var lag = u.Zip(u.Skip(1), (a, b) => (a - 0.5) * (b - 0.5)).Average() * 12;
        Assert.InRange(lag, -5 / Math.Sqrt(u.Length), 5 / Math.Sqrt(u.Length));
    }

    [Fact]
    public void Bad_places_are_refused_with_words()
    {
        Assert.Contains("sample", Assert.Throws<ArgumentOutOfRangeException>(() => Philox4x32.Uniform(1, -1, 0)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Philox4x32.Uniform(1, 0, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Philox4x32.Uniform(1, 0, 0, -1));
        Assert.Throws<ArgumentException>(() => Philox4x32.Block(new uint[3], new uint[2], new uint[4]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Philox4x32.Block(new uint[4], new uint[2], new uint[4], 0));
    }

    private static uint Word(string text) => uint.Parse(text[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
