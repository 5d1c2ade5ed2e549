using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Base shear of a wheel that does not turn: the floor fails along the sole of the tyre.</summary>
/// <remarks>
/// <para>R_base = s_f b c, c = 2 sqrt(d z' - z'^2), d from the hub upwards; z' = z for a buried wheel (z over d/10), max(z, delta) for one that is not, because a tyre stands on at least the chord of its own deflection.</para>
/// <para>s_f undrained strength of the floor in kPa; b, d width and diameter, z sinkage, delta static deflection in m.</para>
/// <para>Undrained soil, full strength along the whole sole: no more can be sheared there, so it is the upper side. It stands in place of the rolling share rho W of a buried wheel and may be less than that where the machine is heavy and the floor weak; a rolling wheel that is braked counts the larger of this and its wheel model.</para>
/// <para>Source: statics of a sliding sole (derived); strength and composition judgement.</para>
/// </remarks>
public sealed class BaseShearModel : IModel
{
    private BaseShearModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static BaseShearModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Base shear of a locked wheel";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Composition;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("z/d", "sinkage over diameter", 0, 0.5, string.Empty, ResistanceSources.Composition),
        new ValidityLimit("s_f", "strength of the floor", 1, 60, "kPa", ResistanceSources.Composition));

    /// <summary>Gives the base shear of one wheel.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 m to the diameter.</param>
    /// <param name="deflection">Static deflection of the tyre under its load, 0 m to half the diameter; it counts where the wheel is not buried.</param>
    /// <param name="floor">Undrained strength under the wheel, 0.1 to 500 kPa.</param>
    /// <returns>The shear with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BaseShear Evaluate(Length sectionWidth, Length overallDiameter, Length sinkage, Length deflection, Pressure floor)
    {
        double b = Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)), z = Guard.Metres(sinkage, 0, d, nameof(sinkage));
        double delta = Guard.Metres(deflection, 0, d / 2, nameof(deflection)), s = Guard.Pascals(floor, 0.1, 500, nameof(floor));
        var buried = BuriedWheelKernel.IsBuried(d, z);
        var contact = BuriedWheelKernel.StandingLength(d, z, delta, buried);
        return new BaseShear(buried, contact, b * contact, BuriedWheelKernel.Base(b, contact, s), Validity.Flag(z / d, s / 1000));
    }

    /// <summary>Gives the base shear for many sinkages and strengths at once: the same kernel over spans.</summary>
    /// <param name="sectionWidthMetres">Tyre width of all, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameterMetres">Tyre diameter of all, 0.4 to 3 m.</param>
    /// <param name="deflectionMetres">Static deflection of all, 0 m to half the diameter.</param>
    /// <param name="sinkageMetres">Sinkage, 0 m to the diameter, one per case.</param>
    /// <param name="floorKilopascals">Strength of the floor, 0.1 to 500 kPa, one per case.</param>
    /// <param name="shearKilonewtons">Receives the shear, kN, one per case.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Evaluate(double sectionWidthMetres, double overallDiameterMetres, double deflectionMetres, ReadOnlySpan<double> sinkageMetres, ReadOnlySpan<double> floorKilopascals, Span<double> shearKilonewtons)
    {
        Guard.SameLength(sinkageMetres.Length, floorKilopascals.Length, nameof(floorKilopascals));
        Guard.SameLength(sinkageMetres.Length, shearKilonewtons.Length, nameof(shearKilonewtons));
        Guard.Range(sectionWidthMetres, 0.1, 1.5, "m", nameof(sectionWidthMetres));
        Guard.Range(overallDiameterMetres, 0.4, 3, "m", nameof(overallDiameterMetres));
        Guard.Range(deflectionMetres, 0, overallDiameterMetres / 2, "m", nameof(deflectionMetres));
        Guard.All(sinkageMetres, 0, overallDiameterMetres, "m", nameof(sinkageMetres));
        Guard.All(floorKilopascals, 0.1, 500, "kPa", nameof(floorKilopascals));
        for (var i = 0; i < shearKilonewtons.Length; i++)
        {
            var contact = BuriedWheelKernel.StandingLength(overallDiameterMetres, sinkageMetres[i], deflectionMetres, BuriedWheelKernel.IsBuried(overallDiameterMetres, sinkageMetres[i]));
            shearKilonewtons[i] = BuriedWheelKernel.Base(sectionWidthMetres, contact, floorKilopascals[i] * 1000) / 1000;
        }
    }

    /// <summary>Works the base shear out step by step.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 m to the diameter.</param>
    /// <param name="deflection">Static deflection of the tyre under its load, 0 m to half the diameter.</param>
    /// <param name="floor">Undrained strength under the wheel, 0.1 to 500 kPa.</param>
    /// <returns>The worked steps; the last is the shear.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length sectionWidth, Length overallDiameter, Length sinkage, Length deflection, Pressure floor)
    {
        var r = Evaluate(sectionWidth, overallDiameter, sinkage, deflection, floor);
        string d = Text.Number(overallDiameter.Meters), z = Text.Number(r.Buried ? sinkage.Meters : Math.Max(sinkage.Meters, deflection.Meters)), c = Text.Number(r.ContactLength.Meters);
        return new WorkingBuilder(Name)
            .Step("c", r.Buried ? "chord at the surface" : "chord at the surface, at least that of the deflection", "2 sqrt(d z' - z'^2), d from the hub upwards", $"2 sqrt({d} x {z} - {z}^2)", Text.With(r.ContactLength.Meters, "m"), GeneralSources.Statics)
            .Step("R_base", "base shear of one wheel", "s_f b c", $"{Text.Number(floor.Kilopascals)} x {Text.Number(sectionWidth.Meters)} x {c}", Text.Kilonewtons(r.Force.Newtons), Source)
            .Build();
    }
}
