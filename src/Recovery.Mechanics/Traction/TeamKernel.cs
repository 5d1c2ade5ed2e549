using System;

namespace Recovery.Mechanics.Traction;

/// <summary>Forces of several lines that meet. SI in, SI out, no allocation.</summary>
internal static class TeamKernel
{
    /// <summary>Friction of webbing in the ring of an equaliser at its upper end (from memory): what gear is checked with.</summary>
    public const double EqualiserFriction = 0.30;

    /// <summary>Tension of either end of a free-running strap that two machines pull: the smaller pull, or the ratio that friction holds times it at the stronger end.</summary>
    /// <param name="own">Pull of the machine at this end.</param>
    /// <param name="other">Pull of the machine at the other end.</param>
    /// <param name="friction">Friction in the ring; 0 without.</param>
    /// <param name="includedRadians">Angle between the two ends.</param>
    public static double EqualisedEnd(double own, double other, double friction, double includedRadians) =>
        Math.Min(own, other * CapstanKernel.Ratio(friction, Math.PI - includedRadians));

    /// <summary>Angle of a resultant off the direction of pull.</summary>
    public static double Off(double along, double sideways) => Math.Atan2(sideways, along);
}
