using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Worked cases of the whole-machine composition: its literal form, its bands, and what one change is worth.</summary>
public class CompositionRowTests
{
    /// <summary>No wheel model beside: an index so high that it asks for the bare rolling share of a hard surface, less than any buried term.</summary>
    private const double NoModel = 1e15;

    [Theory]
    [CheckRows("resistance", "literal-terms")]
    public void Literal_terms_one_by_one(CheckRow row)
    {
        var f = Literal(row);
        DemandKernel.Compose(f, new DemandState { Wall = row.Si("s_u"), Floor = row.Si("s_u"), Index = NoModel, Rho = row.Si("rho"), Sealed = true, Meets = 1 }, out var t);
        DemandKernel.Compose(f, new DemandState { Wall = row.Si("s_u"), Floor = row.Si("s_u"), Index = NoModel, Locked = true }, out var locked);
        row.Matches(("roll", t.Roll), ("front", t.Face), ("suct", t.Suction), ("side", locked.Side), ("base", locked.Base), ("belly", BellyDrag(row)));
    }

    [Theory]
    [CheckRows("resistance", "literal-band")]
    public void Literal_band_with_the_rule_beside(CheckRow row)
    {
        var (vented, _, sealedSum, locked) = Sums(row, Literal(row), row.Si("s_u"), row.Si("s_u"));
        double high = Math.Max(locked, sealedSum), rule = DepthRule.Resistance(DepthClass.Hub, Force.FromNewtons(row.Si("W"))).Newtons;
        row.Matches(("low", vented), ("central", sealedSum), ("high", high), ("rule", rule), ("rule_over_central", rule / sealedSum), ("planning_high", PullDemand.Planning(high, rule)));
    }

    [Theory]
    [CheckRows("resistance", "general-literal")]
    public void General_form_holds_the_literal_one(CheckRow row)
    {
        var f = DemandRows.Flat(row, [2, 2], [row.Si("b1"), row.Si("b2")], [row.Si("d1"), row.Si("d2")], [row.Si("N1"), row.Si("N2")], [0.5, 0.5], bellyLoad: false);
        var (vented, free, sealedSum, locked) = Sums(row, f, row.Si("s_w"), row.Si("s_f"));
        row.Matches(("vented", vented), ("free", free), ("sealed", sealedSum), ("locked", locked));
    }

    [Theory]
    [CheckRows("resistance", "literal-climb")]
    public void The_climb_comes_on_top(CheckRow row)
    {
        var climb = RutExitModel.Instance.Climb(Force.FromNewtons(row.Si("W")), Angle.FromRadians(Math.Atan(row.Si("slope")))).Newtons;
        row.Matches(("climb", climb), ("vented_and_climb", row.Si("vented") + climb), ("sealed_and_climb", row.Si("sealed") + climb));
    }

    [Theory]
    [CheckRows("resistance", "band")]
    public void Bands_of_the_worked_machine(CheckRow row)
    {
        var f = DemandRows.ThreeAxles(row);
        DemandBounds.Evaluate(f, DemandRows.Assumptions(row), out var bounds);
        var rule = row.Si("k") * row.Si("W");
        row.Matches(
            ("low", bounds.Low.Total), ("central", bounds.Central.Total), ("high", bounds.High.Total),
            ("rule", rule), ("rule_over_central", rule / bounds.Central.Total), ("planning_high", PullDemand.Planning(bounds.High.Total, rule)));
    }

    [Theory]
    [CheckRows("resistance", "planning-high")]
    public void The_larger_of_high_and_rule(CheckRow row) => row.Matches(("planning_high", PullDemand.Planning(row.Si("high"), row.Si("rule"))));

    [Theory]
    [CheckRows("resistance", "belly-freed")]
    public void Freeing_the_belly_moves_its_load_to_the_wheels(CheckRow row)
    {
        var s = DemandRows.State(row);
        DemandKernel.Compose(DemandRows.ThreeAxles(row), s, out var down);
        DemandKernel.Compose(DemandRows.ThreeAxles(row, belly: false), s, out var free);
        row.Matches(("W_b", down.BellyLoad), ("S_d", down.UpliftDeveloped), ("belly", down.Belly), ("total", down.Total), ("belly_free", free.Total), ("worth", down.Total - free.Total));
    }

