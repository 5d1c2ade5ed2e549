using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Immediate vertical breakout of an object partly in soft clay after Lee 1972.</summary>
/// <remarks>
/// <para>F = R q A; q = 5 s_u (1 + 0.2 D/B)(1 + 0.2 B/L), what the soil bears under the object; R = 0.21 + 0.86 D/B, at most 0.97.</para>
/// <para>B, L width and length (B the smaller), D depth in m; s_u undrained strength in kPa; A = B L in m2.</para>
/// <para>The author's own accuracy is half to one and a half times on force, and a factor of two on time; the band shows it. The constants come by way of secondary texts and are from memory: R is without a jump only if the ceiling begins at D/B 0.884, the paper may switch at 1.</para>
/// <para>Source: Lee 1972, NCEL TR R-755 (accuracy primary, constants from memory).</para>
/// </remarks>
public sealed class LeeBreakoutModel : IModel
{
    private LeeBreakoutModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static LeeBreakoutModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Lee 1972, immediate breakout";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Lee;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("D/B", "depth over width, objects partly in the ground", 0, 1, string.Empty, ResistanceSources.Lee));

    /// <summary>Gives the ratio of breakout to bearing.</summary>
    /// <param name="depthOverWidth">D/B, 0 to 100.</param>
    /// <returns>R.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public double BreakoutRatio(double depthOverWidth) => BreakoutKernel.Lee(Guard.Range(depthOverWidth, 0, 100, string.Empty, nameof(depthOverWidth)));

    /// <summary>Gives the breakout with the author's accuracy as its band.</summary>
    /// <param name="width">Width B, 0.05 to 20 m.</param>
    /// <param name="length">Length L, the width to 1,000 m.</param>
    /// <param name="depth">Depth D, 0 to 20 m.</param>
    /// <param name="strength">Undrained strength, 0.1 to 500 kPa.</param>
    /// <returns>Half, once and one and a half times the formula, with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BreakoutEstimate Evaluate(Length width, Length length, Length depth, Pressure strength)
    {
        double b = Guard.Metres(width, 0.05, 20, nameof(width)), l = Guard.Metres(length, b, 1000, nameof(length)), d = Guard.Metres(depth, 0, 20, nameof(depth)), s = Guard.Pascals(strength, 0.1, 500, nameof(strength));
        var force = BreakoutKernel.Lee(d / b) * BreakoutKernel.Skempton(b, l, d) * s * b * l;
        return new BreakoutEstimate(this, ForceBand.FromNewtons(0.5 * force, force, 1.5 * force), Validity.Flag(d / b));
    }

    /// <summary>Works the breakout out step by step.</summary>
    /// <param name="width">Width B, 0.05 to 20 m.</param>
    /// <param name="length">Length L, the width to 1,000 m.</param>
    /// <param name="depth">Depth D, 0 to 20 m.</param>
    /// <param name="strength">Undrained strength, 0.1 to 500 kPa.</param>
    /// <returns>The worked steps; the last is the central breakout.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length width, Length length, Length depth, Pressure strength)
    {
        var r = Evaluate(width, length, depth, strength);
        double b = width.Meters, l = length.Meters, d = depth.Meters;
        var q = BreakoutKernel.Skempton(b, l, d) * strength.Pascals;
        return new WorkingBuilder(Name)
            .Step("q", "what the soil bears under the object", "5 s_u (1 + 0.2 D/B)(1 + 0.2 B/L)", "s_u " + Text.Number(strength.Kilopascals) + ", B " + Text.Number(b) + ", L " + Text.Number(l) + ", D " + Text.Number(d), Text.Kilopascals(q), ResistanceSources.Skempton)
            .Step("R", "breakout over bearing", "min(0.21 + 0.86 D/B, 0.97)", "D/B " + Text.Number(d / b), Text.Number(BreakoutKernel.Lee(d / b)), Source)
            .Step("F", "immediate breakout", "R q A", Text.Number(BreakoutKernel.Lee(d / b)) + " x " + Text.Number(q / 1000) + " x " + Text.Number(b * l), Text.Kilonewtons(r.Force.CentralNewtons), Source)
            .Build();
    }
}
