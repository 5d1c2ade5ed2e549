using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Deratings: whole length, places, their order, and what no factor rescues.</summary>
public class DeratingTests
{
    [Theory]
    [CheckRows("rigging-gear", "wet")]
    public void Wet(CheckRow row)
    {
        var fibre = row.Word("fibre") == "nylon" ? Fibre.Nylon : Fibre.Polyester;
        var strength = DeratedStrength.Of("strap", Rating.BreakingStrength(Force.FromNewtons(row.Si("MBS"))), WholeLengthDerating.OfFibre("strap", fibre, true), Hitch.Straight);
        row.Matches(("strength", strength.Breaking!.Value.Newtons));
        Assert.Equal(row.Standing == "primary" ? Standing.Primary : Standing.FromMemory, strength.WholeLength.Sources[0].Standing);
    }

    [Theory]
    [CheckRows("rigging-gear", "wet-finish")]
    public void The_code_value_lies_inside_what_finishes_do(CheckRow row)
    {
        row.MatchesList("ratio", [WholeLengthDerating.WetNylonOrdinaryFinish.DecimalFractions, WholeLengthDerating.WetNylonImprovedFinish.DecimalFractions]);
        Assert.InRange(ConditionKernel.Wet(Fibre.Nylon), ConditionKernel.WetOrdinaryFinish, ConditionKernel.WetImprovedFinish);
    }

    [Theory]
    [CheckRows("rigging-gear", "temperature")]
    public void Temperature_passes_or_fails(CheckRow row)
    {
        var fibre = row.Word("fibre") == "polyester" ? Fibre.Polyester : Fibre.Polypropylene;
        row.MatchesWord("result", string.Join("|", row.PrintedList("temperature").Select(t => Word(At(fibre, t)))));
    }

    [Theory]
    [CheckRows("rigging-gear", "temperature-wire")]
    public void A_fibre_core_is_removed_above_200_F(CheckRow row)
    {
        row.MatchesWord("result", string.Join("|", row.PrintedList("temperature").Select(f => Word(WholeLengthDerating.OfWireRope("rope", WireCore.Fibre, Temperature.FromDegreesCelsius((f - 32) / 1.8))))));
        Assert.NotNull(WholeLengthDerating.OfWireRope("rope", WireCore.Wire, Temperature.FromDegreesCelsius(204)).Factor);
        Assert.Equal("gear.too-hot", WholeLengthDerating.OfWireRope("rope", WireCore.Wire, Temperature.FromDegreesCelsius(205)).Findings.Single().Id);
        Assert.Equal("gear.too-cold", WholeLengthDerating.OfWireRope("rope", WireCore.Wire, Temperature.FromDegreesCelsius(-52)).Findings.Single().Id);
        Assert.Equal(1, WholeLengthDerating.OfWireRope("rope", WireCore.Wire).Factor);
    }

    [Theory]
    [CheckRows("rigging-gear", "fahrenheit")]
    public void Limits_in_fahrenheit(CheckRow row)
    {
        row.MatchesList("temperature_C", row.PrintedList("temperature").Select(f => Temperature.FromDegreesFahrenheit(f).DegreesCelsius).ToList());
        Assert.Equal(93.3333, ConditionKernel.Hottest(WireCore.Fibre), 1e-4);
        Assert.Equal(204.4444, ConditionKernel.Hottest(WireCore.Wire), 1e-4);
    }

    [Theory]
    [InlineData(Fibre.Nylon, 82, 82.1)]
    [InlineData(Fibre.Hmpe, 60, 60.1)]
    [InlineData(Fibre.Aramid, 177, 177.1)]
    [InlineData(Fibre.Nylon, -29, -29.1)]
    public void Temperature_limits_by_fibre(Fibre fibre, double passes, double fails)
    {
        Assert.Equal(1, At(fibre, passes).Factor);
        Assert.Null(At(fibre, fails).Factor);
        Assert.Equal(fails > 0 ? "gear.too-hot" : "gear.too-cold", At(fibre, fails).Findings.Single().Id);
    }

