using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The soil terms of one buried wheel: soil ahead of it, the rigid step in its place, suction behind it, mud on its walls, and its base where it does not turn.</summary>
/// <remarks>
/// <para>Face b (gamma z^2/2 + 2 s_w z), at most the rigid step W_i sqrt(1 - (1 - z/r)^2)/(1 - z/r); suction 2 s_w b z while sealed; side lambda 2 A_seg min(alpha s_w, 12 kPa), lambda 0.5 turning, 1 locked; base s_f b c with c = 2 sqrt(d z - z^2), d from the hub upwards.</para>
/// <para>b, d width and diameter, z sinkage in m; s_w, s_f undrained strength of wall and floor in kPa; gamma unit weight in kN/m3; alpha adhesion factor; W_i wheel load in kN; r = d/2.</para>
/// <para>Undrained clay, vertical face, uniform strength over the depth, uncut soil ahead; wheels sunk more than a tenth and at most half of their diameter. Deeper than the hub the face alone counts. Published face methods differ by a factor of about two on one soil; this is the one in their lower middle.</para>
/// <para>Source: Rankine, phi = 0 (derived); suction API RP 2GEO 2011 (secondary); shares and cap judgement.</para>
/// </remarks>
public sealed class BuriedWheelModel : IModel
{
    private BuriedWheelModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static BuriedWheelModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Buried wheel, Rankine face";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Rankine;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("z/d", "sinkage over diameter", BuriedWheelKernel.BuriedRatio, 0.5, string.Empty, ResistanceSources.Composition),
        new ValidityLimit("s_w", "strength of the wall", 1, 60, "kPa", ResistanceSources.Composition));

    /// <summary>Works the terms out.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <param name="wall">Undrained strength of the uncut soil, 0.1 to 500 kPa.</param>
    /// <param name="floor">Undrained strength under the wheel, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="adhesionFactor">Adhesion factor, 0 to 1.</param>
    /// <returns>The terms with their flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BuriedWheelTerms Evaluate(Length sectionWidth, Length overallDiameter, Length sinkage, Force load, Pressure wall, Pressure floor, SpecificWeight unitWeight, Ratio adhesionFactor)
    {
        double b = Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)), z = Guard.Metres(sinkage, 0, d, nameof(sinkage)), w = Guard.Newtons(load, 0, 500, nameof(load));
        double sw = Guard.Pascals(wall, 0.1, 500, nameof(wall)), sf = Guard.Pascals(floor, 0.1, 500, nameof(floor)), gamma = Guard.NewtonsPerCubicMetre(unitWeight, 9, 24, nameof(unitWeight)), alpha = Guard.Fraction(adhesionFactor, 0, 1, nameof(adhesionFactor));
        var segment = BuriedWheelKernel.SegmentArea(d, z);
        return new BuriedWheelTerms(
            BuriedWheelKernel.Face(b, z, sw, gamma),
            w * BuriedWheelKernel.RigidStepRatio(d, z),
            BuriedWheelKernel.Suction(b, z, sw),
            BuriedWheelKernel.Side(segment, sw, alpha, DemandKernel.SideTurning),
            BuriedWheelKernel.Side(segment, sw, alpha, 1),
            BuriedWheelKernel.Base(b, BuriedWheelKernel.ContactLength(d, z), sf),
            Validity.Flag(z / d, sw / 1000));
    }

    /// <summary>Works the terms out step by step.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <param name="wall">Undrained strength of the uncut soil, 0.1 to 500 kPa.</param>
    /// <param name="floor">Undrained strength under the wheel, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="adhesionFactor">Adhesion factor, 0 to 1.</param>
    /// <returns>The worked steps; the last is the face that counts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length sectionWidth, Length overallDiameter, Length sinkage, Force load, Pressure wall, Pressure floor, SpecificWeight unitWeight, Ratio adhesionFactor)
    {
        var t = Evaluate(sectionWidth, overallDiameter, sinkage, load, wall, floor, unitWeight, adhesionFactor);
        string b = Text.Number(sectionWidth.Meters), z = Text.Number(sinkage.Meters), sw = Text.Number(wall.Kilopascals), sf = Text.Number(floor.Kilopascals), g = Text.Number(unitWeight.KilonewtonsPerCubicMeter), a = Text.Number(adhesionFactor.DecimalFractions);
        string segment = Text.Number(BuriedWheelKernel.SegmentArea(overallDiameter.Meters, sinkage.Meters)), c = Text.Number(BuriedWheelKernel.ContactLength(overallDiameter.Meters, sinkage.Meters));
        return new WorkingBuilder(Name)
            .Step("R_suct", "suction behind the wheel while sealed", "2 s_w b z", $"2 x {sw} x {b} x {z}", Text.Kilonewtons(t.Suction.Newtons), ResistanceSources.Suction)
            .Step("R_side", "mud on both walls, turning", "0.5 x 2 A_seg min(alpha s_w, 12)", $"{segment} x min({a} x {sw}, 12)", Text.Kilonewtons(t.SideTurning.Newtons), ResistanceSources.Composition)
            .Step("R_base", "base shear where the wheel does not turn", "s_f b c", $"{sf} x {b} x {c}", Text.Kilonewtons(t.Base.Newtons), ResistanceSources.Composition)
            .Step("F_step", "rigid step in its place", "W_i sqrt(1 - (1 - z/r)^2)/(1 - z/r)", Text.Number(load.Kilonewtons) + " at z/r " + Text.Number(2 * sinkage.Meters / overallDiameter.Meters), t.RigidStep is { } step ? Text.Kilonewtons(step.Newtons) : "no pull along the ground would do", GeneralSources.Statics)
            .Step("P_face", "soil ahead, the smaller of face and step", "min(b (gamma z^2/2 + 2 s_w z), F_step)", $"{b} ({g} x {z}^2/2 + 2 x {sw} x {z})", Text.Kilonewtons(t.FaceThatCounts.Newtons), ResistanceSources.Rankine)
            .Build();
    }
}
