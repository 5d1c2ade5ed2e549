using System;

namespace Recovery.Mechanics.Lines;

/// <content>Finding where the mode changes within a step.</content>
internal partial struct TakeUpEngine
{
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
        // The step before ended on the very number: it happens now, and not at the end of this step.
        else if (from == 0 && kind is (Cross.BreakOut or Cross.BreakBack or Cross.Fail or Cross.CurveEnd)) Make(h = 0, out z);
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

    /// <summary>Root of a crossing as a step length: the step itself is made again at every trial, exact or with the pair, so no interpolation error enters. Ends on the far side of the root, so that the next step does not meet it again.</summary>
    private void Find(Cross kind, double from, double to, ref double h, ref OdeState z)
    {
        double low = 0, high = h;
        var side = 0;
        for (var i = 0; i < 120; i++)
        {
            var resolution = 1e-15 * (_t + high);
            if (high - low <= resolution) break;
            var s = ((low * to) - (high * from)) / (to - from);
            // Where the root is about to be met, the trial is set a hair beyond it, to end the bracket from the far side.
            if (i > 2 && side < 0) s += resolution / 2;
            if (!(s > low && s < high) || i > 40) s = (low + high) / 2;
            Make(s, out z);
            h = s;
            var value = Value(kind, z, _t + s);
            if (value == 0) return;
            // Anderson and Bjorck: an end that is met twice running is weighed by how far the value fell.
            if ((value > 0) == (to > 0))
            {
                if (side == 1) from *= Weight(value, to);
                high = s;
                to = value;
                side = 1;
            }
            else
            {
                if (side == -1) to *= Weight(value, from);
                low = s;
                from = value;
                side = -1;
            }
        }

        h = high;
        Make(h, out z);
    }

    private static double Weight(double value, double before)
    {
        var m = 1 - (value / before);
        return m > 0 ? m : 0.5;
    }

    private void Make(double h, out OdeState z)
    {
        if (_mode.IsExact) _mode.Propagate(_t, _y, h, out z);
        else DormandPrince853.TryStep(ref _mode, _t, _y, h, double.PositiveInfinity, double.PositiveInfinity, out z, out _);
    }
}
