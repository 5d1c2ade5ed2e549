using System;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Printed tables of chain, webbing, wire rope and shackles, row by row.</summary>
public class GearTableTests
{
    [Theory]
    [CheckRows("rigging-gear", "chain-table")]
    public void Chain_rows_as_printed(CheckRow row)
    {
        var chain = DefaultRatings.OfChain(Grade(row.Word("grade")), Length.FromMeters(row.Si("diameter")))!;
        row.Matches(("WLL_kg", N(chain.Metric)), ("WLL_lb", N(chain.Imperial!)));
        Assert.Equal(Standing.Secondary, chain.Source.Standing);
        Assert.Equal(RatingKind.WorkingLoadLimit, chain.Rating.Kind);
    }

    [Theory]
    [CheckRows("rigging-gear", "chain-breaking")]
    public void Chain_breaks_by_grade(CheckRow row)
    {
        var mbs = ChainKernel.Breaking((int)row.Si("grade"), row.Si("diameter"));
        row.Matches(("MBS", mbs), ("ratio", mbs / row.Si("WLL_table")));
        Assert.Equal(row.Si("WLL_table"), N(DefaultRatings.OfChain(Grade(row.Word("grade")), Length.FromMeters(row.Si("diameter")))!.Metric), 1e-6);
    }

    [Theory]
    [CheckRows("rigging-gear", "chain-quarter")]
    public void A_quarter_of_alloy_chain(CheckRow row)
    {
        var mbs = ChainKernel.Breaking(80, row.Si("diameter"));
        row.Matches(("MBS", mbs), ("quarter", MarkingKernel.Working(mbs, row.Si("DF"))), ("ratio_to_table", mbs / N(DefaultRatings.OfChain(ChainGrade.Grade80, Length.FromMeters(row.Si("diameter")))!.Metric)));
    }

    [Theory]
    [CheckRows("rigging-gear", "chain-quarter-table")]
    public void A_quarter_against_the_table(CheckRow row) => row.Matches(("WLL", MarkingKernel.Working(ChainKernel.Breaking(80, row.Si("diameter")), row.Si("DF"))));

    [Theory]
    [CheckRows("rigging-gear", "chain-regulator")]
    public void Factor_inside_the_regulators_table(CheckRow row) => row.Matches(("DF", ChainKernel.Breaking((int)row.Si("grade"), row.Si("diameter")) / row.Si("WLL")));

    [Theory]
    [CheckRows("rigging-gear", "chain-unmarked")]
    public void Unmarked_chain_counts_as_grade_30(CheckRow row)
    {
        var chain = DefaultRatings.OfChain(ChainGrade.Unmarked, Length.FromMeters(row.Si("diameter")))!;
        row.Matches(("WLL", N(chain.Metric)));
        Assert.Equal(Standing.Primary, chain.Source.Standing);
    }

    [Theory]
    [CheckRows("rigging-gear", "chain-order")]
    public void The_order_of_grades_is_not_the_order_of_limits(CheckRow row)
    {
        var d = Length.FromMeters(row.Si("diameter"));
        row.Matches(("WLL_G70", N(DefaultRatings.OfChain(ChainGrade.Grade70, d)!.Metric)), ("WLL_G80", N(DefaultRatings.OfChain(ChainGrade.Grade80, d)!.Metric)));
    }

    [Fact]
    public void Chain_outside_and_between_its_sizes()
    {
        Assert.Null(DefaultRatings.OfChain(ChainGrade.Grade70, Length.FromMillimeters(6)));
        Assert.Equal(10, DefaultRatings.OfChain(ChainGrade.Grade70, Length.FromMillimeters(12))!.Size.Millimeters, 1e-12);
        Assert.Equal(13, DefaultRatings.OfChain(ChainGrade.Grade100, Length.FromMillimeters(40))!.Size.Millimeters, 1e-12);
        Assert.Equal(13, DefaultRatings.OfChain(ChainGrade.Grade80, Length.FromInches(0.5))!.Size.Millimeters, 1e-12);
    }

    [Theory]
    [CheckRows("rigging-gear", "webbing-table")]
    public void Webbing_rows_as_printed(CheckRow row) => row.Matches(("WLL", N(DefaultRatings.OfWebbing(Length.FromMeters(row.Si("width")))!.Metric)));

