using System;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>What a towing machine pulls, once: net traction of all wheels with the load that the pull transfers. SI in, SI out.</summary>
internal static class CapabilityKernel
{
    /// <summary>Greatest net traction over load on a hard surface (reported).</summary>
    public const double HardSurfaceRatio = 1.02;

    /// <summary>Share of the nose moment above which the front axle is a caution (judgement).</summary>
    public const double NoseCaution = 0.8;

    /// <summary>Sums the wheels at a pull.</summary>
    public static TractionSum Wheels(CapabilityFlat f, double coneIndexPascals, double pull, in BrixiusConstants constants)
    {
        var sum = default(TractionSum);
        for (var i = 0; i < f.Load.Length; i++)
        {
            var load = f.Load[i] + (f.LoadPerPull[i] * pull);
            if (load > 0) sum.Add(coneIndexPascals * f.NumericTimesLoad[i] * f.Count[i] / load, load, f.Driven[i], constants);
        }

        return sum;
    }

    /// <summary>Greatest steady pull at slip up to a limit: P = NT(P) - W sin(theta), solved together with the load transfer. Never below zero.</summary>
    /// <param name="f">The machine.</param>
    /// <param name="coneIndexPascals">Cone index fed to the model.</param>
    /// <param name="slipLimit">Greatest slip.</param>
    /// <param name="constants">Constants of the wheel model.</param>
    /// <param name="slip">Receives the slip at that pull.</param>
    /// <param name="residual">Receives what is left of the equation, N.</param>
    public static double Greatest(CapabilityFlat f, double coneIndexPascals, double slipLimit, in BrixiusConstants constants, out double slip, out double residual)
    {
        // Secant on h(P) = NT(P) - W sin(theta) - P. The transfer changes NT by a few per cent of P at most, so h falls with slope near -1.
        double p0 = 0, h0 = Net(f, coneIndexPascals, 0, slipLimit, constants, out slip);
        if (!(h0 > 0))
        {
            residual = 0;
            return 0;
        }

        double p1 = h0, h1 = Net(f, coneIndexPascals, p1, slipLimit, constants, out slip) - p1;
        for (var i = 0; i < 30 && Math.Abs(h1) > 1e-7; i++)
        {
            var p2 = p1 - (h1 * (p1 - p0) / (h1 - h0));
            (p0, h0, p1) = (p1, h1, p2);
            h1 = Net(f, coneIndexPascals, p1, slipLimit, constants, out slip) - p1;
        }

        residual = h1;
        return p1;
    }

    /// <summary>Pull at a given slip, load transfer solved with it.</summary>
    public static double AtSlip(CapabilityFlat f, double coneIndexPascals, double slip, in BrixiusConstants constants)
    {
        double pull = 0;
        for (var i = 0; i < 60; i++)
        {
            var next = Wheels(f, coneIndexPascals, pull, constants).At(slip, constants) - f.GradeForce;
            if (Math.Abs(next - pull) < 1e-7) return next;
            pull = next;
        }

        return pull;
    }

    /// <summary>Pull at which the leading end would lift, the line taut or the machine just moving off: W_f L over the greater of line height and centre height.</summary>
    public static double NoseLift(CapabilityFlat f) => f.NoseMoment / Math.Max(f.LineHeight, f.CentreHeight);

    /// <summary>Share of the nose moment used up at line force F while the wheels push T: (F h_e + (T - F) h_cg)/(W_f L). Linear in F, so its ends decide.</summary>
    public static double NoseRatio(CapabilityFlat f, double wheelForce, double lineForce) =>
        ((lineForce * f.LineHeight) + ((wheelForce - lineForce) * f.CentreHeight)) / f.NoseMoment;

    private static double Net(CapabilityFlat f, double coneIndexPascals, double pull, double slipLimit, in BrixiusConstants constants, out double slip)
    {
        var sum = Wheels(f, coneIndexPascals, pull, constants);
        slip = sum.BestSlip(slipLimit, constants);
        return sum.At(slip, constants) - f.GradeForce;
    }
}
