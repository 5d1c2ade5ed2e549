using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>A wheel in the ground as a short cylinder: its chord, the section below the surface, and what undrained soil bears under it.</summary>
/// <remarks>
/// <para>Chord 2 sqrt(d z - z^2), d from the hub upwards; section below the surface: the circular segment up to the hub, pi d^2/8 + d (z - d/2) above; bearing b [min(6 (z/d)^0.25, 3.4 (10 z/d)^0.5) d s_u + 1.5 gamma' A].</para>
/// <para>b, d width and diameter, z sinkage in m; s_u undrained strength in kPa; gamma' effective unit weight in kN/m3; A section below the surface in m2.</para>
/// <para>The bearing comes from long pipes and has no end effects: a tyre of b/d about 0.3 bears more. Beside it stands the bound b c (N_c s_u + gamma z) that the whole-machine sum uses.</para>
/// <para>Source: DNV-RP-F114 as coded in an engineering implementation that cites it (secondary); circle geometry.</para>
/// </remarks>
public sealed class ImmersedWheelModel : IModel
{
    private ImmersedWheelModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static ImmersedWheelModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Immersed wheel";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.DnvLateral;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("z/d", "sinkage over diameter", 0, 1, string.Empty, GeneralSources.Statics), new ValidityLimit("b/d", "width over diameter, end effects left out", 1, double.PositiveInfinity, string.Empty, ResistanceSources.Composition));

    /// <summary>Works the wheel out.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="strength">Undrained strength of the floor, 0.1 to 500 kPa.</param>
    /// <param name="effectiveUnitWeight">Effective unit weight of the soil, 3 to 24 kN/m3.</param>
    /// <returns>The result; a tyre is narrower than the pipes behind the bearing, which is flagged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ImmersedWheel Evaluate(Length sectionWidth, Length overallDiameter, Length sinkage, Pressure strength, SpecificWeight effectiveUnitWeight)
    {
        double b = Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)), z = Guard.Metres(sinkage, 0, d, nameof(sinkage));
        double s = Guard.Pascals(strength, 0.1, 500, nameof(strength)), gamma = Guard.NewtonsPerCubicMetre(effectiveUnitWeight, 3, 24, nameof(effectiveUnitWeight));
        return new ImmersedWheel(BuriedWheelKernel.ContactLength(d, z), ImmersionKernel.PenetratedArea(d, z), BuriedWheelKernel.SegmentArea(d, z), ImmersionKernel.Bearing(d, z, s, gamma), b, Validity.Flag(z / d, b / d));
    }

    /// <summary>Gives the floor strength that bears a wheel at rest by the same bearing.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0.01 m to the diameter.</param>
    /// <param name="load">Wheel load, 0.1 to 500 kN.</param>
    /// <param name="effectiveUnitWeight">Effective unit weight of the soil, 3 to 24 kN/m3.</param>
    /// <returns>The strength; null where displaced soil alone carries the wheel, so that its standing there says nothing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure? StrengthThatBears(Length sectionWidth, Length overallDiameter, Length sinkage, Force load, SpecificWeight effectiveUnitWeight)
    {
        double b = Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)), z = Guard.Metres(sinkage, 0.01, d, nameof(sinkage));
        var strength = ImmersionKernel.StrengthThatBears(d, z, Guard.Newtons(load, 0.1, 500, nameof(load)) / b, Guard.NewtonsPerCubicMetre(effectiveUnitWeight, 3, 24, nameof(effectiveUnitWeight)));
        return strength > 0 ? Pressure.FromPascals(strength) : null;
    }

    /// <summary>Works the bearing out step by step.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="strength">Undrained strength of the floor, 0.1 to 500 kPa.</param>
    /// <param name="effectiveUnitWeight">Effective unit weight of the soil, 3 to 24 kN/m3.</param>
    /// <returns>The worked steps; the last is the bearing of the wheel.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length sectionWidth, Length overallDiameter, Length sinkage, Pressure strength, SpecificWeight effectiveUnitWeight)
    {
        var r = Evaluate(sectionWidth, overallDiameter, sinkage, strength, effectiveUnitWeight);
        string b = Text.Number(sectionWidth.Meters), d = Text.Number(overallDiameter.Meters), z = Text.Number(sinkage.Meters), s = Text.Number(strength.Kilopascals), g = Text.Number(effectiveUnitWeight.KilonewtonsPerCubicMeter), a = Text.Number(r.PenetratedArea.SquareMeters);
        return new WorkingBuilder(Name)
            .Step("B", "chord at the surface", "2 sqrt(d z - z^2), d from the hub upwards", $"2 sqrt({d} x {z} - {z}^2)", Text.With(r.ContactWidth.Meters, "m"), GeneralSources.Statics)
            .Step("A", "section below the surface", "segment up to the hub, pi d^2/8 + d (z - d/2) above", "d " + d + ", z " + z, Text.With(r.PenetratedArea.SquareMeters, "m2"), Source)
            .Step("Q", "what the soil bears under the wheel", "b [min(6 (z/d)^0.25, 3.4 (10 z/d)^0.5) d s_u + 1.5 gamma' A]", $"{b} [{Text.Number(ImmersionKernel.BearingFactor(overallDiameter.Meters, sinkage.Meters))} x {d} x {s} + 1.5 x {g} x {a}]", Text.Kilonewtons(r.Bearing.Newtons), Source)
            .Build();
    }
}
