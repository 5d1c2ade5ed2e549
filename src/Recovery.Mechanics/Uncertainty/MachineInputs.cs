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

        for (var i = 0; i < plan.Tower.Machine.Axles.Count; i++)
            Tyres(plan, "tower", plan.Tower.Machine.Axles[i].Name, i, list, static (reach, set) => InputEdit.OfTower(m => reach(null!, m), set), static _ => 0);
    }

    private static void Load(RecoveryPlan plan, string whose, NamedLoad load, List<PlanInput> list, Func<Func<RecoveryPlan, Machine, InputReach>, Func<Machine, double, Machine>, InputEdit> edit)
    {
        var name = load.Name;
        list.Add(new(plan, whose + ".load:" + name, "mass of the " + name, Scale, edit((_, m) => Mass(m, name), (m, kg) => With(m, name, l => new NamedLoad(name, UnitsNet.Mass.FromKilograms(kg), l.Position, l.Height, l.Kind))), "kg"));
        list.Add(new(plan, whose + ".load-position:" + name, "place of the " + name + " along the machine, from the foremost axle", Scale, edit((_, m) => Of(m, name, static l => new(l.Position.Meters, -40, 15)), (m, x) => With(m, name, l => new NamedLoad(name, l.Mass, Length.FromMeters(x), l.Height, l.Kind))), "m"));
        list.Add(new(plan, whose + ".load-height:" + name, "height of the middle of the " + name, string.Empty, edit((_, m) => Of(m, name, static l => new(l.Height.Meters, 0, 6)), (m, z) => With(m, name, l => new NamedLoad(name, l.Mass, l.Position, Length.FromMeters(z), l.Kind))), "m"));
    }

    private static void Tyres(RecoveryPlan plan, string whose, string axle, int i, List<PlanInput> list, Func<Func<RecoveryPlan, Machine, InputReach>, Func<Machine, double, Machine>, InputEdit> edit, Func<RecoveryPlan, double> sunk)
    {
        var tyres = "tyres of the " + axle;
        list.Add(new(plan, whose + ".tyre-width:" + axle, "width of the " + tyres, Tape, edit((_, m) => new(m.Axles[i].Tyre.SectionWidth.Meters, 0.1, 1.5), (m, b) => With(m, i, t => t.Resized(b, t.OverallDiameter.Meters, t.SectionHeight.Meters))), "m"));
        list.Add(new(plan, whose + ".tyre-diameter:" + axle, "diameter of the " + tyres, Tape, edit((p, m) => Diameter(m.Axles[i].Tyre, sunk(p)), (m, d) => With(m, i, t => t.Resized(t.SectionWidth.Meters, d, t.SectionHeight.Meters))), "m"));
        list.Add(new(plan, whose + ".tyre-height:" + axle, "section height of the " + tyres, Tape, edit((_, m) => Height(m.Axles[i].Tyre), (m, h) => With(m, i, t => t.Resized(t.SectionWidth.Meters, t.OverallDiameter.Meters, h))), "m"));
        list.Add(new(plan, whose + ".inflation:" + axle, "inflation of the " + tyres, Gauge, edit((_, m) => new(m.Axles[i].Tyre.Inflation.Pascals, 30e3, 1000e3), (m, pa) => With(m, i, t => t.AtInflation(Pressure.FromPascals(pa)))), "Pa"));
    }

    /// <summary>The machine as a whole weighs 1 to 200 t, one load at most 100 t.</summary>
    private static InputReach Mass(Machine machine, string name)
    {
        var own = machine.Loads.FirstOrDefault(l => l.Name == name)?.Mass.Kilograms ?? 0;
        var others = machine.MassKilograms - own;
        return new(own, Math.Max(0, 1000.001 - others), Math.Min(100e3, 199999.999 - others));
    }

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

    private static InputReach Height(Tyre tyre) => new(
        tyre.SectionHeight.Meters,
        Math.Max(0.03, tyre.StaticLoadedRadius is { } known ? (tyre.OverallDiameter.Meters / 2) - known.Radius.Meters + 1e-6 : 0),
        Math.Min(1, (tyre.OverallDiameter.Meters / 2) - 0.001));

    private static Machine With(Machine machine, string name, Func<NamedLoad, NamedLoad> change) =>
        new(machine.Name, machine.Axles, machine.Loads.Select(l => l.Name == name ? change(l) with { LeftOfMiddle = l.LeftOfMiddle } : l), machine.Suspension);

    private static Machine With(Machine machine, int axle, Func<Tyre, Tyre> change) =>
        machine.WithAxles(machine.Axles.Select((a, i) => i == axle ? a with { Tyre = change(a.Tyre) } : a));
}
