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
