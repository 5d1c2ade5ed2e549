using System;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Statistics;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Correlation between inputs: a Gaussian copula, z = L w with L L^T the correlation of the normal numbers behind the inputs.</summary>
/// <remarks>The correlation is that of the underlying normal numbers; between the inputs themselves it comes out slightly smaller where they are skewed. Cholesky factor by MathNet. Immutable.</remarks>
public sealed class GaussianCopula
{
    private readonly double[] _lower;
    private readonly int[] _start;

    /// <summary>Makes a copula.</summary>
    /// <param name="correlation">Symmetric matrix of correlations with ones on the diagonal, positive definite.</param>
    /// <exception cref="ArgumentNullException">The matrix is null.</exception>
    /// <exception cref="ArgumentException">The matrix is not square, not symmetric, or no correlation at all (not positive definite).</exception>
    /// <exception cref="ArgumentOutOfRangeException">An entry is outside -1 to 1.</exception>
    public GaussianCopula(double[,] correlation)
    {
        Guard.NotNull(correlation, nameof(correlation));
        var n = correlation.GetLength(0);
        if (n != correlation.GetLength(1) || n == 0) throw new ArgumentException("correlation must be a square matrix.", nameof(correlation));
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var value = Guard.Range(correlation[i, j], -1, 1, string.Empty, nameof(correlation));
                if (i == j ? value != 1 : value != correlation[j, i])
                    throw new ArgumentException("correlation must be symmetric with ones on its diagonal; row " + Text.Number(i) + ", column " + Text.Number(j) + " is " + Text.Number(value) + ".", nameof(correlation));
            }
        }

        var matrix = Matrix<double>.Build.DenseOfArray(correlation);
        if (matrix.Evd(Symmetricity.Symmetric).EigenValues.Real().Minimum() <= 1e-9)
            throw new ArgumentException("correlation contradicts itself: these correlations cannot hold together (the matrix is not positive definite).", nameof(correlation));
        var factor = matrix.Cholesky().Factor;
        Dimensions = n;
        _lower = new double[n * (n + 1) / 2];
        _start = new int[n];
        var k = 0;
        for (var i = 0; i < n; i++)
        {
            var first = i;
            for (var j = i; j >= 0; j--)
            {
                if (factor[i, j] != 0) first = j;
            }

            _start[i] = first;
            for (var j = 0; j <= i; j++) _lower[k++] = factor[i, j];
        }
    }

    private GaussianCopula(GaussianCopula less)
    {
        Dimensions = less.Dimensions + 1;
        _lower = [.. less._lower, .. new double[less.Dimensions], 1];
        _start = [.. less._start, less.Dimensions];
    }

    /// <summary>Gets the number of inputs.</summary>
    public int Dimensions { get; }

    /// <summary>The same with one more input behind the others, independent of them.</summary>
    internal GaussianCopula WithOneMore() => new(this);

    /// <summary>Gives the copula in one line.</summary>
    /// <returns>The number of inputs.</returns>
    public override string ToString() => "Gaussian copula of " + Text.Number(Dimensions) + " inputs";

    /// <summary>Correlates blocks of independent normal numbers in place; one row of the block an input, rows <paramref name="stride"/> apart.</summary>
    internal void Apply(Span<double> block, int stride, int count)
    {
        for (var i = Dimensions - 1; i >= 0; i--)
        {
            if (_start[i] == i) continue;
            var at = i * (i + 1) / 2;
            var row = block.Slice(i * stride, count);
            var own = _lower[at + i];
            for (var s = 0; s < count; s++) row[s] *= own;
            for (var j = _start[i]; j < i; j++)
            {
                var weight = _lower[at + j];
                if (weight == 0) continue;
                var other = block.Slice(j * stride, count);
                for (var s = 0; s < count; s++) row[s] += weight * other[s];
            }
        }
    }
}
