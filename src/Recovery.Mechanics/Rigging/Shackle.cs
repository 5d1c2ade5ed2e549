using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A steel shackle. Its working load limit comes from its mark: the size does not tell it, one size is made in limits four times apart.</summary>
/// <remarks>
/// <para>Steady: leg load at most WLL x step(angle off axis): 1.00 to 5 deg, 0.70 to 45, 0.50 to 90, refused beyond; no interpolation. Peak: at most the lesser of MBL/3 and the documented proof load.</para>
/// <para>Source: steps WAC 296-155-33905 with ASME B30.26 percentages (secondary), peak 0027/ND s. 8.2 (primary).</para>
/// </remarks>
public sealed record Shackle : RigPart
{
    /// <summary>Describes a shackle.</summary>
    /// <param name="name">Name.</param>
    /// <param name="rating">Its marked rating.</param>
    /// <param name="mass">Its mass, 0.05 to 200 kg: what flies if something lets go.</param>
    /// <param name="breakingLoad">Documented breaking load; null where only the mark is known.</param>
    /// <param name="proofLoad">Documented proof load; null where it is not known.</param>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Shackle(string name, Rating rating, Mass mass, Force? breakingLoad = null, Force? proofLoad = null)
        : base(name)
    {
        Rating = Guard.NotNull(rating, nameof(rating));
        Mass = Mass.FromKilograms(Guard.Range(mass.Kilograms, 0.05, 200, "kg", nameof(mass)));
        if (breakingLoad is { } breaking) DocumentedBreakingLoad = Force.FromNewtons(Guard.Newtons(breaking, 1, 20000, nameof(breakingLoad)));
        if (proofLoad is { } proof) ProofLoad = Force.FromNewtons(Guard.Newtons(proof, 1, 20000, nameof(proofLoad)));
    }

    /// <summary>Gets its marked rating.</summary>
    public Rating Rating { get; init => field = Guard.NotNull(value, nameof(Rating)); }

    /// <summary>Gets its mass.</summary>
    public Mass Mass { get; }

    /// <summary>Gets its documented breaking load; null where only the mark is known.</summary>
    public Force? DocumentedBreakingLoad { get; }

    /// <summary>Gets its documented proof load; null where it is not known.</summary>
    public Force? ProofLoad { get; }

    /// <summary>Gets how its pin is held.</summary>
    public ShacklePin Pin { get; init => field = Guard.Defined(value, value is >= ShacklePin.BoltAndNut and <= ShacklePin.RoundPin, nameof(Pin)); }

    /// <summary>Gets the angle of its load off its axis, 0 to 180 degrees.</summary>
    public Angle OffAxis { get; init => field = Angle.FromRadians(Guard.Radians(value, 0, 180, nameof(OffAxis))); }

    /// <summary>Gets whether it is bent, worn more than a tenth, or its pin does not seat: out of service.</summary>
    public bool Damaged { get; init; }

    internal double? BreakingNewtons => DocumentedBreakingLoad?.Newtons ?? Rating.BreakingNewtons;

    /// <summary>Gives the same with another value: its marked rating. For callers whose language has no <c>with</c>.</summary>
    /// <param name="rating">The value, as in <see cref="Rating"/>.</param>
    /// <returns>The changed copy.</returns>
    public Shackle WithRating(Rating rating) => this with { Rating = rating };

    /// <summary>Gives the same with another value: how its pin is held. For callers whose language has no <c>with</c>.</summary>
    /// <param name="pin">The value, as in <see cref="Pin"/>.</param>
    /// <returns>The changed copy.</returns>
    public Shackle WithPin(ShacklePin pin) => this with { Pin = pin };

    /// <summary>Gives the same with another value: the angle of its load off its axis, 0 to 180 degrees. For callers whose language has no <c>with</c>.</summary>
    /// <param name="offAxis">The value, as in <see cref="OffAxis"/>.</param>
    /// <returns>The changed copy.</returns>
    public Shackle WithOffAxis(Angle offAxis) => this with { OffAxis = offAxis };

    /// <summary>Gives the same with another value: whether it is bent, worn more than a tenth, or its pin does not seat: out of service. For callers whose language has no <c>with</c>.</summary>
    /// <param name="damaged">The value, as in <see cref="Damaged"/>.</param>
    /// <returns>The changed copy.</returns>
    public Shackle WithDamaged(bool damaged) => this with { Damaged = damaged };

    /// <summary>Gives the shackle in words, invariant culture.</summary>
    /// <returns>Name, rating and mass.</returns>
    public override string ToString() => Name + ", " + Rating + ", " + Text.With(Mass.Kilograms, "kg");
}
