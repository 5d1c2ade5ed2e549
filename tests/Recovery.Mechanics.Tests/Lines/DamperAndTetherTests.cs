using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

public class DamperAndTetherTests
{
    [Theory]
    [CheckRows("lines", "capture-fraction")]
    public void Ideal_capture_matches(CheckRow row) => row.Matches(("fraction", new LineDamper(Kg(row.Si("m_damper"))).IdealBoundOnEnergyKept(Kg(row.Si("m_moving"))).DecimalFractions));

    [Theory]
    [CheckRows("lines", "capture")]
    public void Speed_and_energy_after_ideal_capture_match(CheckRow row)
    {
        var damper = new LineDamper(Kg(row.Si("m_damper")));
        double moving = row.Si("m_moving"), before = row.Si("v");
        var v = damper.IdealBoundOnSpeedKept(Kg(moving), Mps(before)).MetersPerSecond;
        row.Matches(("v_after", v), ("KE_after", moving * before * before / 2 * damper.IdealBoundOnEnergyKept(Kg(moving)).DecimalFractions));
        // Momentum is kept.
        Assert.Equal(moving * before, (moving + row.Si("m_damper")) * v, 1e-9 * moving * before);
    }

    [Theory]
    [CheckRows("lines", "weight-sag")]
    public void Sag_under_a_weight_matches(CheckRow row) => row.Matches(("sag", new LineDamper(Kg(row.Si("m_damper"))).AddedSag(M(row.Si("L")), N(row.Si("H"))).Meters));

    [Theory]
    [CheckRows("lines", "tether")]
    public void A_tether_matches(CheckRow row)
    {
        var tether = new Tether(N(row.Si("F_break")), Frac(row.Si("eb")), M(row.Si("L")), M(0.4), KN(1000));
        var check = tether.Check(Energy.FromJoules(row.Si("E_arrest")), M(0.3));
        row.MatchesOne("capacity", tether.Capacity.Joules);
        row.MatchesOne("F_peak", check.ArrestForce.Newtons);
        row.MatchesWord("holds", check.TetherHolds ? "true" : "false");
        Assert.Equal(check.TetherHolds, check.IsAdequate);
        Assert.Equal(Text.Kilonewtons(check.ArrestForce.Newtons), tether.Explain(Energy.FromJoules(row.Si("E_arrest"))).Steps[^1].Value);
        // A tether at its capacity is loaded to its break, neither more nor less.
        Assert.Equal(row.Si("F_break"), tether.Check(tether.Capacity, M(0.3)).ArrestForce.Newtons, 1e-6);
    }

    [Theory]
    [InlineData(1, 0.4, 0.3, 60, "")]
    [InlineData(4, 0.4, 0.3, 60, "tether")]
    [InlineData(1, 0.3, 0.3, 60, "slack of the tether")]
    [InlineData(1, 0.4, 0.3, 50, "anchor of the tether")]
    public void Each_way_to_fail_is_said(double factor, double slack, double workingStretch, double anchor, string subject)
    {
        // 37.5 kJ against 11.93 kJ; 56.4 kN on the anchor.
        var check = new Tether(KN(100), Frac(0.25), M(3), M(slack), KN(anchor)).Check(Energy.FromKilojoules(11.93), M(workingStretch), factor);
        var finding = Assert.Single(check.Findings());
        Assert.Equal(subject.Length == 0, check.IsAdequate);
        Assert.Equal(subject.Length == 0 ? "line.damper-no-credit" : "line.tether-inadequate", finding.Id);
        if (subject.Length > 0) Assert.Contains(subject, finding.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_slack_lets_full_speed_develop()
    {
        Assert.True(new Tether(KN(100), Frac(0.25), M(3), M(0.5), KN(100)).Check(Energy.FromKilojoules(10), M(0.3)).ActsEarly);
        Assert.False(new Tether(KN(100), Frac(0.25), M(3), M(0.501), KN(100)).Check(Energy.FromKilojoules(10), M(0.3)).ActsEarly);
    }

    [Fact]
    public void A_damper_is_present_without_credit()
    {
        var remark = new LineDamper(Kg(20)).Remark();
        Assert.Equal(("line.damper-no-credit", Severity.Note), (remark.Id, remark.Severity));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineDamper(Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Tether(KN(100), Frac(0.25), M(3), M(-0.1), KN(100)));
    }

    [Theory]
    [CheckRows("lines", "one-rule")]
    public void One_published_rule_matches(CheckRow row) =>
        row.Matches(("distance_at_least", DistanceRules.All.Single(r => r.Key == "strap-instructions").Distance(M(row.Si("L")))!.Value.Meters));

    [Theory]
    [CheckRows("lines", "largest-rule-list")]
    public void The_largest_rule_matches(CheckRow row)
    {
        Assert.Equal(row.Si("multiple"), DistanceRules.Largest.Multiple);
        row.MatchesList("distance", row.SiList("L").Select(l => DistanceRules.FloorOfDrawnArea(M(l)).Meters).ToList());
    }

    [Theory]
    [CheckRows("lines", "largest-rule")]
    public void The_largest_rule_over_the_whole_line_matches(CheckRow row)
    {
        var whole = row.SiList("strap").Zip(row.SiList("bridle_leg"), (s, b) => s + b).Zip(row.SiList("axle_strap"), (s, a) => s + a).ToList();
        row.MatchesList("L_line", whole);
        row.MatchesList("distance", whole.Select(l => DistanceRules.FloorOfDrawnArea(M(l)).Meters).ToList());
    }

    [Theory]
    [CheckRows("lines", "distance-rules")]
    public void The_rules_of_the_recovery_manuals_match(CheckRow row)
    {
        double Of(string key, string length) => DistanceRules.All.Single(r => r.Key == key).Distance(M(row.Si(length)))!.Value.Meters;
        row.Matches(("radius", new[] { Of("army-paid-out", "paid_out_line"), Of("strap-instructions", "strap_unstretched"), Of("army-cable", "longest_line_used") }.Max()));
    }

    [Fact]
    public void The_rules_disagree_and_none_without_a_number_gets_one()
    {
        var distances = DistanceRules.Distances(M(9)).Select(d => d.Meters).ToList();
        Assert.Equal([9, 13.5, 13.5, 18, 22.5], distances);
        Assert.All(DistanceRules.All.Where(r => r.Multiple is null), r => Assert.Null(r.Distance(M(9))));
        Assert.All(DistanceRules.All, r => Assert.Contains(r.Source.Citation, r.ToString(), StringComparison.Ordinal));
    }
}