    [Theory]
    [CheckRows("resistance", "turning-worth")]
    public void Turning_against_locked(CheckRow row)
    {
        var f = DemandRows.ThreeAxles(row);
        var s = DemandRows.State(row);
        DemandKernel.Compose(f, s, out var turning);
        s.Locked = true;
        DemandKernel.Compose(f, s, out var locked);
        row.Matches(("locked", locked.Total), ("turning", turning.Total), ("worth", locked.Total - turning.Total));
    }

    [Theory]
    [CheckRows("resistance", "belly-moved")]
    public void The_belly_share_is_counted_once(CheckRow row)
    {
        // Areas of the worked machine: wheels 9.62885 m2, belly 3.0 x 1.6 m; the share of the belly follows from them.
        DemandTerms Of(double belly)
        {
            var f = Plain(row.Si("W"), 9.62885, belly);
            DemandKernel.Compose(f, new DemandState { Wall = 10e3, Floor = 1e6, Index = NoModel, Rho = row.Si("rho"), Sealed = true, Meets = 1 }, out var t);
            return t;
        }

        DemandTerms down = Of(3.0), free = Of(0);
        row.Matches(("wheels", row.Si("W") - down.BellyLoad), ("wheels_free", row.Si("W") - free.BellyLoad), ("roll", down.Roll), ("roll_free", free.Roll), ("moved", down.BellyLoad - free.BellyLoad));
    }

    [Theory]
    [CheckRows("resistance", "floor-interval")]
    public void Falls_to_the_change_over_and_rises_after_it(CheckRow row)
    {
        var f = DemandRows.ThreeAxles(row);
        double At(double floor)
        {
            var s = DemandRows.State(row);
            s.Floor = floor;
            DemandKernel.Compose(f, s, out var t);
            return t.Total;
        }

        var change = UnderbodyKernel.ChangeOverFloor(f.Weight, f.BellyArea, f.WheelArea);
        row.Matches(("floor_change", change), ("at_low", At(row.Si("floor_low"))), ("at_change", At(change)), ("at_high", At(row.Si("floor_high"))));
        // The kink is a minimum: a little to either side costs more.
        Assert.True(At(change * 0.999) > At(change) && At(change * 1.001) > At(change));
    }

    [Theory]
    [CheckRows("resistance", "wheel-or-model")]
    public void A_buried_wheel_counts_its_own_terms_or_the_model(CheckRow row)
    {
        var f = DemandRows.OneWheel(row, buried: true);
        var s = new DemandState { Wall = row.Si("s_w"), Floor = row.Si("s_w"), Index = row.Si("CI_model"), Rho = row.Si("rho"), Sealed = row.Word("sealed") == "true", Meets = row.Word("facing") == "true" ? 1 : 0 };
        var numeric = s.Index * f.NumericPerPascal[0];
        var model = f.Load[0] * BrixiusKernel.MotionResistanceRatio(numeric, 0, BrixiusConstants.Radial);
        DemandKernel.Compose(f, s, out var counts);
        s.Index = NoModel;
        DemandKernel.Compose(f, s, out var own);
        row.Matches(("buried", own.Total), ("Bn", numeric), ("model", model), ("counts", counts.Total));
        Assert.Equal(model > own.Total ? 1 : 0, counts.ModelGoverns);
    }

    [Theory]
    [CheckRows("resistance", "unloading")]
    public void Mass_off_takes_rolling_and_climb(CheckRow row)
    {
        DemandTerms Of(double weight)
        {
            var f = Plain(weight, 4, 0);
            DemandKernel.Compose(f, new DemandState { Wall = 10e3, Floor = 10e3, Index = NoModel, Rho = row.Si("rho"), Exit = Math.Atan(row.Si("slope")), Sealed = true, Meets = 1 }, out var t);
            return t;
        }

        DemandTerms heavy = Of(150e3), light = Of(150e3 - (Mass.FromTonnes(row.Printed("m")).Kilograms * row.Si("g")));
        row.Matches(("rolling", heavy.Roll - light.Roll), ("climb", heavy.Climb - light.Climb), ("dR", heavy.Total - light.Total));
    }