    [Theory]
    [CheckRows("rigging-gear", "frozen")]
    public void Wet_below_freezing_is_refused(CheckRow row)
    {
        var t = Temperature.FromDegreesCelsius(row.Printed("temperature"));
        var wet = WholeLengthDerating.OfFibre("strap", Fibre.Nylon, row.Word("wet") == "true", LineExposure.None.WithTemperature(t));
        row.MatchesWord("result", Word(wet));
        Assert.Equal("gear.frozen-wet", wet.Findings.Single().Id);
        Assert.Equal(1, WholeLengthDerating.OfFibre("strap", Fibre.Nylon, false, LineExposure.None.WithTemperature(t)).Factor);
        Assert.Equal(0.85, WholeLengthDerating.OfFibre("strap", Fibre.Nylon, true, LineExposure.None.WithTemperature(Temperature.FromDegreesCelsius(0))).Factor);
    }

    [Theory]
    [CheckRows("rigging-gear", "overload")]
    public void A_line_that_saw_three_quarters_is_retired(CheckRow row)
    {
        row.MatchesWord("result", string.Join("|", row.SiList("peak").Select(p => WholeLengthDerating.OfFibre("strap", Fibre.Nylon, false, LineExposure.None.WithGreatestLoad(Frac(p))).Factor is null ? "retire" : "keep")));
        Assert.Equal("gear.overloaded-once", WholeLengthDerating.OfFibre("strap", Fibre.Nylon, false, LineExposure.None.WithGreatestLoad(Frac(0.76))).Findings.Single().Id);
        Assert.Equal(1, WholeLengthDerating.OfFibre("strap", Fibre.Nylon, false, LineExposure.None.WithGreatestLoad(Frac(0.75))).Factor);
    }

    [Theory]
    [CheckRows("rigging-gear", "old-nylon")]
    public void Old_nylon_takes_the_weakest_of_seven(CheckRow row)
    {
        var kept = row.SiList("remaining");
        row.Matches(("mean", kept.Average()));
        Assert.Equal(ConditionKernel.OldNylon, kept.Min());
        Assert.Equal(0.25, Aged(Fibre.Nylon, 10).Factor);
        Assert.Equal(1, Aged(Fibre.Nylon, 9.9).Factor);
        Assert.Equal(1, Aged(Fibre.Polyester, 12).Factor);
        Assert.Equal(0.8, WholeLengthDerating.OfFibre("strap", Fibre.Nylon, false, LineExposure.None.WithAge(12, Frac(0.8))).Factor);
    }

    [Theory]
    [InlineData(Fibre.Nylon, 0, 1.0)]
    [InlineData(Fibre.Nylon, 12, 0.60)]
    [InlineData(Fibre.Nylon, 12.1, 0.40)]
    [InlineData(Fibre.Nylon, 36, 0.40)]
    [InlineData(Fibre.Nylon, 36.1, null)]
    [InlineData(Fibre.Polyester, 0.1, 0.70)]
    [InlineData(Fibre.Polyester, 12, 0.70)]
    [InlineData(Fibre.Polyester, 12.1, null)]
    [InlineData(Fibre.Hmpe, 60, 1.0)]
    [InlineData(Fibre.Polypropylene, 1, null)]
    [InlineData(Fibre.Aramid, 1, null)]
    public void Sunlight_takes_the_published_loss_of_the_period(Fibre fibre, double months, double? factor)
    {
        var whole = WholeLengthDerating.OfFibre("strap", fibre, false, LineExposure.None.WithSunlight(months));
        Assert.Equal(factor, whole.Factor);
        Assert.Equal(factor, whole.Weathering);
        if (factor is null) Assert.Equal("gear.sunlight-no-figure", whole.Findings.Single().Id);
        else Assert.Empty(whole.Findings);
    }

