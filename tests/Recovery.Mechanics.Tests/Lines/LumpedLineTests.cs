using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Lines;

/// <summary>Released lines as many lumps, to hold the closed functions and the bounds for hardware against something that knows neither.</summary>
public class LumpedLineTests
{
    [Theory]
    [CheckRows("lines", "lumped-fitting")]
    public void A_released_line_of_lumps_throws_its_fitting_as_the_exact_function_says(CheckRow row)
    {
        var a = row.Si("a");
        // Unit line: EA, m' and L are 1, so F0/Z is F0 and a transit lasts 1.
        var f = LumpedLine.FittingSpeed(0.1, 1 / a, 5, new LumpedLine.Part(1, 1, 1, (int)row.Si("nodes"))) / 0.1;
        row.MatchesOne("f", f);
        row.MatchesOne("f", RecoilKernel.FittingRatio(a));
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.17)]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(2.6)]
    public void The_exact_function_agrees_with_lumps_over_its_range(double a) =>
        Assert.Equal(RecoilKernel.FittingRatio(a), LumpedLine.FittingSpeed(0.1, 1 / a, Math.Max(5, 3 / Math.Sqrt(a)), new LumpedLine.Part(1, 1, 1, 1000)) / 0.1, 1e-3);

    [Theory]
    [CheckRows("lines", "lump-step")]
    public void The_longest_step_over_a_lump_matches(CheckRow row) => row.Matches(("h", row.Si("dx") / new LineSegment("line", LineRows.Linear(row), LineRows.PerMetre(row.Si("m_line"))).WaveSpeed!.Value.MetersPerSecond));

    [Theory]
    [CheckRows("lines", "lumped-chain")]
    public void A_fitting_at_the_end_of_two_lines_matches_and_stays_under_its_bound(CheckRow row)
    {
        double mbs = row.Si("MBS"), f = row.Si("F0"), m = row.Si("M");
        double ea1 = row.Si("EA_over_MBS_1") * mbs, ea2 = row.Si("EA_over_MBS_2") * mbs, m1 = row.Si("m_line_1"), m2 = row.Si("m_line_2"), l1 = row.Si("L_1"), l2 = row.Si("L_2");
        var v = LumpedLine.FittingSpeed(f, m, 0.08, new LumpedLine.Part(ea1, m1, l1, 600), new LumpedLine.Part(ea2, m2, l2, 1000));
        row.MatchesOne("v", v);
        var energy = (f * f * l1 / (2 * ea1)) + (f * f * l2 / (2 * ea2));
        var least = Math.Min(ElasticKernel.Impedance(ea1, m1), ElasticKernel.Impedance(ea2, m2));
        Assert.True(v <= RecoilKernel.ChainEnd(f, least, energy, m, m1 * l1));
    }

    [Theory]
    [CheckRows("lines", "lumped-bridle")]
    public void A_loose_end_of_a_running_bridle_matches_and_stays_under_its_bound(CheckRow row)
    {
        double mbs = row.Si("MBS"), f = row.Si("F0"), m = row.Si("M"), ea = row.Si("EA_over_MBS") * mbs, kb = row.Si("EA_over_MBS_b") * mbs / row.Si("L_b");
        var v = LumpedLine.LooseEndSpeed(f, m, kb, row.Si("L_b"), new LumpedLine.Part(ea, row.Si("m_line"), row.Si("L"), 1000));
        row.MatchesOne("v", v);
        Assert.True(v <= RecoilKernel.EnergyOnly((f * f * row.Si("L") / (2 * ea)) + (f * f / 4 / (2 * kb)), m));
    }
}
