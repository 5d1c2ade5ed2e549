using System;
using System.Globalization;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Ends and bends of wire rope, eyes of straps, fibre ropes on pins.</summary>
public class WireRopeTests
{
    private static readonly Length D20 = Length.FromMillimeters(20);

    [Theory]
    [CheckRows("rigging-gear", "bend")]
    public void Bend(CheckRow row) => row.Matches(("eta", WireBendModel.Instance.Evaluate(M(0.02 * row.Si("D_over_d")), D20).Efficiency!.Value));

    [Theory]
    [CheckRows("rigging-gear", "bend-factor")]
    public void Bending_factor(CheckRow row) => row.MatchesList("factor", row.SiList("D_over_d").Select(r => WireBendModel.Instance.Evaluate(M(0.02 * r), D20).Factor!.Value).ToList());

    [Theory]
    [CheckRows("rigging-gear", "bend-limits")]
    public void Limits_of_bends(CheckRow row)
    {
        var ratios = row.SiList("D_over_d");
        var words = row.Word("place").Split('|').Select((p, i) => p == "body" ? SectionPlace.WireBody("body", D20, M(0.02 * ratios[i])) : SectionPlace.WireEye("eye", new WireTermination(WireTerminationKind.ResinSocket, D20, WireCore.Wire), M(0.02 * ratios[i])));
        row.MatchesWord("result", string.Join("|", words.Select(p => p.Finding is null ? "pass" : p.Finding.Severity == Severity.Stop ? "refuse" : "warn")));
        Assert.Equal("gear.eye-bent-tight", SectionPlace.WireEye("eye", new WireTermination(WireTerminationKind.ResinSocket, D20, WireCore.Wire), M(0.039)).Finding!.Id);
        Assert.Equal("gear.bend-too-tight", SectionPlace.WireEye("eye", new WireTermination(WireTerminationKind.ResinSocket, D20, WireCore.Wire), M(0.0199)).Finding!.Id);
    }

