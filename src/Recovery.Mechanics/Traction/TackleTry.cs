using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>One pass of the handbook steps: an advantage, its friction and whether the effort does.</summary>
public sealed record TackleTry
{
    internal TackleTry(int advantage, int sheaves, double load, double effort)
    {
        MechanicalAdvantage = advantage;
        Sheaves = sheaves;
        Resistance = Force.FromNewtons(TackleKernel.Resistance(load, sheaves, TackleKernel.HandbookFriction));
        Total = Force.FromNewtons(load + TackleKernel.Resistance(load, sheaves, TackleKernel.HandbookFriction));
        FallLine = Force.FromNewtons(TackleKernel.FallLine(load, sheaves, TackleKernel.HandbookFriction, advantage));
        Holds = TackleKernel.FallLine(load, sheaves, TackleKernel.HandbookFriction, advantage) < effort;
    }

    /// <summary>Gets the advantage tried.</summary>
    public int MechanicalAdvantage { get; }

    /// <summary>Gets its sheaves.</summary>
    public int Sheaves { get; }

    /// <summary>Gets the tackle resistance.</summary>
    public Force Resistance { get; }

    /// <summary>Gets load and tackle resistance together.</summary>
    public Force Total { get; }

    /// <summary>Gets the fall-line force.</summary>
    public Force FallLine { get; }

    /// <summary>Gets whether the fall line stays below the effort.</summary>
    public bool Holds { get; }

    /// <summary>Gives the pass in words, invariant culture.</summary>
    /// <returns>Advantage and fall line.</returns>
    public override string ToString() => Text.Number(MechanicalAdvantage) + ":1 asks for " + Text.Kilonewtons(FallLine.Newtons, 3) + (Holds ? ", holds" : ", does not hold");
}
