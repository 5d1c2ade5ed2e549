using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Places of a line, eyes and edges, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="PartSources.SoftEye"/>, <see cref="PartSources.EdgeEurope"/>, <see cref="PartSources.EdgeAustralia"/>, <see cref="PartSources.EyeSplice"/>.</remarks>
internal static class SectionKernel
{
    /// <summary>Widest included angle of a soft eye, degrees.</summary>
    public const double WidestEye = 20;

    /// <summary>Widest bearing that may lie on a radius, m; its radius is at least 0.75 of the width.</summary>
    public const double WidestRound = 0.075;

    /// <summary>Radius over width of a bearing that is not straight.</summary>
    public const double RoundShare = 0.75;

    /// <summary>Eye length over contact diameter, German practice.</summary>
    public const double EyeRule = 3.5;

    /// <summary>Bearing pressure to be warned of, Pa: 7000 psi, from memory.</summary>
    public const double BearingLimit = 7000 * Provenance.PhysicalConstants.PascalsPerPsi;

    /// <summary>Radius over bundle thickness below which a soft shackle is refused, from memory.</summary>
    public const double SoftShackleRatio = 3;

    /// <summary>Radius over thickness below which an edge is sharp: Europe 1, Australia 3.</summary>
    public static double SharpRatio(StandardRegion region) => region == StandardRegion.Australia ? 3 : 1;

    /// <summary>Whether an edge is sharp, rounding allowed.</summary>
    public static bool IsSharp(double radius, double thickness, double ratio) => Math.Round((radius / thickness) - ratio, 9) < 0;

    /// <summary>Of termination and bend at one end the greater reduction, never the product.</summary>
    public static double End(double termination, double bend) => Math.Min(termination, bend);

    /// <summary>Strength: breaking x whole length x least place x straight parts.</summary>
    public static double Strength(double breaking, double wholeLength, double section, double multiplicity) => breaking * wholeLength * section * multiplicity;

    /// <summary>Included angle of an eye of inside length l round a pin D: 2 asin(r/(l - r)), r = D/2; flat open, 180 deg, where D fills it or more.</summary>
    public static double EyeAngle(double length, double diameter) => diameter < length ? 2 * Math.Asin((diameter / 2) / (length - (diameter / 2))) : Math.PI;

    /// <summary>Inside length of an eye for an included angle e: D/2 + (D/2)/sin(e/2).</summary>
    public static double EyeLength(double diameter, double angle) => (diameter / 2) + (diameter / 2 / Math.Sin(angle / 2));

    /// <summary>Bearing pressure T/(D w).</summary>
    public static double Bearing(double load, double diameter, double width) => load / (diameter * width);
}
