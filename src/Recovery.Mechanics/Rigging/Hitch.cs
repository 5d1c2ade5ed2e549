using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>How a sling or strap is laid, with the factor that this gives on its straight rating. A factor from a table holds its angle already: there is no way to multiply it by a cosine again, nor a raw choker factor by a tabulated one.</summary>
/// <remarks>
/// <para>Choker: choker factor x share by angle of choke, one place. Basket 2 cos(beta), legs n cos(beta), beta from the line of pull to 60 degrees. EN 1492 and AS 1353 by their tables. Beyond their angles there is no factor and a stopping finding.</para>
/// <para>The leg of a free-running bridle is <see cref="Straight"/>: its two legs are in the statics already.</para>
/// <para>Sources: see <see cref="Source"/> of each. Immutable, equality by value.</para>
/// </remarks>
public sealed record Hitch
{
    private Hitch(HitchKind kind, string name, double place, double multiplicity, Source source, Finding? refusal = null, Assumption? assumption = null)
    {
        Kind = kind;
        Name = name;
        Place = place;
        Multiplicity = multiplicity;
        Source = source;
        Refusal = refusal;
        Assumption = assumption;
    }

    /// <summary>Gets a straight pull; within 5 degrees of the axis it counts as straight (29 CFR 1910.184(b), text of 2010, primary).</summary>
    public static Hitch Straight { get; } = new(HitchKind.Straight, "straight", 1, 1, PartSources.StraightPull);

    /// <summary>Gets how it is laid.</summary>
    public HitchKind Kind { get; }

    /// <summary>Gets its name.</summary>
    public string Name { get; }

    /// <summary>Gets the factor on the straight rating; null where it is refused.</summary>
    public double? Factor => Refusal is null ? Place * Multiplicity : null;

    /// <summary>Gets why it is refused; null where it is not. No factor rescues it.</summary>
    public Finding? Refusal { get; }

    /// <summary>Gets what was assumed; null where nothing was.</summary>
    public Assumption? Assumption { get; }

    /// <summary>Gets the source of the factor.</summary>
    public Source Source { get; }

    /// <summary>Gets the sources of the factor: for a choker that of its angle too.</summary>
    internal System.Collections.Generic.IEnumerable<Source> Sources => Kind == HitchKind.Choker && Source != PartSources.ChainChokeAngles ? [Source, RiggingSources.ChokeAngle] : [Source];

    /// <summary>Gets the share of the strength left at the place where it is choked; 1 where it is not.</summary>
    internal double Place { get; }

    /// <summary>Gets how many straight parts it counts as.</summary>
    internal double Multiplicity { get; }

    /// <summary>A choker by the factor of its kind and the angle of choke: above 120 degrees 1, from 90 0.87, from 60 0.74, from 30 0.62, below 0.49 of the choker rating; no interpolation. Not for chain made to European practice.</summary>
    /// <param name="kind">What is choked.</param>
    /// <param name="angleOfChoke">Angle of choke, 0 to 180 degrees, about 135 where it sets itself; null where nobody looked (the lowest share is then taken and listed).</param>
    /// <returns>The hitch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Hitch Choker(ChokerKind kind, Angle? angleOfChoke)
    {
        var factor = HitchKernel.Choker(Guard.Defined(kind, kind is >= ChokerKind.Webbing and <= ChokerKind.NaturalFibreRope, nameof(kind)));
        var share = StrengthKernel.ChokeAngle(angleOfChoke is { } angle ? Guard.Radians(angle, 0, 180, nameof(angleOfChoke)) : 0);
        return new(HitchKind.Choker, "choked", factor * share, 1, PartSources.OfChoker(kind), assumption: angleOfChoke is null ? GearAssumptions.AngleOfChoke : null);
    }

    /// <summary>A choked fibre chain by its own table, in shares of the single-leg rating: from 120 degrees 0.80, from 90 0.65, from 60 0.55, from 30 0.40, refused below (trade publication, reported).</summary>
    /// <param name="angleOfChoke">Angle of choke, 0 to 180 degrees.</param>
    /// <returns>The hitch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static Hitch ChokedFibreChain(Angle angleOfChoke)
    {
        var radians = Guard.Radians(angleOfChoke, 0, 180, nameof(angleOfChoke));
        return Of(HitchKind.Choker, "choked fibre chain", HitchKernel.ChainChoke(radians), 1, PartSources.ChainChokeAngles, radians, 30, GearFindings.ChokeTooSharp);
    }

    /// <summary>A symmetric basket by statics, 2 cos(beta). What it lies round bends the strap: a wire rope basket asks 25 rope diameters (mechanical splice) or 15 (hand tucked), or its bend as a place.</summary>
    /// <param name="fromLineOfPull">Angle beta of a leg from the line of pull, 0 to 90 degrees; refused beyond 60.</param>
    /// <returns>The hitch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static Hitch Basket(Angle fromLineOfPull)
    {
        var beta = Guard.Radians(fromLineOfPull, 0, 90, nameof(fromLineOfPull));
        return Of(HitchKind.Basket, "basket", 1, HitchKernel.Basket(beta), GeneralSources.Statics, beta, HitchKernel.WidestLeg, GearFindings.LegsTooWide);
    }

