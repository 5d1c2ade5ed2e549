using System;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>What a towing machine pulls, once: net traction of all wheels with the load that the pull transfers. SI in, SI out, no allocation.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.Brixius"/>; residuals of the search, N, are a numerical choice; composition is judgement (<see cref="TractionSources.TwoPulls"/>).</remarks>
internal static class CapabilityKernel
{
    /// <summary>Greatest residual of the equation of pull that counts as solved, N.</summary>
    public const double AcceptedResidual = 1e-3;

    private const double SoughtResidual = 1e-7;

    /// <summary>Sums the wheels at a pull. An axle that would lift carries nothing; the others then carry all.</summary>
    /// <param name="f">The machine.</param>
    /// <param name="loads">Axle loads without a pull: <see cref="CapabilityFlat.Load"/> or <see cref="CapabilityFlat.LevelLoad"/>.</param>
    /// <param name="coneIndexPascals">Cone index fed to the model.</param>
    /// <param name="pull">Pull along the ground.</param>
    /// <param name="constants">Constants of the wheel model.</param>
    public static TractionSum Wheels(CapabilityFlat f, double[] loads, double coneIndexPascals, double pull, in BrixiusConstants constants)
    {
        var sum = default(TractionSum);
        var share = Share(f, loads, pull);
        for (var i = 0; i < loads.Length; i++)
        {
            var load = (loads[i] + (f.LoadPerPull[i] * pull)) * share;
            if (load > 0) sum.Add(coneIndexPascals * f.NumericTimesLoad[i] * f.Count[i] / load, load, f.Driven[i], constants);
        }

        return sum;
    }

    /// <summary>Greatest steady pull at slip up to a limit: P = NT(P) - W sin(theta), solved together with the load transfer. Never below zero.</summary>
    /// <param name="f">The machine.</param>
    /// <param name="loads">Axle loads without a pull.</param>
    /// <param name="gradeForce">Weight component against the pull.</param>
    /// <param name="coneIndexPascals">Cone index fed to the model.</param>
    /// <param name="slipLimit">Greatest slip.</param>
    /// <param name="constants">Constants of the wheel model.</param>
    /// <param name="slip">Receives the slip at that pull.</param>
    /// <param name="residual">Receives what is left of the equation, N.</param>
    public static double Greatest(CapabilityFlat f, double[] loads, double gradeForce, double coneIndexPascals, double slipLimit, in BrixiusConstants constants, out double slip, out double residual) =>
        Math.Max(0, Solve(f, loads, gradeForce, coneIndexPascals, slipLimit, best: true, constants, out slip, out residual));

    /// <summary>Traction that a machine sustains on a cone index: greatest pull at slip up to 0.30, bias constants, on the grade where it stands.</summary>
    public static double Traction(CapabilityFlat f, double coneIndexPascals, out double slip, out double residual) =>
        Greatest(f, f.Load, f.GradeForce, coneIndexPascals, CriticalIndexKernel.PlanningSlip, BrixiusConstants.Bias, out slip, out residual);

    /// <summary>Pull that a machine sustains: the least of traction, power at the stated speed, nose lift, overturning sideways and rating. Never below zero.</summary>
    public static double Sustained(double traction, double power, double nose, double side, double rating, out PullLimit limit)
    {
        var least = traction;
        limit = PullLimit.Traction;
        if (power < least) (least, limit) = (power, PullLimit.Power);
        if (nose < least) (least, limit) = (nose, PullLimit.NoseLift);
        if (side < least) (least, limit) = (side, PullLimit.Overturn);
        if (rating < least) (least, limit) = (rating, PullLimit.Rating);
        return Math.Max(0, least);
    }

    /// <summary>Pull that power allows with a factor on the power at the wheels: the grade and a machine ahead take no part in it. Infinite where power is not known.</summary>
    public static double Power(CapabilityFlat f, double factor) => Math.Max(0, (f.PowerForce * factor) - f.GradeForce);

    /// <summary>Pull at a given slip, load transfer solved with it; negative where the machine does not move even itself (no line is taut then, so nothing is transferred).</summary>
    public static double AtSlip(CapabilityFlat f, double coneIndexPascals, double slip, in BrixiusConstants constants, out double residual) =>
        Solve(f, f.Load, f.GradeForce, coneIndexPascals, slip, best: false, constants, out _, out residual);

