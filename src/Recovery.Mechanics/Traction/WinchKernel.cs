using System;

namespace Recovery.Mechanics.Traction;

/// <summary>A rope on a drum: pull by layer, what a layer holds, and the angle at which it runs off. SI in, SI out.</summary>
internal static class WinchKernel
{
    /// <summary>Wraps that stay on the drum (published instruction).</summary>
    public const int LeastWraps = 5;

    /// <summary>Greatest fleet angle of a smooth drum, degrees (from memory).</summary>
    public const double SmoothDegrees = 1.5;

    /// <summary>Greatest fleet angle of a grooved drum, degrees (from memory).</summary>
    public const double GroovedDegrees = 2;

    /// <summary>Least fleet angle, below which the rope piles up at the flange, degrees (from memory).</summary>
    public const double LeastDegrees = 0.5;

    /// <summary>Radius that one layer adds over the radius of the first: 2 d/(D + d).</summary>
    public static double LayerConstant(double ropeDiameter, double drumDiameter) => 2 * ropeDiameter / (drumDiameter + ropeDiameter);

    /// <summary>Pull on a layer: P_1/(1 + k (n - 1)). Equal torque, one rope diameter of radius a layer.</summary>
    public static double PullOnLayer(double firstLayerPull, double layerConstant, int layer) => firstLayerPull / (1 + (layerConstant * (layer - 1)));

    /// <summary>Pull on the first layer from the pull on another one.</summary>
    public static double FirstLayerPull(double pull, double layerConstant, int layer) => pull * (1 + (layerConstant * (layer - 1)));

    /// <summary>Rope that full layers hold: pi w/d (n D + n^2 d), with w/d whole turns a layer.</summary>
    public static double Held(double ropeDiameter, double drumDiameter, double drumWidth, int layers) =>
        Math.PI * Turns(ropeDiameter, drumWidth) * ((layers * drumDiameter) + ((double)layers * layers * ropeDiameter));

    /// <summary>Layer from which the rope leaves while a length of it is still on the drum; at least 1.</summary>
    public static int Layer(double ropeDiameter, double drumDiameter, double drumWidth, double onDrum)
    {
        var c = onDrum / (Math.PI * Turns(ropeDiameter, drumWidth));
        var n = (int)Math.Max(1, Math.Floor((Math.Sqrt((drumDiameter * drumDiameter) + (4 * ropeDiameter * c)) - drumDiameter) / (2 * ropeDiameter)));
        while (Held(ropeDiameter, drumDiameter, drumWidth, n) < onDrum) n++;
        return n;
    }

    /// <summary>Rope that the last wraps take.</summary>
    public static double LastWraps(double ropeDiameter, double drumDiameter) => LeastWraps * Math.PI * (drumDiameter + ropeDiameter);

    /// <summary>Distance from the drum to the first sheave at which the rope from the flange runs at an angle: half width over its tangent.</summary>
    public static double Lead(double halfWidth, double angleRadians) => halfWidth / Math.Tan(angleRadians);

    /// <summary>Greatest angle at which the rope runs off the drum.</summary>
    public static double FleetAngle(double halfWidth, double lead) => Math.Atan2(halfWidth, lead);

    /// <summary>Turns of rope side by side on the drum. The addend is rounding: a drum as wide as a whole number of ropes holds them all.</summary>
    private static double Turns(double ropeDiameter, double drumWidth) => Math.Floor((drumWidth / ropeDiameter) + 1e-9);
}
