using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Yarn of a fibre: what a line of it cannot be better than. Ropes and webbing keep about 45 to 65 % of its strength, and nylon and polyester ones are softer than their yarn (from memory).</summary>
/// <remarks>EA/MBS = modulus over strength; wave speed sqrt(modulus) in N m/kg; mass per strength its reciprocal. Source: Tension Technology International, Synthetic fibre yarn properties, Table 1 (primary); the ratios derived.</remarks>
public sealed record YarnProperties
{
    internal YarnProperties(string name, double specificModulus, double specificStrength)
    {
        Name = name;
        ModulusNewtonsPerTex = specificModulus;
        StrengthNewtonsPerTex = specificStrength;
    }

    /// <summary>Gets the name of the fibre.</summary>
    public string Name { get; }

    /// <summary>Gets the specific modulus, N/tex.</summary>
    public double ModulusNewtonsPerTex { get; }

    /// <summary>Gets the specific strength, N/tex.</summary>
    public double StrengthNewtonsPerTex { get; }

    /// <summary>Gets EA over breaking strength of the yarn.</summary>
    public double RelativeStiffness => ModulusNewtonsPerTex / StrengthNewtonsPerTex;

    /// <summary>Gets the strain at break of a yarn that were linear.</summary>
    public Ratio LinearStrainAtBreak => Ratio.FromDecimalFractions(StrengthNewtonsPerTex / ModulusNewtonsPerTex);

    /// <summary>Gets the longitudinal wave speed.</summary>
    public Speed WaveSpeed => Speed.FromMetersPerSecond(1000 * Math.Sqrt(ModulusNewtonsPerTex));

    /// <summary>Gets the mass per metre and kilonewton of strength, g/(m kN).</summary>
    public double GramsPerMetrePerKilonewton => 1 / StrengthNewtonsPerTex;

    /// <summary>Gets the source.</summary>
    public Source Source => LinesSources.Yarn;

    /// <summary>Gives the yarn in words, invariant culture.</summary>
    /// <returns>Name and relative stiffness.</returns>
    public override string ToString() => Name + ", EA/MBS " + Text.Number(RelativeStiffness);
}
