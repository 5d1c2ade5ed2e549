using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What a strap or rope has been through and works in, as far as it is known. Nothing declared is nothing credited and nothing taken off: an inspection comes first.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record LineExposure
{
    /// <summary>Nothing declared.</summary>
    public static readonly LineExposure None = new();

    /// <summary>Gets the temperature it works at, -60 to 600 deg C; null where it was not declared. It passes or fails; it is no factor.</summary>
    public Temperature? Temperature { get; init => field = value is { } v ? UnitsNet.Temperature.FromDegreesCelsius(Guard.Range(v.DegreesCelsius, -60, 600, "deg C", nameof(Temperature))) : null; }

    /// <summary>Gets how long it lay in the sun, 0 to 120 months of continuous exposure; null where it was not declared.</summary>
    public double? MonthsInSun { get; init => field = value is { } v ? Guard.Range(v, 0, 120, "months", nameof(MonthsInSun)) : null; }

    /// <summary>Gets its age, 0 to 100 years; null where it was not declared.</summary>
    public double? AgeYears { get; init => field = value is { } v ? Guard.Range(v, 0, 100, "years", nameof(AgeYears)) : null; }

    /// <summary>Gets the share of strength that sunlight left, from a test of its own, 0.01 to 1; null takes the published loss of <see cref="MonthsInSun"/>.</summary>
    public Ratio? SunlightShare { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0.01, 1, nameof(SunlightShare))) : null; }

    /// <summary>Gets the share of strength that age and use left, from a test of its own, 0.01 to 1; null takes the published loss of <see cref="AgeYears"/>.</summary>
    public Ratio? AgeShare { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0.01, 1, nameof(AgeShare))) : null; }

    /// <summary>Gets what chemicals reached it.</summary>
    public ChemicalExposure Chemicals { get; init; }

    /// <summary>Gets the greatest load it has seen over its breaking strength, 0 to 1; null where it is not known. Above 0.75 it is retired.</summary>
    public Ratio? GreatestLoadShare { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0, 1, nameof(GreatestLoadShare))) : null; }

    /// <summary>Gives the same with another value: the temperature it works at. For callers whose language has no <c>with</c>.</summary>
    /// <param name="temperature">The value, as in <see cref="Temperature"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineExposure WithTemperature(Temperature? temperature) => this with { Temperature = temperature };

    /// <summary>Gives the same with another value: the months in the sun. For callers whose language has no <c>with</c>.</summary>
    /// <param name="months">The value, as in <see cref="MonthsInSun"/>.</param>
    /// <param name="testedShare">The value, as in <see cref="SunlightShare"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineExposure WithSunlight(double? months, Ratio? testedShare = null) => this with { MonthsInSun = months, SunlightShare = testedShare };

    /// <summary>Gives the same with another value: the age. For callers whose language has no <c>with</c>.</summary>
    /// <param name="years">The value, as in <see cref="AgeYears"/>.</param>
    /// <param name="testedShare">The value, as in <see cref="AgeShare"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineExposure WithAge(double? years, Ratio? testedShare = null) => this with { AgeYears = years, AgeShare = testedShare };

    /// <summary>Gives the same with another value: the chemicals. For callers whose language has no <c>with</c>.</summary>
    /// <param name="chemicals">The value, as in <see cref="Chemicals"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineExposure WithChemicals(ChemicalExposure chemicals) => this with { Chemicals = chemicals };

    /// <summary>Gives the same with another value: the greatest load seen. For callers whose language has no <c>with</c>.</summary>
    /// <param name="share">The value, as in <see cref="GreatestLoadShare"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineExposure WithGreatestLoad(Ratio? share) => this with { GreatestLoadShare = share };

    /// <summary>Gives the exposure in words, invariant culture.</summary>
    /// <returns>What is declared.</returns>
    public override string ToString() =>
        (Temperature is { } t ? Text.With(t.DegreesCelsius, "deg C") : "temperature not declared") + ", " + (MonthsInSun is { } m ? Text.With(m, "months in the sun") : "sunlight not declared") + ", " + (AgeYears is { } a ? Text.With(a, "years old") : "age not declared") + ", chemicals " + Chemicals;
}
