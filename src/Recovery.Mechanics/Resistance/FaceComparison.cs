using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The soil ahead of one wheel by all methods for undrained clay, side by side, and how far they lie apart.</summary>
public sealed record FaceComparison
{
    private FaceComparison(IReadOnlyList<FaceResult> results)
    {
        Results = results;
        Lowest = results.Aggregate((a, b) => b.Force.Newtons < a.Force.Newtons ? b : a);
        Highest = results.Aggregate((a, b) => b.Force.Newtons > a.Force.Newtons ? b : a);
    }

    /// <summary>Gets the results, one per method of <see cref="FaceMethod.Undrained"/>.</summary>
    public IReadOnlyList<FaceResult> Results { get; }

    /// <summary>Gets the lowest.</summary>
    public FaceResult Lowest { get; }

    /// <summary>Gets the highest.</summary>
    public FaceResult Highest { get; }

    /// <summary>Gets the highest over the lowest: the spread of methods on one soil.</summary>
    public double Spread => Highest.Force.Newtons / Lowest.Force.Newtons;

    /// <summary>Compares the methods on one wheel.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0.01 m to the diameter.</param>
    /// <param name="strength">Undrained strength of the uncut soil, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 5 to 24 kN/m3.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FaceComparison OneWheel(Length sectionWidth, Length overallDiameter, Length sinkage, Pressure strength, SpecificWeight unitWeight)
    {
        Guard.Metres(sinkage, 0.01, 3, nameof(sinkage));
        return new FaceComparison(FaceMethod.Undrained.Select(m => m.Evaluate(sectionWidth, overallDiameter, sinkage, strength, unitWeight)).ToList().AsReadOnly());
    }

    /// <summary>Gives the comparison in one line, invariant culture.</summary>
    /// <returns>Lowest, highest and spread.</returns>
    public override string ToString() => "lowest " + Lowest + ", highest " + Highest + ", spread " + Text.Number(Spread, 3);
}
