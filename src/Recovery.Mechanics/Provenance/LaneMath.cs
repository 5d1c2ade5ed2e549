#if NET
using System.Runtime.CompilerServices;

namespace Recovery.Mechanics.Provenance;

/// <summary>Functions over lanes that the runtime has only in slower general form.</summary>
internal static class LaneMath
{
    private const double Log2E = 1.4426950408889634074, Ln2High = 0.693147180369123816490, Ln2Low = 1.90821492927058770002e-10, Round = 6755399441055744.0, Lowest = -700;

    /// <summary>e^x for x from -700 to 700, to 2e-16; below -700 it gives e^-700. x = n ln 2 + r, e^r by its series to r^12, then 2^n into the exponent.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Exp<T>(T x)
        where T : struct, ILanes<T>
    {
        x = T.Max(x, T.Of(Lowest));
        var shifted = T.Fused(x, T.Of(Log2E), T.Of(Round));
        var n = shifted - T.Of(Round);
        var r = T.Fused(n, T.Of(-Ln2Low), T.Fused(n, T.Of(-Ln2High), x));

        // Estrin: pairs, fours, then the rest, so that products do not wait for each other.
        T r2 = r * r, r4 = r2 * r2, r8 = r4 * r4;
        T p01 = r + T.Of(1), p23 = T.Fused(r, T.Of(1.0 / 6), T.Of(0.5)), p45 = T.Fused(r, T.Of(1.0 / 120), T.Of(1.0 / 24)), p67 = T.Fused(r, T.Of(1.0 / 5040), T.Of(1.0 / 720));
        T p89 = T.Fused(r, T.Of(1.0 / 362880), T.Of(1.0 / 40320)), pab = T.Fused(r, T.Of(1.0 / 39916800), T.Of(1.0 / 3628800));
        T low = T.Fused(r2, p23, p01), mid = T.Fused(r2, p67, p45), high = T.Fused(r2, pab, p89);
        high = T.Fused(r4, T.Of(1.0 / 479001600), high);
        return T.Scale(T.Fused(r8, high, T.Fused(r4, mid, low)), shifted);
    }
}
#endif
