using System;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index from the state of a soil by other published fits, once. SI out.</summary>
/// <remarks>Sources: <see cref="GroundSources.VegaNieva"/>, <see cref="GroundSources.Peat"/>, <see cref="GroundSources.Amarjan"/>.</remarks>
internal static class PenetrationKernel
{
    /// <summary>Vega-Nieva et al. 2009: CI[MPa] = 10^(1.99 - 0.38 sand - 2.23 porosity - 0.72 S).</summary>
    public static double VegaNieva(double sand, double porosity, double saturation) => 1e6 * Math.Pow(10, 1.99 - (0.38 * sand) - (2.23 * porosity) - (0.72 * saturation));

    /// <summary>Peat, power law: CI[kPa] = 10504 w^-0.561, w in per cent.</summary>
    public static double Peat(double moisturePercent) => 1000 * 10504 * Math.Pow(moisturePercent, -0.561);

    /// <summary>Amarjan, peat: CI[kPa] = (2500/w)(100 - 3.60 H^1.414).</summary>
    public static double AmarjanConeIndex(double moisturePercent, double humification) => 1000 * 2500 / moisturePercent * (100 - (3.60 * Math.Pow(humification, 1.414)));

    /// <summary>Amarjan, peat: tau[kPa] = (140/w)(100 - 2.83 H^1.41).</summary>
    public static double AmarjanShear(double moisturePercent, double humification) => 1000 * 140 / moisturePercent * (100 - (2.83 * Math.Pow(humification, 1.41)));
}
