using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Peak of a take-up on any load-elongation curve, once. SI. Not a number where a table ends before the energy is taken up.</summary>
/// <remarks>Sources: <see cref="LinesSources.HeldAnchor"/>, <see cref="LinesSources.LockedGear"/>.</remarks>
internal static class CurveTakeUpKernel
{
    /// <summary>Held anchor: stretch at which E(x) = P x + P s + m v^2/2.</summary>
    public static double HeldStretch(in CurveShape line, double pull, double mass, double speed, double slack)
    {
        var energy = (mass * speed * speed / 2) + (pull * slack);
        if (line.IsLinear) return TakeUpKernel.HeldPeak(pull, line.LinearStiffness, mass, speed, slack) / line.LinearStiffness;
        if (pull == 0 && energy == 0) return 0;
        if (pull == 0 && line.Kind == CurveKind.Power) return PowerStretch(line, energy);
        return Balance(line, CurveKernel.Stretch(line, pull), pull, energy);
    }

    /// <summary>Locked gear: stretch at which the area between curve and P, from F = P on, is m v_t^2/2.</summary>
    public static double LockedGearStretch(in CurveShape line, double pull, double mass, double theoreticalSpeed)
    {
        if (line.IsLinear) return TakeUpKernel.LockedGearPeak(pull, line.LinearStiffness, mass, theoreticalSpeed) / line.LinearStiffness;
        if (line.Kind == CurveKind.Table && pull > line.EndForce) return double.NaN;
        var from = CurveKernel.Stretch(line, pull);
        return Balance(line, from, pull, (mass * theoreticalSpeed * theoreticalSpeed / 2) + CurveKernel.Energy(line, from) - (pull * from));
    }

    /// <summary>Held anchor: square of the speed at the start of the slack at which the peak is a limit, 2 (E(x) - P (x + s))/m with F(x) the limit; negative where none keeps it.</summary>
    public static double HeldSpeedSquared(in CurveShape line, double limit, double pull, double mass, double slack)
    {
        if (line.IsLinear) return TakeUpKernel.HeldSpeedSquared(limit, pull, line.LinearStiffness, mass, slack);
        if (limit < pull) return -1;
        var x = CurveKernel.Stretch(line, limit);
        return 2 * (CurveKernel.Energy(line, x) - (pull * (x + slack))) / mass;
    }

    /// <summary>Locked gear: square of the gear speed at which the peak is a limit, twice the area between curve and P from F = P to the limit over m; negative where none keeps it.</summary>
    public static double GearSpeedSquared(in CurveShape line, double limit, double pull, double mass)
    {
        if (limit < pull) return -1;
        if (line.IsLinear)
        {
            var speed = TakeUpKernel.GearSpeedLimit(limit, pull, line.LinearStiffness, mass);
            return speed * speed;
        }

        double from = CurveKernel.Stretch(line, pull), to = CurveKernel.Stretch(line, limit);
        return 2 * (CurveKernel.Energy(line, to) - CurveKernel.Energy(line, from) - (pull * (to - from))) / mass;
    }

    /// <summary>No pull, F = K x^n: x = ((n + 1) E/K)^(1/(n + 1)).</summary>
    public static double PowerStretch(in CurveShape line, double energy)
    {
        // E = Fb xb/(n + 1) (x/xb)^(n + 1).
        var atEnd = line.EndForce * line.EndStretch / (line.Exponent + 1);
        return line.EndStretch * Math.Pow(energy / atEnd, 1 / (line.Exponent + 1));
    }

    /// <summary>Contact time over x_m/v of a power law without pull: 2 I, I = sqrt(pi) Gamma(1 + 1/(n + 1))/Gamma(1/2 + 1/(n + 1)).</summary>
    public static double ContactFactor(double exponent)
    {
        var p = 1 / (exponent + 1);
        return 2 * Math.Sqrt(Math.PI) * Math.Exp(MathNet.Numerics.SpecialFunctions.GammaLn(1 + p) - MathNet.Numerics.SpecialFunctions.GammaLn(0.5 + p));
    }

    /// <summary>Root of E(x) - P x - energy beyond the stretch at which F = P, where it only rises.</summary>
    private static double Balance(in CurveShape line, double from, double pull, double energy)
    {
        double low = from, high = Math.Max(from, line.EndStretch);
        if (line.Kind != CurveKind.Power && !(Residual(line, high, pull, energy) >= 0)) return double.NaN;
        while (Residual(line, high, pull, energy) < 0) high *= 2;
        // Newton from above on a convex rising residual, inside the bracket.
        var x = high;
        for (var i = 0; i < 200; i++)
        {
            var residual = Residual(line, x, pull, energy);
            if (residual > 0) high = x;
            else low = x;
            var slope = CurveKernel.Force(line, x) - pull;
            var next = slope > 0 ? x - (residual / slope) : double.NaN;
            if (!(next > low && next < high)) next = (low + high) / 2;
            if (Math.Abs(next - x) <= 4e-16 * x || high - low <= 4e-16 * high) return next;
            x = next;
        }

        return x;
    }

    private static double Residual(in CurveShape line, double x, double pull, double energy) => CurveKernel.Energy(line, x) - (pull * x) - energy;
}
