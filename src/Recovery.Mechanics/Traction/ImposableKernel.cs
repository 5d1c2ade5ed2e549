using System;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>The most a towing machine can put into a line: greatest net pull over all slips on the firmest ground in reach, level. SI in, SI out; allocates only for tyres beyond the fit.</summary>
internal static class ImposableKernel
{
    /// <summary>Greatest net traction over load on a hard surface (reported).</summary>
    public const double HardSurfaceRatio = HardSurfaceKernel.Limit;

    /// <summary>Rolling resistance ratio of a radial tyre on a hard surface (reported).</summary>
    public const double HardSurfaceRolling = 0.01625;

    /// <summary>Greatest pull on soil, radial constants, slip 0 to 1, level ground, tyres as soft as they are.</summary>
    public static double OnSoil(CapabilityFlat f, double coneIndexPascals, out double slip, out double residual) =>
        CapabilityKernel.Greatest(f.OnSoftTyres(), f.LevelLoad, -f.LeadForce, coneIndexPascals, 1, BrixiusConstants.Radial, out slip, out residual);

    /// <summary>Greatest pull on a hard surface, level: mu times the load of the driven axles less the rolling resistance of the others, with the load that the pull transfers.</summary>
    /// <param name="f">The machine.</param>
    /// <param name="friction">Net traction over load, at most <see cref="HardSurfaceRatio"/>.</param>
    /// <param name="residual">Receives what is left of the equation, N.</param>
    public static double OnHardSurface(CapabilityFlat f, double friction, out double residual)
    {
        double low = 0, high = double.PositiveInfinity, p0 = 0, h0 = Hard(f, friction, 0), p1 = h0;
        residual = 0;
        if (!(h0 > 0)) return 0;
        for (var i = 0; i < 80; i++)
        {
            // Piecewise linear in P with one break where an axle lifts: the secant lands after two steps.
            residual = Hard(f, friction, p1) - p1;
            if (Math.Abs(residual) <= 1e-7) break;
            if (residual > 0) low = p1;
            else high = p1;
            var next = p1 - (residual * (p1 - p0) / (residual - h0));
            if (!(next > low && next < high)) next = double.IsInfinity(high) ? 2 * p1 : 0.5 * (low + high);
            (p0, h0, p1) = (p1, residual, next);
        }

        return p1;
    }

    /// <summary>The most the machine can put into a line: the greater of soil and hard surface, plus the weight component of the steepest downhill.</summary>
    /// <param name="f">The machine.</param>
    /// <param name="coneIndexPascals">Cone index of the firmest ground in reach.</param>
    /// <param name="hardFriction">Greatest net traction over load on a hard surface in reach; 0 where there is none.</param>
    /// <param name="downhillSine">Sine of the steepest slope on which it may face downhill, 0 or more.</param>
    /// <param name="wheelForce">Receives the part that the wheels push, without the downhill.</param>
    /// <param name="slip">Receives the slip, 1 on the hard surface.</param>
    /// <param name="residual">Receives what is left of the equation, N.</param>
    public static double Imposable(CapabilityFlat f, double coneIndexPascals, double hardFriction, double downhillSine, out double wheelForce, out double slip, out double residual)
    {
        wheelForce = OnSoil(f, coneIndexPascals, out slip, out residual);
        if (hardFriction > 0)
        {
            var hard = OnHardSurface(f, hardFriction, out var left);
            if (hard > wheelForce) (wheelForce, slip) = (hard, 1);
            residual = Math.Max(Math.Abs(residual), Math.Abs(left));
        }

        return wheelForce + (f.Weight * downhillSine);
    }

    private static double Hard(CapabilityFlat f, double friction, double pull)
    {
        var share = CapabilityKernel.Share(f, f.LevelLoad, pull);
        var sum = f.LeadForce;
        for (var i = 0; i < f.LevelLoad.Length; i++)
        {
            var load = (f.LevelLoad[i] + (f.LoadPerPull[i] * pull)) * share;
            if (load > 0) sum += f.Driven[i] ? friction * load : -HardSurfaceRolling * load;
        }

        return sum;
    }
}
