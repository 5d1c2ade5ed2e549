using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>Units of markings, what ratings say of each other, design factors and proof loads.</summary>
public class RatingTests
{
    [Theory]
    [CheckRows("rigging", "units-kilonewton")]
    public void Kilonewtons_in_tonnes(CheckRow row) => row.Matches(("mass_equivalent", Marking.In(Marking.Kilonewtons(row.Si("value") / 1000).Force!.Value, MarkingUnit.Tonne) * 9806.65));

    [Theory]
    [CheckRows("lines", "tonnes-as-force")]
    public void Tonnes_of_a_marking_in_kilonewtons(CheckRow row) => row.Matches(("MBS", Rating.BreakingStrength(Marking.Tonnes(row.Printed("value"))).Breaking!.Value.Newtons));

    [Theory]
    [CheckRows("rigging", "units-pound")]
    public void Pounds_are_pounds_force(CheckRow row)
    {
        var force = Marking.Pounds(row.Printed("value")).Force!.Value;
        row.Matches(("force", force.Newtons), ("mass_equivalent", Marking.In(force, MarkingUnit.Tonne) * 9806.65));
    }

    [Theory]
    [CheckRows("rigging", "units-ton")]
    public void Short_tons_are_their_own(CheckRow row) => row.Matches(("force", Marking.ShortTons(row.Printed("value")).Force!.Value.Newtons));

    [Theory]
    [CheckRows("rigging", "units-each")]
    public void Every_ton_has_its_own_factory(CheckRow row) => row.Matches(
        ("short_ton", Marking.ShortTons(1).Force!.Value.Newtons), ("long_ton", Marking.LongTons(1).Force!.Value.Newtons), ("tonne", Marking.Tonnes(1).Force!.Value.Newtons),
        ("daN_in_kgf", Marking.In(Marking.Decanewtons(1000).Force!.Value, MarkingUnit.Tonne) * 9.80665));

    [Theory]
    [CheckRows("rigging", "units-shortfall")]
    public void A_short_ton_is_less_than_a_tonne(CheckRow row) => row.Matches(("shortfall", 1 - (Marking.ShortTons(row.Si("value")).Newtons / Marking.Tonnes(row.Si("value")).Newtons)));

    [Theory]
    [CheckRows("rigging", "rating-breaking")]
    public void A_breaking_strength_is_divided_once(CheckRow row)
    {
        var reading = Reading(row.Printed("MBS"), RatingKind.BreakingStrength, row.Si("DF"));
        row.Matches(("WLL", reading.WorkingLoad!.Value.Newtons));
        Assert.Equal(row.Si("MBS"), reading.Breaking.Newtons, 1e-6);
    }

    [Theory]
    [CheckRows("rigging", "rating-working")]
    public void A_working_load_limit_holds_its_factor(CheckRow row)
    {
        row.Matches(("MBS", Reading(row.Printed("WLL"), RatingKind.WorkingLoadLimit, row.Si("DF")).Breaking.Newtons));
        row.Matches(("MBS", Rating.WorkingLoadLimit(Marking.Tonnes(row.Printed("WLL"))).WithDesignFactor(row.Si("DF")).Breaking!.Value.Newtons));
    }

    [Theory]
    [CheckRows("rigging", "rating-lashing")]
    public void A_lashing_capacity_is_half_its_assembly(CheckRow row)
    {
        var rating = Rating.LashingCapacity(Marking.Tonnes(row.Printed("LC")));
        row.Matches(("MBS_assembly", rating.Breaking!.Value.Newtons));
        Assert.Null(rating.WorkingLoad);
    }

    [Theory]
    [CheckRows("rigging", "proof-sling")]
    public void Slings_are_proved_at_twice(CheckRow row) => row.Matches(("proof", ProofLoads.OfSling(Force.FromNewtons(row.Si("WLL"))).Newtons));

    [Theory]
    [CheckRows("rigging", "proof-shackle")]
    public void Shackles_are_proved_in_a_band(CheckRow row) => row.Matches(
        ("proof_low", ProofLoads.OfShackleLeast(Force.FromNewtons(row.Si("WLL"))).Newtons), ("proof_high", ProofLoads.OfShackleMost(Force.FromNewtons(row.Si("WLL"))).Newtons));

    [Theory]
    [CheckRows("rigging", "proof-naval")]
    public void Naval_working_load_is_a_share_of_proof(CheckRow row) => row.Matches(
        ("SWL_grade_A", ProofLoads.NavalWorkingLoad(Force.FromNewtons(row.Si("proof")), true).Newtons), ("SWL_grade_B", ProofLoads.NavalWorkingLoad(Force.FromNewtons(row.Si("proof")), false).Newtons));

