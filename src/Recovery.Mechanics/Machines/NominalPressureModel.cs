using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Nominal ground pressure of a wheel: load over half the diameter times the width.</summary>
/// <remarks>
/// <para>p = W/(r b), r = d/2; W load kN, d diameter and b width m. A yardstick to set the other models against, not a measured pressure: inflation does not enter.</para>
/// <para>W/(b d) outside 15 to 55 kN/m2 is outside the tyres that the traction models were made on (from memory) and is flagged.</para>
/// <para>Source: common yardstick, reported.</para>
/// </remarks>
public sealed class NominalPressureModel : IModel
{
    private NominalPressureModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static NominalPressureModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Nominal ground pressure";

    /// <inheritdoc/>
    public Source Source => MachinesSources.NominalPressure;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("W/(b d)", "load over width times diameter of the tyres of the traction models", 15, 55, "kN/m2", MachinesSources.Remembered));

    /// <summary>Gives the nominal contact.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <returns>Nominal area and pressure, with flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public ContactPatch Evaluate(Tyre tyre, Force load)
    {
        double b = Guard.NotNull(tyre, nameof(tyre)).SectionWidth.Meters, d = tyre.OverallDiameter.Meters, w = Guard.Newtons(load, 0.001, 500, nameof(load));
        return new ContactPatch(this, w / ContactKernel.Nominal(w, b, d), w, Validity.Flag(w / 1000 / (b * d)));
    }

    /// <summary>Works the nominal pressure out.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="load">Wheel load, above 0 to 500 kN.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Working Explain(Tyre tyre, Force load) => new WorkingBuilder(Name)
        .Step("p", "nominal ground pressure", "W/(r b), r = d/2", Text.Number(load.Kilonewtons) + "/(" + Text.Number(Guard.NotNull(tyre, nameof(tyre)).OverallDiameter.Meters) + "/2 x " + Text.Number(tyre.SectionWidth.Meters) + ")", Text.Kilopascals(Evaluate(tyre, load).MeanPressure.Pascals), Source)
        .Build();
}
