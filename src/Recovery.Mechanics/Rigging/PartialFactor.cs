using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Partial factor on a strength under a computed peak, with its parts.</summary>
public sealed record PartialFactor
{
    internal PartialFactor(double load, double consequence, double reduction, double material, double wear, double twist, IReadOnlyList<ValidityFlag> flags)
    {
        Load = load;
        Consequence = consequence;
        Reduction = reduction;
        Material = material;
        Wear = wear;
        Twist = twist;
        Flags = flags;
    }

    /// <summary>Gets the load factor.</summary>
    public double Load { get; }

    /// <summary>Gets the consequence factor.</summary>
    public double Consequence { get; }

    /// <summary>Gets the reduction factor.</summary>
    public double Reduction { get; }

    /// <summary>Gets the material factor.</summary>
    public double Material { get; }

    /// <summary>Gets the wear factor.</summary>
    public double Wear { get; }

    /// <summary>Gets the twist factor.</summary>
    public double Twist { get; }

    /// <summary>Gets the full factor, never below the floor.</summary>
    public double Full => PartialFactorKernel.Full(Load, Consequence, Reduction, Material, Wear * Twist);

    /// <summary>Gets the floor.</summary>
    public double Floor => PartialFactorKernel.FloorOf(Reduction, Wear * Twist);

    /// <summary>Gets the flags: raised where the consequence factor is below 1.3.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the factor in one line, invariant culture.</summary>
    /// <returns>Full factor and floor.</returns>
    public override string ToString() => "full " + Text.Number(Full) + ", floor " + Text.Number(Floor);
}
