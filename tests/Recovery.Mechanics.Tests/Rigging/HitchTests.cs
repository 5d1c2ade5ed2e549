using System;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Hitch factors: tables of the sling documents, statics, edges.</summary>
public class HitchTests
{
    public static TheoryData<ChokerKind> ChokerKinds => [ChokerKind.Webbing, ChokerKind.WireRope, ChokerKind.ChainUnitedStates, ChokerKind.ChainAustralia, ChokerKind.NaturalFibreRope];

    [Theory]
    [CheckRows("rigging-gear", "sling-mode")]
    public void Modes_of_EN_1492(CheckRow row)
    {
        var hitch = Hitch.European(Mode(row.Word("mode")), Rad(row.Si("beta", 0)), Angle.FromDegrees(135));
        var capacity = hitch.Capacity(Rating.WorkingLoadLimit(Force.FromNewtons(row.Si("WLL_tag"))))!.Value.Newtons;
        row.MatchesOne("capacity", capacity);
        if (row.ExpectedNames.Contains("M")) row.MatchesOne("M", hitch.Factor!.Value);
    }

    [Theory]
    [CheckRows("rigging-gear", "sling-mode-edges")]
    public void Bands_of_EN_1492_end_where_printed(CheckRow row) =>
        row.MatchesWord("M", string.Join("|", row.SiList("beta").Select(b => Hitch.European(Mode(row.Word("mode")), Rad(b)).Factor is { } m ? m.ToString("0.0", CultureInfo.InvariantCulture) : "refuse")));

    [Theory]
    [CheckRows("rigging-gear", "sling-mode-cosine")]
    public void A_mode_never_exceeds_its_cosine(CheckRow row)
    {
        double[] n = row.SiList("n"), beta = row.SiList("beta");
        row.MatchesList("n_cos_beta", n.Select((c, i) => HitchKernel.Legs((int)c, beta[i])).ToList());
        for (var i = 0; i < n.Length; i++)
            Assert.True(HitchKernel.European(n[i] == 2 ? SlingMode.TwoLeg : SlingMode.ThreeOrFourLeg, beta[i]) <= HitchKernel.Legs((int)n[i], beta[i]) + 1e-12);
    }

    [Theory]
    [CheckRows("rigging-gear", "legs-counted")]
    public void Legs_that_count(CheckRow row)
    {
        row.MatchesList("legs_counted", row.SiList("legs_in_set").Select(l => (double)Hitch.LegsCounted((int)l, false)).ToList());
        Assert.Equal([1, 2, 3, 3], Enumerable.Range(1, 4).Select(l => Hitch.LegsCounted(l, true)));
    }

    [Theory]
    [CheckRows("rigging-gear", "sling-colour")]
    public void Colours_of_EN_1492(CheckRow row)
    {
        row.Matches(("WLL", SlingColours.WorkingLoadLimit(Enum.Parse<SlingColour>(row.Word("colour"), true))!.Force!.Value.Newtons));
        Assert.Null(SlingColours.WorkingLoadLimit(SlingColour.Orange));
    }

    [Theory]
    [CheckRows("rigging-gear", "basket-australia")]
    public void Baskets_of_AS_1353(CheckRow row) => row.Matches(("factor", Hitch.AustralianBasket(Rad(row.Si("theta"))).Factor!.Value));

    [Theory]
    [CheckRows("rigging-gear", "sling-australia")]
    public void Slings_of_AS_1353(CheckRow row)
    {
        var hitch = row.Word("mode") == "choked" ? Hitch.Choker(ChokerKind.Webbing, Angle.FromDegrees(135)) : Hitch.AustralianBasket(Rad(row.Si("theta")));
        row.Matches(("capacity", hitch.Capacity(Rating.WorkingLoadLimit(Force.FromNewtons(row.Si("WLL"))))!.Value.Newtons));
    }

    [Theory]
    [InlineData(29.9, 1.9)]
    [InlineData(30.1, 1.73)]
    [InlineData(60.1, 1.41)]
    [InlineData(90.1, 1.0)]
    [InlineData(120.1, null)]
    public void AS_1353_takes_the_next_printed_row(double degrees, double? factor) => Assert.Equal(factor, Hitch.AustralianBasket(Angle.FromDegrees(degrees)).Factor);

    [Theory]
    [CheckRows("rigging-gear", "basket")]
    public void Basket_by_statics(CheckRow row) => row.MatchesList("factor", row.SiList("alpha").Select(a => Hitch.Basket(Rad((Math.PI / 2) - a)).Factor!.Value).ToList());

    [Theory]
    [CheckRows("rigging-gear", "choker")]
    public void Choker_factors(CheckRow row) => row.Matches(("factor", Hitch.Choker(Material(row.Word("material")), Rad(row.Si("choke_angle"))).Factor!.Value));

