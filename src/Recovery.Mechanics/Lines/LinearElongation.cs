using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A line that is linear to break: k = EA/L, EA = Fb/eb.</summary>
public sealed class LinearElongation : LoadElongation
{
    private readonly double _force;
    private readonly double _strain;

    internal LinearElongation(Length length, Force breakForce, Ratio strainAtBreak, Source source)
        : this(Guard.Metres(length, 0.1, 300, nameof(length)), Guard.Newtons(breakForce, 0.1, 20000, nameof(breakForce)), Guard.Fraction(strainAtBreak, 0.001, 1, nameof(strainAtBreak)), Guard.NotNull(source, nameof(source)), LineState.AsTested, null)
    {
    }

    private LinearElongation(double length, double force, double strain, Source source, LineState state, UnloadingTest? unloading)
        : base(length, CurveShape.Power(force, strain * length, 1), source, state, unloading)
    {
        _force = force;
        _strain = strain;
    }

    /// <summary>Gets the stiffness EA/L.</summary>
    public ForcePerLength Stiffness => ForcePerLength.FromNewtonsPerMeter(Shape.LinearStiffness);

    /// <summary>Gets the axial stiffness EA per unit strain.</summary>
    public Force AxialStiffness => Force.FromNewtons(Shape.LinearStiffness * LengthMetres);

    private protected override string Form => "linear";

    private protected override string StretchLaw => "F/k";

    private protected override string EnergyLaw => "F x/2";

    private protected override LoadElongation Copy(LineState state, UnloadingTest? unloading) => new LinearElongation(LengthMetres, _force, _strain, Source, state, unloading);
}
