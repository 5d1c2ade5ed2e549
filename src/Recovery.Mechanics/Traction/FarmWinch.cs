using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>A winch that is there, the layer that the job ends on and what holds it.</summary>
public sealed record FarmWinch
{
    /// <summary>Describes a winch.</summary>
    /// <param name="winch">The winch.</param>
    /// <param name="layer">Layer that the job ends on, 1 to 20: the demand is set against it. The gear is sized on the first whatever it is.</param>
    /// <param name="heldBy">What holds the winch: the machine it stands on, a deadman; null where it is not declared.</param>
    /// <exception cref="ArgumentNullException">The winch is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The layer is outside its range.</exception>
    public FarmWinch(Winch winch, int layer, GroundAnchor? heldBy)
    {
        Winch = Guard.NotNull(winch, nameof(winch));
        Layer = Guard.Count(layer, 1, 20, nameof(layer));
        HeldBy = heldBy;
    }

    /// <summary>Gets the winch.</summary>
    public Winch Winch { get; }

    /// <summary>Gets the layer that the job ends on.</summary>
    public int Layer { get; }

    /// <summary>Gets what holds the winch; null where it is not declared.</summary>
    public GroundAnchor? HeldBy { get; }

    /// <summary>Gives the winch in words, invariant culture.</summary>
    /// <returns>Winch, layer and holder.</returns>
    public override string ToString() => Winch.Name + " on layer " + Text.Number(Layer) + (HeldBy is { } holder ? ", held by " + holder.Name : ", holder not declared");
}
