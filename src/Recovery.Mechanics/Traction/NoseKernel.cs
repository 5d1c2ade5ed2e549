using System;

namespace Recovery.Mechanics.Traction;

/// <summary>Load of the leading axle of a machine while a line pulls on it: moments about the trailing contact. SI in, SI out.</summary>
/// <remarks>N_f L = W_f L - F h_e - (T - F) h_cg, with h_e = h_d + a_h tan(pitch) the height at which the line of pull passes over the trailing axle; F along the ground, T what the wheels push at that instant. Linear in F, so its ends decide.</remarks>
internal static class NoseKernel
{
    /// <summary>Share of the nose moment above which the leading axle is a caution (judgement).</summary>
    public const double Caution = 0.8;

    /// <summary>Share of the nose moment used up: 1 is lift.</summary>
    public static double Ratio(double noseMoment, double lineHeight, double centreHeight, double wheelForce, double lineForce) =>
        ((lineForce * lineHeight) + ((wheelForce - lineForce) * centreHeight)) / noseMoment;

    /// <summary>Load left on the leading axle; negative beyond lift.</summary>
    public static double FrontLoad(double noseMoment, double wheelbase, double lineHeight, double centreHeight, double wheelForce, double lineForce) =>
        (noseMoment * (1 - Ratio(noseMoment, lineHeight, centreHeight, wheelForce, lineForce))) / wheelbase;

    /// <summary>Height at which the line of pull passes over the trailing axle.</summary>
    public static double LineHeight(double hitchHeight, double behindTrailingAxle, double pitchRadians) => hitchHeight + (behindTrailingAxle * Math.Tan(pitchRadians));

    /// <summary>Pull at which the leading end would lift, the line taut (T = F) or the machine just moving off (F = 0): W_f L over the greater height.</summary>
    public static double Lift(double noseMoment, double lineHeight, double centreHeight) => noseMoment / Math.Max(lineHeight, centreHeight);

    /// <summary>Line force at which the leading end lifts while the wheels push T, for a line above the centre of mass; infinite for one below it, which presses the end down as the force rises.</summary>
    public static double LiftAtPeak(double noseMoment, double lineHeight, double centreHeight, double wheelForce) =>
        lineHeight > centreHeight ? (noseMoment - (wheelForce * centreHeight)) / (lineHeight - centreHeight) : double.PositiveInfinity;
}
