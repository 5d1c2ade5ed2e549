using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>The line of a plan over what was measured between the machines.</summary>
public class GroundBetweenTests
{
    private static RecoveryPlan Over(RecoveryPlan plan, double at, double height, double drawbar = 0.5, double travel = 8, string name = "bank") =>
        plan.With(plan.Site.WithGroundBetween(new GroundBetween([new GroundObstacle(name, M(at), M(height))], M(drawbar), M(travel))));

    /// <summary>Plans whose humps cannot be swept, one for each reason but a tackle, and one whose declared fall contradicts its measured ends.</summary>
    internal static RecoveryPlan[] Unswept() =>
    [
        Over(Rear(height: null), 12, 0.3),
        Over(Rear(height: 5.5), 12, 0.3),
        Over(Rear(position: 1), 12, 0.3),
        Forwards(),
        Over(ReferencePlans.Gentle().With(ReferencePlans.Gentle().Site.WithLinePitch(Angle.FromDegrees(5))), 18, 0.3),
    ];

    /// <summary>Drawn out forwards by a point half a metre ahead of its front axle.</summary>
    private static RecoveryPlan Forwards()
    {
        var rear = Rear(position: 0.5);
        return Over(rear.With(new StuckMachine(rear.Stuck.Machine, rear.Stuck.Soil, rear.Stuck.Sinkage, PullDirection.Forwards)), 12, 0.3);
    }

    private static RecoveryPlan Rear(double position = -9, double? height = 0.9)
    {
        var plan = ReferencePlans.Gentle();
        var eye = new AttachmentPoint("rear eye", AttachmentKind.RecoveryPoint, true).WithPosition(M(position)).WithHeight(height is { } h ? M(h) : null);
        return plan.With(new Rig(plan.Rig.Drawbar, [plan.Rig.Parts[0]], eye));
    }

