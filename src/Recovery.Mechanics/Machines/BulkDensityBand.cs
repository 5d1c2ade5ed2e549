using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Bulk density of a good as it lies: low, central, high, with the sources behind it.</summary>
/// <remarks>Low and high are the least and the greatest figure known. Central is the middle of the figures of the strongest standing among them. Immutable.</remarks>
public sealed record BulkDensityBand
{
    internal BulkDensityBand(double low, double central, double high, IReadOnlyList<Source> sources)
    {
        Low = Density.FromKilogramsPerCubicMeter(low);
        Central = Density.FromKilogramsPerCubicMeter(central);
        High = Density.FromKilogramsPerCubicMeter(high);
        Sources = sources;
    }

    /// <summary>Gets the least density known.</summary>
    public Density Low { get; }

    /// <summary>Gets the middle of the figures of the strongest standing.</summary>
    public Density Central { get; }

    /// <summary>Gets the greatest density known.</summary>
    public Density High { get; }

    /// <summary>Gets the sources of all figures.</summary>
    public IReadOnlyList<Source> Sources { get; }

    /// <summary>Gets the weakest standing among the sources.</summary>
    public Standing Standing => Standings.Weakest(Sources);

    /// <summary>Gives the band in words, invariant culture.</summary>
    /// <returns>Low, central, high and standing.</returns>
    public override string ToString() => Text.Number(Low.KilogramsPerCubicMeter, 3) + " / " + Text.Number(Central.KilogramsPerCubicMeter, 3) + " / " + Text.With(High.KilogramsPerCubicMeter, "kg/m3", 3) + " (" + Standings.Describe(Standing) + ")";
}
