using System;

namespace Recovery.Mechanics.Traction;

/// <summary>A line off the centre line of the machine, and a side slope under it. SI in, SI out.</summary>
/// <remarks>Moments (<see cref="Provenance.GeneralSources.Statics"/>, derived); no constant of its own.</remarks>
internal static class SidePullKernel
{
    /// <summary>Tension in a line whose part along the ground and along the machine is given: D/(cos(pitch) cos(yaw)).</summary>
    public static double Tension(double along, double pitchRadians, double yawRadians) => along / (Math.Cos(pitchRadians) * Math.Cos(yawRadians));

    /// <summary>Part of a tension normal to the ground.</summary>
    public static double Vertical(double tension, double pitchRadians) => tension * Math.Sin(pitchRadians);

    /// <summary>Part of a tension across the machine, along the ground.</summary>
    public static double Sideways(double tension, double pitchRadians, double yawRadians) => tension * Math.Cos(pitchRadians) * Math.Sin(yawRadians);

    /// <summary>Share of the weight on the wheels of the loaded side: 0.5 cos(a) + (h sin(a) W + h_d F_y)/(B W); 1 times the load normal to the ground is overturning.</summary>
    /// <param name="weight">Weight.</param>
    /// <param name="slopeRadians">Side slope, positive where it falls towards the side that the line pulls to.</param>
    /// <param name="centreHeight">Height of the centre of mass.</param>
    /// <param name="track">Distance between the middles of the tyres left and right.</param>
    /// <param name="sideways">Force of the line across the machine.</param>
    /// <param name="hitchHeight">Height of the hitch.</param>
    public static double LoadedSide(double weight, double slopeRadians, double centreHeight, double track, double sideways, double hitchHeight) =>
        (0.5 * Math.Cos(slopeRadians)) + (((weight * centreHeight * Math.Sin(slopeRadians)) + (sideways * hitchHeight)) / (track * weight));

    /// <summary>Share of what holds a machine upright that is used: (W h sin(a) + F_y h_d)/(0.5 B (W cos(a) - V)); a part down on the hitch is not credited. Infinite where the line lifts it off the ground.</summary>
    /// <param name="weight">Weight.</param>
    /// <param name="slopeRadians">Side slope, positive where it falls towards the side that the line pulls to.</param>
    /// <param name="centreHeight">Height of the centre of mass.</param>
    /// <param name="track">Distance between the middles of the tyres left and right.</param>
    /// <param name="sideways">Force of the line across the machine.</param>
    /// <param name="hitchHeight">Height of the hitch.</param>
    /// <param name="down">Part of the line down on the hitch, negative where it lifts.</param>
    public static double MomentUsed(double weight, double slopeRadians, double centreHeight, double track, double sideways, double hitchHeight, double down)
    {
        var holds = 0.5 * track * ((weight * Math.Cos(slopeRadians)) + Math.Min(0, down));
        var turns = (weight * centreHeight * Math.Sin(slopeRadians)) + (sideways * hitchHeight);
        return holds > 0 ? Math.Max(0, turns / holds) : double.PositiveInfinity;
    }

    /// <summary>Tension that overturns: (0.5 B W cos(a) - W h sin(a))/(cos(pitch) sin(yaw) h_d - 0.5 B min(0, sin(pitch))); infinite where the line does not turn it over, -1 where the slope alone does.</summary>
    public static double Overturning(double weight, double slopeRadians, double centreHeight, double track, double hitchHeight, double pitchRadians, double yawRadians)
    {
        var left = (0.5 * track * weight * Math.Cos(slopeRadians)) - (weight * centreHeight * Math.Sin(slopeRadians));
        var each = (Math.Cos(pitchRadians) * Math.Sin(yawRadians) * hitchHeight) - (0.5 * track * Math.Min(0, Math.Sin(pitchRadians)));
        return left <= 0 ? -1 : each > 1e-12 ? left / each : double.PositiveInfinity;
    }

    /// <summary>Part along the machine of the tension that overturns it on no side slope; infinite where the line does not turn it over.</summary>
    public static double OverturningAlong(double weight, double centreHeight, double track, double hitchHeight, double pitchRadians, double yawRadians) =>
        Overturning(weight, 0, centreHeight, track, hitchHeight, pitchRadians, yawRadians) * Math.Cos(pitchRadians) * Math.Cos(yawRadians);
}
