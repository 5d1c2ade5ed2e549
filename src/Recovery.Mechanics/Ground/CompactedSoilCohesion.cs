using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Saturated effective cohesion of soil compacted to Proctor density, by class: for trench walls and ramps, never for the strength of a mire.</summary>
/// <remarks>Source: USBR 1977 as given by Huang 1983 (reported), in tsf to two decimals. These are drained values of compacted soil; mud has a few kilopascals of undrained strength whatever its class.</remarks>
public static class CompactedSoilCohesion
{
    /// <summary>Gets where the table comes from.</summary>
    public static Source Source => GroundSources.CompactedCohesion;

    /// <summary>Gives the cohesion of a class.</summary>
    /// <param name="uscs">Soil class.</param>
    /// <returns>The cohesion; null for a class that the table does not hold (SW, SP, OL, OH).</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The class is not defined.</exception>
    public static Pressure? Of(UscsClass uscs)
    {
        double? tsf = Guard.Defined(uscs, uscs is >= UscsClass.SW and <= UscsClass.OH, nameof(uscs)) switch
        {
            UscsClass.SM or UscsClass.MH => 0.21,
            UscsClass.SMSC => 0.15,
            UscsClass.SC or UscsClass.CH => 0.12,
            UscsClass.ML => 0.09,
            UscsClass.CLML => 0.23,
            UscsClass.CL => 0.14,
            _ => null,
        };
        return tsf is { } value ? Pressure.FromPascals(value * HandTestKernel.PascalsPerTsf) : null;
    }
}