    [Theory]
    [CheckRows("rigging", "factor-shackle")]
    public void Shackle_factor_steps_at_150_short_tons(CheckRow row) => row.Matches(("DF", PublishedDesignFactors.OfShackle(Force.FromNewtons(row.Si("WLL"))).High));

    [Theory]
    [CheckRows("rigging", "factor-tow")]
    public void Naval_tow_factors(CheckRow row)
    {
        var item = row.Word("mode") switch { "automatic_tension_control" => GearItem.TowHawserTensionControl, "brake_pawl_or_hook" => GearItem.TowHawserHeld, _ => GearItem.TowSpring };
        var published = PublishedDesignFactors.Find(item, StandardRegion.NavalTow)!;
        row.Matches(("DF", published.High));
        Assert.True(published.StandsForPeak);
    }

    [Theory]
    [CheckRows("rigging", "factor-sling", "factor-chain")]
    public void Sling_factors(CheckRow row)
    {
        var item = row.Word("item") switch
        {
            "web_sling" => GearItem.WebSling,
            "roundsling" => GearItem.Roundsling,
            "natural_fibre_rope_sling" => GearItem.NaturalFibreRopeSling,
            "synthetic_fibre_rope_sling" or "fibre_rope_sling" => GearItem.FibreRopeSling,
            "wire_rope_sling" => GearItem.WireRopeSling,
            "chain_sling" => GearItem.ChainSling,
            "web_tie_down" => GearItem.WebTieDown,
            _ => throw new ArgumentException(row.Word("item"), nameof(row)),
        };
        var region = !row.Has("region") ? StandardRegion.Europe : row.Word("region") switch { "US" => StandardRegion.UnitedStates, "EU" => StandardRegion.Europe, _ => StandardRegion.Australia };
        var published = PublishedDesignFactors.Find(item, region)!;
        row.Matches(("DF", published.High));
        Assert.Equal(row.Standing switch { "primary" => Recovery.Mechanics.Provenance.Standing.Primary, "secondary" => Recovery.Mechanics.Provenance.Standing.Secondary, _ => Recovery.Mechanics.Provenance.Standing.FromMemory }, published.Source.Standing);
    }

    [Theory]
    [CheckRows("rigging", "factor-naval-shackle")]
    public void Naval_shackle_factors_stand_on_proof(CheckRow row)
    {
        var published = PublishedDesignFactors.Find(GearItem.TowShackle, StandardRegion.NavalTow)!;
        Assert.Equal(FactorBasis.ProofLoad, published.Basis);
        Assert.Equal(row.Si("factor_low"), published.Low);
        Assert.Equal(row.Si("factor_high"), published.High);
        row.Matches(("fraction_at_low", MarkingKernel.Working(row.Si("proof_over_WLL"), published.Low)), ("fraction_at_high", MarkingKernel.Working(row.Si("proof_over_WLL"), published.High)));
    }

    [Theory]
    [CheckRows("rigging", "factor-shackle-australia")]
    public void Australian_shackles_break_at_six(CheckRow row) => row.Matches(("MBS_over_WLL", PublishedDesignFactors.Find(GearItem.Shackle, StandardRegion.Australia)!.High), ("proof_over_WLL", GearKernel.SlingProof));

    [Theory]
    [CheckRows("rigging", "shackle-scope")]
    public void European_scope_ends_at_25_tonnes(CheckRow row) =>
        row.MatchesWord("result", string.Join("|", row.SiList("WLL").Select(w => PublishedDesignFactors.InEuropeanShackleScope(Force.FromNewtons(w)) ? "inside" : "outside")));

    [Theory]
    [CheckRows("rigging", "policy-peak")]
    public void A_shock_factor_is_refused_beside_a_computed_peak(CheckRow row)
    {
        var policy = DesignFactorPolicy.Of(PublishedDesignFactors.Find(GearItem.TowHawserHeld, StandardRegion.NavalTow)!);
        var rig = ReferenceRigs.Worked();
        var hawser = DeratedStrength.Of("hawser", Rating.BreakingStrength(KN(120)), WholeLengthDerating.OfFibre("hawser", Fibre.Polyester, false), Hitch.Straight);
        var words = row.Word("peak_computed").Split('|').Select(computed => computed == "true" ? Outcome(() => RigCheck.Of(rig, policy, ReferenceRigs.Loads(rig))) : Outcome(() => hawser.Allowable(policy)));
        row.MatchesWord("shock_factor", string.Join("|", words));
        Assert.Equal(10, hawser.Allowable(policy)!.Value.Kilonewtons, 1e-12);
        Assert.Contains("counted twice", Assert.Throws<ArgumentException>(() => RigCheck.Of(rig, policy, ReferenceRigs.Loads(rig))).Message, StringComparison.Ordinal);

        static string Outcome(Action use)
        {
            try
            {
                use();
                return "apply";
            }
            catch (ArgumentException)
            {
                return "refuse";
            }
        }
    }

