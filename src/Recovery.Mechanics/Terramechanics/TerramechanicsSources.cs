using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Sources of the wheel and track models.</summary>
internal static class TerramechanicsSources
{
    /// <summary>Bias-ply constants.</summary>
    public static readonly Source Brixius = new(
        "brixius-1987",
        "Brixius 1987, Traction prediction equations for bias ply tires, ASAE Paper 87-1622; the same equations in ASABE D497 clause 3",
        Standing.Secondary);

    /// <summary>Radial constants.</summary>
    public static readonly Source BrixiusRadial = new(
        "brixius-radial",
        "Radial-tyre constants in the Brixius form, attributed to Al-Hamed, Grisso, Zoz and Von Bargen 1994, Comput. Electron. Agric. 10:45-62, and Zoz and Grisso 2003, ASAE 913C0403; values as coded in an off-road tyre force model of 1991",
        Standing.Secondary);

    /// <summary>Limits of the D497 clause that are printed there.</summary>
    public static readonly Source D497Range = new("asabe-d497-range", "ASABE D497, clause 3, limits of b/d and of static deflection", Standing.Primary);

    /// <summary>Limits of the D497 clause that are remembered.</summary>
    public static readonly Source D497RangeFromMemory = new("asabe-d497-range-memory", "ASABE D497, clause 3, range of W/(b d) and least wheel numeric", Standing.FromMemory);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [Brixius, BrixiusRadial, D497Range, D497RangeFromMemory];
}