    [Theory]
    [CheckRows("rigging-gear", "choker-capacity")]
    public void Choker_factor_and_angle_stand_at_one_place(CheckRow row)
    {
        var kind = row.Si("choker_factor") == 0.8 ? ChokerKind.Webbing : ChokerKind.WireRope;
        row.Matches(("capacity", Hitch.Choker(kind, Rad(row.Si("choke_angle"))).Capacity(Rating.WorkingLoadLimit(Force.FromKilonewtons(100 * row.Si("WLL_vertical"))))!.Value.Kilonewtons / 100));
    }

    [Theory]
    [CheckRows("rigging-gear", "choke-undeclared")]
    public void An_angle_that_nobody_saw_takes_the_lowest_share(CheckRow row)
    {
        Assert.Equal("undeclared", row.Word("choke_angle"));
        var hitch = Hitch.Choker(ChokerKind.Webbing, null);
        row.Matches(("factor_on_choker", hitch.Factor!.Value / 0.8));
        Assert.Equal("assume.angle-of-choke", hitch.Assumption!.Id);
        Assert.Null(Hitch.Choker(ChokerKind.Webbing, Angle.FromDegrees(135)).Assumption);
    }

    [Theory]
    [CheckRows("rigging-gear", "choke-fibre-chain")]
    public void Fibre_chain_has_its_own_table(CheckRow row)
    {
        row.MatchesList("percent_of_single_leg", row.SiList("choke_angle").Select(a => Hitch.ChokedFibreChain(Rad(a)).Factor!.Value).ToList());
        Assert.Equal(0.80, Hitch.ChokedFibreChain(Angle.FromDegrees(120)).Factor);
        Assert.Equal(0.65, Hitch.ChokedFibreChain(Angle.FromDegrees(119.9)).Factor);
        Assert.Equal(0.40, Hitch.ChokedFibreChain(Angle.FromDegrees(30)).Factor);
        var sharp = Hitch.ChokedFibreChain(Angle.FromDegrees(29.9));
        Assert.Null(sharp.Factor);
        Assert.Equal("hitch.choke-too-sharp", sharp.Refusal!.Id);
        Assert.Null(sharp.Capacity(Rating.WorkingLoadLimitTonnes(5)));
    }

    [Theory]
    [CheckRows("rigging-gear", "straight")]
    public void Five_degrees_count_as_straight(CheckRow row)
    {
        Assert.Equal([0, 5], row.SiList("off_axis").Select(a => Math.Round(a * 180 / Math.PI, 9)));
        row.MatchesWord("factor", string.Join("|", row.SiList("off_axis").Select(a => StrengthKernel.OffAxis(a).ToString("0.00", CultureInfo.InvariantCulture))));
        Assert.Equal(1, Hitch.Straight.Factor);
    }

    [Theory]
    [CheckRows("rigging-gear", "natural-rope")]
    public void Natural_fibre_rows_as_printed(CheckRow row)
    {
        var sling = NaturalFibreRopeSlings.Find(Length.FromMeters(row.Si("diameter")), row.Word("type") == "endless")!;
        row.Matches(
            ("vertical", N(sling.Straight)), ("choker", N(sling.Choker)), ("basket_0", N(sling.Basket)), ("basket_30", N(sling.Basket30)), ("basket_45", N(sling.Basket45)), ("basket_60", N(sling.Basket60)));
    }

    [Theory]
    [CheckRows("rigging-gear", "natural-rope-formula")]
    public void Natural_fibre_formulas_follow_the_table_to_its_rounding(CheckRow row)
    {
        var wll = Rating.WorkingLoadLimit(Force.FromNewtons(row.Si("vertical")));
        double Basket(double beta) => Hitch.Basket(Angle.FromDegrees(beta)).Capacity(wll)!.Value.Newtons;
        row.Matches(("choker", Hitch.Choker(ChokerKind.NaturalFibreRope, Angle.FromDegrees(135)).Capacity(wll)!.Value.Newtons), ("basket_0", Basket(0)), ("basket_30", Basket(30)), ("basket_45", Basket(45)), ("basket_60", Basket(60)));
    }

    [Theory]
    [CheckRows("rigging-gear", "chain-sling")]
    public void Chain_slings_by_legs(CheckRow row)
    {
        var counted = (int)row.Si("legs_counted");
        var hitch = Hitch.Legs(counted == 3 ? 4 : 2, Rad((Math.PI / 2) - row.Si("alpha")), true);
        row.Matches(("capacity", hitch.Capacity(Rating.WorkingLoadLimit(Force.FromNewtons(row.Si("single"))))!.Value.Newtons));
    }

