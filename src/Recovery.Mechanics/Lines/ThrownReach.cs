using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Where and how a thrown fitting lands if it hits nothing on its way. It bounces and rolls on from there.</summary>
public sealed record ThrownReach
{
    internal ThrownReach(in Landing landing, double elevation, double kilograms)
    {
        Reach = Length.FromMeters(landing.Range);
        LandingSpeed = Speed.FromMetersPerSecond(landing.Speed);
        LandingEnergy = Energy.FromJoules(kilograms * landing.Speed * landing.Speed / 2);
        FlightTime = Duration.FromSeconds(landing.Seconds);
        Elevation = Angle.FromDegrees(elevation * 180 / Math.PI);
    }

    /// <summary>Gets the range.</summary>
    public Length Reach { get; }

    /// <summary>Gets the speed at landing.</summary>
    public Speed LandingSpeed { get; }

    /// <summary>Gets the energy at landing.</summary>
    public Energy LandingEnergy { get; }

    /// <summary>Gets the time of flight.</summary>
    public Duration FlightTime { get; }

    /// <summary>Gets the elevation at release.</summary>
    public Angle Elevation { get; }

    /// <summary>Gives the landing in one line, invariant culture.</summary>
    /// <returns>Range and energy.</returns>
    public override string ToString() => Text.With(Reach.Meters, "m", 3) + ", " + Text.With(LandingEnergy.Joules / 1000, "kJ", 3) + " left";
}