    /// <summary>Legs joined at one point by statics: legs that count x cos(beta). Of an even set all count up to three, of an uneven one 1 of 2 and 2 of 3 or 4 (DGUV rule 100-500, reported).</summary>
    /// <param name="legs">Number of legs, 2 to 4.</param>
    /// <param name="fromLineOfPull">Angle beta of the widest leg from the line of pull, 0 to 90 degrees; refused beyond 60.</param>
    /// <param name="even">Whether the legs are symmetric and of equal length.</param>
    /// <returns>The hitch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Hitch Legs(int legs, Angle fromLineOfPull, bool even)
    {
        var beta = Guard.Radians(fromLineOfPull, 0, 90, nameof(fromLineOfPull));
        return Of(HitchKind.Legs, "legs", 1, HitchKernel.Legs(LegsCounted(legs, even), beta), PartSources.LegsThatCount, beta, HitchKernel.WidestLeg, GearFindings.LegsTooWide);
    }

    /// <summary>A mode of EN 1492 by its factor; the angle is inside it. Even legs only: of an uneven set use <see cref="Legs"/>.</summary>
    /// <param name="mode">The mode.</param>
    /// <param name="fromLineOfPull">Angle beta of a leg from the line of pull, 0 to 90 degrees; refused beyond 60. Means nothing for straight and choked.</param>
    /// <param name="angleOfChoke">Angle of choke, 0 to 180 degrees, for the choked mode: its 0.8 is for the angle that sets itself, below it the share of <see cref="Choker"/> applies; null where nobody looked. Means nothing for the other modes.</param>
    /// <returns>The hitch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Hitch European(SlingMode mode, Angle fromLineOfPull, Angle? angleOfChoke = null)
    {
        var beta = Guard.Radians(fromLineOfPull, 0, 90, nameof(fromLineOfPull));
        var factor = HitchKernel.European(Guard.Defined(mode, mode is >= SlingMode.Straight and <= SlingMode.ThreeOrFourLeg, nameof(mode)), beta);
        return mode == SlingMode.Choked
            ? new(HitchKind.Choker, "EN 1492 choked", factor * StrengthKernel.ChokeAngle(angleOfChoke is { } angle ? Guard.Radians(angle, 0, 180, nameof(angleOfChoke)) : 0), 1, PartSources.En1492Modes, assumption: angleOfChoke is null ? GearAssumptions.AngleOfChoke : null)
            : Of(mode switch { SlingMode.Straight => HitchKind.Straight, SlingMode.Basket or SlingMode.BasketParallel => HitchKind.Basket, _ => HitchKind.Legs }, "EN 1492 " + mode, 1, factor, PartSources.En1492Modes, beta, HitchKernel.WidestLeg, GearFindings.LegsTooWide);
    }

    /// <summary>A basket of AS 1353 by its printed factor: to 30 degrees 1.9, to 60 1.73, to 90 1.41, to 120 1.0; refused beyond.</summary>
    /// <param name="includedAngle">Included angle of the two legs, 0 to 180 degrees.</param>
    /// <returns>The hitch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static Hitch AustralianBasket(Angle includedAngle)
    {
        var theta = Guard.Radians(includedAngle, 0, 180, nameof(includedAngle));
        return Of(HitchKind.Basket, "AS 1353 basket", 1, HitchKernel.Australian(theta), PartSources.As1353Basket, theta, HitchKernel.WidestBasket, GearFindings.LegsTooWide);
    }

    /// <summary>Tells how many legs of a sling count.</summary>
    /// <param name="legs">Number of legs, 1 to 4.</param>
    /// <param name="even">Whether the legs are symmetric and of equal length.</param>
    /// <returns>Even: all, at most three. Uneven: 1 of 2, 2 of 3 or 4.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static int LegsCounted(int legs, bool even) => HitchKernel.Counted(Guard.Count(legs, 1, 4, nameof(legs)), even);

    /// <summary>Gives the working load limit of a sling in this hitch.</summary>
    /// <param name="rating">Its rating, a working load limit.</param>
    /// <returns>The limit in this hitch; null where the hitch is refused or no working load limit is marked: a breaking strength first needs its design factor.</returns>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    public Force? Capacity(Rating rating) => Guard.NotNull(rating, nameof(rating)).WorkingNewtons is { } wll && Factor is { } factor ? Force.FromNewtons(wll * factor) : null;

    /// <summary>Gives the hitch in one line, invariant culture.</summary>
    /// <returns>Name and factor.</returns>
    public override string ToString() => Name + ", " + (Factor is { } factor ? "factor " + Text.Number(factor) : "refused");

    private static Hitch Of(HitchKind kind, string name, double place, double multiplicity, Source source, double radians, double limitDegrees, FindingDefinition refusal) =>
        double.IsNaN(place * multiplicity) ? new(kind, name, 0, 0, source, new Finding(refusal, name, limitDegrees, HitchKernel.Degrees(radians), "deg")) : new(kind, name, place, multiplicity, source);
}
