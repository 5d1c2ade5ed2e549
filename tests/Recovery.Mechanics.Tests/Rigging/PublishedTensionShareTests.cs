using System;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Published shares of a line over a pin or sheave, and the friction that holds them.</summary>
public class PublishedTensionShareTests
{
    [Theory]
    [CheckRows("rigging-load-path", "published-share")]
    public void The_published_shares_match(CheckRow row) => row.MatchesList("share_high", row.Word("key").Split('|').Select(key => PublishedTensionShares.All.Single(s => s.Key == key).HarderShare.DecimalFractions).ToList());

    [Theory]
    [CheckRows("rigging-load-path", "eye-friction-parallel", "eye-friction-angle")]
    public void A_published_share_gives_its_friction(CheckRow row)
    {
        double[] ratio = row.SiList("ratio"), theta = row.SiList("theta");
        row.MatchesList("mu", Enumerable.Range(0, Math.Max(ratio.Length, theta.Length)).Select(i =>
        {
            var share = PublishedTensionShares.All.Single(s => Math.Abs(s.TensionRatio - ratio[Math.Min(i, ratio.Length - 1)]) < 1e-9);
            return share.FrictionAt(Angle.FromRadians(theta[Math.Min(i, theta.Length - 1)]));
        }).ToList());
    }

    [Fact]
    public void A_published_share_names_its_author_and_refuses_an_angle_without_wrap()
    {
        var sliding = PublishedTensionShares.All.Single(s => s.Key == "sliding");
        Assert.Equal(Standing.Secondary, sliding.Source.Standing);
        Assert.Equal("a wire that slides over it: 32.5 : 67.5 (" + sliding.Source.Citation + ")", sliding.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => sliding.FrictionAt(Angle.FromDegrees(170.001)));
    }
}
