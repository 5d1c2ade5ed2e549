using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A tyre by its size, its inflation and, where they are known, its measured deflection and the inflation its maker allows.</summary>
/// <remarks>
/// <para>Deflection, the best first: a static loaded radius with its load and inflation (<see cref="StaticLoadedRadius"/>); a measured ratio delta/h; else the law named by <see cref="DeflectionLaw"/>. Published laws differ by 17 to 38 % on harvester tyres: measure where it matters,
/// or look at <see cref="CompareDeflections"/>.</para>
/// <para>Traction models were fitted to deflections of 10 to 30 % of section height; beyond that they flag. Load tables, speed and torque limits of the maker decide the inflation, not these laws: give its limits, and an inflation outside them is a finding.</para>
/// <para>Immutable, equality by value, canonical units (m, Pa).</para>
/// </remarks>
public sealed record Tyre
{
    // What is taken as an inflation at all, kPa (judgement).
    private const double LeastInflation = 30, MostInflation = 1000;

    /// <summary>Describes a tyre.</summary>
    /// <param name="sectionWidth">Unloaded section width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Unloaded overall diameter d, 0.4 to 3 m.</param>
    /// <param name="sectionHeight">Section height h, 0.03 to 1 m and less than half the diameter.</param>
    /// <param name="inflation">Present inflation, 30 to 1,000 kPa.</param>
    /// <param name="lowestInflation">Lowest inflation the maker lists for the load, 30 to 1,000 kPa; null where it is not known.</param>
    /// <param name="deflectionRatio">Measured deflection over section height at the present load, 0.01 to 0.6; null to compute it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The section height reaches the hub.</exception>
    public Tyre(Length sectionWidth, Length overallDiameter, Length sectionHeight, Pressure inflation, Pressure? lowestInflation = null, Ratio? deflectionRatio = null)
    {
        SectionWidth = Length.FromMeters(Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)));
        OverallDiameter = Length.FromMeters(Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)));
        SectionHeight = Length.FromMeters(Guard.Metres(sectionHeight, 0.03, 1, nameof(sectionHeight)));
        Inflation = Pressure.FromPascals(Guard.Pascals(inflation, LeastInflation, MostInflation, nameof(inflation)));
        if (SectionHeight.Meters >= OverallDiameter.Meters / 2)
            throw new ArgumentException("sectionHeight " + Text.With(SectionHeight.Meters, "m") + " must be less than half of overallDiameter " + Text.With(OverallDiameter.Meters, "m") + ".", nameof(sectionHeight));
        if (lowestInflation is { } lowest) LowestInflation = Pressure.FromPascals(Guard.Pascals(lowest, LeastInflation, MostInflation, nameof(lowestInflation)));
        if (deflectionRatio is { } ratio) MeasuredDeflectionRatio = Ratio.FromDecimalFractions(Guard.Fraction(ratio, 0.01, 0.6, nameof(deflectionRatio)));
    }

    /// <summary>Gets the unloaded section width b.</summary>
    public Length SectionWidth { get; private init; }

    /// <summary>Gets the unloaded overall diameter d.</summary>
    public Length OverallDiameter { get; private init; }

    /// <summary>Gets the section height h.</summary>
    public Length SectionHeight { get; private init; }

    /// <summary>Gets the diameter of the rim, d - 2 h.</summary>
    public Length RimDiameter => Length.FromMeters(OverallDiameter.Meters - (2 * SectionHeight.Meters));

    /// <summary>Gets the present inflation.</summary>
    public Pressure Inflation { get; private init; }

    /// <summary>Gets the lowest inflation the maker lists for the load; null where it is not known.</summary>
    public Pressure? LowestInflation { get; }

    /// <summary>Gets the highest inflation the maker allows; null where it is not known. Not below the lowest.</summary>
    public Pressure? HighestInflation { get; init => field = value is { } highest ? Pressure.FromPascals(Guard.Pascals(highest, LowestInflation?.Kilopascals ?? LeastInflation, MostInflation, "highestInflation")) : null; }

    /// <summary>Gets the measured deflection ratio; null where it is computed.</summary>
    public Ratio? MeasuredDeflectionRatio { get; private init; }

    /// <summary>Gets the law that gives the deflection where it was not measured, and scales it to other loads and inflations where it was.</summary>
    public TyreDeflectionLaw DeflectionLaw { get; init => field = Guard.Defined(value, value is >= TyreDeflectionLaw.Saarilahti and <= TyreDeflectionLaw.LinesMurphy, "deflectionLaw"); }

    /// <summary>Gets the age of the tyre in years, 0 to 30; only the law of Lines and Murphy asks for it. An old tyre is stiffer.</summary>
    public double AgeYears { get; init => field = Guard.Range(value, 0, 30, "years", "ageYears"); }

    /// <summary>Gets the static loaded radius from data; null where it is not known. Between the rim and half the diameter.</summary>
    public LoadedRadius? StaticLoadedRadius
    {
        get;
        init
        {
            if (value is not null) Guard.Range(value.Radius.Meters, RimDiameter.Meters / 2, (OverallDiameter.Meters / 2) - 0.001, "m", "staticLoadedRadius");
            field = value;
        }
    }

    /// <summary>Gets the size marking the dimensions came from; null where they were given.</summary>
    public string? Marking { get; private init; }

    /// <summary>Makes a tyre from its size marking. Dimensions that follow from a marking are nominal: those of the data book are better.</summary>
    /// <param name="marking">Marking on the side wall, for example <c>900/60R32</c> or <c>18.4-38</c>; see <see cref="TyreSize.Parse"/>.</param>
    /// <param name="inflation">Present inflation, 30 to 1,000 kPa.</param>
    /// <param name="lowestInflation">Lowest inflation the maker lists for the load; null where it is not known.</param>
    /// <param name="deflectionRatio">Measured deflection over section height at the present load, 0.01 to 0.6; null to compute it.</param>
    /// <returns>The tyre.</returns>
    /// <exception cref="ArgumentException">The marking cannot be read, or the diameter does not follow from it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Tyre FromMarking(string marking, Pressure inflation, Pressure? lowestInflation = null, Ratio? deflectionRatio = null)
    {
        var size = TyreSize.Parse(marking);
        return new Tyre(size.SectionWidth, size.OverallDiameter, size.SectionHeight, inflation, lowestInflation, deflectionRatio) { Marking = size.Marking };
    }

    /// <summary>Gives the same tyre at another inflation. An inflation outside the maker's limits is no error here but a finding: <see cref="InflationFindings"/>.</summary>
    /// <param name="inflation">New inflation, 30 to 1,000 kPa.</param>
    /// <returns>The tyre; a measured deflection ratio is scaled to the new inflation by the law of the tyre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The inflation is outside its range.</exception>
    public Tyre AtInflation(Pressure inflation)
    {
        var pascals = Guard.Pascals(inflation, LeastInflation, MostInflation, nameof(inflation));
        var ratio = MeasuredDeflectionRatio is { } measured ? Math.Min(0.6, Math.Max(0.01, measured.DecimalFractions * Compliance(pascals) / Compliance(Inflation.Pascals))) : (double?)null;
        return this with { Inflation = Pressure.FromPascals(pascals), MeasuredDeflectionRatio = ratio is { } r ? Ratio.FromDecimalFractions(r) : null };
    }

    /// <summary>The same tyre with other dimensions, all within their ranges: what sampling does to a reading. Dimensions no longer follow from a marking.</summary>
    internal Tyre Resized(double widthMetres, double diameterMetres, double heightMetres) => this with { SectionWidth = Length.FromMeters(widthMetres), OverallDiameter = Length.FromMeters(diameterMetres), SectionHeight = Length.FromMeters(heightMetres), Marking = null };

    /// <summary>The same tyre with another measured deflection ratio, within its range: what sampling does to a reading.</summary>
    internal Tyre Deflecting(double ratio) => this with { MeasuredDeflectionRatio = Ratio.FromDecimalFractions(ratio) };

    /// <summary>Gives the static deflection under a load.</summary>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <returns>The deflection, measured along the radius.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Length Deflection(Force load) => Length.FromMeters(DeflectionMetres(Guard.Newtons(load, 0, 500, nameof(load))));

    /// <summary>Gives the deflection by every published law side by side, and from data where there is any.</summary>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <returns>All deflections with their flags and the spread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public TyreDeflectionComparison CompareDeflections(Force load) => TyreDeflectionComparison.Of(this, Guard.Newtons(load, 0.001, 500, nameof(load)));

    /// <summary>Sets the present inflation against the limits of the maker.</summary>
    /// <param name="subject">What the finding should call the tyre, for example <c>front tyres</c>.</param>
    /// <returns>The findings; empty within the limits.</returns>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    public IReadOnlyList<Finding> InflationFindings(string subject) => CheckInflation(Inflation, subject);

    /// <summary>Sets a planned inflation against the limits of the maker.</summary>
    /// <param name="planned">Planned inflation, 30 to 1,000 kPa.</param>
    /// <param name="subject">What the finding should call the tyre, for example <c>front tyres</c>.</param>
    /// <returns>Below the lowest or above the highest: a caution. Lower than now and the lowest not known: a note. Else empty.</returns>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The inflation is outside its range.</exception>
    public IReadOnlyList<Finding> CheckInflation(Pressure planned, string subject)
    {
        Guard.Name(subject, nameof(subject));
        var pascals = Guard.Pascals(planned, LeastInflation, MostInflation, nameof(planned));
        return InflationFinding(pascals, subject) is { } finding ? [finding] : [];
    }

    /// <summary>Works out the deflection step by step.</summary>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Working Explain(Force load)
    {
        var newtons = Guard.Newtons(load, 0, 500, nameof(load));
        var delta = Text.With(DeflectionMetres(newtons), "m");
        var working = new WorkingBuilder("Static tyre deflection");
        if (StaticLoadedRadius is { } known)
        {
            var law = DeflectionLaw == TyreDeflectionLaw.LinesMurphy ? MachinesSources.LinesMurphy : MachinesSources.Saarilahti;
            return working
                .Step("delta_0", "deflection at the known point", "d/2 - SLR", Text.Number(OverallDiameter.Meters) + "/2 - " + known, Text.With(KnownDeflection(known), "m"), MachinesSources.StaticLoadedRadius)
                .Step("delta", "static deflection", "delta_0 law(W, p)/law(W_0, p_0)", Text.Number(KnownDeflection(known)) + " x " + Text.Number(LawMetres(newtons, Inflation.Pascals)) + "/" + Text.Number(LawMetres(known.Load.Newtons, known.Inflation.Pascals)), delta, law)
                .Build();
        }

        if (MeasuredDeflectionRatio is { } measured)
            return working.Step("delta", "static deflection", "(delta/h) h", Text.Number(measured.DecimalFractions) + " x " + Text.Number(SectionHeight.Meters), delta, GeneralSources.Caller).Build();
        return DeflectionLaw == TyreDeflectionLaw.LinesMurphy ? LinesMurphyModel.Instance.Explain(this, load) : SaarilahtiModel.Instance.Explain(this, load);
    }

    /// <summary>Gives the same with another value: the highest inflation. For callers whose language has no <c>with</c>.</summary>
    /// <param name="highestInflation">The value, as in <see cref="HighestInflation"/>.</param>
    /// <returns>The changed copy.</returns>
    public Tyre WithHighestInflation(Pressure? highestInflation) => this with { HighestInflation = highestInflation };

    /// <summary>Gives the same with another value: the law of the deflection. For callers whose language has no <c>with</c>.</summary>
    /// <param name="deflectionLaw">The value, as in <see cref="DeflectionLaw"/>.</param>
    /// <returns>The changed copy.</returns>
    public Tyre WithDeflectionLaw(TyreDeflectionLaw deflectionLaw) => this with { DeflectionLaw = deflectionLaw };

    /// <summary>Gives the same with another value: the age. For callers whose language has no <c>with</c>.</summary>
    /// <param name="ageYears">The value, as in <see cref="AgeYears"/>.</param>
    /// <returns>The changed copy.</returns>
    public Tyre WithAgeYears(double ageYears) => this with { AgeYears = ageYears };

    /// <summary>Gives the same with another value: the static loaded radius. For callers whose language has no <c>with</c>.</summary>
    /// <param name="staticLoadedRadius">The value, as in <see cref="StaticLoadedRadius"/>.</param>
    /// <returns>The changed copy.</returns>
    public Tyre WithStaticLoadedRadius(LoadedRadius? staticLoadedRadius) => this with { StaticLoadedRadius = staticLoadedRadius };

    /// <summary>Gives the tyre in words, invariant culture.</summary>
    /// <returns>Size and inflation.</returns>
    public override string ToString() => (Marking is null ? string.Empty : Marking + ", ") + Text.Number(SectionWidth.Meters, 3) + " x " + Text.Number(OverallDiameter.Meters, 3) + " m at " + Text.Kilopascals(Inflation.Pascals, 3);

    /// <summary>Whether the present inflation lies outside the maker's limits, as far as they are known.</summary>
    internal bool IsOutsideItsLimits => (LowestInflation is { } lowest && Inflation.Pascals < lowest.Pascals) || (HighestInflation is { } highest && Inflation.Pascals > highest.Pascals);

    private Finding? InflationFinding(double pascals, string subject)
    {
        if (LowestInflation is { } lowest && pascals < lowest.Pascals) return new Finding(MachinesFindings.InflationBelowLimit, subject, lowest.Pascals / 1000, pascals / 1000, "kPa");
        if (HighestInflation is { } highest && pascals > highest.Pascals) return new Finding(MachinesFindings.InflationAboveLimit, subject, highest.Pascals / 1000, pascals / 1000, "kPa");
        return LowestInflation is null && pascals < Inflation.Pascals ? new Finding(MachinesFindings.InflationLimitUnknown, subject, available: pascals / 1000, unit: "kPa") : null;
    }

    internal double DeflectionMetres(double loadNewtons)
    {
        if (StaticLoadedRadius is { } known) return KnownDeflection(known) * LawMetres(loadNewtons, Inflation.Pascals) / LawMetres(known.Load.Newtons, known.Inflation.Pascals);
        return MeasuredDeflectionRatio is { } measured ? measured.DecimalFractions * SectionHeight.Meters : LawMetres(loadNewtons, Inflation.Pascals);
    }

    internal double DeflectionRatio(double loadNewtons) => DeflectionMetres(loadNewtons) / SectionHeight.Meters;

    /// <summary>Deflection at no load of the law, scaled to the data.</summary>
    internal double OffsetMetres => DeflectionLaw == TyreDeflectionLaw.LinesMurphy ? 0 : Scale * TyreKernel.SaarilahtiOffset;

    /// <summary>Change of the deflection with the load, m/N, scaled to the data.</summary>
    internal double ComplianceMetres => Scale * Compliance(Inflation.Pascals);

    private double Scale => StaticLoadedRadius is { } known ? KnownDeflection(known) / LawMetres(known.Load.Newtons, known.Inflation.Pascals) : 1;

    private double KnownDeflection(LoadedRadius known) => (OverallDiameter.Meters / 2) - known.Radius.Meters;

    private double LawMetres(double loadNewtons, double inflationPascals) =>
        DeflectionLaw == TyreDeflectionLaw.LinesMurphy ? loadNewtons * Compliance(inflationPascals) : TyreKernel.Saarilahti(loadNewtons, inflationPascals);

    private double Compliance(double inflationPascals) =>
        DeflectionLaw == TyreDeflectionLaw.LinesMurphy ? 1 / TyreKernel.LinesMurphyStiffness(RimDiameter.Meters, SectionWidth.Meters, AgeYears, inflationPascals) : TyreKernel.SaarilahtiCompliance(inflationPascals);
}
