using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A track as running gear: what the track models of terramechanics take.</summary>
/// <remarks>One track, left or right. The nominal pressure is load over contact length times width; under a load off its middle see <see cref="TrackPressureModel"/>. Immutable, equality by value, metres inside.</remarks>
public sealed record Track
{
    /// <summary>Describes a track.</summary>
    /// <param name="contactLength">Length on firm ground, 0.3 to 8 m: from the first to the last roller.</param>
    /// <param name="width">Width, 0.1 to 2 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Track(Length contactLength, Length width)
    {
        ContactLength = contactLength;
        Width = width;
    }

    /// <summary>Gets the length on firm ground.</summary>
    public Length ContactLength { get; init => field = Length.FromMeters(Guard.Metres(value, 0.3, 8, "contactLength")); }

    /// <summary>Gets the width.</summary>
    public Length Width { get; init => field = Length.FromMeters(Guard.Metres(value, 0.1, 2, "width")); }

    /// <summary>Gets the number of road wheels (bogies) that press the track down; null where it is not known.</summary>
    public int? RoadWheels { get; init => field = value is { } n ? Guard.Count(n, 1, 40, "roadWheels") : null; }

    /// <summary>Gets the area of one shoe, or of a rubber belt the area under one road wheel; null where it is not known.</summary>
    public Area? ShoeArea { get; init => field = value is { } a ? Area.FromSquareMeters(Guard.Range(a.SquareMeters, 0.001, 4, "m2", "shoeArea")) : null; }

    /// <summary>Gets the height of the grousers or lugs; null where it is not known.</summary>
    public Length? GrouserHeight { get; init => field = value is { } h ? Length.FromMeters(Guard.Metres(h, 0, 0.3, "grouserHeight")) : null; }

    /// <summary>Gets the area of contact on firm ground.</summary>
    public Area ContactArea => Area.FromSquareMeters(ContactLength.Meters * Width.Meters);

    /// <summary>Gives the mean pressure under the track.</summary>
    /// <param name="load">Load on this track, 0 to 1,000 kN.</param>
    /// <returns>Load over area of contact.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Pressure NominalPressure(Force load) => Pressure.FromPascals(TrackKernel.MeanPressure(Guard.Newtons(load, 0, 1000, nameof(load)), ContactLength.Meters, Width.Meters));

    /// <summary>Gives the same with another value: the number of road wheels. For callers whose language has no <c>with</c>.</summary>
    /// <param name="roadWheels">The value, as in <see cref="RoadWheels"/>.</param>
    /// <returns>The changed copy.</returns>
    public Track WithRoadWheels(int? roadWheels) => this with { RoadWheels = roadWheels };

    /// <summary>Gives the same with another value: the area of one shoe. For callers whose language has no <c>with</c>.</summary>
    /// <param name="shoeArea">The value, as in <see cref="ShoeArea"/>.</param>
    /// <returns>The changed copy.</returns>
    public Track WithShoeArea(Area? shoeArea) => this with { ShoeArea = shoeArea };

    /// <summary>Gives the same with another value: the height of the grousers. For callers whose language has no <c>with</c>.</summary>
    /// <param name="grouserHeight">The value, as in <see cref="GrouserHeight"/>.</param>
    /// <returns>The changed copy.</returns>
    public Track WithGrouserHeight(Length? grouserHeight) => this with { GrouserHeight = grouserHeight };

    /// <summary>Gives the track in words, invariant culture.</summary>
    /// <returns>Contact length and width.</returns>
    public override string ToString() => "track " + Text.Number(ContactLength.Meters, 3) + " x " + Text.With(Width.Meters, "m", 3);
}
