using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Speeds when a part lets go, once. SI in, SI out. No losses, no credit.</summary>
/// <remarks>Sources: <see cref="LinesSources.ReleaseWave"/>, <see cref="LinesSources.HardwareBound"/>, <see cref="LinesSources.FittingWave"/>, <see cref="LinesSources.EnergyBound"/>.</remarks>
internal static class RecoilKernel
{
    /// <summary>Margin of the one-third-mass rule over the exact solution.</summary>
    public const double ThirdMassMargin = 1.02;

    /// <summary>Root of exp(-2a) = 4a: from here on the fitting reaches its greatest speed in the first round trip after the first pass.</summary>
    public const double OneTripRatio = 0.17586685562459797;

    /// <summary>Mass ratio below which the one-third-mass rule stands for the exact function; the two differ there by less than 1e-4.</summary>
    private const double LeastExactRatio = 0.01;

    private const int MostTrips = 16;

    /// <summary>Speed of the released line itself, F0/Z.</summary>
    public static double Line(double forceNewtons, double impedance) => forceNewtons / impedance;

    /// <summary>Tip of a stiffening line F ~ eps^n: [2 sqrt(n)/(n + 1)] sqrt(F0 eps0/m').</summary>
    public static double StiffeningTip(double forceNewtons, double strain, double exponent, double massPerMetre) =>
        2 * Math.Sqrt(exponent) / (exponent + 1) * Math.Sqrt(forceNewtons * strain / massPerMetre);

    /// <summary>Fitting before the wave is back from the held end: (F0/Z)(1 - exp(-Z t/M)), t up to 2 L/c0.</summary>
    public static double FirstPass(double forceNewtons, double impedance, double hardwareKilograms, double seconds) =>
        forceNewtons / impedance * (1 - Math.Exp(-impedance * seconds / hardwareKilograms));

    /// <summary>Travel of a fitting to a share of its first-pass speed: (M/Z)(F0/Z)(ln(1/(1 - share)) - share).</summary>
    public static double TravelTo(double share, double forceNewtons, double impedance, double hardwareKilograms) =>
        hardwareKilograms / impedance * (forceNewtons / impedance) * (Math.Log(1 / (1 - share)) - share);

    /// <summary>One-third-mass rule in units of F0/Z: sqrt(1/(1/a + 1/3)).</summary>
    public static double ThirdMassRatio(double massRatio) => Math.Sqrt(1 / ((1 / massRatio) + (1.0 / 3)));

    /// <summary>Bound on hardware of mass M at the end of a chain of lines: min(F0/Z_min, 1.02 sqrt(2E/(M + m_1/3))), m_1 the mass of the line it is tied to.</summary>
    public static double ChainEnd(double forceNewtons, double leastImpedance, double energyJoules, double hardwareKilograms, double tiedLineKilograms) =>
        Math.Min(forceNewtons / leastImpedance, ThirdMassMargin * Math.Sqrt(2 * energyJoules / (hardwareKilograms + (tiedLineKilograms / 3))));

    /// <summary>Bound on hardware on the loose end of a bridle that runs through its eye, and on anything else: sqrt(2E/M).</summary>
    public static double EnergyOnly(double energyJoules, double hardwareKilograms) => Math.Sqrt(2 * energyJoules / hardwareKilograms);

    /// <summary>Bound on the loose end of a running bridle of which no mass is known: twice the speed F0/Z of the line, as the loose end moves twice as fast as the eye.</summary>
    public static double LooseBridleEnd(double lineMetresPerSecond) => 2 * lineMetresPerSecond;

    /// <summary>Greatest speed of a fitting over F0/Z for the mass ratio a = m_L/M, far end held, line bearing tension only.</summary>
    /// <remarks>Exact: 2 exp(-exp(-2a)/2) - 1 from a = 0.1759. Below it the round trips are followed: in trip n, u = c + e^(-a theta) q and incoming R = c + e^(-a theta) p with polynomials p, q, q' = a p;
    /// the tension R - u ends where p - q does; then c changes sign and p becomes p - 2 q.</remarks>
    public static double FittingRatio(double massRatio)
    {
        if (massRatio >= OneTripRatio) return (2 * Math.Exp(-Math.Exp(-2 * massRatio) / 2)) - 1;
        if (massRatio < LeastExactRatio) return ThirdMassRatio(massRatio);
        Span<double> p = stackalloc double[MostTrips + 2];
        Span<double> q = stackalloc double[MostTrips + 2];
        p.Clear();
        q.Clear();
        double c = 1, u = 0;
        for (var trip = 0; trip < MostTrips; trip++)
        {
            for (var i = trip; i >= 0; i--) q[i + 1] = massRatio * p[i] / (i + 1);
            q[0] = u - c;
            // Tension at the start of a trip is positive; the first zero within it ends the push.
            if (Difference(p, q, 2, trip + 1) <= 0) return c + (Math.Exp(-massRatio * Zero(p, q, trip + 1, out var theta)) * Polynomial(q, theta, trip + 1));
            u = c + (Math.Exp(-2 * massRatio) * Polynomial(q, 2, trip + 1));
            c = -c;
            for (var i = 0; i <= trip + 1; i++) p[i] -= 2 * q[i];
        }

        return ThirdMassRatio(massRatio);
    }

    private static double Zero(ReadOnlySpan<double> p, ReadOnlySpan<double> q, int degree, out double theta)
    {
        double low = 0, high = 2;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Difference(p, q, middle, degree) > 0) low = middle;
            else high = middle;
        }

        theta = (low + high) / 2;
        return theta;
    }

    private static double Difference(ReadOnlySpan<double> p, ReadOnlySpan<double> q, double theta, int degree) => Polynomial(p, theta, degree) - Polynomial(q, theta, degree);

    private static double Polynomial(ReadOnlySpan<double> coefficients, double x, int degree)
    {
        double sum = 0;
        for (var i = degree; i >= 0; i--) sum = (sum * x) + coefficients[i];
        return sum;
    }
}
