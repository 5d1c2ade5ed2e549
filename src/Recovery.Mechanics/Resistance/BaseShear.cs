using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Soil sheared under one wheel that does not turn.</summary>
public sealed record BaseShear
{
    internal BaseShear(bool buried, double contact, double area, double force, IReadOnlyList<ValidityFlag> flags)
    {
        Buried = buried;
        ContactLength = Length.FromMeters(contact);
        ContactArea = Area.FromSquareMeters(area);
        Force = Force.FromNewtons(force);
        Flags = flags;
    }

    /// <summary>Gets whether the wheel is buried: sunk more than a tenth of its diameter.</summary>
    public bool Buried { get; }

    /// <summary>Gets the length c on which the wheel stands.</summary>
    public Length ContactLength { get; }

    /// <summary>Gets the area b c on which it stands.</summary>
    public Area ContactArea { get; }

    /// <summary>Gets the shear along the pull.</summary>
    public Force Force { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Force and area.</returns>
    public override string ToString() => Text.Kilonewtons(Force.Newtons, 3) + " under " + Text.With(ContactArea.SquareMeters, "m2", 3) + (Buried ? " (buried)" : " (rolling depth)");
}
