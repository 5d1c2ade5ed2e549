using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A tank or bunker of a harvester: what it holds when it is struck level, and where.</summary>
/// <remarks>Upright walls are taken: the centre of what lies in it stands half the filled depth above the floor. Immutable, equality by value. x forward from the foremost axle, z up from the ground.</remarks>
public sealed record Tank
{
    /// <summary>Describes a tank.</summary>
    /// <param name="name">Name; the load that fills it takes it.</param>
    /// <param name="volume">Volume struck level with the rim, 0.1 to 100 m3.</param>
    /// <param name="position">Position x of its middle, -40 to 15 m.</param>
    /// <param name="floorHeight">Height of its floor above the ground, 0 to 5 m.</param>
    /// <param name="depth">Depth from floor to rim, 0.1 to 4 m.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Tank(string name, Volume volume, Length position, Length floorHeight, Length depth)
    {
        Name = Guard.Name(name, nameof(name));
        Volume = Volume.FromCubicMeters(Guard.Range(volume.CubicMeters, 0.1, 100, "m3", nameof(volume)));
        Position = Length.FromMeters(Guard.Metres(position, -40, 15, nameof(position)));
        FloorHeight = Length.FromMeters(Guard.Metres(floorHeight, 0, 5, nameof(floorHeight)));
        Depth = Length.FromMeters(Guard.Metres(depth, 0.1, 4, nameof(depth)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the volume struck level with the rim.</summary>
    public Volume Volume { get; }

    /// <summary>Gets the position x of its middle.</summary>
    public Length Position { get; }

    /// <summary>Gets the height of its floor.</summary>
    public Length FloorHeight { get; }

    /// <summary>Gets the depth from floor to rim.</summary>
    public Length Depth { get; }

    /// <summary>Fills the tank.</summary>
    /// <param name="material">The good.</param>
    /// <param name="fillLevel">Volume of the good over the struck volume, 0 to 1.3; above 1 it is heaped over the rim.</param>
    /// <param name="dryMatter">Dry matter over total mass, where the good is listed by its dry matter.</param>
    /// <returns>What lies in the tank.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The dry-matter content is missing, or means nothing for this good.</exception>
    public TankFill Fill(BulkMaterial material, Ratio fillLevel, Ratio? dryMatter = null) =>
        new(this, Guard.NotNull(material, nameof(material)), Guard.Fraction(fillLevel, 0, 1.3, nameof(fillLevel)), material.Density(dryMatter));

    /// <summary>Gives the tank in words, invariant culture.</summary>
    /// <returns>Name, volume and place.</returns>
    public override string ToString() => Name + ", " + Text.With(Volume.CubicMeters, "m3") + " at " + Text.With(Position.Meters, "m");
}
