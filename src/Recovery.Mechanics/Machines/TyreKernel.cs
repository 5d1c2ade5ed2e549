namespace Recovery.Mechanics.Machines;

/// <summary>Static deflection of a tyre, once. SI in, SI out.</summary>
internal static class TyreKernel
{
    /// <summary>Saarilahti: delta = 0.0008 + 0.001 (0.365 + 170/p) W with p in kPa and W in kN.</summary>
    public static double Deflection(double loadNewtons, double inflationPascals) =>
        0.0008 + (0.001 * (0.365 + (170 / (inflationPascals / 1000))) * (loadNewtons / 1000));
}
