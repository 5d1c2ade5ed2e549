using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>One wheel under its load on one soil: what every wheel model takes.</summary>
/// <remarks>Immutable, equality by value, canonical units (m, N, Pa). The cone index is the index that is <b>fed to the model</b>: on fine-grained soil the rating cone index.</remarks>
public sealed record WheelOnSoil
{
    /// <summary>Least deflection ratio that is taken: below it several models have no number (judgement).</summary>
    internal const double LeastDeflectionRatio = 0.0005;

    /// <summary>Describes a wheel on a soil.</summary>
    /// <param name="sectionWidth">Unloaded section width b, 0.05 to 2 m.</param>
    /// <param name="overallDiameter">Unloaded overall diameter d, 0.2 to 4 m.</param>
    /// <param name="deflectionRatio">Static deflection over section height, delta/h, 0.0005 to 0.6: a tyre that does not yield at all is no tyre, and several models have no number for it.</param>
    /// <param name="load">Dynamic load normal to the soil, above 0 to 500 kN.</param>
    /// <param name="coneIndex">Cone index fed to the model, above 0 to 20,000 kPa.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number.</exception>
    public WheelOnSoil(Length sectionWidth, Length overallDiameter, Ratio deflectionRatio, Force load, Pressure coneIndex)
    {
        SectionWidth = sectionWidth;
        OverallDiameter = overallDiameter;
        DeflectionRatio = deflectionRatio;
        Load = load;
        ConeIndex = coneIndex;
    }

    /// <summary>Gets the unloaded section width b.</summary>
    public Length SectionWidth { get; init => field = Length.FromMeters(Guard.Metres(value, 0.05, 2, "sectionWidth")); }

    /// <summary>Gets the unloaded overall diameter d.</summary>
    public Length OverallDiameter { get; init => field = Length.FromMeters(Guard.Metres(value, 0.2, 4, "overallDiameter")); }

    /// <summary>Gets the deflection ratio delta/h.</summary>
    public Ratio DeflectionRatio { get; init => field = Ratio.FromDecimalFractions(Guard.Fraction(value, LeastDeflectionRatio, 0.6, "deflectionRatio")); }

    /// <summary>Gets the dynamic load on the wheel.</summary>
    public Force Load { get; init => field = Force.FromNewtons(Guard.Newtons(value, 1e-3, 500, "load")); }

    /// <summary>Gets the cone index fed to the model.</summary>
    public Pressure ConeIndex { get; init => field = Pressure.FromPascals(Guard.Pascals(value, 1e-3, 20000, "coneIndex")); }

    /// <summary>Gives the wheel in words, invariant culture.</summary>
    /// <returns>Size, load and cone index.</returns>
    public override string ToString() =>
        Text.Number(SectionWidth.Meters, 3) + " x " + Text.Number(OverallDiameter.Meters, 3) + " m tyre, " + Text.Kilonewtons(Load.Newtons) + " on " + Text.Kilopascals(ConeIndex.Pascals);
}
