using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>What always holds of a pull demand, each within its condition.</summary>
public class DemandPropertyTests
{
    [Property]
    public Property Terms_sum_and_bounds_rise() => Prop.ForAll(Cases(), stuck =>
    {
        var d = PullDemand.Estimate(stuck);
        double low = d.Terms.Sum(t => t.Low.Newtons), central = d.Terms.Sum(t => t.Central.Newtons), high = d.Terms.Sum(t => t.High.Newtons);
        return Close(low, d.Total.LowNewtons) && Close(central, d.Total.CentralNewtons) && Close(high, d.Total.HighNewtons) && d.PlanningHigh >= d.Total.High && d.PlanningHigh >= d.DepthRule;
    });

    [Property]
    public Property A_stronger_wall_never_lowers_a_sum_of_buried_wheels() => Prop.ForAll(Cases(), stuck =>
    {
        var compiled = CompiledStuckMachine.From(stuck, Suspension.Equalised);
        if (compiled.Flat.Buried.Any(b => !b)) return true;
        var s = DemandBounds.HighState(compiled.Assumptions, locked: false);
        s.Floor = compiled.Assumptions.Strength.FloorCentral;
        DemandKernel.Compose(compiled.Flat, s, out var weaker);
        s.Wall *= 1.3;
        DemandKernel.Compose(compiled.Flat, s, out var stronger);
        return stronger.Total >= weaker.Total - 1e-6;
    });

    [Property]
    public Property Removing_payload_that_raises_no_axle_load_never_raises_the_demand_the_uplift_apart() => Prop.ForAll(Cases(), stuck =>
    {
        PullDemand before = PullDemand.Estimate(stuck), after = PullDemand.Estimate(stuck.WithShareOf("beet", Ratio.FromDecimalFractions(0.5)));
        // Downhill the weight helps, so a lighter machine can need more.
        if (stuck.Grade.Radians < 0) return true;
        if (Enumerable.Range(0, 3).Any(i => after.Compiled.Flat.Load[i] > before.Compiled.Flat.Load[i])) return true;
        return after.Total.LowNewtons <= before.Total.LowNewtons + 1 && after.Total.CentralNewtons - after.Bounds.Central.Lift <= before.Total.CentralNewtons - before.Bounds.Central.Lift + 1;
    });

