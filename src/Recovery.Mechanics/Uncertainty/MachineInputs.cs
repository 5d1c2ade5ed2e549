using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Masses with their places, axles and tyres of every machine as inputs that can scatter.</summary>
internal static class MachineInputs
{
    private const string Scale = "a weighbridge ticket or axle scales", Tape = "a tape", Gauge = "a tyre gauge";

    public static void Add(RecoveryPlan plan, List<PlanInput> list)
    {
        Of(plan, MachineOwner.Stuck(plan), list);
        Of(plan, MachineOwner.Tower(plan), list);
        for (var i = 0; i < plan.Tower.Machine.Axles.Count; i++)
        {
            var axle = i;
            var name = AxleName(plan.Tower.Machine, i);
            list.Add(new(plan, "tower.track-width:" + name, "track width of the " + name + ", which a line off to the side tilts over", Tape, InputEdit.OfTower((_, m) => new(m.Axles[axle].TrackWidth.Meters, 0.5, 6), (m, w) => Placed(m, axle, m.Axles[axle].Position.Meters, w)), "m"));
        }
    }

    /// <summary>Name of an axle; where several bear one name, with its number from the front, so that each can scatter.</summary>
    public static string AxleName(Machine machine, int i) => Numbered(machine.Axles.Select(static a => a.Name), i);

    /// <summary>A name, with its number where it is given more than once.</summary>
    public static string Numbered(IEnumerable<string> names, int i)
    {
        var all = names.ToList();
        return all.Count(n => n == all[i]) > 1 ? all[i] + " " + Provenance.Text.Number(i + 1) : all[i];
    }

    /// <summary>Loads, axles and tyres of one machine.</summary>
    public static void Of(RecoveryPlan plan, MachineOwner owner, List<PlanInput> list)
    {
        foreach (var load in owner.Machine.Loads) Load(plan, owner, load, list);
        for (var i = 0; i < owner.Machine.Axles.Count; i++)
        {
            Tyres(plan, owner, i, list);
            Axle(plan, owner, i, list);
        }
    }

    private static void Load(RecoveryPlan plan, MachineOwner owner, NamedLoad load, List<PlanInput> list)
    {
        var name = load.Name;
        string key = ":" + owner.Prefix + name, words = "the " + name + owner.InWords;
        list.Add(new(plan, owner.Whose + ".load" + key, "mass of " + words, Scale, owner.Edit((_, m) => Mass(m, name), (m, kg) => With(m, name, l => new NamedLoad(name, UnitsNet.Mass.FromKilograms(kg), l.Position, l.Height, l.Kind))), "kg"));
        list.Add(new(plan, owner.Whose + ".load-position" + key, "place of " + words + " along the machine, from the foremost axle", Scale, owner.Edit((_, m) => Of(m, name, static l => new(l.Position.Meters, -40, 15)), (m, x) => With(m, name, l => new NamedLoad(name, l.Mass, Length.FromMeters(x), l.Height, l.Kind))), "m"));
        list.Add(new(plan, owner.Whose + ".load-height" + key, "height of the middle of " + words, string.Empty, owner.Edit((_, m) => Of(m, name, static l => new(l.Height.Meters, 0, 6)), (m, z) => With(m, name, l => new NamedLoad(name, l.Mass, l.Position, Length.FromMeters(z), l.Kind))), "m"));
    }

    private static void Axle(RecoveryPlan plan, MachineOwner owner, int i, List<PlanInput> list)
    {
        var name = AxleName(owner.Machine, i);
        string key = ":" + owner.Prefix + name, words = "the " + name + owner.InWords;
        if (i > 0) list.Add(new(plan, owner.Whose + ".axle-position" + key, "place of " + words + " along the machine, from the foremost axle", Tape, owner.Edit((p, m) => Place(m, i, owner.Behind(p)), (m, x) => Placed(m, i, x, m.Axles[i].TrackWidth.Meters)), "m"));

        // Beams on one frame; equalised axles share by their pins.
        if (owner.Machine.Axles.Count > 2 && owner.Machine.Suspension != Suspension.Equalised)
            list.Add(new(plan, owner.Whose + ".axle-stiffness" + key, "stiffness of " + words + " against the other axles", string.Empty, owner.Edit((_, m) => new(m.Axles[i].RelativeStiffness, 0.1, 10), (m, k) => m.WithAxles(m.Axles.Select((a, at) => at == i ? a.WithRelativeStiffness(k) : a)))));
    }

    private static void Tyres(RecoveryPlan plan, MachineOwner owner, int i, List<PlanInput> list)
    {
        var axle = owner.Machine.Axles[i];
        string name = AxleName(owner.Machine, i), key = ":" + owner.Prefix + name, tyres = "tyres of the " + name + owner.InWords;
        list.Add(new(plan, owner.Whose + ".tyre-width" + key, "width of the " + tyres, Tape, owner.Edit((_, m) => new(m.Axles[i].Tyre.SectionWidth.Meters, 0.1, 1.5), (m, b) => With(m, i, t => t.Resized(b, t.OverallDiameter.Meters, t.SectionHeight.Meters))), "m"));
        list.Add(new(plan, owner.Whose + ".tyre-diameter" + key, "diameter of the " + tyres, Tape, owner.Edit((p, m) => Diameter(m.Axles[i].Tyre, owner.Sunk(p, i)), (m, d) => With(m, i, t => t.Resized(t.SectionWidth.Meters, d, t.SectionHeight.Meters))), "m"));
        list.Add(new(plan, owner.Whose + ".tyre-height" + key, "section height of the " + tyres, Tape, owner.Edit((_, m) => Height(m.Axles[i].Tyre), (m, h) => With(m, i, t => t.Resized(t.SectionWidth.Meters, t.OverallDiameter.Meters, h))), "m"));
        if (axle.Tyre is { MeasuredDeflectionRatio: not null, StaticLoadedRadius: null })
            list.Add(new(plan, owner.Whose + ".deflection" + key, "measured deflection over section height of the " + tyres, Tape, owner.Edit((_, m) => new(m.Axles[i].Tyre.MeasuredDeflectionRatio?.DecimalFractions ?? 0.01, 0.01, 0.6), (m, r) => With(m, i, t => t.MeasuredDeflectionRatio is null ? t : t.Deflecting(r)))));
        if (axle.Tyre.StaticLoadedRadius is not null)
            list.Add(new(plan, owner.Whose + ".loaded-radius" + key, "static loaded radius of the " + tyres, Tape, owner.Edit((_, m) => Radius(m.Axles[i].Tyre), (m, r) => With(m, i, t => t.StaticLoadedRadius is { } known ? t.WithStaticLoadedRadius(new LoadedRadius(Length.FromMeters(r), known.Load, known.Inflation)) : t)), "m"));
        list.Add(new(plan, owner.Whose + ".inflation" + key, "inflation of the " + tyres, Gauge, owner.Edit((_, m) => new(m.Axles[i].Tyre.Inflation.Pascals, 30e3, 1000e3), (m, pa) => With(m, i, t => t.AtInflation(Pressure.FromPascals(pa)))), "Pa"));
    }

    /// <summary>The machine as a whole weighs 1 to 200 t, one load at most 100 t.</summary>
    private static InputReach Mass(Machine machine, string name)
    {
        var own = machine.Loads.FirstOrDefault(l => l.Name == name)?.Mass.Kilograms ?? 0;
        var others = machine.MassKilograms - own;
        return new(own, Math.Max(0, 1000.001 - others), Math.Min(100e3, 199999.999 - others));
    }

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
