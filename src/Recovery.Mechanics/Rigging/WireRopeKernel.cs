using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Bends, terminations and tables of wire rope, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="PartSources.WireBend"/>, <see cref="PartSources.WireSlingTable"/>, <see cref="PartSources.CargoTables"/>.</remarks>
internal static class WireRopeKernel
{
    /// <summary>Galvanised over uncoated.</summary>
    public const double Galvanised = 0.9;

    /// <summary>Part of the breaking strength of an assembled sling that its rating counts: 7.5 % is allowed for the test.</summary>
    public const double TestAllowance = 0.925;

    /// <summary>Least bend of a body, in rope diameters.</summary>
    public const double LeastBody = 1;

    /// <summary>Bend of an eye below which it is warned of, in rope diameters.</summary>
    public const double LeastEye = 2;

    /// <summary>Share left round a bend, 1 - 0.5/sqrt(D/d), D/d from 1.</summary>
    public static double Bend(double ratio) => 1 - (0.5 / Math.Sqrt(ratio));

    /// <summary>Breaking strength of an assembled sling over its rating: 5 x 0.925.</summary>
    public static double AssembledOverRating(double designFactor) => designFactor * TestAllowance;
}
