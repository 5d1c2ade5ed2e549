using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The ramps of one axle with buried wheels.</summary>
public sealed record RampOfAxle
{
    internal RampOfAxle(string name, int wheels, double spoilOfOne, double length)
    {
        Name = name;
        Wheels = wheels;
        SpoilOfOneWheel = Volume.FromCubicMeters(spoilOfOne);
        Spoil = Volume.FromCubicMeters(wheels * spoilOfOne);
        Length = UnitsNet.Length.FromMeters(length);
    }

    /// <summary>Gets the name of the axle.</summary>
    public string Name { get; }

    /// <summary>Gets the number of its wheels.</summary>
    public int Wheels { get; }

    /// <summary>Gets the soil to move for one wheel, n z^2 b/2.</summary>
    public Volume SpoilOfOneWheel { get; }

    /// <summary>Gets the soil to move for all its wheels.</summary>
    public Volume Spoil { get; }

    /// <summary>Gets the length of the ramp along the ground, n z.</summary>
    public Length Length { get; }

    /// <summary>Gives the axle in one line, invariant culture.</summary>
    /// <returns>Name and spoil.</returns>
    public override string ToString() => Name + ": " + Text.Number(Wheels) + " x " + Text.With(SpoilOfOneWheel.CubicMeters, "m3", 3);
}
