using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A webbing strap, roundsling or fibre rope: a recovery strap in the line, or an axle strap choked round an axle.</summary>
/// <remarks>
/// <para>R = MBS x whole length x smallest place; wetness, sunlight, age and chemicals act on the whole length; a choke is a place: 0.80 x the share by angle of choke. A choke already holds its own strap-on-strap. Whole-length factors multiply, places take the minimum.</para>
/// <para>Wet nylon keeps 0.85 (primary); wet polyester and HMPE 1.00 (from memory). Wet nylon is taken as stiff as dry. An angle of choke that is not declared takes the lowest bin.</para>
/// <para>Immutable, equality by value.</para>
/// </remarks>
public sealed record Strap : RigPart
{
    /// <summary>Describes a strap.</summary>
    /// <param name="name">Name, unique in its rig.</param>
    /// <param name="fibre">What it is made of.</param>
    /// <param name="rating">Its marked rating, which says what it is.</param>
    /// <param name="length">Unstretched length, 0.3 to 100 m.</param>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Strap(string name, Fibre fibre, Rating rating, Length length)
        : base(name)
    {
        Fibre = fibre is >= Fibre.Nylon and <= Fibre.Hmpe ? fibre : throw new ArgumentOutOfRangeException(nameof(fibre), nameof(fibre) + " must be nylon, polyester or HMPE in a rig: of " + fibre + " no band of stiffness is known here, and without one no peak can be worked out.");
        Rating = Guard.NotNull(rating, nameof(rating));
        Length = Length.FromMeters(Guard.Metres(length, 0.3, 100, nameof(length)));
    }

    /// <summary>Gets what it is made of.</summary>
    public Fibre Fibre { get; }

    /// <summary>Gets its marked rating.</summary>
    public Rating Rating { get; init => field = Guard.NotNull(value, nameof(Rating)); }

    /// <summary>Gets its unstretched length.</summary>
    public Length Length { get; init => field = Length.FromMeters(Guard.Metres(value, 0.3, 100, nameof(Length))); }

    /// <summary>Gets what was seen on it.</summary>
    public StrapCondition Condition { get; init; }

    /// <summary>Gets whether it is choked round something.</summary>
    public bool Choked { get; init; }

    /// <summary>Gets the angle of choke, 0 to 180 degrees; null where it was not looked at (the lowest bin is then taken). Means nothing unless <see cref="Choked"/>.</summary>
    public Angle? AngleOfChoke { get; init => field = value is { } v ? Angle.FromRadians(Guard.Radians(v, 0, 180, nameof(AngleOfChoke))) : null; }

    /// <summary>Gets the angle of a leg from the line of pull where it lies as a basket, both its ends on one point, 0 to 90 degrees (refused beyond 60); null where it does not. It then counts 2 cos(angle) times its straight strength, is half as long and four cos(angle)^2 times as stiff. Means nothing where it is <see cref="Choked"/>.</summary>
    public Angle? BasketLegAngle { get; init => field = value is { } v ? Angle.FromRadians(Guard.Radians(v, 0, 90, nameof(BasketLegAngle))) : null; }

    /// <summary>Gets the measured elastic line; null takes the default band of its fibre.</summary>
    public ElasticLine? Measured { get; init; }

