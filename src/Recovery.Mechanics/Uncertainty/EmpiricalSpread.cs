using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Readings as they are: linear between the plotting positions (i - 1/2)/n, the least and greatest reading held beyond.</summary>
/// <remarks>Few readings know nothing of the tails: nothing outside what was read is ever sampled. Mean and deviation are those of the readings.</remarks>
public sealed class EmpiricalSpread : Spread
{
    private readonly double[] _sorted;

    internal EmpiricalSpread(IEnumerable<double> readings)
    {
        _sorted = Guard.NotNull(readings, nameof(readings)).ToArray();
        Guard.All(_sorted, -1e12, 1e12, string.Empty, nameof(readings));
        Array.Sort(_sorted);
        if (_sorted.Length < 2 || !(_sorted[_sorted.Length - 1] > _sorted[0]))
            throw new ArgumentException("An empirical spread needs at least two readings that differ; it got " + Text.Number(_sorted.Length) + ".", nameof(readings));
        Mean = _sorted.Average();
        StandardDeviation = Math.Sqrt(_sorted.Sum(x => (x - Mean) * (x - Mean)) / (_sorted.Length - 1));
    }

    /// <summary>Gets the readings, rising.</summary>
    public IReadOnlyList<double> Readings => Array.AsReadOnly(_sorted);

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <inheritdoc/>
    public override double StandardDeviation { get; }

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Number and range of the readings.</returns>
    public override string ToString() => Text.Number(_sorted.Length) + " readings, " + Text.Number(_sorted[0]) + " to " + Text.Number(_sorted[_sorted.Length - 1]);

    internal override double FromNormal(double z)
    {
        var place = (NormalKernel.Cdf(z) * _sorted.Length) - 0.5;
        if (place <= 0) return _sorted[0];
        var i = (int)place;
        return i >= _sorted.Length - 1 ? _sorted[_sorted.Length - 1] : _sorted[i] + ((place - i) * (_sorted[i + 1] - _sorted[i]));
    }

    internal override double Cdf(double x)
    {
        var n = _sorted.Length;
        if (x < _sorted[0]) return 0;
        if (x >= _sorted[n - 1]) return 1;
        int low = 0, high = n - 1;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (_sorted[middle] <= x) low = middle;
            else high = middle;
        }

        return (low + 0.5 + ((x - _sorted[low]) / (_sorted[high] - _sorted[low]))) / n;
    }
}
