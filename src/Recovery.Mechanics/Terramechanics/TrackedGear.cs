using System;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The running gear of a machine on two tracks, as the mobility index asks for it.</summary>
/// <remarks>Immutable, equality by value, canonical units.</remarks>
public sealed record TrackedGear
{
    /// <summary>Describes a tracked running gear.</summary>
    /// <param name="weight">Gross weight, 1 to 2,000 kN.</param>
    /// <param name="contactLength">Length of one track on the ground, 0.3 to 10 m.</param>
    /// <param name="trackWidth">Width of one track, 0.1 to 2 m.</param>
    /// <param name="bogies">Road wheels (bogies) on the ground, both tracks together, 2 to 60.</param>
    /// <param name="shoeArea">Area of one track shoe, 0.001 to 2 m2.</param>
    /// <param name="grouserHeight">Height of the grousers, 0 to 0.3 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TrackedGear(Force weight, Length contactLength, Length trackWidth, int bogies, Area shoeArea, Length grouserHeight)
    {
        Weight = Force.FromNewtons(Guard.Newtons(weight, 1, 2000, nameof(weight)));
        ContactLength = Length.FromMeters(Guard.Metres(contactLength, 0.3, 10, nameof(contactLength)));
        TrackWidth = Length.FromMeters(Guard.Metres(trackWidth, 0.1, 2, nameof(trackWidth)));
        Bogies = Guard.Count(bogies, 2, 60, nameof(bogies));
        ShoeArea = Area.FromSquareMeters(Guard.Range(shoeArea.SquareMeters, 0.001, 2, "m2", nameof(shoeArea)));
        GrouserHeight = Length.FromMeters(Guard.Metres(grouserHeight, 0, 0.3, nameof(grouserHeight)));
    }

    /// <summary>Makes the running gear from two tracks alike.</summary>
    /// <param name="track">The track of one side, with its road wheels, shoe area and grousers.</param>
    /// <param name="weight">Gross weight, 1 to 2,000 kN.</param>
    /// <returns>The running gear.</returns>
    /// <exception cref="ArgumentException">Road wheels, shoe area or grousers of the track are not known: the mobility index needs them.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TrackedGear Of(Track track, Force weight)
    {
        Guard.NotNull(track, nameof(track));
        if (track.RoadWheels is not { } wheels || track.ShoeArea is not { } shoe || track.GrouserHeight is not { } grouser)
            throw new ArgumentException("track must have its road wheels, shoe area and grouser height: the mobility index needs all three.", nameof(track));
        return new TrackedGear(weight, track.ContactLength, track.Width, 2 * wheels, shoe, grouser);
    }

    /// <summary>Gets the gross weight.</summary>
    public Force Weight { get; }

    /// <summary>Gets the length of one track on the ground.</summary>
    public Length ContactLength { get; }

    /// <summary>Gets the width of one track.</summary>
    public Length TrackWidth { get; }

    /// <summary>Gets the number of bogies on the ground, both tracks together.</summary>
    public int Bogies { get; }

    /// <summary>Gets the area of one track shoe.</summary>
    public Area ShoeArea { get; }

    /// <summary>Gets the height of the grousers.</summary>
    public Length GrouserHeight { get; }

    /// <summary>Gives the gear in words, invariant culture.</summary>
    /// <returns>Weight and size of the tracks.</returns>
    public override string ToString() => Text.Kilonewtons(Weight.Newtons) + " on two tracks " + Text.Number(TrackWidth.Meters, 3) + " x " + Text.With(ContactLength.Meters, "m", 3);
}
