using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Variance-based sensitivity: which share of the variance of a number goes away when one input becomes known (first order), and which is left when all others are known (total).</summary>
/// <remarks>
/// <para>With samples A, B and A_i (A with its input i from B): S_i = mean(f_B (f_Ai - f_A))/V (Saltelli et al. 2010), T_i = mean((f_A - f_Ai)^2)/(2 V) (Jansen 1999). Inputs are independent.</para>
/// <para>The estimates are means over repeated randomisations, which also give the errors. S below zero by less than its error is zero. Source: estimators derived and reported; checked with Ishigami and G-function, whose indices are known in closed form.</para>
/// </remarks>
public sealed class SobolIndices
{
    private SobolIndices(IReadOnlyList<InputSensitivity> inputs, double mean, double variance, long evaluations)
    {
        Inputs = inputs;
        Mean = mean;
        Variance = variance;
        Evaluations = evaluations;
    }

    /// <summary>Gets the indices, in the order of the inputs.</summary>
    public IReadOnlyList<InputSensitivity> Inputs { get; }

    /// <summary>Gets the mean of the number.</summary>
    public double Mean { get; }

    /// <summary>Gets the variance of the number.</summary>
    public double Variance { get; }

    /// <summary>Gets how often the function was called.</summary>
    public long Evaluations { get; }

    /// <summary>Works the indices out.</summary>
    /// <param name="inputs">How each input scatters, 1 to 50, independent.</param>
    /// <param name="function">The number.</param>
    /// <param name="samples">Points of one randomisation, 16 to 16,777,216; a power of two for Sobol points.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="points">Where the points come from.</param>
    /// <param name="randomisations">How often the points are randomised anew, 2 to 100.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The indices with their errors.</returns>
    /// <exception cref="ArgumentNullException">Inputs or function are null.</exception>
    /// <exception cref="ArgumentException">The number of Sobol points is not a power of two.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="SolverException">The number does not vary, or is not finite.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SobolIndices Of(IEnumerable<Spread> inputs, LimitFunction function, int samples, ulong seed, PointSet points = PointSet.ScrambledSobol, int randomisations = 8, CancellationToken cancellation = default) =>
        OrNull(inputs, function, samples, seed, points, randomisations, cancellation) ?? throw new SolverException("The number does not vary, so there is nothing to share out: no input that scatters reaches it.");

    /// <summary>The indices, or null where the number does not vary.</summary>
    internal static SobolIndices? OrNull(IEnumerable<Spread> inputs, LimitFunction function, int samples, ulong seed, PointSet points = PointSet.ScrambledSobol, int randomisations = 8, CancellationToken cancellation = default)
    {
        var limit = new LimitState("sensitivity", inputs, function);
        var n = Guard.Count(limit.Dimensions, 1, SobolPoints.MostDimensions / 2, nameof(inputs));
        Guard.Count(samples, 16, 1 << 24, nameof(samples));
        Guard.Count(randomisations, 2, 100, nameof(randomisations));
        Guard.Defined(points, points is PointSet.Random or PointSet.ScrambledSobol, nameof(points));
        if (points == PointSet.ScrambledSobol && (samples & (samples - 1)) != 0) throw new ArgumentException("samples must be a power of two for Sobol points; it was " + Text.Number(samples, 9) + ".", nameof(samples));
        var runs = new Run[randomisations];
        for (var r = 0; r < randomisations; r++)
        {
            if (Once(limit, samples, seed, r, points, cancellation) is not { } run) return null;
            runs[r] = run;
        }

        var result = new InputSensitivity[n];
        for (var i = 0; i < n; i++)
        {
            var k = i;
            var (first, firstError) = Spread(runs.Select(r => r.First[k]));
            var (total, totalError) = Spread(runs.Select(r => r.Total[k]));
            result[i] = new InputSensitivity(i, first, firstError, total, totalError);
        }

        return new SobolIndices(Array.AsReadOnly(result), runs.Average(r => r.Mean), runs.Average(r => r.Variance), (long)randomisations * samples * (n + 2));
    }

    /// <summary>Gives mean, variance and the largest total index, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString()
    {
        var largest = Inputs.OrderByDescending(i => i.Total).First();
        return "mean " + Text.Number(Mean, 3) + ", variance " + Text.Number(Variance, 3) + ", largest: " + largest;
    }

    private static (double Mean, double Error) Spread(IEnumerable<double> values)
    {
        var all = values.ToList();
        var mean = all.Average();
        return (mean, Math.Sqrt(all.Sum(v => (v - mean) * (v - mean)) / (all.Count - 1) / all.Count));
    }

    private static Run? Once(LimitState limit, int samples, ulong seed, int stream, PointSet points, CancellationToken cancellation)
    {
        var n = limit.Dimensions;
        var sobol = points == PointSet.ScrambledSobol ? SobolPoints.Scrambled(2 * n, seed, stream) : null;
        const int Block = 256;
        double[] columns = new double[2 * n * Block], a = new double[n], b = new double[n], values = new double[n];
        double[] cross = new double[n], squares = new double[n];
        double sum = 0, square = 0, shift = double.NaN;
        for (var first = 0; first < samples; first += Block)
        {
            cancellation.ThrowIfCancellationRequested();
            var count = Math.Min(Block, samples - first);
            for (var d = 0; d < 2 * n; d++)
            {
                var column = columns.AsSpan(d * Block, count);
                if (sobol is null) Philox4x32.Fill(seed, (ulong)first, (uint)d, (uint)stream, column);
                else sobol.Uniforms(first, d, column);
                NormalKernel.Inverse(column);
            }

            for (var s = 0; s < count; s++)
            {
                for (var i = 0; i < n; i++) (a[i], b[i]) = (columns[(i * Block) + s], columns[((n + i) * Block) + s]);
                double fa = limit.At(a, values), fb = limit.At(b, values);

                // About the first value, so that a large mean costs no digits.
                if (double.IsNaN(shift)) shift = fa;
                double da = fa - shift, db = fb - shift;
                sum += da + db;
                square += (da * da) + (db * db);
                for (var i = 0; i < n; i++)
                {
                    var kept = a[i];
                    a[i] = b[i];
                    var difference = limit.At(a, values) - fa;
                    a[i] = kept;
                    cross[i] += db * difference;
                    squares[i] += difference * difference;
                }
            }
        }

        double mean = sum / (2.0 * samples), variance = (square / (2.0 * samples)) - (mean * mean);
        if (!(variance > 0)) return null;
        for (var i = 0; i < n; i++)
        {
            cross[i] = cross[i] / samples / variance;
            squares[i] = squares[i] / (2.0 * samples) / variance;
        }

        return new Run(shift + mean, variance, cross, squares);
    }

    private sealed record Run(double Mean, double Variance, double[] First, double[] Total);
}
