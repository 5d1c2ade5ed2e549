using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Uncertainty;
using Xunit;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>The error of sampling in words, never finer than an order of magnitude.</summary>
public class IntervalWordTests
{
    [Theory]
    [InlineData(0, 1_000_000, "below 1 in 100,000")]
    [InlineData(1_000_000, 1_000_000, "above all but 1 in 100,000")]
    [InlineData(3, 1_000_000, "1 in 1e7 to 1 in 100,000")]
    [InlineData(999_997, 1_000_000, "all but 1 in 100,000 to all but 1 in 1e7")]
    [InlineData(300_000, 1_000_000, "1 in 10 to even")]
    [InlineData(700_000, 1_000_000, "even to 9 in 10")]
    [InlineData(500_000, 1_000_000, "even")]
    [InlineData(100_000, 1_000_000, "1 in 10")]
    [InlineData(900_000, 1_000_000, "9 in 10")]
    [InlineData(990_000, 1_000_000, "99 in 100")]
    [InlineData(999_000, 1_000_000, "999 in 1,000")]
    [InlineData(950_000, 1_000_000, "9 in 10 to 99 in 100")]
    [InlineData(0, 1, "below 99 in 100")]
    [InlineData(1, 2, "1 in 100 to 99 in 100")]
    public void Ends_are_rounded_outwards_to_rungs(long hits, long count, string words) => Assert.Equal(words, SampledProbability.FromCounts(hits, count).IntervalInWords());

    [Theory]
    [InlineData(300_000, 1_000_000, "1 in 10 to even")]
    [InlineData(100_000, 1_000_000, "about 1 in 10")]
    [InlineData(900_000, 1_000_000, "all but about 1 in 10")]
    [InlineData(500_000, 1_000_000, "about even")]
    [InlineData(10, 1000, "about 1 in 100 (sampling error: 1 in 1,000 to 1 in 10)")]
    [InlineData(0, 1000, "not once in 1,000 (sampling error: below 1 in 100)")]
    [InlineData(400, 1000, "about even (sampling error: 1 in 10 to even)")]
    public void Where_sampling_leaves_more_open_than_the_words_say_it_is_said(long hits, long count, string words) => Assert.Equal(words, SampledProbability.FromCounts(hits, count).WithInterval());

    [Property(MaxTest = 500)]
    public Property The_rungs_hold_the_interval() => Prop.ForAll(
        (from log in Gen.Choose(0, 70) from share in Gen.Choose(0, 1000) let count = (long)Math.Pow(10, log / 10.0) select (Hits: (long)(count * (share / 1000.0)), Count: Math.Max(1, count))).ToArbitrary(),
        c =>
        {
            var p = SampledProbability.FromCounts(c.Hits, c.Count);
            var words = p.IntervalInWords();
            double[] ends = words.StartsWith("below ", StringComparison.Ordinal) ? [0, Value(words[6..])]
                : words.StartsWith("above ", StringComparison.Ordinal) ? [Value(words[6..]), 1]
                : words.Contains(" to ", StringComparison.Ordinal) ? words.Split(" to ").Select(Value).ToArray()
                : [Value(words), Value(words)];

            // A rung within a factor of 1.25, of the rarer side, is called reached.
            return Odds(ends[0]) <= Odds(p.Low) + Math.Log(1.6) && Odds(ends[1]) >= Odds(p.High) - Math.Log(1.6) && !words.Any(char.IsAsciiLetterUpper);
        });

    [Fact]
    public void The_report_gives_each_probability_its_sampling_error_on_eighty_columns()
    {
        var sampler = PlanSampler.WithDefaults(PolderHarvester.Create());
        foreach (var samples in new[] { 100, 1000, 20_000 })
        {
            var run = sampler.Run(samples, 1);
            var lines = run.ToReport().Split('\n');
            Assert.All(lines, line => Assert.True(line.Length <= 80, line));
            Assert.Contains("sampling error alone", lines[2], StringComparison.Ordinal);
            var stop = run.Probability(Verdict.Stop);
            var said = lines.Single(l => l.StartsWith("  stop", StringComparison.Ordinal));
            Assert.Contains(stop.ToString(), said, StringComparison.Ordinal);
            Assert.EndsWith(stop.WithInterval() == stop.ToString() ? "within that" : stop.IntervalInWords(), said, StringComparison.Ordinal);
        }
    }

    private static double Value(string rung) => rung switch
    {
        "even" => 0.5,
        "9 in 10" => 0.9,
        "99 in 100" => 0.99,
        "999 in 1,000" => 0.999,
        _ when rung.StartsWith("all but 1 in ", StringComparison.Ordinal) => 1 - (1 / Number(rung[13..])),
        _ => 1 / Number(rung[5..]),
    };

    private static double Number(string text) => double.Parse(text, System.Globalization.NumberStyles.Float | System.Globalization.NumberStyles.AllowThousands, System.Globalization.CultureInfo.InvariantCulture);

    private static double Odds(double p) => Math.Log(Math.Max(p, 1e-300) / Math.Max(1 - p, 1e-300));
}
