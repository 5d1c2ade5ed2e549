using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>One track under its load on one soil: what the track model takes.</summary>
/// <remarks>Immutable, equality by value, canonical units.</remarks>
public sealed record TrackOnSoil
{
    /// <summary>Describes one track on a soil.</summary>
    /// <param name="contactLength">Length on the ground l, 0.3 to 10 m.</param>
    /// <param name="width">Width b, 0.1 to 2 m.</param>
    /// <param name="load">Load of this one track, above 0 to 1,000 kN.</param>
    /// <param name="terrain">The terrain.</param>
    /// <param name="shearModulus">Shear deformation modulus K, 0.001 to 0.5 m: 0.01 to 0.025 m on firm, 0.03 to 0.05 m on soft soil.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException">The terrain is null.</exception>
    public TrackOnSoil(Length contactLength, Length width, Force load, BekkerTerrain terrain, Length shearModulus)
    {
        ContactLength = contactLength;
        Width = width;
        Load = load;
        Terrain = terrain;
        ShearModulus = shearModulus;
    }

    /// <summary>Puts a track on a soil.</summary>
    /// <param name="track">The track.</param>
    /// <param name="load">Load of this one track, above 0 to 1,000 kN.</param>
    /// <param name="terrain">The terrain.</param>
    /// <param name="shearModulus">Shear deformation modulus K, 0.001 to 0.5 m.</param>
    /// <returns>The track on the soil.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException">The track or the terrain is null.</exception>
    public static TrackOnSoil Of(Track track, Force load, BekkerTerrain terrain, Length shearModulus) => new(Guard.NotNull(track, nameof(track)).ContactLength, track.Width, load, terrain, shearModulus);

    /// <summary>Gets the length on the ground l.</summary>
    public Length ContactLength { get; init => field = Length.FromMeters(Guard.Metres(value, 0.3, 10, "contactLength")); }

    /// <summary>Gets the width b.</summary>
    public Length Width { get; init => field = Length.FromMeters(Guard.Metres(value, 0.1, 2, "width")); }

    /// <summary>Gets the load of this one track.</summary>
    public Force Load { get; init => field = Force.FromNewtons(Guard.Newtons(value, 1e-3, 1000, "load")); }

    /// <summary>Gets the terrain.</summary>
    public BekkerTerrain Terrain { get; init => field = Guard.NotNull(value, "terrain"); }

    /// <summary>Gets the shear deformation modulus K.</summary>
    public Length ShearModulus { get; init => field = Length.FromMeters(Guard.Metres(value, 0.001, 0.5, "shearModulus")); }

    /// <summary>Gives the same with another value: the load. For callers whose language has no <c>with</c>.</summary>
    /// <param name="load">The value, as in <see cref="Load"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public TrackOnSoil WithLoad(Force load) => this with { Load = load };

    /// <summary>Gives the track in words, invariant culture.</summary>
    /// <returns>Size, load and terrain.</returns>
    public override string ToString() => Text.Number(Width.Meters, 3) + " x " + Text.Number(ContactLength.Meters, 3) + " m track, " + Text.Kilonewtons(Load.Newtons) + " on " + Terrain.Name;
}
