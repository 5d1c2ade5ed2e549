using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>One track on a terrain as plain numbers, ready for many loads and slips. SI.</summary>
internal readonly record struct TrackFlat(double Length, double Width, double Modulus, double Exponent, double Cohesion, double Friction, double ShearModulus)
{
    /// <summary>Greatest sinkage that has a number, m: deeper than this no track stands on the ground.</summary>
    public const double Deepest = 2;

    /// <summary>The track of a typed input.</summary>
    public static TrackFlat From(TrackOnSoil track)
    {
        double l = track.ContactLength.Meters, b = track.Width.Meters;
        var terrain = track.Terrain;
        return new TrackFlat(l, b, BekkerKernel.Modulus(terrain.CohesiveModulus * 1000, terrain.FrictionalModulus * 1000, Math.Min(b, l)), terrain.Exponent, terrain.Cohesion.Pascals, terrain.FrictionAngle.Radians, track.ShearModulus.Meters);
    }

    /// <summary>Sinkage under a load; above <see cref="Deepest"/> the ground gives no support.</summary>
    public double Sinkage(double loadNewtons) => Modulus > 0 ? BekkerKernel.PlateSinkage(loadNewtons / (Length * Width), Modulus, Exponent) : double.PositiveInfinity;

    /// <summary>Resistance of the rut.</summary>
    public double Resistance(double sinkageMetres) => BekkerKernel.CompactionResistance(Width, Modulus, sinkageMetres, Exponent);

    /// <summary>Thrust at a slip.</summary>
    public double Thrust(double loadNewtons, double slip) => ShearKernel.Thrust(Length * Width, Cohesion, loadNewtons, Friction, slip, Length, ShearModulus);

    /// <summary>Ceiling of the thrust.</summary>
    public double Ceiling(double loadNewtons) => ShearKernel.Strength(Length * Width * Cohesion, loadNewtons, Friction);
}
