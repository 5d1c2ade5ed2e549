using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Published terrain parameters.</summary>
/// <remarks>Source: Wong 2008, Theory of Ground Vehicles (reported). Most rows are conversions of round imperial numbers and convert back to them. The shear deformation modulus is not part of the table.
/// The coarse dry sand rows give cone indices far apart at depth: cone-index models fail there.</remarks>
public static class BekkerTerrains
{
    /// <summary>Gets all terrains, in the order of the table.</summary>
    public static IReadOnlyList<BekkerTerrain> All { get; } = Array.AsReadOnly(
    [
        Row("dry sand (LLL)", 0, 0.99, 1528.43, 1.1, 1.04, 28),
        Row("sandy loam (LLL)", 15, 5.27, 1515.04, 0.7, 1.72, 29),
        Row("sandy loam (LLL)", 22, 2.56, 43.12, 0.2, 1.38, 38),
        Row("sandy loam (Strong-Buchele)", 11, 52.53, 1127.97, 0.9, 4.83, 20),
        Row("sandy loam (Strong-Buchele)", 23, 11.42, 808.96, 0.4, 9.65, 35),
        Row("sandy loam (Hanamoto)", 26, 2.79, 141.11, 0.3, 13.79, 22),
        Row("sandy loam (Hanamoto)", 32, 0.77, 51.91, 0.5, 5.17, 11),
        Row("clayey soil (Thailand)", 38, 13.19, 692.15, 0.5, 4.14, 13),
        Row("clayey soil (Thailand)", 55, 16.03, 1262.53, 0.7, 2.07, 10),
        Row("heavy clay (WES)", 25, 12.70, 1555.95, 0.13, 68.95, 34),
        Row("heavy clay (WES)", 40, 1.84, 103.27, 0.11, 20.69, 6),
        Row("lean clay (WES)", 22, 16.43, 1724.69, 0.2, 68.95, 20),
        Row("lean clay (WES)", 32, 1.52, 119.61, 0.15, 13.79, 11),
        Row("LETE sand (Wong)", null, 102, 5301, 0.79, 1.3, 31.1),
        Row("upland sandy loam (Wong)", 51, 74.6, 2080, 1.10, 3.3, 33.7),
        Row("Rubicon sandy loam (Wong)", 43, 6.9, 752, 0.66, 3.7, 29.8),
        Row("North Gower clayey loam (Wong)", 46, 41.6, 2471, 0.73, 6.1, 26.6),
        Row("Grenville loam (Wong)", 24, 0.06, 5880, 1.01, 3.1, 29.8),
    ]);

    /// <summary>Finds the terrain of a name and a moisture.</summary>
    /// <param name="name">Name as in the table.</param>
    /// <param name="moisturePercent">Moisture as in the table, per cent; null for the row without one.</param>
    /// <returns>The terrain.</returns>
    /// <exception cref="ArgumentException">The table holds no such row.</exception>
    public static BekkerTerrain Find(string name, double? moisturePercent = null)
    {
        foreach (var terrain in All)
        {
            var percent = terrain.Moisture?.Percent;
            if (terrain.Name == name && (moisturePercent is { } wanted ? percent is { } has && Math.Abs(has - wanted) < 1e-6 : percent is null)) return terrain;
        }

        throw new ArgumentException("there is no terrain '" + name + "'" + (moisturePercent is { } p ? " at " + Text.With(p, "%") : " without a stated moisture") + " in the table.", nameof(name));
    }

    private static BekkerTerrain Row(string name, double? moisturePercent, double kc, double kphi, double n, double cohesionKilopascals, double degrees) =>
        new(name, kc, kphi, n, Pressure.FromKilopascals(cohesionKilopascals), Angle.FromDegrees(degrees), moisturePercent is { } w ? Ratio.FromPercent(w) : null, GroundSources.BekkerTable);
}
