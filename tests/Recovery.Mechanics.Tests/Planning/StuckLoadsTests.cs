using System;
using System.Linq;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>What the height of the pull adds on the stuck machine, beside the demand.</summary>
public class StuckLoadsTests
{
    /// <summary>364.7 kN at the axle straps, 0.4 m up: 364.7 x 0.4/5.85 = 24.9 kN go from the front axle, 256.2, to the rear pair, 126.8 each: 231.3, 139.3, 139.3 kN.</summary>
    [Fact]
    public void A_level_line_moves_load_to_the_axles_that_lead()
    {
        var plan = ReferencePlans.AsFound();
        var loads = plan.Assess().StuckLoads!;
        Assert.Equal(364.7, loads.Pull.Kilonewtons, 0.0501);
        Assert.Equal(0, loads.Up.Newtons);
        Assert.Equal([256.2, 126.8, 126.8], Rounded(loads.Before.Newtons));
        Assert.Equal([231.3, 139.3, 139.3], Rounded(loads.Pulled.Newtons));
        Assert.Equal(364.7, plan.Assess().Demand.Total.Central.Kilonewtons, 0.0501);
        var demand = plan.Assess().ToDocument(DisplayUnits.Metric).Sections.Single(s => s.Key == "demand");
        Assert.Contains(demand.Blocks, b => b.Kind == ReportBlockKind.Table && b.Rows.Any(r => r.SequenceEqual(["front axle", "256", "231"])));
    }

    /// <summary>Line falling 5 deg to it and 20 deg aside, so 364.7 x 0.087489/0.939693 = 33.95 kN lift the front axle: 231.3 - 33.95 = 197.3; made fast 1 m up behind the rear axle at -8 m: front 256.2 - 62.34 + 33.95 x 2.15/5.85 = 206.3, the pair 126.8 + (62.34 - 33.95 x 8/5.85)/2 = 134.8.</summary>
    [Fact]
    public void A_line_that_falls_to_the_machine_lifts_where_it_is_made_fast()
    {
        var plan = ReferencePlans.AsFound();
        var falling = plan.With(plan.Site with { LinePitch = Angle.FromDegrees(5), LineYaw = Angle.FromDegrees(20) });
        var loads = falling.Assess().StuckLoads!;
        Assert.Equal(33.95, loads.Up.Kilonewtons, 0.01);
        Assert.Equal([197.3, 139.3, 139.3], Rounded(loads.Pulled.Newtons));
        var behind = falling.With(new Rig(plan.Rig.Drawbar, plan.Rig.Parts, plan.Rig.Casualty.WithPosition(M(-8)).WithHeight(M(1)))).Assess().StuckLoads!;
        Assert.Equal([206.3, 134.8, 134.8], Rounded(behind.Pulled.Newtons));
        Assert.Equal(1, behind.Height.Meters);
    }

    [Fact]
    public void Place_or_height_not_known_is_a_fact_to_measure()
    {
        var plan = ReferencePlans.AsFound();
        Assert.DoesNotContain(plan.Assess().Assumptions, a => a.Id == "assume.attachment-height");
        RecoveryPlan Point(AttachmentPoint point) => plan.With(new Rig(plan.Rig.Drawbar, plan.Rig.Parts, point));
        foreach (var open in new[] { plan.With(plan.Site with { UnderMachine = null }), Point(new AttachmentPoint("eye", AttachmentKind.RecoveryPoint, true).WithHeight(M(0.8))), Point(new AttachmentPoint("eye", AttachmentKind.RecoveryPoint, true).WithPosition(M(2))) })
        {
            Assert.Null(open.Assess().StuckLoads);
            Assert.Contains(open.Assess().Assumptions, a => a.Id == "assume.attachment-height");
        }

        var known = Point(new AttachmentPoint("eye", AttachmentKind.RecoveryPoint, true).WithPosition(M(2)).WithHeight(M(0.8)));
        Assert.NotNull(known.Assess().StuckLoads);
        Assert.NotEqual(known.Assess().Fingerprint, Point(known.Rig.Casualty.WithHeight(M(0.9))).Assess().Fingerprint);
        Assert.Contains("Height must be from 0 to 6 m; it was 7 m", Assert.Throws<ArgumentOutOfRangeException>(() => known.Rig.Casualty.WithHeight(M(7))).Message, StringComparison.Ordinal);
    }

    private static double[] Rounded(System.Collections.Generic.IEnumerable<double> newtons) => newtons.Select(n => Math.Round(n / 1000, 1)).ToArray();
}
