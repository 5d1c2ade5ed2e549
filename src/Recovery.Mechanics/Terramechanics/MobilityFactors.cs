using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>What the mobility index asks of a machine beside its wheels or tracks.</summary>
/// <remarks>Power that was not given counts as less than ten horsepower a short ton, the cautious side, and is listed among <see cref="Assumptions"/>. Immutable, equality by value, canonical units.</remarks>
public sealed record MobilityFactors
{
    private static readonly Assumption PowerAssumed = new(
        "assume.power-to-weight", "engine power and gross mass of the machine", "less than 10 hp per short ton (8.2 kW/t)", "From 10 hp per short ton on the mobility index falls by 5 %.", TerramechanicsSources.MobilityIndex);

    /// <summary>Describes a machine by its ground clearance; the rest is set apart.</summary>
    /// <param name="groundClearance">Clearance under the lowest fixed part, 0 to 2 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The clearance is outside its range.</exception>
    public MobilityFactors(Length groundClearance) => GroundClearance = groundClearance;

    /// <summary>Gets the clearance under the lowest fixed part.</summary>
    public Length GroundClearance { get; init => field = Length.FromMeters(Guard.Metres(value, 0, 2, "groundClearance")); }

    /// <summary>Gets whether wheels carry chains or grousers. Tracks have their own grouser height.</summary>
    public bool WheelGrousers { get; init; }

    /// <summary>Gets whether the transmission is manual; otherwise automatic or hydraulic.</summary>
    public bool ManualTransmission { get; init; }

    /// <summary>Gets the engine power; null where it is not known. Accepted range 1 to 2,000 kW.</summary>
    public Power? EnginePower { get; init => field = value is { } v ? Power.FromWatts(Guard.Watts(v, 1, 2000, "enginePower")) : null; }

    /// <summary>Gets the gross mass; null where it is not known. Accepted range 0.1 to 200 t.</summary>
    public Mass? GrossMass { get; init => field = value is { } v ? Mass.FromKilograms(Guard.Kilograms(v, 0.1, 200, "grossMass")) : null; }

    /// <summary>Gets what was filled in because it was not given.</summary>
    public IReadOnlyList<Assumption> Assumptions => EnginePower is null || GrossMass is null ? [PowerAssumed] : [];

    /// <summary>Engine factor EF.</summary>
    internal double EngineFactor => MobilityKernel.EngineFactor(EnginePower is { } power && GrossMass is { } mass ? (double)power.Watts / (mass.Kilograms * PhysicalConstants.StandardGravity) : 0);

    /// <summary>Gives the same with another value: chains or grousers on the wheels. For callers whose language has no <c>with</c>.</summary>
    /// <param name="wheelGrousers">The value, as in <see cref="WheelGrousers"/>.</param>
    /// <returns>The changed copy.</returns>
    public MobilityFactors WithWheelGrousers(bool wheelGrousers) => this with { WheelGrousers = wheelGrousers };

    /// <summary>Gives the same with another value: a manual transmission. For callers whose language has no <c>with</c>.</summary>
    /// <param name="manualTransmission">The value, as in <see cref="ManualTransmission"/>.</param>
    /// <returns>The changed copy.</returns>
    public MobilityFactors WithManualTransmission(bool manualTransmission) => this with { ManualTransmission = manualTransmission };

    /// <summary>Gives the same with power and mass. For callers whose language has no <c>with</c>.</summary>
    /// <param name="enginePower">The value, as in <see cref="EnginePower"/>.</param>
    /// <param name="grossMass">The value, as in <see cref="GrossMass"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public MobilityFactors WithPower(Power? enginePower, Mass? grossMass) => this with { EnginePower = enginePower, GrossMass = grossMass };

    /// <summary>Gives the factors in words, invariant culture.</summary>
    /// <returns>Clearance and what else was said.</returns>
    public override string ToString() =>
        "clearance " + Text.With(GroundClearance.Meters, "m", 3) + (WheelGrousers ? ", grousers" : string.Empty) + (ManualTransmission ? ", manual transmission" : string.Empty) + (Assumptions.Count > 0 ? ", power not known" : string.Empty);
}