    /// <summary>Gets the maker's figure for a bight of another strap in its eye, as a share of its strength; null where there is none. Accepted range 0.1 to 1.</summary>
    public Ratio? MakersBightShare { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0.1, 1, nameof(MakersBightShare))) : null; }

    /// <summary>Gets how it is made.</summary>
    public StrapConstruction Construction { get; init => field = Guard.Defined(value, value is >= StrapConstruction.Webbing and <= StrapConstruction.Rope, nameof(Construction)); }

    /// <summary>Gets what it has been through and works in; null where nothing was declared.</summary>
    public LineExposure? Exposure { get; init; }

    /// <summary>Gets its first end as a place; null where its rating is that of the finished strap and it sits as its maker asks.</summary>
    public SectionPlace? FirstEnd { get; init; }

    /// <summary>Gets its second end as a place; null as for <see cref="FirstEnd"/>.</summary>
    public SectionPlace? SecondEnd { get; init; }

    /// <summary>Gets the edge or body it lies round between its ends; null where there is none.</summary>
    public SectionPlace? Middle { get; init; }

    /// <summary>Gets how it is laid: straight, choked, or as a basket.</summary>
    public Hitch Hitch => Choked ? Hitch.Choker(ChokerKind.Webbing, AngleOfChoke) : BasketLegAngle is { } beta ? Hitch.Basket(beta) : Hitch.Straight;

    /// <summary>Gets its derated strength with every factor by its place and source. What was seen on it (<see cref="RejectedFor"/>) comes before any of it.</summary>
    public DeratedStrength Strength
    {
        get
        {
            var places = new System.Collections.Generic.List<SectionPlace>(3);
            if (FirstEnd is { } first) places.Add(first);
            if (SecondEnd is { } second) places.Add(second);
            if (Middle is { } middle) places.Add(middle);
            return DeratedStrength.Of(Name, Rating, WholeLengthDerating.OfFibre(Name, Fibre, IsWet, Exposure), Hitch, [.. places]);
        }
    }

    /// <summary>Gets what takes it out of service; <see cref="StrapCondition.Sound"/> where nothing does.</summary>
    public StrapCondition RejectedFor => Condition & ~StrapCondition.Wet;

    /// <summary>Share of its rating that is left; not a number where something takes it out of service.</summary>
    internal double Deratings => IsPlain ? Wet * Place : Strength.Share ?? double.NaN;

    /// <summary>Whether wetness and a choke are all that acts: the short way of the same product.</summary>
    internal bool IsPlain => !IsBasket && Exposure is null && FirstEnd is null && SecondEnd is null && Middle is null;

    internal bool IsBasket => !Choked && BasketLegAngle is not null;

    internal bool IsWet => (Condition & StrapCondition.Wet) == StrapCondition.Wet;

    internal double Wet => IsWet ? ConditionKernel.Wet(Fibre) : 1;

    /// <summary>Share left along its whole length; not a number where something takes it out of service.</summary>
    internal double WholeLength => Exposure is null ? Wet : WholeLengthDerating.OfFibre(Name, Fibre, IsWet, Exposure).Share;

    internal double Place => Choked ? StrengthKernel.Choker * StrengthKernel.ChokeAngle(AngleOfChoke?.Radians ?? 0) : 1;

    /// <summary>Angle of a leg of the basket, rad; beyond the widest, where it is refused, as there.</summary>
    private double LegRadians => Math.Min(BasketLegAngle!.Value.Degrees, HitchKernel.WidestLeg) * Math.PI / 180;

    internal override double LineMetres => IsBasket ? ElasticKernel.BasketReach(Length.Meters, LegRadians) : Length.Meters;

    internal override ElasticLine? Elastic
    {
        get
        {
            var line = Measured ?? (Rating.BreakingNewtons is { } mbs ? ElasticLine.Of(MaterialOf(Fibre), Force.FromNewtons(mbs), Length) : null);
            return line is not null && IsBasket ? line.AsBasket(LegRadians) : line;
        }
    }

    /// <summary>Works out the strength step by step.</summary>
    /// <returns>The worked steps; empty where the breaking strength is not known.</returns>
    public Working Explain()
    {
        return Rating.BreakingNewtons is null ? new WorkingBuilder("Strength of " + Name).Build() : Strength.Explain();
    }

    /// <summary>Gives the same with another value: its marked rating. For callers whose language has no <c>with</c>.</summary>
    /// <param name="rating">The value, as in <see cref="Rating"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithRating(Rating rating) => this with { Rating = rating };

    /// <summary>Gives the same with another value: its unstretched length. For callers whose language has no <c>with</c>.</summary>
    /// <param name="length">The value, as in <see cref="Length"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithLength(Length length) => this with { Length = length };

    /// <summary>Gives the same with another value: what was seen on it. For callers whose language has no <c>with</c>.</summary>
    /// <param name="condition">The value, as in <see cref="Condition"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithCondition(StrapCondition condition) => this with { Condition = condition };

    /// <summary>Gives the same with another value: whether it is choked round something. For callers whose language has no <c>with</c>.</summary>
    /// <param name="choked">The value, as in <see cref="Choked"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithChoked(bool choked) => this with { Choked = choked };

    /// <summary>Gives the same with another value: the angle of choke, 0 to 180 degrees. For callers whose language has no <c>with</c>.</summary>
    /// <param name="angleOfChoke">The value, as in <see cref="AngleOfChoke"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithAngleOfChoke(Angle? angleOfChoke) => this with { AngleOfChoke = angleOfChoke };

    /// <summary>Gives the same laid as a basket, no longer choked. For callers whose language has no <c>with</c>.</summary>
    /// <param name="legAngle">The value, as in <see cref="BasketLegAngle"/>; null lays it straight.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithBasket(Angle? legAngle) => this with { BasketLegAngle = legAngle, Choked = false };

    /// <summary>Gives the same with another value: the measured elastic line. For callers whose language has no <c>with</c>.</summary>
    /// <param name="measured">The value, as in <see cref="Measured"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithMeasured(ElasticLine? measured) => this with { Measured = measured };

    /// <summary>Gives the same with another value: the maker's figure for a bight of another strap in its eye, as a share of its strength. For callers whose language has no <c>with</c>.</summary>
    /// <param name="makersBightShare">The value, as in <see cref="MakersBightShare"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithMakersBightShare(Ratio? makersBightShare) => this with { MakersBightShare = makersBightShare };

    /// <summary>Gives the same with another value: how it is made. For callers whose language has no <c>with</c>.</summary>
    /// <param name="construction">The value, as in <see cref="Construction"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithConstruction(StrapConstruction construction) => this with { Construction = construction };

    /// <summary>Gives the same with another value: what it has been through. For callers whose language has no <c>with</c>.</summary>
    /// <param name="exposure">The value, as in <see cref="Exposure"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithExposure(LineExposure? exposure) => this with { Exposure = exposure };

    /// <summary>Gives the same with its places described. For callers whose language has no <c>with</c>.</summary>
    /// <param name="firstEnd">The value, as in <see cref="FirstEnd"/>.</param>
    /// <param name="secondEnd">The value, as in <see cref="SecondEnd"/>.</param>
    /// <param name="middle">The value, as in <see cref="Middle"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithPlaces(SectionPlace? firstEnd, SectionPlace? secondEnd, SectionPlace? middle) => this with { FirstEnd = firstEnd, SecondEnd = secondEnd, Middle = middle };

    /// <summary>Gives the strap in words, invariant culture.</summary>
    /// <returns>Name, fibre, rating and length.</returns>
    public override string ToString() => Name + ", " + Fibre + ", " + Rating + ", " + Text.With(Length.Meters, "m");

    internal static LineMaterial MaterialOf(Fibre fibre) => fibre switch
    {
        Fibre.Nylon => LineMaterial.NylonWebbing,
        Fibre.Polyester => LineMaterial.PolyesterWebbing,
        _ => LineMaterial.HmpeRope,
    };
}
