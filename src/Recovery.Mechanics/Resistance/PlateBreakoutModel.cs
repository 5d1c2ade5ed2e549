using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Ceiling of the breakout of a plate deep in clay: nine times the undrained strength on its area.</summary>
/// <remarks>
/// <para>F = F_c s_u A, F_c at most 9; s_u undrained strength in kPa, A area in m2. The same as reverse end bearing of a deep square contact.</para>
/// <para>For plates deeper than a few widths; a machine's belly is shallow and bears less.</para>
/// <para>Source: Das 1978 and 1980 (from memory).</para>
/// </remarks>
public sealed class PlateBreakoutModel : IModel
{
    private PlateBreakoutModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static PlateBreakoutModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Das, deep plate";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Das;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("D/B", "depth over width of the plate", BreakoutKernel.DeepestRatio, double.PositiveInfinity, string.Empty, ResistanceSources.Das));

    /// <summary>Gives the ceiling.</summary>
    /// <param name="width">Width of the plate, 0.05 to 20 m.</param>
    /// <param name="length">Length of the plate, the width to 100 m.</param>
    /// <param name="depth">Depth of the plate, 0 to 20 m.</param>
    /// <param name="strength">Undrained strength, 0.1 to 500 kPa.</param>
    /// <returns>The ceiling with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BreakoutEstimate Evaluate(Length width, Length length, Length depth, Pressure strength)
    {
        double b = Guard.Metres(width, 0.05, 20, nameof(width)), l = Guard.Metres(length, b, 100, nameof(length)), d = Guard.Metres(depth, 0, 20, nameof(depth));
        var force = BreakoutKernel.DeepPlate * Guard.Pascals(strength, 0.1, 500, nameof(strength)) * b * l;
        return new BreakoutEstimate(this, ForceBand.FromNewtons(force, force, force), Validity.Flag(d / b));
    }
}
