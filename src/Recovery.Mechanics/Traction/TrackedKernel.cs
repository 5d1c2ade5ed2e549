using System;

namespace Recovery.Mechanics.Traction;

/// <summary>Where the ground bears a machine on tracks while it pulls. SI in, SI out, no allocation.</summary>
/// <remarks>Moments (<see cref="Provenance.GeneralSources.Statics"/>, derived); no constant of its own.</remarks>
internal static class TrackedKernel
{
    /// <summary>Place of the resultant ahead of the middle of the track: [W (x_c cos - h sin) - P h_d - V (l/2 + a)]/(W cos + V).</summary>
    /// <param name="weight">Weight.</param>
    /// <param name="gradeRadians">Grade along the pull.</param>
    /// <param name="centreAhead">Centre of mass ahead of the middle of the track.</param>
    /// <param name="centreHeight">Its height.</param>
    /// <param name="pull">Pull along the ground.</param>
    /// <param name="down">Part of the line down on the hitch.</param>
    /// <param name="hitchHeight">Height of the hitch.</param>
    /// <param name="behindMiddle">Hitch behind the middle of the track.</param>
    public static double Resultant(double weight, double gradeRadians, double centreAhead, double centreHeight, double pull, double down, double hitchHeight, double behindMiddle) =>
        ((weight * ((centreAhead * Math.Cos(gradeRadians)) - (centreHeight * Math.Sin(gradeRadians)))) - (pull * hitchHeight) - (down * behindMiddle)) / ((weight * Math.Cos(gradeRadians)) + down);

    /// <summary>Greatest over mean ground pressure: 1 + 6 e/l inside the middle third, 4/(3 (1 - 2 e/l)) beyond it; infinite at the end of the track.</summary>
    public static double PeakPressure(double eccentricity, double length)
    {
        var e = Math.Abs(eccentricity) / length;
        return e <= 1.0 / 6 ? 1 + (6 * e) : e < 0.5 ? 4 / (3 * (1 - (2 * e))) : double.PositiveInfinity;
    }
}
