using System.Collections.Generic;
using System.Threading;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A take-up followed in time: summary, events, history.</summary>
/// <remarks>Linear modes are solved exactly, others by an eighth-order Runge-Kutta method; events are located to 1e-10 s or better; the energy balance is audited at every step. First-principles model, checked against closed forms and a general-purpose solver only: no load record of a heavy farm snatch is published.</remarks>
public sealed class TakeUpSimulation
{
    private readonly TakeUpOutcome _o;

    private TakeUpSimulation(TakeUpCase take, in TakeUpOutcome outcome, IReadOnlyList<TakeUpEvent> events, IReadOnlyList<TakeUpSample> history)
    {
        Case = take;
        _o = outcome;
        Events = events;
        History = history;
    }

    /// <summary>Gets the take-up.</summary>
    public TakeUpCase Case { get; }

    /// <summary>Gets the events in order of time.</summary>
    public IReadOnlyList<TakeUpEvent> Events { get; }

    /// <summary>Gets the time history; empty where none was kept.</summary>
    public IReadOnlyList<TakeUpSample> History { get; }

    /// <summary>Gets the greatest force.</summary>
    public Force Peak => Force.FromNewtons(_o.Peak);

    /// <summary>Gets the time of the greatest force since the start; null where the line never bore any.</summary>
    public Duration? PeakTime => At(_o.PeakTime);

    /// <summary>Gets the stretch at the greatest force.</summary>
    public Length PeakStretch => Length.FromMeters(_o.Peak > 0 ? _o.PeakStretch : 0);

    /// <summary>Gets the first maximum of the force; null where there was none.</summary>
    public Force? FirstPeak => double.IsNaN(_o.FirstPeak) ? null : Force.FromNewtons(_o.FirstPeak);

    /// <summary>Gets the second maximum of the force; null where there was none.</summary>
    public Force? SecondPeak => double.IsNaN(_o.SecondPeak) ? null : Force.FromNewtons(_o.SecondPeak);

    /// <summary>Gets when the line first came taut; null where it did not.</summary>
    public Duration? TautTime => At(_o.TautTime);

    /// <summary>Gets when the casualty first broke out; null where it did not.</summary>
    public Duration? BreakOutTime => At(_o.BreakOutTime);

    /// <summary>Gets when the line first went slack again; null where it did not.</summary>
    public Duration? SlackTime => At(_o.SlackTime);

    /// <summary>Gets when a part let go; null where none did.</summary>
    public Duration? FailTime => At(_o.FailTime);

    /// <summary>Gets the part that let go; null where none did.</summary>
    public LineSegment? FailedPart => double.IsNaN(_o.FailTime) ? null : Case.Line.Weakest;

    /// <summary>Gets whether a table of a part ended before the run did; nothing beyond it was computed.</summary>
    public bool CurveEnded => _o.CurveEnded;

    /// <summary>Gets the greatest energy that the line held.</summary>
    public Energy GreatestLineEnergy => Energy.FromJoules(_o.GreatestLineEnergy);

    /// <summary>Gets the energy turned to heat under the casualty and in the dashpot.</summary>
    public Energy Heat => Energy.FromJoules(_o.Heat);

    /// <summary>Gets how far the casualty was moved.</summary>
    public Length CasualtyTravel => Length.FromMeters(_o.CasualtyTravel);

    /// <summary>Gets the greatest speed of the casualty. It can leave faster than the puller and run into it.</summary>
    public Speed CasualtyGreatestSpeed => Speed.FromMetersPerSecond(_o.CasualtyGreatestSpeed);

    /// <summary>Gets when the run ended.</summary>
    public Duration EndTime => Duration.FromSeconds(_o.EndTime);

    /// <summary>Gets the greatest error of the energy balance over the greatest energy in play.</summary>
    public double EnergyError => _o.EnergyError;

    /// <summary>Gets the steps made.</summary>
    public int Steps => _o.Steps;

    internal ref readonly TakeUpOutcome Outcome => ref _o;

    /// <summary>Gives what follows from the run: a part that let go, a table that ended.</summary>
    /// <returns>The findings; empty where there are none.</returns>
    public IReadOnlyList<Finding> Findings()
    {
        if (FailedPart is { } part) return [new Finding(LinesFindings.PeakBeyondCurve, part.Name, double.NaN, part.Curve.EndForce.Newtons / 1000, "kN")];
        return _o.CurveEnded ? [new Finding(LinesFindings.PeakBeyondCurve, Case.Line.Weakest.Name, double.NaN, Case.Line.EndForce.Newtons / 1000, "kN")] : [];
    }

    /// <summary>Gives the summary in one line, invariant culture.</summary>
    /// <returns>Peak and what happened.</returns>
    public override string ToString() => "peak " + Text.Kilonewtons(_o.Peak) + (FailedPart is { } part ? ", " + part.Name + " lets go" : string.Empty) + (double.IsNaN(_o.BreakOutTime) ? string.Empty : ", breaks out at " + Text.With(_o.BreakOutTime, "s"));

    internal static TakeUpSimulation Run(TakeUpCase take, CancellationToken cancellation)
    {
        var events = new List<TakeUpEvent>();
        var history = take.KeepsHistory ? new List<TakeUpSample>() : null;
        var outcome = TakeUpEngine.Run(take.ToProblem(), history, events, cancellation);
        return new TakeUpSimulation(take, outcome, events.AsReadOnly(), history is null ? [] : history.AsReadOnly());
    }

    private static Duration? At(double seconds) => double.IsNaN(seconds) ? null : Duration.FromSeconds(seconds);
}