    [Theory]
    [CheckRows("rigging", "policy-named")]
    public void A_policy_is_named_or_refused(CheckRow row)
    {
        var rig = ReferenceRigs.Worked();
        Assert.Equal("DF5|unnamed", row.Word("policy"));
        Assert.NotNull(RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig)));
        Assert.Throws<ArgumentNullException>(() => RigCheck.Of(rig, null!, ReferenceRigs.Loads(rig)));
        row.MatchesWord("result", "accept|refuse");
    }

    [Fact]
    public void A_bare_marking_shows_all_its_readings_and_is_never_taken()
    {
        var readings = Marking.Tonnes(60).Readings;
        Assert.Equal(9, readings.Count);
        Assert.Equal(6, readings[0].WorkingLoad!.Value.Newtons / 9806.65, 1e-9);
        Assert.Equal(480, readings[^1].Breaking.Newtons / 9806.65, 1e-9);
        Assert.Contains("working load 58.84 kN, breaking strength 588.4 kN", readings[0].ToString(), StringComparison.Ordinal);
        var unknown = Marking.UnknownTons(60);
        Assert.Null(unknown.Force);
        Assert.Equal(27, unknown.Readings.Count);
        Assert.Contains("find out which ton", Assert.Throws<ArgumentException>(() => Rating.BreakingStrength(unknown)).Message, StringComparison.Ordinal);
        Assert.Null(Rating.Unknown(unknown).Breaking);
        Assert.Equal("60 ton (which is not known)", unknown.ToString());
    }

    [Fact]
    public void Scope_is_part_of_a_rating()
    {
        var basket = Rating.WorkingLoadLimit(Marking.Tonnes(10)).WithDesignFactor(7).ForParallelBasket();
        Assert.Equal(5, basket.WorkingLoad!.Value.Newtons / 9806.65, 1e-12);
        Assert.Equal(35, basket.Breaking!.Value.Newtons / 9806.65, 1e-12);
        var whole = Rating.WorkingLoadLimit(Marking.ShortTons(7)).ForWholeSling(1.4);
        Assert.Equal(5, Marking.In(whole.WorkingLoad!.Value, MarkingUnit.ShortTon), 1e-12);
        Assert.Equal(RatingScope.PerLeg, Rating.BreakingStrength(Marking.Pounds(60000)).PerLeg().Scope);
        Assert.Equal("62.28 kN (marked 7 short ton) working load limit for the whole sling", whole.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => whole.ForWholeSling(5));
        Assert.Throws<InvalidOperationException>(() => Rating.BreakingStrengthTonnes(60).WithDesignFactor(5));
    }

    [Fact]
    public void A_proof_load_is_no_capacity()
    {
        var rating = Rating.ProofLoad(Marking.Tonnes(24));
        Assert.Null(rating.Breaking);
        Assert.Null(rating.WorkingLoad);
        Assert.Equal("235.4 kN proof load", rating.ToString());
    }

    [Fact]
    public void Factors_on_proof_or_yield_make_no_policy()
    {
        Assert.Contains("factor on ProofLoad", Assert.Throws<ArgumentException>(() => DesignFactorPolicy.Of(PublishedDesignFactors.Find(GearItem.TowShackle, StandardRegion.NavalTow)!)).Message, StringComparison.Ordinal);
        Assert.Equal(12, DesignFactorPolicy.Of(PublishedDesignFactors.Find(GearItem.FibreRope, StandardRegion.UnitedStates)!).Factor);
        Assert.Null(PublishedDesignFactors.Find(GearItem.WebSling, StandardRegion.NavalTow));
        Assert.All(PublishedDesignFactors.All, r => Assert.InRange(r.Low, 2, r.High));
    }

    private static MarkingReading Reading(double tonnes, RatingKind kind, double factor) => Marking.Tonnes(tonnes).Readings.Single(r => r.Kind == kind && r.DesignFactor == factor);
}