    [Property]
    public Property Worse_ground_never_helps_a_machine_on_rolling_wheels() => Prop.ForAll((from ci in Gen.Choose(250, 1500) from ri in Gen.Choose(50, 100) select (ci, ri / 100.0)).ToArbitrary(), x =>
    {
        PullDemand Of(double ci) => PullDemand.Estimate(new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(ci), Frac(x.Item2)), [M(0.1), M(0.1), M(0.1)], PullDirection.Rearwards) { Wheels = WheelMotion.Turning });
        return Of(x.ci).Total.CentralNewtons >= Of(x.ci * 1.2).Total.CentralNewtons - 1e-6;
    });

    [Property]
    public Property Passing_from_rolling_to_buried_never_becomes_easier() => Prop.ForAll((from ci in Gen.Choose(150, 900) select (double)ci).ToArbitrary(), ci =>
    {
        PullDemand At(double z) => PullDemand.Estimate(new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(ci), Frac(0.7)), [M(z), M(z), M(z)], PullDirection.Rearwards) { Wheels = WheelMotion.Turning });
        // The tenth of the diameter lies at 0.205 and 0.195 m.
        return At(0.2051).Total.CentralNewtons >= At(0.1949).Total.CentralNewtons - 1e-6;
    });

    [Property]
    public Property Venting_and_digging_never_raise_a_bound_where_the_belly_is_clear() => Prop.ForAll(Cases(), found =>
    {
        var stuck = found with { Belly = null };
        PullDemand before = PullDemand.Estimate(stuck), dug = PullDemand.Estimate(stuck.Dug(Angle.FromDegrees(8))), vented = PullDemand.Estimate(stuck.Vented());
        return dug.Total.HighNewtons <= before.Total.HighNewtons + 1e-6 && dug.Total.CentralNewtons <= before.Total.CentralNewtons + 1e-6 && vented.Total.CentralNewtons <= before.Total.CentralNewtons + 1e-6;
    });

    /// <summary>
    /// Harvester without beet, 294.200 kN, no axle driven (nothing caps the cone index), level, wheels 0.4 m in, belly 5.0 x 1.6 m 0.15 m in, CI 350, RI 0.7, turning, vented, exit 1:10. Worked by a script of its own, 200,001 floors from 2.4555 to 9.8221 kPa.
    /// Wheel loads 90.397, 28.351, 28.351 kN full; the belly takes 5.14 s 8.0 m2 of 294.200, so 0.6295 of them are left at the least, at 2.6507 kPa: 69.8125 kN. There a wheel goes over to the model; the grid's best, the change-over at 3.3870 kPa, gives 70.0835.
    /// </summary>
    [Fact]
    public void The_low_finds_where_a_wheel_goes_over_to_the_wheel_model()
    {
        var machine = Harvester().Without("beet");
        var stuck = new StuckMachine(machine.WithAxles(machine.Axles.Select(a => a.WithDriven(false))), StuckHarvester().Soil, [M(0.4), M(0.4), M(0.4)], PullDirection.Rearwards) { Belly = new Belly(M(5), M(1.6), M(0.15)) };
        var demand = PullDemand.Estimate(stuck);
        Assert.Equal(2.4555, demand.FloorKilopascals[0], 0.0001);
        Assert.Equal(69.8125, demand.Total.Low.Kilonewtons, 0.003);
        Assert.Equal(2.6507, demand.Basis[0].Floor.Kilopascals, 0.002);
    }

    /// <summary>
    /// 9 t left of 10 t midway between two axles 4 m apart, none driven, two tyres 0.4 x 1.2 m each, 0.4 and 0.3 m in, belly 3.5 x 1.5 m 0.4 m in, CI 950, RI 0.6, 17 kN/m3, alpha 0.5. Worked by a script of its own, 200,001 floors from 1.4473 to 5.7890 kPa:
    /// locked, at 1.68352 kPa, 231.2025 kN, where the front faces give way to their steps; the best of the grid and of the kinks that a formula gives is 229.8886.
    /// </summary>
    [Fact]
    public void The_high_finds_the_peak_where_a_face_gives_way_to_its_step()
    {
        var tyre = Tyre(0.4, 1.2, 0.4, 0.2);
        var machine = new Machine("light", [new Axle("front", M(0), 2, tyre, false, M(2)), new Axle("rear", M(-4), 2, tyre, false, M(2))], [new NamedLoad("body", Mass.FromTonnes(9), M(-2), M(1)), new NamedLoad("cargo", Mass.FromTonnes(1), M(-2), M(1), LoadKind.Payload)]);
        var soil = Soil.FromConeIndex(KPa(950), Frac(0.6)) with { DeclaredUnitWeight = SpecificWeight.FromKilonewtonsPerCubicMeter(17), DeclaredAdhesionFactor = Frac(0.5) };
        var demand = PullDemand.Estimate(new StuckMachine(machine, soil, [M(0.4), M(0.3)], PullDirection.Rearwards) { Belly = new Belly(M(3.5), M(1.5), M(0.4)) }.Without("cargo"));
        Assert.Equal(1.44726, demand.FloorKilopascals[0], 0.00001);
        Assert.Equal(231.2025, demand.Total.High.Kilonewtons, 0.001);
        Assert.Equal(1.6835, demand.Basis[2].Floor.Kilopascals, 0.001);
        Assert.True(demand.Basis[2].Locked);
    }

    [Property]
    public Property No_floor_gives_a_sum_outside_the_bounds() => Prop.ForAll(Cases(), stuck =>
    {
        var d = PullDemand.Estimate(stuck);
        var compiled = d.Compiled;
        DemandState low = DemandBounds.LowState(compiled.Assumptions), high = DemandBounds.HighState(compiled.Assumptions, locked: false);
        for (var i = 0; i <= 500; i++)
        {
            low.Floor = high.Floor = compiled.Assumptions.Strength.FloorLow + ((compiled.Assumptions.Strength.FloorHigh - compiled.Assumptions.Strength.FloorLow) * i / 500);
            DemandKernel.Compose(compiled.Flat, low, out var l);
            DemandKernel.Compose(compiled.Flat, high, out var h);
            if (l.Total < d.Total.LowNewtons - (1e-8 * Math.Abs(d.Total.LowNewtons)) || h.Total > d.Total.HighNewtons + (1e-8 * Math.Abs(d.Total.HighNewtons))) return false;
        }

        return true;
    });

    /// <summary>Light and heavy two-axle machines on any belly, before and after unloading: the high meets its peaks, where a face gives way to its step or the uplift to the axle that limits it, locked or turning.</summary>
    [Property(MaxTest = 600)]
    public Property No_floor_gives_more_than_the_high_whatever_the_machine() => Prop.ForAll(Machines(), stuck =>
    {
        var d = PullDemand.Estimate(stuck);
        var (flat, a) = (d.Compiled.Flat, d.Compiled.Assumptions);
        DemandState low = DemandBounds.LowState(a), turning = DemandBounds.HighState(a, locked: false), locked = DemandBounds.HighState(a, locked: true);
        for (var i = 0; i <= 400; i++)
        {
            low.Floor = turning.Floor = locked.Floor = a.Strength.FloorLow + ((a.Strength.FloorHigh - a.Strength.FloorLow) * i / 400);
            DemandKernel.Compose(flat, low, out var l);
            DemandKernel.Compose(flat, turning, out var t);
            DemandKernel.Compose(flat, locked, out var s);
            if (Math.Max(t.Total, s.Total) > d.Total.HighNewtons * (1 + 1e-8) || l.Total < d.Total.LowNewtons * (1 - 1e-8)) return false;
        }

        return true;
    });

    private static Arbitrary<StuckMachine> Machines() => (
        from body in Gen.Choose(2, 12)
        from cargo in Gen.Choose(1, 25)
        from unloaded in Gen.Elements(true, false)
        from width in Gen.Choose(40, 90)
        from diameter in Gen.Choose(120, 210)
        from ci in Gen.Choose(100, 1500)
        from ri in Gen.Choose(30, 100)
        from front in Gen.Choose(0, 60)
        from rear in Gen.Choose(0, 60)
        from length in Gen.Choose(10, 40)
        from across in Gen.Choose(5, 20)
        from down in Gen.Choose(2, 40)
        let tyre = Tyre(width / 100.0, diameter / 100.0, 0.4, 0.2)
        let machine = new Machine("two axles", [new Axle("front", M(0), 2, tyre, true, M(2)), new Axle("rear", M(-4), 2, tyre, true, M(2))], [new NamedLoad("body", Mass.FromTonnes(body), M(-2.2), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(cargo), M(-1.6), M(2), LoadKind.Payload)])
        let stuck = new StuckMachine(machine, Soil.FromConeIndex(KPa(ci), Frac(ri / 100.0)), [M(front / 100.0), M(rear / 100.0)], PullDirection.Rearwards) { Belly = new Belly(M(length / 10.0), M(across / 10.0), M(down / 100.0)) }
        select unloaded ? stuck.Without("cargo") : stuck).ToArbitrary();

    private static bool Close(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Abs(b));

    private static Arbitrary<StuckMachine> Cases() => (
        from ci in Gen.Choose(80, 900)
        from ri in Gen.Choose(50, 100)
        from z in Gen.Choose(0, 100)
        from deeper in Gen.Choose(0, 30)
        from grade in Gen.Choose(-8, 8)
        from belly in Gen.Elements(true, false)
        from wheels in Gen.Elements(WheelMotion.Undeclared, WheelMotion.Turning, WheelMotion.Locked)
        from seal in Gen.Elements(Seal.Undeclared, Seal.Sealed, Seal.Vented)
        select new StuckMachine(Harvester(), Soil.FromConeIndex(KPa(ci), Frac(ri / 100.0)), [M(z / 100.0), M((z + deeper) / 100.0), M((z + deeper) / 100.0)], PullDirection.Rearwards)
        {
            Grade = Grade.FromPercent(grade),
            Belly = belly ? new Belly(M(3), M(1.2), M(0.1)) : null,
            Wheels = wheels,
            Seal = seal,
        }).ToArbitrary();
}
