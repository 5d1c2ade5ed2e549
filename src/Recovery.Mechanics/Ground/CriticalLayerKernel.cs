namespace Recovery.Mechanics.Ground;

/// <summary>Which layer of the cone profile counts, once. Class 0 light, 1 middle, 2 heavy.</summary>
/// <remarks>Sources: <see cref="GroundSources.CriticalLayer"/>; units by definition.</remarks>
internal static class CriticalLayerKernel
{
    public const double MetresPerInch = Provenance.PhysicalConstants.MetresPerInch;

    /// <summary>Newtons in a pound-force.</summary>
    public const double NewtonsPerPound = Provenance.PhysicalConstants.NewtonsPerPoundForce;

    /// <summary>Class of a wheel load; a bound belongs to the middle class.</summary>
    public static int Wheel(double loadNewtons) => loadNewtons < 2000 * NewtonsPerPound ? 0 : loadNewtons <= 15000 * NewtonsPerPound ? 1 : 2;

    /// <summary>Class of a tracked machine by ground pressure and weight.</summary>
    public static int Track(double pressurePascals, double weightNewtons) => pressurePascals < 4 * MoistureKernel.PascalsPerPsi ? 0 : weightNewtons < 100000 * NewtonsPerPound ? 1 : 2;

    public static double TopInches(int layer) => layer == 0 ? 3 : layer == 1 ? 6 : 0;

    public static double BottomInches(int layer) => layer == 0 ? 9 : 12;

    /// <summary>The method analyses 0-6, 3-9, 6-12, 9-15 and 12-18 in: the last layer that touches the critical one ends six inches below it.</summary>
    public static double MeasureToInches(double bottomInches) => bottomInches + 6;
}
