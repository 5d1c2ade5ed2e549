using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Traction;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class CapabilityPropertyTests
{
    private const double Hair = 1e-6;

    [Property]
    public Property Steeper_never_pulls_more_uphill() => Prop.ForAll(Towers(), Gen.Choose(0, 24).ToArbitrary(), (tower, percent) =>
        Sustained(tower with { Grade = Grade.FromPercent(percent + 1) }) <= Sustained(tower with { Grade = Grade.FromPercent(percent) }) + Hair);

    [Property]
    public Property Worse_ground_never_pulls_or_imposes_more() => Prop.ForAll(Towers(), tower =>
    {
        var worse = PullCapability.Estimate(tower with { Soil = Soil.FromConeIndex(tower.Soil.ConeIndex * 0.9, tower.Soil.RemouldingIndex) });
        var better = PullCapability.Estimate(tower);
        return worse.Sustained.CentralNewtons <= better.Sustained.CentralNewtons + Hair && worse.Imposable.Newtons <= better.Imposable.Newtons + Hair;
    });

    [Property]
    public Property More_ballast_on_the_rear_axle_never_pulls_less_on_firm_ground() => Prop.ForAll(Gen.Choose(120, 200).ToArbitrary(), Gen.Choose(0, 20).ToArbitrary(), (coneTens, hundreds) =>
    {
        double Traction(double extra) => PullCapability.Estimate(new TowingMachine(Tractors.SixteenTonnes(62.8, 94.2 + extra), Soil.FromConeIndex(KPa(coneTens * 10), Frac(0.9)), M(-3.9), M(0.5))).TractionLimit.Newtons;
        return Traction((hundreds + 1) * 0.981) >= Traction(hundreds * 0.981) - Hair;
    });

    [Property]
    public Property A_higher_drawbar_never_gains_nose_margin() => Prop.ForAll(Towers(), Gen.Choose(3, 14).ToArbitrary(), (tower, decimetres) =>
    {
        CapabilityFlat At(double height) => CapabilityFlat.From(new TowingMachine(tower.Machine, tower.Soil, tower.HitchPosition, M(height)) { Grade = tower.Grade }, 0);
        CapabilityFlat low = At(decimetres / 10.0), high = At((decimetres / 10.0) + 0.1);
        var equalPush = NoseKernel.Ratio(high.NoseMoment, high.LineHeight, high.CentreHeight, 1e5, 1.5e5) >= NoseKernel.Ratio(low.NoseMoment, low.LineHeight, low.CentreHeight, 1e5, 1.5e5);
        return equalPush && high.NoseLimit <= low.NoseLimit + Hair;
    });

    [Property]
    public Property A_line_that_falls_loads_the_wheels_and_pulls_more_on_firm_ground() => Prop.ForAll(Gen.Choose(0, 14).ToArbitrary(), degrees =>
    {
        var tower = Tractors.SixteenTonneTower(1500);
        return PullCapability.Estimate(tower, Angle.FromDegrees(degrees + 1)).Imposable >= PullCapability.Estimate(tower, Angle.FromDegrees(degrees)).Imposable;
    });

    [Property]
    public Property Capability_is_continuous_in_grade_hitch_and_soil() => Prop.ForAll(Towers(), tower =>
    {
        var here = PullCapability.Estimate(tower);
        var beside = PullCapability.Estimate(new TowingMachine(tower.Machine, Soil.FromConeIndex(tower.Soil.ConeIndex * (1 + 1e-9), tower.Soil.RemouldingIndex), tower.HitchPosition, tower.HitchHeight + M(1e-9))
        {
            Grade = Grade.FromAngle(tower.Grade.Angle + Angle.FromRadians(1e-9)),
            EnginePower = tower.EnginePower,
            HitchRating = tower.HitchRating,
            HardSurfaceInReach = tower.HardSurfaceInReach,
        });
        return Math.Abs(here.Sustained.CentralNewtons - beside.Sustained.CentralNewtons) < 1 && Math.Abs(here.Imposable.Newtons - beside.Imposable.Newtons) < 1;
    });

    [Property]
    public Property Axle_loads_sum_to_what_stands_on_the_ground() => Prop.ForAll(Towers(), Gen.Choose(0, 300).ToArbitrary(), (tower, kilonewtons) =>
    {
        double sum = 0;
        foreach (var load in PullCapability.Estimate(tower).AxleLoadsWhilePulling(KN(kilonewtons))) sum += load.Newtons;
        return Math.Abs(sum - (tower.Machine.Weight.Newtons * Math.Cos(tower.Grade.Radians))) < 1e-3;
    });

    [Property]
    public Property Sustained_never_passes_a_limit_and_the_band_rises() => Prop.ForAll(Towers(), tower =>
    {
        var c = PullCapability.Estimate(tower);
        return c.Sustained.HighNewtons <= c.NoseLimit.Newtons + Hair && c.Sustained.HighNewtons <= (c.PowerLimit?.Newtons ?? double.MaxValue) + Hair && c.Sustained.HighNewtons <= (c.RatingLimit?.Newtons ?? double.MaxValue) + Hair
            && c.Sustained.LowNewtons <= c.Sustained.CentralNewtons && c.Sustained.CentralNewtons <= c.Sustained.HighNewtons;
    });

    private static double Sustained(TowingMachine tower) => PullCapability.Estimate(tower).Sustained.CentralNewtons;

    private static Arbitrary<TowingMachine> Towers() => (
        from front in Gen.Choose(25, 90)
        from rear in Gen.Choose(60, 130)
        from ci in Gen.Choose(30, 250)
        from hitch in Gen.Choose(4, 13)
        from percent in Gen.Choose(-10, 15)
        from driven in Gen.Elements(true, false)
        from rating in Gen.Choose(40, 300)
        from power in Gen.Choose(60, 400)
        from hard in Gen.Elements(true, false)
        select new TowingMachine(Tractors.SixteenTonnes(front, rear, 1.0, driven), Soil.FromConeIndex(KPa(ci * 10), Frac(0.8)), M(-3.9), M(hitch / 10.0))
        {
            Grade = Grade.FromPercent(percent),
            HitchRating = KN(rating),
            EnginePower = Power.FromKilowatts(power),
            HardSurfaceInReach = hard,
        }).ToArbitrary();
}
