using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>An axle with its tyres. x points forward; the foremost axle stands at x = 0, the others at negative x.</summary>
/// <remarks>Immutable, equality by value. Duals: give the number of all tyres on the axle; they share its load equally. How a pair of unlike tyres shares on firm ground is in <see cref="DualPair"/>.</remarks>
public sealed record Axle
{
    /// <summary>Describes an axle.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="position">Position x, -30 to 0 m.</param>
    /// <param name="tyres">Number of tyres on the axle, 2 to 8.</param>
    /// <param name="tyre">The tyre.</param>
    /// <param name="driven">Whether the axle is driven.</param>
    /// <param name="trackWidth">Distance between the middles of left and right tyre (or pair), 0.5 to 6 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The name is empty, or the tyre is null.</exception>
    public Axle(string name, Length position, int tyres, Tyre tyre, bool driven, Length trackWidth)
    {
        Name = Guard.Name(name, nameof(name));
        Position = Length.FromMeters(Guard.Metres(position, -30, 0, nameof(position)));
        Tyres = Guard.Count(tyres, 2, 8, nameof(tyres));
        Tyre = Guard.NotNull(tyre, nameof(tyre));
        Driven = driven;
        TrackWidth = Length.FromMeters(Guard.Metres(trackWidth, 0.5, 6, nameof(trackWidth)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the position x.</summary>
    public Length Position { get; private init; }

    /// <summary>Gets the number of tyres on the axle.</summary>
    public int Tyres { get; }

    /// <summary>Gets the tyre.</summary>
    public Tyre Tyre { get; init => field = Guard.NotNull(value, nameof(Tyre)); }

    /// <summary>Gets whether the axle is driven.</summary>
    public bool Driven { get; init; }

    /// <summary>Gets the distance between the middles of left and right tyre.</summary>
    public Length TrackWidth { get; private init; }

    /// <summary>Gets whether a brake can lock the axle. A pull may have to drag locked wheels unless the axle is named unbraked.</summary>
    public bool Braked { get; init; } = true;

    /// <summary>Gets the stiffness of the axle against that of the others, 0.1 to 10; counts on a straight frame of three or more axles only. An axle twice as stiff takes more of the load.</summary>
    public double RelativeStiffness { get; init => field = Guard.Range(value, 0.1, 10, string.Empty, "relativeStiffness"); } = 1;

    /// <summary>Gets the height of the pin on which the axle swings from side to side, 0.1 to 3 m; null where it holds the machine upright. Counts on a side slope only.</summary>
    public Length? PinHeight { get; init => field = value is { } h ? Length.FromMeters(Guard.Metres(h, 0.1, 3, "pinHeight")) : null; }

    /// <summary>Gets whether one tyre of each pair is mounted turned round, so that its lugs bite when backing. Needs duals: four tyres or more.</summary>
    public bool OneDualReversed
    {
        get;
        init => field = value && Tyres < 4 ? throw new ArgumentException("oneDualReversed needs duals; axle " + Name + " has " + Text.Number(Tyres) + " tyres.", "oneDualReversed") : value;
    }

    /// <summary>Gets the track unit that each side runs on in place of its tyres, swinging on a pin at the axle; null on tyres.</summary>
    /// <remarks>Axle loads hold with it: a unit on a pin is one support. The tyre is then that of the other fitting and enters nothing. Whatever takes a wheel to soil refuses such an axle in words: no wheel model covers a track.</remarks>
    public Track? TrackUnit { get; init; }

    /// <summary>Gives how many tyres of the axle run with their lugs the right way round.</summary>
    /// <param name="travel">Direction of travel.</param>
    /// <returns>Forwards all, less one on each side where one of a pair is turned round; rearwards those turned round.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The direction is not defined.</exception>
    public int TyresThatBite(PullDirection travel)
    {
        Guard.Defined(travel, travel is PullDirection.Forwards or PullDirection.Rearwards, nameof(travel));
        var turned = OneDualReversed ? 2 : 0;
        return travel == PullDirection.Forwards ? Tyres - turned : turned;
    }

    /// <summary>Gives the same with another value: the stiffness against that of the other axles. For callers whose language has no <c>with</c>.</summary>
    /// <param name="relativeStiffness">The value, as in <see cref="RelativeStiffness"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithRelativeStiffness(double relativeStiffness) => this with { RelativeStiffness = relativeStiffness };

    /// <summary>Gives the same with another value: the height of the pin. For callers whose language has no <c>with</c>.</summary>
    /// <param name="pinHeight">The value, as in <see cref="PinHeight"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithPinHeight(Length? pinHeight) => this with { PinHeight = pinHeight };

    /// <summary>Gives the same with another value: whether one of each pair is turned round. For callers whose language has no <c>with</c>.</summary>
    /// <param name="oneDualReversed">The value, as in <see cref="OneDualReversed"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithOneDualReversed(bool oneDualReversed) => this with { OneDualReversed = oneDualReversed };

    /// <summary>Gives the same with another value: the track unit on each side. For callers whose language has no <c>with</c>.</summary>
    /// <param name="trackUnit">The value, as in <see cref="TrackUnit"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithTrackUnit(Track? trackUnit) => this with { TrackUnit = trackUnit };

    /// <summary>Gives the same with another value: the tyre. For callers whose language has no <c>with</c>.</summary>
    /// <param name="tyre">The value, as in <see cref="Tyre"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithTyre(Tyre tyre) => this with { Tyre = tyre };

    /// <summary>Gives the same with another value: whether the axle is driven. For callers whose language has no <c>with</c>.</summary>
    /// <param name="driven">The value, as in <see cref="Driven"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithDriven(bool driven) => this with { Driven = driven };

    /// <summary>Gives the same with another value: whether a brake can lock the axle. A pull may have to drag locked wheels unless the axle is named unbraked. For callers whose language has no <c>with</c>.</summary>
    /// <param name="braked">The value, as in <see cref="Braked"/>.</param>
    /// <returns>The changed copy.</returns>
    public Axle WithBraked(bool braked) => this with { Braked = braked };

    /// <summary>The same axle elsewhere and of another width, both within their ranges: what sampling does to a reading.</summary>
    internal Axle Placed(double positionMetres, double trackMetres) => this with { Position = Length.FromMeters(positionMetres), TrackWidth = Length.FromMeters(trackMetres) };

    /// <summary>Gives the axle in words, invariant culture.</summary>
    /// <returns>Name, position, tyres or tracks.</returns>
    public override string ToString() => Name + " at " + Text.With(Position.Meters, "m") + ", " + (TrackUnit is { } unit ? "a " + unit + " on each side" : Text.Number(Tyres) + " tyres " + Tyre);

    /// <summary>Refuses an axle on tracks where a wheel model is asked.</summary>
    /// <param name="parameter">Name of the caller's parameter.</param>
    /// <param name="instead">What there is for tracks.</param>
    internal Axle OnTyres(string parameter, string instead) => TrackUnit is not { } unit ? this
        : throw new ArgumentException(parameter + ": the " + Name + " runs on tracks (" + unit + "), and no wheel model covers a track; that of a tyre in its place would be no number for it. " + instead, parameter);
}
