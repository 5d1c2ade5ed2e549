using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>One place of a line with the share of strength left there. Each factory holds all that meets at its place; places meet each other through the minimum alone, so that no product of places can be written.</summary>
/// <remarks>
/// <para>A choke is no place of this kind: it belongs to the <see cref="Hitch"/> and holds its own strap-on-strap. Of termination and bend at one end the greater reduction counts (0027/ND s. 7.6.1 and 7.7.2, primary).</para>
/// <para>Immutable, equality by value.</para>
/// </remarks>
public sealed record SectionPlace
{
    private SectionPlace(string name, double share, Source source, Finding? finding = null, Assumption? assumption = null)
    {
        Name = Guard.Name(name, nameof(name));
        Share = finding is { Severity: Severity.Stop } ? double.NaN : share;
        Source = source;
        Finding = finding;
        Assumption = assumption;
    }

    /// <summary>Gets the name of the place.</summary>
    public string Name { get; }

    /// <summary>Gets the share of strength left; null where the place is refused.</summary>
    public double? Factor => double.IsNaN(Share) ? null : Share;

    /// <summary>Gets the objection to it; null where there is none. A stop refuses the place and no factor rescues it.</summary>
    public Finding? Finding { get; }

    /// <summary>Gets what was assumed of it; null where nothing was.</summary>
    public Assumption? Assumption { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    internal double Share { get; }

    /// <summary>An end whose loss is inside the documented rating of the finished assembly: 1.</summary>
    /// <param name="name">Name of the place.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static SectionPlace Documented(string name) => new(name, 1, PartSources.NoTerminationLoss);

    /// <summary>An end with figures of its maker or of a test: of termination and bend the greater reduction.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="termination">Share left by the termination, 0.05 to 1.</param>
    /// <param name="bend">Share left by the bend round what it sits on, 0.05 to 1; null where it is not bent.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range.</exception>
    public static SectionPlace End(string name, Ratio termination, Ratio? bend = null) =>
        new(name, SectionKernel.End(Guard.Fraction(termination, 0.05, 1, nameof(termination)), bend is { } b ? Guard.Fraction(b, 0.05, 1, nameof(bend)) : 1), GeneralSources.Caller);

    /// <summary>An eye of wire rope on a pin: of termination and bend the greater reduction; warned of below D/d 2, refused below 1.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="termination">How the end is made.</param>
    /// <param name="pin">Diameter of the pin, 1 to 3,000 mm; null where a thimble or socket carries it.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentNullException">The termination is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static SectionPlace WireEye(string name, WireTermination termination, Length? pin)
    {
        Guard.NotNull(termination, nameof(termination));
        var assumed = termination.Kind == WireTerminationKind.Unknown ? GearAssumptions.RopeEnd : null;
        if (pin is not { } diameter) return new(name, termination.Share, termination.Source, assumption: assumed);
        var bend = WireBendModel.Instance.Evaluate(diameter, termination.Diameter);
        return bend.Efficiency is not { } eta
            ? new(name, double.NaN, PartSources.WireBend, new Finding(GearFindings.BendTooTight, name, WireRopeKernel.LeastBody, bend.Ratio))
            : new(name, SectionKernel.End(termination.Share, eta), termination.Share <= eta ? termination.Source : PartSources.WireBend, bend.Flags.Count > 0 ? new Finding(GearFindings.EyeBentTight, name, WireRopeKernel.LeastEye, bend.Ratio) : null, assumed);
    }

    /// <summary>The body of a wire rope round a pin: refused below D/d 1.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="rope">Diameter of the rope, 1 to 200 mm.</param>
    /// <param name="bentRound">Diameter bent round, 1 to 3,000 mm.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SectionPlace WireBody(string name, Length rope, Length bentRound)
    {
        var bend = WireBendModel.Instance.Evaluate(bentRound, rope);
        return new(name, bend.Efficiency ?? double.NaN, PartSources.WireBend, bend.Efficiency is null ? new Finding(GearFindings.BendTooTight, name, WireRopeKernel.LeastBody, bend.Ratio) : null);
    }

    /// <summary>An eye splice of fibre rope.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="kind">Kind of splice.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not a defined one.</exception>
    public static SectionPlace Splice(string name, FibreSpliceKind kind) => Guard.Defined(kind, kind is >= FibreSpliceKind.WithThimble and <= FibreSpliceKind.TestedHmpe, nameof(kind)) switch
    {
        FibreSpliceKind.WithThimble => new(name, 0.90, PartSources.EyeSplice),
        FibreSpliceKind.DoubleBraid => new(name, 0.85, PartSources.SpliceByMake),
        FibreSpliceKind.TestedHmpe => new(name, 1, PartSources.OffshoreTerminations),
        _ => new(name, 0.90, PartSources.SpliceByMake),
    };

    /// <summary>A fibre sling or rope round a pin: 1 at or above the least diameter its maker states, refused below it and where none is stated.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="pin">Diameter of the pin, 1 to 3,000 mm.</param>
    /// <param name="makersLeast">Least diameter stated by the maker, 1 to 3,000 mm; null where none is.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SectionPlace FibrePin(string name, Length pin, Length? makersLeast)
    {
        var d = Guard.Metres(pin, 0.001, 3, nameof(pin));
        if (makersLeast is not { } stated) return new(name, double.NaN, PartSources.FibrePin, new Finding(GearFindings.PinNotStated, name, available: d * 1000, unit: "mm"));
        var least = Guard.Metres(stated, 0.001, 3, nameof(makersLeast));
        return new(name, 1, PartSources.FibrePin, Math.Round(d - least, 9) < 0 ? new Finding(GearFindings.PinTooThin, name, least * 1000, d * 1000, "mm") : null);
    }

    /// <summary>A strap over an edge that it does not slide on: radius at least three thicknesses passes (Australia), below one is refused (Europe), between them a caution.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="radius">Radius of the edge, 0 to 3,000 mm.</param>
    /// <param name="thickness">Compressed thickness of the strap, 0.5 to 200 mm.</param>
    /// <returns>The place; it takes nothing off.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SectionPlace Edge(string name, Length radius, Length thickness)
    {
        double r = Guard.Metres(radius, 0, 3, nameof(radius)), t = Guard.Metres(thickness, 0.0005, 0.2, nameof(thickness));
        return SectionKernel.IsSharp(r, t, SectionKernel.SharpRatio(StandardRegion.Europe)) ? new(name, double.NaN, PartSources.EdgeEurope, new Finding(GearFindings.EdgeSharp, name, t * 1000, r * 1000, "mm"))
            : new(name, 1, PartSources.EdgeAustralia, SectionKernel.IsSharp(r, t, SectionKernel.SharpRatio(StandardRegion.Australia)) ? new Finding(GearFindings.EdgeBetween, name, SectionKernel.SharpRatio(StandardRegion.Australia) * t * 1000, r * 1000, "mm") : null);
    }

    /// <summary>A soft shackle on an edge: refused below three bundle thicknesses (recommendation, from memory).</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="radius">Radius of the edge, 0 to 3,000 mm.</param>
    /// <param name="bundle">Thickness of the bundle, 0.5 to 200 mm.</param>
    /// <returns>The place; it takes nothing off.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SectionPlace SoftShackleEdge(string name, Length radius, Length bundle)
    {
        double r = Guard.Metres(radius, 0, 3, nameof(radius)), t = Guard.Metres(bundle, 0.0005, 0.2, nameof(bundle));
        return new(name, 1, PartSources.SoftShackleStrength, SectionKernel.IsSharp(r, t, SectionKernel.SoftShackleRatio) ? new Finding(GearFindings.SoftEdge, name, SectionKernel.SoftShackleRatio * t * 1000, r * 1000, "mm") : null);
    }

    /// <summary>A bight of one strap in the eye of another, for both straps: the maker's figure, else 0.5 from memory.</summary>
    /// <param name="name">Name of the place.</param>
    /// <param name="makersFigure">Share stated by the maker for that joint, 0.1 to 1; null where there is none.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public static SectionPlace Bight(string name, Ratio? makersFigure) => makersFigure is { } figure
        ? new(name, Guard.Fraction(figure, 0.1, 1, nameof(makersFigure)), GeneralSources.Caller)
        : new(name, StrengthKernel.StrapOnStrap, RiggingSources.Bight, assumption: GearAssumptions.Bight);

    /// <summary>Tells whether an edge is sharp by the rule of a region: Europe below one thickness, Australia below three.</summary>
    /// <param name="region">Europe or Australia.</param>
    /// <param name="radius">Radius of the edge, 0 to 3,000 mm.</param>
    /// <param name="thickness">Compressed thickness, 0.5 to 200 mm.</param>
    /// <returns>True where it is sharp.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or the region has no rule.</exception>
    public static bool IsSharp(StandardRegion region, Length radius, Length thickness) => SectionKernel.IsSharp(
        Guard.Metres(radius, 0, 3, nameof(radius)), Guard.Metres(thickness, 0.0005, 0.2, nameof(thickness)), SectionKernel.SharpRatio(Guard.Defined(region, region is StandardRegion.Europe or StandardRegion.Australia, nameof(region))));

    /// <summary>Gives the least diameter a folded strap may lie round by the rule of a region: twice the least radius.</summary>
    /// <param name="region">Europe or Australia.</param>
    /// <param name="thickness">Thickness of the folded strap, 0.5 to 200 mm.</param>
    /// <returns>The diameter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside its range or the region has no rule.</exception>
    public static Length LeastDiameter(StandardRegion region, Length thickness) =>
        Length.FromMeters(2 * SectionKernel.SharpRatio(Guard.Defined(region, region is StandardRegion.Europe or StandardRegion.Australia, nameof(region))) * Guard.Metres(thickness, 0.0005, 0.2, nameof(thickness)));

    /// <summary>Gives the place in one line, invariant culture.</summary>
    /// <returns>Name and share.</returns>
    public override string ToString() => Name + ", " + (Factor is { } factor ? Text.Number(factor) : "refused");
}
