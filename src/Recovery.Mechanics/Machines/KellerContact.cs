using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Contact of a tyre after Keller: footprint, greatest stress and how the stress lies over the footprint.</summary>
/// <remarks>Immutable. x along, y across, both from the middle.</remarks>
public sealed record KellerContact
{
    internal KellerContact(ContactPatch patch, double length, double width, double shape, double peak, double decay, double? alpha)
    {
        Patch = patch;
        ContactLength = Length.FromMeters(length);
        Width = Length.FromMeters(width);
        ShapeExponent = shape;
        PeakStress = Pressure.FromPascals(peak);
        DecayPerMetre = decay;
        LengthExponent = alpha;
    }

    /// <summary>Gets area and mean pressure, with the flags.</summary>
    public ContactPatch Patch { get; }

    /// <summary>Gets the contact length L.</summary>
    public Length ContactLength { get; }

    /// <summary>Gets the width of the tyre.</summary>
    public Length Width { get; }

    /// <summary>Gets the exponent n of the footprint.</summary>
    public double ShapeExponent { get; }

    /// <summary>Gets the greatest vertical stress.</summary>
    public Pressure PeakStress { get; }

    /// <summary>Gets the decay parameter across the width, 1/m.</summary>
    public double DecayPerMetre { get; }

    /// <summary>Gets the exponent alpha along the footprint that makes the stress carry the load; null where no exponent does. Meant to lie between 1 and 16.</summary>
    public double? LengthExponent { get; }

    /// <summary>Gets the stress on the middle line over the greatest, f(0).</summary>
    public double MiddleShare => ContactKernel.KellerAcross(Width.Meters, DecayPerMetre, 0);

    /// <summary>Gives the vertical stress at a place of the footprint.</summary>
    /// <param name="along">x, -3 to 3 m from the middle.</param>
    /// <param name="across">y, -1.5 to 1.5 m from the middle.</param>
    /// <returns>The stress, 0 outside the footprint; null where peak, footprint and load do not fit together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure? StressAt(Length along, Length across)
    {
        double x = Guard.Metres(along, -3, 3, nameof(along)), y = Guard.Metres(across, -1.5, 1.5, nameof(across));
        return LengthExponent is { } alpha ? Pressure.FromPascals(ContactKernel.KellerStress(PeakStress.Pascals, ContactLength.Meters, Width.Meters, ShapeExponent, DecayPerMetre, alpha, x, y)) : null;
    }

    /// <summary>Gives the contact in words, invariant culture.</summary>
    /// <returns>Area, mean and peak.</returns>
    public override string ToString() => Patch + ", peak " + Text.Kilopascals(PeakStress.Pascals, 3);
}
