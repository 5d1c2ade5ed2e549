using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>What taking one load off a machine does to each axle.</summary>
/// <remarks>Made by <see cref="Machine.UnloadingEffects"/>. The changes sum to the normal part of the weight that is gone. Changes of several loads add up only as long as no axle lifts. Source: statics. Immutable.</remarks>
public sealed record UnloadingEffect
{
    internal UnloadingEffect(NamedLoad load, AxleLoads before, AxleLoads after)
    {
        Load = load;
        Before = before;
        After = after;
        var changes = new double[before.Newtons.Count];
        for (var i = 0; i < changes.Length; i++) changes[i] = after.Newtons[i] - before.Newtons[i];
        ChangeNewtons = System.Array.AsReadOnly(changes);
    }

    /// <summary>Gets the load that is taken off.</summary>
    public NamedLoad Load { get; }

    /// <summary>Gets the axle loads with it.</summary>
    public AxleLoads Before { get; }

    /// <summary>Gets the axle loads without it.</summary>
    public AxleLoads After { get; }

    /// <summary>Gets the change of each axle load in newtons, the foremost first; negative where the axle gets lighter.</summary>
    public IReadOnlyList<double> ChangeNewtons { get; }

    /// <summary>Gets whether an axle gets heavier: a front taken off puts load back on the rear, good for a front that is down, bad for a rear.</summary>
    public bool LoadsAnAxle
    {
        get
        {
            foreach (var change in ChangeNewtons)
            {
                if (change > 1e-6 * Before.Total.Newtons) return true;
            }

            return false;
        }
    }

    /// <summary>Gives the change of one axle load.</summary>
    /// <param name="axle">Number of the axle, 0 the foremost.</param>
    /// <returns>The change; negative where the axle gets lighter.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">There is no such axle.</exception>
    public Force Of(int axle) => Force.FromNewtons(ChangeNewtons[Guard.Count(axle, 0, ChangeNewtons.Count - 1, nameof(axle))]);

    /// <summary>Gives the effect in words, invariant culture.</summary>
    /// <returns>Load, mass and the change of each axle.</returns>
    public override string ToString()
    {
        var parts = new string[ChangeNewtons.Count];
        for (var i = 0; i < parts.Length; i++) parts[i] = Before.Axles[i].Name + " " + (ChangeNewtons[i] > 0 ? "+" : string.Empty) + Text.Kilonewtons(ChangeNewtons[i], 3);
        return Load.Name + " off (" + Text.With(Load.Mass.Kilograms / 1000, "t", 3) + "): " + string.Join(", ", parts);
    }
}
