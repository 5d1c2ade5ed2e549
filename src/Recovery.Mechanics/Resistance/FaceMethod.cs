using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The published ways of reckoning the soil ahead of a buried wheel, each named by author or standard; one is chosen for a stuck machine.</summary>
/// <remarks>
/// <para>P = b (gamma z^2/2 + 2 s_u z) <see cref="Rankine"/>; b z (gamma z K_p/2 + 2 c sqrt(K_p)) <see cref="RankineFrictional"/>; K_ru s_u b z, K_ru 2 or 4, <see cref="ApiSliding"/>, <see cref="ApiSlidingFullContact"/>;
/// b times the sum over depth of min(3 s_u + gamma x + J s_u x/b, 9 s_u) <see cref="MatlockUpper"/>, <see cref="MatlockLower"/>; b 4.1 s_u d (z/d)^1.31/G^0.39, G = s_u/(d gamma), <see cref="VerleyLund"/>;
/// b d s_u (1.7 (z/d)^0.61 + 0.6 (gamma d/s_u)(z/d)^2) <see cref="DnvLateral"/>, with 0.78 and 0.71 <see cref="DnvLateralLaboratory"/>; b (gamma z^2/2 + 2 sqrt(1 + c_a/c) c z) <see cref="Reece"/>; b (0.667 c z K_pc + z^2 gamma K_pg/2) <see cref="Bulldozing"/>.</para>
/// <para>b, d tyre width and diameter, z sinkage in m; s_u undrained strength (c cohesion) in kPa; gamma unit weight, effective under water, in kN/m3.</para>
/// <para>Undrained clay of uniform strength over the depth, vertical face, uncut soil ahead; the two with friction are for drained soil. Pipe laws come from long pipes: the side wedges of a tyre may add 20 to 50 % (judgement). On one soil the laws differ by a factor of about two;
/// none is known to be right for a wheel, so the name of the one used belongs beside every result. The cautious side for sizing a puller is the highest.</para>
/// <para>Sources: Rankine (derived); API RP 2GEO 2011, Matlock 1970, DNV-RP-F114 (secondary); Verley and Lund 1995, Reece 1965 (from memory); bulldozing form (secondary), its factors from memory.</para>
/// </remarks>
public sealed class FaceMethod : IModel, IEquatable<FaceMethod>
{
    private FaceMethod(string name, Source source, in FaceLaw law, bool holdsSuction = false)
    {
        Name = name;
        Source = source;
        Law = law;
        HoldsSuction = holdsSuction;
    }

    /// <summary>Gets Rankine passive pressure of undrained clay: the default.</summary>
    public static FaceMethod Rankine { get; } = new("Rankine, undrained", ResistanceSources.Rankine, default);

    /// <summary>Gets the sliding rule of an offshore code without the rear side, K_ru 2.</summary>
    public static FaceMethod ApiSliding { get; } = new("API RP 2GEO sliding, K_ru 2", ResistanceSources.Suction, new(FaceKind.Sliding, 2, 0));

    /// <summary>Gets the sliding rule with the rear side in full contact, K_ru 4. It holds the suction, so it cannot be chosen for a stuck machine, whose sum counts suction apart.</summary>
    public static FaceMethod ApiSlidingFullContact { get; } = new("API RP 2GEO sliding, K_ru 4", ResistanceSources.Suction, new(FaceKind.Sliding, 4, 0), holdsSuction: true);

    /// <summary>Gets the soft-clay p-y law with J 0.5. Which of 0.5 and 0.25 belongs to soft clay is in conflict between texts; the difference is small.</summary>
    public static FaceMethod MatlockUpper { get; } = new("Matlock p-y, J 0.5", ResistanceSources.Matlock, new(FaceKind.SoftClay, 0.5, 0));

    /// <summary>Gets the soft-clay p-y law with J 0.25.</summary>
    public static FaceMethod MatlockLower { get; } = new("Matlock p-y, J 0.25", ResistanceSources.Matlock, new(FaceKind.SoftClay, 0.25, 0));

    /// <summary>Gets the passive resistance of a pipe after Verley and Lund (constants from memory).</summary>
    public static FaceMethod VerleyLund { get; } = new("Verley and Lund pipe", ResistanceSources.VerleyLund, new(FaceKind.VerleyLund, 0, 0));