    [Fact]
    public void Bend_flags_and_working()
    {
        Assert.Empty(WireBendModel.Instance.Evaluate(M(0.04), D20).Flags);
        Assert.Single(WireBendModel.Instance.Evaluate(M(0.0399), D20).Flags);
        Assert.Null(WireBendModel.Instance.Evaluate(M(0.0199), D20).Efficiency);
        Assert.Equal(2, WireBendModel.Instance.Explain(M(0.08), D20).Steps.Count);
        Assert.Single(WireBendModel.Instance.Explain(M(0.0199), D20).Steps);
        Assert.Equal("0.75", WireBendModel.Instance.Explain(M(0.08), D20).Steps[1].Value);
        Assert.Contains("no figure", WireBendModel.Instance.Evaluate(M(0.01), D20).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("rigging-gear", "bend-fibre")]
    public void Fibre_on_a_pin(CheckRow row)
    {
        var stated = row.Word("D_min_stated").Split('|');
        row.MatchesWord("factor", string.Join("|", row.SiList("D").Select((d, i) => SectionPlace.FibrePin("pin", M(d), stated[i] == "none" ? null : Length.FromMillimeters(double.Parse(stated[i], CultureInfo.InvariantCulture))).Factor is { } f ? f.ToString(CultureInfo.InvariantCulture) : "refuse")));
    }

    [Theory]
    [CheckRows("rigging-gear", "termination")]
    public void Manual_table(CheckRow row)
    {
        var kind = row.Word("type") switch { "spelter_socket" => WireTerminationKind.ResinSocket, "swaged_socket" => WireTerminationKind.SwagedSocket, "mechanical_sleeve" => WireTerminationKind.SteelFerrule, _ => WireTerminationKind.HandSplice };
        var end = new WireTermination(kind, M(row.Si("diameter", 0.02)), row.Has("core") && row.Word("core") == "FC" ? WireCore.Fibre : WireCore.Wire, row.Has("steel") && row.Word("steel") == "stainless");
        row.Matches(("efficiency", end.Manual!.Value.DecimalFractions));
    }

    [Theory]
    [CheckRows("rigging-gear", "termination-band")]
    public void Wedge_socket(CheckRow row)
    {
        var end = new WireTermination(WireTerminationKind.WedgeSocket, D20, WireCore.Wire);
        row.Matches(("low", end.Manual!.Value.DecimalFractions), ("high", end.ManualHigh!.Value.DecimalFractions));
        Assert.Equal(0.75, end.Counted.DecimalFractions);
    }

    [Theory]
    [CheckRows("rigging-gear", "termination-strength")]
    public void Clips_leave_four_fifths(CheckRow row)
    {
        var rope = new WireRope("rope", Rating.BreakingStrength(Force.FromNewtons(row.Si("MBS"))), D20, WireCore.Wire, M(10));
        var end = SectionPlace.WireEye("end", new WireTermination(WireTerminationKind.Clips, D20, WireCore.Wire), null);
        row.Matches(("strength", rope.WithEnds(end, SectionPlace.Documented("socket")).Strength.Breaking!.Value.Newtons));
    }

    [Theory]
    [CheckRows("rigging-gear", "termination-factor")]
    public void Offshore_factors(CheckRow row) => row.MatchesList("factor", row.Word("type").Split('|').Select(t => new WireTermination(Kind(t), D20, WireCore.Wire).OffshoreFactor!.Value).ToList());

    [Theory]
    [CheckRows("rigging-gear", "termination-inverse")]
    public void Efficiencies_of_those_factors(CheckRow row) =>
        row.MatchesList("efficiency", new[] { WireTerminationKind.SteelFerrule, WireTerminationKind.HandSplice, WireTerminationKind.HandSpliceCableLaid, WireTerminationKind.AluminiumFerrule }.Select(k => new WireTermination(k, D20, WireCore.Wire).Counted.DecimalFractions).ToList());

    [Fact]
    public void The_lower_published_figure_counts()
    {
        double Of(WireTerminationKind kind, double inches, WireCore core = WireCore.Wire, bool stainless = false) => new WireTermination(kind, Length.FromInches(inches), core, stainless).Counted.DecimalFractions;
        Assert.Equal(0.95, Of(WireTerminationKind.SwagedSocket, 1));
        Assert.Equal(0.5, Of(WireTerminationKind.UnknownFerrule, 1));
        Assert.Equal(0.5, Of(WireTerminationKind.Unknown, 1));
        Assert.Equal(0.76, Of(WireTerminationKind.HandSplice, 0.5, stainless: true));
        Assert.Equal(0.80, Of(WireTerminationKind.HandSplice, 0.5));
        Assert.Equal(1, Of(WireTerminationKind.FlemishEye, 1));
        Assert.Null(new WireTermination(WireTerminationKind.FlemishEye, D20, WireCore.Wire).Manual);
        Assert.Null(new WireTermination(WireTerminationKind.SwagedSocket, D20, WireCore.Fibre).Manual);
        Assert.Equal(0.925, new WireTermination(WireTerminationKind.SteelFerrule, Length.FromInches(1.04), WireCore.Wire).Manual!.Value.DecimalFractions);
        Assert.Equal(0.90, new WireTermination(WireTerminationKind.SteelFerrule, Length.FromInches(2.07), WireCore.Wire).Manual!.Value.DecimalFractions);
        Assert.Equal("tm-5-3810-terminations", new WireTermination(WireTerminationKind.SwagedSocket, D20, WireCore.Wire).Source.Key);
        Assert.Equal("0027-nd-terminations", new WireTermination(WireTerminationKind.SteelFerrule, D20, WireCore.Wire).Source.Key);
    }

    [Fact]
    public void An_end_that_nobody_describes_takes_the_least_figure()
    {
        var rope = new WireRope("rope", Rating.BreakingStrength(KN(200)), D20, WireCore.Wire, M(20));
        Assert.Equal(100, rope.Strength.Breaking!.Value.Kilonewtons, 1e-12);
        Assert.Equal("assume.rope-end", rope.Strength.Assumptions.Single().Id);
        Assert.Equal(0.555, rope.WithHitch(Hitch.Choker(ChokerKind.WireRope, Angle.FromDegrees(70))).WithEnds(SectionPlace.Documented("a"), SectionPlace.Documented("b")).Strength.Section!.Value, 1e-12);
        Assert.Equal(0.75, rope.WithEnds(SectionPlace.Documented("a"), SectionPlace.Documented("b")).WithBody(SectionPlace.WireBody("hook", D20, M(0.08))).Strength.Section!.Value, 1e-12);
    }

    [Theory]
    [CheckRows("rigging-gear", "clips")]
    public void Clips_as_printed(CheckRow row)
    {
        var clips = WireRopeClips.For(M(row.Si("diameter")))!;
        row.Matches(("clips", clips.Clips), ("spacing", clips.Spacing.Meters));
    }

    [Theory]
    [CheckRows("rigging-gear", "clips-thumb")]
    public void The_rule_of_thumb_is_a_clip_short_at_an_inch(CheckRow row)
    {
        var d = row.SiList("diameter");
        row.MatchesList("rule_of_thumb", d.Select(x => (double)WireRopeClips.RuleOfThumb(M(x))).ToList());
        row.MatchesList("regulation", d.Select(x => (double)WireRopeClips.For(M(x))!.Clips).ToList());
        Assert.Equal(4, WireRopeClips.For(Length.FromMillimeters(14))!.Clips);
        Assert.Null(WireRopeClips.For(Length.FromMillimeters(28)));
    }

    [Theory]
    [CheckRows("rigging-gear", "eye-length")]
    public void Eye_length(CheckRow row) => row.Matches(("length", EyeFitModel.Instance.EyeLength(M(row.Si("D")), Angle.FromRadians(row.Si("eye_angle"))).Meters), ("length_rule", EyeFitModel.Instance.EyeLengthByRule(M(row.Si("D"))).Meters));

    [Theory]
    [CheckRows("rigging-gear", "eye-radius")]
    public void Eye_radius(CheckRow row) => row.Matches(("R_min", EyeFitModel.Instance.LeastRadius(M(row.Si("width"))).Meters));

    [Theory]
    [CheckRows("rigging-gear", "eye-bearing")]
    public void Eye_bearing(CheckRow row) => row.Matches(("p", EyeFitModel.Instance.Evaluate("eye", M(row.Si("D")), M(0.4), M(row.Si("width")), Force.FromNewtons(row.Si("T"))).BearingPressure.Pascals));

    [Theory]
    [CheckRows("rigging-gear", "eye-bearing-limit")]
    public void Eye_bearing_limit(CheckRow row)
    {
        Assert.Equal(7000, row.Printed("limit"));
        row.Matches(("limit_SI", SectionKernel.BearingLimit));
    }

    [Theory]
    [CheckRows("rigging-gear-scipy", "eye-opening")]
    public void Eye_opening(CheckRow row)
    {
        var fit = EyeFitModel.Instance.Evaluate("eye", M(row.Si("D")), M(row.Si("l")), M(0.06), KN(10));
        row.Matches(("e", fit.Opening.Radians));
    }

    [Fact]
    public void An_eye_is_objected_to_for_each_reason()
    {
        EyeFit Fit(double pin, double length, double width, double load, double? jaw = null, bool straight = true) => EyeFitModel.Instance.Evaluate("eye", Length.FromMillimeters(pin), Length.FromMillimeters(length), Length.FromMillimeters(width), KN(load), jaw is { } j ? Length.FromMillimeters(j) : null, straight);
        Assert.Empty(Fit(50, 175, 60, 100, 60).Findings);
        Assert.Empty(Fit(50, 175, 60, 100).Flags);
        Assert.Equal(["gear.eye-open"], Fit(50, 160, 60, 100).Findings.Select(f => f.Id));
        Assert.Single(Fit(50, 174.9, 60, 100).Flags);
        Assert.Equal(["gear.eye-bunched"], Fit(50, 200, 60, 100, 59.9).Findings.Select(f => f.Id));
        Assert.Equal(["gear.bearing-pressure"], Fit(50, 200, 60, 145).Findings.Select(f => f.Id));
        Assert.Equal(["gear.eye-on-round"], Fit(89, 400, 60, 100, straight: false).Findings.Select(f => f.Id));
        Assert.Empty(Fit(90, 400, 60, 100, straight: false).Findings);
        Assert.Equal(["gear.eye-on-round"], Fit(200, 800, 76, 100, straight: false).Findings.Select(f => f.Id));
        Assert.Equal(2, EyeFitModel.Instance.Explain(M(0.05), M(0.175), M(0.06), KN(100)).Steps.Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => Fit(50, 50, 60, 100));
    }

    private static WireTerminationKind Kind(string word) => word switch
    {
        "resin_socket" => WireTerminationKind.ResinSocket,
        "swage" => WireTerminationKind.SwagedSocket,
        "flemish_eye" => WireTerminationKind.FlemishEye,
        "steel_ferrule" => WireTerminationKind.SteelFerrule,
        "hand_splice" => WireTerminationKind.HandSplice,
        "hand_splice_cable_laid" => WireTerminationKind.HandSpliceCableLaid,
        "aluminium_ferrule" => WireTerminationKind.AluminiumFerrule,
        _ => throw new ArgumentException(word, nameof(word)),
    };
}