    [Theory]
    [InlineData(Fibre.Nylon, ChemicalExposure.Acid, 0.0)]
    [InlineData(Fibre.Nylon, ChemicalExposure.Alkali, 1.0)]
    [InlineData(Fibre.Nylon, ChemicalExposure.BleachOrNitricAcid, null)]
    [InlineData(Fibre.Polyester, ChemicalExposure.Acid, 1.0)]
    [InlineData(Fibre.Polyester, ChemicalExposure.ConcentratedSulphuricAcid, 0.0)]
    [InlineData(Fibre.Polyester, ChemicalExposure.Alkali, 0.0)]
    [InlineData(Fibre.Hmpe, ChemicalExposure.Acid | ChemicalExposure.Alkali, 1.0)]
    [InlineData(Fibre.Hmpe, ChemicalExposure.BleachOrNitricAcid, 0.88)]
    [InlineData(Fibre.Polypropylene, ChemicalExposure.Alkali, null)]
    public void Chemicals_by_fibre(Fibre fibre, ChemicalExposure chemicals, double? share)
    {
        var whole = WholeLengthDerating.OfFibre("strap", fibre, false, LineExposure.None.WithChemicals(chemicals));
        Assert.Equal(share, whole.Chemical);
        if (share is > 0)
        {
            Assert.Equal(share, whole.Factor);
        }
        else
        {
            Assert.Null(whole.Factor);
            Assert.Equal("gear.chemical", whole.Findings.Single().Id);
        }
    }

    [Theory]
    [CheckRows("rigging-gear", "order")]
    public void Published_order(CheckRow row)
    {
        var exposure = row.Has("k_uv") ? LineExposure.None.WithSunlight(null, Frac(row.Si("k_uv"))).WithAge(null, Frac(row.Si("k_age"))) : null;
        var hitch = row.Has("choke_angle") ? Hitch.Choker(ChokerKind.Webbing, Angle.FromRadians(row.Si("choke_angle"))) : Hitch.Straight;
        var strength = DeratedStrength.Of("sling", Rating.BreakingStrength(Force.FromNewtons(row.Si("MBS_0"))), WholeLengthDerating.OfFibre("sling", Fibre.Nylon, true, exposure), hitch, SectionPlace.End("splice", Frac(row.Si("k_termination"))));
        Assert.Equal(row.Si("k_wet"), strength.WholeLength.Wet);
        row.MatchesOne("K", strength.WholeLength.Factor!.Value);
        row.MatchesOne("R", strength.Breaking!.Value.Newtons);
        row.MatchesOne("allowable", strength.Allowable(DesignFactorPolicy.Named("of the row", row.Si("DF")))!.Value.Newtons);
        if (row.ExpectedNames.Contains("k_section")) row.MatchesOne("k_section", strength.Section!.Value);
        Assert.Contains("MBS x K x least place", strength.Explain().ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("rigging-gear", "order-basket")]
    public void A_basket_counts_its_parts_last(CheckRow row)
    {
        var strength = DeratedStrength.Of("rope", Rating.BreakingStrength(Force.FromNewtons(row.Si("MBS_0"))), WholeLengthDerating.OfWireRope("rope", WireCore.Wire), Hitch.Basket(Angle.FromRadians(row.Si("beta"))), SectionPlace.End("pin", Frac(1), Frac(row.Si("k_bend"))));
        row.Matches(("k_section", strength.Section!.Value), ("multiplicity", strength.Hitch.Factor!.Value), ("capacity", strength.Allowable(DesignFactorPolicy.Named("of the row", row.Si("DF")))!.Value.Newtons));
    }

    [Theory]
    [CheckRows("rigging-gear", "order-end")]
    public void Of_termination_and_bend_the_greater_reduction(CheckRow row)
    {
        var strength = DeratedStrength.Of("rope", Rating.BreakingStrength(Force.FromNewtons(row.Si("MBS_0"))), WholeLengthDerating.OfWireRope("rope", WireCore.Wire), Hitch.Straight, SectionPlace.End("eye", Frac(row.Si("k_termination")), Frac(row.Si("k_bend"))));
        row.Matches(("k_section", strength.Section!.Value), ("R", strength.Breaking!.Value.Newtons), ("allowable", strength.Allowable(DesignFactorPolicy.SlowPull)!.Value.Newtons));
    }

    [Theory]
    [CheckRows("rigging-gear", "rig-strength")]
    public void Parts_of_the_worked_rig(CheckRow row)
    {
        double[] mbs = row.SiList("MBS");
        DeratedStrength Of(int i, Fibre fibre, bool wet, Hitch hitch, params SectionPlace[] places) => DeratedStrength.Of("part", Rating.BreakingStrength(Force.FromNewtons(mbs[i])), WholeLengthDerating.OfFibre("part", fibre, wet), hitch, places);
        var bight = SectionPlace.Bight("bight", null);
        DeratedStrength[] parts =
        [
            Of(0, Fibre.Nylon, true, Hitch.Straight), Of(1, Fibre.Nylon, true, Hitch.Straight, bight), Of(2, Fibre.Polyester, false, Hitch.Straight), Of(3, Fibre.Polyester, false, Hitch.Straight, bight),
            Of(4, Fibre.Polyester, false, Hitch.Choker(ChokerKind.Webbing, Angle.FromDegrees(100))), Of(5, Fibre.Polyester, false, Hitch.Choker(ChokerKind.Webbing, null)),
        ];
        row.MatchesList("R", parts.Select(p => p.Breaking!.Value.Newtons).ToList());
        Assert.Equal(row.SiList("k_section"), parts.Select(p => Math.Round(p.Section!.Value, 12)));
        Assert.Single(parts[5].Assumptions);
        Assert.Equal("assume.bight", parts[1].Assumptions.Single().Id);
        Assert.Contains(parts[5].Sources, s => s.Key == "choke-angle");
        Assert.Equal(Standing.FromMemory, parts[1].Standing);
    }

    [Theory]
    [CheckRows("rigging-gear", "rig-choke")]
    public void A_choke_holds_its_own_strap_on_strap(CheckRow row)
    {
        Assert.Equal("true", row.Word("strap_on_strap"));
        var strap = new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(40), M(1.2)) { Choked = true, AngleOfChoke = Angle.FromRadians(row.Si("choke_angle")) };
        row.Matches(("k_section", strap.Strength.Section!.Value));
        Assert.Equal(strap.Deratings, strap.Strength.Share!.Value, 1e-15);
    }

