using System;
using Recovery.Mechanics.Provenance;

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

    /// <summary>Gives the same with another value: its marked rating. For callers whose language has no <c>with</c>.</summary>
    /// <param name="rating">The value, as in <see cref="Rating"/>.</param>
    /// <returns>The changed copy.</returns>
    public SoftShackle WithRating(Rating rating) => this with { Rating = rating };

    /// <summary>Gives the soft shackle in words, invariant culture.</summary>
    /// <returns>Name and rating.</returns>
    public override string ToString() => Name + ", " + Rating;
}
