using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Shackles, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="PartSources.TwoLegsInBow"/>, <see cref="PartSources.NavyShackleRule"/>; axis: <see cref="RiggingSources.ShackleAxis"/>.</remarks>
internal static class ShackleKernel
{
    /// <summary>Widest included angle of two even legs in a bow, degrees.</summary>
    public const double WidestLegs = 120;

    /// <summary>Coefficient of the Navy field rule, short tons a square inch.</summary>
    public const double NavyCoefficient = 3;

    /// <summary>Navy field rule, short tons: 3 D^2, D in inches.</summary>
    public static double NavyShortTons(double diameterMetres)
    {
        var inches = diameterMetres / PhysicalConstants.MetresPerInch;
        return NavyCoefficient * inches * inches;
    }

    /// <summary>The same in its printed metric form, t: 0.417 D^2, D in cm.</summary>
    public static double NavyTonnes(double diameterMetres) => 0.417 * 1e4 * diameterMetres * diameterMetres;

    /// <summary>Share of the limit with two even legs in the bow: a gate, 1 to 120 degrees and 0 beyond.</summary>
    public static double TwoLegs(double includedRadians) => HitchKernel.Degrees(includedRadians) <= WidestLegs ? 1 : 0;

    /// <summary>Limit under a computed peak: the least of limit x dynamic factor, a third of the breaking load and the documented proof load. What is not known is not a number and is left out.</summary>
    public static double Peak(double limit, double dynamicFactor, double breaking, double proof)
    {
        var least = breaking * PartialFactorKernel.ShackleShare;
        if (limit * dynamicFactor < least) least = limit * dynamicFactor;
        return proof < least ? proof : least;
    }
}