    [Fact]
    public void A_working_load_limit_is_derated_and_never_divided()
    {
        var strength = DeratedStrength.Of("sling", Rating.WorkingLoadLimitTonnes(10), WholeLengthDerating.OfFibre("sling", Fibre.Nylon, true), Hitch.Straight);
        Assert.Null(strength.Breaking);
        Assert.Equal(83.356525, strength.WorkingLoad!.Value.Kilonewtons, 1e-9);
        Assert.Equal(83.356525, strength.Allowable(DesignFactorPolicy.Australian)!.Value.Kilonewtons, 1e-9);
        var both = DeratedStrength.Of("sling", Rating.WorkingLoadLimitTonnes(10, 7), WholeLengthDerating.OfFibre("sling", Fibre.Polyester, false), Hitch.Straight);
        Assert.Equal(10, both.Allowable(DesignFactorPolicy.SlowPull)!.Value.Newtons / 9806.65, 1e-9);
        Assert.Equal(8.75, both.Allowable(DesignFactorPolicy.Australian)!.Value.Newtons / 9806.65, 1e-9);
        Assert.Null(DeratedStrength.Of("sling", Rating.Unknown(Force.Zero), WholeLengthDerating.OfFibre("sling", Fibre.Polyester, false), Hitch.Straight).Allowable(DesignFactorPolicy.SlowPull));
    }

    [Fact]
    public void What_takes_gear_out_of_service_leaves_no_strength()
    {
        var whole = WholeLengthDerating.OfFibre("strap", Fibre.Nylon, false);
        foreach (var (place, id) in new (SectionPlace, string)[]
        {
            (SectionPlace.WireBody("body", Length.FromMillimeters(20), Length.FromMillimeters(19)), "gear.bend-too-tight"),
            (SectionPlace.FibrePin("pin", Length.FromMillimeters(59), Length.FromMillimeters(60)), "gear.pin-too-thin"),
            (SectionPlace.FibrePin("pin", Length.FromMillimeters(59), null), "gear.pin-not-stated"),
            (SectionPlace.Edge("edge", Length.FromMillimeters(9.9), Length.FromMillimeters(10)), "gear.edge-sharp"),
        })
        {
            var strength = DeratedStrength.Of("strap", Rating.BreakingStrengthTonnes(60), whole, Hitch.Straight, place, SectionPlace.Documented("other end"));
            Assert.Null(place.Factor);
            Assert.Null(strength.Breaking);
            Assert.Null(strength.Allowable(DesignFactorPolicy.SlowPull));
            Assert.Equal(id, strength.Findings.Single().Id);
            Assert.Contains("refused", strength.Explain().ToString(), StringComparison.Ordinal);
            Assert.Contains("no strength", strength.ToString(), StringComparison.Ordinal);
        }

        Assert.Null(DeratedStrength.Of("strap", Rating.BreakingStrengthTonnes(60), whole, Hitch.Basket(Angle.FromDegrees(61))).Breaking);
        Assert.Null(DeratedStrength.Of("strap", Rating.BreakingStrengthTonnes(60), WholeLengthDerating.OfFibre("strap", Fibre.Nylon, false, LineExposure.None.WithChemicals(ChemicalExposure.Acid)), Hitch.Straight).Breaking);
    }

