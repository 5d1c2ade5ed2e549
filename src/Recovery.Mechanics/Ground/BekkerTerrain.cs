using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Pressure-sinkage and shear parameters of a terrain after Bekker: p = (k_c/b + k_phi) z^n, shear strength c + p tan(phi).</summary>
/// <remarks>
/// <para>k_c in kN/m^(n+1), k_phi in kN/m^(n+2), n a number; c cohesion, phi angle of friction. b is the smaller side of the contact patch, z the sinkage, in m; p in kPa.</para>
/// <para>From plate tests to a sinkage of 0.2 to 0.3 m at the stated moisture, on ground alike in depth: no pan, no free water, no suction. Half a metre of mud is extrapolation.</para>
/// <para>Immutable, equality by value.</para>
/// </remarks>
public sealed record BekkerTerrain
{
    /// <summary>Describes a terrain.</summary>
    /// <param name="name">Name of soil and test.</param>
    /// <param name="cohesiveModulus">k_c, -1,000 to 10,000 kN/m^(n+1).</param>
    /// <param name="frictionalModulus">k_phi, above 0 to 1,000,000 kN/m^(n+2).</param>
    /// <param name="exponent">n, 0.01 to 3.</param>
    /// <param name="cohesion">Cohesion c, 0 to 500 kPa.</param>
    /// <param name="frictionAngle">Angle of friction phi, 0 to 50 degrees.</param>
    /// <param name="moisture">Moisture at which it was tested; null where it was not stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public BekkerTerrain(string name, double cohesiveModulus, double frictionalModulus, double exponent, Pressure cohesion, Angle frictionAngle, Ratio? moisture = null)
        : this(name, cohesiveModulus, frictionalModulus, exponent, cohesion, frictionAngle, moisture, GeneralSources.Caller)
    {
    }

    internal BekkerTerrain(string name, double cohesiveModulus, double frictionalModulus, double exponent, Pressure cohesion, Angle frictionAngle, Ratio? moisture, Source source)
    {
        Name = Guard.Name(name, nameof(name));
        CohesiveModulus = Guard.Range(cohesiveModulus, -1000, 10000, "kN/m^(n+1)", nameof(cohesiveModulus));
        FrictionalModulus = Guard.Range(frictionalModulus, 1e-3, 1e6, "kN/m^(n+2)", nameof(frictionalModulus));
        Exponent = Guard.Range(exponent, 0.01, 3, string.Empty, nameof(exponent));
        Cohesion = Pressure.FromPascals(Guard.Pascals(cohesion, 0, 500, nameof(cohesion)));
        FrictionAngle = Angle.FromRadians(Guard.Radians(frictionAngle, 0, 50, nameof(frictionAngle)));
        if (moisture is { } w) Moisture = Ratio.FromDecimalFractions(Guard.Fraction(w, 0, 10, nameof(moisture)));
        Source = source;
    }

    /// <summary>Gets the name of soil and test.</summary>
    public string Name { get; }

    /// <summary>Gets k_c in kN/m^(n+1).</summary>
    public double CohesiveModulus { get; }

    /// <summary>Gets k_phi in kN/m^(n+2).</summary>
    public double FrictionalModulus { get; }

    /// <summary>Gets the exponent n.</summary>
    public double Exponent { get; }

    /// <summary>Gets the cohesion c.</summary>
    public Pressure Cohesion { get; }

    /// <summary>Gets the angle of friction phi.</summary>
    public Angle FrictionAngle { get; }

    /// <summary>Gets the moisture at which it was tested; null where it was not stated.</summary>
    public Ratio? Moisture { get; }

    /// <summary>Gets where the parameters come from.</summary>
    public Source Source { get; }

    /// <summary>Gives the terrain in words, invariant culture.</summary>
    /// <returns>Name, moisture and the three sinkage parameters.</returns>
    public override string ToString() => Name + (Moisture is { } w ? " at " + Text.With(w.Percent, "%", 3) : string.Empty) + ": k_c " + Text.Number(CohesiveModulus) + ", k_phi " + Text.Number(FrictionalModulus) + ", n " + Text.Number(Exponent);
}
