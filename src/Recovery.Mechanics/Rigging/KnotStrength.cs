using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Strength that a knot leaves in new rope pulled slowly, as printed. For teaching: a knot in a strap takes it out of service, whatever the figure.</summary>
public sealed record KnotStrength
{
    private KnotStrength(string knot, double low, double high)
    {
        Knot = knot;
        Low = Ratio.FromDecimalFractions(low);
        High = Ratio.FromDecimalFractions(high);
    }

    /// <summary>Gets the printed rows (Cordage Institute figures as printed in a magazine, reported).</summary>
    public static IReadOnlyList<KnotStrength> All { get; } = Array.AsReadOnly<KnotStrength>(
    [
        new("bowline", 0.67, 0.75), new("square knot", 0.43, 0.47), new("fisherman's knot", 0.50, 0.58), new("sheet bend", 0.48, 0.58), new("carrick bend", 0.55, 0.60),
        new("two half hitches on a 16 mm ring", 0.60, 0.70), new("two half hitches on a 102 mm post", 0.65, 0.75), new("anchor bend on a 16 mm ring", 0.55, 0.65), new("anchor bend on a 102 mm post", 0.80, 0.90),
    ]);

    /// <summary>Gets the share taken where nothing else is known: half.</summary>
    public static Ratio Code => Ratio.FromDecimalFractions(ConditionKernel.KnotCode);

    /// <summary>Gets the least published share, an overhand knot in polyester or nylon: 0.35.</summary>
    public static Ratio Worst => Ratio.FromDecimalFractions(ConditionKernel.KnotWorst);

    /// <summary>Gets the source.</summary>
    public static Source Source => PartSources.Knots;

    /// <summary>Gets the knot.</summary>
    public string Knot { get; }

    /// <summary>Gets the low end of what it leaves.</summary>
    public Ratio Low { get; }

    /// <summary>Gets the high end of what it leaves.</summary>
    public Ratio High { get; }

    /// <summary>Gives the row in one line, invariant culture.</summary>
    /// <returns>Knot and shares.</returns>
    public override string ToString() => Knot + ", " + Text.Number(Low.DecimalFractions) + " to " + Text.Number(High.DecimalFractions);
}
