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

    /// <summary>Gets the angle of its one load off its axis, 0 to 180 degrees. Saying it takes back <see cref="TwoLegs"/>: the step off the axis never meets the gate of two legs.</summary>
    public Angle OffAxis
    {
        get;
        init
        {
            field = Angle.FromRadians(Guard.Radians(value, 0, 180, nameof(OffAxis)));
            TwoLegsRadians = double.NaN;
        }
    }

    /// <summary>Gets the included angle of two even legs collected in the bow, pull on the pin; null where it carries one load. Up to 120 degrees the full limit, beyond that a stop; a dee shackle collects none.</summary>
    public Angle? TwoLegs => double.IsNaN(TwoLegsRadians) ? null : Angle.FromRadians(TwoLegsRadians);

    /// <summary>Gets its shape.</summary>
    public ShackleShape Shape { get; init => field = Guard.Defined(value, value is ShackleShape.Bow or ShackleShape.Dee, nameof(Shape)); }

    /// <summary>Gets the diameter of its body, 5 to 150 mm; null where it was not measured. It never tells the limit.</summary>
    public Length? BodyDiameter { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.005, 0.15, nameof(BodyDiameter))) : null; }

    /// <summary>Gets the width of its jaw, 5 to 300 mm; null where it was not measured.</summary>
    public Length? JawWidth { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.005, 0.3, nameof(JawWidth))) : null; }

    /// <summary>Gets the diameter of its pin, 5 to 200 mm; null where it was not measured.</summary>
    public Length? PinDiameter { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.005, 0.2, nameof(PinDiameter))) : null; }

    /// <summary>Gets whether it is bent, worn more than a tenth, or its pin does not seat: out of service.</summary>
    public bool Damaged { get; init; }

    /// <summary>Gets what its working load limit allows as it is loaded; null where none is marked or the load is not permitted.</summary>
    public Force? Allowed => Rating.WorkingNewtons is { } wll && LimitShare > 0 ? Force.FromNewtons(wll * LimitShare) : null;

    /// <summary>Share of the limit as it is loaded; 0 where that is not permitted.</summary>
    internal double LimitShare => double.IsNaN(TwoLegsRadians) ? StrengthKernel.OffAxis(OffAxis.Radians) : Shape == ShackleShape.Dee ? 0 : ShackleKernel.TwoLegs(TwoLegsRadians);

    private double TwoLegsRadians { get; init; } = double.NaN;

    internal double? BreakingNewtons => DocumentedBreakingLoad?.Newtons ?? Rating.BreakingNewtons;

    internal override double SteelKilograms => Mass.Kilograms;

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

    /// <summary>Gives the same collecting two even legs in its bow, pull on the pin, in line.</summary>
    /// <param name="included">Included angle of the legs, 0 to 180 degrees.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public Shackle WithTwoLegs(Angle included) => this with { OffAxis = Angle.Zero, TwoLegsRadians = Guard.Radians(included, 0, 180, nameof(included)) };

    /// <summary>Gives the same with another value: its shape. For callers whose language has no <c>with</c>.</summary>
    /// <param name="shape">The value, as in <see cref="Shape"/>.</param>
    /// <returns>The changed copy.</returns>
    public Shackle WithShape(ShackleShape shape) => this with { Shape = shape };

    /// <summary>Gives the same with other dimensions. For callers whose language has no <c>with</c>.</summary>
    /// <param name="body">The value, as in <see cref="BodyDiameter"/>.</param>
    /// <param name="jaw">The value, as in <see cref="JawWidth"/>.</param>
    /// <param name="pin">The value, as in <see cref="PinDiameter"/>.</param>
    /// <returns>The changed copy.</returns>
    public Shackle WithDimensions(Length? body, Length? jaw, Length? pin) => this with { BodyDiameter = body, JawWidth = jaw, PinDiameter = pin };

    /// <summary>Gives the same with another value: whether it is bent, worn more than a tenth, or its pin does not seat: out of service. For callers whose language has no <c>with</c>.</summary>
    /// <param name="damaged">The value, as in <see cref="Damaged"/>.</param>
    /// <returns>The changed copy.</returns>
    public Shackle WithDamaged(bool damaged) => this with { Damaged = damaged };

    /// <summary>Gives the shackle in words, invariant culture.</summary>
    /// <returns>Name, rating and mass.</returns>
    public override string ToString() => Name + ", " + Rating + ", " + Text.With(Mass.Kilograms, "kg");
}
