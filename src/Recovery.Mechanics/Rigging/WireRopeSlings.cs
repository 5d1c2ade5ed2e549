using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Wire rope slings as printed: seven rows of MIL-DTL-3903 Table II, uncoated (primary).</summary>
public static class WireRopeSlings
{
    /// <summary>Gets the source.</summary>
    public static Source Source => PartSources.WireSlingTable;

    /// <summary>Gets the rows, by diameter.</summary>
    public static IReadOnlyList<WireRopeSling> All { get; } = Array.AsReadOnly<WireRopeSling>(
    [
        new(0.375, 1.1, 2.2, 4.96, 88),
        new(0.5, 1.8, 3.6, 8.51, 86),
        new(0.625, 2.8, 5.6, 12.97, 84),
        new(0.75, 3.9, 7.8, 18.05, 82),
        new(0.875, 5.1, 10.2, 23.83, 80),
        new(1.125, 8.4, 16.8, 38.92, 80),
        new(2, 25, 50, 113.95, 80),
    ]);

    /// <summary>Finds a size: the largest printed one not above it.</summary>
    /// <param name="diameter">Diameter of the rope, 1 to 200 mm.</param>
    /// <returns>The row; null below the smallest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static WireRopeSling? Find(Length diameter)
    {
        var metres = Guard.Metres(diameter, 0.001, 0.2, nameof(diameter));
        WireRopeSling? found = null;
        foreach (var row in All)
        {
            if (TableKernel.Reaches(metres, row.Diameter.Meters)) found = row;
        }

        return found;
    }
}
