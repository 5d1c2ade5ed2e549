using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What acts on every section of a line alike: wet x lesser of sunlight and age x chemicals; temperature passes or fails. It is made here alone, so that no place can hold one of these factors again.</summary>
/// <remarks>
/// <para>Wet nylon 0.85 (primary; range 0.80 to 0.90 and one finish that gains), other fibres 1.00 (from memory). Sunlight: nylon 0.60 to 12 months and 0.40 to 36, polyester 0.70 to 12 (reported), HMPE none (from memory), others and beyond no figure. Age: nylon of ten years and more 0.25, the weakest of seven dock lines (primary; their mean 0.34).
/// Chemicals: acid excludes nylon, alkali polyester (reported). Temperature: the narrowest published limits. What has no figure is a stop, never a number.</para>
/// <para>Immutable.</para>
/// </remarks>
public sealed class WholeLengthDerating
{
    private WholeLengthDerating(double wet, double sunlight, double age, double chemical, List<Finding> findings, List<Source> sources)
    {
        WetShare = wet;
        SunlightShare = sunlight;
        AgeShare = age;
        ChemicalShare = chemical;
        Findings = findings.AsReadOnly();
        Sources = sources.AsReadOnly();
        Share = findings.Exists(f => f.Severity == Severity.Stop) ? double.NaN : ConditionKernel.WholeLength(wet, sunlight, age, chemical);
    }

    /// <summary>Gets what wet nylon rope keeps with an ordinary marine finish, by one study (Flory, Hearle and Goksoy 1990, abstract, primary): 0.80. Shown beside the code value 0.85.</summary>
    public static Ratio WetNylonOrdinaryFinish => Ratio.FromDecimalFractions(ConditionKernel.WetOrdinaryFinish);

    /// <summary>Gets what wet nylon rope keeps with an improved finish, by the same study: 1.13, a gain. Never credited.</summary>
    public static Ratio WetNylonImprovedFinish => Ratio.FromDecimalFractions(ConditionKernel.WetImprovedFinish);

    /// <summary>Gets the share of strength that is left along the whole length; null where something takes the line out of service or has no figure.</summary>
    public double? Factor => double.IsNaN(Share) ? null : Share;

    /// <summary>Gets what wetness leaves.</summary>
    public double Wet => WetShare;

    /// <summary>Gets what sunlight or age leaves, the lesser; null where no figure is known.</summary>
    public double? Weathering => double.IsNaN(SunlightShare) || double.IsNaN(AgeShare) ? null : Math.Min(SunlightShare, AgeShare);

    /// <summary>Gets what chemicals leave, 0 where they exclude the fibre; null where no figure is known.</summary>
    public double? Chemical => double.IsNaN(ChemicalShare) ? null : ChemicalShare;

    /// <summary>Gets what takes the line out of service.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Gets the sources of what acted.</summary>
    public IReadOnlyList<Source> Sources { get; }

    internal double Share { get; }

    private double WetShare { get; }

    private double SunlightShare { get; }

    private double AgeShare { get; }

    private double ChemicalShare { get; }

    /// <summary>A strap or rope of a fibre.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="fibre">What it is made of.</param>
    /// <param name="wet">Whether it is wet.</param>
    /// <param name="exposure">What it has been through; null where nothing was declared.</param>
    /// <returns>The derating.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The fibre is not a defined one.</exception>
    public static WholeLengthDerating OfFibre(string name, Fibre fibre, bool wet, LineExposure? exposure = null)
    {
        Guard.Name(name, nameof(name));
        Guard.Defined(fibre, fibre is >= Fibre.Nylon and <= Fibre.Aramid, nameof(fibre));
        var e = exposure ?? LineExposure.None;
        var findings = new List<Finding>();
        var sources = new List<Source>();
        if (wet) sources.Add(fibre == Fibre.Nylon ? RiggingSources.WetNylon : RiggingSources.WetOther);
        double sun = Sunlight(fibre, e, sources), age = Age(fibre, e, sources), chemical = ConditionKernel.Chemical(fibre, e.Chemicals);
        if (e.Chemicals != ChemicalExposure.None) sources.Add(PartSources.Chemicals);
        if (e.Temperature is { } temperature) OfTemperature(name, temperature.DegreesCelsius, ConditionKernel.Coldest(fibre), ConditionKernel.Hottest(fibre), PartSources.OfTemperature(fibre), findings, sources);
        if (wet && e.Temperature is { } cold && cold.DegreesCelsius < 0) findings.Add(new Finding(GearFindings.FrozenWet, name));
        if (double.IsNaN(sun)) findings.Add(new Finding(GearFindings.SunlightNoFigure, name, available: e.MonthsInSun ?? 0, unit: "months"));
        if (!(chemical > 0)) findings.Add(new Finding(GearFindings.Chemical, name));
        if (e.GreatestLoadShare is { } seen && seen.DecimalFractions > ConditionKernel.RetireShare) findings.Add(new Finding(GearFindings.Overloaded, name, ConditionKernel.RetireShare, seen.DecimalFractions));
        return new(wet ? ConditionKernel.Wet(fibre) : 1, sun, age, chemical, findings, sources);
    }

