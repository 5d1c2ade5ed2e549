using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Cone index at which a machine just moves itself: greatest net traction at slip up to 0.30 on full wheel loads equals the grade force.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.Brixius"/>; the bounds of the search are judgement.</remarks>
internal static class CriticalIndexKernel
{
    /// <summary>Slip that a machine is planned with at the most (judgement; unlimited slip is optimistic in every model).</summary>
    public const double PlanningSlip = 0.30;

    /// <summary>Softest soil that is searched, Pa (judgement).</summary>
    public const double LowestPascals = 1e3;

    /// <summary>Firmest soil that is searched, Pa (judgement).</summary>
    public const double HighestPascals = 2e7;

    /// <summary>Net traction at the best slip, less the grade force, at one cone index.</summary>
    public static double Surplus(double coneIndexPascals, ReadOnlySpan<double> numericPerPascal, ReadOnlySpan<double> axleLoads, ReadOnlySpan<bool> driven, double gradeForce, in BrixiusConstants constants)
    {
        var sum = default(TractionSum);
        for (var i = 0; i < axleLoads.Length; i++) sum.Add(coneIndexPascals * numericPerPascal[i], axleLoads[i], driven[i], constants);
        return sum.At(sum.BestSlip(PlanningSlip, constants), constants) - gradeForce;
    }

    /// <summary>The critical cone index, Pa; not a number where no soil would do. Regula falsi (Illinois) in the logarithm, to 1e-9 relative.</summary>
    public static double Find(ReadOnlySpan<double> numericPerPascal, ReadOnlySpan<double> axleLoads, ReadOnlySpan<bool> driven, double gradeForce, in BrixiusConstants constants)
    {
        double a = Math.Log(5e4), b = Math.Log(1e6);
        double fa = Surplus(Math.Exp(a), numericPerPascal, axleLoads, driven, gradeForce, constants), fb = Surplus(Math.Exp(b), numericPerPascal, axleLoads, driven, gradeForce, constants);
        while (fa > 0 && a > Math.Log(LowestPascals))
        {
            a -= 1;
            fa = Surplus(Math.Exp(a), numericPerPascal, axleLoads, driven, gradeForce, constants);
        }

        while (fb < 0)
        {
            if (b > Math.Log(HighestPascals)) return double.NaN;
            b += 1;
            fb = Surplus(Math.Exp(b), numericPerPascal, axleLoads, driven, gradeForce, constants);
        }

        if (fa > 0) return Math.Exp(a);
        for (var i = 0; i < 60 && b - a > 1e-10; i++)
        {
            var c = ((a * fb) - (b * fa)) / (fb - fa);
            if (!(c > a && c < b)) c = 0.5 * (a + b);
            var fc = Surplus(Math.Exp(c), numericPerPascal, axleLoads, driven, gradeForce, constants);
            if (Math.Abs(fc) < 1e-6) return Math.Exp(c);
            if (fc > 0)
            {
                b = c;
                fb = fc;
                fa *= 0.5;
            }
            else
            {
                a = c;
                fa = fc;
                fb *= 0.5;
            }
        }

        return Math.Exp(0.5 * (a + b));
    }
}