    // Worked apart: legs of 11 m on 1.9 m reach sqrt(11^2 - 0.95^2) = 10.9589 m, with 15 m of strap 25.9589 m, 25.9587 m in plan over 0.1 m of rise. The line lies 0.4 + 0.1 x/25.9587 high less half of 0.02 m.
    // At 18 m: 0.019341 m above a bank of 0.44 m; 8 m on it is 10 m off and 0.011477 m too high; they meet at x = 0.05/0.1 x 25.9587 = 12.97935 m, after 5.02065 m.
    [Fact]
    public void A_hump_that_comes_under_the_line_is_told_with_the_way_to_it()
    {
        var a = Over(ReferencePlans.Gentle(), 18, 0.44).Assess();
        var hump = Assert.Single(a.GroundClearance!.Obstacles);
        Assert.Equal(0.019341, hump.First.Meters, 1e-6);
        Assert.Equal(-0.011477, hump.Least.Meters, 1e-6);
        Assert.Equal(1, hump.LeastAt.DecimalFractions, 1e-12);
        var finding = Assert.Single(a.Findings, f => f.Id == "line.meets-ground");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(5.020647, finding.Available!.Value, 1e-6);
        Assert.Equal(8, finding.Required!.Value, 1e-12);
        Assert.Contains("bears on the bank once the machine has come 5.02 m on", finding.Message, StringComparison.Ordinal);
        Assert.Contains(a.StopCriteria, p => p.Action.Contains("has come 5 m on", StringComparison.Ordinal) && p.Why.Contains("the bank", StringComparison.Ordinal));
        var section = a.ToDocument(DisplayUnits.Metric).Sections.Single(s => s.Key == "over-ground");
        Assert.Equal(["bank", "-0.011 m", "8 m", "5 m"], section.Blocks[0].Rows.Single());
        Assert.All(a.ToReport(80).Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void A_hump_that_stays_below_the_line_is_shown_and_not_found()
    {
        var a = Over(ReferencePlans.Gentle(), 18, 0.42).Assess();
        Assert.Equal(0.008523, a.GroundClearance!.Worst!.Least.Meters, 1e-6);
        Assert.DoesNotContain(a.Findings, f => f.Id is "line.meets-ground" or "line.fouls");
        Assert.Equal("not touched", a.ToDocument(DisplayUnits.Metric).Sections.Single(s => s.Key == "over-ground").Blocks[0].Rows.Single()[3]);
    }

    [Fact]
    public void A_line_that_bears_on_the_ground_as_found_stops_the_job()
    {
        var a = Over(ReferencePlans.Gentle(), 18, 0.47).Assess();
        var finding = Assert.Single(a.Findings, f => f.Id == "line.fouls");
        Assert.Equal("The line does not run free: it bears on the bank.", finding.Message);
        Assert.Equal(Verdict.Stop, a.Verdict);
    }

    // Eye 9 m behind the front axle and 4.1 m behind the second one: a climb of 0.5 m lowers it by 0.5 x 4.1/4.9 = 0.41837 m. Line of 15 m to a drawbar 0.4 m lower, 14.99467 m in plan; bank 12 m off, 2 m on: 0.48163 + 0.01837/14.99467 - 0.31 = 0.17286 m.
    [Fact]
    public void A_climb_earns_no_lift_and_lowers_an_eye_behind_the_axles()
    {
        var hump = Assert.Single(Over(Rear(), 12, 0.3, travel: 2).Assess().GroundClearance!.Obstacles);
        Assert.Equal(0.509972, hump.First.Meters, 1e-6);
        Assert.Equal(0.172858, hump.Least.Meters, 1e-6);
        Assert.Equal(0, Over(ReferencePlans.Gentle(), 18, 0.44).Assess().GroundClearance!.Way.FrontRise.Meters);
    }

    // Out at 4 degrees the climb of 0.5 m takes 0.5/tan 4 = 7.150333 m. The bank 12 m off comes under the eye after 3 m: 0.9 - 0.4183673 x 3/7.150333 - 0.31 = 0.414469 m, however much further the machine is drawn.
    [Theory]
    [InlineData(8)]
    [InlineData(20)]
    [InlineData(60)]
    public void The_climb_lowers_an_eye_on_its_own_way_and_not_spread_over_all_of_it(double travel)
    {
        var hump = Assert.Single(Over(Rear(), 12, 0.3, travel: travel).Assess().GroundClearance!.Obstacles);
        Assert.Equal(0.509972, hump.First.Meters, 1e-6);
        Assert.Equal(0.414469, hump.Least.Meters, 1e-6);
        Assert.Equal(3 / travel, hump.LeastAt.DecimalFractions, 1e-9);
    }

    // A bank 18 m off and 0.4 m high. After the climb, 7.150333 m on, it is 1.849667 m from the eye: 0.4816327 + 0.0183673 x 1.849667/14.99467 - 0.41 = 0.073898 m; at the end, 1 m from it, 0.072858 m.
    [Fact]
    public void The_turn_at_the_end_of_the_climb_is_met_exactly()
    {
        var hump = Assert.Single(Over(Rear(), 18, 0.4, travel: 8).Assess().GroundClearance!.Obstacles);
        Assert.Equal(0.073898, hump.At(7.150333 / 8)!.Value, 1e-6);
        Assert.Equal(0.072858, hump.Least.Meters, 1e-6);
        Assert.Equal(1, hump.LeastAt.DecimalFractions, 1e-12);
    }

    [Fact]
    public void An_end_that_is_not_known_leaves_the_humps_unchecked_and_says_so()
    {
        void Unchecked(RecoveryPlan plan, string why)
        {
            var a = plan.Assess();
            Assert.Null(a.GroundClearance);
            Assert.Contains(a.Findings, f => f.Id == "line.path-not-checked" && f.Subject.Contains(why, StringComparison.Ordinal));
            Assert.DoesNotContain(a.ToDocument(DisplayUnits.Metric).Sections.Single(s => s.Key == "over-ground").Blocks, b => b.Kind == ReportBlockKind.Table);
        }

        Unchecked(Over(Rear(height: null), 12, 0.3), "place or height of the attachment is missing");
        Unchecked(Over(Rear(height: 5.5), 12, 0.3), "its ends do not fit its length");
        Unchecked(Over(Rear(), 12, 0.3, drawbar: -5).With(new Rig(ReferencePlans.Gentle().Rig.Drawbar, [new Strap("short strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(300), M(5))], Rear().Rig.Casualty)), "its ends do not fit its length");
        Unchecked(Over(Rear(position: 1), 12, 0.3), "past its own machine's axle");
        Unchecked(Forwards(), "ahead of its front axle: that way is not worked");
        Unchecked(Over(ReferencePlans.Gentle(), 18, 0.44).WithTackle(new LineTackle(2)), "tackle");
    }

    // The ends of the worked line: 0.1 m over 25.9587 m, 0.2207 deg; two degrees more or less is the same fact, 0 was not declared.
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, false)]
    [InlineData(2.22, false)]
    [InlineData(2.23, true)]
    [InlineData(-1.77, false)]
    [InlineData(-1.79, true)]
    public void A_declared_fall_that_is_not_that_of_the_measured_ends_is_a_contradiction(double degrees, bool contradicts)
    {
        var plan = Over(ReferencePlans.Gentle(), 18, 0.3);
        var findings = plan.With(plan.Site.WithLinePitch(Angle.FromDegrees(degrees))).Assess().Findings;
        Assert.Equal(contradicts, findings.Any(f => f.Id == "plan.contradiction" && f.Subject.Contains("measured at a fall of 0.221 deg", StringComparison.Ordinal)));
    }

    [Fact]
    public void Nothing_measured_is_nothing_said_and_a_plan_tells_its_ground_apart()
    {
        var bare = ReferencePlans.Gentle().Assess();
        Assert.Null(bare.GroundClearance);
        Assert.DoesNotContain(bare.ToDocument(DisplayUnits.Metric).Sections, s => s.Key == "over-ground");
        var prints = new[] { bare.Plan, Over(bare.Plan, 18, 0.44), Over(bare.Plan, 18, 0.45), Over(bare.Plan, 18.1, 0.44), Over(bare.Plan, 18, 0.44, 0.51), Over(bare.Plan, 18, 0.44, 0.5, 7), Over(bare.Plan, 18, 0.44, name: "kerb") }.Select(p => p.Assess().Fingerprint).ToList();
        Assert.Equal(prints.Count, prints.Distinct().Count());
        var over = Over(bare.Plan, 18, 0.44);
        Assert.Null(RecoveryMeasures.OtherDirection(new AttachmentPoint("front point", AttachmentKind.RecoveryPoint, true), ReferencePlans.Tractor(20)).ApplyTo(over).Site.GroundBetween);
        Assert.Empty(Over(bare.Plan, 200, 0.44).Assess().GroundClearance!.Obstacles);
    }

    [Fact]
    public void Ground_that_makes_no_sense_is_refused_with_words()
    {
        Assert.Contains("at least one", Assert.Throws<ArgumentException>(() => new GroundBetween([], M(0.5), M(8))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new GroundBetween(null!, M(0.5), M(8)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new GroundBetween([new GroundObstacle("bank", M(1), M(0))], M(0.5), M(100.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new GroundBetween([new GroundObstacle("bank", M(1), M(0))], M(-5.1), M(8)));
    }
}
