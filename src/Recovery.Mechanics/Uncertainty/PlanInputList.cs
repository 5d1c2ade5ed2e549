using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The inputs of a plan that can scatter.</summary>
public static class PlanInputList
{
    private const string Cone = "ten cone readings beside the wheels, to 0.45 m", Remould = "remoulding index: cone before and after 100 blows on a tube sample", Scale = "a weighbridge ticket or axle scales", Strap = "a strap test: a tape along the line at one known pull";

    /// <summary>Lists them.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The inputs: stuck machine and ground, towing machine, line, rig, masses, depths.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    public static IReadOnlyList<PlanInput> For(RecoveryPlan plan)
    {
        Guard.NotNull(plan, nameof(plan));
        var list = new List<PlanInput>
        {
            new("stuck.cone-index", "cone index of the soil round the stuck machine", Cone, PlanFactor.StuckConeIndex),
            new("stuck.remoulding-index", "remoulding index round the stuck machine (at most 1)", Remould, PlanFactor.StuckRemouldingIndex),
            new("stuck.cone-factor", "cone factor, from cone index to strength", "a vane test beside the cone readings", PlanFactor.ConeFactor),
            new("stuck.adhesion", "adhesion of the soil on tyre walls and belly (at most 1)", string.Empty, PlanFactor.Adhesion),
            new("stuck.exit-slope", "slope on which the machine leaves the hole", "a level and a tape along the entry rut", PlanFactor.ExitSlope),
            new("stuck.rolling", "rolling ratio of a buried wheel", string.Empty, PlanFactor.Rolling),
            new("stuck.seal", "suction behind wheels and under the belly", string.Empty, PlanFactor.Seal),
            new("demand.method", "method of the demand, with sealing and contact", "a load cell in the first, gentle stage of the pull", PlanFactor.Method),
            new("tower.cone-index", "cone index under the towing machine", "ten cone readings along its wheel tracks", PlanFactor.TowerConeIndex),
            new("tower.remoulding-index", "remoulding index under the towing machine (at most 1)", Remould, PlanFactor.TowerRemouldingIndex),
            new("tower.wheel-model", "wheel model of the towing machine", "a trial pull against a load cell", PlanFactor.WheelModel),
            new("tower.power", "power at the wheels", string.Empty, PlanFactor.Power),
            new("tower.firmest-cone-index", "cone index of the firmest ground in reach", Cone, PlanFactor.FirmestConeIndex),
            new("tower.hard-friction", "grip on a hard surface in reach", string.Empty, PlanFactor.HardFriction),
            new("line.stiffness", "stiffness of the line, stiff end", Strap, PlanFactor.LineStiffness),
            new("line.gear-speed", "speed of the locked gear", "the gear table of the manual", PlanFactor.GearSpeed),
            new("line.slack", "declared slack", "a tape", PlanFactor.Slack),
            new("line.approach-speed", "declared approach speed", string.Empty, PlanFactor.Approach),
            new("line.throttle-rise", "time over which the throttle is raised", string.Empty, PlanFactor.ThrottleRise),
            new("line.careless-slack", "slack of the careless load", string.Empty, PlanFactor.CarelessSlack),
            new("line.careless-speed", "speed of the careless load", string.Empty, PlanFactor.CarelessSpeed),
            new("rig.bridle-share", "share of the harder leg of the bridle", string.Empty, PlanFactor.BridleShare),
        };
        for (var i = 0; i < plan.Rig.Parts.Count; i++)
        {
            var name = plan.Rig.Parts[i].Name;
            list.Add(new PlanInput("rig.strength:" + name, "strength of the " + name + " when new, over its marked minimum", "the maker's certificate", PlanFactor.Count, i));
            list.Add(new PlanInput("rig.wear:" + name, "what wear has left of the " + name, "inspection of the " + name + ", or a new one", PlanFactor.Count, i));
        }

        foreach (var load in plan.Stuck.Machine.Loads) list.Add(new PlanInput("stuck.load:" + load.Name, "mass of the " + load.Name, Scale, (p, f) => StuckLoad(p, load.Name, f)));
        foreach (var load in plan.Tower.Machine.Loads) list.Add(new PlanInput("tower.load:" + load.Name, "mass of the " + load.Name, Scale, (p, f) => p.With(p.Tower with { Machine = Heavier(p.Tower.Machine, load.Name, f) })));
        for (var i = 0; i < plan.Stuck.Machine.Axles.Count; i++)
        {
            var axle = i;
            list.Add(new PlanInput("stuck.sinkage:" + plan.Stuck.Machine.Axles[i].Name, "depth of the " + plan.Stuck.Machine.Axles[i].Name, "a rod and a tape at each wheel", (p, f) => Deeper(p, axle, f)));
        }

        Slopes(plan, list);
        return list.AsReadOnly();
    }

    /// <summary>Slopes, unit weight and the belly: each makes the plan anew.</summary>
    private static void Slopes(RecoveryPlan plan, List<PlanInput> list)
    {
        const string Level = "a level along the pull";
        list.Add(new("stuck.grade", "slope under the stuck machine", Level, static (p, f) => p.With(p.Stuck with { Grade = Steeper(p.Stuck.Grade, f) })));
        list.Add(new("tower.grade", "slope under the towing machine", Level, static (p, f) => p.With(p.Tower with { Grade = Steeper(p.Tower.Grade, f) })));
        list.Add(new("stuck.unit-weight", "unit weight of the soil", string.Empty, static (p, f) => p.With(p.Stuck with { Soil = p.Stuck.Soil with { DeclaredUnitWeight = SpecificWeight.FromNewtonsPerCubicMeter(Math.Min(24e3, Math.Max(9e3, p.Stuck.Soil.UnitWeight.NewtonsPerCubicMeter * f))) } })));
        if (plan.Stuck.Belly is not null)
            list.Add(new("stuck.belly-immersion", "immersion of the belly", "a tape at the belly", static (p, f) => p.Stuck.Belly is { } belly ? p.With(p.Stuck with { Belly = new Belly(belly.Length, belly.Width, Length.FromMeters(Math.Min(1.5, belly.Immersion.Meters * f))) { Middle = belly.Middle } }) : p));
    }

    private static Grade Steeper(Grade grade, double factor) => Grade.FromAngle(Angle.FromRadians(Math.Min(Math.PI / 4, Math.Max(-Math.PI / 4, grade.Radians * factor))));

    private static RecoveryPlan StuckLoad(RecoveryPlan plan, string load, double factor) =>
        plan.With(plan.Stuck.WithMachines(Heavier(plan.Stuck.Machine, load, factor), Heavier(plan.Stuck.AsFound, load, factor)));

    private static Machine Heavier(Machine machine, string load, double factor) => new(
        machine.Name,
        machine.Axles,
        machine.Loads.Select(l => l.Name == load ? new NamedLoad(l.Name, Mass.FromKilograms(Math.Min(100e3, l.Mass.Kilograms * factor)), l.Position, l.Height, l.Kind) : l),
        machine.Suspension);

    private static RecoveryPlan Deeper(RecoveryPlan plan, int axle, double factor) => plan.With(plan.Stuck.WithSinkage(
        plan.Stuck.Sinkage.Select((z, i) => i == axle ? Length.FromMeters(Math.Min(plan.Stuck.Machine.Axles[i].Tyre.OverallDiameter.Meters, z.Meters * factor)) : z).ToList().AsReadOnly()));
}
