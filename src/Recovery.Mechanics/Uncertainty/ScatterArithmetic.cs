using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Arithmetic of scatter: combined coefficients of variation, minimum strength, log spreads.</summary>
/// <remarks>Sources: combination UFC 3-220-20 Eq. 7-5 (reported); minimum three standard deviations below the mean Cordage Institute CI-1801 (reported).</remarks>
public static class ScatterArithmetic
{
    /// <summary>Standard deviations by which a marked minimum strength lies below the test mean (reported).</summary>
    public const double DeviationsBelowMean = 3;

    /// <summary>Combines inherent scatter, measurement error and transformation error: V^2 = Gamma^2 V_w^2 + V_e^2 + V_t^2.</summary>
    /// <param name="inherent">Inherent coefficient of variation, 0 to 3.</param>
    /// <param name="measurement">Coefficient of variation of the measurement, 0 to 3.</param>
    /// <param name="transformation">Coefficient of variation of the transformation, 0 to 3.</param>
    /// <param name="varianceReduction">Reduction of the inherent scatter by averaging over what counts, 0 to 1; 1 keeps all of it.</param>
    /// <returns>The combined coefficient of variation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Combine(double inherent, double measurement, double transformation, double varianceReduction = 1)
    {
        double w = Guard.Range(varianceReduction, 0, 1, string.Empty, nameof(varianceReduction)) * Guard.Range(inherent, 0, 3, string.Empty, nameof(inherent));
        double e = Guard.Range(measurement, 0, 3, string.Empty, nameof(measurement)), t = Guard.Range(transformation, 0, 3, string.Empty, nameof(transformation));
        return Math.Sqrt((w * w) + (e * e) + (t * t));
    }

    /// <summary>Combines standard deviations of logarithms: root of the sum of squares.</summary>
    /// <param name="method">That of the method, 0 to 2.</param>
    /// <param name="soil">That of the soil, 0 to 2.</param>
    /// <param name="contact">That of sealing, venting and contact, 0 to 2.</param>
    /// <returns>The combined standard deviation of the logarithm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double CombineLogarithmic(double method, double soil, double contact) =>
        Math.Sqrt(Square(method, nameof(method)) + Square(soil, nameof(soil)) + Square(contact, nameof(contact)));

    /// <summary>Gives the factor each way that holds a share of a lognormal spread: exp(z zeta).</summary>
    /// <param name="logarithmicDeviation">Standard deviation of the logarithm, 0 to 2.</param>
    /// <param name="deviations">Standard deviations each way, 0 to 6; 1.645 holds 90 per cent.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double FactorEachWay(double logarithmicDeviation, double deviations = 1.645) =>
        Math.Exp(Guard.Range(deviations, 0, 6, string.Empty, nameof(deviations)) * Guard.Range(logarithmicDeviation, 0, 2, string.Empty, nameof(logarithmicDeviation)));

    /// <summary>Gives a marked minimum strength over the mean strength, 1 - 3 V.</summary>
    /// <param name="coefficientOfVariation">Coefficient of variation of new strength, 0 to 0.3.</param>
    /// <returns>Minimum over mean.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static double MinimumOverMean(double coefficientOfVariation) => 1 - (DeviationsBelowMean * Guard.Range(coefficientOfVariation, 0, 0.3, string.Empty, nameof(coefficientOfVariation)));

    /// <summary>Gives the share of mean strength that gear has lost.</summary>
    /// <param name="meanNew">Mean strength of new gear, above 0, any unit.</param>
    /// <param name="meanUsed">Mean strength of used gear in the same unit, at most the new one.</param>
    /// <returns>The loss, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double LossOfMean(double meanNew, double meanUsed)
    {
        var mean = Guard.Range(meanNew, 1e-9, 1e12, string.Empty, nameof(meanNew));
        return (mean - Guard.Range(meanUsed, 0, mean, string.Empty, nameof(meanUsed))) / mean;
    }

    /// <summary>Gives the spread of new strength of a part by its marked minimum: lognormal, mean = minimum/(1 - 3 V). Wear is a factor of its own.</summary>
    /// <param name="minimum">Marked minimum breaking strength, above 0.</param>
    /// <param name="coefficientOfVariation">Coefficient of variation, above 0 to 0.3; 0.02 to 0.05 for fibre (reported).</param>
    /// <returns>The spread, in the unit of the minimum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Spread NewStrength(double minimum, double coefficientOfVariation) =>
        Spread.Lognormal(Guard.Range(minimum, 1e-6, 1e12, string.Empty, nameof(minimum)) / MinimumOverMean(coefficientOfVariation), coefficientOfVariation);

    private static double Square(double value, string name)
    {
        Guard.Range(value, 0, 2, string.Empty, name);
        return value * value;
    }
}
