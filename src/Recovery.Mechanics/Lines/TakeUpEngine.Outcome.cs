using System;

namespace Recovery.Mechanics.Lines;

/// <content>What a change of mode does, and what is kept of the run.</content>
internal partial struct TakeUpEngine
{
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
