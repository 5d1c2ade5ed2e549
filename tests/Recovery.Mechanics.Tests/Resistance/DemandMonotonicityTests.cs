using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Monotonicities and scalings of the sum, each in the condition in which it holds, and the breaks of its rules.</summary>
public class DemandMonotonicityTests
{
    /// <summary>Deeper is never easier for buried wheels on one wall and floor, belly clear.</summary>
    [Property]
    public Property Deeper_is_never_easier_for_buried_wheels() => Prop.ForAll(Depths(), x =>
    {
        var (z, more, wall, floor, locked, isSealed) = x;
        double At(double depth)
        {
            DemandKernel.Compose(Compiled(depth).Flat, new DemandState { Wall = wall, Floor = floor, Index = 200e3, Rho = 0.15, Locked = locked, Sealed = isSealed, Exit = 0.16, Meets = 7 }, out var t);
            return t.Total;
        }

        return At(z + more) >= At(z) * (1 - 1e-12);
    });

    /// <summary>The soft-soil part of rolling wheels goes with the square of the load (same deflection over section height).</summary>
    [Property]
    public Property Soft_soil_term_goes_with_the_square_of_the_load() => Prop.ForAll((from ci in Gen.Choose(200, 1200) from half in Gen.Choose(10, 90) select (ci * 1000.0, half / 100.0)).ToArbitrary(), x =>
    {
        double Soft(double share)
        {
            var f = CompiledStuckMachine.From(new StuckMachine(Scaled(share), StuckHarvester().Soil, [M(0.1), M(0.1)], PullDirection.Rearwards), Suspension.Equalised).Flat;
            DemandKernel.Compose(f, new DemandState { Wall = 10e3, Floor = 10e3, Index = x.Item1, Rho = 0.15 }, out var t);
            return t.Model - (BrixiusConstants.Radial.Rolling * f.Weight);
        }

        return Math.Abs((Soft(x.Item2) / Soft(1)) - (x.Item2 * x.Item2)) < 1e-9;
    });

    /// <summary>Worse ground never helps traction: the net traction of rolling wheels.</summary>
    [Property]
    public Property Worse_ground_never_helps_traction() => Prop.ForAll(Gen.Choose(100, 2000).ToArbitrary(), ci =>
    {
        var f = CompiledStuckMachine.From(new StuckMachine(Scaled(1), StuckHarvester().Soil, [M(0.1), M(0.1)], PullDirection.Rearwards), Suspension.Equalised).Flat;
        double Net(double index) => OwnTractionKernel.Gross(f, 0, 0, index) - OwnTractionKernel.Resistance(f, 0, 0, index);
        return Net(ci * 1000.0) <= Net(ci * 1100.0);
    });

