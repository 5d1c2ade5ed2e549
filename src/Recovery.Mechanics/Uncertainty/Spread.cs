using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How a number scatters: a closed set of distributions of one input.</summary>
/// <remarks>
/// <para>The unit is that of the input it is given to; on the inputs of a plan a spread is one of a factor on the plan's own value, or of a difference from it. Every spread maps a standard normal number z to the value of equal probability, x = F^-1(Phi(z)), so sampling, copula, reliability and Sobol points all use one mapping.</para>
/// <para>Soil strength and resistance are commonly taken lognormal; line strength as lognormal new strength times a truncated wear factor, kept apart. Immutable; many threads may use it at once.</para>
/// </remarks>
public abstract class Spread
{
    // The lowest and highest standard normal numbers that a 53-bit uniform can give.
    internal const double Furthest = 8.3;

    private protected Spread()
    {
    }

    /// <summary>Gets the mean.</summary>
    public abstract double Mean { get; }

    /// <summary>Gets the standard deviation.</summary>
    public abstract double StandardDeviation { get; }

    /// <summary>Gets the standard deviation over the mean; zero where the mean is zero and nothing scatters.</summary>
    public double CoefficientOfVariation => StandardDeviation == 0 ? 0 : StandardDeviation / Math.Abs(Mean);

    /// <summary>Gets the median.</summary>
    public double Median => FromNormal(0);

    /// <summary>Gets whether the number does not scatter at all.</summary>
    public virtual bool IsFixed => false;

    /// <summary>Gives the value below which the number lies with a probability.</summary>
    /// <param name="probability">Probability, 1e-16 to 1 - 1e-16.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its range.</exception>
    public double Quantile(double probability) => FromNormal(NormalKernel.Inverse(Guard.Range(probability, 1e-16, 1 - 1e-16, string.Empty, nameof(probability))));

    /// <summary>Gives the probability that the number is at most a value.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public double Probability(double value) => Cdf(Guard.Range(value, -1e300, 1e300, string.Empty, nameof(value)));

    /// <summary>A number that does not scatter.</summary>
    /// <param name="value">The value, -1e12 to 1e12.</param>
    /// <returns>The spread.</returns>
    public static Spread Fixed(double value) => new FixedSpread(value);

    /// <summary>Lognormal by mean and coefficient of variation: zeta^2 = ln(1 + V^2), median = mean/sqrt(1 + V^2).</summary>
    /// <param name="mean">Mean, above 0.</param>
    /// <param name="coefficientOfVariation">Standard deviation over mean, above 0 to 5.</param>
    /// <returns>The spread.</returns>
    public static Spread Lognormal(double mean, double coefficientOfVariation) => LognormalSpread.FromMean(mean, coefficientOfVariation);

    /// <summary>Lognormal by median and standard deviation of the natural logarithm.</summary>
    /// <param name="median">Median, above 0.</param>
    /// <param name="logarithmicDeviation">Standard deviation of the logarithm, above 0 to 2.</param>
    /// <returns>The spread.</returns>
    public static Spread LognormalAround(double median, double logarithmicDeviation) => new LognormalSpread(median, logarithmicDeviation);

    /// <summary>Normal.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="standardDeviation">Standard deviation, above 0.</param>
    /// <returns>The spread.</returns>
    public static Spread Normal(double mean, double standardDeviation) => new NormalSpread(mean, standardDeviation);

    /// <summary>Another spread cut off at two ends and rescaled between them.</summary>
    /// <param name="of">The spread that is cut.</param>
    /// <param name="minimum">Lower end.</param>
    /// <param name="maximum">Upper end, above the lower one.</param>
    /// <returns>The spread.</returns>
    public static Spread Truncated(Spread of, double minimum, double maximum) => new TruncatedSpread(of, minimum, maximum);

    /// <summary>Triangular.</summary>
    /// <param name="minimum">Lower end.</param>
    /// <param name="mode">Most likely value, between the ends.</param>
    /// <param name="maximum">Upper end, above the lower one.</param>
    /// <returns>The spread.</returns>
    public static Spread Triangular(double minimum, double mode, double maximum) => new TriangularSpread(minimum, mode, maximum);

    /// <summary>Beta-PERT: a beta distribution with mean (min + 4 mode + max)/6.</summary>
    /// <param name="minimum">Lower end.</param>
    /// <param name="mode">Most likely value, between the ends.</param>
    /// <param name="maximum">Upper end, above the lower one.</param>
    /// <returns>The spread.</returns>
    public static Spread BetaPert(double minimum, double mode, double maximum) => new BetaPertSpread(minimum, mode, maximum);

    /// <summary>Uniform.</summary>
    /// <param name="minimum">Lower end.</param>
    /// <param name="maximum">Upper end, above the lower one.</param>
    /// <returns>The spread.</returns>
    public static Spread Uniform(double minimum, double maximum) => new UniformSpread(minimum, maximum);

    /// <summary>Readings as they are, linear between plotting positions (i - 1/2)/n, the ends held.</summary>
    /// <param name="readings">At least two readings, not all alike.</param>
    /// <returns>The spread.</returns>
    public static Spread Empirical(IEnumerable<double> readings) => new EmpiricalSpread(readings);

    /// <summary>Gumbel of largest values by mean and standard deviation: scale = sd sqrt(6)/pi, mode = mean - 0.5772 scale.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="standardDeviation">Standard deviation, above 0.</param>
    /// <returns>The spread.</returns>
    public static Spread Gumbel(double mean, double standardDeviation) => new GumbelSpread(mean, standardDeviation);

    internal abstract double FromNormal(double z);

    internal abstract double Cdf(double x);

    /// <summary>Maps a block of standard normal numbers in place. The same numbers as <see cref="FromNormal(double)"/>, to the bit.</summary>
    internal virtual void FromNormals(Span<double> numbers)
    {
        for (var i = 0; i < numbers.Length; i++) numbers[i] = FromNormal(numbers[i]);
    }

    /// <summary>A finite number of reasonable size.</summary>
    private protected static double Finite(double value, string name) => Guard.Range(value, -1e12, 1e12, string.Empty, name);

    private protected static double Positive(double value, string name) => Guard.Range(value, 1e-12, 1e12, string.Empty, name);

    private protected static void Rising(double lower, double upper, string name)
    {
        if (!(upper > lower)) throw new ArgumentException(name + " " + Text.Number(upper, 6) + " must be above the lower end " + Text.Number(lower, 6) + ".", name);
    }
}
