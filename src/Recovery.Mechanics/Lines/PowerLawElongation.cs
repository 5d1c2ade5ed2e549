using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A line that stiffens: F = Fb (eps/eb)^n.</summary>
public sealed class PowerLawElongation : LoadElongation
{
    private readonly double _force;
    private readonly double _strain;

    internal PowerLawElongation(Length length, Force breakForce, Ratio strainAtBreak, double exponent, Source source)
        : this(Guard.Metres(length, 0.1, 300, nameof(length)), Guard.Newtons(breakForce, 0.1, 20000, nameof(breakForce)), Guard.Fraction(strainAtBreak, 0.001, 1, nameof(strainAtBreak)), Guard.Range(exponent, 1, 6, string.Empty, nameof(exponent)), Guard.NotNull(source, nameof(source)), LineState.AsTested, null)
    {
    }

    private PowerLawElongation(double length, double force, double strain, double exponent, Source source, LineState state, UnloadingTest? unloading)
        : base(length, CurveShape.Power(force, strain * length, exponent), source, state, unloading)
    {
        _force = force;
        _strain = strain;
    }

    /// <summary>Gets the exponent n.</summary>
    public double Exponent => Shape.Exponent;

    private protected override string Form => "power law, n " + Text.Number(Exponent);

    private protected override string StretchLaw => "L eb (F/Fb)^(1/n)";

    private protected override string EnergyLaw => "F x/(n + 1)";

    private protected override LoadElongation Copy(LineState state, UnloadingTest? unloading) => new PowerLawElongation(LengthMetres, _force, _strain, Exponent, Source, state, unloading);
}
