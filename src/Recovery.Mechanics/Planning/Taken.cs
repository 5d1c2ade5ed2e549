using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;

namespace Recovery.Mechanics.Planning;

/// <summary>What a plan takes as done before the pull: read off the difference between the machine as found and as it is to be pulled.</summary>
internal static class Taken
{
    /// <summary>Tells whether a load of the machine as found is off or lighter.</summary>
    public static bool IsOff(StuckMachine stuck, NamedLoad load) => stuck.Machine.Loads.All(l => l.Name != load.Name || l.Mass.Kilograms < load.Mass.Kilograms);

    /// <summary>Tells whether a tyre has been let down since.</summary>
    public static bool Deflated(StuckMachine stuck) => stuck.Machine.Axles.Zip(stuck.AsFound.Axles, (now, then) => now.Tyre.Inflation.Pascals < then.Tyre.Inflation.Pascals).Any(x => x);

    /// <summary>Every step that the numbers count on, in words.</summary>
    public static IReadOnlyList<string> Steps(RecoveryPlan plan, Wording w)
    {
        var stuck = plan.Stuck;
        var list = new List<string>();
        foreach (var load in stuck.AsFound.Loads)
        {
            if (!IsOff(stuck, load)) continue;
            var left = stuck.Machine.Loads.FirstOrDefault(l => l.Name == load.Name);
            if (left is not null) list.Add(w.Say("measure.unload-part", load.Name, Text.Number(100 * left.Mass.Kilograms / load.Mass.Kilograms, 3)));
            else list.Add(w.Say(load.Kind == LoadKind.Detachable ? "measure.detach" : "measure.unload", load.Name));
        }

        if (Deflated(stuck)) list.Add(w.Say("measure.deflate"));
        if (stuck.DugSlope is { } slope) list.Add(w.Say(stuck.SidesDug ? "measure.dig-with-sides" : "measure.dig", Text.Number(1 / System.Math.Tan(System.Math.Max(slope.Radians, 1e-3)), 2)));
        if (stuck.Seal == Seal.Vented) list.Add(w.Say("measure.vent"));
        if (stuck.BellyFreed) list.Add(w.Say("measure.free-belly"));
        if (stuck.DrivesItsWheels) list.Add(w.Say("measure.drive"));
        return list.AsReadOnly();
    }
}
