using System;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using Xunit;

namespace Recovery.Mechanics.Tests.Traction;

public class SidePullTests
{
    [Theory]
    [CheckRows("traction", "side-slope")]
    public void Shares_of_left_and_right_on_a_side_slope(CheckRow row)
    {
        // The loaded side is the downhill one; a positive slope rises to the left, so right is down.
        double Share(double a) => SidePullKernel.LoadedSide(1e5, a, row.Si("h"), row.Si("B"), 0, 0);
        foreach (var name in row.ExpectedNames)
            row.MatchesOne(name, Share(name is "R_left_over_W" or "R_up/W" ? -row.Si("a") : row.Si("a")));
    }

    [Theory]
    [CheckRows("traction", "line-tension")]
    public void Tension_with_its_vertical_and_sideways_parts(CheckRow row)
    {
        var tension = SidePullKernel.Tension(row.Si("demand"), row.Si("pitch"), row.Si("yaw"));
        row.Matches(("tension", tension), ("vertical", SidePullKernel.Vertical(tension, row.Si("pitch"))), ("sideways", SidePullKernel.Sideways(tension, row.Si("pitch"), row.Si("yaw"))));
    }

    [Fact]
    public void A_sideways_line_overturns_where_its_moment_reaches_that_of_half_the_track()
    {
        // W 157 kN, B 2 m, hitch 0.5 m: the unloaded side is empty at F_y = W B/2/0.5 = 314 kN.
        Assert.Equal(1, SidePullKernel.LoadedSide(157e3, 0, 1, 2, 314e3, 0.5), 12);
    }
}
