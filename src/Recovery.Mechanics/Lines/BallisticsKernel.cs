using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Flight of a thrown fitting, once. SI.</summary>
/// <remarks>Sources: <see cref="LinesSources.FreeFlight"/>, <see cref="LinesSources.FragmentShape"/>.</remarks>
internal static class BallisticsKernel
{
    /// <summary>Air density at sea level, kg/m3 (standard atmosphere, from memory).</summary>
    public const double AirDensity = 1.225;

    /// <summary>Drag coefficient of a tumbling fragment (assumed, from memory).</summary>
    public const double DragCoefficient = 1.2;

    /// <summary>Shape factor of forged steel fragments, kg/m3 (DDESB TP-12, from memory).</summary>
    public const double ForgedSteelShape = 2600;

    /// <summary>Steps of a flight before it is given up (numerical choice).</summary>
    public const int MostSteps = 100000;

    private const double G = Provenance.PhysicalConstants.StandardGravity;

    /// <summary>Vacuum range from a height: (v cos th/g)(v sin th + sqrt(v^2 sin^2 th + 2 g h)).</summary>
    public static double VacuumRange(double speed, double elevation, double height)
    {
        double up = speed * Math.Sin(elevation), along = speed * Math.Cos(elevation);
        return along / G * (up + Math.Sqrt((up * up) + (2 * G * height)));
    }

    /// <summary>Greatest vacuum range from a height: (v/g) sqrt(v^2 + 2 g h).</summary>
    public static double GreatestVacuumRange(double speed, double height) => speed / G * Math.Sqrt((speed * speed) + (2 * G * height));

    /// <summary>Frontal area from a shape factor, (m/k)^(2/3).</summary>
    public static double FragmentArea(double mass, double shape) => Math.Pow(mass / shape, 2.0 / 3);

    /// <summary>Area that an inert fragment sweeps by bounce, skip, slide and splatter: 7 times its largest projected area (14 CFR Part 417 Appendix C (b)(8)(iv)).</summary>
    public static double SweptArea(double area) => 7 * area;

    /// <summary>Drag per metre b = rho CD A/(2 m).</summary>
    public static double DragPerMetre(double mass, double area, double dragCoefficient, double density) => density * dragCoefficient * area / (2 * mass);

    /// <summary>Terminal speed sqrt(g/b).</summary>
    public static double TerminalSpeed(double dragPerMetre) => Math.Sqrt(G / dragPerMetre);

    /// <summary>Speed after level flight over x without gravity, v0 exp(-b x).</summary>
    public static double LevelSpeed(double speed, double dragPerMetre, double distance) => speed * Math.Exp(-dragPerMetre * distance);

    /// <summary>Vertical rise with drag, ln(1 + v0^2/vt^2)/(2b).</summary>
    public static double Rise(double speed, double dragPerMetre)
    {
        var vt = TerminalSpeed(dragPerMetre);
        return Math.Log(1 + (speed * speed / (vt * vt))) / (2 * dragPerMetre);
    }

    /// <summary>Speed on return from a vertical rise with drag, v0/sqrt(1 + (v0/vt)^2).</summary>
    public static double ReturnSpeed(double speed, double dragPerMetre)
    {
        var r = speed / TerminalSpeed(dragPerMetre);
        return speed / Math.Sqrt(1 + (r * r));
    }

    /// <summary>Range in vacuum at 45 degrees from the ground inverted: v = sqrt(g R).</summary>
    public static double SpeedForRange(double range) => Math.Sqrt(G * range);

    /// <summary>Speed at which a mass carries an energy.</summary>
    public static double SpeedOfEnergy(double energy, double mass) => Math.Sqrt(2 * energy / mass);

    /// <summary>Flight with quadratic drag from a height to the ground at 0: range, speed and time at landing.</summary>
    /// <remarks>dv/dt = -b |v| v - g. The eighth-order method steps; landing is found by shortening the step that goes below the ground until height is zero.</remarks>
    public static Landing Fly(double speed, double elevation, double height, double dragPerMetre)
    {
        var rhs = new Drag(dragPerMetre);
        var y = new OdeState { A = 0, B = height, C = speed * Math.Cos(elevation), D = speed * Math.Sin(elevation) };
        double t = 0, h = 0.05;
        for (var i = 0; i < MostSteps; i++)
        {
            if (!DormandPrince853.TryStep(ref rhs, t, y, h, 1e-12, 1e-9, out var next, out var grow))
            {
                h *= grow;
                continue;
            }

            if (next.B >= 0 || (y.B == 0 && i == 0 && next.D > 0))
            {
                t += h;
                y = next;
                h *= grow;
                continue;
            }

            // Height is negative at the end of the step and not at its start: shorten by regula falsi in the bracket.
            double low = 0, high = h, below = y.B, above = next.B;
            var side = 0;
            var landed = next;
            for (var j = 0; j < 100; j++)
            {
                var s = ((low * above) - (high * below)) / (above - below);
                DormandPrince853.TryStep(ref rhs, t, y, s, double.PositiveInfinity, double.PositiveInfinity, out landed, out _);
                if (Math.Abs(landed.B) < 1e-12 || high - low < 1e-15) return new Landing(landed.A, Math.Sqrt((landed.C * landed.C) + (landed.D * landed.D)), t + s);
                if (landed.B > 0)
                {
                    low = s;
                    below = landed.B;
                    if (side == 1) above /= 2;
                    side = 1;
                }
                else
                {
                    high = s;
                    above = landed.B;
                    if (side == -1) below /= 2;
                    side = -1;
                }
            }

            return new Landing(landed.A, Math.Sqrt((landed.C * landed.C) + (landed.D * landed.D)), t + low);
        }

        return new Landing(double.NaN, double.NaN, double.NaN);
    }

    /// <summary>Elevation at which the range with drag is greatest: from 0 to 50 degrees, where range has one crest.</summary>
    public static double FurthestElevation(double speed, double height, double dragPerMetre) =>
        Provenance.GoldenSection.Crest(elevation => Fly(speed, elevation, height, dragPerMetre).Range, 0, 50 * Math.PI / 180, 1e-7);

    private readonly struct Drag(double dragPerMetre) : IOdeRightHandSide
    {
        public void Evaluate(double t, in OdeState y, out OdeState dy)
        {
            var drag = dragPerMetre * Math.Sqrt((y.C * y.C) + (y.D * y.D));
            dy = new OdeState { A = y.C, B = y.D, C = -drag * y.C, D = (-drag * y.D) - G };
        }
    }
}
