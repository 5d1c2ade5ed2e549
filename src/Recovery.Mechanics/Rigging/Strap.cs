using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A webbing strap, roundsling or fibre rope: a recovery strap in the line, or an axle strap choked round an axle.</summary>
/// <remarks>
/// <para>R = MBS x wet x smallest place; a choke is a place: 0.80 x the share by angle of choke. A choke already holds its own strap-on-strap. Whole-length factors multiply, places take the minimum.</para>
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
        Fibre = Guard.Defined(fibre, fibre is >= Fibre.Nylon and <= Fibre.Hmpe, nameof(fibre));
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

    /// <summary>Gets the measured elastic line; null takes the default band of its fibre.</summary>
    public ElasticLine? Measured { get; init; }

    /// <summary>Gets the maker's figure for a bight of another strap in its eye, as a share of its strength; null where there is none. Accepted range 0.1 to 1.</summary>
    public Ratio? MakersBightShare { get; init => field = value is { } v ? Ratio.FromDecimalFractions(Guard.Fraction(v, 0.1, 1, nameof(MakersBightShare))) : null; }

    /// <summary>Gets what takes it out of service; <see cref="StrapCondition.Sound"/> where nothing does.</summary>
    public StrapCondition RejectedFor => Condition & ~StrapCondition.Wet;

    internal double Deratings => Wet * Place;

    internal bool IsWet => (Condition & StrapCondition.Wet) == StrapCondition.Wet;

    internal double Wet => IsWet && Fibre == Fibre.Nylon ? StrengthKernel.WetNylon : 1;

    internal double Place => Choked ? StrengthKernel.Choker * StrengthKernel.ChokeAngle(AngleOfChoke?.Radians ?? 0) : 1;

    internal ElasticLine? Elastic => Measured ?? (Rating.BreakingNewtons is { } mbs ? ElasticLine.Of(MaterialOf(Fibre), Force.FromNewtons(mbs), Length) : null);

    /// <summary>Works out the strength step by step.</summary>
    /// <returns>The worked steps; empty where the breaking strength is not known.</returns>
    public Working Explain()
    {
        var working = new WorkingBuilder("Strength of " + Name);
        if (Rating.BreakingNewtons is not { } mbs) return working.Build();
        working.Step("k_wet", "wet", Fibre + (IsWet ? ", wet" : ", dry"), Text.Number(Wet), Text.Number(Wet), Fibre == Fibre.Nylon ? RiggingSources.WetNylon : RiggingSources.WetOther);
        if (Choked)
            working.Step("k_choke", "choke, factor and angle at one place", "0.80 x share by angle of choke", "0.80 x " + Text.Number(StrengthKernel.ChokeAngle(AngleOfChoke?.Radians ?? 0)), Text.Number(Place), RiggingSources.ChokeAngle);
        return working.Step("R", "strength", "MBS x whole-length factors x least place", Text.Number(mbs / 1000) + " x " + Text.Number(Wet) + " x " + Text.Number(Place), Text.Kilonewtons(mbs * Deratings), RiggingSources.Levels).Build();
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

    /// <summary>Gives the same with another value: the measured elastic line. For callers whose language has no <c>with</c>.</summary>
    /// <param name="measured">The value, as in <see cref="Measured"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithMeasured(ElasticLine? measured) => this with { Measured = measured };

    /// <summary>Gives the same with another value: the maker's figure for a bight of another strap in its eye, as a share of its strength. For callers whose language has no <c>with</c>.</summary>
    /// <param name="makersBightShare">The value, as in <see cref="MakersBightShare"/>.</param>
    /// <returns>The changed copy.</returns>
    public Strap WithMakersBightShare(Ratio? makersBightShare) => this with { MakersBightShare = makersBightShare };

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
