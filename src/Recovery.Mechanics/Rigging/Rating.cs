using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A marked rating that says what it is. There is no way to make one without saying breaking strength or working load limit, and none to turn one into the other without its design factor.</summary>
/// <remarks>Immutable, equality by value, newtons inside. A marking in tonnes is read as tonnes-force with g = 9.80665 m/s2. "60 t" is a working load of 4 to 13 t if it is a breaking strength, and a breaking strength of 300 to 480 t if it is a working load limit.</remarks>
public sealed record Rating
{
    private const double NewtonsPerTonne = 1000 * PhysicalConstants.StandardGravity;

    private Rating(RatingKind kind, double newtons, double? designFactor)
    {
        Kind = kind;
        Newtons = newtons;
        DesignFactor = designFactor;
    }

    /// <summary>Gets what the rating says.</summary>
    public RatingKind Kind { get; }

    /// <summary>Gets the marked force.</summary>
    public Force Marked => Force.FromNewtons(Newtons);

    /// <summary>Gets the design factor that a working load limit holds; null where it is not known or does not apply.</summary>
    public double? DesignFactor { get; }

    /// <summary>Gets the breaking strength; null where it is not known.</summary>
    public Force? Breaking => BreakingNewtons is { } value ? Force.FromNewtons(value) : null;

    /// <summary>Gets the working load limit as marked; null where none is marked.</summary>
    public Force? WorkingLoad => WorkingNewtons is { } value ? Force.FromNewtons(value) : null;

    internal double Newtons { get; }

    internal double? BreakingNewtons => Kind switch
    {
        RatingKind.BreakingStrength => Newtons,
        RatingKind.WorkingLoadLimit when DesignFactor is { } factor => Newtons * factor,
        _ => null,
    };

    internal double? WorkingNewtons => Kind == RatingKind.WorkingLoadLimit ? Newtons : null;

    /// <summary>A marking that is a breaking strength.</summary>
    /// <param name="marked">Marked force, 1 to 20,000 kN.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public static Rating BreakingStrength(Force marked) => new(RatingKind.BreakingStrength, Guard.Newtons(marked, 1, 20000, nameof(marked)), null);

    /// <summary>A marking that is a breaking strength, in tonnes.</summary>
    /// <param name="tonnes">Marked tonnes, 0.1 to 2,000.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public static Rating BreakingStrengthTonnes(double tonnes) => new(RatingKind.BreakingStrength, Guard.Range(tonnes, 0.1, 2000, "t", nameof(tonnes)) * NewtonsPerTonne, null);

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
    public static Rating WorkingLoadLimitTonnes(double tonnes, double? designFactor = null) => new(RatingKind.WorkingLoadLimit, Guard.Range(tonnes, 0.1, 2000, "t", nameof(tonnes)) * NewtonsPerTonne, Factor(designFactor));

    /// <summary>A marking of which nobody knows what it says, or a part without a tag. Always a stop; it never becomes a number.</summary>
    /// <param name="marked">Marked force, 0 (no tag) to 20,000 kN.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public static Rating Unknown(Force marked) => new(RatingKind.Unknown, Guard.Newtons(marked, 0, 20000, nameof(marked)), null);

    /// <summary>Gives the rating in words, invariant culture.</summary>
    /// <returns>Force and kind.</returns>
    public override string ToString() => Text.Kilonewtons(Newtons) + " " + Kind switch
    {
        RatingKind.BreakingStrength => "breaking strength",
        RatingKind.WorkingLoadLimit => "working load limit" + (DesignFactor is { } factor ? " (design factor " + Text.Number(factor) + ")" : string.Empty),
        _ => "of unknown kind",
    };

    private static double? Factor(double? designFactor) => designFactor is { } factor ? Guard.Range(factor, 2, 15, string.Empty, nameof(designFactor)) : null;
}