    /// <summary>Gets the lateral breakout of a pipe without its vertical-load term, which the rolling resistance of the wheel stands for.</summary>
    public static FaceMethod DnvLateral { get; } = new("DNV-RP-F114 lateral", ResistanceSources.DnvLateral, new(FaceKind.Lateral, LateralKernel.Depth, LateralKernel.Weight));

    /// <summary>Gets the laboratory variant of the lateral breakout, without its vertical-load term.</summary>
    public static FaceMethod DnvLateralLaboratory { get; } = new("DNV-RP-F114 lateral, laboratory variant", ResistanceSources.DnvLateral, new(FaceKind.Lateral, LateralKernel.DepthLaboratory, LateralKernel.WeightLaboratory));

    /// <summary>Gets the earth-moving equation on a half rough face, c_a/c 0.5.</summary>
    public static FaceMethod ReeceHalfRough { get; } = Reece(Ratio.FromDecimalFractions(0.5));

    /// <summary>Gets the methods for undrained clay that need no further number.</summary>
    public static IReadOnlyList<FaceMethod> Undrained { get; } = Array.AsReadOnly([Rankine, ApiSliding, ApiSlidingFullContact, MatlockUpper, MatlockLower, VerleyLund, DnvLateral, DnvLateralLaboratory, ReeceHalfRough]);

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Source Source { get; }

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("z/d", "sinkage over diameter", BuriedWheelKernel.BuriedRatio, 0.5, string.Empty, ResistanceSources.Composition),
        new ValidityLimit("s_u", "strength of the soil ahead", 1, 60, "kPa", ResistanceSources.Composition));

    /// <summary>Gets whether the method holds the suction behind the wheel as well.</summary>
    public bool HoldsSuction { get; }

    internal FaceLaw Law { get; }

    /// <summary>Gives Rankine passive pressure of a drained soil with cohesion and friction; the strength put in is then its cohesion.</summary>
    /// <param name="frictionAngle">Angle of internal friction, 0 to 50 degrees.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static FaceMethod RankineFrictional(Angle frictionAngle)
    {
        var k = FaceKernel.PassiveCoefficient(Guard.Radians(frictionAngle, 0, 50, nameof(frictionAngle)));
        return new("Rankine, friction " + Text.Number(frictionAngle.Degrees) + " deg", ResistanceSources.RankineFriction, new(FaceKind.RankineFriction, k, Math.Sqrt(k)));
    }

    /// <summary>Gives the earth-moving equation, phi = 0, for a face of a given roughness (from memory).</summary>
    /// <param name="adhesionShare">Adhesion on the face over cohesion, 0 (smooth) to 1.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public static FaceMethod Reece(Ratio adhesionShare)
    {
        var share = Guard.Fraction(adhesionShare, 0, 1, nameof(adhesionShare));
        return new("Reece, c_a/c " + Text.Number(share), ResistanceSources.Reece, new(FaceKind.Reece, FaceKernel.RoughFactor(share), 0));
    }

    /// <summary>Gives the bulldozing law of a drained soil with its two factors as input; the strength put in is then its cohesion.</summary>
    /// <param name="cohesionFactor">K_pc, 0 to 200.</param>
    /// <param name="weightFactor">K_pg, 0 to 500.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside its range.</exception>
    public static FaceMethod Bulldozing(double cohesionFactor, double weightFactor) => new(
        "bulldozing, K_pc " + Text.Number(cohesionFactor) + ", K_pg " + Text.Number(weightFactor),
        ResistanceSources.Bulldozing,
        new(FaceKind.Bulldozing, Guard.Range(cohesionFactor, 0, 200, string.Empty, nameof(cohesionFactor)), Guard.Range(weightFactor, 0, 500, string.Empty, nameof(weightFactor))));

    /// <summary>Gives the bulldozing law with factors from the bearing factors of local shear: K_pc = (N'_c - tan phi') cos^2 phi', K_pg = (2 N'_g/tan phi' + 1) cos^2 phi' (from memory).</summary>
    /// <param name="localFriction">Angle phi' of local shear, 1 to 45 degrees.</param>
    /// <param name="bearingCohesion">N'_c, 1 to 200.</param>
    /// <param name="bearingWeight">N'_g, 0 to 100.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FaceMethod BulldozingLocalShear(Angle localFriction, double bearingCohesion, double bearingWeight)
    {
        var phi = Guard.Radians(localFriction, 1, 45, nameof(localFriction));
        double c = FaceKernel.BulldozingCohesion(phi, Guard.Range(bearingCohesion, 1, 200, string.Empty, nameof(bearingCohesion))), g = FaceKernel.BulldozingWeight(phi, Guard.Range(bearingWeight, 0, 100, string.Empty, nameof(bearingWeight)));
        return new("bulldozing, local shear " + Text.Number(localFriction.Degrees) + " deg", ResistanceSources.BulldozingFactors, new(FaceKind.Bulldozing, c, g));
    }

    /// <summary>Gives the resistance of the soil ahead of one wheel.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="strength">Undrained strength of the uncut soil (its cohesion for a drained method), 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 5 to 24 kN/m3.</param>
    /// <returns>The force with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public FaceResult Evaluate(Length sectionWidth, Length overallDiameter, Length sinkage, Pressure strength, SpecificWeight unitWeight)
    {
        double b = Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)), z = Guard.Metres(sinkage, 0, d, nameof(sinkage));
        double s = Guard.Pascals(strength, 0.1, 500, nameof(strength)), gamma = Guard.NewtonsPerCubicMetre(unitWeight, 5, 24, nameof(unitWeight));
        return new FaceResult(this, FaceKernel.Resistance(Law, b, d, z, s, gamma), Validity.Flag(z / d, s / 1000));
    }

    /// <summary>Gives the resistance for many strengths at once: the same kernel over spans.</summary>
    /// <param name="sectionWidthMetres">Tyre width of all, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameterMetres">Tyre diameter of all, 0.4 to 3 m.</param>
    /// <param name="sinkageMetres">Sinkage, 0 m to the diameter, one per case.</param>
    /// <param name="strengthKilopascals">Strength, 0.1 to 500 kPa, one per case.</param>
    /// <param name="unitWeightKilonewtonsPerCubicMetre">Unit weight of all, 5 to 24 kN/m3.</param>
    /// <param name="faceKilonewtons">Receives the force, kN, one per case.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Evaluate(double sectionWidthMetres, double overallDiameterMetres, ReadOnlySpan<double> sinkageMetres, ReadOnlySpan<double> strengthKilopascals, double unitWeightKilonewtonsPerCubicMetre, Span<double> faceKilonewtons)
    {
        Guard.SameLength(sinkageMetres.Length, strengthKilopascals.Length, nameof(strengthKilopascals));
        Guard.SameLength(sinkageMetres.Length, faceKilonewtons.Length, nameof(faceKilonewtons));
        Guard.Range(sectionWidthMetres, 0.1, 1.5, "m", nameof(sectionWidthMetres));
        Guard.Range(overallDiameterMetres, 0.4, 3, "m", nameof(overallDiameterMetres));
        Guard.Range(unitWeightKilonewtonsPerCubicMetre, 5, 24, "kN/m3", nameof(unitWeightKilonewtonsPerCubicMetre));
        Guard.All(sinkageMetres, 0, overallDiameterMetres, "m", nameof(sinkageMetres));
        Guard.All(strengthKilopascals, 0.1, 500, "kPa", nameof(strengthKilopascals));
        for (var i = 0; i < faceKilonewtons.Length; i++)
            faceKilonewtons[i] = FaceKernel.Resistance(Law, sectionWidthMetres, overallDiameterMetres, sinkageMetres[i], strengthKilopascals[i] * 1000, unitWeightKilonewtonsPerCubicMetre * 1000) / 1000;
    }

    /// <summary>Works the resistance out.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to the diameter.</param>
    /// <param name="strength">Strength of the uncut soil, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 5 to 24 kN/m3.</param>
    /// <returns>The worked step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length sectionWidth, Length overallDiameter, Length sinkage, Pressure strength, SpecificWeight unitWeight)
    {
        var result = Evaluate(sectionWidth, overallDiameter, sinkage, strength, unitWeight);
        return new WorkingBuilder(Name)
            .Step("P", "soil ahead of one wheel", FaceText.Expression(Law), FaceText.Substitution(Law, sectionWidth.Meters, overallDiameter.Meters, sinkage.Meters, strength.Kilopascals, unitWeight.KilonewtonsPerCubicMeter), Text.Kilonewtons(result.Force.Newtons), Source)
            .Build();
    }

    /// <summary>Tells whether two are the same method with the same numbers.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True where they are.</returns>
    public bool Equals(FaceMethod? other) => other is not null && Law.Equals(other.Law);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FaceMethod);

    /// <inheritdoc/>
    public override int GetHashCode() => Law.GetHashCode();

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