    [Theory]
    [CheckRows("rigging-gear", "webbing-inch")]
    public void Webbing_is_a_thousand_pounds_an_inch(CheckRow row)
    {
        var widths = row.SiList("width");
        row.MatchesList("WLL", widths.Select(w => w / 0.0254 * 1000 * 4.4482216152605).ToList());
        row.MatchesList("WLL", widths.Select(w => N(DefaultRatings.OfWebbing(Length.FromMeters(w))!.Metric)).ToList());
        Assert.Null(DefaultRatings.OfWebbing(Length.FromMillimeters(40)));
    }

    [Theory]
    [CheckRows("rigging-gear", "wire-table")]
    public void Wire_rope_rows_as_printed(CheckRow row)
    {
        row.Matches(("WLL", N(DefaultRatings.OfWireRope(Length.FromMeters(row.Si("diameter")))!.Metric)));
        Assert.Null(DefaultRatings.OfWireRope(Length.FromMillimeters(6)));
        Assert.Equal(25, DefaultRatings.OfUnmarkedWireRope(KN(100)).Kilonewtons, 1e-12);
    }

    [Theory]
    [CheckRows("rigging-gear", "wire-sling")]
    public void Wire_rope_slings_as_printed(CheckRow row)
    {
        var sling = WireRopeSlings.Find(Length.FromMeters(row.Si("diameter")))!;
        row.Matches(("rating", N(sling.Rating)), ("proof", N(sling.ProofLoad)), ("MBS", N(sling.Breaking)), ("splice_efficiency", sling.SpliceEfficiency.DecimalFractions));
        Assert.InRange(N(sling.Breaking) / N(sling.Rating), 4.50, 4.74);
        Assert.Equal(2, N(sling.ProofLoad) / N(sling.Rating), 1e-12);
    }

    [Theory]
    [CheckRows("rigging-gear", "wire-sling-galvanised")]
    public void Galvanised_keeps_nine_tenths(CheckRow row) => row.Matches(("rating_galvanised", N(WireRopeSlings.All.Single(s => Math.Abs(N(s.Rating) - row.Si("rating")) < 1).Galvanised)));

    [Theory]
    [CheckRows("rigging-gear", "wire-sling-allowance")]
    public void Test_allowance_is_in_the_printed_strength(CheckRow row)
    {
        Assert.Equal(WireRopeKernel.TestAllowance, row.Si("allowance"));
        Assert.Equal(5, row.Si("DF"));
        row.Matches(("MBS", WireRopeSlings.All.Single(s => Math.Abs(N(s.Rating) - row.Si("rating")) < 1).BreakingByRule.Newtons));
    }

    [Theory]
    [CheckRows("rigging-gear", "chain-hot")]
    public void Hot_chain_by_the_newer_table(CheckRow row) => row.Matches(("reduction", 1 - HotChain.Newer(Temperature.FromDegreesFahrenheit(row.Printed("temperature")))!.Value.DecimalFractions));

    [Theory]
    [CheckRows("rigging-gear", "chain-hot-older")]
    public void Hot_chain_by_the_older_table(CheckRow row) => row.MatchesList("reduction", row.PrintedList("temperature").Select(t => 1 - HotChain.Older(Temperature.FromDegreesFahrenheit(t))!.Value.DecimalFractions).ToList());

    [Theory]
    [InlineData(399.9, 0)]
    [InlineData(400.1, 15)]
    [InlineData(999, 60)]
    public void Hot_chain_takes_the_row_above(double fahrenheit, double percent) => Assert.Equal(percent, 100 * (1 - ChainKernel.Hot(Celsius(fahrenheit))), 1e-9);

