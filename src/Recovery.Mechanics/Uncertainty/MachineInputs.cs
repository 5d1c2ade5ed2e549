using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Masses with their places and tyres of both machines as inputs that can scatter.</summary>
internal static class MachineInputs
{
    private const string Scale = "a weighbridge ticket or axle scales", Tape = "a tape", Gauge = "a tyre gauge";

    public static void Add(RecoveryPlan plan, List<PlanInput> list)
    {
        foreach (var load in plan.Stuck.Machine.Loads) Load(plan, "stuck", load, list, InputEdit.OfStuck);
        foreach (var load in plan.Tower.Machine.Loads) Load(plan, "tower", load, list, static (reach, set) => InputEdit.OfTower(m => reach(null!, m), set));
        for (var i = 0; i < plan.Stuck.Machine.Axles.Count; i++)
        {
            var axle = i;
            Tyres(plan, "stuck", plan.Stuck.Machine.Axles[i].Name, axle, list, InputEdit.OfStuck, p => p.Stuck.Sinkage[axle].Meters);
        }

        for (var i = 1; i < plan.Stuck.Machine.Axles.Count; i++)
        {
            var axle = i;
            list.Add(new(plan, "stuck.axle-position:" + plan.Stuck.Machine.Axles[i].Name, "place of the " + plan.Stuck.Machine.Axles[i].Name + " along the machine, from the foremost axle", Tape, InputEdit.OfStuck((_, m) => Place(m, axle, -30), (m, x) => Placed(m, axle, x, m.Axles[axle].TrackWidth.Meters)), "m"));
        }

        Places(plan, list);
        for (var i = 0; i < plan.Tower.Machine.Axles.Count; i++)
            Tyres(plan, "tower", plan.Tower.Machine.Axles[i].Name, i, list, static (reach, set) => InputEdit.OfTower(m => reach(null!, m), set), static _ => 0);
    }

    /// <summary>Axles of the towing machine: none behind its hitch.</summary>
    private static void Places(RecoveryPlan plan, List<PlanInput> list)
    {
        for (var i = 0; i < plan.Tower.Machine.Axles.Count; i++)
        {
            var axle = i;
            var name = plan.Tower.Machine.Axles[i].Name;
            if (i > 0)
                list.Add(new(plan, "tower.axle-position:" + name, "place of the " + name + " along the towing machine, from the foremost axle", Tape, new(p => Place(p.Tower.Machine, axle, p.Tower.Direction == PullDirection.Forwards ? p.Tower.HitchPosition.Meters : -30), (p, x) => p.With(p.Tower with { Machine = Placed(p.Tower.Machine, axle, x, p.Tower.Machine.Axles[axle].TrackWidth.Meters) })), "m"));
            list.Add(new(plan, "tower.track-width:" + name, "track width of the " + name + ", which a line off to the side tilts over", Tape, InputEdit.OfTower(m => new(m.Axles[axle].TrackWidth.Meters, 0.5, 6), (m, w) => Placed(m, axle, m.Axles[axle].Position.Meters, w)), "m"));
        }
    }

    private static void Load(RecoveryPlan plan, string whose, NamedLoad load, List<PlanInput> list, Func<Func<RecoveryPlan, Machine, InputReach>, Func<Machine, double, Machine>, InputEdit> edit)
    {
        var name = load.Name;
        list.Add(new(plan, whose + ".load:" + name, "mass of the " + name, Scale, edit((_, m) => Mass(m, name), (m, kg) => WithMass(m, name, kg)), "kg"));
        list.Add(new(plan, whose + ".load-position:" + name, "place of the " + name + " along the machine, from the foremost axle", Scale, edit((_, m) => Of(m, name, static l => new(l.Position.Meters, -40, 15)), (m, x) => With(m, name, l => new NamedLoad(name, l.Mass, Length.FromMeters(x), l.Height, l.Kind))), "m"));
        list.Add(new(plan, whose + ".load-height:" + name, "height of the middle of the " + name, string.Empty, edit((_, m) => Of(m, name, static l => new(l.Height.Meters, 0, 6)), (m, z) => With(m, name, l => new NamedLoad(name, l.Mass, l.Position, Length.FromMeters(z), l.Kind))), "m"));
    }