    /// <summary>A wire rope: a temperature passes or fails; wetness and sunlight take nothing off.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="core">Its core.</param>
    /// <param name="temperature">Temperature it works at, -60 to 600 deg C; null where it was not declared.</param>
    /// <returns>The derating.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WholeLengthDerating OfWireRope(string name, WireCore core, Temperature? temperature = null)
    {
        Guard.Name(name, nameof(name));
        Guard.Defined(core, core is WireCore.Fibre or WireCore.Wire, nameof(core));
        var findings = new List<Finding>();
        var sources = new List<Source>();
        if (temperature is { } t) OfTemperature(name, Guard.Range(t.DegreesCelsius, -60, 600, "deg C", nameof(temperature)), ConditionKernel.Coldest(core), ConditionKernel.Hottest(core), PartSources.WireTemperature, findings, sources);
        return new(1, 1, 1, 1, findings, sources);
    }

    /// <summary>A chain: hot it loses by the newer of two tables, from 400 F (204 C); outside -40 C to 1000 F (538 C) it is out of service.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="temperature">Temperature it works at, -60 to 600 deg C; null where it was not declared.</param>
    /// <returns>The derating.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static WholeLengthDerating OfChain(string name, Temperature? temperature = null)
    {
        Guard.Name(name, nameof(name));
        var findings = new List<Finding>();
        var sources = new List<Source>();
        var hot = 1.0;
        if (temperature is { } t)
        {
            var celsius = Guard.Range(t.DegreesCelsius, -60, 600, "deg C", nameof(temperature));
            OfTemperature(name, celsius, ChainKernel.Coldest, ChainKernel.Hottest, PartSources.ChainHot, findings, sources);
            hot = ChainKernel.Hot(celsius);
        }

        return new(1, hot, 1, 1, findings, sources);
    }

    /// <summary>Gives the derating in one line, invariant culture.</summary>
    /// <returns>The share, or that it is refused.</returns>
    public override string ToString() => Factor is { } factor ? "whole length " + Text.Number(factor) : "whole length refused";

    private static double Sunlight(Fibre fibre, LineExposure e, List<Source> sources)
    {
        if (e.SunlightShare is { } tested)
        {
            sources.Add(GeneralSources.Caller);
            return tested.DecimalFractions;
        }

        if (e.MonthsInSun is not > 0) return 1;
        sources.Add(fibre == Fibre.Hmpe ? PartSources.SunlightHmpe : PartSources.Sunlight);
        return ConditionKernel.Sunlight(fibre, e.MonthsInSun.Value);
    }

    private static double Age(Fibre fibre, LineExposure e, List<Source> sources)
    {
        if (e.AgeShare is { } tested)
        {
            sources.Add(GeneralSources.Caller);
            return tested.DecimalFractions;
        }

        if (e.AgeYears is not { } years) return 1;
        sources.Add(PartSources.OldNylon);
        return ConditionKernel.Age(fibre, years);
    }

    private static void OfTemperature(string name, double celsius, double coldest, double hottest, Source source, List<Finding> findings, List<Source> sources)
    {
        sources.Add(source);
        if (ConditionKernel.Within(celsius, coldest, hottest)) return;
        findings.Add(new Finding(celsius > hottest ? GearFindings.TooHot : GearFindings.TooCold, name, celsius > hottest ? hottest : coldest, celsius, "deg C"));
    }
}