    [Fact]
    public void The_batch_gives_the_strengths_of_the_typed_model()
    {
        var result = new double[2];
        GearBatch.Strengths([300, 250], [0.85, 1], [0.696, 0.75], [1, 1.7320508075688772], result);
        Assert.Equal(177.48, result[0], 1e-12);
        Assert.Equal(324.7595264191645, result[1], 1e-9);
        Assert.Throws<ArgumentException>(() => GearBatch.Strengths([300], [0.85, 1], [1], [1], new double[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => GearBatch.Strengths([300, double.NaN], [0.85, 1], [1, 1], [1, 1], new double[2]));
        Assert.Equal(-1, GearBatch.Weakest([], []));
    }

    [Theory]
    [CheckRows("rigging-gear", "order-weakest")]
    public void The_weakest_part_governs(CheckRow row)
    {
        double[] allowable = row.SiList("allowable").Select(x => x / 1000).ToArray(), demand = row.SiList("demand").Select(x => x / 1000).ToArray();
        var i = GearBatch.Weakest(allowable, demand);
        row.Matches(("governing_index", i + 1), ("ratio", allowable[i] / demand[i]));
    }

    [Theory]
    [CheckRows("rigging-gear", "edge")]
    public void Sharp_edges_by_both_rules(CheckRow row)
    {
        var region = row.Word("rule") == "EU" ? StandardRegion.Europe : StandardRegion.Australia;
        row.MatchesWord("result", SectionPlace.IsSharp(region, M(row.Si("R")), M(row.Si("thickness"))) ? "sharp" : "pass");
    }

    [Fact]
    public void Between_the_two_edge_rules_is_a_caution()
    {
        var between = SectionPlace.Edge("edge", Length.FromMillimeters(15), Length.FromMillimeters(10));
        Assert.Equal(1, between.Factor);
        Assert.Equal("gear.edge-between", between.Finding!.Id);
        Assert.Null(SectionPlace.Edge("edge", Length.FromMillimeters(30), Length.FromMillimeters(10)).Finding);
    }

    [Theory]
    [CheckRows("rigging-gear", "edge-diameter")]
    public void Least_diameters_by_both_rules(CheckRow row)
    {
        var t = M(row.Si("thickness"));
        row.Matches(("D_min_EU", SectionPlace.LeastDiameter(StandardRegion.Europe, t).Meters), ("D_min_AU", SectionPlace.LeastDiameter(StandardRegion.Australia, t).Meters));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionPlace.LeastDiameter(StandardRegion.UnitedStates, t));
    }

    [Fact]
    public void Splices_and_bights()
    {
        Assert.Equal([0.90, 0.90, 0.85, 0.90, 1], Enum.GetValues<FibreSpliceKind>().Select(k => SectionPlace.Splice("eye", k).Factor!.Value));
        Assert.Equal(0.5, SectionPlace.Bight("bight", null).Factor);
        Assert.Equal(Standing.FromMemory, SectionPlace.Bight("bight", null).Source.Standing);
        Assert.Equal(0.7, SectionPlace.Bight("bight", Frac(0.7)).Factor);
    }

    [Theory]
    [CheckRows("rigging-gear", "knots")]
    public void Knots_as_published(CheckRow row)
    {
        Assert.Equal("overhand|any", row.Word("knot"));
        row.Matches(("loss_worst", 1 - KnotStrength.Worst.DecimalFractions), ("loss_code", 1 - KnotStrength.Code.DecimalFractions));
        Assert.All(KnotStrength.All, k => Assert.InRange(k.Low.DecimalFractions, 0.4, k.High.DecimalFractions));
    }

    [Fact]
    public void A_strap_carries_its_exposure_and_places_into_the_rig()
    {
        var strap = new Strap("strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9)).WithCondition(StrapCondition.Wet).WithExposure(LineExposure.None.WithSunlight(6)).WithPlaces(SectionPlace.Splice("eye", FibreSpliceKind.DoubleBraid), null, null);
        Assert.Equal(0.85 * 0.60 * 0.85, strap.Deratings, 1e-12);
        var rig = ReferenceRigs.Worked();
        var old = rig.Replace("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9)) { Condition = StrapCondition.Wet, Exposure = LineExposure.None.WithSunlight(6) });
        var check = RigCheck.Of(old, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig));
        Assert.Equal(0.60 * 500.13915, check.Parts[0].Strength!.Value.Kilonewtons, 1e-5);
        Assert.Equal(0.60 * 250.069575, check.Parts[1].Strength!.Value.Kilonewtons, 1e-5);
        var burnt = old.Replace("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9)) { Exposure = LineExposure.None.WithChemicals(ChemicalExposure.Acid) });
        Assert.Null(RigCheck.Of(burnt, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig)).Parts[0].Strength);
        var findings = new System.Collections.Generic.List<Finding>();
        RigInspection.Add(burnt, findings);
        Assert.Contains(findings, f => f.Id == "gear.chemical");
    }

    [Property]
    public Property No_derating_raises_a_rating_and_the_order_of_places_is_irrelevant() => Prop.ForAll(
        (from fibre in Gen.Elements(Fibre.Nylon, Fibre.Polyester, Fibre.Hmpe)
         from wet in Gen.Elements(true, false)
         from sun in Gen.Choose(10, 100)
         from age in Gen.Choose(10, 100)
         from a in Gen.Choose(10, 100)
         from b in Gen.Choose(10, 100)
         from choke in Gen.Choose(0, 180)
         select (fibre, wet, sun, age, a, b, choke)).ToArbitrary(),
        c =>
        {
            var rating = Rating.WorkingLoadLimitTonnes(20, 5);
            WholeLengthDerating Whole(double sun, double age) => WholeLengthDerating.OfFibre("s", c.fibre, c.wet, LineExposure.None.WithSunlight(null, Frac(sun / 100)).WithAge(null, Frac(age / 100)));
            SectionPlace first = SectionPlace.End("1", Frac(c.a / 100.0)), second = SectionPlace.End("2", Frac(c.b / 100.0));
            var hitch = Hitch.Choker(ChokerKind.Webbing, Angle.FromDegrees(c.choke));
            var one = DeratedStrength.Of("s", rating, Whole(c.sun, c.age), hitch, first, second);
            var other = DeratedStrength.Of("s", rating, Whole(c.age, c.sun), hitch, second, first);
            return one.Breaking!.Value.Newtons <= rating.Breaking!.Value.Newtons && one.WorkingLoad!.Value.Newtons <= rating.WorkingLoad!.Value.Newtons
                && Math.Abs(one.Share!.Value - other.Share!.Value) < 1e-15
                && DeratedStrength.Of("s", rating, Whole(c.sun, c.age), hitch, first).Share >= one.Share
                && one.Share >= one.WholeLength.Factor * Math.Min(first.Factor!.Value, second.Factor!.Value) * hitch.Factor;
        });

    private static WholeLengthDerating At(Fibre fibre, double celsius) => WholeLengthDerating.OfFibre("strap", fibre, false, LineExposure.None.WithTemperature(Temperature.FromDegreesCelsius(celsius)));

    private static WholeLengthDerating Aged(Fibre fibre, double years) => WholeLengthDerating.OfFibre("strap", fibre, false, LineExposure.None.WithAge(years));

    private static string Word(WholeLengthDerating whole) => whole.Factor is null ? "refuse" : "pass";
}
