using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A marked rating that says what it is. There is no way to make one without saying what kind it is, and none to turn one kind into another without its design factor.</summary>
/// <remarks>Immutable, equality by value, newtons inside. A proof load is no capacity. <see cref="Breaking"/> and <see cref="WorkingLoad"/> are those of one part in a straight pull: a marking for a parallel basket or a whole sling is divided by what it stands for. A marking in tonnes is read as tonnes-force with g = 9.80665 m/s2. "60 t" is a working load of 4 to 13 t if it is a breaking strength, and a breaking strength of 300 to 480 t if it is a working load limit.</remarks>
public sealed record Rating
{
    /// <summary>Largest design factor that a working load limit is said to hold.</summary>
    internal const double LargestDesignFactor = 15;

    private Rating(RatingKind kind, double newtons, double? designFactor, Marking? markedAs = null, RatingScope scope = RatingScope.Straight, double multiplicity = 1)
    {
        Kind = kind;
        Newtons = newtons;
        DesignFactor = designFactor;
        MarkedAs = markedAs;
        Scope = scope;
        Multiplicity = multiplicity;
    }

    /// <summary>Gets what the rating says.</summary>
    public RatingKind Kind { get; }

    /// <summary>Gets the marked force.</summary>
    public Force Marked => Force.FromNewtons(Newtons);

    /// <summary>Gets the design factor that a working load limit holds; null where it is not known or does not apply.</summary>
    public double? DesignFactor { get; }

    /// <summary>Gets the number and unit of the tag; null where the rating was given as a force.</summary>
    public Marking? MarkedAs { get; }

    /// <summary>Gets what the marking is for.</summary>
    public RatingScope Scope { get; }

    /// <summary>Gets how many straight parts the marking stands for: 1, 2 for a parallel basket, as given for a whole sling.</summary>
    public double Multiplicity { get; }

    /// <summary>Gets the breaking strength of one part in a straight pull; null where it is not known.</summary>
    public Force? Breaking => BreakingNewtons is { } value ? Force.FromNewtons(value) : null;

    /// <summary>Gets the working load limit of one part in a straight pull; null where none is marked.</summary>
    public Force? WorkingLoad => WorkingNewtons is { } value ? Force.FromNewtons(value) : null;

    internal double Newtons { get; }

    internal double? BreakingNewtons => Kind switch
    {
        RatingKind.BreakingStrength => Newtons / Multiplicity,
        RatingKind.WorkingLoadLimit when DesignFactor is { } factor => MarkingKernel.Breaking(Newtons, factor) / Multiplicity,
        RatingKind.LashingCapacity => Newtons * MarkingKernel.LashingFactor / Multiplicity,
        _ => null,
    };

    internal double? WorkingNewtons => Kind == RatingKind.WorkingLoadLimit ? Newtons / Multiplicity : null;

    /// <summary>A marking that is a breaking strength.</summary>
    /// <param name="marked">Marked force, 1 to 20,000 kN.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public static Rating BreakingStrength(Force marked) => new(RatingKind.BreakingStrength, Guard.Newtons(marked, 1, 20000, nameof(marked)), null);

    /// <summary>A marking that is a breaking strength, in tonnes.</summary>
    /// <param name="tonnes">Marked tonnes, 0.1 to 2,000.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Rating BreakingStrengthTonnes(double tonnes) => new(RatingKind.BreakingStrength, Guard.Range(tonnes, 0.1, 2000, "t", nameof(tonnes)) * MarkingKernel.Tonne, null, Marking.Tonnes(tonnes));

    /// <summary>A marking that is a working load limit.</summary>
    /// <param name="marked">Marked force, 1 to 20,000 kN.</param>
    /// <param name="designFactor">Design factor it holds, 2 to 15; null where the tag does not say.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Rating WorkingLoadLimit(Force marked, double? designFactor = null) => new(RatingKind.WorkingLoadLimit, Guard.Newtons(marked, 1, 20000, nameof(marked)), Factor(designFactor));

    /// <summary>A marking that is a working load limit, in tonnes.</summary>
    /// <param name="tonnes">Marked tonnes, 0.1 to 2,000.</param>
    /// <param name="designFactor">Design factor it holds, 2 to 15; null where the tag does not say.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Rating WorkingLoadLimitTonnes(double tonnes, double? designFactor = null) => new(RatingKind.WorkingLoadLimit, Guard.Range(tonnes, 0.1, 2000, "t", nameof(tonnes)) * MarkingKernel.Tonne, Factor(designFactor), Marking.Tonnes(tonnes));

    /// <summary>A marking in its own unit that is a breaking strength.</summary>
    /// <param name="marking">The marking, in a known unit.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentNullException">The marking is null.</exception>
    /// <exception cref="ArgumentException">Nobody knows which ton it is.</exception>
    public static Rating BreakingStrength(Marking marking) => new(RatingKind.BreakingStrength, Marking.Known(marking, nameof(marking)), null, marking);