    [Fact]
    public void Chain_has_a_coldest_and_a_hottest_use()
    {
        Assert.True(double.IsNaN(ChainKernel.Hot(-41)));
        Assert.Equal(1, ChainKernel.Hot(-40));
        Assert.True(double.IsNaN(ChainKernel.Hot(Celsius(1001))));
        Assert.True(double.IsNaN(ChainKernel.HotOlder(Celsius(1001))));
        Assert.Equal(1, ChainKernel.HotOlder(Celsius(599)));
        Assert.Null(HotChain.Newer(Temperature.FromDegreesCelsius(540)));
        Assert.Null(HotChain.Older(Temperature.FromDegreesCelsius(-50)));
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-off-axis")]
    public void Shackle_off_its_axis(CheckRow row)
    {
        var shackle = Bow(row.Si("WLL")).WithOffAxis(Angle.FromRadians(row.Si("off_axis")));
        if (row.ExpectedNames.Contains("result")) Assert.Equal(["refuse", "rig.shackle-off-axis"], [row.ExpectedText("result"), GearInspection.OfLoad(shackle)!.Id]);
        else row.Matches(("allowed", shackle.Allowed!.Value.Newtons));
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-step")]
    public void Shackle_steps(CheckRow row)
    {
        var share = Bow(1e5).WithOffAxis(Angle.FromRadians(row.Si("off_axis"))).LimitShare;
        if (row.ExpectedNames.Contains("result")) Assert.Equal("refuse 0", row.ExpectedText("result") + " " + Text.Number(share));
        else row.Matches(("factor", share));
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-two-legs")]
    public void Two_even_legs_in_a_bow_are_a_gate(CheckRow row)
    {
        var shackle = Bow(row.Si("WLL")).WithTwoLegs(Angle.FromRadians(row.Si("theta")));
        if (row.ExpectedNames.Contains("result"))
        {
            row.MatchesWord("result", shackle.Allowed is null ? "refuse" : "pass");
            Assert.Equal("rig.shackle-legs-too-wide", GearInspection.OfLoad(shackle)!.Id);
        }
        else
        {
            row.Matches(("allowed", shackle.Allowed!.Value.Newtons));
            Assert.Null(GearInspection.OfLoad(shackle));
        }
    }

    [Fact]
    public void The_step_off_the_axis_never_meets_the_gate_of_two_legs()
    {
        var legs = Bow(1e5).WithOffAxis(Angle.FromDegrees(30)).WithTwoLegs(Angle.FromDegrees(60));
        Assert.Equal(1, legs.LimitShare);
        Assert.Equal(0, legs.OffAxis.Degrees);
        var single = legs.WithOffAxis(Angle.FromDegrees(30));
        Assert.Null(single.TwoLegs);
        Assert.Equal(0.7, single.LimitShare);
        Assert.Equal("rig.shackle-legs-too-wide", GearInspection.OfLoad(legs.WithShape(ShackleShape.Dee))!.Id);
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-on-bridle")]
    public void A_shackle_that_cannot_swing(CheckRow row)
    {
        var theta = row.Si("theta");
        var t = row.Si("P") * Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(1 / Math.Sin(theta / 2))), M(1)).LegShare;
        var shackle = Bow(row.Si("WLL")).WithOffAxis(Angle.FromRadians(theta / 2));
        row.Matches(("T", t), ("off_axis", theta / 2), ("factor", shackle.LimitShare), ("utilisation", t / shackle.Allowed!.Value.Newtons));
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-peak")]
    public void Shackle_under_a_computed_peak(CheckRow row) => row.Matches(("limit", ShackleKernel.Peak(row.Si("WLL"), row.Si("DAF"), row.Si("MBL"), row.Si("proof"))));

    [Theory]
    [CheckRows("rigging-gear", "shackle-ultimate")]
    public void Grade_A_ultimate_loads(CheckRow row)
    {
        var size = ShackleSizes.Find(ShackleSpecification.GradeA, Length.FromMeters(row.Si("diameter")))!;
        row.Matches(("ultimate", N(size.UltimateLoad!)));
        Assert.Equal(Standing.Primary, size.Source.Standing);
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-ultimate-limit")]
    public void Grade_A_limits_from_ultimate(CheckRow row)
    {
        var size = ShackleSizes.All.Single(s => s.UltimateLoad is { Unit: MarkingUnit.Pound } u && Math.Abs(N(u) - row.Si("ultimate")) < 1);
        Assert.Equal(5, row.Si("DF"));
        row.Matches(("WLL", N(size.WorkingLoadLimit)));
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-grade-a")]
    public void Grade_A_sizes(CheckRow row)
    {
        var size = ShackleSizes.Find(ShackleSpecification.GradeA, Length.FromMeters(row.Si("diameter")))!;
        row.Matches(("WLL", N(size.WorkingLoadLimit)), ("pin", size.PinDiameter!.Value.Meters), ("jaw", size.JawWidth!.Value.Meters));
        Assert.Equal(row.Standing == "from memory" ? Standing.FromMemory : Standing.Secondary, size.Source.Standing);
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-grade-b")]
    public void Grade_B_sizes(CheckRow row) => row.Matches(("WLL", N(ShackleSizes.Find(ShackleSpecification.GradeB, Length.FromMeters(row.Si("diameter")))!.WorkingLoadLimit)));

    [Theory]
    [CheckRows("rigging-gear", "shackle-grade-s")]
    public void Grade_S_sizes(CheckRow row)
    {
        var size = ShackleSizes.All.Single(s => s.Specification == ShackleSpecification.AustralianGradeS && Math.Abs(N(s.WorkingLoadLimit) - row.Si("WLL")) < 1);
        row.Matches(("bow", size.BodyDiameter.Meters), ("pin", size.PinDiameter!.Value.Meters), ("jaw", size.JawWidth!.Value.Meters));
        Assert.Equal(6, N(size.UltimateLoad!) / N(size.WorkingLoadLimit), 1e-12);
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-navy")]
    public void Navy_field_rule(CheckRow row)
    {
        var d = Length.FromMeters(row.Si("D"));
        row.Matches(("SWL", N(row.Id.EndsWith('a') ? ShackleSizes.Find(ShackleSpecification.NavyFieldRule, d)!.WorkingLoadLimit : ShackleSizes.NavyMetricRule(d))));
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-navy-metric")]
    public void Navy_coefficient_in_metric(CheckRow row)
    {
        Assert.Equal(ShackleKernel.NavyCoefficient, row.Printed("coefficient"));
        Assert.Equal(double.Parse(row.ExpectedText("coefficient_metric"), System.Globalization.CultureInfo.InvariantCulture), ShackleKernel.NavyShortTons(0.01) * MarkingKernel.ShortTon / MarkingKernel.Tonne, 4e-9);
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-one-size")]
    public void One_size_is_made_in_limits_four_times_apart(CheckRow row)
    {
        var d = Length.FromMeters(row.Si("D"));
        double Of(ShackleSpecification s) => N(ShackleSizes.Find(s, d)!.WorkingLoadLimit);
        row.Matches(("navy_rule", Of(ShackleSpecification.NavyFieldRule)), ("grade_A", Of(ShackleSpecification.GradeA)), ("grade_B", Of(ShackleSpecification.GradeB)));
        var limits = ShackleSizes.LimitsOf(d);
        Assert.Equal([ShackleSpecification.NavyFieldRule, ShackleSpecification.Osha1926, ShackleSpecification.GradeA, ShackleSpecification.AustralianGradeS, ShackleSpecification.GradeB], limits.Select(l => l.Specification));
        Assert.True(N(limits[^1].WorkingLoadLimit) > 4 * N(limits[0].WorkingLoadLimit));
    }

    [Theory]
    [CheckRows("rigging-gear", "shackle-osha")]
    public void Osha_sizes_are_from_memory(CheckRow row)
    {
        var size = ShackleSizes.Find(ShackleSpecification.Osha1926, Length.FromMeters(row.Si("D")))!;
        row.Matches(("WLL", N(size.WorkingLoadLimit)));
        Assert.Equal(Standing.FromMemory, size.Source.Standing);
    }

    [Fact]
    public void A_size_without_a_mark_is_a_stop_that_shows_the_limits()
    {
        var shackle = new Shackle("shackle", Rating.Unknown(Force.Zero), Mass.FromKilograms(3)).WithDimensions(Length.FromInches(1), null, null);
        var finding = GearInspection.OfSize(shackle)!;
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal("rig.shackle-size-only", finding.Id);
        Assert.Contains("from 26.7 kN to 111 kN", finding.Message, StringComparison.Ordinal);
        Assert.Null(GearInspection.OfSize(Bow(1e5).WithDimensions(Length.FromInches(1), null, null)));
        Assert.Null(ShackleSizes.Find(ShackleSpecification.GradeA, Length.FromMillimeters(9)));
    }

    private static Shackle Bow(double newtons) => new("shackle", Rating.WorkingLoadLimit(Force.FromNewtons(newtons)), Mass.FromKilograms(5));

    private static double N(Marking marking) => marking.Force!.Value.Newtons;

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;

    private static ChainGrade Grade(string word) => word switch
    {
        "30" => ChainGrade.Grade30,
        "43" => ChainGrade.Grade43,
        "70" => ChainGrade.Grade70,
        "80" => ChainGrade.Grade80,
        "100" => ChainGrade.Grade100,
        _ => throw new ArgumentException(word, nameof(word)),
    };
}
