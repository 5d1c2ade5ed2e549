using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Stress in a drawbar pin.</summary>
public sealed record DrawbarPinStress
{
    internal DrawbarPinStress(double diameter, double span, double width, double load, IReadOnlyList<ValidityFlag> flags)
    {
        DiameterMetres = diameter;
        SpanMetres = span;
        WidthMetres = width;
        LoadNewtons = load;
        Flags = flags;
    }

    /// <summary>Gets the bending stress at mid-span.</summary>
    public Pressure Bending => Pressure.FromPascals(DrawbarKernel.Bending(LoadNewtons, SpanMetres, WidthMetres, DiameterMetres));

    /// <summary>Gets the mean stress in double shear.</summary>
    public Pressure Shear => Pressure.FromPascals(DrawbarKernel.Shear(LoadNewtons, DiameterMetres));

    /// <summary>Gets the bending moment at mid-span.</summary>
    public Torque Moment => Torque.FromNewtonMeters(DrawbarKernel.Moment(LoadNewtons, SpanMetres, WidthMetres));

    /// <summary>Gets the flags: raised where the span is outside 1 to 10 diameters.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    private double DiameterMetres { get; }

    private double SpanMetres { get; }

    private double WidthMetres { get; }

    private double LoadNewtons { get; }

    /// <summary>Gives the load at which the pin begins to yield: what an <see cref="AttachmentPoint"/> takes as its yield where the pin is its weakest part.</summary>
    /// <param name="yieldStress">Yield stress of its steel, 100 to 2,000 MPa.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The stress is outside its range.</exception>
    public Force LoadAtYield(Pressure yieldStress) => Force.FromNewtons(DrawbarKernel.Yield(Guard.Pascals(yieldStress, 1e5, 2e6, nameof(yieldStress)), SpanMetres, WidthMetres, DiameterMetres));

    /// <summary>Gives both stresses in one line, invariant culture.</summary>
    /// <returns>Bending and shear.</returns>
    public override string ToString() => "bending " + Text.With(Bending.Pascals / 1e6, "MPa") + ", shear " + Text.With(Shear.Pascals / 1e6, "MPa");
}