    /// <summary>Least slip at which a wanted pull is reached; -1 where it is out of reach at any slip. The pull fixes the loads, so one equation in the slip remains.</summary>
    public static double SlipAt(CapabilityFlat f, double coneIndexPascals, double pull, in BrixiusConstants constants, out double residual)
    {
        var sum = Wheels(f, f.Load, coneIndexPascals, pull, constants);
        double wanted = pull + f.GradeForce, low = 0, high = sum.BestSlip(1, constants);
        residual = 0;
        if (sum.At(high, constants) < wanted) return -1;
        if (sum.At(0, constants) >= wanted) return 0;
        double slip = 0;
        for (var i = 0; i < 60; i++)
        {
            slip = 0.5 * (low + high);
            residual = sum.At(slip, constants) - wanted;
            if (Math.Abs(residual) <= SoughtResidual) break;
            if (residual < 0) low = slip;
            else high = slip;
        }

        return slip;
    }

    /// <summary>Gross traction at a pull and a slip, without the losses of motion: what the wheels put to the ground.</summary>
    public static double Gross(CapabilityFlat f, double coneIndexPascals, double pull, double slip, in BrixiusConstants constants)
    {
        var share = Share(f, f.Load, pull);
        double gross = 0;
        for (var i = 0; i < f.Load.Length; i++)
        {
            var load = (f.Load[i] + (f.LoadPerPull[i] * pull)) * share;
            if (load > 0 && f.Driven[i]) gross += load * BrixiusKernel.GrossTractionRatio(coneIndexPascals * f.NumericTimesLoad[i] * f.Count[i] / load, slip, constants);
        }

        return gross;
    }

    /// <summary>Share of the positive axle loads that remains once an axle has lifted, so that they still sum to what stands on the ground; 1 while all stand.</summary>
    internal static double Share(CapabilityFlat f, double[] loads, double pull)
    {
        double borne = 0, lifted = 0;
        for (var i = 0; i < loads.Length; i++)
        {
            var load = loads[i] + (f.LoadPerPull[i] * pull);
            if (load > 0) borne += load;
            else lifted += load;
        }

        return lifted == 0 ? 1 : borne + lifted > 0 ? (borne + lifted) / borne : 0;
    }

    private static double Solve(CapabilityFlat f, double[] loads, double gradeForce, double coneIndexPascals, double slipOrLimit, bool best, in BrixiusConstants constants, out double slip, out double residual)
    {
        // h(P) = NT(P) - W sin(theta) - P falls with a slope near -1: the transfer changes NT by a few per cent of P. Secant inside a bracket that every step narrows.
        double low = 0, hLow = Net(f, loads, gradeForce, coneIndexPascals, 0, slipOrLimit, best, constants, out slip);
        residual = 0;
        if (!(hLow > 0)) return hLow;
        double high = double.PositiveInfinity, p0 = 0, h0 = hLow, p1 = hLow, h1 = 0;
        for (var i = 0; i < 80; i++)
        {
            h1 = Net(f, loads, gradeForce, coneIndexPascals, p1, slipOrLimit, best, constants, out slip) - p1;
            if (Math.Abs(h1) <= SoughtResidual) break;
            if (h1 > 0) low = p1;
            else high = p1;
            var next = p1 - (h1 * (p1 - p0) / (h1 - h0));
            if (!(next > low && next < high)) next = double.IsInfinity(high) ? 2 * p1 : 0.5 * (low + high);
            (p0, h0, p1) = (p1, h1, next);
        }

        residual = h1;
        return p1;
    }

    private static double Net(CapabilityFlat f, double[] loads, double gradeForce, double coneIndexPascals, double pull, double slipOrLimit, bool best, in BrixiusConstants constants, out double slip)
    {
        var sum = Wheels(f, loads, coneIndexPascals, pull, constants);
        slip = best ? sum.BestSlip(slipOrLimit, constants) : slipOrLimit;
        return sum.At(slip, constants) - gradeForce;
    }
}
