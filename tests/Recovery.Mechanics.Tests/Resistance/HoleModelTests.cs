using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>The hole a machine stands in: what its floor must bear, what locked wheels shear there, how it comes out, and the handbook rule.</summary>
public class HoleModelTests
{
    private static readonly SpecificWeight Gamma = SpecificWeight.FromKilonewtonsPerCubicMeter(17);

    [Theory]
    [CheckRows("resistance", "wheel-bound")]
    public void Floor_under_one_wheel(CheckRow row)
    {
        var bound = FloorBoundModel.Instance.OneWheel(M(row.Si("b")), M(row.Si("d")), M(row.Si("z")), Force.FromNewtons(row.Si("W_wheel")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")), row.Si("N_c"));
        row.Matches(("c", bound.WheelArea.SquareMeters / row.Si("b")), ("s_u", bound.Strength.Pascals));
        Assert.Empty(bound.Flags);
    }

    [Theory]
    [CheckRows("resistance", "machine-bound")]
    public void Floor_under_a_whole_machine(CheckRow row)
    {
        var stuck = Machine(row);
        var bound = FloorBoundModel.Instance.WholeMachine(stuck, row.Si("N_c"));
        row.MatchesOne("s_u", bound.Strength.Pascals);
        if (row.ExpectedNames.Contains("positive"))
        {
            row.MatchesWord("positive", bound.IsPositive ? "true" : "false");
            row.MatchesOne("floor_low", bound.Floor.Pascals);
            Assert.Equal(["s_b"], bound.Flags.Select(f => f.Limit.Symbol));
            Assert.StartsWith("displaced soil alone", bound.ToString(), StringComparison.Ordinal);
            return;
        }

        row.MatchesOne("A_wheels", bound.WheelArea.SquareMeters);
        row.MatchesOne("A_belly", bound.BellyArea.SquareMeters);
        Assert.Equal(bound.Strength.Pascals, bound.Floor.Pascals);
        Assert.Equal(Text.Kilopascals(bound.Strength.Pascals), FloorBoundModel.Instance.ExplainWholeMachine(stuck, row.Si("N_c")).Steps[^1].Value);
    }

    /// <summary>The bound belongs to the machine as it sank: taking beet off or freeing the belly leaves it.</summary>
    [Fact]
    public void Floor_stays_that_of_the_hole_as_found()
    {
        var found = FloorBoundModel.Instance.WholeMachine(StuckHarvester());
        var after = FloorBoundModel.Instance.WholeMachine(StuckHarvester().Without("beet").WithBellyFreed());
        Assert.Equal(5.607, found.Strength.Kilopascals, 0.001);
        Assert.Equal(found.Strength.Pascals, after.Strength.Pascals, 1e-6);
        Assert.Equal(["N_c"], FloorBoundModel.Instance.WholeMachine(StuckHarvester(), 6.21).Flags.Select(f => f.Limit.Symbol));
        Assert.Contains("bearingFactor must be from 4 to 10", Assert.Throws<ArgumentOutOfRangeException>(() => FloorBoundModel.Instance.WholeMachine(StuckHarvester(), 11)).Message, StringComparison.Ordinal);
        Assert.Equal("5.367 kPa", FloorBoundModel.Instance.Explain(M(0.6), M(2), M(0.5), KN(37.5), Gamma).Steps[^1].Value);
    }

    [Theory]
    [CheckRows("resistance", "braked-rolling")]
    public void Braked_rolling_wheel_counts_the_larger(CheckRow row)
    {
        double b = row.Si("b"), d = row.Si("d"), z = row.Si("z"), w = row.Si("W_wheel");
        // Deflection of the row's tyre is not given; in a rut of 0.12 m the rut is the longer contact.
        var shear = BaseShearModel.Instance.Evaluate(M(b), M(d), M(z), M(0.08), Pressure.FromPascals(row.Si("s_f")));
        Assert.False(shear.Buried);
        var numeric = BrixiusKernel.Numeric(row.Si("CI_model"), b, d, row.Si("dh"), w);
        var model = w * BrixiusKernel.MotionResistanceRatio(numeric, 0, BrixiusConstants.Radial);
        var f = DemandRows.OneWheel(row, buried: false);
        DemandKernel.Compose(f, new DemandState { Wall = row.Si("s_f"), Floor = row.Si("s_f"), Index = row.Si("CI_model"), Locked = true }, out var t);
        row.Matches(("base", shear.Force.Newtons), ("Bn", numeric), ("model", model), ("counts", t.Total));
    }

    /// <summary>b 0.6, d 2.0, floor 10 kPa. Buried at 0.5 m: c sqrt(3). At 0.1 m with 0.15 m of deflection: c = 2 sqrt(0.3 - 0.0225) = 1.05357. At and above the hub: d.</summary>
    [Theory]
    [InlineData(0.5, 0.15, 1.7320508, true)]
    [InlineData(0.1, 0.15, 1.0535654, false)]
    [InlineData(0.0, 0.15, 1.0535654, false)]
    [InlineData(0.2, 0.25, 1.3228757, false)]
    [InlineData(0.2000001, 0.25, 1.2000003, true)]
    [InlineData(1.0, 0.15, 2, true)]
    [InlineData(1.5, 0.15, 2, true)]
    public void Contact_of_a_locked_wheel(double z, double deflection, double contact, bool buried)
    {
        var r = BaseShearModel.Instance.Evaluate(M(0.6), M(2), M(z), M(deflection), KPa(10));
        Assert.Equal(contact, r.ContactLength.Meters, 1e-6);
        Assert.Equal(6 * contact, r.Force.Kilonewtons, 1e-5);
        Assert.Equal(buried, r.Buried);
        Assert.Equal(z > 1 ? ["z/d"] : [], r.Flags.Select(f => f.Limit.Symbol));
        var many = new double[2];
        BaseShearModel.Instance.Evaluate(0.6, 2, deflection, [z, z], [10, 20], many);
        Assert.Equal(r.Force.Kilonewtons, many[0], 1e-12);
        Assert.Equal(2 * r.Force.Kilonewtons, many[1], 1e-12);
        Assert.Equal(Text.Kilonewtons(r.Force.Newtons), BaseShearModel.Instance.Explain(M(0.6), M(2), M(z), M(deflection), KPa(10)).Steps[^1].Value);
    }

    [Fact]
    public void Base_shear_flags_and_refuses()
    {
        Assert.Equal(["s_f"], BaseShearModel.Instance.Evaluate(M(0.6), M(2), M(0.5), M(0.1), KPa(61)).Flags.Select(f => f.Limit.Symbol));
        Assert.Contains("deflection must be from 0 to 1 m; it was 1.1 m", Assert.Throws<ArgumentOutOfRangeException>(() => BaseShearModel.Instance.Evaluate(M(0.6), M(2), M(0.5), M(1.1), KPa(10))).Message, StringComparison.Ordinal);
        Assert.Contains("floorKilopascals[1]", Assert.Throws<ArgumentOutOfRangeException>(() => BaseShearModel.Instance.Evaluate(0.6, 2, 0.1, [0.1, 0.1], [10, double.NaN], new double[2])).Message, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("resistance", "belly-share")]
    public void Belly_takes_its_share(CheckRow row)
    {
        var share = Share(row);
        row.Matches(("share", share.ByArea.Newtons), ("cap", share.Bearing.Newtons), ("W_b", share.Carried.Newtons), ("wheels_carry", share.OnWheels.Newtons));
    }

    [Theory]
    [CheckRows("resistance", "belly-change-over")]
    public void Belly_goes_over_from_bearing_to_area(CheckRow row)
    {
        var belly = new Belly(M(row.Si("A_belly") / 1.6), M(1.6), M(0.1));
        var floor = UnderbodyModel.Instance.Share(belly, Force.FromNewtons(row.Si("W")), Area.FromSquareMeters(row.Si("A_wheels")), KPa(1)).ChangeOverFloor;
        row.Matches(("s_f", floor.Pascals));
        // At the change-over both shares are alike; below it the bearing limits, above it the area.
        foreach (var factor in new[] { 0.99, 1.0, 1.01 })
        {
            var s = UnderbodyModel.Instance.Share(belly, Force.FromNewtons(row.Si("W")), Area.FromSquareMeters(row.Si("A_wheels")), Pressure.FromPascals(factor * floor.Pascals));
            Assert.Equal(Math.Min(1, factor) * s.ByArea.Newtons, s.Carried.Newtons, 1e-3);
        }
    }

    /// <summary>Belly 3.0 x 1.2 m, 0.1 m in: 5 kPa gives 9 kN of adhesion and 1.302 kN of front; 30 kPa is held at 12 kPa x 3.6 m2 = 43.2 kN.</summary>
    [Fact]
    public void Belly_drags_by_adhesion_and_front()
    {
        var belly = new Belly(M(3), M(1.2), M(0.1));
        var r = UnderbodyModel.Instance.Evaluate(belly, KPa(5), Gamma, Frac(0.5));
        Assert.Equal(9, r.Adhesion.Kilonewtons, 1e-9);
        Assert.Equal(1.302, r.Front.Kilonewtons, 1e-9);
        Assert.Equal(10.302, r.Total.Kilonewtons, 1e-9);
        Assert.False(r.AdhesionCapped);
        Assert.Empty(r.Flags);
        var capped = UnderbodyModel.Instance.Evaluate(belly, KPa(30), Gamma, Frac(0.5));
        Assert.Equal(43.2, capped.Adhesion.Kilonewtons, 1e-9);
        Assert.True(capped.AdhesionCapped);
        Assert.Equal(["z"], UnderbodyModel.Instance.Evaluate(new Belly(M(3), M(1.2), M(0.51)), KPa(5), Gamma, Frac(0.5)).Flags.Select(f => f.Limit.Symbol));
        var many = new double[2];
        UnderbodyModel.Instance.Evaluate(belly, [5, 30], 17, 0.5, many);
        Assert.Equal([r.Total.Kilonewtons, capped.Total.Kilonewtons], many);
    }

    [Theory]
    [CheckRows("resistance", "face-or-step")]
    public void A_wheel_cuts_through_or_climbs_over(CheckRow row)
    {
        var exit = RutExitModel.Instance.Leave(M(row.Si("b")), M(row.Si("d")), M(row.Si("z")), Force.FromNewtons(row.Si("W_wheel")), Pressure.FromPascals(row.Si("s_w")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")));
        row.Matches(("face", exit.SoilFailure.Newtons), ("step", exit.Step!.Value.Newtons), ("counts", exit.Counts.Newtons));
        Assert.Equal(exit.Step.Value.Newtons < exit.SoilFailure.Newtons, exit.ClimbsOver);
    }

    [Theory]
    [CheckRows("resistance", "climb-or-cut")]
    public void Climbs_only_on_a_far_stronger_wall(CheckRow row)
    {
        var exit = RutExitModel.Instance.Leave(M(0.6), M(2), M(row.Si("z_over_r")), KN(40), KPa(10), Gamma);
        row.Matches(("s_w_over_s_f", exit.ClimbsAboveWallOverFloor!.Value));
    }

    [Fact]
    public void From_the_hub_upwards_only_soil_failure_lets_it_out()
    {
        var exit = RutExitModel.Instance.Leave(M(0.6), M(2), M(1), KN(40), KPa(10), Gamma);
        Assert.Null(exit.Step);
        Assert.Null(exit.ClimbsAboveWallOverFloor);
        Assert.Equal(17.1, exit.Counts.Kilonewtons, 1e-9);
        Assert.False(exit.ClimbsOver);
        Assert.Empty(exit.Flags);
        Assert.Equal(["z/r"], RutExitModel.Instance.Leave(M(0.6), M(2), M(1.01), KN(40), KPa(10), Gamma).Flags.Select(f => f.Limit.Symbol));
        // Another method of the face, named in the result: K_ru 2 gives 6 kN at half a metre.
        var sliding = RutExitModel.Instance.Leave(M(0.6), M(2), M(0.5), KN(40), KPa(10), Gamma, FaceMethod.ApiSliding);
        Assert.Equal(6, sliding.Counts.Kilonewtons, 1e-9);
        Assert.Equal(FaceMethod.ApiSliding, sliding.Method);
        Assert.Equal("6 kN", RutExitModel.Instance.Explain(M(0.6), M(2), M(0.5), KN(40), KPa(10), Gamma, FaceMethod.ApiSliding).Steps[^1].Value);
    }

    /// <summary>Ramp of 1:6 for the harvester: front 2 x 0.5 x 6 x 0.25 x 0.8 = 1.2 m3, each rear axle 2 x 0.5 x 6 x 0.25 x 1.0 = 1.5 m3; climb 0.164399 of 509.946 kN.</summary>
    [Fact]
    public void A_ramp_costs_a_climb_and_a_spoil()
    {
        var slope = Angle.FromRadians(Math.Atan(1.0 / 6));
        var ramp = RutExitModel.Instance.RampFor(StuckHarvester(), slope);
        Assert.Equal(6, ramp.RunOverRise, 1e-9);
        Assert.Equal(0.164399, ramp.ShareOfWeight.DecimalFractions, 5e-7);
        Assert.Equal(83.83, ramp.Climb.Kilonewtons, 0.005);
        Assert.Equal(4.2, ramp.Spoil.CubicMeters, 1e-9);
        Assert.Equal([1.2, 1.5, 1.5], ramp.Axles.Select(a => Math.Round(a.Spoil.CubicMeters, 9)));
        Assert.Equal(3, ramp.Length.Meters, 1e-9);
        // Rolling wheels need no ramp.
        var shallow = RutExitModel.Instance.RampFor(new StuckMachine(Harvester(), StuckHarvester().Soil, [M(0.5), M(0.1), M(0.1)], PullDirection.Rearwards), slope);
        Assert.Equal("front axle", Assert.Single(shallow.Axles).Name);
        Assert.Equal(1.2, shallow.Spoil.CubicMeters, 1e-9);
        Assert.Contains("slope must be from 2 to 45 deg", Assert.Throws<ArgumentOutOfRangeException>(() => RutExitModel.Instance.RampFor(StuckHarvester(), Angle.FromDegrees(1))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("resistance", "overturning")]
    public void Overturned_machine(CheckRow row) => row.Matches(("R", DepthRule.Overturning(Force.FromNewtons(row.Si("W"))).Newtons));

    [Theory]
    [CheckRows("resistance", "rule-lightening")]
    public void Mass_off_under_the_rule(CheckRow row)
    {
        Assert.Equal(DepthRule.Factor(DepthClass.Fender), row.Si("k"));
        row.Matches(("dR", DepthRule.Lightening(DepthClass.Fender, Mass.FromTonnes(row.Printed("m"))).Newtons));
    }

    [Theory]
    [CheckRows("resistance", "rule-reduction")]
    public void Reductions_of_the_rule(CheckRow row)
    {
        var estimate = Force.FromNewtons(row.Si("estimate"));
        double On(bool against, bool tracks, bool powered) => DepthRule.Reduce(estimate, against, tracks, powered).Reduced.Newtons;
        row.Matches(("direction", On(true, true, false)), ("tracks_powered", On(false, true, true)), ("both", On(true, true, true)));
        // No credit for powered wheels: the figure belongs to tracks.
        Assert.Equal(estimate.Newtons, On(false, false, true));
        Assert.Equal(On(true, false, false), On(true, false, true));
        Assert.Equal(estimate.Newtons, On(false, true, false));
        Assert.Contains("no figure is published for powered wheels", DepthRule.Reduce(estimate, true, false, true).ToString(), StringComparison.Ordinal);
        Assert.Equal(Standing.FromMemory, DepthRule.Reduce(estimate, true, true, true).Source.Standing);
    }

    /// <summary>The rule beside a wheel model at the edge of immobilisation: no share of the weight is a universal limit.</summary>
    [Theory]
    [CheckRows("resistance", "rule-over-vti")]
    public void Rule_over_a_wheel_model(CheckRow row) => row.Matches(("ratio", row.Si("k") / VtiKernel.MotionResistanceRatio(row.Si("N_v"))));

    [Theory]
    [CheckRows("resistance", "rule-over-towed")]
    public void Rule_over_towed_resistance_at_the_edge_of_immobilisation(CheckRow row) => row.Matches(("ratio", row.Si("k") / ExcessIndexKernel.ResistanceReadingB(row.Si("RCIx"))));

    /// <summary>Both readings of the towed resistance: for wheels they conflict, so neither is shipped as one number.</summary>
    [Theory]
    [CheckRows("resistance", "towed-readings")]
    public void Towed_readings(CheckRow row) => row.Matches(("wheels", ExcessIndexKernel.ResistanceReadingB(row.Si("RCIx"))), ("tracks", ExcessIndexKernel.ResistanceReadingA(row.Si("RCIx"))));

    [Theory]
    [CheckRows("resistance", "depth-class")]
    public void The_deepest_wheel_decides_the_class(CheckRow row)
    {
        StuckMachine Of(double z1, double z2) => new(
            new Machine("two axles", [new Axle("axle1", M(0), 2, Tyre(0.6, row.Si("d1"), 0.5, 0.2), true, M(2)), new Axle("axle2", M(-4), 2, Tyre(0.6, row.Si("d2"), 0.4, 0.2), true, M(2))], [new NamedLoad("all", Mass.FromTonnes(20), M(-2), M(1.5))]),
            StuckHarvester().Soil,
            [M(z1), M(z2)],
            PullDirection.Rearwards);
        row.MatchesOne("k", DepthRule.Factor(DepthRule.Classify(Of(row.Si("z1"), row.Si("z2")))));
        // Axle 2 decides: with it at axle 1's depth the class falls.
        row.MatchesWord("deciding", DepthRule.Factor(DepthRule.Classify(Of(row.Si("z1"), row.Si("z1")))) == 1 ? "axle2" : "axle1");
        // A belly on the ground does not.
        Assert.Equal(DepthClass.Hub, DepthRule.Classify(Of(row.Si("z1"), row.Si("z1")).WithBelly(new Belly(M(3), M(1), M(1)))));
    }

    private static BellyShare Share(CheckRow row) => UnderbodyModel.Instance.Share(new Belly(M(row.Si("A_belly") / 1.6), M(1.6), M(0.1)), Force.FromNewtons(row.Si("W")), Area.FromSquareMeters(row.Si("A_wheels")), Pressure.FromPascals(row.Si("s_f")));

    /// <summary>A machine of the row's wheels: one axle a pair of tyres, its weight in their middle.</summary>
    private static StuckMachine Machine(CheckRow row)
    {
        var axles = new System.Collections.Generic.List<Axle>();
        foreach (var i in new[] { "1", "2" }.Where(i => row.Has("n" + i)))
        {
            for (var n = 0; n < row.Si("n" + i); n += 2) axles.Add(new Axle("axle " + axles.Count, M(-2.0 * axles.Count), 2, Tyre(row.Si("b" + i), row.Si("d" + i), 0.5, 0.2), true, M(2)));
        }

        var machine = new Machine("row", axles, [new NamedLoad("all", Mass.FromKilograms(row.Si("W") / 9.80665), M(-1.0 * (axles.Count - 1)), M(1))]);
        var soil = StuckHarvester().Soil.WithDeclaredUnitWeight(SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")));
        return new StuckMachine(machine, soil, axles.Select(_ => M(row.Si("z"))), PullDirection.Rearwards) { Belly = row.Si("L_belly") > 0 ? new Belly(M(row.Si("L_belly")), M(row.Si("w_belly")), M(row.Si("z_belly"))) : null };
    }
}
