using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Stress in a drawbar pin in its clevis, with the clearance in the span.</summary>
/// <remarks>
/// <para>Simply supported, span s between the middles of the two bearings, load F over a width b at mid-span: sigma = 32 M/(pi d^3), M = F (2 s - b)/8, which is F s/4 for a load at a point; tau = F/(2 A), A = pi d^2/4. Yield begins at the lesser of sigma = f_y and tau = f_y/sqrt(3).</para>
/// <para>Bending governs: a loose clevis gap costs more than a thin pin, and an eye or shackle that spreads the load helps. The eye's bearing on the pin is checked apart (<see cref="EyeFitModel"/>).</para>
/// <para>Range: s/d 1 to 10; a shorter pin is a block, not a beam, and the stress is overstated. Elastic only. No public standard gives a drawbar's strength against snatching.</para>
/// <para>Source: statics of a beam (derived).</para>
/// </remarks>
public sealed class DrawbarPinModel : IModel
{
    private DrawbarPinModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static DrawbarPinModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Drawbar pin";

    /// <inheritdoc/>
    public Source Source => PartSources.PinStatics;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("s/d", "span over diameter of the pin", 1, 10, string.Empty, PartSources.PinStatics));

    /// <summary>Works out the stress in a pin.</summary>
    /// <param name="diameter">Diameter of the pin, 5 to 300 mm.</param>
    /// <param name="span">Distance between the middles of the two bearings, clearance included, 5 to 1,000 mm.</param>
    /// <param name="load">Load, 0 to 20,000 kN.</param>
    /// <param name="loadWidth">Width over which it bears, 0 (a point) to the span; null for a point.</param>
    /// <returns>The stresses.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public DrawbarPinStress Evaluate(Length diameter, Length span, Force load, Length? loadWidth = null)
    {
        double d = Guard.Metres(diameter, 0.005, 0.3, nameof(diameter)), s = Guard.Metres(span, 0.005, 1, nameof(span)), f = Guard.Newtons(load, 0, 20000, nameof(load));
        var b = loadWidth is { } width ? Guard.Metres(width, 0, s, nameof(loadWidth)) : 0;
        return new DrawbarPinStress(d, s, b, f, Validity.Flag(Math.Round(s / d, 9)));
    }

    /// <summary>Gives the span of a pin in a clevis: the gap, clearance and all, and half a plate on each side.</summary>
    /// <param name="clevisGap">Gap between the plates of the clevis, 5 to 800 mm.</param>
    /// <param name="plate">Thickness of one plate, 1 to 200 mm.</param>
    /// <returns>The span between the middles of the plates.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length Span(Length clevisGap, Length plate) => Length.FromMeters(Guard.Metres(clevisGap, 0.005, 0.8, nameof(clevisGap)) + Guard.Metres(plate, 0.001, 0.2, nameof(plate)));

    /// <summary>Works the stress out step by step.</summary>
    /// <param name="diameter">Diameter of the pin, 5 to 300 mm.</param>
    /// <param name="span">Span, 5 to 1,000 mm.</param>
    /// <param name="load">Load, 0 to 20,000 kN.</param>
    /// <param name="loadWidth">Width over which it bears; null for a point.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length diameter, Length span, Force load, Length? loadWidth = null)
    {
        var stress = Evaluate(diameter, span, load, loadWidth);
        string f = Text.Kilonewtons(load.Newtons), s = Text.With(span.Meters * 1000, "mm"), d = Text.With(diameter.Meters * 1000, "mm"), b = Text.With((loadWidth?.Meters ?? 0) * 1000, "mm");
        return new WorkingBuilder(Name)
            .Step("M", "bending moment at mid-span", "F (2 s - b)/8", f + ", s " + s + ", b " + b, Text.With(stress.Moment.NewtonMeters / 1000, "kN m"), Source)
            .Step("tau", "mean double shear", "F/(2 pi d^2/4)", f + ", d " + d, Text.With(stress.Shear.Pascals / 1e6, "MPa"), Source)
            .Step("sigma", "bending stress", "32 M/(pi d^3)", "d " + d, Text.With(stress.Bending.Pascals / 1e6, "MPa"), Source)
            .Build();
    }
}