    private static void Tyres(RecoveryPlan plan, string whose, string axle, int i, List<PlanInput> list, Func<Func<RecoveryPlan, Machine, InputReach>, Func<Machine, double, Machine>, InputEdit> edit, Func<RecoveryPlan, double> sunk)
    {
        var tyres = "tyres of the " + axle;
        list.Add(new(plan, whose + ".tyre-width:" + axle, "width of the " + tyres, Tape, edit((_, m) => new(m.Axles[i].Tyre.SectionWidth.Meters, 0.1, 1.5), (m, b) => With(m, i, t => t.Resized(b, t.OverallDiameter.Meters, t.SectionHeight.Meters))), "m"));
        list.Add(new(plan, whose + ".tyre-diameter:" + axle, "diameter of the " + tyres, Tape, edit((p, m) => Diameter(m.Axles[i].Tyre, sunk(p)), (m, d) => With(m, i, t => t.Resized(t.SectionWidth.Meters, d, t.SectionHeight.Meters))), "m"));
        list.Add(new(plan, whose + ".tyre-height:" + axle, "section height of the " + tyres, Tape, edit((_, m) => Height(m.Axles[i].Tyre), (m, h) => With(m, i, t => t.Resized(t.SectionWidth.Meters, t.OverallDiameter.Meters, h))), "m"));
        if (Shows(whose == "stuck" ? plan.Stuck.Machine : plan.Tower.Machine, i))
            list.Add(new(plan, whose + ".deflection:" + axle, "measured deflection over section height of the " + tyres, Tape, edit((_, m) => new(m.Axles[i].Tyre.MeasuredDeflectionRatio?.DecimalFractions ?? 0.01, 0.01, 0.6), (m, r) => With(m, i, t => t.MeasuredDeflectionRatio is null ? t : t.Deflecting(r)))));
        if ((whose == "stuck" ? plan.Stuck.Machine : plan.Tower.Machine).Axles[i].Tyre.StaticLoadedRadius is not null)
            list.Add(new(plan, whose + ".loaded-radius:" + axle, "static loaded radius of the " + tyres, Tape, edit((_, m) => Radius(m.Axles[i].Tyre), (m, r) => With(m, i, t => t.StaticLoadedRadius is { } known ? t.WithStaticLoadedRadius(new LoadedRadius(Length.FromMeters(r), known.Load, known.Inflation)) : t)), "m"));
        list.Add(new(plan, whose + ".inflation:" + axle, "inflation of the " + tyres, Gauge, edit((_, m) => new(m.Axles[i].Tyre.Inflation.Pascals, 30e3, 1000e3), (m, pa) => With(m, i, t => t.AtInflation(Pressure.FromPascals(pa)))), "Pa"));
    }

    /// <summary>The machine as a whole weighs 1 to 200 t, one load at most 100 t.</summary>
    internal static InputReach Mass(Machine machine, string name)
    {
        var own = machine.Loads.FirstOrDefault(l => l.Name == name)?.Mass.Kilograms ?? 0;
        var others = machine.MassKilograms - own;
        return new(own, Math.Max(0, 1000.001 - others), Math.Min(100e3, 199999.999 - others));
    }

    /// <summary>The machine with another mass of one of its loads, within its range.</summary>
    internal static Machine WithMass(Machine machine, string name, double kilograms) => With(machine, name, l => new NamedLoad(name, UnitsNet.Mass.FromKilograms(kilograms), l.Position, l.Height, l.Kind));

    /// <summary>Whether a measured deflection of the tyre counts: a loaded radius from data goes before it.</summary>
    private static bool Shows(Machine machine, int axle) => machine.Axles[axle].Tyre is { MeasuredDeflectionRatio: not null, StaticLoadedRadius: null };

    /// <summary>Axles keep their order, a hand apart.</summary>
    private static InputReach Place(Machine machine, int axle, double least)
    {
        const double Hand = 0.1;
        var x = machine.Axles[axle].Position.Meters;
        return new(x, axle + 1 < machine.Axles.Count ? machine.Axles[axle + 1].Position.Meters + Hand : least, machine.Axles[axle - 1].Position.Meters - Hand);
    }

    private static Machine Placed(Machine machine, int axle, double x, double track) => machine.WithAxles(machine.Axles.Select((a, i) => i == axle ? a.Placed(x, track) : a));

    private static InputReach Of(Machine machine, string name, Func<NamedLoad, InputReach> reach) => machine.Loads.FirstOrDefault(l => l.Name == name) is { } load ? reach(load) : default;

    /// <summary>Rims hold at least something, a loaded radius from data stays between rim and tread, and no tyre is sunk over its top.</summary>
    private static InputReach Diameter(Tyre tyre, double sunk)
    {
        double height = tyre.SectionHeight.Meters, least = Math.Max(Math.Max(0.4, (2 * height) + 0.001), sunk), most = 3;
        if (tyre.StaticLoadedRadius is { } known)
        {
            least = Math.Max(least, (2 * known.Radius.Meters) + 0.0021);
            most = Math.Min(most, (2 * (known.Radius.Meters + height)) - 1e-6);
        }

        return new(tyre.OverallDiameter.Meters, least, most);
    }

    /// <summary>A loaded radius lies between the rim and half the diameter.</summary>
    private static InputReach Radius(Tyre tyre) => new(tyre.StaticLoadedRadius?.Radius.Meters ?? 0, Math.Max(0.1, (tyre.RimDiameter.Meters / 2) + 1e-6), Math.Min(1.5, (tyre.OverallDiameter.Meters / 2) - 0.0011));

    private static InputReach Height(Tyre tyre) => new(
        tyre.SectionHeight.Meters,
        Math.Max(0.03, tyre.StaticLoadedRadius is { } known ? (tyre.OverallDiameter.Meters / 2) - known.Radius.Meters + 1e-6 : 0),
        Math.Min(1, (tyre.OverallDiameter.Meters / 2) - 0.001));

    private static Machine With(Machine machine, string name, Func<NamedLoad, NamedLoad> change) =>
        new(machine.Name, machine.Axles, machine.Loads.Select(l => l.Name == name ? change(l) with { LeftOfMiddle = l.LeftOfMiddle } : l), machine.Suspension);

    private static Machine With(Machine machine, int axle, Func<Tyre, Tyre> change) =>
        machine.WithAxles(machine.Axles.Select((a, i) => i == axle ? a with { Tyre = change(a.Tyre) } : a));
}
