using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Pressure along a stiff track whose load lies off its middle.</summary>
/// <remarks>
/// <para>p = W/(l b) (1 +- 6 e/l) while the load lies in the middle third; outside it only 3 (l/2 - |e|) carries, with twice its mean at the end. W load on the track, l contact length, b width, e distance of the load from the middle.</para>
/// <para>A load outside the middle third is flagged: one end lifts. Real tracks press hardest under their road wheels, so the greatest pressure is higher than this. A unit on a pin at its middle has e = 0.</para>
/// <para>Source: statics of a stiff strip on ground that yields alike (derived).</para>
/// </remarks>
public sealed class TrackPressureModel : IModel
{
    private TrackPressureModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static TrackPressureModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Pressure along a track";

    /// <inheritdoc/>
    public Source Source => GeneralSources.Statics;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("|e|/l", "load within the middle third", 0, 1.0 / 6, string.Empty, GeneralSources.Statics));

    /// <summary>Gives the pressures.</summary>
    /// <param name="track">The track.</param>
    /// <param name="load">Load on this track, 0 to 1,000 kN.</param>
    /// <param name="offset">Distance of the load from the middle of the contact, forward positive; within 0.45 of the contact length.</param>
    /// <returns>Mean, front and rear pressure, with flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TrackPressure Evaluate(Track track, Force load, Length offset)
    {
        double l = Guard.NotNull(track, nameof(track)).ContactLength.Meters, b = track.Width.Meters;
        double w = Guard.Newtons(load, 0, 1000, nameof(load)), e = Guard.Metres(offset, -0.45 * l, 0.45 * l, nameof(offset));
        double greatest = TrackKernel.Greatest(w, l, b, e), least = TrackKernel.Least(w, l, b, e);
        // The edge of the middle third counts as within, whichever way a sixth of the length was rounded.
        return new TrackPressure(TrackKernel.MeanPressure(w, l, b), e >= 0 ? greatest : least, e >= 0 ? least : greatest, TrackKernel.CarryingLength(l, e), Validity.Flag(Math.Abs(e) <= l / 6 * (1 + 1e-12) ? Math.Min(Math.Abs(e) / l, 1.0 / 6) : Math.Abs(e) / l));
    }

    /// <summary>Works the pressures out.</summary>
    /// <param name="track">The track.</param>
    /// <param name="load">Load on this track, 0 to 1,000 kN.</param>
    /// <param name="offset">Distance of the load from the middle of the contact, forward positive.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Track track, Force load, Length offset)
    {
        var p = Evaluate(track, load, offset);
        string w = Text.Number(load.Kilonewtons), l = Text.Number(track.ContactLength.Meters), b = Text.Number(track.Width.Meters), e = Text.Number(offset.Meters);
        var within = p.Flags.Count == 0;
        return new WorkingBuilder(Name)
            .Step("p", "mean pressure", "W/(l b)", w + "/(" + l + " x " + b + ")", Text.Kilopascals(p.Mean.Pascals), Source)
            .Step("l_c", "length that carries", within ? "l" : "3 (l/2 - |e|)", within ? l : "3 (" + l + "/2 - |" + e + "|)", Text.With(p.CarryingLength.Meters, "m"), Source)
            .Step("p_max", "pressure at the loaded end", within ? "p (1 + 6 |e|/l)" : "2 W/(l_c b)", "e = " + e + " m", Text.Kilopascals(p.Greatest.Pascals), Source)
            .Build();
    }
}
