using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>The loads of all axles of a machine at rest, normal to the ground.</summary>
/// <remarks>Source: statics. Immutable.</remarks>
public sealed record AxleLoads
{
    internal AxleLoads(IReadOnlyList<Axle> axles, IReadOnlyList<double> newtons, Suspension suspension)
    {
        Axles = axles;
        Newtons = newtons;
        Suspension = suspension;
    }

    /// <summary>Gets the axles, foremost first.</summary>
    public IReadOnlyList<Axle> Axles { get; }

    /// <summary>Gets the load of each axle in newtons, in the order of <see cref="Axles"/>. An axle that lifts carries nothing.</summary>
    public IReadOnlyList<double> Newtons { get; }

    /// <summary>Gets the suspension that the loads belong to.</summary>
    public Suspension Suspension { get; }

    /// <summary>Gets the sum of all axle loads.</summary>
    public Force Total
    {
        get
        {
            double sum = 0;
            foreach (var load in Newtons) sum += load;
            return Force.FromNewtons(sum);
        }
    }

    /// <summary>Gives the load of one axle.</summary>
    /// <param name="axle">Number of the axle, 0 the foremost.</param>
    /// <returns>The load.</returns>
    public Force Of(int axle) => Force.FromNewtons(Newtons[Guard.Count(axle, 0, Newtons.Count - 1, nameof(axle))]);

    /// <summary>Gives all loads in words, invariant culture.</summary>
    /// <returns>One load per axle.</returns>
    public override string ToString()
    {
        var parts = new string[Newtons.Count];
        for (var i = 0; i < parts.Length; i++) parts[i] = Axles[i].Name + " " + Text.Kilonewtons(Newtons[i]);
        return string.Join(", ", parts);
    }
}
