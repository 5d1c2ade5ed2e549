namespace Recovery.Mechanics.Uncertainty;

/// <summary>Where the points of a sample come from.</summary>
public enum PointSet
{
    /// <summary>Independent random numbers of the counter-based generator: binomial and normal errors hold.</summary>
    Random,

    /// <summary>Scrambled Sobol points: evener, so sums settle faster; errors come from repeated scrambling.</summary>
    ScrambledSobol,
}
