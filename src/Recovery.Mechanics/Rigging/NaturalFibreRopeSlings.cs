using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Natural-fibre rope slings as printed: five rows of 29 CFR 1918 Appendix II Table 2 (primary).</summary>
public static class NaturalFibreRopeSlings
{
    /// <summary>Gets the source.</summary>
    public static Source Source => PartSources.NaturalRopeTable;

    /// <summary>Gets the rows.</summary>
    public static IReadOnlyList<NaturalFibreRopeSling> All { get; } = Array.AsReadOnly<NaturalFibreRopeSling>(
    [
        new(0.5, false, 550, 250, 1100, 900, 750, 550),
        new(0.75, false, 1100, 550, 2200, 1900, 1500, 1100),
        new(1, false, 1800, 900, 3600, 3100, 2600, 1800),
        new(2.625, false, 10500, 5200, 21000, 18000, 14500, 10500),
        new(0.5, true, 950, 500, 1900, 1700, 1400, 950),
    ]);

    /// <summary>Finds the row of a size: the largest printed size not above it.</summary>
    /// <param name="diameter">Diameter of the rope, 1 to 200 mm.</param>
    /// <param name="endless">Whether the sling is endless.</param>
    /// <returns>The row; null below the smallest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static NaturalFibreRopeSling? Find(Length diameter, bool endless)
    {
        var metres = Guard.Metres(diameter, 0.001, 0.2, nameof(diameter));
        NaturalFibreRopeSling? found = null;
        foreach (var row in All)
        {
            if (row.Endless == endless && TableKernel.Reaches(metres, row.Diameter.Meters)) found = row;
        }

        return found;
    }
}
