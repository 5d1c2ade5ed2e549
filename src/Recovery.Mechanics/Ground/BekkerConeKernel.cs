using System;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index that a terrain of Bekker parameters implies, once.</summary>
/// <remarks>Sources: <see cref="GroundSources.BekkerCone"/>, <see cref="GroundSources.BekkerTable"/>.</remarks>
internal static class BekkerConeKernel
{
    /// <summary>Height of the army cone, in.</summary>
    private const double ConeHeight = 1.5;

    /// <summary>
    /// CI[psi] = 1.625 {k_c/(n+1) [(z+1.5)^(n+1) - z^(n+1)] + 0.517 k_phi [(z+1.5)^(n+2)/((n+1)(n+2)) + z^(n+2)/(n+2) - (z+1.5) z^(n+1)/(n+1)]}.
    /// k_c in N/m^(n+1), k_phi in N/m^(n+2), z depth of the cone base in m; the relation itself is imperial. Pa out.
    /// </summary>
    public static double ConeIndex(double kcNewtons, double kphiNewtons, double n, double depthMetres)
    {
        var kc = kcNewtons / CriticalLayerKernel.NewtonsPerPound * Math.Pow(CriticalLayerKernel.MetresPerInch, n + 1);
        var kphi = kphiNewtons / CriticalLayerKernel.NewtonsPerPound * Math.Pow(CriticalLayerKernel.MetresPerInch, n + 2);
        double z = depthMetres / CriticalLayerKernel.MetresPerInch, tip = z + ConeHeight;
        var cohesive = kc / (n + 1) * (Math.Pow(tip, n + 1) - Math.Pow(z, n + 1));
        var frictional = 0.517 * kphi * ((Math.Pow(tip, n + 2) / ((n + 1) * (n + 2))) + (Math.Pow(z, n + 2) / (n + 2)) - (tip * Math.Pow(z, n + 1) / (n + 1)));
        return 1.625 * (cohesive + frictional) * MoistureKernel.PascalsPerPsi;
    }
}
