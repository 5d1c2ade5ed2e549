using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A tape measure as a load cell: two marks on the strap, and what they move apart.</summary>
/// <remarks>
/// <para>x = F g/EA for marks a gauge length g apart on the slack strap, and F = EA x/g back, over both ends of EA. It is as good as the stiffness is known, which for a strap without a curve is a factor of two and more; one known load on the same strap narrows it to that load's own error.</para>
/// <para>First loading alone: a strap that was pulled before reads less at the same force. Source: linear spring (derived).</para>
/// </remarks>
public static class FieldGauge
{
    /// <summary>Gives the movement of the marks at a tension.</summary>
    /// <param name="line">The line.</param>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <param name="gaugeLength">Distance of the marks on the slack line, 0.1 m to its length.</param>
    /// <returns>The movement as a band.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StretchBand Movement(ElasticLine line, Force tension, Length gaugeLength)
    {
        var g = Gauge(line, gaugeLength);
        var f = Guard.Newtons(tension, 0, 20000, nameof(tension));
        return new StretchBand(ElasticKernel.Stretch(f, ElasticKernel.Stiffness(line.StiffNewtons, g)), ElasticKernel.Stretch(f, ElasticKernel.Stiffness(line.SoftNewtons, g)));
    }

    /// <summary>Gives the tension from a measured movement of the marks.</summary>
    /// <param name="line">The line.</param>
    /// <param name="movement">Movement, 0 to the gauge length.</param>
    /// <param name="gaugeLength">Distance of the marks on the slack line, 0.1 m to its length.</param>
    /// <returns>The tension as a band.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TensionBand Tension(ElasticLine line, Length movement, Length gaugeLength)
    {
        var g = Gauge(line, gaugeLength);
        var x = Guard.Metres(movement, 0, g, nameof(movement));
        return new TensionBand(x * ElasticKernel.Stiffness(line.SoftNewtons, g), x * ElasticKernel.Stiffness(line.StiffNewtons, g));
    }

    /// <summary>Gives the same line with its stiffness taken from one known load.</summary>
    /// <param name="line">The line.</param>
    /// <param name="knownTension">A tension known from a load cell or a weight, 1 to 20,000 kN.</param>
    /// <param name="movement">Movement of the marks at it, 1 mm to the gauge length.</param>
    /// <param name="gaugeLength">Distance of the marks on the slack line, 0.1 m to its length.</param>
    /// <returns>The line with both ends at the measured stiffness, standing as supplied by the user.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ElasticLine Calibrated(ElasticLine line, Force knownTension, Length movement, Length gaugeLength)
    {
        var g = Gauge(line, gaugeLength);
        var ea = Guard.Newtons(knownTension, 1, 20000, nameof(knownTension)) * g / Guard.Metres(movement, 0.001, g, nameof(movement));
        return new ElasticLine(line.Length, Force.FromNewtons(ea), Force.FromNewtons(ea), line.MassPerMetre, GeneralSources.Caller);
    }

    /// <summary>Works out the movement of the marks at a tension.</summary>
    /// <param name="line">The line.</param>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <param name="gaugeLength">Distance of the marks on the slack line, 0.1 m to its length.</param>
    /// <returns>The worked steps; the last is the greatest movement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Working Explain(ElasticLine line, Force tension, Length gaugeLength)
    {
        var band = Movement(line, tension, gaugeLength);
        string f = Text.Number(tension.Newtons / 1000), g = Text.Number(gaugeLength.Meters);
        return new WorkingBuilder("Movement of two marks at " + f + " kN")
            .Step("x_least", "stiff end", "F g/EA", f + " x " + g + "/" + Text.Number(line.StiffNewtons / 1000), Text.With(band.Least.Meters, "m"), line.Source)
            .Step("x_greatest", "soft end", "F g/EA", f + " x " + g + "/" + Text.Number(line.SoftNewtons / 1000), Text.With(band.Greatest.Meters, "m"), line.Source)
            .Build();
    }

    private static double Gauge(ElasticLine line, Length gaugeLength) => Guard.Metres(gaugeLength, 0.1, Guard.NotNull(line, nameof(line)).LengthMetres, nameof(gaugeLength));
}
