namespace Recovery.Mechanics.Terramechanics;

/// <summary>Rolling share of the hard-surface branch for one construction of tyre.</summary>
/// <param name="Rolling">Motion resistance ratio, and constant share of gross traction.</param>
internal readonly record struct HardSurfaceConstants(double Rolling)
{
    /// <summary>Bias-ply tyres.</summary>
    public static readonly HardSurfaceConstants Bias = new(0.02);

    /// <summary>Radial tyres.</summary>
    public static readonly HardSurfaceConstants Radial = new(0.01625);
}
