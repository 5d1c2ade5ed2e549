using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The ceiling of a vertical pull on a contact that clay holds all round: bearing turned upside down, as long as suction lasts.</summary>
/// <remarks>
/// <para>F = N_c s_u A, at most (100 kPa + q) A because pore water cavitates. N_c 5 (1 + 0.2 D/B)(1 + 0.2 B/L), D/B at most 2.5 (<see cref="Skempton"/>), or 5.14 (1 + 0.18 B/L + 0.3 atan(D/B)) (<see cref="Api"/>).</para>
/// <para>B, L width and length of the contact (B the smaller), D its depth in m; s_u undrained strength, q overburden gamma D in kPa; A = B L in m2.</para>
/// <para>Undrained, fully closed, pulled quickly. Vented, nothing of it is left but friction on the sides. It is a ceiling: the published measured breakouts lie below it. Vertical only: a pull along the ground shears the base and is about five to eleven times easier.</para>
/// <para>Source: that uplift equals bearing while suction holds, Li, Tian, Gaudin and Cassidy 2015 and Gourvenec, Acosta-Martinez and Randolph 2009 (primary); N_c Skempton 1951 (from memory) or API RP 2GEO 2011 (secondary).</para>
/// </remarks>
public sealed class ReverseBearingModel : IModel
{
    private readonly Func<double, double, double, double> _factor;
    private readonly string _expression;

    private ReverseBearingModel(string name, Source source, Func<double, double, double, double> factor, string expression)
    {
        Name = name;
        Source = source;
        _factor = factor;
        _expression = expression;
    }

    /// <summary>Gets the model with the bearing factor of Skempton (from memory).</summary>
    public static ReverseBearingModel Skempton { get; } = new("Reverse end bearing, Skempton factor", ResistanceSources.Skempton, BreakoutKernel.Skempton, "5 (1 + 0.2 D/B)(1 + 0.2 B/L)");

    /// <summary>Gets the model with the bearing factor of API RP 2GEO.</summary>
    public static ReverseBearingModel Api { get; } = new("Reverse end bearing, API RP 2GEO factor", ResistanceSources.ApiBearing, BreakoutKernel.Api, "5.14 (1 + 0.18 B/L + 0.3 atan(D/B))");

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Source Source { get; }

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("D/B", "depth over width of the contact", 0, BreakoutKernel.DeepestRatio, string.Empty, ResistanceSources.Skempton),
        new ValidityLimit("N_c s_u/(100 kPa + q)", "uplift pressure over what suction can carry", 0, 1, string.Empty, ResistanceSources.Cavitation));

    /// <summary>Gives the bearing factor.</summary>
    /// <param name="width">Width B, 0.05 to 20 m.</param>
    /// <param name="length">Length L, the width to 1,000 m; a strip is long.</param>
    /// <param name="depth">Depth D, 0 to 20 m.</param>
    /// <returns>N_c.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public double BearingFactor(Length width, Length length, Length depth)
    {
        var b = Guard.Metres(width, 0.05, 20, nameof(width));
        return _factor(b, Guard.Metres(length, b, 1000, nameof(length)), Guard.Metres(depth, 0, 20, nameof(depth)));
    }

    /// <summary>Gives the ceiling of the vertical pull.</summary>
    /// <param name="width">Width B, 0.05 to 20 m.</param>
    /// <param name="length">Length L, the width to 1,000 m.</param>
    /// <param name="depth">Depth D, 0 to 20 m.</param>
    /// <param name="strength">Undrained strength under the contact, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil above the contact, 0 to 24 kN/m3; 0 leaves the overburden out.</param>
    /// <returns>The uplift with its flags: one where the cap on suction binds.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ReverseBearing Evaluate(Length width, Length length, Length depth, Pressure strength, SpecificWeight unitWeight)
    {
        var factor = BearingFactor(width, length, depth);
        double area = width.Meters * length.Meters, s = Guard.Pascals(strength, 0.1, 500, nameof(strength)), q = Guard.NewtonsPerCubicMetre(unitWeight, 0, 24, nameof(unitWeight)) * depth.Meters;
        return new ReverseBearing(factor, factor * s * area, BreakoutKernel.ReverseBearing(factor, s, area, q), Validity.Flag(depth.Meters / width.Meters, factor * s / (BreakoutKernel.SuctionLimitPascals + q)));
    }

    /// <summary>Works the ceiling out step by step.</summary>
    /// <param name="width">Width B, 0.05 to 20 m.</param>
    /// <param name="length">Length L, the width to 1,000 m.</param>
    /// <param name="depth">Depth D, 0 to 20 m.</param>
    /// <param name="strength">Undrained strength under the contact, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil above the contact, 0 to 24 kN/m3.</param>
    /// <returns>The worked steps; the last is the uplift.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length width, Length length, Length depth, Pressure strength, SpecificWeight unitWeight)
    {
        var r = Evaluate(width, length, depth, strength, unitWeight);
        string b = Text.Number(width.Meters), l = Text.Number(length.Meters), d = Text.Number(depth.Meters), n = Text.Number(r.BearingFactor), s = Text.Number(strength.Kilopascals), q = Text.Number(unitWeight.KilonewtonsPerCubicMeter * depth.Meters);
        return new WorkingBuilder(Name)
            .Step("N_c", "bearing factor", _expression, "B " + b + ", L " + l + ", D " + d, n, Source)
            .Step("F", "ceiling of the vertical pull", "A min(N_c s_u, 100 + q)", $"{b} x {l} x min({n} x {s}, 100 + {q})", Text.Kilonewtons(r.Uplift.Newtons), ResistanceSources.ReverseBearing)
            .Build();
    }
}
