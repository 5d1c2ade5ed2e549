using System;
using System.Collections.Generic;
using MathNet.Numerics.Interpolation;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone readings against depth at one place.</summary>
/// <remarks>
/// <para>Between readings a straight line is taken. The index of a layer is the mean over it. Sounding once is not enough: give the profile that stands for the place, and the weakest one apart.</para>
/// <para>Immutable. Depths in metres, readings in pascals inside.</para>
/// </remarks>
public sealed class ConeProfile
{
    private readonly double[] _depth;
    private readonly double[] _reading;
    private readonly LinearSpline _line;

    /// <summary>Takes the readings of one sounding.</summary>
    /// <param name="depths">Depths below the ground, 0 to 3 m, rising; at least two.</param>
    /// <param name="readings">Cone index at each depth, 0 to 20,000 kPa.</param>
    /// <exception cref="ArgumentException">Fewer than two readings, not one for each depth, or depths that do not rise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ConeProfile(IEnumerable<Length> depths, IEnumerable<Pressure> readings)
    {
        var z = new List<double>();
        foreach (var depth in Guard.NotNull(depths, nameof(depths))) z.Add(Guard.Metres(depth, 0, 3, nameof(depths)));
        var q = new List<double>();
        foreach (var reading in Guard.NotNull(readings, nameof(readings))) q.Add(Guard.Pascals(reading, 0, 20000, nameof(readings)));
        Guard.SameLength(z.Count, q.Count, nameof(readings));
        Guard.Count(z.Count, 2, 10000, nameof(depths));
        for (var i = 1; i < z.Count; i++)
        {
            if (z[i] <= z[i - 1]) throw new ArgumentException("depths must rise from reading to reading; " + Text.With(z[i], "m") + " follows " + Text.With(z[i - 1], "m") + ".", nameof(depths));
        }

        _depth = z.ToArray();
        _reading = q.ToArray();
        _line = LinearSpline.InterpolateSorted(_depth, _reading);
    }

    /// <summary>Gets the depth of the first reading.</summary>
    public Length From => Length.FromMeters(_depth[0]);

    /// <summary>Gets the depth of the last reading.</summary>
    public Length To => Length.FromMeters(_depth[_depth.Length - 1]);

    /// <summary>Gives the mean cone index of a layer.</summary>
    /// <param name="top">Where the layer begins, not above the first reading.</param>
    /// <param name="bottom">Where it ends, below its top and not below the last reading.</param>
    /// <returns>The mean reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The readings do not cover the layer.</exception>
    public Pressure Mean(Length top, Length bottom)
    {
        var from = Guard.Metres(top, _depth[0], _depth[_depth.Length - 1], nameof(top));
        var to = Guard.Metres(bottom, from, _depth[_depth.Length - 1], nameof(bottom));
        return Pressure.FromPascals(to > from ? _line.Integrate(from, to) / (to - from) : _line.Interpolate(from));
    }

    /// <summary>Gives the layer that counts under a running gear: the critical one, or a weaker one that touches it from below (drop-layer rule).</summary>
    /// <param name="layer">The critical layer.</param>
    /// <returns>The governing layer and its index.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The readings do not cover the critical layer.</exception>
    public GoverningLayer Governing(CriticalLayer layer)
    {
        Guard.NotNull(layer, nameof(layer));
        double top = layer.Top.Meters, bottom = layer.Bottom.Meters, index = Mean(layer.Top, layer.Bottom).Pascals;
        double governs = index, governsTop = top, governsBottom = bottom;
        var complete = true;
        // The layers that the method analyses below: they start within the critical one, three inches apart, and end below it.
        for (var inches = 3; inches <= 6; inches += 3)
        {
            double nextBottom = bottom + (inches * CriticalLayerKernel.MetresPerInch), nextTop = nextBottom - (6 * CriticalLayerKernel.MetresPerInch);
            if (nextBottom > _depth[_depth.Length - 1] + 1e-9)
            {
                complete = false;
                break;
            }

            var next = Mean(Length.FromMeters(nextTop), Length.FromMeters(Math.Min(nextBottom, _depth[_depth.Length - 1]))).Pascals;
            if (next >= governs * (1 - 1e-9)) continue;
            (governs, governsTop, governsBottom) = (next, nextTop, nextBottom);
        }

        return new GoverningLayer(layer, index, governsTop, governsBottom, governs, complete);
    }

    /// <summary>Gives the profile in words, invariant culture.</summary>
    /// <returns>Number and depth of the readings.</returns>
    public override string ToString() => Text.Number(_depth.Length) + " readings from " + Text.Number(_depth[0], 2) + " to " + Text.With(_depth[_depth.Length - 1], "m", 2);
}