    /// <summary>Removing mass that raises no axle load never raises the high, the uplift term apart, whatever the soil.</summary>
    [Property]
    public Property Lighter_is_never_harder_at_the_high_the_uplift_apart() => Prop.ForAll((from ci in Gen.Choose(80, 900) from z in Gen.Choose(5, 100) from share in Gen.Choose(0, 99) select (ci, z / 100.0, share / 100.0)).ToArbitrary(), x =>
    {
        var full = new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(x.ci), Frac(0.7)), [M(x.Item2), M(x.Item2), M(x.Item2)], PullDirection.Rearwards);
        PullDemand before = PullDemand.Estimate(full), after = PullDemand.Estimate(full.WithShareOf("beet", Ratio.FromDecimalFractions(x.Item3)));
        // Belly clear: no uplift at all.
        return after.Total.HighNewtons <= before.Total.HighNewtons + 1e-6;
    });

    /// <summary>Worked example: 10 kN off the front axle lets more uplift develop, 102.6 to 122.5 kN, and the high rises from 817.7 to 819.9 kN.</summary>
    [Fact]
    public void The_uplift_is_the_exception()
    {
        var found = CompiledStuckMachine.From(StuckHarvester(), Suspension.Equalised);
        var s = DemandBounds.HighState(found.Assumptions, locked: true);
        s.Floor = found.Assumptions.Strength.FloorHigh;
        DemandKernel.Compose(found.Flat, s, out var before);
        found.Flat.Load[0] -= 10e3;
        DemandKernel.Compose(Lighter(found.Flat), s, out var after);
        Assert.Equal([102.6, 122.5], new[] { before.UpliftDeveloped, after.UpliftDeveloped }.Select(v => Math.Round(v / 1000, 1)));
        Assert.Equal([817.7, 819.9], new[] { before.Total, after.Total }.Select(v => Math.Round(v / 1000, 1)));
    }

    /// <summary>Digging leaves the handbook rule, which is for the hole as found; taking mass off lowers it.</summary>
    [Property]
    public Property Digging_leaves_the_rule_and_lightening_lowers_it() => Prop.ForAll(Gen.Choose(25, 150).ToArbitrary(), z =>
    {
        var found = new StuckMachine(Harvester(), StuckHarvester().Soil, [M(z / 100.0), M(z / 100.0), M(z / 100.0)], PullDirection.Rearwards);
        var rule = PullDemand.Estimate(found).DepthRule.Newtons;
        return PullDemand.Estimate(found.Dug(Angle.FromDegrees(9)).Vented()).DepthRule.Newtons == rule && PullDemand.Estimate(found.Without("beet")).DepthRule.Newtons < rule;
    });

    /// <summary>A face is never more than the rigid step of its wheel.</summary>
    [Property]
    public Property A_face_is_held_by_the_step_of_its_wheel() => Prop.ForAll((from w in Gen.Choose(1, 60) from z in Gen.Choose(21, 99) from wall in Gen.Choose(1, 60) select (w * 1000.0, z / 100.0, wall)).ToArbitrary(), x =>
    {
        var exit = RutExitModel.Instance.Leave(M(0.6), M(2), M(x.Item2), Force.FromNewtons(x.Item1), KPa(x.wall), SpecificWeight.FromKilonewtonsPerCubicMeter(17));
        return exit.Counts.Newtons <= exit.Step!.Value.Newtons && exit.Counts.Newtons <= exit.SoilFailure.Newtons && exit.ClimbsAboveWallOverFloor >= 2 * 5.14;
    });

    /// <summary>Hub at 1.025 m, fender at 1.5 m above the bottom of the tyre: at the hub the class is still the hub, at the fender still the fender.</summary>
    [Theory]
    [InlineData(0.2049, DepthClass.NotMired)]
    [InlineData(0.2051, DepthClass.Hub)]
    [InlineData(1.0249, DepthClass.Hub)]
    [InlineData(1.025, DepthClass.Hub)]
    [InlineData(1.0251, DepthClass.Fender)]
    [InlineData(1.4999, DepthClass.Fender)]
    [InlineData(1.5, DepthClass.Fender)]
    [InlineData(1.5001, DepthClass.Cab)]
    public void Classes_of_the_rule_at_their_breaks(double z, DepthClass expected) =>
        Assert.Equal(expected, DepthRule.Classify(new StuckMachine(Harvester(), StuckHarvester().Soil, [M(z), M(0), M(0)], PullDirection.Rearwards).WithFenderHeight(M(1.5))));

    /// <summary>Adhesion 0.5 s_u is held at 12 kPa from 24 kPa upwards.</summary>
    [Theory]
    [InlineData(23.999, 11.9995)]
    [InlineData(24, 12)]
    [InlineData(24.001, 12)]
    public void Adhesion_at_its_cap(double strength, double adhesion) => Assert.Equal(adhesion, BuriedWheelKernel.Adhesion(strength * 1000, 0.5) / 1000, 1e-9);

    private static CompiledStuckMachine Compiled(double z) => CompiledStuckMachine.From(new StuckMachine(Harvester(), StuckHarvester().Soil, [M(z), M(z), M(z)], PullDirection.Rearwards), Suspension.Equalised);

    /// <summary>Two driven axles on tyres of a measured deflection ratio, a share of 30 t on them.</summary>
    private static Machine Scaled(double share) => new(
        "scaled",
        [new Axle("front", M(0), 2, Measured, true, M(2)), new Axle("rear", M(-4), 2, Measured, true, M(2))],
        [new NamedLoad("all", Mass.FromTonnes(30 * share), M(-2), M(1.5))]);

    private static Tyre Measured => Tyre(0.8, 2.0, 0.5, 0.2);

    private static DemandFlat Lighter(DemandFlat f) => new()
    {
        Count = f.Count,
        Width = f.Width,
        Diameter = f.Diameter,
        Sinkage = f.Sinkage,
        Contact = f.Contact,
        Segment = f.Segment,
        Step = f.Step,
        NumericPerPascal = f.NumericPerPascal,
        Load = f.Load,
        UpliftShare = f.UpliftShare,
        Buried = f.Buried,
        Driven = f.Driven,
        Braked = f.Braked,
        Weight = f.Weight - 10e3,
        Grade = f.Grade,
        BellyLength = f.BellyLength,
        BellyWidth = f.BellyWidth,
        BellyImmersion = f.BellyImmersion,
        WheelArea = f.WheelArea,
        UnitWeight = f.UnitWeight,
        AdhesionFactor = f.AdhesionFactor,
        Face = f.Face,
        AnyBuried = f.AnyBuried,
    };

    private static Arbitrary<(double Z, double More, double Wall, double Floor, bool Locked, bool Sealed)> Depths() => (
        from z in Gen.Choose(21, 180)
        from more in Gen.Choose(0, 15)
        from wall in Gen.Choose(2, 60)
        from floor in Gen.Choose(1, 30)
        from locked in Gen.Elements(true, false)
        from sealing in Gen.Elements(true, false)
        select (z / 100.0, more / 100.0, wall * 1000.0, floor * 1000.0, locked, sealing)).ToArbitrary();
}
