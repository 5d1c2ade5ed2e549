using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Greatest force of a take-up by one rule.</summary>
public sealed record TakeUpPeak
{
    internal TakeUpPeak(LineLoadRule rule, double newtons, double stretch, double energy, double curveEnd, double seconds, Source source)
    {
        Rule = rule;
        Newtons = newtons;
        StretchMetres = stretch;
        Joules = energy;
        CurveEndNewtons = curveEnd;
        SecondsToPeak = seconds;
        Source = source;
    }

    /// <summary>Gets the rule.</summary>
    public LineLoadRule Rule { get; }

    /// <summary>Gets the force; null where a table ends before the energy is taken up, and then nothing is computed beyond it.</summary>
    public Force? Peak => double.IsNaN(Newtons) ? null : Force.FromNewtons(Newtons);

    /// <summary>Gets the stretch at the peak; null where there is no peak.</summary>
    public Length? Stretch => double.IsNaN(Newtons) ? null : Length.FromMeters(StretchMetres);

    /// <summary>Gets the energy in the line at the peak; null where there is no peak.</summary>
    public Energy? StoredEnergy => double.IsNaN(Newtons) ? null : Energy.FromJoules(Joules);

    /// <summary>Gets the time from first taut to the peak where a closed form gives it: linear lines on a held anchor, and power laws without pull; null elsewhere.</summary>
    public Duration? TimeToPeak => double.IsNaN(SecondsToPeak) ? null : Duration.FromSeconds(SecondsToPeak);

    /// <summary>Gets whether the force lies above the end of the curve: the line breaks, or nothing is known there.</summary>
    public bool ExceedsCurve => !(Newtons <= CurveEndNewtons);

    /// <summary>Gets the source of the rule.</summary>
    public Source Source { get; }

    internal double Newtons { get; }

    internal double StretchMetres { get; }

    internal double Joules { get; }

    private double CurveEndNewtons { get; }

    private double SecondsToPeak { get; }

    /// <summary>Gives what follows from the peak: a line that breaks.</summary>
    /// <returns>A stopping finding where the curve is exceeded; empty elsewhere.</returns>
    public IReadOnlyList<Finding> Findings() =>
        ExceedsCurve ? [new Finding(LinesFindings.PeakBeyondCurve, "line", double.IsNaN(Newtons) ? double.NaN : Newtons / 1000, CurveEndNewtons / 1000, "kN")] : [];

    /// <summary>Gives the peak in one line, invariant culture.</summary>
    /// <returns>Force and rule.</returns>
    public override string ToString() => double.IsNaN(Newtons) ? "beyond the measured curve (" + Rule + ")" : Text.Kilonewtons(Newtons) + " (" + Rule + (ExceedsCurve ? ", above the end of the curve)" : ")");
}