    /// <summary>A marking in its own unit that is a working load limit; <see cref="WithDesignFactor"/> adds the factor where the tag says it.</summary>
    /// <param name="marking">The marking, in a known unit.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentNullException">The marking is null.</exception>
    /// <exception cref="ArgumentException">Nobody knows which ton it is.</exception>
    public static Rating WorkingLoadLimit(Marking marking) => new(RatingKind.WorkingLoadLimit, Marking.Known(marking, nameof(marking)), null, marking);

    /// <summary>A marking that is the lashing capacity of cargo gear. Its assembly parts at twice that (EN 12195-2, from memory); it holds no working load for a pull.</summary>
    /// <param name="marking">The marking, in a known unit.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentNullException">The marking is null.</exception>
    /// <exception cref="ArgumentException">Nobody knows which ton it is.</exception>
    public static Rating LashingCapacity(Marking marking) => new(RatingKind.LashingCapacity, Marking.Known(marking, nameof(marking)), null, marking);

    /// <summary>A marking that is a proof load: a test that must leave no damage, no capacity. A stop until breaking strength or working load limit is known.</summary>
    /// <param name="marking">The marking, in a known unit.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentNullException">The marking is null.</exception>
    /// <exception cref="ArgumentException">Nobody knows which ton it is.</exception>
    public static Rating ProofLoad(Marking marking) => new(RatingKind.ProofLoad, Marking.Known(marking, nameof(marking)), null, marking);

    /// <summary>A marking in its own unit of which nobody knows what it says. Always a stop.</summary>
    /// <param name="marking">The marking; its ton may be unknown.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentNullException">The marking is null.</exception>
    public static Rating Unknown(Marking marking) => new(RatingKind.Unknown, Guard.NotNull(marking, nameof(marking)).Force?.Newtons ?? 0, null, marking);

    /// <summary>A marking of which nobody knows what it says, or a part without a tag. Always a stop; it never becomes a number.</summary>
    /// <param name="marked">Marked force, 0 (no tag) to 20,000 kN.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public static Rating Unknown(Force marked) => new(RatingKind.Unknown, Guard.Newtons(marked, 0, 20000, nameof(marked)), null);

    /// <summary>Adds the design factor that a working load limit holds.</summary>
    /// <param name="designFactor">The factor, 2 to 15.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="InvalidOperationException">The rating is no working load limit: a factor is never applied to it twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public Rating WithDesignFactor(double designFactor) => Kind == RatingKind.WorkingLoadLimit
        ? new(Kind, Newtons, Factor(designFactor), MarkedAs, Scope, Multiplicity)
        : throw new InvalidOperationException("Only a working load limit holds a design factor; this is " + this + ".");

    /// <summary>Says that the marking is for each leg of a sling of several legs.</summary>
    /// <returns>The rating.</returns>
    public Rating PerLeg() => new(Kind, Newtons, DesignFactor, MarkedAs, RatingScope.PerLeg);

    /// <summary>Says that the marking is for a basket with parallel legs: a straight part has half of it.</summary>
    /// <returns>The rating.</returns>
    public Rating ForParallelBasket() => new(Kind, Newtons, DesignFactor, MarkedAs, RatingScope.ParallelBasket, 2);

    /// <summary>Says that the marking is for a sling of several legs as a whole.</summary>
    /// <param name="straightParts">How many times the straight rating of one leg it stands for, as its own standard says (1.4 for two legs to 45 deg from the middle, 2.1 for three or four): 1 to 4.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Rating ForWholeSling(double straightParts) => new(Kind, Newtons, DesignFactor, MarkedAs, RatingScope.WholeSling, Guard.Range(straightParts, 1, 4, string.Empty, nameof(straightParts)));

    /// <summary>Gives the rating in words, invariant culture.</summary>
    /// <returns>Force and kind.</returns>
    public override string ToString() => Text.Kilonewtons(Newtons) + (MarkedAs is { Unit: not MarkingUnit.Tonne and not MarkingUnit.Kilonewton } marked ? " (marked " + marked + ") " : " ") + Kind switch
    {
        RatingKind.BreakingStrength => "breaking strength",
        RatingKind.WorkingLoadLimit => "working load limit" + (DesignFactor is { } factor ? " (design factor " + Text.Number(factor) + ")" : string.Empty),
        RatingKind.ProofLoad => "proof load",
        RatingKind.LashingCapacity => "lashing capacity",
        _ => "of unknown kind",
    } + Scope switch
    {
        RatingScope.PerLeg => " for each leg",
        RatingScope.ParallelBasket => " in a parallel basket",
        RatingScope.WholeSling => " for the whole sling",
        _ => string.Empty,
    };

    private static double? Factor(double? designFactor) => designFactor is { } factor ? Guard.Range(factor, 2, LargestDesignFactor, string.Empty, nameof(designFactor)) : null;
}