    [Fact]
    public void Beyond_the_widest_leg_there_is_no_factor()
    {
        foreach (var hitch in new[] { Hitch.Basket(Angle.FromDegrees(60.1)), Hitch.Legs(3, Angle.FromDegrees(61), true), Hitch.European(SlingMode.Basket, Angle.FromDegrees(70)), Hitch.AustralianBasket(Angle.FromDegrees(121)) })
        {
            Assert.Null(hitch.Factor);
            Assert.Equal("hitch.legs-too-wide", hitch.Refusal!.Id);
            Assert.Contains("refused", hitch.ToString(), StringComparison.Ordinal);
            Assert.Null(hitch.Capacity(Rating.WorkingLoadLimitTonnes(3)));
        }

        Assert.Equal(1, Hitch.Basket(Angle.FromDegrees(60)).Factor!.Value, 1e-12);
        Assert.Contains("opens to 60.1 deg, its factors end at 60 deg", Hitch.Basket(Angle.FromDegrees(60.1)).Refusal!.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Hitch.Basket(Angle.FromDegrees(91)));
    }

    [Fact]
    public void A_mode_of_EN_1492_does_not_hide_a_sharp_choke_or_open_legs()
    {
        Assert.Equal(0.8 * 0.74, Hitch.European(SlingMode.Choked, Angle.Zero, Angle.FromDegrees(80)).Factor!.Value, 1e-12);
        Assert.Equal(0.8 * 0.49, Hitch.European(SlingMode.Choked, Angle.Zero).Factor!.Value, 1e-12);
        Assert.Equal("assume.angle-of-choke", Hitch.European(SlingMode.Choked, Angle.Zero).Assumption!.Id);
        Assert.Equal(2, Hitch.European(SlingMode.BasketParallel, Angle.FromDegrees(7)).Factor);
        Assert.Equal(1.4, Hitch.European(SlingMode.BasketParallel, Angle.FromDegrees(7.1)).Factor);
        Assert.Equal(1, Hitch.European(SlingMode.BasketParallel, Angle.FromDegrees(50)).Factor);
        Assert.Null(Hitch.European(SlingMode.BasketParallel, Angle.FromDegrees(61)).Factor);
        Assert.Equal(1, Hitch.European(SlingMode.Straight, Angle.FromDegrees(80)).Factor);
    }

    [Fact]
    public void A_breaking_strength_has_no_hitch_capacity() => Assert.Null(Hitch.Straight.Capacity(Rating.BreakingStrengthTonnes(60)));

    [Fact]
    public void Natural_rope_below_the_table_is_not_known()
    {
        Assert.Null(NaturalFibreRopeSlings.Find(Length.FromMillimeters(10), false));
        Assert.Equal(1100, NaturalFibreRopeSlings.Find(Length.FromMillimeters(24), false)!.Straight.Value);
        Assert.Equal(950, NaturalFibreRopeSlings.Find(Length.FromMillimeters(100), true)!.Straight.Value);
    }

    [Theory]
    [MemberData(nameof(ChokerKinds))]
    public void A_wider_choke_never_costs(ChokerKind kind)
    {
        var last = 0.0;
        for (var degrees = 0; degrees <= 180; degrees++)
        {
            var factor = Hitch.Choker(kind, Angle.FromDegrees(degrees)).Factor!.Value;
            Assert.InRange(factor, last, HitchKernel.Choker(kind));
            last = factor;
        }
    }

    [Property]
    public Property No_hitch_of_legs_carries_more_than_its_legs() => Prop.ForAll(
        (from beta in Gen.Choose(0, 600) from legs in Gen.Choose(2, 4) from even in Gen.Elements(true, false) select (Beta: Angle.FromDegrees(beta / 10.0), legs, even)).ToArbitrary(),
        c => Hitch.Legs(c.legs, c.Beta, c.even).Factor <= Hitch.LegsCounted(c.legs, c.even) && Hitch.European(SlingMode.ThreeOrFourLeg, c.Beta).Factor <= (3 * Math.Cos(c.Beta.Radians)) + 1e-12);

    private static double N(Marking marking) => marking.Force!.Value.Newtons;

    private static Angle Rad(double radians) => Angle.FromRadians(radians);

    private static SlingMode Mode(string word) => word switch
    {
        "straight" => SlingMode.Straight,
        "choked" => SlingMode.Choked,
        "basket_parallel" => SlingMode.BasketParallel,
        "basket" => SlingMode.Basket,
        "two_leg" => SlingMode.TwoLeg,
        "three_or_four_leg" => SlingMode.ThreeOrFourLeg,
        _ => throw new ArgumentException(word, nameof(word)),
    };

    private static ChokerKind Material(string word) => word switch
    {
        "web" => ChokerKind.Webbing,
        "wire_rope" => ChokerKind.WireRope,
        "chain_US" => ChokerKind.ChainUnitedStates,
        "chain_reeved_AU" => ChokerKind.ChainAustralia,
        "manila" => ChokerKind.NaturalFibreRope,
        _ => throw new ArgumentException(word, nameof(word)),
    };
}
