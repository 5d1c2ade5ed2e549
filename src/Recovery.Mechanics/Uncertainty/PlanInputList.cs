using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The inputs of a plan that can scatter.</summary>
/// <remarks>What the plan does not declare is not listed. What it holds as 0 is listed where a difference can move it (<see cref="PlanInput.TakesShift"/>), because a factor would change nothing: a level slope, a straight line, a taut one.</remarks>
public static class PlanInputList
{
    private const string Cone = "ten cone readings beside the wheels, to 0.45 m", Remould = "remoulding index: cone before and after 100 blows on a tube sample", Strap = "a strap test: a tape along the line at one known pull";

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
            ProcedureInputs.ExitSlope(plan),
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
            new("rig.bridle-share", "share of the harder leg of the bridle", string.Empty, PlanFactor.BridleShare),
        };
        ProcedureInputs.Add(plan, list);
        for (var i = 0; i < plan.Rig.Parts.Count; i++)
        {
            var name = plan.Rig.Parts[i].Name;
            list.Add(new PlanInput("rig.strength:" + name, "strength of the " + name + " when new, over its marked minimum", "the maker's certificate", PlanFactor.Count, i));
            list.Add(new PlanInput("rig.wear:" + name, "what wear has left of the " + name, "inspection of the " + name + ", or a new one", PlanFactor.Count, i));
        }

        MachineInputs.Add(plan, list);
        for (var i = 0; i < plan.Stuck.Machine.Axles.Count; i++)
        {
            var axle = i;
            list.Add(new PlanInput(plan, "stuck.sinkage:" + MachineInputs.AxleName(plan.Stuck.Machine, i), "depth of the " + MachineInputs.AxleName(plan.Stuck.Machine, i), "a rod and a tape at each wheel", new(p => new(p.Stuck.Sinkage[axle].Meters, 0, p.Stuck.Machine.Axles[axle].Tyre.OverallDiameter.Meters), (p, z) => Deeper(p, axle, z)), "m"));
        }

        Slopes(plan, list);
        Hole(plan, list);
        Belly(plan, list);
        Tower(plan, list);
        RigInputs.Add(plan, list);
        WayInputs.Add(plan, list);
        ArrangementInputs.Add(plan, list);
        var undeclared = Undeclared(plan);
        return list.Where(i => (i.TakesFactor || i.TakesShift) && !undeclared.Contains(i.Key)).ToList().AsReadOnly();
    }

    /// <summary>Keys of compiled numbers that the plan does not declare.</summary>
    private static HashSet<string> Undeclared(RecoveryPlan plan)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        void Unless(bool declared, string key)
        {
            if (!declared) keys.Add(key);
        }

        Unless(plan.Tower.EnginePower is not null, "tower.power");
        Unless(plan.Tower.FirmestConeIndex is not null, "tower.firmest-cone-index");
        Unless(plan.Tower.HardSurfaceInReach, "tower.hard-friction");
        Unless(plan.Rig.Line is not null, "line.stiffness");
        Unless(plan.Rig.Bridle is not null, "rig.bridle-share");
        return keys;
    }

    /// <summary>Slopes, heights and unit weight: each makes the plan anew.</summary>
    private static void Slopes(RecoveryPlan plan, List<PlanInput> list)
    {
        const string Level = "a level along the pull";
        list.Add(new(plan, "stuck.grade", "slope under the stuck machine", Level, new(static p => Slope(p.Stuck.Grade), static (p, a) => p.With(p.Stuck with { Grade = Grade.FromAngle(Angle.FromRadians(a)) })), "rad"));
        list.Add(new(plan, "tower.grade", "slope under the towing machine", Level, new(static p => Slope(p.Tower.Grade), static (p, a) => p.With(p.Tower with { Grade = Grade.FromAngle(Angle.FromRadians(a)) })), "rad"));
        if (plan.Stuck.EntryGrade is not null)
            list.Add(new(plan, "stuck.entry-grade", "slope on which it drove in", Level, new(static p => Slope(p.Stuck.EntryGrade ?? Grade.Level), static (p, a) => p.Stuck.EntryGrade is null ? p : p.With(p.Stuck with { EntryGrade = Grade.FromAngle(Angle.FromRadians(a)) })), "rad"));
        list.Add(new(plan, "stuck.unit-weight", "unit weight of the soil", string.Empty, new(static p => new(p.Stuck.Soil.UnitWeight.NewtonsPerCubicMeter, 9e3, 24e3), static (p, w) => p.With(p.Stuck with { Soil = p.Stuck.Soil with { DeclaredUnitWeight = SpecificWeight.FromNewtonsPerCubicMeter(w) } }))));
    }

    /// <summary>What was dug, and the fender above the wheels.</summary>
    private static void Hole(RecoveryPlan plan, List<PlanInput> list)
    {
        if (plan.Stuck.DugSlope is not null)
            list.Add(new(plan, "stuck.dug-slope", "slope to which the ground ahead of the wheels was dug", "a level in the ramp", new(static p => new(p.Stuck.DugSlope?.Radians ?? 0, 0, Math.PI / 4), static (p, a) => p.Stuck.DugSlope is null ? p : p.With(p.Stuck.WithDugSlope(a))), "rad"));
        if (plan.Stuck.FenderHeight is not null)
            list.Add(new(plan, "stuck.fender-height", "height of the fender above the bottom of the deepest tyre, by which the depth rule counts", "a tape at the deepest wheel", new(static p => new(p.Stuck.FenderHeight?.Meters ?? 0.5, 0.5, 5), static (p, z) => p.Stuck.FenderHeight is null ? p : p.With(p.Stuck with { FenderHeight = Length.FromMeters(z) })), "m"));
    }

    private static void Belly(RecoveryPlan plan, List<PlanInput> list)
    {
        if (plan.Stuck.Belly is not { } found) return;
        const string Tape = "a tape at the belly";
        list.Add(new(plan, "stuck.belly-immersion", "immersion of the belly", Tape, new(static p => new(p.Stuck.Belly?.Immersion.Meters ?? 0, 0, 1.5), static (p, z) => Bellied(p, b => new Belly(b.Length, b.Width, Length.FromMeters(z)) { Middle = b.Middle })), "m"));
        list.Add(new(plan, "stuck.belly-length", "length of the belly on the ground", Tape, new(static p => new(p.Stuck.Belly?.Length.Meters ?? 0.1, 0.1, 15), static (p, l) => Bellied(p, b => new Belly(Length.FromMeters(l), b.Width, b.Immersion) { Middle = b.Middle })), "m"));
        list.Add(new(plan, "stuck.belly-width", "width of the belly on the ground", Tape, new(static p => new(p.Stuck.Belly?.Width.Meters ?? 0.1, 0.1, 5), static (p, w) => Bellied(p, b => new Belly(b.Length, Length.FromMeters(w), b.Immersion) { Middle = b.Middle })), "m"));
        if (found.Middle is not null)
            list.Add(new(plan, "stuck.belly-middle", "place of the middle of the belly, from the foremost axle", Tape, new(static p => new(p.Stuck.Belly?.Middle?.Meters ?? 0, -30, 5), static (p, x) => Bellied(p, b => b.Middle is null ? b : b with { Middle = Length.FromMeters(x) })), "m"));
    }

    private static void Tower(RecoveryPlan plan, List<PlanInput> list)
    {
        const string Tape = "a tape";
        list.Add(new(plan, "tower.hitch-position", "place of the hitch along the towing machine, from its foremost axle", Tape, new(static p => Hitch(p.Tower), static (p, x) => p.With(p.Tower.WithHitch(x, p.Tower.HitchHeight.Meters))), "m"));
        list.Add(new(plan, "tower.hitch-height", "height of the hitch", Tape, new(static p => new(p.Tower.HitchHeight.Meters, 0.1, 3), static (p, z) => p.With(p.Tower.WithHitch(p.Tower.HitchPosition.Meters, z))), "m"));
        if (plan.Tower.HitchRating is not null && !RigInputs.IsHitchRating(plan))
            list.Add(new(plan, "tower.hitch-rating", "rating of the hitch", "the manual", new(static p => new(p.Tower.HitchRating?.Newtons ?? 5e3, 5e3, 2e6), static (p, n) => p.Tower.HitchRating is null ? p : p.With(p.Tower with { HitchRating = Force.FromNewtons(n) })), "N"));
        if (plan.Tower.HitchVerticalRating is not null)
            list.Add(new(plan, "tower.hitch-vertical-rating", "load down on the hitch that its maker allows", "the manual", new(static p => new(p.Tower.HitchVerticalRating?.Newtons ?? 500, 500, 500e3), static (p, n) => p.Tower.HitchVerticalRating is null ? p : p.With(p.Tower with { HitchVerticalRating = Force.FromNewtons(n) })), "N"));
        list.Add(new(plan, "tower.downhill", "steepest slope on which the towing machine may face downhill", "a level", new(static p => new(p.Tower.DownhillInReach.Radians, 0, Math.PI / 6), static (p, a) => p.With(p.Tower with { DownhillInReach = Angle.FromRadians(a) })), "rad"));
        if (plan.Tower.EnginePower is null) return;
        list.Add(new(plan, "tower.efficiency", "efficiency from engine to wheels and soil", string.Empty, new(static p => new(p.Tower.Efficiency.DecimalFractions, 0.3, 0.95), static (p, e) => p.With(p.Tower with { Efficiency = Ratio.FromDecimalFractions(e) }))));
        list.Add(new(plan, "tower.pull-speed", "speed at which power is asked for", string.Empty, new(static p => new(p.Tower.PullSpeed.MetersPerSecond, 0.2 / 3.6, 20 / 3.6), static (p, v) => p.With(p.Tower with { PullSpeed = Speed.FromMetersPerSecond(v) })), "m/s"));
    }

    /// <summary>A hitch stays behind the last axle, as its machine pulls.</summary>
    private static InputReach Hitch(TowingMachine tower) => tower.Direction == PullDirection.Forwards
        ? new(tower.HitchPosition.Meters, -40, tower.Machine.Axles[tower.Machine.Axles.Count - 1].Position.Meters)
        : new(tower.HitchPosition.Meters, tower.Machine.Axles[0].Position.Meters, 15);

    private static RecoveryPlan Bellied(RecoveryPlan plan, Func<Belly, Belly> change) => plan.Stuck.Belly is { } belly ? plan.With(plan.Stuck with { Belly = change(belly) }) : plan;

    private static InputReach Slope(Grade grade) => new(grade.Radians, -Math.PI / 4, Math.PI / 4);

    private static RecoveryPlan Deeper(RecoveryPlan plan, int axle, double metres) => plan.With(plan.Stuck.WithSinkage(
        plan.Stuck.Sinkage.Select((z, i) => i == axle ? Length.FromMeters(metres) : z).ToList().AsReadOnly()));
}
