using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>The layer of soil whose cone index counts under a wheel or a track.</summary>
/// <remarks>
/// <para>Wheel load below 2,000 lbf: 3 to 9 in; to 15,000 lbf: 6 to 12 in; above: 0 to 12 in. Tracks below 4 psi: 3 to 9 in; below 100,000 lbf: 6 to 12 in; heavier: 0 to 12 in (ERDC/GSL SR-13-2 Table 3, reported).</para>
/// <para>The layer depends on the number of passes too (EN5341 p. 3-27, primary): a 46,000 lbf tracked howitzer on fine soil has 0 to 6 in for one pass and 6 to 12 in for fifty. The table knows no passes, so the count is kept with the layer.</para>
/// <para>Where the layer below is weaker, that one counts (drop-layer rule, reported): <see cref="ConeProfile.Governing"/>. So measure to <see cref="MeasureTo"/>, 18 in under the wheels of a harvester.</para>
/// <para>Immutable, equality by value, metres inside.</para>
/// </remarks>
public sealed record CriticalLayer
{
    private CriticalLayer(double topInches, double bottomInches, int passes)
    {
        Top = Length.FromMeters(topInches * CriticalLayerKernel.MetresPerInch);
        Bottom = Length.FromMeters(bottomInches * CriticalLayerKernel.MetresPerInch);
        MeasureTo = Length.FromMeters(CriticalLayerKernel.MeasureToInches(bottomInches) * CriticalLayerKernel.MetresPerInch);
        Passes = passes;
    }

    /// <summary>Gets the depth at which the layer begins.</summary>
    public Length Top { get; }

    /// <summary>Gets the depth at which the layer ends.</summary>
    public Length Bottom { get; }

    /// <summary>Gets the depth to measure to, so that the layers below are known too.</summary>
    public Length MeasureTo { get; }

    /// <summary>Gets the number of passes asked for.</summary>
    public int Passes { get; }

    /// <summary>Gets what a reader has to know about the passes; empty for one.</summary>
    public string Remark => Passes == 1 ? string.Empty : "The critical layer depends on the number of passes as well; the table knows none. For many passes in one track look at the layers below too.";

    /// <summary>Gets where the layer comes from.</summary>
    public Source Source => GroundSources.CriticalLayer;

    /// <summary>Gives the layer under a wheel.</summary>
    /// <param name="wheelLoad">Load of one wheel, above 0 to 500 kN.</param>
    /// <param name="passes">Passes of the running gear in one track, 1 to 1,000.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static CriticalLayer UnderWheel(Force wheelLoad, int passes = 1)
    {
        var layer = CriticalLayerKernel.Wheel(Guard.Newtons(wheelLoad, 0.001, 500, nameof(wheelLoad)));
        return Of(layer, passes);
    }

    /// <summary>Gives the layer under a tracked machine.</summary>
    /// <param name="groundPressure">Weight over the contact area of both tracks, 1 to 500 kPa.</param>
    /// <param name="weight">Weight of the machine, 1 to 5,000 kN.</param>
    /// <param name="passes">Passes of the running gear in one track, 1 to 1,000.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static CriticalLayer UnderTrack(Pressure groundPressure, Force weight, int passes = 1)
    {
        var layer = CriticalLayerKernel.Track(Guard.Pascals(groundPressure, 1, 500, nameof(groundPressure)), Guard.Newtons(weight, 1, 5000, nameof(weight)));
        return Of(layer, passes);
    }

    /// <summary>Gives the layer in words, invariant culture.</summary>
    /// <returns>Its depths and the depth to measure to.</returns>
    public override string ToString() => Text.Number(Top.Meters, 2) + " to " + Text.With(Bottom.Meters, "m", 2) + ", measure to " + Text.With(MeasureTo.Meters, "m", 2);

    private static CriticalLayer Of(int layer, int passes) =>
        new(CriticalLayerKernel.TopInches(layer), CriticalLayerKernel.BottomInches(layer), Guard.Count(passes, 1, 1000, nameof(passes)));
}