    [Theory]
    [CheckRows("resistance", "rolling-or-buried")]
    public void Sinkage_against_a_tenth_of_the_diameter(CheckRow row)
    {
        row.MatchesOne("z_over_d", row.Si("z") / row.Si("d"));
        row.MatchesWord("mode", BuriedWheelKernel.IsBuried(row.Si("d"), row.Si("z")) ? "buried" : "rolling");
    }

    [Theory]
    [CheckRows("resistance", "leading-axle")]
    public void Undeclared_the_leading_buried_axle_meets_uncut_soil(CheckRow row)
    {
        Assert.Equal(-1, row.Si("p"));
        var machine = new Machine("two axles", [new Axle("axle1", M(0), 2, Tyre(0.8, row.Si("d1"), 0.5, 0.2), true, M(2)), new Axle("axle2", M(-4), 2, Tyre(0.8, row.Si("d2"), 0.4, 0.2), true, M(2))], [new NamedLoad("all", Mass.FromTonnes(20), M(-2), M(1.5))]);
        var stuck = new StuckMachine(machine, StuckHarvester().Soil, [M(row.Si("z1")), M(row.Si("z2"))], PullDirection.Rearwards);
        var a = CompiledStuckMachine.From(stuck, Suspension.Equalised).Assumptions;
        string Named(int meets) => meets switch { 0 => "none", 1 => "axle1", 2 => "axle2", _ => "all" };
        row.MatchesWord("low", Named(a.MeetsLow));
        row.MatchesWord("central", Named(a.MeetsCentral));
        row.MatchesWord("high", Named(a.MeetsHigh));
    }

    /// <summary>Four wheels half way to the hub on one axle, level.</summary>
    private static DemandFlat Plain(double weight, double wheelArea, double bellyLength) => new()
    {
        Count = [4],
        Width = [0.6],
        Diameter = [2],
        Sinkage = [0.5],
        Contact = [BuriedWheelKernel.ContactLength(2, 0.5)],
        Segment = [BuriedWheelKernel.SegmentArea(2, 0.5)],
        Step = [BuriedWheelKernel.RigidStepRatio(2, 0.5)],
        NumericPerPascal = [1],
        Load = [weight],
        UpliftShare = [1],
        Buried = [true],
        Driven = [true],
        Braked = [true],
        Weight = weight,
        UnitWeight = 17e3,
        AdhesionFactor = 0.5,
        AnyBuried = true,
        WheelArea = wheelArea,
        BellyLength = bellyLength,
        BellyWidth = 1.6,
    };

    private static DemandFlat Literal(CheckRow row) => DemandRows.Flat(row, [(int)row.Si("wheels")], [row.Si("b")], [row.Si("d")], [row.Si("W")], [1], bellyLoad: false);

    private static double BellyDrag(CheckRow row) => row.Si("L_belly", 0) > 0 ? UnderbodyKernel.Drag(row.Si("L_belly"), row.Si("w_belly"), row.Si("z_belly"), row.Si(row.Has("s_u") ? "s_u" : "s_f"), row.Si("gamma"), row.Si("alpha")) : 0;

    /// <summary>Vented, free, sealed and locked sums of the literal form: level exit, every wheel facing, no load on the belly, no wheel model.</summary>
    private static (double Vented, double Free, double Sealed, double Locked) Sums(CheckRow row, DemandFlat f, double wall, double floor)
    {
        var s = new DemandState { Wall = wall, Floor = floor, Index = NoModel, Rho = row.Si("rho") };
        double Sum(DemandState state, bool sides = true)
        {
            DemandKernel.Compose(f, state, out var t);
            return t.Total - (sides ? 0 : t.Side) + BellyDrag(row);
        }

        var all = s with { Meets = (1 << f.Count.Length) - 1 };
        return (Sum(s, sides: false), Sum(all), Sum(all with { Sealed = true }), Sum(all with { Sealed = true, Locked = true }));
    }
}
