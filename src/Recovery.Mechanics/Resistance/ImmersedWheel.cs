using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Geometry and bearing of one wheel in the ground.</summary>
public sealed record ImmersedWheel
{
    internal ImmersedWheel(double chord, double section, double segment, double bearingPerMetre, double width, IReadOnlyList<ValidityFlag> flags)
    {
        ContactWidth = Length.FromMeters(chord);
        PenetratedArea = Area.FromSquareMeters(section);
        SideArea = Area.FromSquareMeters(segment);
        BearingPerMetre = ForcePerLength.FromNewtonsPerMeter(bearingPerMetre);
        Bearing = Force.FromNewtons(bearingPerMetre * width);
        Flags = flags;
    }

    /// <summary>Gets the chord of the tyre at the surface.</summary>
    public Length ContactWidth { get; }

    /// <summary>Gets the section that pushed soil away: the segment up to the hub, straight walls above it.</summary>
    public Area PenetratedArea { get; }

    /// <summary>Gets the area of one side of the tyre below the surface.</summary>
    public Area SideArea { get; }

    /// <summary>Gets the bearing per metre of width.</summary>
    public ForcePerLength BearingPerMetre { get; }

    /// <summary>Gets the bearing of the wheel.</summary>
    public Force Bearing { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Chord, section and bearing.</returns>
    public override string ToString() => "chord " + Text.With(ContactWidth.Meters, "m", 3) + ", section " + Text.With(PenetratedArea.SquareMeters, "m2", 3) + ", bearing " + Text.Kilonewtons(Bearing.Newtons, 3);
}
