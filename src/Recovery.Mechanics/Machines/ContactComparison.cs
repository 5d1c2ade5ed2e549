using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Contact of one tyre by every model side by side.</summary>
/// <remarks>At the recommended inflation the mean pressure is about the inflation (Arvidsson and Keller 2007, primary); away from it that rule does not hold, so it stands beside only there. Immutable.</remarks>
public sealed record ContactComparison
{
    private ContactComparison(IReadOnlyList<ContactPatch> all, Pressure? byInflation)
    {
        All = all;
        ByInflation = byInflation;
    }

    /// <summary>Gets all contacts: Keller, O'Sullivan on soil that gives and on hard ground, nominal.</summary>
    public IReadOnlyList<ContactPatch> All { get; }

    /// <summary>Gets the mean pressure by the rule that it is about the inflation; null where the tyre is more than a tenth off its recommended inflation.</summary>
    public Pressure? ByInflation { get; }

    /// <summary>Gets where the rule of <see cref="ByInflation"/> comes from.</summary>
    public Source InflationSource => MachinesSources.ArvidssonKeller;

    /// <summary>Gets the greatest area over the least.</summary>
    public double Spread => All.Max(c => c.Area.SquareMeters) / All.Min(c => c.Area.SquareMeters);

    /// <summary>Compares the models on one tyre.</summary>
    /// <param name="tyre">The tyre with its inflation.</param>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <param name="recommendedInflation">Inflation that the maker recommends for the load, a tenth to ten times the present one.</param>
    /// <returns>All contacts with their flags and the spread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ContactComparison Of(Tyre tyre, Force load, Pressure recommendedInflation)
    {
        var keller = KellerModel.Instance.Evaluate(tyre, load, recommendedInflation).Patch;
        var off = Math.Abs((tyre.Inflation.Pascals / recommendedInflation.Pascals) - 1);
        return new ContactComparison(Array.AsReadOnly(new[] { keller, OSullivanModel.YieldingSoil.Evaluate(tyre, load), OSullivanModel.HardGround.Evaluate(tyre, load), NominalPressureModel.Instance.Evaluate(tyre, load) }), off <= 0.1 ? tyre.Inflation : null);
    }

    /// <summary>Gives all contacts in words, invariant culture.</summary>
    /// <returns>One line each.</returns>
    public override string ToString() => string.Join(Environment.NewLine, All) + (ByInflation is { } p ? Environment.NewLine + "Inflation: mean about " + Text.Kilopascals(p.Pascals, 3) : string.Empty);
}
