using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>One part of a line made of several, one after the other.</summary>
public sealed class LineSegment
{
    /// <summary>Describes a part.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="curve">Its load-elongation curve.</param>
    /// <param name="massPerMetre">Mass of an unstretched metre, 0.02 to 60 kg/m.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public LineSegment(string name, LoadElongation curve, LinearDensity massPerMetre)
    {
        Name = Guard.Name(name, nameof(name));
        Curve = Guard.NotNull(curve, nameof(curve));
        MassPerMetre = LinearDensity.FromKilogramsPerMeter(Guard.Range(massPerMetre.KilogramsPerMeter, 0.02, 60, "kg/m", nameof(massPerMetre)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the load-elongation curve.</summary>
    public LoadElongation Curve { get; }

    /// <summary>Gets the mass of an unstretched metre.</summary>
    public LinearDensity MassPerMetre { get; }

    /// <summary>Gets the mass of the part.</summary>
    public Mass Mass => Mass.FromKilograms(MassKilograms);

    /// <summary>Gets the speed of a wave along it, sqrt(EA/m'), in unstretched metres: a release is felt at the other end after its length over this. Null where the curve is not linear, and then no single speed is.</summary>
    public Speed? WaveSpeed => Curve.Shape.IsLinear ? Speed.FromMetersPerSecond(ElasticKernel.WaveSpeed(AxialStiffness, MassPerMetre.KilogramsPerMeter)) : null;

    internal double Impedance => ElasticKernel.Impedance(AxialStiffness, MassPerMetre.KilogramsPerMeter);

    private double AxialStiffness => Curve.Shape.LinearStiffness * Curve.LengthMetres;

    internal double MassKilograms => MassPerMetre.KilogramsPerMeter * Curve.LengthMetres;

    /// <summary>Gives the energy stored in a kilogram of it: half the square of the speed at which it recoils with nothing on its end. The same for any length.</summary>
    /// <param name="tension">Tension, 0 to its break or the end of its table.</param>
    /// <returns>Energy over mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public SpecificEnergy EnergyPerMass(Force tension) => SpecificEnergy.FromJoulesPerKilogram(Curve.StoredEnergy(tension).Joules / MassKilograms);

    /// <summary>Makes a part of two unequal legs beside each other; the longer one engages after the difference of their lengths.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="shorter">The leg that engages first; linear or tabulated.</param>
    /// <param name="longer">The leg that engages later; linear or tabulated.</param>
    /// <param name="difference">Stretch after which the longer leg engages, 0 to 5 m.</param>
    /// <param name="massPerMetre">Mass of an unstretched metre of both legs together, 0.02 to 60 kg/m.</param>
    /// <returns>The part, its curve exact from point to point.</returns>
    /// <exception cref="ArgumentException">A leg is a power law: tabulate it first.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static LineSegment ParallelLegs(string name, LoadElongation shorter, LoadElongation longer, Length difference, LinearDensity massPerMetre)
    {
        Straight(Guard.NotNull(shorter, nameof(shorter)), nameof(shorter));
        Straight(Guard.NotNull(longer, nameof(longer)), nameof(longer));
        var later = Guard.Metres(difference, 0, 5, nameof(difference));
        return new LineSegment(name, TabulatedElongation.Beside(shorter, longer, later, new Source("parallel-legs", "Two legs beside each other: " + shorter.Source.Citation + "; " + longer.Source.Citation, Standings.Weakest(shorter.Source.Standing, longer.Source.Standing))), massPerMetre);
    }

    /// <summary>Makes a part of one strap whose middle runs through an eye without friction.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="strap">The strap, linear.</param>
    /// <param name="anchorSpacing">Distance between its anchors, above 0 to below the length of the strap.</param>
    /// <param name="massPerMetre">Mass of an unstretched metre of the strap, 0.02 to 60 kg/m.</param>
    /// <returns>The part: stiffness along the pull k = 4 cos^2(theta/2) EA/L.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="strap"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is outside its range.</exception>
    public static LineSegment RunningBridle(string name, LinearElongation strap, Length anchorSpacing, LinearDensity massPerMetre)
    {
        Guard.NotNull(strap, nameof(strap));
        var w = Guard.Metres(anchorSpacing, 0, 0.99 * strap.LengthMetres, nameof(anchorSpacing));
        var theta = ElasticKernel.RunningBridleAngle(strap.LengthMetres, w);
        var k = ElasticKernel.RunningBridleStiffness(strap.AxialStiffness.Newtons, strap.LengthMetres, theta);
        var end = 2 * Math.Cos(theta / 2) * strap.Shape.EndForce;
        var half = strap.LengthMetres / 2;
        return new LineSegment(name, new LinearElongation(Length.FromMeters(half), Force.FromNewtons(end), Ratio.FromDecimalFractions(end / k / half), strap.Source), LinearDensity.FromKilogramsPerMeter(2 * massPerMetre.KilogramsPerMeter));
    }

    /// <summary>Gives the part in words, invariant culture.</summary>
    /// <returns>Name and curve.</returns>
    public override string ToString() => Name + ": " + Curve;

    private static void Straight(LoadElongation leg, string name)
    {
        if (leg.Shape.Kind == CurveKind.Power && !leg.Shape.IsLinear) throw new ArgumentException(name + " must be linear or tabulated; it is a power law.", name);
    }
}
