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

    /// <summary>Gives the drag with its parts and flags.</summary>
    /// <param name="belly">The belly.</param>
    /// <param name="floor">Undrained strength of the floor, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="adhesionFactor">Adhesion factor, 0 to 1.</param>
    /// <returns>Adhesion and front.</returns>
    /// <exception cref="ArgumentNullException">The belly is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public UnderbodyDrag Evaluate(Belly belly, Pressure floor, SpecificWeight unitWeight, Ratio adhesionFactor)
    {
        var total = Drag(belly, floor, unitWeight, adhesionFactor).Newtons;
        var front = BuriedWheelKernel.Face(belly.Width.Meters, belly.Immersion.Meters, floor.Pascals, unitWeight.NewtonsPerCubicMeter);
        return new UnderbodyDrag(total - front, front, adhesionFactor.DecimalFractions * floor.Pascals > BuriedWheelKernel.AdhesionCapPascals, Validity.Flag(belly.Immersion.Meters));
    }

    /// <summary>Gives the drag for many floor strengths at once: the same kernel over spans.</summary>
    /// <param name="belly">The belly of all.</param>
    /// <param name="floorKilopascals">Strength of the floor, 0.1 to 500 kPa, one per case.</param>
    /// <param name="unitWeightKilonewtonsPerCubicMetre">Unit weight of all, 9 to 24 kN/m3.</param>
    /// <param name="adhesionFactor">Adhesion factor of all, 0 to 1.</param>
    /// <param name="dragKilonewtons">Receives the drag, kN, one per case.</param>
    /// <exception cref="ArgumentNullException">The belly is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Evaluate(Belly belly, ReadOnlySpan<double> floorKilopascals, double unitWeightKilonewtonsPerCubicMetre, double adhesionFactor, Span<double> dragKilonewtons)
    {
        Guard.NotNull(belly, nameof(belly));
        Guard.SameLength(floorKilopascals.Length, dragKilonewtons.Length, nameof(dragKilonewtons));
        Guard.Range(unitWeightKilonewtonsPerCubicMetre, 9, 24, "kN/m3", nameof(unitWeightKilonewtonsPerCubicMetre));
        Guard.Range(adhesionFactor, 0, 1, string.Empty, nameof(adhesionFactor));
        Guard.All(floorKilopascals, 0.1, 500, "kPa", nameof(floorKilopascals));
        double l = belly.Length.Meters, w = belly.Width.Meters, z = belly.Immersion.Meters;
        for (var i = 0; i < dragKilonewtons.Length; i++)
            dragKilonewtons[i] = UnderbodyKernel.Drag(l, w, z, floorKilopascals[i] * 1000, unitWeightKilonewtonsPerCubicMetre * 1000, adhesionFactor) / 1000;
    }

    /// <summary>Gives the weight that a belly takes off the wheels: W_b = min(W A/(A + sum(b c)), N_c s_f A), N_c 5.14 (share by area judgement).</summary>
    /// <param name="belly">The belly.</param>
    /// <param name="weight">Weight of the machine, 1 to 5,000 kN.</param>
    /// <param name="wheelArea">Area on which all its wheels stand, 0.05 to 50 m2.</param>
    /// <param name="floor">Undrained strength of the floor, 0.1 to 500 kPa.</param>
    /// <returns>The share of the belly and what is left to the wheels.</returns>
    /// <exception cref="ArgumentNullException">The belly is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BellyShare Share(Belly belly, Force weight, Area wheelArea, Pressure floor)
    {
        Guard.NotNull(belly, nameof(belly));
        double a = belly.Length.Meters * belly.Width.Meters, w = Guard.Newtons(weight, 1, 5000, nameof(weight)), wheels = Guard.Range(wheelArea.SquareMeters, 0.05, 50, "m2", nameof(wheelArea)), s = Guard.Pascals(floor, 0.1, 500, nameof(floor));
        return new BellyShare(w, UnderbodyKernel.ByArea(w, a, wheels), UnderbodyKernel.BearingFactor * s * a, UnderbodyKernel.Carried(w, a, wheels, s), UnderbodyKernel.ChangeOverFloor(w, a, wheels));
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
