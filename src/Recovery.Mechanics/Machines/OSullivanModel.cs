using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Contact area of a tyre after O'Sullivan and others, on soil that gives and on hard ground.</summary>
/// <remarks>
/// <para>A = s_1 b d + s_2 W + s_3 W/p; A m2, b width and d diameter m, W load kN, p inflation kPa. Soil that gives: s = (0.310, 0.00263, 0.239); hard ground: (0.041, 0, 0.613).</para>
/// <para>The range of loads is not stated; above 60 kN it is flagged (from memory).</para>
/// <para>Source: O'Sullivan and others 1999, Soil Till. Res. 49:325-335. All constants <b>from memory</b>, to be verified.</para>
/// </remarks>
public sealed class OSullivanModel : IModel
{
    private readonly double _s1, _s2, _s3;

    private OSullivanModel(string ground, double s1, double s2, double s3)
    {
        Name = "Contact area of a tyre (O'Sullivan, " + ground + ")";
        _s1 = s1;
        _s2 = s2;
        _s3 = s3;
    }

    /// <summary>Gets the model for soil that gives.</summary>
    public static OSullivanModel YieldingSoil { get; } = new("soil that gives", 0.310, 0.00263, 0.239);

    /// <summary>Gets the model for hard ground.</summary>
    public static OSullivanModel HardGround { get; } = new("hard ground", 0.041, 0, 0.613);

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Source Source => MachinesSources.OSullivan;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("W", "wheel load of the fit", 0, 60, "kN", MachinesSources.Remembered));

    /// <summary>Gives the contact.</summary>
    /// <param name="tyre">The tyre with its inflation.</param>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <returns>Area, mean pressure and flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public ContactPatch Evaluate(Tyre tyre, Force load)
    {
        Guard.NotNull(tyre, nameof(tyre));
        var w = Guard.Newtons(load, 0.001, 500, nameof(load));
        return new ContactPatch(this, ContactKernel.OSullivanArea(_s1, _s2, _s3, tyre.SectionWidth.Meters, tyre.OverallDiameter.Meters, w, tyre.Inflation.Pascals), w, Validity.Flag(w / 1000));
    }

    /// <summary>Works the contact out.</summary>
    /// <param name="tyre">The tyre with its inflation.</param>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Working Explain(Tyre tyre, Force load)
    {
        var c = Evaluate(tyre, load);
        string w = Text.Number(load.Kilonewtons);
        return new WorkingBuilder(Name)
            .Step("A", "area of contact", "s_1 b d + s_2 W + s_3 W/p", Text.Number(_s1) + " x " + Text.Number(tyre.SectionWidth.Meters) + " x " + Text.Number(tyre.OverallDiameter.Meters) + " + " + Text.Number(_s2) + " x " + w + " + " + Text.Number(_s3) + " x " + w + "/" + Text.Number(tyre.Inflation.Kilopascals), Text.With(c.Area.SquareMeters, "m2"), Source)
            .Step("p_m", "mean pressure", "W/A", w + "/" + Text.Number(c.Area.SquareMeters), Text.Kilopascals(c.MeanPressure.Pascals), GeneralSources.Statics)
            .Build();
    }
}
