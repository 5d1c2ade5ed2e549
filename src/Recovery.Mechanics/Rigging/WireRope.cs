using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A wire rope with its ends and the bend of its body. Its recoil reaches less far than that of a fibre line and is deadly all the same.</summary>
/// <remarks>
/// <para>R = MBS x least of first end, second end, body and choke. An end that is not described takes the least published termination, 0.50: unless documented a quoted breaking strength holds no termination loss.</para>
/// <para>Stiffness EA 65 to 75 times its breaking strength (from memory). Partial factor: material 1.5, new and certified 1.35 (0027/ND, primary). Immutable, equality by value.</para>
/// </remarks>
public sealed record WireRope : RigPart
{
    /// <summary>Sizes of rope that are described, m.</summary>
    internal const double Thinnest = 0.003, Thickest = 0.15;

    /// <summary>Describes a wire rope.</summary>
    /// <param name="name">Name, unique in its rig.</param>
    /// <param name="rating">Its marked rating.</param>
    /// <param name="diameter">Its diameter, 3 to 150 mm.</param>
    /// <param name="core">Its core.</param>
    /// <param name="length">Its length, 0.2 to 300 m.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentNullException">The rating is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public WireRope(string name, Rating rating, Length diameter, WireCore core, Length length)
        : base(name)
    {
        Rating = Guard.NotNull(rating, nameof(rating));
        Diameter = Length.FromMeters(Guard.Metres(diameter, Thinnest, Thickest, nameof(diameter)));
        Core = Guard.Defined(core, core is WireCore.Fibre or WireCore.Wire, nameof(core));
        Length = Length.FromMeters(Guard.Metres(length, 0.2, 300, nameof(length)));
    }

    /// <summary>Gets its marked rating.</summary>
    public Rating Rating { get; init => field = Guard.NotNull(value, nameof(Rating)); }

    /// <summary>Gets its diameter.</summary>
    public Length Diameter { get; }

    /// <summary>Gets its core.</summary>
    public WireCore Core { get; }

    /// <summary>Gets its length.</summary>
    public Length Length { get; private init; }

    /// <summary>Gets its first end; null takes the least published termination.</summary>
    public SectionPlace? FirstEnd { get; init; }

    /// <summary>Gets its second end; null takes the least published termination.</summary>
    public SectionPlace? SecondEnd { get; init; }

    /// <summary>Gets what its body bends round; null where it runs straight.</summary>
    public SectionPlace? Body { get; init; }

    /// <summary>Gets how it is laid.</summary>
    public Hitch Hitch { get; init => field = Guard.NotNull(value, nameof(Hitch)); } = Hitch.Straight;

    /// <summary>Gets the temperature it works at, -60 to 600 deg C; null where it was not declared.</summary>
    public Temperature? Temperature { get; init => field = value is { } v ? UnitsNet.Temperature.FromDegreesCelsius(Guard.Range(v.DegreesCelsius, -60, 600, "deg C", nameof(Temperature))) : null; }

    /// <summary>Gets whether it is new and certified.</summary>
    public bool NewAndCertified { get; init; }

    /// <summary>Gets whether it is kinked, crushed, worn or has broken wires beyond the criteria: out of service.</summary>
    public bool Damaged { get; init; }

    /// <summary>Gets its mass, 5.18 g per metre and kilonewton of breaking strength (reported); null where that is not known.</summary>
    public Mass? Mass => Elastic is { } line ? UnitsNet.Mass.FromKilograms(line.MassKilograms) : null;

    /// <summary>Gets its derated strength.</summary>
    public DeratedStrength Strength
    {
        get
        {
            SectionPlace first = FirstEnd ?? UnknownEnd("first end"), second = SecondEnd ?? UnknownEnd("second end");
            return Body is { } body ? DeratedStrength.Of(Name, Rating, WholeLengthDerating.OfWireRope(Name, Core, Temperature), Hitch, first, second, body) : DeratedStrength.Of(Name, Rating, WholeLengthDerating.OfWireRope(Name, Core, Temperature), Hitch, first, second);
        }
    }

    /// <summary>The same rope of another length, within its range: what sampling does to a reading.</summary>
    internal WireRope WithMetres(double metres) => this with { Length = Length.FromMeters(metres) };

    internal override double LineMetres => Length.Meters;

    internal override ElasticLine? Elastic => Rating.BreakingNewtons is { } mbs ? ElasticLine.Of(LineMaterial.WireRope, Force.FromNewtons(mbs), Length) : null;

    internal override double SteelKilograms => Elastic?.MassKilograms ?? 0;

    /// <summary>Gives the same with both ends described. For callers whose language has no <c>with</c>.</summary>
    /// <param name="first">The value, as in <see cref="FirstEnd"/>.</param>
    /// <param name="second">The value, as in <see cref="SecondEnd"/>.</param>
    /// <returns>The changed copy.</returns>
    public WireRope WithEnds(SectionPlace? first, SectionPlace? second) => this with { FirstEnd = first, SecondEnd = second };

    /// <summary>Gives the same with another value: what its body bends round. For callers whose language has no <c>with</c>.</summary>
    /// <param name="body">The value, as in <see cref="Body"/>.</param>
    /// <returns>The changed copy.</returns>
    public WireRope WithBody(SectionPlace? body) => this with { Body = body };

    /// <summary>Gives the same with another value: how it is laid. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hitch">The value, as in <see cref="Hitch"/>.</param>
    /// <returns>The changed copy.</returns>
    public WireRope WithHitch(Hitch hitch) => this with { Hitch = hitch };

    /// <summary>Gives the same with another value: the temperature it works at. For callers whose language has no <c>with</c>.</summary>
    /// <param name="temperature">The value, as in <see cref="Temperature"/>.</param>
    /// <returns>The changed copy.</returns>
    public WireRope WithTemperature(Temperature? temperature) => this with { Temperature = temperature };

    /// <summary>Gives the same with another value: whether it is new and certified. For callers whose language has no <c>with</c>.</summary>
    /// <param name="newAndCertified">The value, as in <see cref="NewAndCertified"/>.</param>
    /// <returns>The changed copy.</returns>
    public WireRope WithNewAndCertified(bool newAndCertified) => this with { NewAndCertified = newAndCertified };

    /// <summary>Gives the same with another value: whether it is damaged. For callers whose language has no <c>with</c>.</summary>
    /// <param name="damaged">The value, as in <see cref="Damaged"/>.</param>
    /// <returns>The changed copy.</returns>
    public WireRope WithDamaged(bool damaged) => this with { Damaged = damaged };

    /// <summary>Gives the wire rope in words, invariant culture.</summary>
    /// <returns>Name, size and rating.</returns>
    public override string ToString() => Name + ", wire rope " + Text.With(Diameter.Meters * 1000, "mm") + ", " + Rating;

    private SectionPlace UnknownEnd(string name) => SectionPlace.WireEye(name, new WireTermination(WireTerminationKind.Unknown, Diameter, Core), null);
}
