using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Speeds when a part lets go, once. SI in, SI out. No losses, no credit.</summary>
internal static class RecoilKernel
{
    /// <summary>Margin of the one-third-mass rule over the exact solution.</summary>
    public const double ThirdMassMargin = 1.02;

    /// <summary>Speed of the released line itself, F0/Z.</summary>
    public static double Line(double forceNewtons, double impedance) => forceNewtons / impedance;

    /// <summary>Bound on hardware of mass M at the end of a chain of lines: min(F0/Z_min, 1.02 sqrt(2E/(M + m_1/3))), m_1 the mass of the line it is tied to.</summary>
    public static double ChainEnd(double forceNewtons, double leastImpedance, double energyJoules, double hardwareKilograms, double tiedLineKilograms) =>
        Math.Min(forceNewtons / leastImpedance, ThirdMassMargin * Math.Sqrt(2 * energyJoules / (hardwareKilograms + (tiedLineKilograms / 3))));

    /// <summary>Bound on hardware on the loose end of a bridle that runs through its eye, and on anything else: sqrt(2E/M).</summary>
    public static double EnergyOnly(double energyJoules, double hardwareKilograms) => Math.Sqrt(2 * energyJoules / hardwareKilograms);

    /// <summary>Greatest speed of a fitting over F0/Z for the mass ratio a = m_L/M, far end held: 2 exp(-exp(-2a)/2) - 1 from a = 0.175867; below, the next round trips.</summary>
    public static double FittingRatio(double massRatio)
    {
        if (massRatio >= 0.175867) return (2 * Math.Exp(-Math.Exp(-2 * massRatio) / 2)) - 1;
        // Round trip n: du/dtheta = a (R - u) with R_(n+1) = R_n - 2 u_n. Follow all of it in small exact steps of the fitting equation until its tension R - u reaches zero.
        const int Steps = 4000;
        const double Trip = 2.0;
        var step = Trip / Steps;
        var incoming = new double[Steps + 1];
        for (var i = 0; i <= Steps; i++) incoming[i] = 1;
        double u = 0;
        for (var trip = 0; trip < 200; trip++)
        {
            var next = new double[Steps + 1];
            next[0] = incoming[0] - (2 * u);
            for (var i = 0; i < Steps; i++)
            {
                // Exact over a step for an incoming wave that is linear in time.
                double r0 = incoming[i], r1 = incoming[i + 1], e = Math.Exp(-massRatio * step), slope = (r1 - r0) / step;
                var before = u;
                u = r1 - (slope / massRatio) + ((before - r0 + (slope / massRatio)) * e);
                if (r1 - u <= 0) return Math.Max(before, u);
                next[i + 1] = r1 - (2 * u);
            }

            incoming = next;
        }

        return u;
    }
}
