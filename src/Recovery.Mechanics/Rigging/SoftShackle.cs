using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A soft shackle of HMPE rope: joins straps without steel. Removes the projectile, not the recoil.</summary>
/// <remarks>Breaking strength taken as that of its line (judgement from published tests, no standard); refuse on edges. Immutable.</remarks>
public sealed record SoftShackle : RigPart
{
    /// <summary>Describes a soft shackle.</summary>
    /// <param name="name">Name.</param>
    /// <param name="rating">Its marked rating.</param>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    public SoftShackle(string name, Rating rating)
        : base(name)
    {
        Rating = Guard.NotNull(rating, nameof(rating));
    }

    /// <summary>Gets its marked rating.</summary>
    public Rating Rating { get; init => field = Guard.NotNull(value, nameof(Rating)); }

    /// <summary>Gets the edge it lies on; null where there is none.</summary>
    public SectionPlace? Edge { get; init; }

    /// <summary>Gets what it has been through and works in; null where nothing was declared. HMPE works to 60 deg C (from memory).</summary>
    public LineExposure? Exposure { get; init; }

    /// <summary>Gets whether it has cut or fused strands or a knot that pulled into itself: out of service.</summary>
    public bool Damaged { get; init; }

    /// <summary>Gets its derated strength.</summary>
    public DeratedStrength Strength
    {
        get
        {
            var whole = WholeLengthDerating.OfFibre(Name, Fibre.Hmpe, false, Exposure);
            return Edge is { } edge ? DeratedStrength.Of(Name, Rating, whole, Hitch.Straight, edge) : DeratedStrength.Of(Name, Rating, whole, Hitch.Straight);
        }
    }

    internal double Deratings => Edge is null && Exposure is null ? 1 : Strength.Share ?? double.NaN;

    /// <summary>Makes a soft shackle of which only its line is known: its breaking strength is taken as that of the line. Published tests give 1.06 to 2.8 times that, no standard gives any (judgement).</summary>
    /// <param name="name">Name.</param>
    /// <param name="lineBreaking">Breaking strength of the line it is made of, 1 to 20,000 kN.</param>
    /// <returns>The soft shackle.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public static SoftShackle OfLine(string name, Force lineBreaking) => new(name, Rating.BreakingStrength(lineBreaking));

    /// <summary>Gives the same on an edge. For callers whose language has no <c>with</c>.</summary>
    /// <param name="edge">The value, as in <see cref="Edge"/>.</param>
    /// <returns>The changed copy.</returns>
    public SoftShackle WithEdge(SectionPlace? edge) => this with { Edge = edge };

    /// <summary>Gives the same with another value: what it has been through. For callers whose language has no <c>with</c>.</summary>
    /// <param name="exposure">The value, as in <see cref="Exposure"/>.</param>
    /// <returns>The changed copy.</returns>
    public SoftShackle WithExposure(LineExposure? exposure) => this with { Exposure = exposure };

    /// <summary>Gives the same with another value: whether it is damaged. For callers whose language has no <c>with</c>.</summary>
    /// <param name="damaged">The value, as in <see cref="Damaged"/>.</param>
    /// <returns>The changed copy.</returns>
    public SoftShackle WithDamaged(bool damaged) => this with { Damaged = damaged };

    /// <summary>Gives the same with another value: its marked rating. For callers whose language has no <c>with</c>.</summary>
    /// <param name="rating">The value, as in <see cref="Rating"/>.</param>
    /// <returns>The changed copy.</returns>
    public SoftShackle WithRating(Rating rating) => this with { Rating = rating };

    /// <summary>Gives the soft shackle in words, invariant culture.</summary>
    /// <returns>Name and rating.</returns>
    public override string ToString() => Name + ", " + Rating;
}
