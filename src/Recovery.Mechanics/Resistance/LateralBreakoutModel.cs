using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>A wheel drawn sideways out of undrained clay as a short pipe: breakout, what is left afterwards, and how far it must move for that.</summary>
/// <remarks>
/// <para>Breakout b d s_u (c1 (z/d)^0.61 + c2 (V/(d s_u))^0.83 + c3 (gamma d/s_u)(z/d)^2), c 1.7, 0.23, 0.6, laboratory variant 0.78, 0.12, 0.71; V vertical load per metre of width. Residual (0.32 + 0.8 (z/d)^0.8) V for V at most 2 s_u d.
/// Movement to breakout 0.02 d + 0.25 z (0.004 d + 0.02 z to 0.1 d + 0.7 z), to the residual 1.5 d (0.6 d to 2.8 d).</para>
/// <para>b, d width and diameter, z sinkage in m; s_u undrained strength in kPa; gamma unit weight, effective under water, in kN/m3; V in kN/m.</para>
/// <para>A wheel that rolls has its load in the rolling resistance: leave the vertical-load term out. A locked one has it in the base shear. The laws come from long pipes; side wedges of a tyre may add 20 to 50 % (judgement).</para>
/// <para>Source: DNV-RP-F114 as coded in an engineering implementation that cites it (secondary).</para>
/// </remarks>
public sealed class LateralBreakoutModel : IModel
{
    private readonly double _depth;
    private readonly double _load;
    private readonly double _weight;

    private LateralBreakoutModel(string name, double depth, double load, double weight)
    {
        Name = name;
        _depth = depth;
        _load = load;
        _weight = weight;
    }

    /// <summary>Gets the model with the factors of the recommended practice.</summary>
    public static LateralBreakoutModel Standard { get; } = new("DNV-RP-F114 lateral breakout", LateralKernel.Depth, LateralKernel.Load, LateralKernel.Weight);

    /// <summary>Gets the laboratory variant beside it.</summary>
    public static LateralBreakoutModel Laboratory { get; } = new("DNV-RP-F114 lateral breakout, laboratory variant", LateralKernel.DepthLaboratory, LateralKernel.LoadLaboratory, LateralKernel.WeightLaboratory);

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Source Source => ResistanceSources.DnvLateral;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("z/d", "sinkage over diameter", 0, 0.5, string.Empty, ResistanceSources.Composition),
        new ValidityLimit("V/(s_u d)", "vertical load per metre over strength times diameter", 0, LateralKernel.ResidualLimit, string.Empty, ResistanceSources.DnvLateral));

    /// <summary>Works out breakout, residual and movement of one wheel.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <param name="strength">Undrained strength, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 5 to 24 kN/m3.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LateralBreakout Evaluate(Length sectionWidth, Length overallDiameter, Length sinkage, Force load, Pressure strength, SpecificWeight unitWeight)
    {
        double b = Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)), z = Guard.Metres(sinkage, 0, d, nameof(sinkage));
        double v = Guard.Newtons(load, 0, 500, nameof(load)) / b, s = Guard.Pascals(strength, 0.1, 500, nameof(strength)), gamma = Guard.NewtonsPerCubicMetre(unitWeight, 5, 24, nameof(unitWeight));
        return new LateralBreakout(
            b * LateralKernel.Breakout(d, z, s, gamma, v, _depth, _load, _weight),
            b * LateralKernel.Breakout(d, z, s, gamma, 0, _depth, _load, _weight),
            v <= LateralKernel.ResidualLimit * s * d ? b * v * LateralKernel.ResidualRatio(d, z) : null,
            d,
            z,
            Validity.Flag(z / d, v / (s * d)));
    }

    /// <summary>Works the breakout out step by step.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <param name="strength">Undrained strength, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 5 to 24 kN/m3.</param>
    /// <returns>The worked steps; the last is the breakout with the vertical-load term.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length sectionWidth, Length overallDiameter, Length sinkage, Force load, Pressure strength, SpecificWeight unitWeight)
    {
        var r = Evaluate(sectionWidth, overallDiameter, sinkage, load, strength, unitWeight);
        string b = Text.Number(sectionWidth.Meters), d = Text.Number(overallDiameter.Meters), z = Text.Number(sinkage.Meters), s = Text.Number(strength.Kilopascals), g = Text.Number(unitWeight.KilonewtonsPerCubicMeter), v = Text.Number(load.Kilonewtons / sectionWidth.Meters);
        return new WorkingBuilder(Name)
            .Step("V", "vertical load per metre of width", "W_i/b", Text.Number(load.Kilonewtons) + "/" + b, v + " kN/m", GeneralSources.Statics)
            .Step("P_roll", "breakout of a wheel that rolls", "b d s_u (c1 (z/d)^0.61 + c3 (gamma d/s_u)(z/d)^2)", $"{b} x {d} x {s} ({Text.Number(_depth)} ({z}/{d})^0.61 + {Text.Number(_weight)} ({g} x {d}/{s})({z}/{d})^2)", Text.Kilonewtons(r.RollingBreakout.Newtons), Source)
            .Step("P", "breakout with its vertical load", "P_roll + b d s_u c2 (V/(d s_u))^0.83", $"{Text.Number(r.RollingBreakout.Kilonewtons)} + {b} x {d} x {s} x {Text.Number(_load)} ({v}/({d} x {s}))^0.83", Text.Kilonewtons(r.Breakout.Newtons), Source)
            .Build();
    }
}
