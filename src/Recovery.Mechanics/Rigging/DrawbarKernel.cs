using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Drawbar pins and couplings, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="PartSources.PinStatics"/>, <see cref="PartSources.DrawbarCategories"/>.</remarks>
internal static class DrawbarKernel
{
    /// <summary>Shear strength over yield in tension, von Mises.</summary>
    public static readonly double ShearShare = 1 / Math.Sqrt(3);

    /// <summary>Bending stress of a pin on two supports, load spread over a width at mid-span: 32 M/(pi d^3), M = F (2 s - b)/8; b = 0 is the point load F s/4.</summary>
    public static double Bending(double load, double span, double width, double diameter) => 32 * Moment(load, span, width) / (Math.PI * diameter * diameter * diameter);

    /// <summary>Bending moment at mid-span.</summary>
    public static double Moment(double load, double span, double width) => load * ((2 * span) - width) / 8;

    /// <summary>Mean double shear F/(2 A).</summary>
    public static double Shear(double load, double diameter) => load / (2 * Math.PI / 4 * diameter * diameter);

    /// <summary>Load at which a pin begins to yield: the lesser of bending and mean shear.</summary>
    public static double Yield(double yieldStress, double span, double width, double diameter) =>
        Math.Min(yieldStress / Bending(1, span, width, diameter), yieldStress * ShearShare / Shear(1, diameter));

    /// <summary>D-value, g T R/(T + R); masses in kg, N out.</summary>
    public static double DValue(double towing, double towed) => PhysicalConstants.StandardGravity * towing * towed / (towing + towed);
}
