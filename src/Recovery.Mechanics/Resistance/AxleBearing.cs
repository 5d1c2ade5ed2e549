using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What the floor bears under an axle, beside the load it would carry with the belly let go.</summary>
/// <remarks>Sum over its wheels of b c (N_c s_f + gamma z), N_c 5.14. An axle that carries more than its floor bears goes deeper as soon as the belly is free, and cannot lift a sealed belly.</remarks>
public sealed record AxleBearing
{
    internal AxleBearing(string name, double load, double low, double central, double high)
    {
        Name = name;
        Load = Force.FromNewtons(load);
        Bears = ForceBand.FromNewtons(low, central, high);
    }

    /// <summary>Gets the name of the axle.</summary>
    public string Name { get; }

    /// <summary>Gets its load with all of the weight on the wheels.</summary>
    public Force Load { get; }

    /// <summary>Gets what the floor bears under it, at the low, central and high floor.</summary>
    public ForceBand Bears { get; }

    /// <summary>Gets whether the central floor bears the axle without help of a belly.</summary>
    public bool BearsItsLoad => Bears.CentralNewtons >= Load.Newtons;

    /// <summary>Gives the axle in one line, invariant culture.</summary>
    /// <returns>Name, load and bearing.</returns>
    public override string ToString() => Name + ": the floor bears " + Bears + " under it, it carries " + Text.Kilonewtons(Load.Newtons, 3);
}
