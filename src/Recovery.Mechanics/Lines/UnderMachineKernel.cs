using System;

namespace Recovery.Mechanics.Lines;

/// <summary>A bridle that runs from the front axle beneath the machine to an eye behind its tail, once. x backwards from the axle, SI.</summary>
/// <remarks>Geometry (derived); no constant of its own.</remarks>
internal static class UnderMachineKernel
{
    /// <summary>Half spacing of the legs at x: (w/2)(1 - x/x_e).</summary>
    public static double HalfSpacing(double anchorSpacing, double apex, double x) => anchorSpacing / 2 * (1 - (x / apex));

    /// <summary>Height of the legs at x: z_a + (z_e - z_a) x/x_e.</summary>
    public static double Height(double anchorHeight, double apexHeight, double apex, double x) => ClearanceKernel.LineHeight(anchorHeight, apexHeight, apex, x);

    /// <summary>Leg from an anchor to the eye: sqrt(x_e^2 + (w/2)^2 + (z_e - z_a)^2).</summary>
    public static double Leg(double apex, double anchorSpacing, double rise) => Math.Sqrt((apex * apex) + (anchorSpacing * anchorSpacing / 4) + (rise * rise));

    /// <summary>Distance of the eye from the axle with a leg: the same solved for x_e; zero where the leg is too short.</summary>
    public static double Apex(double leg, double anchorSpacing, double rise) => Math.Sqrt(Math.Max(0, (leg * leg) - (anchorSpacing * anchorSpacing / 4) - (rise * rise)));

    /// <summary>Least anchor spacing at which legs of no width pass beside a belly whose rear end lies at x: width/(1 - x/x_e).</summary>
    public static double LeastSpacing(double bellyWidth, double apex, double x) => bellyWidth / (1 - (x / apex));

    /// <summary>Rise of the front axle until a gap is used up: (g + r x/L)/(x (1/L - 1/x_e)); infinite where the underside gains on the leg.</summary>
    public static double RiseToFoul(double gap, double x, double wheelbase, double apex, double rearRise)
    {
        var closing = x * ((1 / wheelbase) - (1 / apex));
        return closing <= 0 ? double.PositiveInfinity : (gap + (rearRise * x / wheelbase)) / closing;
    }
}
