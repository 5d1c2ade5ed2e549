using System;
using MathNet.Numerics.Integration;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Contact area and vertical stress under a tyre after Keller.</summary>
/// <remarks>
/// <para>L = 0.47 + 0.11 d^2 - 0.16 ln(p/p_rec); sigma_max = 34.4 + 1.13 p + 0.72 W - 33.4 ln(p/p_rec) kPa; footprint |2x/L|^n + |2y/w|^n = 1 with n = 2.1 (w d)^2 + 2, so A = L w Gamma(1 + 1/n)^2/Gamma(1 + 2/n).
/// Across f(y) = C (w/2 - |y|) e^(-delta_y (w/2 - |y|)), delta_y = 9.3 - 7.3 w, greatest f 1; along 1 - |x/l(y)|^alpha, alpha = W/(I - W) with I = 2 sigma_max times the integral of f l over the width. w tyre width, d diameter, m; p inflation and p_rec the inflation recommended for the load, kPa; W load, kN.</para>
/// <para>Fitted on farm tyres of far smaller load: above 60 kN it is flagged (from memory). alpha outside 1 to 16 is flagged: peak, footprint and load do not fit together. So is a width above 1.27 m, where the decay turns.</para>
/// <para>Source: Keller 2005, Biosyst. Eng. 92:85-96 (reported); area and alpha in closed form derived.</para>
/// </remarks>
public sealed class KellerModel : IModel
{
    private KellerModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static KellerModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Contact of a tyre (Keller)";

    /// <inheritdoc/>
    public Source Source => MachinesSources.Keller;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("W", "wheel load of the fit", 0, 60, "kN", MachinesSources.Remembered),
        new ValidityLimit("w", "width, where the decay across stays positive", 0, 1.27, "m", GeneralSources.Statics),
        new ValidityLimit("alpha", "exponent along the footprint", 1, 16, string.Empty, MachinesSources.Keller));

    /// <summary>Gives the contact.</summary>
    /// <param name="tyre">The tyre with its inflation.</param>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <param name="recommendedInflation">Inflation that the maker recommends for the load, a tenth to ten times the present one.</param>
    /// <returns>Footprint, stresses and flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public KellerContact Evaluate(Tyre tyre, Force load, Pressure recommendedInflation)
    {
        double p = Guard.NotNull(tyre, nameof(tyre)).Inflation.Pascals, w = Guard.Newtons(load, 0.001, 500, nameof(load));
        var ratio = p / Guard.Pascals(recommendedInflation, p / 1e4, p / 100, nameof(recommendedInflation));
        double b = tyre.SectionWidth.Meters, d = tyre.OverallDiameter.Meters;
        double length = ContactKernel.KellerLength(d, ratio), shape = ContactKernel.KellerShape(b, d), peak = ContactKernel.KellerPeak(p, w, ratio), decay = ContactKernel.KellerDecay(b);
        // The footprint ends in a root at the edge: the double-exponential rule takes that; half the width, by symmetry twice.
        var most = 4 * peak * DoubleExponentialTransformation.Integrate(y => ContactKernel.KellerAcross(b, decay, y) * ContactKernel.HalfLength(length, b, shape, y), 0, b / 2, 1e-10);
        double? alpha = most > w ? w / (most - w) : null;
        var area = ContactKernel.SuperEllipse(length, b, shape);
        return new KellerContact(new ContactPatch(this, area, w, Validity.Flag(w / 1000, b, alpha ?? double.PositiveInfinity)), length, b, shape, peak, decay, alpha);
    }

    /// <summary>Works the contact out.</summary>
    /// <param name="tyre">The tyre with its inflation.</param>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <param name="recommendedInflation">Inflation that the maker recommends for the load.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Tyre tyre, Force load, Pressure recommendedInflation)
    {
        var c = Evaluate(tyre, load, recommendedInflation);
        string p = Text.Number(tyre.Inflation.Kilopascals), rec = Text.Number(recommendedInflation.Kilopascals), w = Text.Number(load.Kilonewtons), b = Text.Number(tyre.SectionWidth.Meters), d = Text.Number(tyre.OverallDiameter.Meters), n = Text.Number(c.ShapeExponent), l = Text.Number(c.ContactLength.Meters);
        return new WorkingBuilder(Name)
            .Step("L", "contact length", "0.47 + 0.11 d^2 - 0.16 ln(p/p_rec)", "0.47 + 0.11 x " + d + "^2 - 0.16 ln(" + p + "/" + rec + ")", Text.With(c.ContactLength.Meters, "m"), Source)
            .Step("n", "exponent of the footprint", "2.1 (w d)^2 + 2", "2.1 (" + b + " x " + d + ")^2 + 2", n, Source)
            .Step("A", "area of contact", "L w Gamma(1 + 1/n)^2/Gamma(1 + 2/n)", l + " x " + b + ", n = " + n, Text.With(c.Patch.Area.SquareMeters, "m2"), GeneralSources.Statics)
            .Step("p_m", "mean pressure", "W/A", w + "/" + Text.Number(c.Patch.Area.SquareMeters), Text.Kilopascals(c.Patch.MeanPressure.Pascals), GeneralSources.Statics)
            .Step("sigma_max", "greatest vertical stress", "34.4 + 1.13 p + 0.72 W - 33.4 ln(p/p_rec)", "34.4 + 1.13 x " + p + " + 0.72 x " + w + " - 33.4 ln(" + p + "/" + rec + ")", Text.Kilopascals(c.PeakStress.Pascals), Source)
            .Build();
    }
}
