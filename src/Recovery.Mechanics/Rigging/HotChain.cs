using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Share of the limit that a chain keeps while it is hot. Two tables circulate in trade publications (reported); the newer, which begins to lose at 400 F, counts.</summary>
/// <remarks>The row at or above the temperature, no interpolation. Outside -40 C to 1000 F (538 C) there is no figure.</remarks>
public static class HotChain
{
    /// <summary>Gets the source.</summary>
    public static Source Source => PartSources.ChainHot;

    /// <summary>The newer table: from 400 F 0.90, 500 0.85, 600 0.80, 700 0.70, 800 0.60, 900 0.50, 1000 0.40. It counts.</summary>
    /// <param name="temperature">Temperature of the chain, -60 to 600 deg C.</param>
    /// <returns>The share; null where there is no figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static Ratio? Newer(Temperature temperature) => Known(ChainKernel.Hot(Celsius(temperature)));

    /// <summary>The older table: from 600 F 0.90, 700 0.80, 800 0.70, 900 0.60, 1000 0.50. Shown beside, never counted.</summary>
    /// <param name="temperature">Temperature of the chain, -60 to 600 deg C.</param>
    /// <returns>The share; null where there is no figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static Ratio? Older(Temperature temperature) => Known(ChainKernel.HotOlder(Celsius(temperature)));

    private static double Celsius(Temperature temperature) => Guard.Range(temperature.DegreesCelsius, -60, 600, "deg C", nameof(temperature));

    private static Ratio? Known(double share) => double.IsNaN(share) ? null : Ratio.FromDecimalFractions(share);
}
