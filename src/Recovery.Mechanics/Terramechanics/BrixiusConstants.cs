namespace Recovery.Mechanics.Terramechanics;

/// <summary>The constants of the Brixius form for one construction of tyre.</summary>
/// <param name="SlipDecay">Factor of slip in the exponent of gross traction.</param>
/// <param name="Rolling">Constant share of motion resistance and of gross traction.</param>
/// <param name="Soft">Numerator of the soft-soil term of motion resistance.</param>
internal readonly record struct BrixiusConstants(double SlipDecay, double Rolling, double Soft)
{
    /// <summary>Bias-ply tyres: the cautious side for what a machine sustains.</summary>
    public static readonly BrixiusConstants Bias = new(7.5, 0.04, 1.0);

    /// <summary>Radial tyres: the cautious side for what a machine can impose on a rig.</summary>
    public static readonly BrixiusConstants Radial = new(9.5, 0.0325, 0.9);
}
