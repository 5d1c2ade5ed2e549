using System;

namespace Recovery.Mechanics.Machines;

/// <summary>Left and right wheels on a side slope. y left, z up; the side slope is positive where the ground rises to the left. SI in, SI out.</summary>
/// <remarks>Source: <see cref="Provenance.GeneralSources.Statics"/> (derived); no constant of its own.</remarks>
internal static class RollKernel
{
    /// <summary>Part of the weight normal to ground that slopes along and across: 1/sqrt(1 + tan^2(theta) + tan^2(a)); cos(theta) where it slopes one way only.</summary>
    public static double NormalShare(double gradeRadians, double sideRadians)
    {
        double along = Math.Tan(gradeRadians), across = Math.Tan(sideRadians);
        return 1 / Math.Sqrt(1 + (along * along) + (across * across));
    }

    /// <summary>Moment that loads the right wheels and relieves the left: K = N (z_c tan(a) - y_c).</summary>
    public static double Moment(double normal, double centreHeight, double centreLeft, double sideRadians) => normal * ((centreHeight * Math.Tan(sideRadians)) - centreLeft);

    /// <summary>Part of K that an axle on a pin takes: N_i tan(a) h_p, at most N_i B_i/2, where its upper wheel lifts.</summary>
    public static double Pinned(double load, double track, double pinHeight, double sideRadians)
    {
        var most = load * track / 2;
        return Math.Min(most, Math.Max(-most, load * Math.Tan(sideRadians) * pinHeight));
    }

    /// <summary>
    /// Shares K among the axles. An axle on a pin at h_p takes its part of the side force, N_i tan(a), at that height and no more; the rest goes to the rigid axles by the square of their track (equal stiffness at every wheel).
    /// A wheel that would have to pull the ground lifts; the rest of the moment then goes to the other rigid axles.
    /// </summary>
    /// <param name="load">Axle loads.</param>
    /// <param name="track">Distances between the middles of left and right wheels.</param>
    /// <param name="pinHeight">Height of the pin of an axle; not a number where the axle is rigid.</param>
    /// <param name="sideRadians">Side slope.</param>
    /// <param name="moment">K.</param>
    /// <param name="right">Receives the load of the right wheels of each axle; the left ones carry the rest.</param>
    /// <returns>Moment that nothing is left to hold; 0 while the machine stands.</returns>
    public static double Share(ReadOnlySpan<double> load, ReadOnlySpan<double> track, ReadOnlySpan<double> pinHeight, double sideRadians, double moment, Span<double> right)
    {
        var n = load.Length;
        var rest = moment;
        for (var i = 0; i < n; i++)
        {
            right[i] = load[i] / 2;
            if (double.IsNaN(pinHeight[i])) continue;
            var k = Pinned(load[i], track[i], pinHeight[i], sideRadians);
            right[i] += k / track[i];
            rest -= k;
        }

        var full = 0;
        for (var pass = 0; pass < n && rest != 0; pass++)
        {
            double sum = 0;
            for (var i = 0; i < n; i++)
            {
                if (double.IsNaN(pinHeight[i]) && (full & (1 << i)) == 0) sum += track[i] * track[i];
            }

            if (sum == 0) return rest;
            var share = rest;
            for (var i = 0; i < n; i++)
            {
                if (!double.IsNaN(pinHeight[i]) || (full & (1 << i)) != 0) continue;
                double k = share * track[i] * track[i] / sum, free = share > 0 ? (load[i] - right[i]) * track[i] : -right[i] * track[i];
                if (Math.Abs(k) >= Math.Abs(free))
                {
                    k = free;
                    full |= 1 << i;
                }

                right[i] += k / track[i];
                rest -= k;
            }

            if (Math.Abs(rest) <= 1e-12 * Math.Abs(moment)) return 0;
        }

        return rest;
    }
}
