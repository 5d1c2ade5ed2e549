using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Published rules that size a recovery strap by weight, side by side. They lie about two apart, none was written for a 15 to 40 t machine, and none takes the place of the check against what the puller can impose.</summary>
/// <remarks>Sources: Australian safety standard F2017L01560, breaking strength 2 to 3 times the gross mass of the lighter vehicle (primary); Michigan study guide, 5 times the gross weight of the stuck one (primary). Applying them to a farm machine is an extrapolation. Too strong is also wrong: a stiffer strap raises the peak on everything else.</remarks>
public static class RecoveryStrapSizing
{
    /// <summary>Gets the source of the Australian rule.</summary>
    public static Source AustralianSource => PartSources.StrapStandard;

    /// <summary>Gets the source of the Michigan rule.</summary>
    public static Source MichiganSource => PartSources.MichiganGuide;

    /// <summary>Low end of the Australian rule: twice the gross mass of the lighter vehicle.</summary>
    /// <param name="lighterGross">Gross mass of the lighter vehicle, 0.5 to 200 t.</param>
    /// <returns>The breaking strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public static Force AustralianLow(Mass lighterGross) => Times(2, lighterGross, nameof(lighterGross));

    /// <summary>High end of the Australian rule: three times the gross mass of the lighter vehicle.</summary>
    /// <param name="lighterGross">Gross mass of the lighter vehicle, 0.5 to 200 t.</param>
    /// <returns>The breaking strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public static Force AustralianHigh(Mass lighterGross) => Times(3, lighterGross, nameof(lighterGross));

    /// <summary>Michigan rule: five times the gross weight of the stuck vehicle.</summary>
    /// <param name="stuckGross">Gross mass of the stuck vehicle, 0.5 to 200 t.</param>
    /// <returns>The breaking strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public static Force Michigan(Mass stuckGross) => Times(5, stuckGross, nameof(stuckGross));

    private static Force Times(double factor, Mass mass, string name) => Force.FromNewtons(factor * AttachmentKernel.Weight(Guard.Kilograms(mass, 0.5, 200, name)));
}
