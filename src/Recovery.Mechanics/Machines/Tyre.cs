using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A tyre by its size, its inflation and, where they are known, its measured deflection and the lowest inflation its maker allows.</summary>
/// <remarks>
/// <para>Give the measured ratio delta/h, with delta = d/2 - SLR from the data book, where it is known. Otherwise delta = 0.0008 + 0.001 (0.365 + 170/p) W, delta in m, p inflation in kPa, W wheel load in kN
/// (Saarilahti 2002, forest tyres, secondary). Published formulas for the deflection differ by 17 to 38 % on harvester tyres: measure where it matters.</para>
/// <para>Traction models were fitted to deflections of 10 to 30 % of section height; beyond that they flag. Load tables, speed and torque limits of the maker decide the lowest pressure, not these formulas.</para>
/// <para>Immutable, equality by value, canonical units (m, Pa).</para>
/// </remarks>
public sealed record Tyre
{
    /// <summary>Describes a tyre.</summary>
    /// <param name="sectionWidth">Unloaded section width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Unloaded overall diameter d, 0.4 to 3 m.</param>
    /// <param name="sectionHeight">Section height h, 0.03 to 1 m and less than half the diameter.</param>
    /// <param name="inflation">Present inflation, 30 to 1,000 kPa.</param>
    /// <param name="lowestInflation">Lowest inflation the maker lists for the load; null where it is not known.</param>
    /// <param name="deflectionRatio">Measured deflection over section height at the present load, 0.01 to 0.6; null to compute it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The section height reaches the hub, or the lowest inflation is above the present one.</exception>
    public Tyre(Length sectionWidth, Length overallDiameter, Length sectionHeight, Pressure inflation, Pressure? lowestInflation = null, Ratio? deflectionRatio = null)
    {
        SectionWidth = Length.FromMeters(Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)));
        OverallDiameter = Length.FromMeters(Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)));
        SectionHeight = Length.FromMeters(Guard.Metres(sectionHeight, 0.03, 1, nameof(sectionHeight)));
        Inflation = Pressure.FromPascals(Guard.Pascals(inflation, 30, 1000, nameof(inflation)));
        if (SectionHeight.Meters >= OverallDiameter.Meters / 2)
            throw new ArgumentException("sectionHeight " + Text.With(SectionHeight.Meters, "m") + " must be less than half of overallDiameter " + Text.With(OverallDiameter.Meters, "m") + ".", nameof(sectionHeight));
        if (lowestInflation is { } lowest) LowestInflation = Pressure.FromPascals(Guard.Pascals(lowest, 30, Inflation.Pascals / 1000, nameof(lowestInflation)));
        if (deflectionRatio is { } ratio) MeasuredDeflectionRatio = Ratio.FromDecimalFractions(Guard.Fraction(ratio, 0.01, 0.6, nameof(deflectionRatio)));
    }

    /// <summary>Gets the unloaded section width b.</summary>
    public Length SectionWidth { get; }

    /// <summary>Gets the unloaded overall diameter d.</summary>
    public Length OverallDiameter { get; }

    /// <summary>Gets the section height h.</summary>
    public Length SectionHeight { get; }

    /// <summary>Gets the present inflation.</summary>
    public Pressure Inflation { get; }

    /// <summary>Gets the lowest inflation the maker lists for the load; null where it is not known.</summary>
    public Pressure? LowestInflation { get; }

    /// <summary>Gets the measured deflection ratio; null where it is computed.</summary>
    public Ratio? MeasuredDeflectionRatio { get; }

    /// <summary>Gives the same tyre at another inflation.</summary>
    /// <param name="inflation">New inflation, from the lowest the maker allows (30 kPa where that is not known) to 1,000 kPa.</param>
    /// <returns>The tyre; a measured deflection ratio is dropped, because it belonged to the old inflation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The inflation is below the lowest the maker allows.</exception>
    public Tyre AtInflation(Pressure inflation)
    {
        var pascals = Guard.Pascals(inflation, (LowestInflation?.Pascals ?? 30000) / 1000, 1000, nameof(inflation));
        return new Tyre(SectionWidth, OverallDiameter, SectionHeight, Pressure.FromPascals(pascals), LowestInflation);
    }

    /// <summary>Gives the static deflection under a load.</summary>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <returns>The deflection, measured along the radius.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Length Deflection(Force load) => Length.FromMeters(DeflectionMetres(Guard.Newtons(load, 0, 500, nameof(load))));

    /// <summary>Works out the deflection step by step.</summary>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Working Explain(Force load)
    {
        var newtons = Guard.Newtons(load, 0, 500, nameof(load));
        var delta = Text.With(DeflectionMetres(newtons), "m");
        var working = new WorkingBuilder("Static tyre deflection");
        return (MeasuredDeflectionRatio is { } measured
            ? working.Step("delta", "static deflection", "(delta/h) h", Text.Number(measured.DecimalFractions) + " x " + Text.Number(SectionHeight.Meters), delta, GeneralSources.Caller)
            : working.Step("delta", "static deflection", "0.0008 + 0.001 (0.365 + 170/p) W", "0.0008 + 0.001 (0.365 + 170/" + Text.Number(Inflation.Kilopascals) + ") x " + Text.Number(newtons / 1000), delta, MachinesSources.Saarilahti)).Build();
    }

    /// <summary>Gives the tyre in words, invariant culture.</summary>
    /// <returns>Size and inflation.</returns>
    public override string ToString() => Text.Number(SectionWidth.Meters, 3) + " x " + Text.Number(OverallDiameter.Meters, 3) + " m at " + Text.Kilopascals(Inflation.Pascals, 3);

    internal double DeflectionMetres(double loadNewtons) =>
        MeasuredDeflectionRatio is { } measured ? measured.DecimalFractions * SectionHeight.Meters : TyreKernel.Deflection(loadNewtons, Inflation.Pascals);

    internal double DeflectionRatio(double loadNewtons) => DeflectionMetres(loadNewtons) / SectionHeight.Meters;
}
