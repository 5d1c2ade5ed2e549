using System;
using System.Collections.Generic;
using System.Threading;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Two masses and a line in time: taut or slack, stuck or sliding, whole or parted. Exact sines and cosines where a mode is linear, the Runge-Kutta pair elsewhere; every change of mode is located, none is stepped over; energy is audited at every step.</summary>
/// <remarks>A step is first cut where the force in the line turns and where it passes the resistance of the sliding casualty, so that force, stretch and casualty speed are monotone within it: then a change of mode lies inside if and only if it shows at the step's end.</remarks>
internal partial struct TakeUpEngine
{
    private const int MostSteps = 2_000_000;

    private TakeUpProblem _p;
    private TakeUpMode _mode;
    private TakeUpOutcome _o;
    private List<TakeUpSample>? _history;
    private List<TakeUpEvent>? _events;
    private OdeState _y;
    private double _t;
    private double _step;
    private double _frequency;
    private double _tiny;
    private double _tinyRate;
    private double _start;
    private double _lost;
    private double _scale;
    private int _direction;
    private bool _parted;
    private bool _done;

    private readonly bool Slides => !double.IsInfinity(_p.Casualty) && (_p.StaticResistance > 0 || _p.KineticResistance > 0);

    private readonly bool IsFree => !double.IsInfinity(_p.Casualty) && !Slides;

    /// <summary>Runs one take-up.</summary>
    public static TakeUpOutcome Run(in TakeUpProblem problem, List<TakeUpSample>? history, List<TakeUpEvent>? events, CancellationToken cancellation)
    {
        var engine = new TakeUpEngine { _p = problem, _history = history, _events = events };
        engine.Begin();
        while (!engine._done)
        {
            if (cancellation.IsCancellationRequested) cancellation.ThrowIfCancellationRequested();
            engine.Advance();
        }

        engine.End();
        return engine._o;
    }

    private void Begin()
    {
        _o = new TakeUpOutcome
        {
            PeakTime = double.NaN,
            FirstPeak = double.NaN,
            FirstPeakTime = double.NaN,
            SecondPeak = double.NaN,
            TautTime = double.NaN,
            BreakOutTime = double.NaN,
            SlackTime = double.NaN,
            SlackPullerSpeed = double.NaN,
            SlackCasualtySpeed = double.NaN,
            FailTime = double.NaN,
        };
        _mode = new TakeUpMode
        {
            Line = _p.Line,
            Drive = _p.Drive,
            Pull = _p.Pull,
            Rise = _p.Rise,
            GearSpeed = _p.GearSpeed,
            SlipExponent = _p.SlipExponent,
            TyreStiffness = _p.TyreStiffness,
            Damping = _p.Damping,
            Puller = _p.Drive == TowDriveKind.Speed ? 0 : 1 / _p.Puller,
            Taut = _p.Bilateral || _p.Stretch >= 0,
            Bilateral = _p.Bilateral,
        };
        _y = new OdeState { A = _p.Stretch, B = _p.Speed, D = _p.CasualtySpeed };
        var slope = CurveKernel.GreatestSlope(_p.Line);
        _frequency = Math.Sqrt(slope * (_mode.Puller + (double.IsInfinity(_p.Casualty) ? 0 : 1 / _p.Casualty)));
        if (_p.Drive is TowDriveKind.LockedGearOnTyres) _frequency = Math.Max(_frequency, Math.Sqrt(_p.TyreStiffness * _mode.Puller));
        var speed = Math.Max(Math.Max(Math.Abs(_p.Speed), Math.Abs(_p.CasualtySpeed)), Math.Max(_p.GearSpeed, _p.Pull * _mode.Puller / Math.Max(_frequency, 1e-3)));
        _tiny = 1e-12 * Math.Max(speed, 1e-6);
        _tinyRate = _mode.Damping == 0 ? _tiny : 100 * _tiny * slope;
        _step = 0.01 / Math.Max(_frequency, 0.1);
        Settle(_y.D == 0 ? 0 : Math.Sign(_y.D));
        if (_mode.Taut && _mode.Tension(_y) > _p.StaticResistance && _direction == 0 && Slides) Settle(1);
        if (_mode.Taut && !_p.Bilateral) _o.TautTime = 0;
        _start = Held(out _);
        Note(_mode.Tension(_y));
        Record();
        _done = !(_p.EndTime > 0);
    }

    /// <summary>Sets the casualty to stuck (0) or sliding one way.</summary>
    private void Settle(int direction)
    {
        _direction = Slides ? direction : 0;
        _mode.Casualty = IsFree || _direction != 0 ? 1 / _p.Casualty : 0;
        _mode.Resistance = _direction * _p.KineticResistance;
    }

    private void Advance()
    {
        if (++_o.Steps > MostSteps) throw new SolverException("take-up", _t, _p.EndTime, _step, _o.Steps);
        var h = Longest();
        OdeState z;
        if (_mode.IsExact) _mode.Propagate(_t, _y, h, out z);
        else
        {
            h = Math.Min(h, _step);
            double grow;
            while (!DormandPrince853.TryStep(ref _mode, _t, _y, h, _p.Tolerance, Absolute(), out z, out grow))
            {
                h *= grow;
                if (h < 1e-13) throw new SolverException("take-up step", _t, _t + h, h, _o.Steps);
                if (++_o.Steps > MostSteps) throw new SolverException("take-up", _t, _p.EndTime, h, _o.Steps);
            }

            _step = h * grow;
        }

        var cross = Locate(ref h, ref z);
        _t += h;
        if (_p.EndTime - _t < 1e-14 * _p.EndTime) _t = _p.EndTime;
        _y = z;
        Note(_mode.Tension(_y));
        Audit();
        Apply(cross);
        Record();
        if (!_done && (_p.Drive is TowDriveKind.Raised or TowDriveKind.LockedGearOnTyres) && _p.Rise > 0 && Math.Abs(_t - _p.Rise) < 1e-13 * _p.Rise)
        {
            _t = _p.Rise;
            Happens(TakeUpEventKind.FullPull);
        }

        if (_t >= _p.EndTime) _done = true;
    }

    private readonly double Absolute() => _p.Tolerance * 1e-2;

    /// <summary>Longest step that cannot hide a turn of the force, and that ends at a corner of the drive.</summary>
    private readonly double Longest()
    {
        var h = _p.EndTime - _t;
        if ((_p.Drive is TowDriveKind.Raised or TowDriveKind.LockedGearOnTyres) && _t < _p.Rise) h = Math.Min(h, _p.Rise - _t);
        var spring = _mode.Taut && _mode.Puller + _mode.Casualty > 0;
        if (spring) h = Math.Min(h, (_history is null ? 0.5 : 0.1) / _frequency);
        if (_p.Drive == TowDriveKind.LockedGearOnTyres) h = Math.Min(h, 0.1 / _frequency);
        if (_history is not null) h = Math.Min(h, _p.EndTime / 100);
        return h;
    }
}
