using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>How the soft eye of a strap sits on a pin: opening angle, bearing, pressure, width of the jaw.</summary>
/// <remarks>
/// <para>Opening e = 2 asin(r/(l - r)), r = D/2, l inside length of the eye; inside length for an opening D/2 + (D/2)/sin(e/2). Pressure p = T/(D w), w width of the eye as it lies.</para>
/// <para>Limits: opening at most 20 deg; a bearing that is not straight has a radius of at least 0.75 w and w at most 75 mm (EN 1492-1 annex, reported); eye at least 3.5 D long (German practice, reported); about 48 MPa (from memory, a warning); jaw at least as wide as the eye lies flat (from memory: no curve of bunching is published).</para>
/// <para>Source: EN 1492-1 annex as quoted (reported), geometry (derived).</para>
/// </remarks>
public sealed class EyeFitModel : IModel
{
    private EyeFitModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static EyeFitModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Eye fit";

    /// <inheritdoc/>
    public Source Source => PartSources.SoftEye;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("l/D", "inside length of the eye over the diameter of the pin, German practice", SectionKernel.EyeRule, double.PositiveInfinity, string.Empty, PartSources.SoftEye));

    /// <summary>Checks an eye on a pin.</summary>
    /// <param name="name">Name of the strap end.</param>
    /// <param name="pin">Diameter of the pin, 2 to 500 mm.</param>
    /// <param name="eyeLength">Inside length of the eye lying flat, more than the diameter of the pin, to 5 m.</param>
    /// <param name="eyeWidth">Width of the eye as it lies, 5 to 500 mm.</param>
    /// <param name="load">Load on the eye, 0 to 20,000 kN.</param>
    /// <param name="jaw">Width of the jaw it goes into, 5 to 1,000 mm; null where there is none.</param>
    /// <param name="straight">Whether the bearing is straight across its width, a pin; false for the inside of a bow or ring, where <paramref name="pin"/> is twice its radius across the strap.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public EyeFit Evaluate(string name, Length pin, Length eyeLength, Length eyeWidth, Force load, Length? jaw = null, bool straight = true)
    {
        Guard.Name(name, nameof(name));
        double d = Guard.Metres(pin, 0.002, 0.5, nameof(pin)), l = Guard.Metres(eyeLength, d * 1.001, 5, nameof(eyeLength)), w = Guard.Metres(eyeWidth, 0.005, 0.5, nameof(eyeWidth)), t = Guard.Newtons(load, 0, 20000, nameof(load));
        var findings = new List<Finding>();
        double angle = HitchKernel.Degrees(SectionKernel.EyeAngle(l, d)), pressure = SectionKernel.Bearing(t, d, w);
        if (angle > SectionKernel.WidestEye) findings.Add(new Finding(GearFindings.EyeOpen, name, SectionKernel.WidestEye, angle, "deg"));
        if (!straight && (w > SectionKernel.WidestRound || d / 2 < SectionKernel.RoundShare * w)) findings.Add(new Finding(GearFindings.EyeOnRound, name, SectionKernel.RoundShare * w * 1000, d * 500, "mm"));
        if (jaw is { } gap && Guard.Metres(gap, 0.005, 1, nameof(jaw)) < w) findings.Add(new Finding(GearFindings.EyeBunched, name, w * 1000, gap.Meters * 1000, "mm"));
        if (pressure > SectionKernel.BearingLimit) findings.Add(new Finding(GearFindings.BearingHigh, name, SectionKernel.BearingLimit / 1e6, pressure / 1e6, "MPa"));
        return new EyeFit(angle * Math.PI / 180, pressure, findings.AsReadOnly(), Validity.Flag(Math.Round(l / d, 9)));
    }

    /// <summary>Gives the inside length of an eye for an opening angle.</summary>
    /// <param name="pin">Diameter of the pin, 2 to 500 mm.</param>
    /// <param name="opening">Opening, 1 to 90 degrees; 20 is the widest allowed.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length EyeLength(Length pin, Angle opening) => Length.FromMeters(SectionKernel.EyeLength(Guard.Metres(pin, 0.002, 0.5, nameof(pin)), Guard.Radians(opening, 1, 90, nameof(opening))));

    /// <summary>Gives the inside length of an eye by German practice, 3.5 diameters.</summary>
    /// <param name="pin">Diameter of the pin, 2 to 500 mm.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public Length EyeLengthByRule(Length pin) => Length.FromMeters(SectionKernel.EyeRule * Guard.Metres(pin, 0.002, 0.5, nameof(pin)));

    /// <summary>Gives the least radius of a bearing that is not straight, 0.75 of its width.</summary>
    /// <param name="eyeWidth">Width of the eye as it lies, 5 to 75 mm.</param>
    /// <returns>The radius.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its range.</exception>
    public Length LeastRadius(Length eyeWidth) => Length.FromMeters(SectionKernel.RoundShare * Guard.Metres(eyeWidth, 0.005, SectionKernel.WidestRound, nameof(eyeWidth)));

    /// <summary>Works opening and pressure out step by step.</summary>
    /// <param name="pin">Diameter of the pin, 2 to 500 mm.</param>
    /// <param name="eyeLength">Inside length of the eye.</param>
    /// <param name="eyeWidth">Width of the eye as it lies.</param>
    /// <param name="load">Load on the eye.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length pin, Length eyeLength, Length eyeWidth, Force load)
    {
        var fit = Evaluate("eye", pin, eyeLength, eyeWidth, load);
        return new WorkingBuilder(Name)
            .Step("e", "opening of the eye", "2 asin(r/(l - r)), r = D/2", "D " + Text.With(pin.Meters * 1000, "mm") + ", l " + Text.With(eyeLength.Meters * 1000, "mm"), Text.With(fit.Opening.Degrees, "deg"), GeneralSources.Statics)
            .Step("p", "bearing pressure", "T/(D w)", Text.Kilonewtons(load.Newtons) + "/(" + Text.Number(pin.Meters * 1000) + " x " + Text.Number(eyeWidth.Meters * 1000) + " mm2)", Text.With(fit.BearingPressure.Pascals / 1e6, "MPa"), GeneralSources.Statics)
            .Build();
    }
}
