using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Shear stress that soil gives back as it is displaced, after Janosi and Hanamoto 1961.</summary>
/// <remarks>
/// <para>tau = (c + p tan phi)(1 - e^(-j/K)).</para>
/// <para>c cohesion and phi angle of friction of the terrain; p normal stress in kPa; j displacement and K shear deformation modulus in m.</para>
/// <para>K is 0.01 to 0.025 m on firm and 0.03 to 0.05 m on soft soil (from memory), and belongs to no terrain table: outside 0.01 to 0.05 m it comes back flagged. The law knows no drop to a residual strength: on sensitive clay use residual cohesion.</para>
/// <para>Source: Janosi and Hanamoto 1961 (form reported).</para>
/// </remarks>
public sealed class ShearDisplacementModel : IModel
{
    private ShearDisplacementModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static ShearDisplacementModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Janosi-Hanamoto shear";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.ShearDisplacement;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(WheelLimits.ShearModulus);

    /// <summary>Gives the shear stress at a displacement.</summary>
    /// <param name="terrain">The terrain.</param>
    /// <param name="normalStress">Normal stress p, 0 to 2,000 kPa.</param>
    /// <param name="displacement">Displacement j, 0 to 10 m.</param>
    /// <param name="shearModulus">Shear deformation modulus K, 0.001 to 0.5 m.</param>
    /// <returns>The shear stress.</returns>
    /// <exception cref="ArgumentNullException">The terrain is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure Evaluate(BekkerTerrain terrain, Pressure normalStress, Length displacement, Length shearModulus)
    {
        Guard.NotNull(terrain, nameof(terrain));
        var strength = ShearKernel.Strength(terrain.Cohesion.Pascals, Guard.Pascals(normalStress, 0, 2000, nameof(normalStress)), terrain.FrictionAngle.Radians);
        return Pressure.FromPascals(strength * ShearKernel.Mobilised(Guard.Metres(displacement, 0, 10, nameof(displacement)), Modulus(shearModulus)));
    }

    /// <summary>Gets the limits that a modulus lies outside of.</summary>
    /// <param name="shearModulus">Shear deformation modulus K, 0.001 to 0.5 m.</param>
    /// <returns>The flags; empty within.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The modulus is outside its range.</exception>
    public IReadOnlyList<ValidityFlag> Flags(Length shearModulus) => Validity.Flag(Modulus(shearModulus));

    /// <summary>Works the shear stress out step by step.</summary>
    /// <param name="terrain">The terrain.</param>
    /// <param name="normalStress">Normal stress p, 0 to 2,000 kPa.</param>
    /// <param name="displacement">Displacement j, 0 to 10 m.</param>
    /// <param name="shearModulus">Shear deformation modulus K, 0.001 to 0.5 m.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentNullException">The terrain is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(BekkerTerrain terrain, Pressure normalStress, Length displacement, Length shearModulus)
    {
        var stress = Evaluate(terrain, normalStress, displacement, shearModulus);
        var strength = Text.Number(ShearKernel.Strength(terrain.Cohesion.Pascals, normalStress.Pascals, terrain.FrictionAngle.Radians) / 1000);
        return new WorkingBuilder(Name + ", " + terrain.Name)
            .Step("tau_max", "shear strength", "c + p tan(phi)", $"{Text.Number(terrain.Cohesion.Kilopascals)} + {Text.Number(normalStress.Kilopascals)} tan({Text.With(terrain.FrictionAngle.Degrees, "deg")})", strength + " kPa", terrain.Source)
            .Step("tau", "shear stress at the displacement", "tau_max (1 - e^(-j/K))", $"{strength} (1 - e^(-{Text.Number(displacement.Meters)}/{Text.Number(shearModulus.Meters)}))", Text.Kilopascals(stress.Pascals), Source)
            .Build();
    }

    /// <summary>Gives the shear stress at many displacements: the same kernel over spans.</summary>
    /// <param name="terrain">The terrain.</param>
    /// <param name="normalStressKilopascals">Normal stress of all cases, 0 to 2,000 kPa.</param>
    /// <param name="displacementMetres">Displacement, 0 to 10 m, one per case.</param>
    /// <param name="shearModulusMetres">Shear deformation modulus of all cases, 0.001 to 0.5 m.</param>
    /// <param name="shearStressKilopascals">Receives the shear stress, kPa, one per case.</param>
    /// <exception cref="ArgumentNullException">The terrain is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void ShearStress(BekkerTerrain terrain, double normalStressKilopascals, ReadOnlySpan<double> displacementMetres, double shearModulusMetres, Span<double> shearStressKilopascals)
    {
        Guard.NotNull(terrain, nameof(terrain));
        Guard.Range(normalStressKilopascals, 0, 2000, "kPa", nameof(normalStressKilopascals));
        Guard.Range(shearModulusMetres, 0.001, 0.5, "m", nameof(shearModulusMetres));
        Guard.SameLength(displacementMetres.Length, shearStressKilopascals.Length, nameof(shearStressKilopascals));
        Guard.All(displacementMetres, 0, 10, "m", nameof(displacementMetres));
        var strength = ShearKernel.Strength(terrain.Cohesion.Kilopascals, normalStressKilopascals, terrain.FrictionAngle.Radians);
        for (var i = 0; i < displacementMetres.Length; i++) shearStressKilopascals[i] = strength * ShearKernel.Mobilised(displacementMetres[i], shearModulusMetres);
    }

    private static double Modulus(Length shearModulus) => Guard.Metres(shearModulus, 0.001, 0.5, nameof(shearModulus));
}
