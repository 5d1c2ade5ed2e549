using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What one member of a team gives to a wanted pull.</summary>
public sealed record TeamShare
{
    internal TeamShare(string name, double ownNewtons, double lineNewtons, double slip)
    {
        Name = name;
        Own = Force.FromNewtons(ownNewtons);
        LineForce = Force.FromNewtons(lineNewtons);
        Slip = Ratio.FromDecimalFractions(slip);
    }

    /// <summary>Gets the name of the machine.</summary>
    public string Name { get; }

    /// <summary>Gets what it adds by its own wheels.</summary>
    public Force Own { get; }

    /// <summary>Gets the force in the line behind it; in line that of all ahead is in it.</summary>
    public Force LineForce { get; }

    /// <summary>Gets its slip; above 0.30 it does not sustain that. 0 where its wheels turn no faster than it is drawn along: its line is slack.</summary>
    public Ratio Slip { get; }

    /// <summary>Gives the share in words, invariant culture.</summary>
    /// <returns>Name, own pull and slip.</returns>
    public override string ToString() => Name + " gives " + Text.Kilonewtons(Own.Newtons, 3) + " at slip " + Text.Number(Slip.DecimalFractions, 3);
}
