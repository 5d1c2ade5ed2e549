using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Static deflection of a tyre by the stiffness of Lines and Murphy.</summary>
/// <remarks>
/// <para>k = 172 - 1.77 D + 5.6 A + 0.34 b D P kN/m, delta = W/k; D rim diameter and b section width in inches, A age in years, P inflation in bar, W wheel load.</para>
/// <para>Made on tractor tyres, smaller than those of a harvester. Flagged where delta/h leaves 10 to 30 %, the range of the traction models (ASABE D497, primary). An old tyre is stiffer.</para>
/// <para>Source: Lines and Murphy 1991, J. Terramechanics 28(1):49-64. All constants <b>from memory</b>, to be verified.</para>
/// </remarks>
public sealed class LinesMurphyModel : ITyreDeflectionModel
{
    private LinesMurphyModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static LinesMurphyModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Tyre deflection (Lines and Murphy)";

    /// <inheritdoc/>
    public Source Source => MachinesSources.LinesMurphy;

    /// <inheritdoc/>
    public Validity Validity => SaarilahtiModel.Range;

    /// <summary>Gives the vertical stiffness.</summary>
    /// <param name="tyre">The tyre, with its age.</param>
    /// <returns>The stiffness.</returns>
    public ForcePerLength Stiffness(Tyre tyre)
    {
        Guard.NotNull(tyre, nameof(tyre));
        return ForcePerLength.FromNewtonsPerMeter(TyreKernel.LinesMurphyStiffness(tyre.RimDiameter.Meters, tyre.SectionWidth.Meters, tyre.AgeYears, tyre.Inflation.Pascals));
    }

    /// <inheritdoc/>
    public TyreDeflection Evaluate(Tyre tyre, Force load)
    {
        var metres = Guard.Newtons(load, 0, 500, nameof(load)) / Stiffness(tyre).NewtonsPerMeter;
        return new TyreDeflection("Lines and Murphy", metres, tyre, Validity.Flag(metres / tyre.SectionHeight.Meters), Source);
    }

    /// <inheritdoc/>
    public Working Explain(Tyre tyre, Force load)
    {
        var k = Text.With(Stiffness(tyre).NewtonsPerMeter / 1000, "kN/m");
        string rim = Text.Number(tyre.RimDiameter.Meters / PhysicalConstants.MetresPerInch), width = Text.Number(tyre.SectionWidth.Meters / PhysicalConstants.MetresPerInch);
        return new WorkingBuilder(Name)
            .Step("k", "vertical stiffness", "172 - 1.77 D + 5.6 A + 0.34 b D P", "172 - 1.77 x " + rim + " + 5.6 x " + Text.Number(tyre.AgeYears) + " + 0.34 x " + width + " x " + rim + " x " + Text.Number(tyre.Inflation.Pascals / 1e5), k, Source)
            .Step("delta", "static deflection", "W/k", Text.Kilonewtons(load.Newtons) + "/" + k, Text.With(Evaluate(tyre, load).Deflection.Meters, "m"), Source)
            .Build();
    }

    /// <summary>Gives the deflections of one tyre under many loads and inflations: the same kernel over spans.</summary>
    /// <param name="tyre">The tyre; its own inflation is left aside.</param>
    /// <param name="loadKilonewtons">Wheel loads, 0 to 500 kN.</param>
    /// <param name="inflationKilopascals">Inflations, 30 to 1,000 kPa.</param>
    /// <param name="deflectionMetres">Receives the deflections, m.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Evaluate(Tyre tyre, ReadOnlySpan<double> loadKilonewtons, ReadOnlySpan<double> inflationKilopascals, Span<double> deflectionMetres)
    {
        Guard.NotNull(tyre, nameof(tyre));
        Guard.SameLength(loadKilonewtons.Length, inflationKilopascals.Length, nameof(inflationKilopascals));
        Guard.SameLength(loadKilonewtons.Length, deflectionMetres.Length, nameof(deflectionMetres));
        Guard.All(loadKilonewtons, 0, 500, "kN", nameof(loadKilonewtons));
        Guard.All(inflationKilopascals, 30, 1000, "kPa", nameof(inflationKilopascals));
        double rim = tyre.RimDiameter.Meters, width = tyre.SectionWidth.Meters, age = tyre.AgeYears;
        for (var i = 0; i < loadKilonewtons.Length; i++) deflectionMetres[i] = loadKilonewtons[i] * 1000 / TyreKernel.LinesMurphyStiffness(rim, width, age, inflationKilopascals[i] * 1000);
    }
}
