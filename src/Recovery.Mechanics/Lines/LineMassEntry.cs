using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Mass of a kind of line for its breaking strength, as a band: what its recoil speed hangs on where it was not weighed.</summary>
/// <remarks>m' = (g/m per kN) MBS. The lighter end recoils faster. A default and no measurement: weigh a metre of the line at hand. Source: named in each row.</remarks>
public sealed record LineMassEntry
{
    internal LineMassEntry(string name, double lightest, double heaviest, Source source)
    {
        Name = name;
        Lightest = lightest;
        Heaviest = heaviest;
        Source = source;
    }

    /// <summary>Gets the kind of line in words.</summary>
    public string Name { get; }

    /// <summary>Gets the mass per metre and kilonewton of breaking strength at the light end, g/(m kN).</summary>
    public double Lightest { get; }

    /// <summary>Gets the same at the heavy end; equal to the light one where a single figure is published.</summary>
    public double Heaviest { get; }

    /// <summary>Gets breaking strength over mass of a metre at the heavy end, kN m/kg.</summary>
    public double KilonewtonMetresPerKilogram => 1000 / Heaviest;

    /// <summary>Gets the source with its standing.</summary>
    public Source Source { get; }

    /// <summary>Gives the mass of a metre at the light end: the end on which a line recoils fastest.</summary>
    /// <param name="breakingStrength">Breaking strength, 0.1 to 20,000 kN.</param>
    /// <returns>The mass of a metre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public LinearDensity LightestOf(Force breakingStrength) => Of(Lightest, breakingStrength);

    /// <summary>Gives the mass of a metre at the heavy end.</summary>
    /// <param name="breakingStrength">Breaking strength, 0.1 to 20,000 kN.</param>
    /// <returns>The mass of a metre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public LinearDensity HeaviestOf(Force breakingStrength) => Of(Heaviest, breakingStrength);

    /// <summary>Gives the row in words, invariant culture.</summary>
    /// <returns>Name, band and standing.</returns>
    public override string ToString() => Name + ": " + Text.Number(Lightest) + (Heaviest > Lightest ? " to " + Text.Number(Heaviest) : string.Empty) + " g/m per kN (" + Standings.Describe(Source.Standing) + ")";

    private static LinearDensity Of(double gramsPerMetrePerKilonewton, Force breakingStrength) => LinearDensity.FromKilogramsPerMeter(gramsPerMetrePerKilonewton * 1e-6 * Guard.Newtons(breakingStrength, 0.1, 20000, nameof(breakingStrength)));
}
