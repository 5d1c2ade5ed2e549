using System;
using System.Collections.Generic;
using System.Threading;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Two masses and a line in time: taut or slack, stuck or sliding, whole or parted. Exact sines and cosines where a mode is linear, the Runge-Kutta pair elsewhere; every change of mode is located, none is stepped over; energy is audited at every step.</summary>
/// <remarks>A step is first cut where the force in the line turns and where it passes the resistance of the sliding casualty, so that force, stretch and casualty speed are monotone within it: then a change of mode lies inside if and only if it shows at the step's end.</remarks>
internal struct TakeUpEngine
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

    /// <summary>What a located change of mode is.</summary>
    private enum Cross
    {
        None,
        Turn,
        Balance,
        Taut,
        Slack,
        BreakOut,
        BreakBack,
        Stop,
        Fail,
        CurveEnd,
        GearSpeed,
        Standstill,
        TyreSlides,
        TyreGrips,
    }

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

    private Cross Locate(ref double h, ref OdeState z)
    {
        var cross = Cross.None;
        Cut(Cross.Turn, _mode.Rate(_y, _t), _mode.Rate(z, _t + h), _tinyRate, ref h, ref z, ref cross);
        if (_direction != 0 && _mode.Taut) Cut(Cross.Balance, _mode.Tension(_y) - _mode.Resistance, _mode.Tension(z) - _mode.Resistance, 1e-12 * _p.StaticResistance, ref h, ref z, ref cross);
        if (_p.Drive == TowDriveKind.LockedGear)
        {
            Cut(Cross.GearSpeed, _y.B - _p.GearSpeed, z.B - _p.GearSpeed, _tiny, ref h, ref z, ref cross);
            Cut(Cross.Standstill, _y.B, z.B, _tiny, ref h, ref z, ref cross);
        }

        if (_p.Drive == TowDriveKind.LockedGearOnTyres)
        {
            if (_mode.TyreSlides == 0 && Math.Abs(z.E) > _p.Pull) End(Cross.TyreSlides, ref h, ref z, ref cross);
            else if (_mode.TyreSlides != 0 && Value(Cross.TyreGrips, z, _t + h) < 0) End(Cross.TyreGrips, ref h, ref z, ref cross);
        }

        double stretch = z.A - z.C, tension = _mode.Tension(z);
        if (_mode.Taut)
        {
            // Each of these moves the end of the step nearer, so what is left is the first one.
            if (tension > _p.FailForce) End(Cross.Fail, ref h, ref z, ref cross);
            if (_p.Line.Kind != CurveKind.Power && z.A - z.C > _p.Line.EndStretch) End(Cross.CurveEnd, ref h, ref z, ref cross);
            if (_direction == 0 && Slides)
            {
                if (_mode.Tension(z) > _p.StaticResistance) End(Cross.BreakOut, ref h, ref z, ref cross);
                else if (_mode.Tension(z) < -_p.StaticResistance) End(Cross.BreakBack, ref h, ref z, ref cross);
            }

            if (!_p.Bilateral && (_mode.Damping == 0 ? z.A - z.C : _mode.Tension(z)) < 0) End(Cross.Slack, ref h, ref z, ref cross);
        }
        else if (!_parted && stretch > 0)
        {
            End(Cross.Taut, ref h, ref z, ref cross);
        }

        if (_direction != 0) Rest(ref h, ref z, ref cross);
        return cross;
    }

    /// <summary>Looks for the sliding casualty coming to rest within the step.</summary>
    private void Rest(ref double h, ref OdeState z, ref Cross cross)
    {
        double before = _direction * _y.D, after = _direction * z.D;
        if (after < -_tiny)
        {
            // Where it never got going within rounding, it stops where it is.
            if (before > 0) End(Cross.Stop, ref h, ref z, ref cross);
            else Make(h = 0, out z);
            cross = Cross.Stop;
        }
        else if (after <= _tiny && before > _tiny && cross is Cross.None or Cross.Balance)
        {
            cross = Cross.Stop;
        }
    }

    /// <summary>Cuts the step at a change of sign.</summary>
    private void Cut(Cross kind, double from, double to, double tiny, ref double h, ref OdeState z, ref Cross cross)
    {
        if (Math.Abs(from) <= tiny) return;
        if (Math.Abs(to) > tiny)
        {
            if (from * to > 0) return;
            Find(kind, from, to, ref h, ref z);
            cross = kind;
        }
        else if (cross == Cross.None)
        {
            cross = kind;
        }
    }

    private void End(Cross kind, ref double h, ref OdeState z, ref Cross cross)
    {
        double from = Value(kind, _y, _t), to = Value(kind, z, _t + h);
        if (from * to < 0) Find(kind, from, to, ref h, ref z);
        cross = kind;
    }

    private readonly double Value(Cross kind, in OdeState y, double t) => kind switch
    {
        Cross.Turn => _mode.Rate(y, t),
        Cross.Balance => _mode.Tension(y) - _mode.Resistance,
        Cross.BreakOut => _mode.Tension(y) - _p.StaticResistance,
        Cross.BreakBack => _mode.Tension(y) + _p.StaticResistance,
        Cross.Slack => _mode.Damping == 0 ? y.A - y.C : _mode.Tension(y),
        Cross.Taut => y.A - y.C,
        Cross.Stop => y.D,
        Cross.Fail => _mode.Tension(y) - _p.FailForce,
        Cross.CurveEnd => y.A - y.C - _p.Line.EndStretch,
        Cross.GearSpeed => y.B - _p.GearSpeed,
        Cross.TyreSlides => Math.Abs(y.E) - _p.Pull,
        Cross.TyreGrips => (_mode.TyreSlides * (_mode.Rim(t) - y.B)) - _p.GearSpeed,
        _ => y.B,
    };

    /// <summary>Root of a crossing as a step length: the step itself is made again at every trial, exact or with the pair, so no interpolation error enters.</summary>
    private void Find(Cross kind, double from, double to, ref double h, ref OdeState z)
    {
        double low = 0, high = h;
        var side = 0;
        for (var i = 0; i < 120; i++)
        {
            var s = ((low * to) - (high * from)) / (to - from);
            if (!(s > low && s < high)) s = (low + high) / 2;
            Make(s, out z);
            h = s;
            var value = Value(kind, z, _t + s);
            if (value == 0 || high - low <= 1e-15 * (_t + high)) return;
            if ((value > 0) == (to > 0))
            {
                high = s;
                to = value;
                if (side == 1) from /= 2;
                side = 1;
            }
            else
            {
                low = s;
                from = value;
                if (side == -1) to /= 2;
                side = -1;
            }

            if (i > 60) from = Math.Sign(from) * Math.Abs(to);
        }
    }

    private void Make(double h, out OdeState z)
    {
        if (_mode.IsExact) _mode.Propagate(_t, _y, h, out z);
        else DormandPrince853.TryStep(ref _mode, _t, _y, h, double.PositiveInfinity, double.PositiveInfinity, out z, out _);
    }

    private void Apply(Cross cross)
    {
        switch (cross)
        {
            case Cross.Turn:
                if (_mode.Taut && Turned()) Peak();
                if (_direction != 0 && Math.Abs(_y.D) <= _tiny * 10) Stop();
                break;
            case Cross.Stop:
                Stop();
                break;
            case Cross.BreakOut:
            case Cross.BreakBack:
                _y.D = 0;
                Settle(cross == Cross.BreakOut ? 1 : -1);
                if (double.IsNaN(_o.BreakOutTime)) _o.BreakOutTime = _t;
                Happens(TakeUpEventKind.BreakOut);
                break;
            case Cross.Taut:
                _y.A = _y.C;
                _mode.Taut = true;
                _step = Math.Min(_step, 0.01 / _frequency);
                if (double.IsNaN(_o.TautTime)) _o.TautTime = _t;
                Happens(TakeUpEventKind.Taut);
                break;
            case Cross.Slack:
                if (_mode.Damping == 0) _y.A = _y.C;
                if (double.IsNaN(_o.SlackTime))
                {
                    _o.SlackTime = _t;
                    _o.SlackPullerSpeed = _y.B;
                    _o.SlackCasualtySpeed = _y.D;
                }

                _mode.Taut = false;
                Happens(TakeUpEventKind.Slack);
                // What a line with a dashpot does once it is slack is not modelled.
                _done = _p.EndAtSlack || _mode.Damping > 0;
                break;
            case Cross.Fail:
                Happens(TakeUpEventKind.Parts);
                _o.FailTime = _t;
                _lost = CurveKernel.Energy(_p.Line, _y.A - _y.C);
                _parted = true;
                _mode.Taut = false;
                break;
            case Cross.TyreSlides:
                _mode.TyreSlides = Math.Sign(_y.E);
                _y.E = _mode.TyreSlides * _p.Pull;
                break;
            case Cross.TyreGrips:
                _mode.TyreSlides = 0;
                break;
            case Cross.CurveEnd:
                Happens(TakeUpEventKind.CurveEnds);
                _o.CurveEnded = true;
                _done = true;
                break;
            default:
                break;
        }
    }

    /// <summary>Whether the force passed a maximum and not a minimum: it falls from here.</summary>
    private readonly bool Turned()
    {
        var f = _mode.Tension(_y);
        return (_mode.Puller * (_mode.Force(_t, _y) - f)) - (_mode.Casualty * (f - _mode.Resistance)) < 0;
    }

    private void Peak()
    {
        var f = _mode.Tension(_y);
        if (double.IsNaN(_o.FirstPeak))
        {
            _o.FirstPeak = f;
            _o.FirstPeakTime = _t;
        }
        else if (double.IsNaN(_o.SecondPeak))
        {
            _o.SecondPeak = f;
        }

        Happens(TakeUpEventKind.Peak);
    }

    private void Stop()
    {
        _y.D = 0;
        var f = _mode.Tension(_y);
        Settle(f > _p.StaticResistance ? 1 : f < -_p.StaticResistance ? -1 : 0);
        if (_direction == 0) Happens(TakeUpEventKind.Stops);
    }

    private void Note(double tension)
    {
        if (tension > _o.Peak)
        {
            _o.Peak = tension;
            _o.PeakTime = _t;
            _o.PeakStretch = _y.A - _y.C;
        }

        _o.CasualtyGreatestSpeed = Math.Max(_o.CasualtyGreatestSpeed, Math.Abs(_y.D));
    }

    /// <summary>Kinetic and stored energy now.</summary>
    private readonly double Held(out double stored)
    {
        var x = _y.A - _y.C;
        stored = !_mode.Taut ? 0 : _p.Bilateral ? _p.Line.LinearStiffness * x * x / 2 : CurveKernel.Energy(_p.Line, x);
        var kinetic = _p.Drive == TowDriveKind.Speed ? 0 : _p.Puller * _y.B * _y.B / 2;
        if (!double.IsInfinity(_p.Casualty)) kinetic += _p.Casualty * _y.D * _y.D / 2;
        return kinetic + stored;
    }

    private void Audit()
    {
        var held = Held(out var stored);
        _o.GreatestLineEnergy = Math.Max(_o.GreatestLineEnergy, stored);
        _scale = Math.Max(_scale, Math.Max(Math.Max(held, _start), Math.Abs(_y.F)));
        if (_scale > 0) _o.EnergyError = Math.Max(_o.EnergyError, Math.Abs(held + _lost + _y.G - _y.F - _start) / _scale);
    }

    private readonly void Happens(TakeUpEventKind kind) => _events?.Add(new TakeUpEvent(kind, _t, _mode.Tension(_y)));

    private readonly void Record() => _history?.Add(new TakeUpSample(_t, _y.A, _y.B, _y.C, _y.D, _mode.Tension(_y)));

    private void End()
    {
        _o.EndTime = _t;
        _o.PullerTravel = _y.A - _p.Stretch;
        _o.CasualtyTravel = _y.C;
        _o.Heat = _y.G;
        _o.Work = _y.F;
    }
}
