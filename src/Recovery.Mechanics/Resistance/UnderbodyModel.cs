using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Drag of a belly on the ground along the pull.</summary>
/// <remarks>
/// <para>R = min(alpha s_f, 12 kPa) L w + w (gamma z^2/2 + 2 s_f z). L, w length and width of the contact, z immersion in m; s_f undrained strength of the floor in kPa; alpha adhesion factor; gamma unit weight in kN/m3.</para>
/// <para>Undrained soil of uniform strength; immersion up to 0.5 m. It is the drag along the ground alone: lifting a sealed belly is another and far larger force, limited by what the wheels can bear.</para>
/// <para>Source: Rankine face (derived); adhesion and cap judgement.</para>
/// </remarks>
public sealed class UnderbodyModel : IModel
{
    private UnderbodyModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static UnderbodyModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Underbody drag";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Composition;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("z", "immersion of the belly", 0, 0.5, "m", ResistanceSources.Composition));

    /// <summary>Gives the drag.</summary>
    /// <param name="belly">The belly.</param>
    /// <param name="floor">Undrained strength of the floor, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="adhesionFactor">Adhesion factor, 0 to 1.</param>
    /// <returns>The drag.</returns>
    /// <exception cref="ArgumentNullException">The belly is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force Drag(Belly belly, Pressure floor, SpecificWeight unitWeight, Ratio adhesionFactor)
    {
        Guard.NotNull(belly, nameof(belly));
        return Force.FromNewtons(UnderbodyKernel.Drag(belly.Length.Meters, belly.Width.Meters, belly.Immersion.Meters, Guard.Pascals(floor, 0.1, 500, nameof(floor)), Guard.NewtonsPerCubicMetre(unitWeight, 9, 24, nameof(unitWeight)), Guard.Fraction(adhesionFactor, 0, 1, nameof(adhesionFactor))));
    }

    /// <summary>Works the drag out step by step.</summary>
    /// <param name="belly">The belly.</param>
    /// <param name="floor">Undrained strength of the floor, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="adhesionFactor">Adhesion factor, 0 to 1.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentNullException">The belly is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Belly belly, Pressure floor, SpecificWeight unitWeight, Ratio adhesionFactor)
    {
        var drag = Drag(belly, floor, unitWeight, adhesionFactor);
        string l = Text.Number(belly.Length.Meters), w = Text.Number(belly.Width.Meters), z = Text.Number(belly.Immersion.Meters), s = Text.Number(floor.Kilopascals), a = Text.Number(adhesionFactor.DecimalFractions), g = Text.Number(unitWeight.KilonewtonsPerCubicMeter);
        return new WorkingBuilder(Name)
            .Step("R_belly", "drag along the ground", "min(alpha s_f, 12) L w + w (gamma z^2/2 + 2 s_f z)", $"min({a} x {s}, 12) x {l} x {w} + {w} ({g} x {z}^2/2 + 2 x {s} x {z})", Text.Kilonewtons(drag.Newtons), Source)
            .Build();
    }
}
