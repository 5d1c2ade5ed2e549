using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class TeamTests
{
    private static TeamMember Member(string name, double coneIndex = 900, double scale = 1, double angle = 0, double? speed = null) => new(Tower(name, coneIndex, scale))
    {
        LineAngle = Angle.FromDegrees(angle),
        WheelSpeed = speed is { } v ? Speed.FromKilometersPerHour(v) : null,
    };

    private static TowingMachine Tower(string name, double coneIndex, double scale)
    {
        var tower = Tractors.SixteenTonneTower(coneIndex, 1);
        var machine = Tractors.SixteenTonnes(62.8 * scale, 94.2 * scale);
        return tower with { Machine = new Machine(name, machine.Axles, machine.Loads) };
    }

    private static double Alone(TeamMember member) => PullCapability.Estimate(member.Tower).Sustained.Central.Newtons;

    [Theory]
    [CheckRows("traction-scipy", "team-spread")]
    public void Vector_sum_of_spread_lines(CheckRow row)
    {
        var angles = row.SiList("angles");
        var pulls = row.SiList("pulls");
        // Hitch ratings make the pulls of the row: the least of the limits of each machine.
        var team = TowingTeam.SideBySide(angles.Select((a, i) => new TeamMember(Tower("m" + i, 3000, 1) with { HitchRating = Force.FromNewtons(pulls[i]) }) { LineAngle = Angle.FromRadians(a) }));
        var pull = TeamPull.Estimate(team);
        row.Matches(("along", pull.Sustained.Central.Newtons), ("sideways", pull.Sideways.Newtons), ("off", pull.OffDirection.Radians));
    }

    [Theory]
    [CheckRows("traction-scipy", "team-equaliser")]
    public void Free_strap_carries_the_same_at_both_ends(CheckRow row)
    {
        var half = row.Si("theta") / 2;
        TeamMember Of(string name, string pull, double angle) => new(Tower(name, 3000, 1) with { HitchRating = Force.FromNewtons(row.Si(pull)) }) { LineAngle = Angle.FromRadians(angle) };
        var pull = TeamPull.Estimate(TowingTeam.Equalised(Of("a", "P1", half), Of("b", "P2", -half)));
        row.MatchesOne("along", pull.Sustained.Central.Newtons);
        row.MatchesOne("high_end", TeamKernel.EqualisedEnd(row.Si("P1"), row.Si("P2"), row.Si("mu"), row.Si("theta")));
        Assert.Equal(pull.LineForces[0].Newtons, pull.LineForces[1].Newtons, 1e-9);
        Assert.Equal(0, pull.Sideways.Newtons, 1e-6);
    }

    [Theory]
    [CheckRows("traction-scipy", "team-in-line")]
    public void Drawbar_of_the_last_carries_both(CheckRow row)
    {
        TeamMember Of(string name, double scale) => new(Tower(name, row.Si("CI") / 1000, scale)) { FrontHeight = M(row.Si("hf")) };
        var pull = TeamPull.Estimate(TowingTeam.InLine([Of("front", row.Si("scale1")), Of("rear", row.Si("scale2"))]));
        row.Matches(("first", pull.LineForces[0].Newtons), ("second", pull.LineForces[1].Newtons));
    }

    [Theory]
    [CheckRows("traction-scipy", "team-sharing")]
    public void Common_speed_over_the_ground(CheckRow row)
    {
        var team = TowingTeam.SideBySide([Member("a", row.Si("CI") / 1000, row.Si("scale1"), row.Printed("a1"), row.Printed("v1")), Member("b", row.Si("CI") / 1000, row.Si("scale2"), row.Printed("a2"), row.Printed("v2"))]);
        var shares = TeamPull.Estimate(team).Shares(Force.FromNewtons(row.Si("wanted")))!;
        row.Matches(("P1", shares[0].Own.Newtons), ("P2", shares[1].Own.Newtons), ("s1", shares[0].Slip.DecimalFractions), ("s2", shares[1].Slip.DecimalFractions));
    }

    [Fact]
    public void Two_alike_side_by_side_pull_twice_and_lose_the_cosine()
    {
        var one = Alone(Member("a"));
        var straight = TeamPull.Estimate(TowingTeam.SideBySide([Member("a"), Member("b")]));
        Assert.Equal(2 * one, straight.Sustained.Central.Newtons, 1e-6 * one);
        var spread = TeamPull.Estimate(TowingTeam.SideBySide([Member("a", angle: 30), Member("b", angle: -30)]));
        Assert.Equal(Math.Sqrt(3) * one, spread.Sustained.Central.Newtons, 1e-6 * one);
        Assert.Equal(0, spread.OffDirection.Degrees, 1e-9);
        Assert.Equal(60, spread.Team.IncludedAngle.Degrees, 1e-9);
    }

    [Fact]
    public void Unequal_machines_and_what_an_equaliser_costs()
    {
        TeamMember strong = Member("strong", scale: 1.5, angle: 15), weak = Member("weak", scale: 0.8, angle: -15);
        var spread = TeamPull.Estimate(TowingTeam.SideBySide([strong, weak]));
        var equalised = TeamPull.Estimate(TowingTeam.Equalised(strong, weak));
        Assert.True(spread.Sideways.Newtons > 0);
        Assert.Equal(2 * Alone(weak) * Math.Cos(Math.PI / 12), equalised.Sustained.Central.Newtons, 1e-6);
        Assert.True(equalised.Sustained.Central < spread.Sustained.Central);
        Assert.True(equalised.LineForcesImposable[0] > equalised.LineForcesImposable[1]);
        Assert.Contains("pull.team-off-direction", TeamPull.Estimate(TowingTeam.SideBySide([strong with { LineAngle = Angle.FromDegrees(30) }, weak])).Findings.Select(f => f.Id));
    }

    [Fact]
    public void One_losing_its_grip()
    {
        TeamMember a = Member("a", angle: 20), b = Member("b", angle: -20);
        var spread = TeamPull.Estimate(TowingTeam.SideBySide([a, b]));
        var left = spread.Losing(0);
        Assert.Equal(Alone(b) * Math.Cos(Math.PI / 9), left.Remaining.Central.Newtons, 1e-6);
        Assert.Equal(-20, left.OffDirection.Degrees, 1e-9);
        Assert.True(left.Sideways.Newtons < 0);
        Assert.Equal(0, TeamPull.Estimate(TowingTeam.Equalised(a, b)).Losing(1).Remaining.Central.Newtons);
        var line = TeamPull.Estimate(TowingTeam.InLine([Member("a"), Member("b")]));
        Assert.Equal(Alone(b), line.Losing(0).Remaining.Central.Newtons, 1e-6);
        var dragged = line.Losing(1).Remaining.Central.Newtons;
        // The front one drags the 157 kN behind it, at a motion resistance between 0.04 and 0.15 of its weight.
        Assert.InRange(Alone(Member("a")) - dragged, 0.04 * 157e3, 0.15 * 157e3);
        Assert.Contains("without b", line.Losing(1).ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => line.Losing(2));
    }

    [Fact]
    public void In_line_and_abreast_pull_much_alike_but_the_last_drawbar_carries_all()
    {
        var line = TeamPull.Estimate(TowingTeam.InLine([Member("a"), Member("b")]));
        var abreast = TeamPull.Estimate(TowingTeam.SideBySide([Member("a"), Member("b")]));
        Assert.Equal(1, line.Sustained.Central / abreast.Sustained.Central, 0.02);
        Assert.Equal(line.Sustained.Central.Newtons, line.LineForces[1].Newtons);
        Assert.True(line.LineForcesImposable[1].Newtons > 1.9 * line.LineForcesImposable[0].Newtons);
        Assert.Equal(Text.Kilonewtons(line.Sustained.Central.Newtons), line.Explain().Steps[^1].Value);
        Assert.Equal(Text.Kilonewtons(abreast.Sustained.Central.Newtons), abreast.Explain().Steps[^1].Value);
    }

    [Fact]
    public void Raises_each_objection_and_none_beyond_it()
    {
        static string[] Ids(TowingTeam team) => TeamPull.Estimate(team).Findings.Select(f => f.Id).Distinct().ToArray();
        Assert.Equal(["pull.team-not-together", "pull.team-one-loses-grip"], Ids(TowingTeam.SideBySide([Member("a", angle: 30), Member("b", angle: -30)])));
        var wide = TeamPull.Estimate(TowingTeam.SideBySide([Member("a", angle: 30.1), Member("b", angle: -30)])).Findings.Single(f => f.Id == "pull.team-angle-wide");
        Assert.Equal(Severity.Caution, wide.Severity);
        Assert.Equal(Severity.Stop, TeamPull.Estimate(TowingTeam.SideBySide([Member("a", angle: 60.1), Member("b", angle: -60)])).Findings.Single(f => f.Id == "pull.team-angle-wide").Severity);
        Assert.Contains("pull.team-front-point", Ids(TowingTeam.InLine([Member("a"), Member("b")])));
        Assert.Contains("pull.team-front-point-exceeded", Ids(TowingTeam.InLine([Member("a"), Member("b") with { FrontRating = KN(50) }])));
        var rated = Ids(TowingTeam.InLine([Member("a"), Member("b") with { FrontRating = KN(300) }]));
        Assert.DoesNotContain("pull.team-front-point", rated);
        Assert.DoesNotContain("pull.team-front-point-exceeded", rated);
        var hitch = Member("b").Tower with { HitchRating = KN(150) };
        Assert.Contains("pull.hitch-rating-exceeded", Ids(TowingTeam.InLine([Member("a"), new TeamMember(hitch)])));
        Assert.DoesNotContain("pull.hitch-rating-exceeded", Ids(TowingTeam.SideBySide([Member("a"), new TeamMember(hitch)])));
    }

    [Property(MaxTest = 40)]
    public Property Shares_add_up_and_the_faster_gear_slips_more() => Prop.ForAll(Gen.Choose(20, 140).ToArbitrary(), Gen.Choose(20, 40).ToArbitrary(), (wanted, speed) =>
    {
        var shares = TeamPull.Estimate(TowingTeam.SideBySide([Member("a", speed: 2), Member("b", speed: speed / 10.0)])).Shares(KN(wanted))!;
        return Math.Abs(shares.Sum(s => s.Own.Kilonewtons) - wanted) < 0.001 && shares[1].Slip >= shares[0].Slip && shares[1].Own.Newtons >= shares[0].Own.Newtons - 1e-3;
    });

    [Property(MaxTest = 40)]
    public Property A_team_never_beats_its_members_and_changes_without_jumps() => Prop.ForAll(Gen.Choose(35, 180).ToArbitrary(), Gen.Choose(5, 20).ToArbitrary(), Gen.Choose(0, 40).ToArbitrary(), (cone, tenths, angle) =>
    {
        double Of(Func<TeamMember, TeamMember, TowingTeam> team, double coneIndex, double half) => TeamPull.Estimate(team(Member("a", coneIndex, tenths / 10.0, half), Member("b", coneIndex, 1, -half))).Sustained.CentralNewtons;
        double index = 10.0 * cone, half = 0.5 * angle, sum = Alone(Member("a", index, tenths / 10.0)) + Alone(Member("b", index));
        double abreast = Of((a, b) => TowingTeam.SideBySide([a, b]), index, half), equal = Of(TowingTeam.Equalised, index, half);
        return abreast <= sum * (1 + 1e-9) && equal <= abreast * (1 + 1e-9)
            && Math.Abs(Of((a, b) => TowingTeam.SideBySide([a, b]), index + 1e-4, half + 1e-4) - abreast) < 1
            && Math.Abs(Of(TowingTeam.Equalised, index + 1e-4, half + 1e-4) - equal) < 1
            && Math.Abs(Of((a, b) => TowingTeam.InLine([a, b]), index + 1e-4, 0) - Of((a, b) => TowingTeam.InLine([a, b]), index, 0)) < 1;
    });

    [Fact]
    public void Sharing_in_line_on_an_equaliser_and_out_of_reach()
    {
        var line = TeamPull.Estimate(TowingTeam.InLine([Member("a"), Member("b")])).Shares(KN(120))!;
        Assert.Equal(120, line[1].LineForce.Kilonewtons, 1e-3);
        Assert.Equal(120, line.Sum(s => s.Own.Kilonewtons), 1e-3);
        var equal = TeamPull.Estimate(TowingTeam.Equalised(Member("a", scale: 1.4, angle: 10), Member("b", angle: -10))).Shares(KN(120))!;
        Assert.Equal(equal[0].Own.Newtons, equal[1].Own.Newtons, 1e-6);
        Assert.True(equal[0].Slip < equal[1].Slip);
        Assert.Contains("at slip", equal[0].ToString(), StringComparison.Ordinal);
        Assert.Null(TeamPull.Estimate(TowingTeam.SideBySide([Member("a"), Member("b")])).Shares(KN(400)));
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("two to four", Assert.Throws<ArgumentException>(() => TowingTeam.SideBySide([Member("a")])).Message, StringComparison.Ordinal);
        Assert.Contains("one name", Assert.Throws<ArgumentException>(() => TowingTeam.SideBySide([Member("a"), Member("a")])).Message, StringComparison.Ordinal);
        Assert.Contains("angle", Assert.Throws<ArgumentException>(() => TowingTeam.InLine([Member("a", angle: 3), Member("b")])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Member("a", angle: 81));
    }

    [Fact]
    public void A_bracket_without_a_root_is_refused()
    {
        Assert.Equal(Math.Sqrt(2), BracketedRoot.Find("root of two", x => (x * x) - 2, 0, 2, 1e-9), 1e-9);
        Assert.Equal(3, BracketedRoot.Find("end", x => x - 3, 0, 3, 1e-9));
        var none = Assert.Throws<SolverException>(() => BracketedRoot.Find("no root", x => (x * x) + 1, -1, 1, 1e-9));
        Assert.Equal((-1, 1), (none.Lower, none.Upper));
        // A jump changes sign without a root: the residual gives it away.
        Assert.Throws<SolverException>(() => BracketedRoot.Find("jump", x => x < 0.3 ? -1 : 1, 0, 1, 1e-9));
    }
}
