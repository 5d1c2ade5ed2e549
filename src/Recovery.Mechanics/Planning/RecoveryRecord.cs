using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>What was planned and what was measured: the resistance worked back from the pull, with its band. Data that nobody has published.</summary>
/// <remarks>
/// <para>From a load cell: resistance along the ground = reading x cos(pitch) cos(yaw), taken within 5 % either way (judgement) unless the caller knows better. From a tape: k x over both ends of the stiffness band of the line, its stiff end bedded in unless a first pull was declared. From the stage alone: above the load of the stage before, up to that of the stage.</para>
/// <para>Where it did not move the pull is a lower bound: <see cref="IsLowerBound"/>.</para>
/// </remarks>
public sealed record RecoveryRecord
{
    private const double CellAccuracy = 0.05;

    private readonly string _methodKey;

    private RecoveryRecord(Assessment planned, MeasuredPull measured, ForceBand resistance, bool isLowerBound, string methodKey)
    {
        Planned = planned;
        Measured = measured;
        Resistance = resistance;
        IsLowerBound = isLowerBound;
        _methodKey = methodKey;
    }

    /// <summary>Gets the assessment that was planned with.</summary>
    public Assessment Planned { get; }

    /// <summary>Gets what was measured.</summary>
    public MeasuredPull Measured { get; }

    /// <summary>Gets the resistance worked back, along the ground.</summary>
    public ForceBand Resistance { get; }

    /// <summary>Gets whether the machine did not move, so that it held at least this.</summary>
    public bool IsLowerBound { get; }

    /// <summary>Gets how it was worked back.</summary>
    public string Method => Wording.Default.Say("record.method." + _methodKey);

    /// <summary>Gets the resistance over the central demand that was estimated.</summary>
    public double OverEstimate => Resistance.CentralNewtons / Planned.Demand.CentralNewtons;

    /// <summary>Gets whether the bands of estimate and measurement touch.</summary>
    public bool WithinEstimate => Resistance.HighNewtons >= Planned.Demand.LowNewtons && Resistance.LowNewtons <= Planned.Demand.HighNewtons;

    /// <summary>Works a resistance back from a pull.</summary>
    /// <param name="planned">The assessment that was planned with.</param>
    /// <param name="measured">What was measured.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">Nothing was measured that a resistance follows from, or the stage does not exist.</exception>
    public static RecoveryRecord From(Assessment planned, MeasuredPull measured)
    {
        Guard.NotNull(planned, nameof(planned));
        Guard.NotNull(measured, nameof(measured));
        var share = 1 / planned.Plan.Site.Tension;
        var bound = measured.StageThatMovedIt is null;
        if (measured.LoadCell is { } cell)
            return new RecoveryRecord(planned, measured, Band(share * cell.Newtons * (1 - CellAccuracy), share * cell.Newtons, share * cell.Newtons * (1 + CellAccuracy)), bound, "cell");
        if (measured.Stretch is { } stretch && planned.Loads is { } loads)
        {
            double soft = share * stretch.Meters * loads.Input.Soft, stiff = share * stretch.Meters * loads.Input.Stiff * (planned.Plan.Procedure.SecondPull == false ? 1 : loads.Input.BeddedFactor);
            return new RecoveryRecord(planned, measured, Band(soft, Math.Sqrt(soft * stiff), stiff), bound, "stretch");
        }

        if (measured.StageThatMovedIt is not { } stage || planned.Stages.Count == 0) throw new ArgumentException("A resistance follows from a load cell, from a stretch or from the stage that moved it; none was given.", nameof(measured));
        if (stage > planned.Stages.Count) throw new ArgumentException("The plan has " + Text.Number(planned.Stages.Count) + " stages; stage " + Text.Number(stage) + " was named.", nameof(measured));
        double high = share * planned.Stages[stage - 1].LineLoad.Newtons, low = stage > 1 ? share * planned.Stages[stage - 2].LineLoad.Newtons : 0;
        return new RecoveryRecord(planned, measured, Band(low, 0.5 * (low + high), high), false, "stage");
    }

    /// <summary>Gives the record in structured form, to be filed or sent on: what was planned, what was measured, what the machine held.</summary>
    /// <param name="units">Units of the numbers.</param>
    /// <param name="language">The words, by key.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentNullException">The language is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The units are not one of the defined values.</exception>
    public ReportDocument ToDocument(DisplayUnits units, ReportLanguage language) => RecordReport.Of(this, _methodKey, new Wording(new Display(Guard.Defined(units, units is DisplayUnits.Metric or DisplayUnits.Imperial, nameof(units))), Guard.NotNull(language, nameof(language))));

    /// <summary>Gives the record in structured form, in English.</summary>
    /// <param name="units">Units of the numbers.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The units are not one of the defined values.</exception>
    public ReportDocument ToDocument(DisplayUnits units) => ToDocument(units, ReportLanguage.English);

    /// <summary>Gives the record in one line, invariant culture.</summary>
    /// <returns>Estimate and measurement.</returns>
    public override string ToString() => "estimated " + Planned.Demand.Total + ", measured " + (IsLowerBound ? "at least " : string.Empty) + Resistance + " (" + Method + "), " + Text.Number(OverEstimate, 2) + " times central; input " + Planned.Fingerprint;

    private static ForceBand Band(double low, double central, double high) => ForceBand.FromNewtons(low, central, high);
}
