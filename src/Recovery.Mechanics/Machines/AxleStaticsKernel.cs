using System;

namespace Recovery.Mechanics.Machines;

/// <summary>Axle loads from one force sum and one moment sum. Frame: x forward from the foremost axle (x_1 = 0), z up. SI in, SI out.</summary>
/// <remarks>Source: <see cref="Provenance.GeneralSources.Statics"/> (derived); no constant of its own.</remarks>
internal static class AxleStaticsKernel
{
    /// <summary>Most axles a machine may have.</summary>
    public const int MostAxles = 8;

    /// <summary>Force that the axles have to make up, normal to the ground: N = W cos(theta) - F_z.</summary>
    public static double NormalSum(double weight, double gradeRadians, double lineUp) => (weight * Math.Cos(gradeRadians)) - lineUp;

    /// <summary>Moment that the axles have to make up about the foremost axle: M = W (x_c cos(theta) - p z_c sin(theta)) - x_a F_z + z_a F_x.</summary>
    public static double MomentSum(double weight, double xc, double zc, double gradeRadians, int pullSign, double lineForward, double lineUp, double xa, double za) =>
        (weight * ((xc * Math.Cos(gradeRadians)) - (pullSign * zc * Math.Sin(gradeRadians)))) - (xa * lineUp) + (za * lineForward);

    /// <summary>Shares N and M among the axles. An axle that would have to pull the ground lifts and carries nothing; the others then carry all.</summary>
    /// <param name="places">Positions of the axles, the first at 0, falling, and their stiffness, which counts on a straight frame.</param>
    /// <param name="equalised">True: all axles behind the first share alike; false: straight frame.</param>
    /// <param name="normal">N.</param>
    /// <param name="moment">M.</param>
    /// <param name="loads">Receives the axle loads.</param>
    public static void Share(AxlePlaces places, bool equalised, double normal, double moment, Span<double> loads) => Share(places.X, places.Stiffness, equalised, normal, moment, loads);

    /// <summary>Shares N and M among axles whose positions and stiffness are given apart.</summary>
    public static void Share(ReadOnlySpan<double> x, ReadOnlySpan<double> stiffness, bool equalised, double normal, double moment, Span<double> loads)
    {
        var n = x.Length;
        if (equalised && n > 2)
        {
            Group(x, normal, Math.Min(Math.Max(OnGroup(x, moment), 0), normal), loads);
            return;
        }

        var lifted = 0;
        for (var pass = 0; pass < n; pass++)
        {
            Frame(x, stiffness, lifted, normal, moment, loads);
            var lowest = -1;
            for (var i = 0; i < n; i++)
            {
                if (loads[i] < 0 && (lowest < 0 || loads[i] < loads[lowest])) lowest = i;
            }

            if (lowest < 0) return;
            lifted |= 1 << lowest;
        }
    }

    /// <summary>Shares of a vertical force among axles that carry loads already: a force outside the supports relieves the far axle, so a share may be negative and none lifts. They sum to one.</summary>
    /// <param name="places">Positions of the axles and their stiffness.</param>
    /// <param name="equalised">True: all axles behind the first share alike; false: straight frame.</param>
    /// <param name="position">Where the force stands.</param>
    /// <param name="shares">Receives the share of each axle.</param>
    public static void Influence(AxlePlaces places, bool equalised, double position, Span<double> shares)
    {
        if (equalised && places.X.Length > 2) Group(places.X, 1, OnGroup(places.X, position), shares);
        else Frame(places.X, places.Stiffness, 0, 1, position, shares);
    }

    /// <summary>What the linked axles behind the first carry together, M over their mean position.</summary>
    private static double OnGroup(ReadOnlySpan<double> x, double moment)
    {
        double middle = 0;
        for (var i = 1; i < x.Length; i++) middle += x[i];
        return moment / (middle / (x.Length - 1));
    }

    private static void Group(ReadOnlySpan<double> x, double normal, double group, Span<double> loads)
    {
        loads[0] = normal - group;
        for (var i = 1; i < x.Length; i++) loads[i] = group / (x.Length - 1);
    }

    /// <summary>Straight frame on the axles that have not lifted: k_i (N/sum(k) + (M - N x_mean)(x_i - x_mean)/S).</summary>
    private static void Frame(ReadOnlySpan<double> x, ReadOnlySpan<double> stiffness, int lifted, double normal, double moment, Span<double> loads)
    {
        double sum = 0, mean = 0, spread = 0;
        for (var i = 0; i < x.Length; i++)
        {
            if (Lifted(lifted, i)) continue;
            sum += stiffness[i];
            mean += stiffness[i] * x[i];
        }

        mean /= sum;
        for (var i = 0; i < x.Length; i++)
        {
            if (!Lifted(lifted, i)) spread += stiffness[i] * (x[i] - mean) * (x[i] - mean);
        }

        for (var i = 0; i < x.Length; i++) loads[i] = Lifted(lifted, i) ? 0 : stiffness[i] * ((normal / sum) + (spread > 0 ? (moment - (normal * mean)) * (x[i] - mean) / spread : 0));
    }

    private static bool Lifted(int mask, int axle) => (mask & (1 << axle)) != 0;
}
