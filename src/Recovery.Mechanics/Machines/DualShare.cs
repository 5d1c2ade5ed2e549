using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>How a pair of tyres shares the load of its side.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record DualShare
{
    internal DualShare(double inner, double outer)
    {
        Inner = Force.FromNewtons(inner);
        Outer = Force.FromNewtons(outer);
    }

    /// <summary>Gets the load of the inner tyre.</summary>
    public Force Inner { get; }

    /// <summary>Gets the load of the outer tyre.</summary>
    public Force Outer { get; }

    /// <summary>Gets the load of the outer tyre over that of the pair.</summary>
    public Ratio OuterShare => Ratio.FromDecimalFractions(Outer.Newtons / (Inner.Newtons + Outer.Newtons));

    /// <summary>Gets whether both tyres carry.</summary>
    public bool BothCarry => Inner.Newtons > 0 && Outer.Newtons > 0;

    /// <summary>Gives the shares in words, invariant culture.</summary>
    /// <returns>Both loads.</returns>
    public override string ToString() => "inner " + Text.Kilonewtons(Inner.Newtons, 3) + ", outer " + Text.Kilonewtons(Outer.Newtons, 3);
}
