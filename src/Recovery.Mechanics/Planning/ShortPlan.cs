using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>The short way in: a whole plan from the few facts of <see cref="ShortFacts"/>, everything else filled in with typical values and listed as still to measure.</summary>
/// <remarks>
/// <para>Filled in (judgement of this library, no source): stuck machine on two axles 4.5 m apart up to 30 t and on three above, centre of mass 0.4 of the wheelbase behind the front axle and 1.7 m up, all wheels driven, two tyres an axle of 0.65 m width up to 4 t a wheel, 0.8 m up to 7 t, 1.0 m above, 2.0 m diameter, 200 kPa;
/// towing machine on all-wheel drive, wheelbase 2.9 m, 45 % of its mass on the front axle, drawbar 0.5 m up and 1 m behind the rear axle; belly 3 m by 0.7 m pressed in 0.1 m where it is down; drawn rearwards by one strap from a named drawbar; nothing declared of procedure and place.</para>
/// <para>What decides is never filled in: the kind of a rating and the kind of an attachment have to be given. The result is as coarse as its inputs; it is the place to begin, and the list of what to measure is part of it.</para>
/// </remarks>
public static class ShortPlan
{
    private static readonly Assumption Shape = new("assume.short-machine", "axles, tyres, centre of mass and drive of the stuck machine", "those of a typical harvester of that mass", "Axle loads and tyre sizes move every term of the demand.", GeneralSources.Judgement);
    private static readonly Assumption Tower = new("assume.short-tower", "axles, tyres, weight on the front and drawbar of the towing machine", "those of a typical all-wheel-drive tractor of that mass", "Weight distribution and drawbar height move what it pulls and when its nose lifts.", GeneralSources.Judgement);
    private static readonly Assumption Depth = new("assume.short-depth", "sinkage of each axle", "the same on all axles", "The deepest axle holds the most.", GeneralSources.Judgement);
    private static readonly Assumption Payload = new("assume.short-payload", "what of the mass can be unloaded or taken off", "nothing", "Unloading is usually the measure that is worth most.", GeneralSources.Judgement);
    private static readonly Assumption TowerSoil = new("assume.short-tower-soil", "soil under the towing machine", "that beside the stuck machine", "On firmer ground it pulls more and loads the gear more.", GeneralSources.Judgement);
    private static readonly Assumption Belly = new("assume.short-belly", "whether the belly is on the ground", "down from 0.5 m of sinkage", "A belly on the ground carries load, drags and can be sealed.", GeneralSources.Judgement);

    /// <summary>Makes the plan.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="policy">The design factor policy, named.</param>
    /// <returns>The plan, with everything filled in listed in <see cref="RecoveryPlan.FilledIn"/>.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The machine is sunk deeper than its typical tyres are high.</exception>
    public static RecoveryPlan For(ShortFacts facts, DesignFactorPolicy policy)
    {
        Guard.NotNull(facts, nameof(facts));
        var filledIn = new List<Assumption> { Shape, Tower, Depth, Payload };
        if (facts.TowerSoil is null) filledIn.Add(TowerSoil);
        if (facts.BellyDown is null) filledIn.Add(Belly);
        var machine = Harvester(facts.StuckMass.Kilograms);
        var sinkage = new Length[machine.Axles.Count];
        for (var i = 0; i < sinkage.Length; i++) sinkage[i] = facts.Sinkage;
        var stuck = new StuckMachine(machine, facts.Soil, sinkage, PullDirection.Rearwards)
        {
            Grade = facts.Grade,
            Belly = facts.BellyDown ?? facts.Sinkage.Meters >= 0.5 ? new Belly(M(3), M(0.7), M(0.1)) : null,
        };
        var tower = new TowingMachine(Tractor(facts.TowerMass.Kilograms), facts.TowerSoil ?? facts.Soil, M(-3.9), M(0.5));
        var rig = new Rig(new AttachmentPoint("drawbar", AttachmentKind.Drawbar, true), [facts.Strap], facts.Casualty);
        return new RecoveryPlan(stuck, tower, rig, policy, PullProcedure.Undeclared, RecoverySite.Undeclared).WithFilledIn(filledIn);
    }

    private static Machine Harvester(double kilograms)
    {
        const double Wheelbase = 4.5, RearGroup = 1.9;
        var three = kilograms > 30000;
        var width = (kilograms / (three ? 6 : 4)) switch { <= 4000 => 0.65, <= 7000 => 0.8, _ => 1.0 };
        var tyre = new Tyre(M(width), M(2), M(0.55), Pressure.FromKilopascals(200));
        var axles = new List<Axle> { new("front axle", M(0), 2, tyre, true, M(2.4)), new(three ? "middle axle" : "rear axle", M(-Wheelbase), 2, tyre, true, M(2.4)) };
        if (three) axles.Add(new Axle("rear axle", M(-Wheelbase - RearGroup), 2, tyre, true, M(2.4)));
        return new Machine("stuck machine", axles, [new NamedLoad("whole machine", Mass.FromKilograms(kilograms), M(-0.4 * (Wheelbase + (three ? RearGroup / 2 : 0))), M(1.7))], three ? Suspension.Equalised : Suspension.Undeclared);
    }

    private static Machine Tractor(double kilograms)
    {
        const double Wheelbase = 2.9;
        Tyre front = new(M(0.54), M(1.5), M(0.4), Pressure.FromKilopascals(130)), rear = new(M(0.65), M(1.95), M(0.5), Pressure.FromKilopascals(120));
        return new Machine("towing machine", [new Axle("front axle", M(0), 2, front, true, M(1.9)), new Axle("rear axle", M(-Wheelbase), 2, rear, true, M(1.9))], [new NamedLoad("whole machine", Mass.FromKilograms(kilograms), M(-0.55 * Wheelbase), M(1.05))]);
    }

    private static Length M(double metres) => Length.FromMeters(metres);
}
